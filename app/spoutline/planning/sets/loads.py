"""The sums that a chain is held to, as load vectors and limits of the search; figures come from the rules."""

from __future__ import annotations

import math
from collections.abc import Iterable
from copy import copy
from enum import IntEnum
from functools import cached_property

import numpy as np

from spoutline.calc.constants import STANDARD_GRAVITY
from spoutline.frozen import frozen
from spoutline.model.check import CheckId
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.part import Part
from spoutline.model.part_columns import Floats, Ints, OnePart, PartColumns, PartView
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.rules.chain.hanging import longest_at_rest_m, longest_in_use_m
from spoutline.rules.derive.hose import is_on_reel
from spoutline.rules.parts.figures import BREAKAWAY_SLOTS, flow_ceiling_m3_s, rise_m, states_for
from spoutline.rules.parts.sums import (
    coiled_m,
    corner_allowance_m,
    design_flow_m3_s,
    filled_weight_n,
    is_hose,
    known_or,
    loss_pa,
    pull_demand_n,
    resistance_ohm,
)

_NO_LIMIT_PA = -1e15  # outweighs any loss: the opening pressure of a nozzle without the device limits nothing
_BISECTED_M = 2e-4  # the longest chain on a cord is bisected; within this the full check arbitrates


class Load(IntEnum):
    """The additive figures of a chain, in the order of the search's load vectors."""

    HOSE_LENGTH = 0  # m, hoses alone
    REACH = 1  # m, negated: hoses and rigid parts
    CLEARANCE = 2  # m, everything before the nozzle
    RESISTANCE = 3  # ohm, one joint with every part
    SERVICE_LOAD = 4  # N below the breakaway, less what it stands at a margin of one
    SERVICE_MARGIN = 5  # N, the same at the margin that the profile asks
    WANTED_FLOW_COLD = 6  # Pa lost at the wanted flow
    WANTED_FLOW_HOT = 7
    NOZZLE_FLOW_COLD = 8  # Pa lost at the nozzle's least flow
    NOZZLE_FLOW_HOT = 9
    OPENING_COLD = 10  # Pa lost upstream at the design flow, and the nozzle's opening pressure
    OPENING_HOT = 11
    PINNED = 12  # pinned parts present, negated
    HOOK = 13  # m, negated: everything before the nozzle


_SERVICE = (Load.SERVICE_LOAD, Load.SERVICE_MARGIN)


# Set checks on a should-line that the search bounds: such a check turns a set down while its line is in force.
CHECK_LINES: dict[CheckId, RequirementId] = {
    CheckId.GROUND_CLEARANCE_AT_REST: RequirementId.GROUND_CLEARANCE,
    CheckId.GROUND_CLEARANCE_IN_USE: RequirementId.GROUND_CLEARANCE,
    CheckId.BREAKAWAY_SERVICE_LOAD: RequirementId.SERVICE_LOAD,
    CheckId.FLOW_COLD: RequirementId.FLOW,
    CheckId.FLOW_HOT: RequirementId.FLOW,
}
# The requirement line behind every other check that can forbid a set.
MUST_CHECK_LINES: dict[CheckId, RequirementId] = {
    CheckId.SPOUT_DIAMETER: RequirementId.SPOUT,
    CheckId.HOSE_LENGTH: RequirementId.HOSE_LENGTH,
    CheckId.HOSE_REACH: RequirementId.REACH,
    CheckId.WHIP_LENGTH: RequirementId.WHIP_LENGTH,
    CheckId.BREAKAWAY_FORCE_CLASS: RequirementId.SEPARATION_FORCE,
    CheckId.BREAKAWAY_SERVICE_LOAD: RequirementId.SERVICE_LOAD,
    CheckId.BREAKAWAY_DRIVE_OFF: RequirementId.DRIVE_OFF,
    CheckId.RESISTANCE_TOTAL: RequirementId.RESISTANCE,
    CheckId.RESISTANCE_PARTS: RequirementId.CONTINUITY,
    CheckId.NOZZLE_MINIMUM_FLOW: RequirementId.NOZZLE_FLOW,
    CheckId.NOZZLE_MAXIMUM_FLOW: RequirementId.NOZZLE_FLOW,
    CheckId.NOZZLE_OPENING_PRESSURE: RequirementId.NOZZLE_FLOW,
    CheckId.GASOLINE_FLOW_LIMIT: RequirementId.FLOW,
    CheckId.PERMEATION: RequirementId.LOW_PERMEATION,
}


@frozen
class SetLimit:
    """An upper limit on a load sum: the requirement line it serves, its weight, and how it is shown."""

    load: Load
    requirement: RequirementId
    severity: Severity
    limit: float
    dimension: Dimension

    def shown(self, value: float) -> float:
        """Return a load sum as a person knows it: lower limits are kept as negated sums."""
        return -value if self.load in (Load.REACH, Load.PINNED, Load.HOOK) else value


@frozen
class Loads:
    """What parts of a slot add to the sums, for nozzles of one design flow: a column for each load.

    ``below`` are the loads of service of what hangs below the breakaway, ``above`` of what hangs above it.
    """

    columns: tuple[Floats, ...]
    below: tuple[Floats, Floats]
    above: tuple[Floats, Floats]
    bears: Floats
    demands: Floats

    def column(self, load: Load, *, above_breakaway: bool) -> Floats:
        """Return one load of each part on its side of the breakaway."""
        if load in _SERVICE:
            return (self.above if above_breakaway else self.below)[_SERVICE.index(load)]
        return self.columns[load]

    def of(self, rows: Ints, *, above_breakaway: bool) -> Floats:
        """Return the load vectors of some parts, a row each."""
        table = np.empty((len(rows), len(self.columns)))
        for load, column in enumerate(self.columns):
            if load not in _SERVICE:
                table[:, load] = column.take(rows)
        for load, column in zip(_SERVICE, self.above if above_breakaway else self.below, strict=True):
            table[:, load] = column.take(rows)
        return table


@frozen
class _Flows:
    """The flows (m3/s) at which a group of nozzles is judged."""

    wanted: float
    least: float
    design: float


class LoadModel:
    """Loads of parts and limits of sums for one requirement; worked out once for each kind, place and design flow."""

    def __init__(self, requirement: Requirement, tables: RuleTables) -> None:
        self.requirement = requirement
        self.tables = tables
        self.states = states_for(requirement)
        self.pinned = requirement.position.decisions.pinned
        self._ceiling_m3_s = flow_ceiling_m3_s(requirement, tables)
        self._design_flows: dict[PartColumns, Floats] = {}
        self.forget()

    def forget(self) -> None:
        """Let go the loads that were worked out, a megabyte of a large catalogue."""
        self._known: dict[tuple[PartColumns | PartRef, Slot, float], Loads] = {}

    def at_outlet(self, requirement: Requirement) -> LoadModel:
        """Return the same for a requirement that differs in the thread of the dispenser's outlet alone.

        No part's load rests on that; what was worked out is shared.
        """
        other = copy(self)
        other.requirement = requirement
        return other

    def design_flows_m3_s(self, nozzles: PartView) -> Floats:
        """Return the flow (m3/s) that decides the group of each nozzle: parts lose pressure at this flow."""
        if not isinstance(nozzles, PartColumns):
            return design_flow_m3_s(nozzles, self.requirement, self.tables)
        if nozzles not in self._design_flows:
            self._design_flows[nozzles] = design_flow_m3_s(nozzles, self.requirement, self.tables)
        return self._design_flows[nozzles]

    def is_above_breakaway(self, depth: int) -> bool:
        """Say whether a fitting or part of the slot at ``depth`` of the chain hangs above the breakaway."""
        chain = self.requirement.chain
        place = next((index for index, slot in enumerate(chain) if slot in BREAKAWAY_SLOTS), 0)
        return depth <= place

    @cached_property
    def set_limits(self) -> tuple[SetLimit, ...]:
        """Return every limit that applies, musts and shoulds."""
        return (
            *self._length_limits(),
            *self._pull_limits(),
            *self._flow_limits(),
            *self._decision_limits(),
        )

    def _length_limits(self) -> Iterable[SetLimit]:
        window = self.requirement.hose_length
        length = Dimension.LENGTH
        if window.maximum is not None:
            yield SetLimit(Load.HOSE_LENGTH, RequirementId.HOSE_LENGTH, Severity.MUST, window.maximum, length)
        if window.minimum is not None:
            yield SetLimit(Load.REACH, RequirementId.REACH, Severity.MUST, -window.minimum, length)
        if not is_on_reel(self.requirement.position):
            hook = -self._way_to_hook_m()
            yield SetLimit(Load.HOOK, RequirementId.GROUND_CLEARANCE, Severity.SHOULD, hook, length)
        longest = self._longest_clear_m()
        if longest is not None:
            yield SetLimit(Load.CLEARANCE, RequirementId.GROUND_CLEARANCE, Severity.SHOULD, longest, length)

    def _way_to_hook_m(self) -> float:
        """Return the straight way (m) from the outlet to the nozzle's hook: a shorter chain cannot be hung up."""
        position = self.requirement.position
        return math.hypot(position.hook.distance_m, position.outlet.height_m - position.hook.height_m)

    def _longest_clear_m(self) -> float | None:
        """Return the longest chain (m) that hangs clear at rest and in use; None where nothing hangs."""
        jurisdiction = self.tables.jurisdiction
        at_rest = longest_at_rest_m(self.requirement, jurisdiction)
        if at_rest is None:
            return 0.0  # hook or outlet itself is too low: no chain hangs clear
        longest = min(at_rest, longest_in_use_m(self.requirement, jurisdiction))
        return None if math.isinf(longest) else longest + _BISECTED_M

    def _pull_limits(self) -> Iterable[SetLimit]:
        force = Dimension.FORCE
        yield SetLimit(Load.SERVICE_LOAD, RequirementId.SERVICE_LOAD, Severity.MUST, 0.0, force)
        yield SetLimit(Load.SERVICE_MARGIN, RequirementId.SERVICE_LOAD, Severity.SHOULD, 0.0, force)
        if self.requirement.bonding_severity is Severity.MUST:
            total = self.tables.jurisdiction.number(LimitId.BOND_TOTAL_MAX)
            yield SetLimit(Load.RESISTANCE, RequirementId.RESISTANCE, Severity.MUST, total, Dimension.RESISTANCE)

    def _flow_limits(self) -> Iterable[SetLimit]:
        rise = rise_m(self.requirement)
        pressure = self.requirement.supply_pressure_pa
        for state, loads in (
            (self.states.cold, (Load.WANTED_FLOW_COLD, Load.NOZZLE_FLOW_COLD, Load.OPENING_COLD)),
            (self.states.hot, (Load.WANTED_FLOW_HOT, Load.NOZZLE_FLOW_HOT, Load.OPENING_HOT)),
        ):
            left = pressure - state.density_kg_m3 * STANDARD_GRAVITY.value * rise
            # More flow wanted than the dispenser or the law gives: no set delivers it, whatever it loses.
            wanted = -math.inf if self.requirement.wanted_flow_m3_s > self._ceiling_m3_s * (1.0 + 1e-9) else left
            lines = (
                (loads[0], RequirementId.FLOW, Severity.SHOULD, wanted),
                (loads[1], RequirementId.NOZZLE_FLOW, Severity.MUST, left),
                (loads[2], RequirementId.NOZZLE_FLOW, Severity.MUST, left),
            )
            for load, requirement, severity, limit in lines:
                yield SetLimit(load, requirement, severity, limit, Dimension.PRESSURE)

    def _decision_limits(self) -> Iterable[SetLimit]:
        if self.pinned:
            yield SetLimit(
                Load.PINNED, RequirementId.DECISION, Severity.MUST, -float(len(self.pinned)), Dimension.COUNT
            )

    def limit_vector(self, limits: Iterable[SetLimit]) -> tuple[float, ...]:
        """Return one upper limit per load, infinite where none of ``limits`` holds it."""
        vector = [math.inf] * len(Load)
        for limit in limits:
            vector[limit.load] = min(vector[limit.load], limit.limit)
        return tuple(vector)

    def loads(self, parts: PartColumns, slot: Slot, flow_m3_s: float) -> Loads:
        """Return the loads of parts in ``slot`` for nozzles with this design flow (m3/s)."""
        if (parts, slot, flow_m3_s) not in self._known:
            self._known[parts, slot, flow_m3_s] = self._work_out(parts, slot, flow_m3_s)
        return self._known[parts, slot, flow_m3_s]

    def _loads_of(self, part: Part, slot: Slot, flow_m3_s: float) -> Loads:
        if (part.ref, slot, flow_m3_s) not in self._known:
            self._known[part.ref, slot, flow_m3_s] = self._work_out(OnePart(part), slot, flow_m3_s)
        return self._known[part.ref, slot, flow_m3_s]

    def _flows(self, design_m3_s: float) -> _Flows:
        """Return the flows for a group of nozzles.

        A least flow above the wanted flow is judged as it stands. For the others the wanted flow rules, and the full
        check of the least flow arbitrates where the wanted flow had to be given up.
        """
        wanted = min(self.requirement.wanted_flow_m3_s, self._ceiling_m3_s)
        return _Flows(wanted=wanted, least=design_m3_s if design_m3_s > wanted else 0.0, design=design_m3_s)

    def _work_out(self, part: PartView, slot: Slot, design_m3_s: float) -> Loads:
        """Return the loads of one part, or of each of a kind."""
        requirement, nothing = self.requirement, np.zeros_like(part.number("mass_kg"))
        hose_m = part.number("hose.length_m") if is_hose(part) else nothing
        rigid_m = nothing if is_hose(part) else part.number("length_m")
        taken_m = corner_allowance_m(part, slot, requirement, self.tables)
        taken_m = taken_m + (coiled_m(part, slot, requirement) if is_hose(part) else nothing)
        is_fitting = slot in (Slot.ADAPTOR, Slot.SPLITTER)  # never counted on: adaptors must not lengthen a hose
        reach_m = nothing if is_fitting else hose_m + rigid_m - taken_m
        hanging_m = nothing if slot is Slot.NOZZLE else hose_m + rigid_m
        joint = self.tables.jurisdiction.number(LimitId.BOND_JOINT)
        bond = known_or(resistance_ohm(part), 0.0) + joint
        pinned = sum((part.named((pin,)).astype(np.float64) for pin in self.pinned), nothing)
        losses, opening = self._pressures(part, slot, design_m3_s)
        above, below = self._service(part, slot)
        strength = known_or(part.number("pull_strength_n"), 0.0)
        return Loads(
            columns=(hose_m, -reach_m, hanging_m, bond, *below, *losses, *opening, 0.0 - pinned, -hanging_m),
            below=below,
            above=above,
            bears=strength,
            demands=pull_demand_n(part, slot, requirement, self.tables),
        )

    def _pressures(
        self, part: PartView, slot: Slot, design_m3_s: float
    ) -> tuple[tuple[Floats, ...], tuple[Floats, Floats]]:
        """Return what is lost at the wanted and the least flow, cold and hot, and what the opening takes.

        The design flow is mostly the wanted one: each loss is worked out once. Upstream parts take their loss; the
        nozzle asks for its opening pressure, or frees the sum if it has none.
        """
        flows = self._flows(design_m3_s)
        lost = {
            flow: [loss_pa(part, slot, self.requirement, flow, state) for state in self.states.both]
            for flow in {flows.wanted, flows.least, flows.design}
        }
        cold, hot = lost[flows.design]
        if slot is Slot.NOZZLE:
            asked = part.number("nozzle.opening_pressure_pa")
            asks = part.flag("nozzle.no_pressure_device") & ~np.isnan(asked)
            cold = hot = np.where(asks, asked, _NO_LIMIT_PA)
        return (*lost[flows.wanted], *lost[flows.least]), (cold, hot)

    def _service(self, part: PartView, slot: Slot) -> tuple[tuple[Floats, Floats], tuple[Floats, Floats]]:
        """Return what hangs: a breakaway brings what it stands, as a negative load; parts below it use that up."""
        if slot not in BREAKAWAY_SLOTS:
            weight = filled_weight_n(part, self.states.cold)
            nothing = np.zeros_like(weight)
            return (nothing, nothing), (weight, weight)
        always, least = self._always_n(part), part.number("breakaway.separation_minimum_n")
        margin = self.tables.jurisdiction.number(LimitId.BREAKAWAY_SERVICE_MARGIN)
        own = (always - least, always - least / margin)
        return own, own

    def tension_allowed_n(self, breakaways: PartColumns, ratio: float) -> Floats:
        """Return the tension (N) of the hose in use at which the force that parts each is ``ratio`` times its load."""
        least = breakaways.number("breakaway.separation_minimum_n")
        return least / ratio - self._always_n(breakaways)

    def _always_n(self, breakaways: PartView) -> Floats:
        """Return what pulls at breakaways (N) beside the weight: a tug, and the thrust where they are not balanced."""
        seal = known_or(breakaways.number("breakaway.seal_diameter_m"), 0.0)
        thrust = self.requirement.supply_pressure_pa * math.pi / 4.0 * seal**2
        return self.tables.jurisdiction.number(LimitId.PULL_USER_TUG) + thrust

    def _design_flow_of(self, hanging_set: HangingSet) -> float:
        nozzle = hanging_set.part_in(Slot.NOZZLE)
        if nozzle is None:
            return self.requirement.wanted_flow_m3_s
        return float(self.design_flows_m3_s(OnePart(nozzle)))

    def load_of(self, hanging_set: HangingSet, load: Load) -> float:
        """Return the sum of one load over a set."""
        flow = self._design_flow_of(hanging_set)
        places = [link.slot for link in hanging_set.links]
        breakaway = next((index for index, slot in enumerate(places) if slot in BREAKAWAY_SLOTS), len(places))
        return math.fsum(
            float(self._loads_of(link.part, link.slot, flow).column(load, above_breakaway=index <= breakaway))
            for index, link in enumerate(hanging_set.links)
        )

    def loss_of_pa(self, hanging_set: HangingSet) -> float:
        """Return the pressure (Pa) that a set loses at the wanted flow, liquid hot."""
        return self.load_of(hanging_set, Load.WANTED_FLOW_HOT)
