"""A site plan written as the plan document; nothing is computed here, every figure is one that the plan carries."""

from __future__ import annotations

from typing import Any

from spoutline.documents.json import plan as record
from spoutline.documents.json.head import ProvenanceRecord
from spoutline.explain.plan.story import Story
from spoutline.model.answered import assumptions, site_assumptions
from spoutline.model.check import Bound, Check
from spoutline.model.dispenser_type import inherited_fields
from spoutline.model.finding import Finding
from spoutline.model.part import Part
from spoutline.model.part_figures import figures_of, value_at
from spoutline.model.plan import Alternative, Conflict, JudgedSet, PositionPlan, Relaxation, SitePlan
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Refusal, Requirement, RequirementLine
from spoutline.rules.declared.rule_ids import AccessoryReason

SI_UNIT: dict[Dimension, str] = {
    Dimension.DIAMETER: "m",
    Dimension.LENGTH: "m",
    Dimension.AREA: "m2",
    Dimension.VOLUME: "m3",
    Dimension.MASS: "kg",
    Dimension.MASS_PER_LENGTH: "kg/m",
    Dimension.WEIGHT_PER_LENGTH: "N/m",
    Dimension.FORCE: "N",
    Dimension.TORQUE: "N.m",
    Dimension.PRESSURE: "Pa",
    Dimension.FLOW: "m3/s",
    Dimension.VELOCITY: "m/s",
    Dimension.DENSITY: "kg/m3",
    Dimension.KINEMATIC_VISCOSITY: "m2/s",
    Dimension.TEMPERATURE: "degC",
    Dimension.TEMPERATURE_DIFFERENCE: "K",
    Dimension.RESISTANCE: "ohm",
    Dimension.RESISTANCE_PER_LENGTH: "ohm/m",
    Dimension.CONDUCTIVITY: "S/m",
    Dimension.PERMEATION: "kg/(m2.s)",
    Dimension.MASS_RATE: "kg/s",
    Dimension.EMISSION_FACTOR: "kg/m3",
    Dimension.ANGLE: "rad",
    Dimension.TIME: "s",
    Dimension.DAYS: "d",
    Dimension.PERCENT: "%",
    Dimension.RATIO: "1",
    Dimension.COUNT: "1",
    Dimension.FLOW_COEFFICIENT: "m3/h at 1 bar",
}


def plan_json(site_plan: SitePlan, story: Story) -> str:
    """Return the plan document as indented JSON text, always the same for the same plan and units of the texts."""
    return plan_document(site_plan, story).model_dump_json(indent=2) + "\n"


def plan_document(site_plan: SitePlan, story: Story) -> record.PlanDocument:
    """Return the plan document of a planned site; ``story`` words the texts in it."""
    site = site_plan.survey.site
    return record.PlanDocument(
        provenance=ProvenanceRecord.of(site_plan.provenance),
        sets_from=site_plan.sets_from,
        site=record.SiteRecord(
            name=site.name,
            jurisdiction=site_plan.jurisdiction.id,
            jurisdiction_title=site_plan.jurisdiction.title,
            currency=site.currency,
            assumed=site_assumptions(site),
        ),
        positions=tuple(_position(plan, site.currency, story) for plan in site_plan.positions),
        still_to_save_minor=site_plan.still_to_save_minor,
    )


def _position(plan: PositionPlan, currency: str, story: Story) -> record.PositionRecord:
    chosen = plan.chosen
    return record.PositionRecord(
        label=plan.position.label,
        dispenser=plan.position.dispenser,
        status=plan.status,
        assumed=assumptions(plan.position),
        inherited=tuple(".".join(map(str, path)) for path in inherited_fields(plan.position)),
        dispenser_type=plan.position.dispenser_type.name if plan.position.dispenser_type else "",
        keeps_every_must=plan.keeps_every_must,
        requirement=_requirement(plan, story),
        set=_links(chosen, currency) if chosen else (),
        price_minor=chosen.hanging_set.price_minor if chosen else None,
        joints=_joints(chosen) if chosen else (),
        accessories=_accessories(plan, currency),
        alternatives=tuple(_alternative(item, chosen, story) for item in plan.alternatives) if chosen else (),
        checks=tuple(_check(check) for check in chosen.checks) if chosen else (),
        findings=tuple(_finding(finding, story) for finding in plan.findings),
        conflict=_conflict(plan.conflict, currency, story) if plan.conflict else None,
        ways_out=_ways_out(plan.refusal, story) if plan.refusal else (),
        counts=tuple(
            record.CountRecord(slot=count.slot, in_catalogue=count.in_catalogue, remaining=count.remaining)
            for count in plan.counts
        ),
    )


def _requirement(plan: PositionPlan, story: Story) -> record.RequirementRecord | None:
    asked: Requirement | None = plan.requirement
    lines = asked.lines if asked else plan.refusal.lines if plan.refusal else None
    if lines is None:
        return None
    return record.RequirementRecord(
        listing_class=asked.listing_class if asked else None,
        listing_scheme=asked.scheme if asked else None,
        path=asked.path if asked else None,
        chain=asked.chain if asked else (),
        lines=tuple(_line(line, story) for line in lines),
        footing=asked.footing if asked else {},
    )


def _line(line: RequirementLine, story: Story) -> record.LineRecord:
    return record.LineRecord(
        id=line.id,
        severity=line.severity,
        rule_id=line.rule_id,
        facts=_facts(line.facts),
        limit_ids=tuple(line.limit_ids),
        source=line.source,
        text=story.requirement_line(line).answer,
    )


def _finding(finding: Finding, story: Story) -> record.FindingRecord:
    return record.FindingRecord(
        rule_id=finding.rule_id,
        severity=finding.severity,
        verdict=finding.verdict,
        subject_kind=finding.subject_kind,
        subject=finding.subject,
        facts=_facts(finding.facts),
        limit_ids=tuple(finding.limit_ids),
        source=finding.source,
        text=story.finding(finding).sentence,
        maker=finding.part.maker if finding.part else "",
    )


def _facts(facts: tuple[Quantity | Fact, ...]) -> tuple[record.FactRecord, ...]:
    return tuple(
        record.FactRecord(name=fact.name, value=fact.value, unit=SI_UNIT[fact.dimension])
        if isinstance(fact, Quantity)
        else record.FactRecord(name=fact.name, value=fact.value, unit="")
        for fact in facts
    )


def _links(chosen: JudgedSet, currency: str) -> tuple[record.LinkRecord, ...]:
    return tuple(
        record.LinkRecord(
            slot=link.slot,
            part_number=link.part.number,
            maker=link.part.maker,
            kind=link.part.kind,
            name=link.part.name,
            unit_price_minor=link.price_minor(currency),
            kept=link.kept,
            attributes=_attributes(link.part),
        )
        for link in chosen.hanging_set.links
    )


def _attributes(part: Part) -> record.PartAttributes:
    known = record.PartAttributes.model_fields
    own = {figure.name for figure in figures_of(part.kind) if not figure.block}
    values: dict[str, Any] = {
        name: getattr(part, name) for name, info in known.items() if name in own or info.is_required()
    }
    values["inlet"], values["outlet"] = _port(part.inlet), _port(part.outlet)
    for figure in figures_of(part.kind):
        if figure.block:
            values[figure.name] = value_at(part, figure.path)
    # a set has no order: sort it, so that the document is the same in every process
    ordered = {name: tuple(sorted(value)) if isinstance(value, frozenset) else value for name, value in values.items()}
    return record.PartAttributes(**ordered)


def _port(port: Port | None) -> record.PortRecord | None:
    return None if port is None else _known_port(port)


def _joints(chosen: JudgedSet) -> tuple[record.JointRecord, ...]:
    makers = ("", *(part.maker for part in chosen.hanging_set.refs))  # joints follow the chain from the outlet
    return tuple(
        record.JointRecord(
            upstream=joint.upstream,
            downstream=joint.downstream,
            upstream_port=_known_port(joint.upstream_port),
            downstream_port=_known_port(joint.downstream_port),
            seal=joint.seal,
            upstream_maker=makers[place],
            downstream_maker=makers[place + 1],
        )
        for place, joint in enumerate(chosen.joints)
    )


def _known_port(port: Port) -> record.PortRecord:
    return record.PortRecord(thread=port.thread, size=port.size, gender=port.gender, path=port.path)


def _accessories(plan: PositionPlan, currency: str) -> tuple[record.AccessoryRecord, ...]:
    return tuple(
        record.AccessoryRecord(
            part_number=line.part.number,
            maker=line.part.maker,
            kind=line.part.kind,
            name=line.part.name,
            quantity=line.quantity,
            unit_price_minor=line.part.price_minor(currency),
            reason=AccessoryReason(line.reason),
        )
        for line in plan.accessories
    )


def _alternative(item: Alternative, chosen: JudgedSet, story: Story) -> record.AlternativeRecord:
    other = item.judged.hanging_set
    return record.AlternativeRecord(
        kind=item.kind,
        part_numbers=other.numbers,
        makers=tuple(part.maker for part in other.refs),
        price_minor=other.price_minor,
        price_difference_minor=item.price_difference_minor,
        mass_kg=sum(link.part.mass_kg for link in other.links),
        lead_time_days=max(link.part.lead_time_days for link in other.links),
        text=story.alternative(item, chosen.hanging_set),
    )


def _check(check: Check) -> record.CheckRecord:
    return record.CheckRecord(
        id=check.id,
        severity=check.severity,
        outcome=check.outcome,
        passes=check.passes,
        value=check.value,
        unit=SI_UNIT[check.dimension],
        text=check.text,
        limit=record.LimitRecord(lower=_bound(check.lower), upper=_bound(check.upper)),
        margin=check.margin,
    )


def _bound(bound: Bound | None) -> record.BoundRecord | None:
    if bound is None:
        return None
    return record.BoundRecord(value=bound.value, source=bound.source, status=bound.status)


def _conflict(conflict: Conflict, currency: str, story: Story) -> record.ConflictRecord:
    return record.ConflictRecord(
        requirements=conflict.requirements,
        pinned=tuple(
            record.PinnedRecord(
                part_number=one.part.number,
                maker=one.part.maker,
                findings=tuple(_finding(found, story) for found in one.findings),
                requirements=one.lines,
            )
            for one in conflict.pinned
        ),
        exclusions=tuple(
            record.ExclusionRecord(
                slot=item.slot,
                requirement=item.requirement,
                rule_id=item.rule_id,
                excluded=item.excluded,
                nearest=tuple(part.number for part in item.nearest),
                nearest_makers=tuple(part.maker for part in item.nearest),
            )
            for item in conflict.exclusions
        ),
        relaxations=tuple(_relaxation(item, currency, story) for item in conflict.relaxations),
        text=story.conflict(conflict),
    )


def _relaxation(item: Relaxation, currency: str, story: Story) -> record.RelaxationRecord:
    return record.RelaxationRecord(
        requirement=item.requirement,
        also=item.also,
        from_value=item.from_value,
        to_value=item.to_value,
        unit=SI_UNIT[item.dimension] if item.dimension else "",
        price_minor=item.price_minor,
        part_numbers=tuple(part.number for part in item.parts),
        makers=tuple(part.maker for part in item.parts),
        successions=tuple(
            record.SuccessionRecord(
                part_before=one.before.number,
                part_now=one.now.number,
                maker_before=one.before.maker,
                maker_now=one.now.maker,
            )
            for one in item.successions
        ),
        text=story.relaxation(item, currency),
    )


def _ways_out(refusal: Refusal, story: Story) -> tuple[record.WayOutRecord, ...]:
    return tuple(record.WayOutRecord(id=way, text=story.way_out(way)) for way in refusal.ways_out)
