"""Whether parts join up at all, by their ports alone: quick to say where no chain can be, before any figure is read."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace

import numpy as np

from spoutline.model.part_columns import ENDS
from spoutline.model.plan import Conflict
from spoutline.model.port import Port
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.sets.line_order import CHANGEABLE, GIVEN
from spoutline.planning.sets.pool import Pool, SlotParts, bits_of
from spoutline.rules.chain.joints import mates
from spoutline.search.conflicts import minimal_conflict

_Ends = tuple[Port, Port | None]  # a part's ends, dispenser first
_EndsAndLines = tuple[_Ends, int]  # with the lines whose musts such parts break, as bits


@dataclass
class PortReach:
    """Follows ports from the dispenser's outlet through the places of a chain; set limits are left out of account."""

    requirement: Requirement
    pool: Pool
    _met: dict[tuple[Port, Port], bool] = field(default_factory=dict)
    _different: dict[Slot, list[_EndsAndLines]] = field(default_factory=dict)
    _known: dict[tuple[Slot, int], tuple[_Ends, ...]] = field(default_factory=dict)  # by the lines in force, as bits

    def at_outlet(self, requirement: Requirement) -> PortReach:
        """Return the same for a requirement that differs in the dispenser's outlet alone; what was met is shared."""
        return replace(self, requirement=requirement)

    def first_gap(self, lines: frozenset[RequirementId]) -> Slot | None:
        """Return the first place to which no part allowed by ``lines`` can be joined; None where a chain is there."""
        joints_matter = RequirementId.JOINTS in lines
        reached = {self.requirement.outlet}
        for depth, slot in enumerate(self.requirement.chain):
            fittings = self._allowed(Slot.ADAPTOR, lines)
            if not depth:
                fittings += self._allowed(Slot.SPLITTER, lines)
            reached |= _beyond(self._joined(reached, fittings, joints_matter=joints_matter))
            joined = self._joined(reached, self._allowed(slot, lines), joints_matter=joints_matter)
            if not joined:
                return slot
            reached = _beyond(joined)
        return None

    def conflict(self) -> Conflict | None:
        """Return a minimal group of lines under which no parts join up; None where set limits must be asked too."""
        given, changeable = frozenset(GIVEN), frozenset(CHANGEABLE)
        if self.first_gap(given | changeable) is None:
            return None
        if self.first_gap(given) is not None:
            members = minimal_conflict(GIVEN, lambda lines: self.first_gap(lines) is None)
        else:
            members = minimal_conflict(CHANGEABLE, lambda lines: self.first_gap(lines | given) is None)
        return Conflict(requirements=members, exclusions=(), relaxations=())

    def _allowed(self, slot: Slot, lines: frozenset[RequirementId]) -> tuple[_Ends, ...]:
        """Return the different ends of the parts that ``lines`` allow in a slot."""
        broken = int(bits_of(lines))
        if (slot, broken) not in self._known:
            if slot not in self._different:
                portions = self.pool.portions(slot)
                self._different[slot] = [one for parts in portions for one in _ends_and_lines(parts, slot)]
            found = (ends for ends, breaks in self._different[slot] if not breaks & broken)
            self._known[slot, broken] = tuple(dict.fromkeys(found))
        return self._known[slot, broken]

    def _joined(self, reached: set[Port], parts: Iterable[_Ends], *, joints_matter: bool) -> list[_Ends]:
        """Return the ends of those parts whose inlet makes up with an open port."""
        if not joints_matter:
            return list(parts)
        met = {inlet for inlet in {ends[0] for ends in parts} if any(self._mates(port, inlet) for port in reached)}
        return [ends for ends in parts if ends[0] in met]

    def _mates(self, port: Port, other: Port) -> bool:
        if (port, other) not in self._met:
            self._met[port, other] = mates(port, other)
        return self._met[port, other]


def _beyond(parts: Iterable[_Ends]) -> set[Port]:
    """Return the ports that parts leave open."""
    return {after for _, after in parts if after is not None}


def _ends_and_lines(parts: SlotParts, slot: Slot) -> Iterator[_EndsAndLines]:
    """Yield once what parts of a slot have alike: their ends, and the lines whose musts they break."""
    columns = parts.columns
    rows = parts.inside & columns.has_port("inlet") & (columns.has_port("outlet") != (slot is Slot.NOZZLE))
    before, after = (columns.arrays[end][rows].astype(np.int64) + 1 for end in ENDS)  # 0: no such end
    patterns, which = np.unique(parts.forbidden[rows], return_inverse=True)
    count = len(columns.ports) + 1
    for code in np.unique((which * count + before) * count + after).tolist():
        first, outlet = divmod(code, count)
        pattern, inlet = divmod(first, count)
        yield (columns.ports[inlet - 1], None if outlet == 0 else columns.ports[outlet - 1]), int(patterns[pattern])
