"""From judged parts to a chain problem: ports numbered, figures turned into loads, requirement lines into limits."""

from __future__ import annotations

import heapq
import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from enum import Enum, auto
from functools import cached_property
from typing import NamedTuple

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part import Part
from spoutline.model.part_columns import Floats, Ints, Mask
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.sets.assembled import Assembled, Keep, LayerParts, everything
from spoutline.planning.sets.in_use import tension_test
from spoutline.planning.sets.loads import Load, LoadModel, Loads, SetLimit
from spoutline.planning.sets.pool import PartSource, Pool, SlotParts
from spoutline.planning.sets.port_numbers import PortNumbers
from spoutline.search.finder import Finder
from spoutline.search.graph import MAJOR, Item, Layer, Path, Problem
from spoutline.search.item_table import ItemTable, joined, split_costs
from spoutline.search.listener import Listener
from spoutline.search.through import Through, ThroughLayer, holding

_REGRET = MAJOR  # outweighs any objective, so that fewer broken should-rules always come first
_LARGEST = 2.0**62
_UNBOUNDED = 1e22  # stands for an infinite load, which is more than any chain bears
_MOST_LOSS_PA = 1e9  # stands for a loss that is not known
_UNITS_PER_KG = 1e4  # masses are added up in tenths of a gram
_TIE = 10**9  # outweighs any price, so that the price only breaks ties of another objective
_REMEMBERED = 4  # queries whose items are kept for other limits


class Objective(Enum):
    """What the walk minimises, after the number of broken should-rules; price always breaks a tie."""

    PRICE = auto()
    MASS = auto()
    PRESSURE_LOSS = auto()


@frozen
class Held:
    """A part that every set must hold in a slot; an adaptor or splitter in any of the places it may take."""

    slot: Slot
    part: PartRef


@frozen
class SetQuery:
    """One question to the search.

    ``lines`` are the requirement lines in force: a part that breaks one of them is left out, a set limit that serves
    one of them holds. ``keep`` narrows the parts further. An objective may be any load sum. Broken should-rules of
    parts outweigh every objective unless ``regrets_weigh`` is False. ``outlet_bears_all`` asks what a stronger
    dispenser outlet would allow. ``holds`` names a part that must be in the set, ``at_most`` bounds sums beside the
    limits, whatever lines are in force. Sets that cost more than ``most_cost``, as the walk counts (see
    ``ChainSearch.most_cost``), are left out where the cheapest is asked for; of ``fewest_regrets`` it is known that no
    set breaks fewer should-rules of its parts. ``common`` are those of the lines that further questions keep as well:
    items are made for these once, and narrowed for each question; None for all. It is for queries that hold no part.
    """

    lines: frozenset[RequirementId]
    limits: tuple[SetLimit, ...]
    keep: Keep = everything
    objective: Objective | Load = Objective.PRICE
    regrets_weigh: bool = True
    outlet_bears_all: bool = False
    holds: Held | None = None
    at_most: tuple[tuple[Load, float], ...] = ()
    most_cost: int | None = None
    fewest_regrets: int = 0
    common: frozenset[RequirementId] | None = None

    def __hash__(self) -> int:
        """Return a hash of what mostly differs; limits, of many figures each, are looked at where it is the same."""
        return hash((self.lines, len(self.limits), self.holds, self.most_cost))

    @property
    def shared(self) -> SetQuery:
        """The question that the items are made for; what is common to several may bear any pull."""
        asked = replace(self, limits=(), keep=everything, at_most=(), most_cost=None, fewest_regrets=0)
        return asked if self.common is None else replace(asked, lines=self.common, outlet_bears_all=True)

    @property
    def without_bounds(self) -> SetQuery:
        """The question without what is known or asked of the cost beside."""
        return replace(self, most_cost=None, fewest_regrets=0)

    @property
    def has_strengths(self) -> bool:
        """Whether its items bear and ask what they do: strengths that only some questions look at are known as well."""
        return self.common is not None or RequirementId.DRIVE_OFF in self.lines


class Promise(NamedTuple):
    """What no set goes below: broken should-rules of its parts, then price in minor units."""

    regrets: int
    price_minor: int


# portion, design flow, above the breakaway, strengths, objective, regrets weigh
_Counting = tuple[SlotParts, float, bool, bool, Objective | Load, bool]


# lines, outlet bears all, strengths, objective, regrets weigh
_Whole = tuple[frozenset[RequirementId], bool, bool, Objective | Load, bool]


class ChainSearch:
    """All searches for one position draw on the same pool and the same loads, which are worked out once."""

    def __init__(self, requirement: Requirement, pool: Pool, model: LoadModel) -> None:
        self.requirement = requirement
        self.pool = pool
        self.model = model
        self._ports = PortNumbers()
        self._start = self._ports.number(requirement.outlet)
        self.forget()

    def forget(self) -> None:
        """Let go what is kept for further questions, some megabytes of a large catalogue."""
        self._made: dict[_Counting, dict[int, Item]] = {}
        self._known: dict[_Whole, tuple[Assembled, ...]] = {}  # the last asked for at the end
        self._answers: dict[SetQuery, Path | None] = {}  # the last ones
        self._least: dict[SetQuery, int] = {}  # what no set costs less than, where that is known
        self._promises: dict[tuple[SetQuery, Slot], dict[PartRef, Promise]] = {}
        self._through: dict[SetQuery, tuple[tuple[Assembled, Through], ...]] = {}
        self._layers: dict[tuple[SetQuery, Slot], tuple[tuple[Assembled, ThroughLayer], ...]] = {}

    def sets(self, query: SetQuery, listener: Listener | None = None) -> Iterator[HangingSet]:
        """Yield the sets that keep every limit of ``query``, best objective first.

        Nozzles with different design flows make different problems, because every part's loss depends on that flow;
        their ordered answers are merged, so the whole stays exact.
        """
        if query.holds is not None:
            yield from (self.hanging_set(path) for path, _ in self.held_in_use(query, None, listener))
            return
        least = self._least.get(query.without_bounds)
        walks = [finder.in_order(listener, least) for finder in self._finders(query)]
        yield from self._merged(walks)

    def held_in_use(
        self, query: SetQuery, dropped: frozenset[RequirementId] | None, listener: Listener | None = None
    ) -> Iterator[tuple[Path, bool]]:
        """Yield the chains of the ``sets`` that hold the part of a query, and which of them may hold in use.

        With the lines ``dropped`` given up, the hose of the others is known to part their breakaway; with None all may.
        """
        held = query.holds
        if held is None:
            raise ValueError("the query holds no part")
        walks = []
        for one, through in self._layers_through(query, held.slot):
            test = None if dropped is None else tension_test(one, self.model, dropped)
            walks.append(through.in_order(held.part.key, listener, test))
        yield from heapq.merge(*walks, key=lambda found: (found[0].cost, found[0].keys))

    def sets_in_use(
        self, query: SetQuery, dropped: frozenset[RequirementId], listener: Listener | None = None
    ) -> Iterator[HangingSet]:
        """Yield the ``sets`` but those whose hose in use is known to part their breakaway.

        The lines ``dropped`` are given up. Sets are yielded as far as they are met with a bounded effort. The query
        must hold no part.
        """
        least = self._least.get(query.without_bounds)
        walks = []
        for one, finder in self._narrowed(query):
            test = tension_test(one, self.model, dropped)
            walks.append(finder.in_order(listener, least) if test is None else finder.passing(test, listener, least))
        yield from self._merged(walks)

    def _merged(self, walks: Iterable[Iterator[Path]]) -> Iterator[HangingSet]:
        for path in heapq.merge(*walks, key=lambda path: (path.cost, path.keys)):
            yield self.hanging_set(path)

    def cheapest(self, query: SetQuery, listener: Listener | None = None) -> HangingSet | None:
        """Return a set with the best objective; None where there is none. Much quicker than ``sets`` at saying so."""
        best = self._best(query, listener)
        return None if best is None else self.hanging_set(best)

    def one_of_the_cheapest(self, query: SetQuery, listener: Listener | None = None) -> HangingSet | None:
        """Return a set with as good an objective as the ``cheapest``, whichever is met first; None for no set.

        The query must hold no part.
        """
        found = [finder.one_of_the_cheapest(listener) for finder in self._finders(query)]
        best = min((path for path in found if path is not None), key=lambda path: path.cost, default=None)
        return None if best is None else self.hanging_set(best)

    def may_have_sets(self, query: SetQuery) -> bool:
        """Say whether a set may keep every limit of ``query``, whatever is asked of its parts beside the lines.

        It costs next to nothing: each limit is looked at by itself. False proves that there is no set.
        """
        limits = self._limits(query)
        return any(one.may_hold(limits) for one in self._assembled(query))

    def has_set(self, query: SetQuery, listener: Listener | None = None) -> bool:
        """Say whether there is a set at all; mostly much quicker than ``cheapest``."""
        return self.any_path(query, listener) is not None

    def count(self, query: SetQuery, most: int, listener: Listener | None = None) -> int:
        """Return how many ``sets`` there are, ``most`` where there are as many or more; much quicker than they are.

        The query must hold no part.
        """
        found = 0
        for finder in self._finders(query):
            found += finder.count(most - found, listener)
            if found >= most:
                break
        return found

    def any_path(self, query: SetQuery, listener: Listener | None = None) -> Path | None:
        """Return any chain that keeps a query, mostly much sooner than the ``cheapest`` set; None where none does."""
        if query in self._answers or query.holds is not None:
            return self._best(query, listener)
        whole = _is_whole(query)  # its items carry every load
        finders = (finder for _, finder in (self.finders_of(query) if whole else self._narrowed(query)))
        found = (finder.any_chain(listener) for finder in finders)
        return next((path for path in found if path is not None), None)

    def any_path_with(self, query: SetQuery, slot: Slot, keep: Keep, listener: Listener | None = None) -> Path | None:
        """Return any chain with one of the parts of ``slot`` that ``keep`` names; None where there is none.

        The query must hold no part.
        """
        for one, finder in self._narrowed(query):
            for layer in _layers_for(slot, tuple(place.layer for place in one.places)):
                place = one.places[layer]
                masks = [keep(parts)[rows] & (parts.slot is slot) for parts, rows in place.portions]
                named = np.concatenate([np.zeros(0, np.bool_), *masks])
                path = finder.any_chain_with(layer, named, listener) if named.any() else None
                if path is not None:
                    return path
        return None

    def cheapest_promise(self, query: SetQuery, listener: Listener | None = None) -> Promise | None:
        """Return what the ``cheapest`` set breaks and costs, without making it; asked for next, it is known.

        The objective must be the price, with regrets weighed.
        """
        best = self._best(query, listener)
        return None if best is None else Promise(*divmod(best.cost, _REGRET))

    def _best(self, query: SetQuery, listener: Listener | None) -> Path | None:
        if query not in self._answers:
            self._remember(query, self._searched(query, listener))
        return self._answers[query]

    def _remember(self, query: SetQuery, best: Path | None) -> None:
        if best is not None and query.holds is None:
            self._least[query.without_bounds] = best.cost
        while len(self._answers) >= _REMEMBERED:
            del self._answers[next(iter(self._answers))]
        self._answers[query] = best

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
        regrets = most_regrets * _REGRET if query.regrets_weigh else 0
        if most is None:
            return regrets + _REGRET // 2 - 1
        if query.objective is Objective.PRICE:
            return regrets + math.floor(most)
        units = math.ceil(most * (_UNITS_PER_KG if query.objective is Objective.MASS else 1.0))
        return regrets + (units + self._most_parts) * _TIE + self._most_parts * self._dearest_minor

    @property
    def _most_parts(self) -> int:
        """As many parts as a set may have: each place of the chain, and what may come before it."""
        return 2 * len(self.requirement.chain)

    @cached_property
    def _dearest_minor(self) -> int:
        """What no part costs more than, minor units."""
        currency = self.requirement.site.currency
        return max((int(parts.prices(currency).max(initial=0)) for parts in self.pool.all_portions()), default=0)

    def _searched(self, query: SetQuery, listener: Listener | None) -> Path | None:
        held, bounds = query.holds, (query.most_cost, query.fewest_regrets)
        if held is not None:
            ways = self._layers_through(query, held.slot)
            paths = [through.cheapest(held.part.key, listener) for _, through in ways]
        elif _is_whole(query):
            limits = self._limits(query)
            paths = [one.cheapest(limits, listener, *bounds) for one in self._assembled(query)]
        else:
            paths = [finder.cheapest(listener, *bounds) for finder in self._finders(query)]
        most = math.inf if query.most_cost is None else query.most_cost
        found = [path for path in paths if path is not None and path.cost <= most]
        return min(found, key=lambda path: (path.cost, path.keys), default=None)

    def part_of_the_cheapest(
        self, query: SetQuery, slot: Slot, parts: Iterable[PartRef], listener: Listener | None = None
    ) -> PartRef | None:
        """Return the one of ``parts`` that a cheapest set with any of them in ``slot`` holds; None without such a set.

        It is one search for all of them. The query must hold no part; its ``most_cost`` counts.
        """
        keys = {part.key for part in parts}
        found = [
            (path.cost, path.keys, item.key)
            for _, through in self._layers_through(query, slot)
            if (path := through.cheapest_of(keys, listener, query.most_cost)) is not None
            if (item := path.items[through.layer]) is not None
        ]
        return PartRef.from_key(min(found)[2]) if found else None

    def least_costs(self, query: SetQuery, slot: Slot) -> dict[PartRef, int]:
        """Return, by part, a cost that no set with the part in ``slot`` goes below.

        A part that is left out is in no set; one that is named may still be in none.
        """
        least: dict[str, int] = {}
        for _, through in self._layers_through(query, slot):
            for key, cost in through.least_costs().items():
                least[key] = min(least.get(key, cost), cost)
        return {PartRef.from_key(key): cost for key, cost in least.items()}

    def promise(self, query: SetQuery) -> Promise | None:
        """Return what no set that holds the part of ``query`` goes below; None where there is no such set.

        The objective must be the price, with regrets weighed.
        """
        held = query.holds
        if held is None:
            return None
        free = replace(query.without_bounds, holds=None)
        return self.promises(free, held.slot).get(held.part)

    def promises(self, query: SetQuery, slot: Slot) -> Mapping[PartRef, Promise]:
        """Return, by part, what no set with the part in ``slot`` goes below; worked out once.

        The objective must be the price, with regrets weighed. A part that is left out is in no set.
        """
        if (query, slot) not in self._promises:
            least = self.least_costs(query, slot)
            self._promises[query, slot] = {ref: Promise(*divmod(cost, _REGRET)) for ref, cost in least.items()}
        return self._promises[query, slot]

    def unmatched(self, query: SetQuery) -> dict[Slot, set[PartRef]]:
        """Return by slot the parts that no other with the same ends is before, in any of the ``problems``.

        The query must hold no part.
        """
        found: dict[Slot, set[PartRef]] = {}
        for _, through in self._throughs(query):
            for layer, keys in through.unmatched():
                if layer.name:
                    found.setdefault(Slot(layer.name), set()).update(map(PartRef.from_key, keys))
        return found

    def _layers_through(self, query: SetQuery, slot: Slot) -> tuple[tuple[Assembled, ThroughLayer], ...]:
        """Return the layers that a part of ``slot`` may fill, of every problem; made once for all parts of the slot."""
        free = replace(query.without_bounds, holds=None)
        if (free, slot) not in self._layers:
            self._layers[free, slot] = tuple(
                (one, through.layer(layer))
                for one, through in self._throughs(free)
                for layer in _layers_for(slot, through.problem.layers)
            )
        return self._layers[free, slot]

    def _throughs(self, query: SetQuery) -> tuple[tuple[Assembled, Through], ...]:
        """Return what is asked about single parts, of every problem of a query; made once for all slots."""
        if query not in self._through:
            self._through[query] = tuple((one, Through(one.finder.problem)) for one in self._made_anew(query))
        return self._through[query]

    def problems(self, query: SetQuery) -> Iterator[Problem]:
        """Yield one chain problem for each design flow of the allowed nozzles, and each place of a held part."""
        if query.holds is None:
            yield from self._free_problems(query)
            return
        for problem in self._free_problems(query):
            for layer in _layers_for(query.holds.slot, problem.layers):
                narrowed = holding(problem, layer, query.holds.part.key)
                if narrowed is not None:
                    yield narrowed

    def finders_of(self, query: SetQuery) -> Iterator[tuple[Assembled, Finder]]:
        """Yield the problem of each design flow with a finder within the limits of a query that holds no part."""
        limits = self._limits(query)
        yield from ((one, one.finder.within(limits)) for one in self._assembled(query))

    def _finders(self, query: SetQuery) -> Iterator[Finder]:
        """Yield a finder for each of the ``problems``; queries for the same lines share the items."""
        yield from (finder for _, finder in self._narrowed(query))

    def _narrowed(self, query: SetQuery) -> Iterator[tuple[Assembled, Finder]]:
        limits = self._limits(query)
        for one in self._assembled(query):
            if _is_whole(query):
                finder = one.within(limits)
            elif query.common is None:
                finder = one.narrowed(query.keep, limits)  # its items are those that the lines allow
            else:  # what is asked once with these limits is not worth a look at all items
                finder = one.narrowed(lambda parts: self._allowed(parts, query), limits, hopes=False)
            if finder is not None and query.common is not None:
                looks_at_strengths = RequirementId.DRIVE_OFF in query.lines
                finder = finder.with_strengths(self._outlet_bears_n(query) if looks_at_strengths else None)
            if finder is not None:
                yield one, finder

    def _assembled(self, query: SetQuery) -> tuple[Assembled, ...]:
        """Return the problems of everything that the lines allow, without limits, at the costs of a query."""
        shared = query.shared
        whole = shared.lines, shared.outlet_bears_all, shared.has_strengths, query.objective, query.regrets_weigh
        known = self._known.pop(whole, None)
        if known is None:
            like = next((made for asked, made in self._known.items() if asked[:3] == whole[:3]), None)
            known = tuple(self._made_anew(shared) if like is None else (self._costed(one, shared) for one in like))
        self._known[whole] = known
        while len(self._known) > _REMEMBERED:
            del self._known[next(iter(self._known))]
        return known

    def _made_anew(self, query: SetQuery) -> Iterator[Assembled]:
        for flow_m3_s in self._design_flows(query):
            layers = tuple(self._places(query, flow_m3_s))
            yield Assembled(Finder(self._problem(query, flow_m3_s, layers)), flow_m3_s, layers)

    def _costed(self, one: Assembled, query: SetQuery) -> Assembled:
        """Return a problem at the costs of another query."""
        costs = [self._place_costs(place, query, one.flow_m3_s) for place in one.places]
        return replace(one, finder=one.finder.at_costs(costs))

    def _free_problems(self, query: SetQuery) -> Iterator[Problem]:
        for flow_m3_s in self._design_flows(query):
            yield self._problem(query, flow_m3_s, tuple(self._places(query, flow_m3_s)))

    def _problem(self, query: SetQuery, flow_m3_s: float, places: Sequence[LayerParts]) -> Problem:
        table = self._ports.table(joints_matter=RequirementId.JOINTS in query.lines)
        return Problem(
            self._start, tuple(place.layer for place in places), table, self._limits(query), self._outlet_bears_n(query)
        )

    def _design_flows(self, query: SetQuery) -> list[float]:
        found: set[float] = set()
        for parts in self.pool.portions(Slot.NOZZLE):
            flows = self.model.design_flows_m3_s(parts.columns)[self._allowed(parts, query)]
            found.update(flows.tolist())
        return sorted(found)

    def _outlet_bears_n(self, query: SetQuery) -> float:
        if query.outlet_bears_all or RequirementId.DRIVE_OFF not in query.lines:
            return math.inf
        return self.requirement.outlet_pull_strength_n

    def _limits(self, query: SetQuery) -> tuple[float, ...]:
        kept = (limit for limit in query.limits if limit.requirement in query.lines)
        limits = list(self.model.limit_vector(kept))
        for load, most in query.at_most:
            limits[load] = min(limits[load], most)
        return tuple(limits)

    def _allowed(self, parts: SlotParts, query: SetQuery) -> Mask:
        return parts.allowed(query.lines) & query.keep(parts)

    def _places(self, query: SetQuery, flow_m3_s: float) -> Iterator[LayerParts]:
        """Between any two slots one adaptor may come; at the dispenser outlet an adaptor or a splitter."""
        made: dict[tuple[tuple[Slot, ...], bool], LayerParts] = {}

        def place(slots: tuple[Slot, ...], name: str, *, above: bool) -> LayerParts:
            if (slots, above) not in made:
                made[slots, above] = self._place(slots, name, query, flow_m3_s, above=above)
            return made[slots, above]

        for depth, slot in enumerate(self.requirement.chain):
            fittings = (Slot.ADAPTOR,) if depth else (Slot.ADAPTOR, Slot.SPLITTER)
            above = self.model.is_above_breakaway(depth)
            yield place(fittings, "", above=above)
            yield place((slot,), slot, above=above)

    def _place(
        self, slots: tuple[Slot, ...], name: str, query: SetQuery, flow_m3_s: float, *, above: bool
    ) -> LayerParts:
        """Return the parts that a query allows in some slots as items of one layer, optional where it has no name."""
        portions = [parts for slot in slots for parts in self.pool.portions(slot)]
        chosen = [self._rows(parts, query, flow_m3_s) for parts in portions]
        pairs = tuple((parts, rows) for parts, rows in zip(portions, chosen, strict=True) if len(rows))
        tables = [self._items(parts, rows, query, flow_m3_s, above=above) for parts, rows in pairs]
        table = tables[0] if len(tables) == 1 else joined(tables, len(Load))
        return LayerParts(Layer(name, table, optional=not name), pairs, above)

    def _place_costs(self, place: LayerParts, query: SetQuery, flow_m3_s: float) -> tuple[Ints, Ints]:
        costs = [
            self._costs(parts, rows, query, self.model.loads(parts.columns, parts.slot, flow_m3_s), above=place.above)
            for parts, rows in place.portions
        ]
        none = np.zeros(0, np.int64)
        return np.concatenate([none, *(one for one, _ in costs)]), np.concatenate([none, *(one for _, one in costs)])

    def _rows(self, parts: SlotParts, query: SetQuery, flow_m3_s: float) -> Ints:
        """Return the rows that a query allows, with the ends that the slot asks for."""
        columns, is_nozzle = parts.columns, parts.slot is Slot.NOZZLE
        may = self._allowed(parts, query) & columns.has_port("inlet") & (columns.has_port("outlet") != is_nozzle)
        if is_nozzle:
            may &= self.model.design_flows_m3_s(columns) == flow_m3_s
        return np.flatnonzero(may)

    def _items(self, parts: SlotParts, rows: Ints, query: SetQuery, flow_m3_s: float, *, above: bool) -> ItemTable:
        columns = parts.columns
        loads = self.model.loads(columns, parts.slot, flow_m3_s)
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
        price = parts.prices(self.requirement.site.currency)[rows]
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

    def places_of(self, path: Path) -> list[tuple[SlotParts, int]]:
        """Return where the parts of a path of one of the ``problems`` are: portion and row of each, in order."""
        places = [one for slot in self.requirement.chain for one in ((Slot.ADAPTOR, Slot.SPLITTER), (slot,))]
        filled = [(slots, item.key) for slots, item in zip(places, path.items, strict=True) if item is not None]
        return [self._found(slots, PartRef.from_key(key)) for slots, key in filled]

    def sums_of(self, path: Path) -> Floats:
        """Return what a path of one of the ``problems`` adds to each load, whichever of them its items carry."""
        depths = [depth for depth, item in enumerate(path.items) if item is not None]
        places = self.places_of(path)
        nozzle, row = places[-1]
        flow_m3_s = float(self.model.design_flows_m3_s(nozzle.columns)[row])
        total: Floats = np.zeros(len(Load))
        for depth, (parts, at) in zip(depths, places, strict=True):
            above = self.model.is_above_breakaway(depth // 2)  # before each slot there is room for an adaptor
            loads = self.model.loads(parts.columns, parts.slot, flow_m3_s)
            total += loads.of(np.array([at]), above_breakaway=above)[0]
        return total

    def hanging_set(self, path: Path) -> HangingSet:
        """Return the set that a path of one of the ``problems`` stands for."""
        currency = self.requirement.site.currency
        found = [(parts, parts.columns.ref_at(row)) for parts, row in self.places_of(path)]
        links = tuple(
            SetLink(slot=parts.slot, part=parts.at_cost(part, currency)) for parts, part in _handed_out(found)
        )
        price_minor = sum(link.part.price_minor(currency) or 0 for link in links)
        return HangingSet(links=links, price_minor=price_minor, currency=currency)

    def _found(self, slots: tuple[Slot, ...], ref: PartRef) -> tuple[SlotParts, int]:
        for slot in slots:
            found = self.pool.found(slot, ref)
            if found is not None:
                return found
        raise KeyError(ref)


def _handed_out(found: Sequence[tuple[SlotParts, PartRef]]) -> Iterator[tuple[SlotParts, Part]]:
    """Yield the parts themselves; those of one catalogue are asked for together."""
    asked: dict[PartSource, list[PartRef]] = {}
    for portion, ref in found:
        asked.setdefault(portion.source, []).append(ref)
    handed = {source: source(refs) for source, refs in asked.items()}
    yield from ((portion, handed[portion.source][ref]) for portion, ref in found)


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


def _is_whole(query: SetQuery) -> bool:
    """Say whether a query asks for all parts that items are made for."""
    return query.keep is everything and query.common is None


def _layers_for(slot: Slot, layers: tuple[Layer, ...]) -> Iterator[int]:
    """Yield the places that a part of ``slot`` may take; the layers without a name take adaptors and splitters."""
    name = "" if slot in (Slot.ADAPTOR, Slot.SPLITTER) else slot
    return (place for place, layer in enumerate(layers) if layer.name == name)
