"""Which requirement line asks for a slot: what a conversion names as the rule behind an added part."""

from __future__ import annotations

from spoutline.model.requirement import Requirement, RequirementId, RequirementLine, Slot

_LINE_OF_SLOT = {
    Slot.WHIP_HOSE: RequirementId.WHIP_LENGTH,
    Slot.BREAKAWAY: RequirementId.BREAKAWAY_PLACE,
    Slot.CURB_HOSE: RequirementId.REACH,
    Slot.SWIVEL: RequirementId.SWIVEL,
    Slot.SWIVEL_BREAKAWAY: RequirementId.BREAKAWAY_PLACE,
    Slot.NOZZLE: RequirementId.SPOUT,
    Slot.ADAPTOR: RequirementId.JOINTS,
    Slot.SPLITTER: RequirementId.JOINTS,
}


def line_asking_for(slot: Slot, requirement: Requirement) -> RequirementLine | None:
    """Return the line that asks for a part in ``slot``, the order of the chain where none of its own was derived.

    Parameters: ``slot``; ``requirement`` of the position. Source: the line's own.
    """
    by_id = {line.id: line for line in requirement.lines}
    return by_id.get(_LINE_OF_SLOT[slot]) or by_id.get(RequirementId.CHAIN)
