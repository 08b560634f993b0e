"""Why a part is not the one chosen: the rules it breaks here, or the best set that holds it."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.part import Part
from spoutline.model.plan import PartVerdict, PlanStatus
from spoutline.model.requirement import Refusal, Requirement, Slot
from spoutline.model.survey import Position, Site
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import conflict_of, plan_position
from spoutline.planning.sets.pool import SLOT_KINDS, slots_of
from spoutline.planning.sets.staying import choosing_for
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part


def why_not(position: Position, site: Site, part: Part, context: PlanningContext) -> PartVerdict:
    """Judge ``part`` at ``position``.

    Returns
    -------
    PartVerdict
        Findings in the slot where the part breaks least; where no must is broken, the best set that holds the part,
        or the conflict that keeps it out of every set.
    """
    requirement = requirement_for(position, site, context.tables)
    if isinstance(requirement, Refusal):
        return PartVerdict(
            part=part,
            position=position,
            slots=(),
            findings=requirement.findings,
            in_chosen_set=False,
            best_set_with_it=None,
        )
    slots = tuple(slot for slot in slots_of(requirement) if SLOT_KINDS[slot] is part.kind)
    findings = _findings(part, slots, requirement, context)
    verdict = PartVerdict(
        part=part, position=position, slots=slots, findings=findings, in_chosen_set=False, best_set_with_it=None
    )
    if not slots or any(_forbids(finding) for finding in findings):
        return verdict
    return _with_sets(verdict, site, context)


def _findings(
    part: Part, slots: tuple[Slot, ...], requirement: Requirement, context: PlanningContext
) -> tuple[Finding, ...]:
    if not slots:  # every slot of the chain refuses the kind; one finding says so
        return judge_part(part, requirement.chain[-1], requirement, context.tables)[:1]
    judged = [judge_part(part, slot, requirement, context.tables) for slot in slots]
    return min(judged, key=lambda findings: sum(map(_forbids, findings)))


def _forbids(finding: Finding) -> bool:
    return finding.severity is Severity.MUST and finding.verdict is Verdict.BROKEN


def _with_sets(verdict: PartVerdict, site: Site, context: PlanningContext) -> PartVerdict:
    """Plan the position as it is, and once more with the part pinned."""
    position, number = verdict.position, verdict.part.number
    plan = plan_position(position, site, context, with_alternatives=False)
    if plan.status is PlanStatus.FITS and plan.chosen and number in plan.chosen.hanging_set.numbers:
        return replace(verdict, in_chosen_set=True, best_set_with_it=plan.chosen.hanging_set)
    others = tuple(one for one in position.decisions.pinned if one != number)
    decisions = position.decisions.model_copy(update={"pinned": (*others, number)})
    pinned = requirement_for(position.model_copy(update={"decisions": decisions}), site, context.tables)
    if isinstance(pinned, Refusal):
        return verdict
    choosing = choosing_for(pinned, context)
    choice = choosing.chooser.choose()
    if choice is None:
        return replace(verdict, conflict=conflict_of(pinned, context))
    return replace(verdict, best_set_with_it=choosing.true_judged(choice.judged, context).hanging_set)
