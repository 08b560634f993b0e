"""The one door to the sets of a station: agreed sets put into a plan, each judged anew by the rules of today."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from spoutline.model.agreed_sets import AgreedPosition, AgreedSets, SetBasis, SetsFrom, SetsSource
from spoutline.model.faults import Cancelled, InputFault, InputProblem
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import AccessoryLine, HangingSet, PlanStatus, PositionPlan, SetLink, SitePlan
from spoutline.model.record import CommissioningRecord, WearEntry
from spoutline.model.requirement import Refusal
from spoutline.model.survey import Position, Survey
from spoutline.model.worded import Worded
from spoutline.planning.agreement.making import digest_of, part_of, question_of
from spoutline.planning.pack.as_built import as_built_plan, hanging_now
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.plan_position import STATUS_OF
from spoutline.planning.sets.plan_site import plan_site, provenance_of
from spoutline.planning.sets.relabel import relabelled, same_question
from spoutline.planning.sets.supersession import successors_at
from spoutline.rules.declared.rule_ids import AccessoryReason
from spoutline.rules.derive.requirement import requirement_for


def agreed_plan(
    survey: Survey,
    agreed: AgreedSets,
    source: SetsSource,
    context: PlanningContext,
    progress: Progress | None = None,
    *,
    with_others: bool = True,
    with_alternatives: bool = True,
) -> SitePlan:
    """Return the plan of a survey that shows agreed sets.

    Each is judged by the survey and rules of today: one that breaks a must stays shown with what it breaks. Positions
    that the agreement does not know are planned and marked so, or left to the caller without ``with_others``; those
    that it leaves out have no set. ``with_alternatives`` is as of ``plan_site``.

    Raises
    ------
    InputFault
        A part of the agreement cannot be read.
    Cancelled
        If ``progress`` asks to stop.
    """
    parts = _parts_of(agreed)
    known = {one.label: one for one in agreed.positions}
    others = tuple(one for one in survey.positions if one.label not in known)
    planned: Mapping[str, PositionPlan] = {}
    if others and with_others:
        asked = survey.model_copy(update={"positions": others})
        rest = plan_site(
            asked,
            context.tables,
            context.parts,
            progress,
            steps=context.steps,
            with_alternatives=with_alternatives,
        )
        planned = {plan.position.label: replace(plan, basis=SetBasis.NOT_AGREED) for plan in rest.positions}
    judged: dict[tuple[object, ...], PositionPlan] = {}  # positions that ask the same and got the same set
    plans = []
    for one in survey.positions:
        if progress is not None and progress.should_stop():
            raise Cancelled
        if one.label in planned:
            plans.append(planned[one.label])
            continue
        mine = known.get(one.label)
        if mine is None:
            continue
        key = (same_question(one), mine.set, mine.accessories, mine.question)
        if key not in judged:
            judged[key] = _agreed_position(one, survey, mine, parts, context)
        plans.append(relabelled(judged[key], one))
    return SitePlan(
        survey=survey,
        jurisdiction=context.tables.jurisdiction,
        positions=tuple(plans),
        provenance=provenance_of(survey, context.tables, context.parts),
        sets_from=_sets_from(agreed, source),
    )


def _sets_from(agreed: AgreedSets, source: SetsSource) -> SetsFrom:
    return SetsFrom(
        source=source,
        serial=agreed.serial if source is SetsSource.AGREED else None,
        kind=agreed.origin.kind,
        by=agreed.origin.by,
        on=agreed.agreed_at.date(),
        quotation=agreed.origin.quotation,
        way=agreed.origin.way,
        catalogue=agreed.catalogue,
        digest=digest_of(agreed),
    )


def built_plan(
    site_plan: SitePlan,
    records: Iterable[CommissioningRecord],
    wear: Sequence[WearEntry],
    context: PlanningContext,
) -> SitePlan:
    """Return a plan continued by what was recorded: the newest record of each position, then what was replaced since.

    What was agreed does not change. Raise ``InputFault`` where a record names a part that the catalogue lacks, or by a
    bare number that several makers have.
    """
    newest = {record.position: record for record in records}
    found: dict[str, CommissioningRecord] = {}
    for plan in site_plan.positions:
        label = plan.position.label
        hanging = hanging_now(plan, newest.get(label), wear, context)
        if hanging is None:
            continue
        base = newest.get(label) or CommissioningRecord(
            site=site_plan.survey.site.name, position=label, plan_revision=site_plan.provenance.survey_fingerprint
        )
        found[label] = base.model_copy(update={"parts": hanging, "changes": ()})
    built = as_built_plan(site_plan, found, context)
    marked = tuple(
        replace(plan, basis=SetBasis.BUILT) if plan.position.label in found else plan for plan in built.positions
    )
    days = [record.done_on for record in found.values() if record.done_on]
    shown = built.sets_from.model_copy(
        update={"source": SetsSource.BUILT, "recorded": tuple(found), "on": max(days, default=None)}
    )
    return replace(built, positions=marked, sets_from=shown)


def _parts_of(agreed: AgreedSets) -> dict[PartRef, Part]:
    found: dict[PartRef, Part] = {}
    problems: list[InputProblem] = []
    for one in agreed.parts:
        try:
            part = part_of(one)
        except ValueError:
            wanted = "the text of this part is none that this version of the program wrote"
            problems.append(
                InputProblem(
                    "agreed sets", Worded("parts, {part_number}", part_number=one.part_number), "its text", wanted
                )
            )
            continue
        found[one.ref] = part
    named = [(place.label, one) for place in agreed.positions for one in place.pieces]
    problems += [
        InputProblem(
            "agreed sets", Worded("position {label}", label=label), str(one.ref), "the part must be among `parts`"
        )
        for label, one in named
        if one.ref not in found
    ]
    if problems:
        raise InputFault(tuple(problems))
    return found


def _agreed_position(
    position: Position,
    survey: Survey,
    agreed: AgreedPosition,
    parts: Mapping[PartRef, Part],
    context: PlanningContext,
) -> PositionPlan:
    requirement = requirement_for(_asking_for_what_hangs(position, agreed, context), survey.site, context.tables)
    refusal = requirement if isinstance(requirement, Refusal) else None
    plan = PositionPlan(
        position=position,
        status=STATUS_OF[refusal.status] if refusal else PlanStatus.NOT_ORDERED,
        requirement=None if isinstance(requirement, Refusal) else requirement,
        refusal=refusal,
        chosen=None,
        alternatives=(),
        conflict=None,
        counts=(),
        accessories=(),
        basis=SetBasis.AGREED if agreed.set else SetBasis.NOT_ORDERED,
        asks_otherwise=agreed.question != question_of(position),
    )
    if isinstance(requirement, Refusal) or not agreed.set:
        return plan
    currency = survey.site.currency
    links = tuple(SetLink(slot=one.slot, part=parts[one.ref], kept=one.kept) for one in agreed.set)
    price = sum(link.part.price_minor(currency) or 0 for link in links if not link.kept)
    hanging_set = HangingSet(links=links, price_minor=price, currency=currency)
    judged = SetJudge(requirement, context.tables, context.usual_prices).judged(hanging_set)
    return replace(
        plan,
        status=PlanStatus.FITS,
        chosen=judged,
        accessories=tuple(
            AccessoryLine(
                part=parts[one.ref],
                quantity=one.quantity,
                reason=one.reason or _reason_for(parts[one.ref], position),
            )
            for one in agreed.accessories
        ),
    )


def _asking_for_what_hangs(position: Position, agreed: AgreedPosition, context: PlanningContext) -> Position:
    """Return the position with pinned parts replaced by their successors where the agreed set holds those.

    An order says which successor took the place of a part that its maker replaced; the wish is kept by it.
    """
    hanging = [one.ref for one in agreed.set]
    renewed, successions = successors_at(position, context.parts)
    if not successions or any(one.before in hanging or one.now not in hanging for one in successions):
        return position
    return renewed


def _reason_for(part: Part, position: Position) -> str:
    """Return why an accessory goes with a set where the source of the agreement did not keep it."""
    label = AccessoryReason.DEF_LABEL if position.liquid.family is LiquidFamily.DEF else AccessoryReason.CLASS_LABEL
    by_kind = {
        PartKind.SEALANT: AccessoryReason.NPT_JOINTS,
        PartKind.HOSE_CLAMP: AccessoryReason.RETRACTOR_CORD,
        PartKind.CAP: AccessoryReason.VAPOUR_PORT_CAP,
    }
    return by_kind.get(part.kind, label)
