"""What only a whole chain can break: its order, the place of a splitter, pinned parts, what its length rests on."""

from __future__ import annotations

from spoutline.model.finding import Finding, SubjectKind
from spoutline.model.limit import RuleTables
from spoutline.model.plan import HangingSet
from spoutline.model.quantity import Fact
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.chain.fenced import fenced_length_findings
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.verdicts import finding

FITTING_SLOTS = (Slot.ADAPTOR, Slot.SPLITTER)
_PULLED_SLOTS = (Slot.WHIP_HOSE, Slot.CURB_HOSE, Slot.NOZZLE)  # what a vehicle drags away, seen from a breakaway


def vehicle_side(hanging_set: HangingSet, place: int) -> int | None:
    """Return the place of what a breakaway's vehicle end faces: the next hose or nozzle from the dispenser outward.

    Swivels and adaptors between do not count. None where nothing hangs below.

    Parameters: ``hanging_set``, the chain from the dispenser; ``place`` of the breakaway in it, counted from 0.
    Source: common practice, no source.
    """
    below = range(place + 1, len(hanging_set.links))
    return next((at for at in below if hanging_set.links[at].slot in _PULLED_SLOTS), None)


def set_findings(hanging_set: HangingSet, requirement: Requirement, tables: RuleTables) -> tuple[Finding, ...]:
    """Return what the order of the parts and the person's pinned parts find missing, and what its length rests on.

    What its parts and joints break is told by their own rules.

    Parameters: ``hanging_set``, the chain from the dispenser; ``requirement``; ``tables``.
    """
    links = hanging_set.links
    found: list[Finding] = []

    def broken(rule_id: RuleId, *facts: Fact) -> None:
        found.append(finding(rule_id, tables, SubjectKind.SET, requirement.position.label, *facts))

    chain = tuple(link.slot for link in links if link.slot not in FITTING_SLOTS)
    if chain != requirement.chain:
        broken(
            RuleId.CHAIN_ORDER,
            Fact("chain", ", ".join(chain)),
            Fact("chain_asked", ", ".join(requirement.chain)),
        )
    for place, link in enumerate(links):
        if link.slot is Slot.SPLITTER and place > 0:
            broken(RuleId.SPLITTER_PLACE, Fact("part", link.part.number))
    for pinned in requirement.position.decisions.pinned:
        if not any(pinned.names(link.part.ref) for link in links):
            broken(RuleId.PINNED_PART_MISSING, Fact("part", str(pinned)))
    return (*found, *fenced_length_findings(hanging_set, requirement, tables))
