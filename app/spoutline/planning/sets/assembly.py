"""All searches for the sets of one position: what is worked out once for a question, and what further ones draw on."""

from __future__ import annotations

import heapq
import math
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace
from functools import partial

import numpy as np

from spoutline.model.part_columns import Ints, Mask
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.sets.assembled import Assembled, Keep, everything
from spoutline.planning.sets.chain_problems import ChainProblems
from spoutline.planning.sets.in_use import tension_test
from spoutline.planning.sets.loads import Load, LoadModel
from spoutline.planning.sets.path_parts import PathParts
from spoutline.planning.sets.pool import Pool
from spoutline.planning.sets.set_query import REGRET, Objective, Promise, SetAnswer, SetQuery
from spoutline.search.answer import Count, Decision, PathAnswer, cheapest_of
from spoutline.search.effort import Exhausted
from spoutline.search.enumeration import ChainTest
from spoutline.search.finder import Finder
from spoutline.search.graph import Layer, Path, Problem
from spoutline.search.listener import Listener
from spoutline.search.through import Through, ThroughLayer, holding

_REMEMBERED = 4  # queries whose items are kept for other limits


# lines, outlet bears all, strengths, objective, regrets weigh
_Whole = tuple[frozenset[RequirementId], bool, bool, Objective | Load, bool]


class ChainSearch:
    """All searches for one position draw on the same pool and the same loads, which are worked out once.

    A question that takes more work than its listener allows is left open: ``answer`` says so, everything else raises
    ``Exhausted``, and never says that there is no set.
    """

    def __init__(self, requirement: Requirement, pool: Pool, model: LoadModel) -> None:
        self.requirement = requirement
        self.pool = pool
        self.model = model
        self.paths = PathParts(requirement, pool, model)
        self._problems = ChainProblems(requirement, pool, model)
        self.forget()

    def forget(self) -> None:
        """Let go what is kept for further questions, some megabytes of a large catalogue."""
        self._problems.forget()
        self._known: dict[_Whole, tuple[Assembled, ...]] = {}  # the last asked for at the end
        self._answers: dict[SetQuery, PathAnswer] = {}  # the last ones
        self._least: dict[SetQuery, int] = {}  # what no set costs less than, where that is known
        self._promises: dict[tuple[SetQuery, Slot], dict[PartRef, Promise]] = {}
        self._through: dict[SetQuery, tuple[tuple[Assembled, Through], ...]] = {}
        self._layers: dict[tuple[SetQuery, Slot], tuple[tuple[Assembled, ThroughLayer], ...]] = {}

    def forget_loads(self) -> None:
        """Let go what is kept for further questions, and the loads of all parts, soon worked out again."""
        self.forget()
        self.model.forget()

    def sets(self, query: SetQuery, listener: Listener | None = None) -> Iterator[HangingSet]:
        """Yield the sets that keep every limit of ``query``, best objective first.

        Nozzles with different design flows make different problems, because every part's loss depends on that flow;
        their ordered answers are merged, so the whole stays exact.
        """
        if query.holds is not None:
            yield from (self.paths.hanging_set(path) for path, _ in self.held_in_use(query, None, listener))
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

    def held_sets_in_use(
        self, query: SetQuery, dropped: frozenset[RequirementId], listener: Listener | None = None
    ) -> Iterator[HangingSet]:
        """Yield the ``sets_in_use`` that hold the part of a query.

        It looks at the chains of this part alone, where ``held_in_use`` draws on what was looked at for others.
        """
        held = query.holds
        if held is None:
            raise ValueError("the query holds no part")
        walks = []
        for one, through in self._layers_through(query, held.slot):
            at = through.place_of(held.part.key)
            if at is None:
                continue
            test = partial(_holds_and, through.layer, at.row, tension_test(one, self.model, dropped))
            walks.append(one.finder.only(at.masks).passing(test, listener))
        yield from self._merged(walks)

    def _merged(self, walks: Iterable[Iterator[Path]]) -> Iterator[HangingSet]:
        for path in heapq.merge(*walks, key=lambda path: (path.cost, path.keys)):
            yield self.paths.hanging_set(path)

    def cheapest(self, query: SetQuery, listener: Listener | None = None) -> HangingSet | None:
        """Return a set with the best objective; None where there is none. Much quicker than ``sets`` at saying so."""
        best = self._best(query, listener).proven
        return None if best is None else self.paths.hanging_set(best)

    def answer(self, query: SetQuery, listener: Listener | None = None) -> SetAnswer:
        """Return the ``cheapest`` set, or the best one found where it takes too much work to say which that is."""
        found = self._best(query, listener)
        hanging_set = None if found.path is None else self.paths.hanging_set(found.path)
        return SetAnswer(hanging_set, found.decision, found.floor)

    def cheapest_path(self, query: SetQuery, listener: Listener | None = None) -> Path | None:
        """Return the chain of the ``cheapest`` set; None where there is none."""
        return self._best(query, listener).proven

    def one_of_the_cheapest(self, query: SetQuery, listener: Listener | None = None) -> Path | None:
        """Return a chain with as good an objective as the ``cheapest``, whichever is met first; None for no set.

        The query must hold no part.
        """
        if query in self._answers:
            return self._answers[query].proven
        found = [finder.one_of_the_cheapest(listener).proven for finder in self._finders(query)]
        return min((path for path in found if path is not None), key=lambda path: path.cost, default=None)

    def may_have_sets(self, query: SetQuery) -> bool:
        """Say whether a set may keep every limit of ``query``, whatever is asked of its parts beside the lines.

        It costs next to nothing: each limit is looked at by itself. False proves that there is no set.
        """
        limits = self._problems.limits(query)
        return any(one.may_hold(limits) for one in self._assembled(query))

    def binding_lines(self, query: SetQuery) -> tuple[RequirementId, ...]:
        """Return the lines of a query whose limits some chain of parts could exceed, each limit looked at by itself."""
        binds = [finder.binding() for _, finder in self.finders_of(query)]
        found = {limit.requirement for limit in query.limits if any(one[limit.load] for one in binds)}
        return tuple(line for line in RequirementId if line in found)

    def has_set(self, query: SetQuery, listener: Listener | None = None) -> bool:
        """Say whether there is a set at all; mostly much quicker than ``cheapest``."""
        return self.any_path(query, listener) is not None

    def count(self, query: SetQuery, most: int, listener: Listener | None = None) -> Count:
        """Return how many ``sets`` there are, ``most`` where there are as many or more; much quicker than they are.

        The query must hold no part.
        """
        found, decision = 0, Decision.DECIDED
        for finder in self._finders(query):
            counted = finder.count(most - found, listener)
            found += counted.number
            if found >= most:
                return Count(found, Decision.DECIDED)
            if counted.decision is Decision.UNDECIDED:
                decision = Decision.UNDECIDED
        return Count(found, decision)

    def any_path(self, query: SetQuery, listener: Listener | None = None, least: Load | None = None) -> Path | None:
        """Return any chain that keeps a query, mostly much sooner than the ``cheapest`` set; None where none does.

        Of few parts it is the ``cheapest``, or the one with the ``least`` of a load: the answer to what is asked next.
        """
        if query in self._answers or query.holds is not None:
            known = self._best(query, listener)
            return known.path or known.proven
        whole = query.is_whole  # its items carry every load
        finders = [finder for _, finder in (self.finders_of(query) if whole else self._narrowed(query))]
        if all(finder.is_of_few for finder in finders):
            known = self._best(query if least is None else replace(query, objective=least), listener)
            return known.path or known.proven
        return _first_of(partial(finder.any_chain, listener) for finder in finders)

    def any_path_with(self, query: SetQuery, slot: Slot, keep: Keep, listener: Listener | None = None) -> Path | None:
        """Return any chain with one of the parts of ``slot`` that ``keep`` names; None where there is none.

        The query must hold no part.
        """

        def ways() -> Iterator[Callable[[], Path | None]]:
            for one, finder in self._narrowed(query):
                for layer in _layers_for(slot, tuple(place.layer for place in one.places)):
                    place = one.places[layer]
                    masks = [keep(parts)[rows] & (parts.slot is slot) for parts, rows in place.portions]
                    named = np.concatenate([np.zeros(0, np.bool_), *masks])
                    if named.any():
                        yield partial(finder.any_chain_with, layer, named, listener)

        return _first_of(ways())

    def cheapest_promise(self, query: SetQuery, listener: Listener | None = None) -> Promise | None:
        """Return what the ``cheapest`` set breaks and costs, without making it; asked for next, it is known.

        The objective must be the price, with regrets weighed.
        """
        best = self._best(query, listener).proven
        return None if best is None else Promise(*divmod(best.cost, REGRET))

    def foresee(self, queries: Iterable[SetQuery]) -> None:
        """Take in what may be asked next: bounds are worked out for all questions that differ in their parts alone."""
        alike: dict[SetQuery, list[Keep]] = {}
        for query in queries:
            alike.setdefault(replace(query.without_bounds, keep=everything), []).append(query.keep)
        for query, keeps in alike.items():
            if query.is_whole:
                limits = self._problems.limits(query)
                for one in self._assembled(query):
                    one.foresee(keeps, limits)

    def least_cost(self, query: SetQuery) -> float:
        """Return what no set for a question that was foreseen costs less than, as the walk counts; 0 where unknown.

        Sets whose parts break should-rules are left aside.
        """
        limits = self._problems.limits(query)
        return min((one.least_cost(query.keep, limits) for one in self._assembled(query)), default=math.inf)

    def _best(self, query: SetQuery, listener: Listener | None) -> PathAnswer:
        if query not in self._answers:
            self._remember(query, self._searched(query, listener))
        return self._answers[query]

    def _remember(self, query: SetQuery, best: PathAnswer) -> None:
        if best.floor is not None and query.holds is None:
            self._least[query.without_bounds] = best.floor
        while len(self._answers) >= _REMEMBERED:
            del self._answers[next(iter(self._answers))]
        self._answers[query] = best

    def most_cost(self, query: SetQuery, most_regrets: int, most: float | None = None) -> int:
        """Return what no set costs more than that breaks no more should-rules, as ``ChainProblems`` counts it."""
        return self._problems.most_cost(query, most_regrets, most)

    def _searched(self, query: SetQuery, listener: Listener | None) -> PathAnswer:
        held, bounds = query.holds, (query.most_cost, query.fewest_regrets)
        if held is not None:
            found = [
                _held_answer(partial(through.cheapest, held.part.key, listener))
                for _, through in self._layers_through(query, held.slot)
            ]
        elif query.is_whole:
            limits = self._problems.limits(query)
            found = [one.cheapest(limits, listener, *bounds) for one in self._assembled(query)]
        else:
            found = [finder.cheapest(listener, *bounds) for finder in self._finders(query)]
        return cheapest_of(found, math.inf if query.most_cost is None else query.most_cost)

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
            self._promises[query, slot] = {ref: Promise(*divmod(cost, REGRET)) for ref, cost in least.items()}
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
            self._through[query] = tuple((one, Through(one.finder.problem)) for one in self._problems.made_anew(query))
        return self._through[query]

    def problems(self, query: SetQuery) -> Iterator[Problem]:
        """Yield one chain problem for each design flow of the allowed nozzles, and each place of a held part."""
        if query.holds is None:
            yield from self._problems.free(query)
            return
        for problem in self._problems.free(query):
            for layer in _layers_for(query.holds.slot, problem.layers):
                narrowed = holding(problem, layer, query.holds.part.key)
                if narrowed is not None:
                    yield narrowed

    def finders_of(self, query: SetQuery) -> Iterator[tuple[Assembled, Finder]]:
        """Yield the problem of each design flow with a finder within the limits of a query that holds no part."""
        limits = self._problems.limits(query)
        yield from ((one, one.finder.within(limits)) for one in self._assembled(query))

    def _finders(self, query: SetQuery) -> Iterator[Finder]:
        """Yield a finder for each of the ``problems``; queries for the same lines share the items."""
        yield from (finder for _, finder in self._narrowed(query))

    def _narrowed(self, query: SetQuery) -> Iterator[tuple[Assembled, Finder]]:
        limits = self._problems.limits(query)
        for one in self._assembled(query):
            if query.is_whole:
                finder = one.within(limits)
            elif query.common is None:
                finder = one.narrowed(query.keep, limits)  # its items are those that the lines allow
            else:  # what is asked once with these limits is not worth a look at all items
                finder = one.narrowed(lambda parts: self._problems.allowed(parts, query), limits, hopes=False)
            if finder is not None and query.common is not None:
                looks_at_strengths = RequirementId.DRIVE_OFF in query.lines
                finder = finder.with_strengths(self._problems.outlet_bears_n(query) if looks_at_strengths else None)
            if finder is not None:
                yield one, finder

    def _assembled(self, query: SetQuery) -> tuple[Assembled, ...]:
        """Return the problems of everything that the lines allow, without limits, at the costs of a query."""
        shared = query.shared
        whole = shared.lines, shared.outlet_bears_all, shared.has_strengths, query.objective, query.regrets_weigh
        known = self._known.pop(whole, None)
        if known is None:
            like = next((made for asked, made in self._known.items() if asked[:3] == whole[:3]), None)
            make = self._problems
            known = tuple(make.made_anew(shared) if like is None else (make.costed(one, shared) for one in like))
        self._known[whole] = known
        while len(self._known) > _REMEMBERED:
            del self._known[next(iter(self._known))]
        return known


def _first_of(ways: Iterable[Callable[[], Path | None]]) -> Path | None:
    """Return the first chain that one of several searches finds; one that is left open leaves no answer but that.

    Raises
    ------
    Exhausted
        If none finds a chain and one of them was left open.
    """
    is_open = False
    for way in ways:
        try:
            path = way()
        except Exhausted:
            is_open = True
            continue
        if path is not None:
            return path
    if is_open:
        raise Exhausted
    return None


def _held_answer(way: Callable[[], Path | None]) -> PathAnswer:
    try:
        return PathAnswer.decided(way())
    except Exhausted:
        return PathAnswer(None, Decision.UNDECIDED, None)


def _holds_and(layer: int, row: int, test: ChainTest | None, chains: Ints) -> Mask:
    """Say which chains hold an item in a layer and pass a test."""
    holds = np.asarray(chains[:, layer] == row)
    return holds if test is None else holds & test(chains)


def _layers_for(slot: Slot, layers: tuple[Layer, ...]) -> Iterator[int]:
    """Yield the places that a part of ``slot`` may take; the layers without a name take adaptors and splitters."""
    name = "" if slot in (Slot.ADAPTOR, Slot.SPLITTER) else slot
    return (place for place, layer in enumerate(layers) if layer.name == name)
