"""A place in a chosen set: the part in hand, its slot, and what the position asks once that part need not stay."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.sets.assembly import Held
from spoutline.planning.sets.context import PlanningContext
from spoutline.rules.derive.requirement import requirement_for


@dataclass(frozen=True, slots=True)
class Place:
    """The part in hand within its chosen set; ``requirement`` leaves out a wish to keep it, other wishes stay."""

    chosen: JudgedSet
    part: Part
    slot: Slot
    requirement: Requirement

    def holding(self, part: Part) -> Held:
        """Return what asks for sets with ``part`` in this place."""
        return Held(self.slot, part.number)


def place_of(plan: PositionPlan, number: str, context: PlanningContext) -> Place:
    """Return the place of the part ``number`` in the chosen set of ``plan``.

    Raises
    ------
    InputFault
        The position has no set, or its set does not hold the part.
    """
    if plan.chosen is None or plan.requirement is None:
        wanted = "this position has no set, so no part of it can be swapped"
        raise InputFault((InputProblem("", "position", repr(plan.position.label), wanted),))
    hanging_set = plan.chosen.hanging_set
    link = next((link for link in hanging_set.links if link.part.number == number), None)
    if link is None:
        wanted = f"name a part of the set: {', '.join(hanging_set.numbers)}"
        raise InputFault((InputProblem("", "part number", repr(number), wanted),))
    return Place(plan.chosen, link.part, link.slot, _without_wish(plan.requirement, number, context))


def _without_wish(requirement: Requirement, number: str, context: PlanningContext) -> Requirement:
    """Return the requirement without the wish to keep a part."""
    decisions = requirement.position.decisions
    if number not in decisions.pinned:
        return requirement
    kept = decisions.model_copy(update={"pinned": tuple(one for one in decisions.pinned if one != number)})
    position = requirement.position.model_copy(update={"decisions": kept})
    freed = requirement_for(position, requirement.site, context.tables)
    return freed if isinstance(freed, Requirement) else requirement
