"""Numbers for the ports of a position, and which of them meet."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from spoutline.model.part_columns import End, Ints
from spoutline.model.port import Port
from spoutline.planning.sets.pool import SlotParts
from spoutline.rules.chain.joints import mates
from spoutline.search.graph import NO_PORT


@dataclass
class PortNumbers:
    """Numbers for the distinct ports met; which meet is asked once per pair of port kinds."""

    numbers: dict[Port, int] = field(default_factory=dict)
    _meets: dict[tuple[int, int], bool] = field(default_factory=dict)
    _ends: dict[tuple[SlotParts, End], Ints] = field(default_factory=dict)
    _tables: dict[tuple[bool, int], dict[int, frozenset[int]]] = field(default_factory=dict)

    def number(self, port: Port) -> int:
        """Return the number of a port; a new one for one not met before."""
        return self.numbers.setdefault(port, len(self.numbers))

    def numbers_of(self, parts: SlotParts, end: End) -> Ints:
        """Return the numbers of the ports at an end; ``NO_PORT`` where there is none."""
        if (parts, end) not in self._ends:
            columns = parts.columns
            codes = columns.arrays[end]
            table = np.full(len(columns.ports) + 1, NO_PORT, np.int64)  # no port is -1: the last
            met = np.bincount(codes[parts.inside] + 1, minlength=len(table))[1:]
            for code in np.flatnonzero(met).tolist():
                table[code] = self.number(columns.ports[code])
            self._ends[parts, end] = np.take(table, codes, mode="wrap")
        return self._ends[parts, end]

    def table(self, *, joints_matter: bool) -> dict[int, frozenset[int]]:
        """Return which numbers meet which."""
        asked = joints_matter, len(self.numbers)
        if asked not in self._tables:
            every = frozenset(self.numbers.values())
            self._tables[asked] = {
                number: self._met_by(port, number) if joints_matter else every for port, number in self.numbers.items()
            }
        return self._tables[asked]

    def _met_by(self, port: Port, number: int) -> frozenset[int]:
        """Return the numbers of the ports that meet a port; numbers, since ports take long to be looked up."""
        known, found = self._meets, []
        for facing, other in self.numbers.items():
            meets = known.get((number, other))
            if meets is None:
                meets = known[number, other] = mates(port, facing)
            if meets:
                found.append(other)
        return frozenset(found)
