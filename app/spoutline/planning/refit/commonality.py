"""Sets chosen together: the least of total price and a price for every distinct part number, exactly."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Sequence

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.refit import StockFigures
from spoutline.planning.refit.case import Case
from spoutline.planning.refit.case_columns import CaseProblem, case_problems
from spoutline.planning.refit.chain_arcs import arc_graph, narrowed
from spoutline.planning.refit.ladders import Ladder, Ladders
from spoutline.planning.refit.like_cases import LikeCases
from spoutline.planning.refit.mixed_integer import CaseGraphs, MixedIntegerModel, Way
from spoutline.planning.refit.sum_limits import binding_limits
from spoutline.planning.sets.choice import is_turned_down
from spoutline.search.bounds import within
from spoutline.search.graph import Path, Problem

NODE_LIMIT = 2000  # of branch and bound; stations of 48 hoses are proved at the first node


@frozen
class CommonSets:
    """One set for each case, in the order of the cases, and how often the model was solved.

    ``floor_minor`` is what no choice can cost less than; None where these sets are proved best.
    """

    judged: tuple[JudgedSet, ...]
    rounds: int
    floor_minor: int | None = None


def common_sets(
    cases: Sequence[Case],
    stock_price_minor: int,
    ladders: Ladders,
    should_stop: Callable[[], bool] = lambda: False,
    node_limit: int = NODE_LIMIT,
) -> CommonSets:
    """Return the sets with the least sum of prices and stocked part numbers; positions that ask the same get the same.

    Parameters
    ----------
    cases
        The distinct questions with a set of their own.
    stock_price_minor
        What one more distinct part number weighs, in minor units; not negative.
    ladders
        Prices by quantity; the quantity is that of the whole station's sets.
    should_stop
        Asked several times a second.
    node_limit
        After so many nodes of branch and bound, and never by the clock, the best found so far stands, with what it
        could at best still save; where nothing better was found, the sets chosen alone.

    Raises
    ------
    Cancelled
        If ``should_stop`` says so.
    StoreFault
        scipy is missing or proves no optimum.
    """
    if not cases:
        return CommonSets((), 0)
    graphs = _graphs(cases, stock_price_minor, ladders)
    alike = LikeCases(graphs)

    def stands(number: int, way: Way) -> bool:
        return _judged(cases[number], graphs[number], way) is not None

    rounds = 0
    nodes = 0
    while True:
        if should_stop():
            raise Cancelled
        model = MixedIntegerModel(alike.groups(), ladders, stock_price_minor)
        answer = model.solve(max(node_limit - nodes, 0), should_stop)
        rounds += 1
        nodes += answer.nodes
        ways = None if answer.ways is None else alike.shared_out(answer.ways)
        judged = () if ways is None else tuple(map(_judged, cases, graphs, ways))
        sound = tuple(found for found in judged if found is not None)
        if not answer.is_proved:
            best = _cheaper(cases, sound, stock_price_minor, ladders)
            floor = 0 if math.isinf(answer.floor_minor) else max(0, math.floor(answer.floor_minor))
            return CommonSets(best, rounds, floor)
        if len(sound) == len(cases):
            return CommonSets(sound, rounds)
        turned_down = [way if found is None else None for way, found in zip(ways or (), judged, strict=True)]
        alike.forbid(turned_down, stands)


def _cheaper(
    cases: Sequence[Case], found: Sequence[JudgedSet], stock_price_minor: int, ladder: Callable[[str], Ladder]
) -> tuple[JudgedSet, ...]:
    """Return the cheaper of the sets found, where every case has one, and those chosen alone."""
    counts = [case.positions for case in cases]

    def cost(judged: Sequence[JudgedSet]) -> int:
        sets = [bought_in(case, one.hanging_set) for case, one in zip(cases, judged, strict=True)]
        return figures_of(sets, counts, ladder).objective_minor(stock_price_minor)

    alone = tuple(case.choice.judged for case in cases)
    is_cheaper = len(found) == len(cases) and cost(found) < cost(alone)
    return tuple(found) if is_cheaper else alone


def bought_in(case: Case, hanging_set: HangingSet) -> tuple[PartRef, ...]:
    """Return the parts of a set that are bought: what hangs there and stays is neither bought nor stocked."""
    return tuple(part for part in hanging_set.refs if part not in case.installed)


def figures_of(
    sets: Sequence[Sequence[PartRef]], positions: Sequence[int], ladder: Callable[[str], Ladder]
) -> StockFigures:
    """Return what the parts bought cost, each set for its number of positions, at the quantities of all together."""
    pieces: Counter[str] = Counter()
    for parts, count in zip(sets, positions, strict=True):
        for part in parts:
            pieces[part.key] += count
    cost = sum(price_at(ladder(key), quantity) * quantity for key, quantity in pieces.items())
    return StockFigures(sets_minor=cost, part_numbers=len(pieces))


def price_at(ladder: Ladder, quantity: int) -> int:
    """Return the price of one piece at a quantity; below the first step the first step holds."""
    return next((price for start, price in reversed(ladder) if start <= quantity), ladder[0][1])


def _judged(case: Case, graphs: CaseGraphs, way: Way) -> JudgedSet | None:
    """Return the set of a way with its checks; None where a limit or a check turns it down after all."""
    path = way.path(graphs)
    if not _keeps_limits(graphs.graphs[way.graph].problem, path):
        return None
    judged = case.chooser.judge.judged(case.chooser.search.hanging_set(path))
    return None if is_turned_down(judged, case.choice.dropped) else judged


def _keeps_limits(problem: Problem, path: Path) -> bool:
    items = [item for item in path.items if item is not None]
    return all(within(sum(item.loads[index] for item in items), limit) for index, limit in enumerate(problem.limits))


def _graphs(cases: Sequence[Case], stock_price_minor: int, ladders: Ladders) -> tuple[CaseGraphs, ...]:
    """Return the graphs of every case without what no optimum can hold.

    The sets chosen alone are an answer, so an optimum costs no more than they do, part numbers included. Every other
    case costs at least its floor, and at least the part numbers of one chain of which nothing stays are stocked: what
    is left is the most that the set of a case may cost.
    """
    whole = [case_problems(case, ladders) for case in cases]
    floors = [_floor(case, problems, ladders) for case, problems in zip(cases, whole, strict=True)]
    alone = figures_of(
        [bought_in(case, case.choice.judged.hanging_set) for case in cases],
        [case.positions for case in cases],
        ladders,
    ).objective_minor(stock_price_minor)
    everything = sum(floor * case.positions for floor, case in zip(floors, cases, strict=True))
    stocked = max((len(case.requirement.chain) for case in cases if not case.installed), default=0)
    left = alone - everything - stock_price_minor * stocked
    return tuple(
        _graphs_of(case, problems, ladders, floor + max(0, left) // case.positions)
        for case, problems, floor in zip(cases, whole, floors, strict=True)
    )


def _graphs_of(case: Case, problems: Sequence[CaseProblem], ladders: Ladders, most_minor: int) -> CaseGraphs:
    """Return the graphs of a case whose set costs no more than ``most_minor``: items are left out first, then arcs."""
    installed, regrets = frozenset(part.key for part in case.installed), case.most_regrets

    def least_minor(key: str) -> int:
        return 0 if key in installed else min(price for _, price in ladders(key))

    found = []
    for one in problems:
        graph = arc_graph(case, one.narrowed(most_minor=most_minor, most_regrets=regrets), least_minor)
        found.append(narrowed(graph, most_minor=most_minor, most_regrets=regrets))
    return CaseGraphs(tuple(found), case.positions, regrets, binding_limits(found), installed)


def _floor(case: Case, problems: Sequence[CaseProblem], ladders: Ladders) -> int:
    """Return what the set of a case costs at least, whatever the quantities.

    The set chosen alone is the cheapest at the prices of one piece; quantity can lower it by no more than the steepest
    fall of any price. The cheapest way at the lowest prices, limits left aside, is a floor as well.
    """
    chosen = sum(ladders(part.key)[0][1] for part in bought_in(case, case.choice.judged.hanging_set))
    fall = min((one.steepest_fall() for one in problems), default=1)
    cheapest = min((one.least_minor() for one in problems), default=math.inf)
    return max(0 if math.isinf(cheapest) else int(cheapest), math.floor(chosen * fall))
