"""From judged parts to chain problems: ports numbered, figures turned into loads and costs, lines into limits."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cached_property

import numpy as np

from spoutline.model.part_columns import Floats, Ints, Mask
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.sets.assembled import Assembled, LayerParts
from spoutline.planning.sets.loads import Load, LoadModel, Loads
from spoutline.planning.sets.pool import Pool, SlotParts
from spoutline.planning.sets.port_numbers import PortNumbers
from spoutline.planning.sets.set_query import REGRET, Objective, SetQuery
from spoutline.search.finder import Finder
from spoutline.search.graph import Item, Layer, Problem
from spoutline.search.item_table import ItemTable, joined, split_costs

_LARGEST = 2.0**62
_UNBOUNDED = 1e22  # stands for an infinite load, which is more than any chain bears
_MOST_LOSS_PA = 1e9  # stands for a loss that is not known
_UNITS_PER_KG = 1e4  # masses are added up in tenths of a gram
_TIE = 10**9  # outweighs any price, so that the price only breaks ties of another objective

# portion, design flow, above the breakaway, strengths, objective, regrets weigh
_Counting = tuple[SlotParts, float, bool, bool, Objective | Load, bool]


class ChainProblems:
    """Makes the chain problems of one position out of its pool and loads; ports keep their numbers."""

    def __init__(self, requirement: Requirement, pool: Pool, model: LoadModel) -> None:
        self._requirement, self._pool, self._model = requirement, pool, model
        self._ports = PortNumbers()
        self._start = self._ports.number(requirement.outlet)
        self._made: dict[_Counting, dict[int, Item]] = {}

    def forget(self) -> None:
        """Let go the items made."""
        self._made.clear()

    def free(self, query: SetQuery) -> Iterator[Problem]:
        """Yield one chain problem for each design flow of the allowed nozzles, whatever part the query holds."""
        for flow_m3_s in self._design_flows(query):
            yield self._problem(query, flow_m3_s, tuple(self._places(query, flow_m3_s)))

    def made_anew(self, query: SetQuery) -> Iterator[Assembled]:
        """Yield the same with a finder and the parts that its items stand for."""
        for flow_m3_s in self._design_flows(query):
            layers = tuple(self._places(query, flow_m3_s))
            yield Assembled(Finder(self._problem(query, flow_m3_s, layers)), flow_m3_s, layers)

    def costed(self, one: Assembled, query: SetQuery) -> Assembled:
        """Return a problem at the costs of another query."""
        costs = [self._place_costs(place, query, one.flow_m3_s) for place in one.places]
        return replace(one, finder=one.finder.at_costs(costs))

    def most_cost(self, query: SetQuery, most_regrets: int, most: float | None = None) -> int:
        """Return what no set costs more than that breaks no more should-rules of its parts.

        Parameters
        ----------
        query
            What it minimises; no load.
        most_regrets
            Broken should-rules.
        most
            What those sets that break so many have at most of what is minimised: minor units, kg or Pa. Sets that have
            a little more may be let through, and so are all that break fewer. None for any amount.
        """
        regrets = most_regrets * REGRET if query.regrets_weigh else 0
        if most is None:
            return regrets + REGRET // 2 - 1
        if query.objective is Objective.PRICE:
            return regrets + math.floor(most)
        units = math.ceil(most * (_UNITS_PER_KG if query.objective is Objective.MASS else 1.0))
        return regrets + (units + self._most_parts) * _TIE + self._most_parts * self._dearest_minor

    @property
    def _most_parts(self) -> int:
        """As many parts as a set may have: each place of the chain, and what may come before it."""
        return 2 * len(self._requirement.chain)

    @cached_property
    def _dearest_minor(self) -> int:
        """What no part costs more than, minor units."""
        currency = self._requirement.site.currency
        return max((int(parts.prices(currency).max(initial=0)) for parts in self._pool.all_portions()), default=0)

    def limits(self, query: SetQuery) -> tuple[float, ...]:
        """Return the upper limit of each load under the lines in force."""
        kept = (limit for limit in query.limits if limit.requirement in query.lines)
        limits = list(self._model.limit_vector(kept))
        for load, most in query.at_most:
            limits[load] = min(limits[load], most)
        return tuple(limits)

    def allowed(self, parts: SlotParts, query: SetQuery) -> Mask:
        """Say which parts of a portion break none of the lines in force and are asked for."""
        return parts.allowed(query.lines) & query.keep(parts)

    def outlet_bears_n(self, query: SetQuery) -> float:
        """Return the pull that the dispenser outlet bears; infinite where the query does not look at it."""
        if query.outlet_bears_all or RequirementId.DRIVE_OFF not in query.lines:
            return math.inf
        return self._requirement.outlet_pull_strength_n

    def _problem(self, query: SetQuery, flow_m3_s: float, places: Sequence[LayerParts]) -> Problem:
        table = self._ports.table(joints_matter=RequirementId.JOINTS in query.lines)
        return Problem(
            self._start, tuple(place.layer for place in places), table, self.limits(query), self.outlet_bears_n(query)
        )

    def _design_flows(self, query: SetQuery) -> list[float]:
        found: set[float] = set()
        for parts in self._pool.portions(Slot.NOZZLE):
            flows = self._model.design_flows_m3_s(parts.columns)[self.allowed(parts, query)]
            found.update(flows.tolist())
        return sorted(found)

    def _places(self, query: SetQuery, flow_m3_s: float) -> Iterator[LayerParts]:
        """Between any two slots one adaptor may come; at the dispenser outlet an adaptor or a splitter."""
        made: dict[tuple[tuple[Slot, ...], bool], LayerParts] = {}

        def place(slots: tuple[Slot, ...], name: str, *, above: bool) -> LayerParts:
            if (slots, above) not in made:
                made[slots, above] = self._place(slots, name, query, flow_m3_s, above=above)
            return made[slots, above]

        for depth, slot in enumerate(self._requirement.chain):
            fittings = (Slot.ADAPTOR,) if depth else (Slot.ADAPTOR, Slot.SPLITTER)
            above = self._model.is_above_breakaway(depth)
            yield place(fittings, "", above=above)
            yield place((slot,), slot, above=above)

    def _place(
        self, slots: tuple[Slot, ...], name: str, query: SetQuery, flow_m3_s: float, *, above: bool
    ) -> LayerParts:
        """Return the parts that a query allows in some slots as items of one layer, optional where it has no name."""
        portions = [parts for slot in slots for parts in self._pool.portions(slot)]
        chosen = [self._rows(parts, query, flow_m3_s) for parts in portions]
        pairs = tuple((parts, rows) for parts, rows in zip(portions, chosen, strict=True) if len(rows))
        tables = [self._items(parts, rows, query, flow_m3_s, above=above) for parts, rows in pairs]
        table = tables[0] if len(tables) == 1 else joined(tables, len(Load))
        return LayerParts(Layer(name, table, optional=not name), pairs, above)

    def _place_costs(self, place: LayerParts, query: SetQuery, flow_m3_s: float) -> tuple[Ints, Ints]:
        costs = [
            self._costs(parts, rows, query, self._model.loads(parts.columns, parts.slot, flow_m3_s), above=place.above)
            for parts, rows in place.portions
        ]
        none = np.zeros(0, np.int64)
        return np.concatenate([none, *(one for one, _ in costs)]), np.concatenate([none, *(one for _, one in costs)])

    def _rows(self, parts: SlotParts, query: SetQuery, flow_m3_s: float) -> Ints:
        """Return the rows that a query allows, with the ends that the slot asks for."""
        columns, is_nozzle = parts.columns, parts.slot is Slot.NOZZLE
        may = self.allowed(parts, query) & columns.has_port("inlet") & (columns.has_port("outlet") != is_nozzle)
        if is_nozzle:
            may &= self._model.design_flows_m3_s(columns) == flow_m3_s
        return np.flatnonzero(may)

    def _items(self, parts: SlotParts, rows: Ints, query: SetQuery, flow_m3_s: float, *, above: bool) -> ItemTable:
        columns = parts.columns
        loads = self._model.loads(columns, parts.slot, flow_m3_s)
        major, cost = self._costs(parts, rows, query, loads, above=above)
        nothing = np.zeros(len(rows))
        counting = parts, flow_m3_s, above, query.has_strengths, query.objective, query.regrets_weigh
        return ItemTable(
            key_of=lambda at: columns.key_at(int(rows[at])),
            major=major,
            cost=cost,
            entry=self._ports.numbers_of(parts, "inlet")[rows],
            exit=self._ports.numbers_of(parts, "outlet")[rows],
            loads=loads.of(rows, above_breakaway=above),
            bears=loads.bears[rows] if query.has_strengths else nothing + math.inf,
            demands=loads.demands[rows] if query.has_strengths else nothing,
            number=rows,
            known=self._made.setdefault(counting, {}),
            is_sorted=True,  # as columns are
        )

    def _costs(self, parts: SlotParts, rows: Ints, query: SetQuery, loads: Loads, *, above: bool) -> tuple[Ints, Ints]:
        """Return majors and the rest of what the walk minimises."""
        price = parts.prices(self._requirement.site.currency)[rows]
        major = parts.regrets[rows] if query.regrets_weigh else np.zeros(len(rows), np.int64)
        match query.objective:
            case Load() as load:
                added, own = _millionths(loads.column(load, above_breakaway=above)[rows])
                return major + added, own
            case Objective.MASS:
                own = np.rint(parts.columns.number("mass_kg")[rows] * _UNITS_PER_KG).astype(np.int64) * _TIE + price
            case Objective.PRESSURE_LOSS:
                lost = loads.column(Load.WANTED_FLOW_HOT, above_breakaway=above)[rows]
                own = np.rint(np.minimum(lost, _MOST_LOSS_PA)).astype(np.int64) * _TIE + price
            case Objective.PRICE:
                own = price
        return major, own


def _millionths(load: Floats) -> tuple[Ints, Ints]:
    """Return a load in millionths of its unit as whole numbers, in majors and the rest."""
    scaled = np.rint(load * 1e6)
    if np.all(np.abs(scaled) < _LARGEST):
        return np.zeros(len(load), np.int64), scaled.astype(np.int64)
    finite = np.nan_to_num(scaled, posinf=_UNBOUNDED, neginf=-_UNBOUNDED)
    split = split_costs([int(one) for one in finite.tolist()])
    if split is None:
        raise ValueError("a load is too large for whole numbers of 64 bits")
    return split
