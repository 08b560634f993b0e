"""A set looked at as a whole: its figures per part, its lengths, its liquid and its flow, worked out once."""

from __future__ import annotations

import math

from spoutline.calc.elements import Element
from spoutline.calc.flow import FlowSolution, solve_flow
from spoutline.calc.liquids import LiquidState
from spoutline.frozen import frozen
from spoutline.model.limit import Jurisdiction, RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.parts.figures import (
    BREAKAWAY_SLOTS,
    LiquidStates,
    PartFigures,
    elements_of,
    flow_ceiling_m3_s,
    part_figures,
    rise_m,
    states_for,
)


@frozen
class Delivered:
    """What the set delivers at one temperature: the solved flow, and what of it comes within supply and law. m3/s."""

    state: LiquidState
    solution: FlowSolution
    flow_m3_s: float


@frozen
class SetView:
    """The set with what every check needs. ``delivered`` is None where a part lacks a figure for its loss."""

    hanging_set: HangingSet
    requirement: Requirement
    tables: RuleTables
    states: LiquidStates
    figures: tuple[PartFigures, ...]
    elements: tuple[tuple[Element, ...], ...] | None
    delivered: tuple[Delivered, Delivered] | None

    @property
    def jurisdiction(self) -> Jurisdiction:
        """The rule profile."""
        return self.tables.jurisdiction

    @property
    def links(self) -> tuple[SetLink, ...]:
        """The chain from the dispenser."""
        return self.hanging_set.links

    @property
    def nozzle(self) -> Part | None:
        """The nozzle, or None in a chain without one."""
        return self.hanging_set.part_in(Slot.NOZZLE)

    @property
    def curb_hose(self) -> Part | None:
        """The curb hose, or None in a chain without one."""
        return self.hanging_set.part_in(Slot.CURB_HOSE)

    @property
    def breakaway_index(self) -> int | None:
        """Place of the breakaway in the chain, or None in a chain without one."""
        places = (place for place, link in enumerate(self.links) if link.slot in BREAKAWAY_SLOTS)
        return next((place for place in places if self.links[place].part.breakaway is not None), None)

    @property
    def hose_length_m(self) -> float:
        """Whip and curb hose together."""
        return math.fsum(figure.hose_length_m for figure in self.figures)

    @property
    def reach_m(self) -> float:
        """Hoses and rigid parts together, the nozzle included, less what corners take."""
        return math.fsum(figure.reach_m for figure in self.figures)

    def length_before_m(self, place: int) -> float:
        """Hoses and rigid parts from the dispenser to the inlet of the part at ``place``."""
        return math.fsum(figure.hose_length_m + figure.rigid_length_m for figure in self.figures[:place])

    @property
    def hanging_length_m(self) -> float:
        """Hoses and rigid parts from the dispenser to the nozzle inlet: what hangs between outlet and nozzle."""
        return self.length_before_m(self._nozzle_place)

    @property
    def hanging_weight_n(self) -> float:
        """Weight of what hangs between outlet and nozzle inlet, filled."""
        return math.fsum(figure.filled_weight_n for figure in self.figures[: self._nozzle_place])

    @property
    def _nozzle_place(self) -> int:
        places = (place for place, link in enumerate(self.links) if link.slot is Slot.NOZZLE)
        return next(places, len(self.links))


def view_of(hanging_set: HangingSet, requirement: Requirement, tables: RuleTables) -> SetView:
    """Return the set with its figures and the flow that it delivers cold and hot.

    Parameters: ``hanging_set``; ``requirement`` of the position; ``tables``, limits and materials.
    """
    states = states_for(requirement)
    figures = tuple(part_figures(link.part, link.slot, requirement, tables, states.cold) for link in hanging_set.links)
    elements = _all_elements(hanging_set, requirement)
    return SetView(
        hanging_set=hanging_set,
        requirement=requirement,
        tables=tables,
        states=states,
        figures=figures,
        elements=elements,
        delivered=None if elements is None else _delivered(elements, requirement, tables, states),
    )


def _all_elements(hanging_set: HangingSet, requirement: Requirement) -> tuple[tuple[Element, ...], ...] | None:
    gathered: list[tuple[Element, ...]] = []
    for link in hanging_set.links:
        elements = elements_of(link.part, link.slot, requirement)
        if elements is None:
            return None
        gathered.append(elements)
    return tuple(gathered)


def _delivered(
    elements: tuple[tuple[Element, ...], ...], requirement: Requirement, tables: RuleTables, states: LiquidStates
) -> tuple[Delivered, Delivered]:
    flat = tuple(element for group in elements for element in group)
    ceiling = flow_ceiling_m3_s(requirement, tables)

    def at(state: LiquidState) -> Delivered:
        solution = solve_flow(
            flat, available_pressure_pa=requirement.supply_pressure_pa, rise_m=rise_m(requirement), state=state
        )
        return Delivered(state, solution, min(solution.flow_m3_s, ceiling))

    return at(states.cold), at(states.hot)
