"""Sets chosen together: the least of total price and a price for every distinct part number, exactly."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled
from spoutline.model.plan import JudgedSet
from spoutline.planning.refit.case import Case
from spoutline.planning.refit.case_graphs import CaseGraphs, Way
from spoutline.planning.refit.ladders import Ladders
from spoutline.planning.refit.like_cases import LikeCases
from spoutline.planning.refit.mixed_integer import UNKNOWN, MixedIntegerModel
from spoutline.planning.refit.station_graphs import StationGraphs
from spoutline.planning.refit.stock_figures import bought_in, figures_of
from spoutline.planning.sets.choice import is_turned_down
from spoutline.planning.watched import unless_stopped
from spoutline.search.bounds import within
from spoutline.search.graph import Path, Problem

ROUND_LIMIT = 8  # models that are solved, each because a full check turned a set of the one before down,
COLUMN_LIMIT = 100_000  # where they have so many columns together: small ones are solved again as often as it takes
NODE_LIMIT = 2000  # of branch and bound; stations of 1,000 hoses are proved at the first node
_NODE_COLUMNS = 5_000  # of a model that may have all these nodes; a larger one has fewer, each of which takes longer
_MOST_COLUMNS = 200_000  # a larger model is not asked at all


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
        After so many nodes of branch and bound, fewer of a large model and never by the clock, the best found so far
        stands, with what it could at best still save; where nothing better was found, the sets chosen alone. Likewise
        after ``ROUND_LIMIT`` models of ``COLUMN_LIMIT`` columns together.

    Raises
    ------
    Cancelled
        If ``should_stop`` says so.
    StoreFault
        scipy is missing or proves no optimum.
    """
    if not cases:
        return CommonSets((), 0)
    station = StationGraphs(cases, stock_price_minor, ladders, should_stop)
    graphs = station.graphs()
    alike = LikeCases(graphs)

    def stands(number: int, way: Way) -> bool:
        return _judged(cases[number], graphs[number], way) is not None

    def keeps(number: int, way: Way) -> bool:
        return _keeps_rows(cases[number], graphs[number], way)

    rounds = nodes = columns = 0
    floor = station.least_minor
    best = tuple(case.choice.judged for case in cases)
    while True:
        if should_stop():
            raise Cancelled
        model = MixedIntegerModel(alike.groups(), ladders, stock_price_minor)
        nodes_left = min(node_limit, node_limit * _NODE_COLUMNS // model.columns) - nodes
        answer = model.solve(max(nodes_left, 0), should_stop) if model.columns <= _MOST_COLUMNS else UNKNOWN
        rounds, columns = rounds + 1, columns + model.columns
        nodes += answer.nodes
        ways = None if answer.ways is None else alike.shared_out(answer.ways)
        judged = () if ways is None else tuple(map(_judged, unless_stopped(cases, should_stop), graphs, ways))
        sound = tuple(found for found in judged if found is not None)
        best = _cheaper(cases, judged, best, stock_price_minor, ladders)
        floor = floor if math.isinf(answer.floor_minor) else max(floor, math.floor(answer.floor_minor))
        is_enough = rounds >= ROUND_LIMIT and columns >= COLUMN_LIMIT and len(sound) < len(cases)
        if is_enough or not answer.is_proved:
            reached = _cost_minor(cases, best, stock_price_minor, ladders)
            return CommonSets(best, rounds, None if floor >= reached else floor)
        if len(sound) == len(cases):
            return CommonSets(sound, rounds)
        turned_down = [way if found is None else None for way, found in zip(ways or (), judged, strict=True)]
        alike.forbid(turned_down, stands, keeps)
        if station.let_in_for(_items_of(graphs, turned_down)):
            graphs = station.graphs()
            alike = alike.over(graphs)


def _items_of(graphs: Sequence[CaseGraphs], ways: Sequence[Way | None]) -> frozenset[str]:
    """Return the keys of the items on some ways."""
    paths = (way.path(case) for case, way in zip(graphs, ways, strict=True) if way is not None)
    return frozenset(key for path in paths for key in path.keys)


def _cheaper(
    cases: Sequence[Case],
    judged: Sequence[JudgedSet | None],
    best: tuple[JudgedSet, ...],
    stock_price_minor: int,
    ladder: Ladders,
) -> tuple[JudgedSet, ...]:
    """Return the cheaper of the best sets so far and those found, that chosen alone in place of one turned down."""
    if not judged:
        return best
    found = tuple(one or case.choice.judged for one, case in zip(judged, cases, strict=True))
    costs = [_cost_minor(cases, sets, stock_price_minor, ladder) for sets in (found, best)]
    return found if costs[0] < costs[1] else best


def _cost_minor(cases: Sequence[Case], judged: Sequence[JudgedSet], stock_price_minor: int, ladder: Ladders) -> int:
    """Return what the sets of all cases cost, part numbers included."""
    sets = [bought_in(case, one.hanging_set) for case, one in zip(cases, judged, strict=True)]
    return figures_of(sets, [case.positions for case in cases], ladder).objective_minor(stock_price_minor)


def _judged(case: Case, graphs: CaseGraphs, way: Way) -> JudgedSet | None:
    """Return the set of a way with its checks; None where a limit or a check turns it down after all."""
    if not _keeps_rows(case, graphs, way):
        return None
    judged = case.chooser.judge.judged(case.chooser.search.paths.hanging_set(way.path(graphs)))
    return None if is_turned_down(judged, case.choice.dropped) else judged


def _keeps_rows(case: Case, graphs: CaseGraphs, way: Way) -> bool:
    """Say whether a way by itself keeps what rows ask of like cases together."""
    graph = graphs.graphs[way.graph]
    broken = sum(graph.arcs[number].regrets for number in way.arcs)
    return broken <= case.most_regrets and _keeps_limits(graph.problem, way.path(graphs))


def _keeps_limits(problem: Problem, path: Path) -> bool:
    items = [item for item in path.items if item is not None]
    return all(within(sum(item.loads[index] for item in items), limit) for index, limit in enumerate(problem.limits))
