"""A set looked at as a whole: its figures per part, its lengths, its liquid and its flow, worked out once."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import cached_property
from typing import Any, TypeVar

from spoutline.calc.elements import Element
from spoutline.calc.flow import FlowSolution, solve_flow
from spoutline.calc.liquids import LiquidState
from spoutline.frozen import frozen
from spoutline.model.limit import Jurisdiction, RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.derive.hose import worst_reach
from spoutline.rules.derive.reach_needed import ReachNeeded
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

_T = TypeVar("_T")


@frozen
class Delivered:
    """What the set delivers at one temperature: the solved flow, and what of it comes within supply and law. m3/s."""

    state: LiquidState
    solution: FlowSolution
    flow_m3_s: float


@frozen
class SetView:
    """The set with what every check needs. ``delivered`` is None where a part lacks a figure for its loss.

    ``hanging_length_m`` are hoses and rigid parts from the dispenser to the nozzle inlet, what hangs between outlet and
    nozzle, and ``hanging_weight_n`` what these weigh, filled.
    """

    hanging_set: HangingSet
    requirement: Requirement
    tables: RuleTables
    states: LiquidStates
    figures: tuple[PartFigures, ...]
    elements: tuple[tuple[Element, ...], ...] | None
    delivered: tuple[Delivered, Delivered] | None
    hanging_length_m: float
    hanging_weight_n: float
    views: SetViews

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
        return _length_m(self.figures[:place])

    def of_part(self, what: str, part: Part, made: Callable[[], _T]) -> _T:
        """Return what is worked out from a part and the position alone, once for all sets of the same ``SetViews``."""
        return self.views.of_part(what, part, made)


class SetViews:
    """Views of the sets at one position. What a part or the position alone decides is worked out once for all of them.

    Parameters: ``requirement`` of the position; ``tables``, limits and materials.
    """

    def __init__(self, requirement: Requirement, tables: RuleTables) -> None:
        self.requirement, self.tables = requirement, tables
        self._known: dict[tuple[str, str, str], tuple[Part, Any]] = {}  # by part number and maker, with the very part

    def of(self, hanging_set: HangingSet) -> SetView:
        """Return a set with its figures and the flow that it delivers cold and hot."""
        links = hanging_set.links
        figures, elements = tuple(map(self._figures, links)), self._all_elements(links)
        hanging = figures[: next((place for place, link in enumerate(links) if link.slot is Slot.NOZZLE), len(links))]
        return SetView(
            hanging_set=hanging_set,
            requirement=self.requirement,
            tables=self.tables,
            states=self.states,
            figures=figures,
            elements=elements,
            delivered=None if elements is None else self._delivered(elements),
            hanging_length_m=_length_m(hanging),
            hanging_weight_n=math.fsum(figure.filled_weight_n for figure in hanging),
            views=self,
        )

    def of_part(self, what: str, part: Part, made: Callable[[], _T]) -> _T:
        """Return what is worked out from a part and the position alone; the same part is not asked again."""
        key = what, part.number, part.maker
        known = self._known.get(key)
        if known is None or known[0] is not part:
            known = self._known[key] = part, made()
        found: _T = known[1]
        return found

    @cached_property
    def states(self) -> LiquidStates:
        """The liquid at both ends of the climate."""
        return states_for(self.requirement)

    @cached_property
    def worst_reach(self) -> ReachNeeded:
        """The filler that asks for the longest chain, with that length."""
        return worst_reach(self.requirement.position, self.tables.jurisdiction)

    @cached_property
    def flow_ceiling_m3_s(self) -> float:
        """The greatest flow that can reach a nozzle here."""
        return flow_ceiling_m3_s(self.requirement, self.tables)

    def _figures(self, link: SetLink) -> PartFigures:
        def made() -> PartFigures:
            return part_figures(link.part, link.slot, self.requirement, self.tables, self.states.cold)

        return self.of_part(f"figures {link.slot}", link.part, made)

    def _elements(self, link: SetLink) -> tuple[Element, ...] | None:
        def made() -> tuple[Element, ...] | None:
            return elements_of(link.part, link.slot, self.requirement)

        return self.of_part(f"elements {link.slot}", link.part, made)

    def _all_elements(self, links: tuple[SetLink, ...]) -> tuple[tuple[Element, ...], ...] | None:
        gathered: list[tuple[Element, ...]] = []
        for link in links:
            elements = self._elements(link)
            if elements is None:
                return None
            gathered.append(elements)
        return tuple(gathered)

    def _delivered(self, elements: tuple[tuple[Element, ...], ...]) -> tuple[Delivered, Delivered]:
        flat = tuple(element for group in elements for element in group)
        cold, hot = (self._delivered_in(flat, state) for state in self.states.both)
        return cold, hot

    def _delivered_in(self, elements: tuple[Element, ...], state: LiquidState) -> Delivered:
        requirement = self.requirement
        solution = solve_flow(
            elements, available_pressure_pa=requirement.supply_pressure_pa, rise_m=rise_m(requirement), state=state
        )
        return Delivered(state, solution, min(solution.flow_m3_s, self.flow_ceiling_m3_s))


def view_of(hanging_set: HangingSet, requirement: Requirement, tables: RuleTables) -> SetView:
    """Return one set with its figures and the flow that it delivers cold and hot.

    Parameters: ``hanging_set``; ``requirement`` of the position; ``tables``, limits and materials.
    """
    return SetViews(requirement, tables).of(hanging_set)


def _length_m(figures: tuple[PartFigures, ...]) -> float:
    return math.fsum(figure.hose_length_m + figure.rigid_length_m for figure in figures)
