"""The choice of a set as a mixed-integer program over the whole catalogue, written from the rules' figures.

Independent of the search: binary variables for (place, port before, part), flow conservation over open ports, one row
for every sum that a chain is held to, solved by HiGHS (scipy.optimize.milp).
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_array

from spoutline.calc.liquids import LiquidState
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.part import Part, PartKind
from spoutline.model.port import Port
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.protocols import CandidateFilter, PartStore
from spoutline.rules.chain.joints import mates
from spoutline.rules.parts.figures import (
    design_flow_m3_s,
    flow_ceiling_m3_s,
    loss_pa,
    part_figures,
    rise_m,
    states_for,
)
from spoutline.rules.parts.part_rules import judge_part

G = 9.80665  # m/s2, standard gravity
REGRET = 1e7  # above any price of a set in cents


@dataclass(frozen=True)
class Arc:
    """Put ``part`` in ``place`` while ``before`` is open; ``part`` None leaves an adaptor place empty."""

    place: int
    before: Port
    after: Port | None
    part: Part | None
    slot: Slot
    regrets: int


class Programme:
    """One group of nozzles with the same design flow."""

    def __init__(
        self,
        requirement: Requirement,
        tables: RuleTables,
        store: PartStore,
        *,
        clearance_m: float,
        given_up: frozenset[RequirementId] = frozenset(),
    ) -> None:
        """``given_up`` names the should-lines of the whole set that are not asked."""
        self.given_up = given_up
        self.requirement, self.tables, self.store = requirement, tables, store
        self.clearance_m = clearance_m
        self.places = [place for slot in requirement.chain for place in (Slot.ADAPTOR, slot)]
        breakaways = (Slot.BREAKAWAY, Slot.SWIVEL_BREAKAWAY)
        self.breakaway_place = next(index for index, slot in enumerate(self.places) if slot in breakaways)
        self.allowed = {slot: self._allowed(slot) for slot in set(self.places)}

    def _allowed(self, slot: Slot) -> list[tuple[Part, int]]:
        found = []
        for part in self.store.candidates(CandidateFilter(kind=PartKind(slot))):
            findings = [
                one for one in judge_part(part, slot, self.requirement, self.tables) if one.verdict is Verdict.BROKEN
            ]
            if not any(one.severity is Severity.MUST for one in findings):
                found.append((part, sum(one.severity is Severity.SHOULD for one in findings)))
        return found

    def best(self) -> float | None:
        """Return regrets * REGRET + price in cents of the optimum over all groups of nozzles."""
        flows = {design_flow_m3_s(part, self.requirement, self.tables) for part, _ in self.allowed[Slot.NOZZLE]}
        found = [value for flow in flows if (value := self._solved(flow)) is not None]
        return min(found, default=None)

    def _arcs(self, flow: float) -> list[Arc]:
        arcs: list[Arc] = []
        open_ports: set[Port] = {self.requirement.outlet}
        for place, slot in enumerate(self.places):
            after: set[Port] = set()
            for port in sorted(open_ports):
                if slot is Slot.ADAPTOR:
                    arcs.append(Arc(place, port, port, None, slot, 0))
                    after.add(port)
                for part, regrets in self.allowed[slot]:
                    if part.inlet is None or not mates(port, part.inlet):
                        continue
                    if slot is Slot.NOZZLE and design_flow_m3_s(part, self.requirement, self.tables) != flow:
                        continue
                    arcs.append(Arc(place, port, part.outlet, part, slot, regrets))
                    if part.outlet is not None:
                        after.add(part.outlet)
            open_ports = after
        return arcs

    def _solved(self, flow: float) -> float | None:
        arcs = self._arcs(flow)
        if not arcs:
            return None
        rows = [self._conservation(arcs), *self._sums(arcs, flow), *self._strengths(arcs)]
        currency = self.requirement.site.currency
        costs = np.array(
            [(arc.part.price_minor(currency) or 0) + arc.regrets * REGRET if arc.part else 0.0 for arc in arcs]
        )
        solved = milp(costs, constraints=rows, integrality=np.ones(len(arcs)), bounds=Bounds(0, 1))
        return float(solved.fun) if solved.status == 0 else None

    def _conservation(self, arcs: list[Arc]) -> LinearConstraint:
        nodes: dict[tuple[int, Port | None], int] = {}
        entries: list[tuple[int, int, float]] = []
        for column, arc in enumerate(arcs):
            start = nodes.setdefault((arc.place, arc.before), len(nodes))
            end = nodes.setdefault((arc.place + 1, arc.after), len(nodes))
            entries += [(start, column, 1.0), (end, column, -1.0)]
        low, high = np.zeros(len(nodes)), np.zeros(len(nodes))
        for (place, port), row in nodes.items():
            if (place, port) == (0, self.requirement.outlet):
                low[row] = high[row] = 1
            elif place == len(self.places):
                low[row] = -1
        row_numbers, columns, values = zip(*entries, strict=True)
        matrix = csr_array((values, (row_numbers, columns)), shape=(len(nodes), len(arcs)))
        return LinearConstraint(matrix, low, high)

    def _sums(self, arcs: list[Arc], flow: float) -> list[LinearConstraint]:
        states = states_for(self.requirement)
        jurisdiction = self.tables.jurisdiction
        wanted = min(self.requirement.wanted_flow_m3_s, flow_ceiling_m3_s(self.requirement, self.tables))

        def over(figure: Callable[[Arc], float]) -> np.ndarray:
            return np.array([figure(arc) if arc.part else 0.0 for arc in arcs])

        def figures(arc: Arc):
            return part_figures(arc.part, arc.slot, self.requirement, self.tables, states.cold)

        window = self.requirement.hose_length
        rows = [
            LinearConstraint(over(lambda arc: figures(arc).hose_length_m), -np.inf, window.maximum or np.inf),
            LinearConstraint(over(lambda arc: figures(arc).reach_m), window.minimum or 0.0, np.inf),
            LinearConstraint(
                over(
                    lambda arc: (
                        0.0 if arc.slot is Slot.NOZZLE else figures(arc).hose_length_m + figures(arc).rigid_length_m
                    )
                ),
                -np.inf,
                np.inf if RequirementId.GROUND_CLEARANCE in self.given_up else self.clearance_m,
            ),
        ]
        if self.requirement.bonding_severity is Severity.MUST:
            joint = jurisdiction.number(LimitId.BOND_JOINT)
            resistance = over(lambda arc: (figures(arc).resistance_ohm or 0.0) + joint)
            rows.append(LinearConstraint(resistance, -np.inf, jurisdiction.number(LimitId.BOND_TOTAL_MAX)))
        for state in states.both:
            left = self.requirement.supply_pressure_pa - state.density_kg_m3 * G * rise_m(self.requirement)
            lost = over(lambda arc, s=state: loss_pa(arc.part, arc.slot, self.requirement, wanted, s))
            opening = over(lambda arc, s=state: self._opening(arc, flow, s))
            least = over(lambda arc, s=state: loss_pa(arc.part, arc.slot, self.requirement, flow, s))
            rows.append(LinearConstraint(opening, -np.inf, left))
            if RequirementId.FLOW not in self.given_up:
                rows.append(LinearConstraint(lost, -np.inf, left))
            if flow > wanted:
                rows.append(LinearConstraint(least, -np.inf, left))
        rows.append(self._service(arcs, figures))
        return rows

    def _opening(self, arc: Arc, flow: float, state: LiquidState) -> float:
        """A nozzle with the device asks for its opening pressure; one without frees the row."""
        nozzle = arc.part.nozzle if arc.part else None
        if nozzle is None:
            return loss_pa(arc.part, arc.slot, self.requirement, flow, state)
        return (nozzle.opening_pressure_pa or 0.0) if nozzle.no_pressure_device else -1e7

    def _service(self, arcs: list[Arc], figures: Callable) -> LinearConstraint:
        """Least separation force over the margin carries the tug, the thrust and what hangs below."""
        jurisdiction = self.tables.jurisdiction
        asked = jurisdiction.number(LimitId.BREAKAWAY_SERVICE_MARGIN)
        margin = 1.0 if RequirementId.SERVICE_LOAD in self.given_up else asked
        row = []
        for arc in arcs:
            if arc.part is None or arc.place < self.breakaway_place:
                row.append(0.0)
            elif arc.place == self.breakaway_place:
                assert arc.part.breakaway is not None
                seal = arc.part.breakaway.seal_diameter_m or 0.0
                thrust = self.requirement.supply_pressure_pa * math.pi * seal**2 / 4
                tug = jurisdiction.number(LimitId.PULL_USER_TUG)
                row.append(tug + thrust - arc.part.breakaway.separation_minimum_n / margin)
            else:
                row.append(figures(arc).filled_weight_n)
        return LinearConstraint(np.array(row), -np.inf, 0.0)

    def _strengths(self, arcs: list[Arc]) -> list[LinearConstraint]:
        """A breakaway and a part, or the outlet, that is too weak for it exclude each other."""
        states = states_for(self.requirement)
        demands = np.zeros(len(arcs))
        strengths = np.full(len(arcs), np.inf)
        for column, arc in enumerate(arcs):
            if arc.part is None:
                continue
            figures = part_figures(arc.part, arc.slot, self.requirement, self.tables, states.cold)
            demands[column] = figures.pull_demand_n
            strengths[column] = figures.pull_strength_n or 0.0
        places = np.array([arc.place for arc in arcs])
        rows = []
        for demand in sorted(set(demands[demands > 0])):
            asks = (demands >= demand).astype(float)
            if self.requirement.outlet_pull_strength_n < demand:
                rows.append(LinearConstraint(asks, 0, 0))
            for place in range(len(self.places)):
                weak = ((places == place) & (strengths < demand)).astype(float)
                if place != self.breakaway_place and weak.any():
                    rows.append(LinearConstraint(asks + weak, -np.inf, 1))
        return rows
