"""What a part breaks by itself at a position, in the place where it breaks least."""

from __future__ import annotations

from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.part import Part
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.pool import SLOT_KINDS, slots_of
from spoutline.rules.parts.part_rules import judge_part


def places_for(part: Part, requirement: Requirement) -> tuple[Slot, ...]:
    """Return the slots that the part could take by its kind; empty where the chain has no place for it."""
    return tuple(slot for slot in slots_of(requirement) if SLOT_KINDS[slot] is part.kind)


def findings_here(
    part: Part, slots: tuple[Slot, ...], requirement: Requirement, context: PlanningContext
) -> tuple[Finding, ...]:
    """Return what the part breaks in the slot where it breaks least; without a slot, the one finding that says so."""
    if not slots:  # every slot of the chain refuses the kind
        return judge_part(part, requirement.chain[-1], requirement, context.tables)[:1]
    judged = [judge_part(part, slot, requirement, context.tables) for slot in slots]
    return min(judged, key=lambda findings: sum(map(forbids, findings)))


def forbids(finding: Finding) -> bool:
    """Say whether a finding keeps the part out: a broken must."""
    return finding.severity is Severity.MUST and finding.verdict is Verdict.BROKEN
