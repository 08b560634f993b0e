"""Whether parts join up at all, by their ports alone: quick to say where no chain can be, before any figure is read."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from spoutline.model.plan import Conflict
from spoutline.model.port import Port
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.sets.conflicts import CHANGEABLE, GIVEN
from spoutline.planning.sets.pool import JudgedPart, Pool
from spoutline.rules.chain.joints import mates
from spoutline.search.conflicts import minimal_conflict


@dataclass
class PortReach:
    """Follows ports from the dispenser's outlet through the places of a chain; set limits are left out of account."""

    requirement: Requirement
    pool: Pool
    _met: dict[tuple[Port, Port], bool] = field(default_factory=dict)

    def first_gap(self, lines: frozenset[RequirementId]) -> Slot | None:
        """Return the first place to which no part allowed by ``lines`` can be joined; None where a chain is there."""
        joints_matter = RequirementId.JOINTS in lines
        reached = {self.requirement.outlet}
        for depth, slot in enumerate(self.requirement.chain):
            fittings = self._allowed(Slot.ADAPTOR, lines)
            if not depth:
                fittings += self._allowed(Slot.SPLITTER, lines)
            reached |= self._beyond(reached, fittings, joints_matter=joints_matter)
            parts = self._allowed(slot, lines)
            joined = [one for one in parts if self._is_met(reached, one, joints_matter=joints_matter)]
            if not joined:
                return slot
            reached = {one.part.outlet for one in joined if one.part.outlet is not None}
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

    def _allowed(self, slot: Slot, lines: frozenset[RequirementId]) -> list[JudgedPart]:
        return [
            one
            for one in self.pool.of(slot)
            if one.forbidden_by.isdisjoint(lines)
            and one.part.inlet is not None
            and (one.part.outlet is None) is (slot is Slot.NOZZLE)
        ]

    def _beyond(self, reached: set[Port], parts: Iterable[JudgedPart], *, joints_matter: bool) -> set[Port]:
        return {
            one.part.outlet
            for one in parts
            if one.part.outlet is not None and self._is_met(reached, one, joints_matter=joints_matter)
        }

    def _is_met(self, reached: set[Port], one: JudgedPart, *, joints_matter: bool) -> bool:
        inlet = one.part.inlet
        return not joints_matter or (inlet is not None and any(self._mates(port, inlet) for port in reached))

    def _mates(self, port: Port, other: Port) -> bool:
        if (port, other) not in self._met:
            self._met[port, other] = mates(port, other)
        return self._met[port, other]
