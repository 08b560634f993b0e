"""The plan of a site as it was built: the parts fitted, judged like any set, whatever was found."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, PositionPlan, SetLink, SitePlan
from spoutline.model.record import CommissioningRecord, WearEntry
from spoutline.model.worded import Worded
from spoutline.planning.pack.picked import with_makers
from spoutline.planning.part_names import wrong_refs
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.pool import SLOT_KINDS

_SLOT_OF = {kind: slot for slot, kind in SLOT_KINDS.items()}


def as_built_plan(
    site_plan: SitePlan, records: Mapping[str, CommissioningRecord], context: PlanningContext
) -> SitePlan:
    """Return the plan with the parts that the records say were fitted.

    Each changed set is judged anew by every rule and check; a broken must then stands on the bill. Positions without a
    record, or with no change, stay as planned.

    Parameters
    ----------
    site_plan
        The plan that the work was done by.
    records
        The newest record of each position, by label.
    context
        Rule tables and catalogue.

    Raises
    ------
    InputFault
        A record names a part that the catalogue does not hold, or that several makers have, or an accessory
        as part of the chain.
    """
    plans = (built_position(plan, records.get(plan.position.label), context) for plan in site_plan.positions)
    return replace(site_plan, positions=tuple(plans))


def built_position(plan: PositionPlan, record: CommissioningRecord | None, context: PlanningContext) -> PositionPlan:
    """Return the plan of one position with the parts that its record says were fitted; see ``as_built_plan``."""
    if record is None or plan.chosen is None or plan.requirement is None:
        return plan
    record = with_makers(record, plan, context.parts)
    if not record.changes and record.as_built in ((), plan.chosen.hanging_set.refs):
        return plan
    links = _links(plan.chosen.hanging_set, record, context)
    currency = plan.requirement.site.currency
    price = sum(link.price_minor(currency) or 0 for link in links)
    hanging_set = HangingSet(links=links, price_minor=price, currency=currency)
    judged = SetJudge(plan.requirement, context.tables, context.usual_prices).judged(hanging_set)
    return replace(plan, chosen=judged, alternatives=(), accessories=accessory_lines(judged, plan.requirement, context))


def hanging_now(
    plan: PositionPlan, record: CommissioningRecord | None, wear: Sequence[WearEntry], context: PlanningContext
) -> tuple[PartRef, ...] | None:
    """Return the parts that records say hang at a position now; None where none speaks of it.

    Parameters: ``plan`` of the position; its newest ``record``; ``wear``, the wear log of the site; ``context``.
    """
    later = [
        one
        for one in wear
        if one.position == plan.position.label
        and (record is None or record.done_on is None or one.done_on >= record.done_on)
    ]
    if plan.chosen is None or (record is None and not later):
        return None
    named = with_makers(record, plan, context.parts) if record is not None else None
    hanging = list(named.as_built if named is not None else _before_any_record(plan, later[0]))
    for entry in later:
        removed = next((at for at, ref in enumerate(hanging) if entry.removed.names(ref)), None)
        if removed is not None and entry.fitted:
            hanging[removed] = entry.fitted
    return tuple(hanging)


def _before_any_record(plan: PositionPlan, first: WearEntry) -> tuple[PartRef, ...]:
    """Return the chain that the first replacement was made in: the set, or what the survey found where only it fits."""
    chosen = plan.chosen.hanging_set.refs if plan.chosen is not None else ()
    surveyed = tuple(item.ref for item in plan.position.installed if item.ref is not None)
    whole = len(surveyed) == len(plan.position.installed)  # a part that is only described cannot be judged
    in_set = any(first.removed.names(ref) for ref in chosen)
    was_there = any(ref.names(first.removed) or first.removed.names(ref) for ref in surveyed)
    return surveyed if whole and was_there and not in_set else chosen


def _links(before: HangingSet, record: CommissioningRecord, context: PlanningContext) -> tuple[SetLink, ...]:
    """Return the chain that was recorded; a part of the set before keeps its place, its words and whether it stays."""
    left = list(before.links)
    found: list[SetLink | None] = []
    for ref in record.as_built:
        same = next((link for link in left if ref.names(link.part.ref)), None)
        if same is not None:
            left.remove(same)
        found.append(same)
    others = [ref for ref, link in zip(record.as_built, found, strict=True) if link is None]
    fitted = iter(_parts(record.position, others, context))
    links = tuple(link or _link_of(next(fitted)) for link in found)
    if not links:
        wanted = "a set has at least one part"
        raise InputFault((InputProblem(record.position, "parts", "nothing", wanted),))
    return links


def _link_of(part: Part) -> SetLink:
    return SetLink(slot=_SLOT_OF[part.kind], part=part)


def _parts(position: str, refs: Sequence[PartRef], context: PlanningContext) -> tuple[Part, ...]:
    problems: list[InputProblem] = []
    parts: list[Part] = []
    wrong = wrong_refs(refs, context.parts)
    for ref in refs:
        part = context.parts.part(ref)
        if part is None:
            problems.append(InputProblem(position, "part number", repr(str(ref)), wrong[ref]))
        elif part.kind not in _SLOT_OF:
            wanted = Worded(
                "a {part_kind} is no part of the chain; leave it out of the fitted parts",
                part_kind=part.kind.value.replace("_", " "),
            )
            problems.append(InputProblem(position, "part number", repr(str(ref)), wanted))
        else:
            parts.append(part)
    if problems:
        raise InputFault(tuple(problems))
    return tuple(parts)
