"""A place in a chosen set: the part in hand, its slot, and what the position asks once that part need not stay."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef, any_names, told_apart
from spoutline.model.plan import JudgedSet, PlanStatus, PositionPlan
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.worded import Worded
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.set_query import Held
from spoutline.rules.derive.requirement import requirement_for


@frozen
class Place:
    """The part in hand within its chosen set; ``requirement`` leaves out a wish to keep it, other wishes stay."""

    chosen: JudgedSet
    part: Part
    slot: Slot
    requirement: Requirement

    def holding(self, part: Part) -> Held:
        """Return what asks for sets with ``part`` in this place."""
        return Held(self.slot, part.ref)


def place_of(plan: PositionPlan, wanted: PartRef, context: PlanningContext) -> Place:
    """Return the place of the part ``wanted`` in the chosen set of ``plan``.

    Raises
    ------
    InputFault
        The position has no set, or its set does not hold the part.
    """
    if plan.chosen is None or plan.requirement is None:
        undecided = "it is not decided whether a set fits this position, so no part of it can be swapped"
        none = "this position has no set, so no part of it can be swapped"
        right = undecided if plan.status is PlanStatus.NOT_DECIDED else none
        raise InputFault((InputProblem("", "position", repr(plan.position.label), right),))
    hanging_set = plan.chosen.hanging_set
    meant = [link for link in hanging_set.links if wanted.names(link.part.ref)]
    if len({link.part.ref for link in meant}) != 1:
        right = Worded("name a part of the set: {told_apart}", told_apart=", ".join(told_apart(hanging_set.refs)))
        raise InputFault((InputProblem("", "part number", repr(str(wanted)), right),))
    link = meant[0]
    return Place(plan.chosen, link.part, link.slot, _without_wish(plan.requirement, link.part.ref, context))


def _without_wish(requirement: Requirement, part: PartRef, context: PlanningContext) -> Requirement:
    """Return the requirement without the wish to keep a part."""
    decisions = requirement.position.decisions
    if not any_names(decisions.pinned, part):
        return requirement
    kept = decisions.model_copy(update={"pinned": tuple(one for one in decisions.pinned if not one.names(part))})
    position = requirement.position.model_copy(update={"decisions": kept})
    freed = requirement_for(position, requirement.site, context.tables)
    return freed if isinstance(freed, Requirement) else requirement
