"""The sets of a whole station as one mixed-integer program, solved by HiGHS through scipy.

Variables: an arc of a case is taken; a part number is stocked; a price step of a part is used, with its quantity.
Rows: flow conservation over open ports, the limits of every load sum, pull strengths, broken should-rules, and what
links arcs to part numbers. The model admits a little more than the rules do (float tolerance, and whatever only a
full check can see); a set that is turned down afterwards gets a row of its own and the model is solved again, so
that the first answer whose sets all stand is an optimum.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from typing import Any

from spoutline.frozen import frozen
from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded
from spoutline.planning.refit.chain_arcs import Arc, ArcGraph
from spoutline.planning.refit.ladders import Ladder
from spoutline.planning.refit.waiting import waited_for
from spoutline.search.graph import Path

_TOLERANCE = 1e-6  # of a row scaled to one: looser than HiGHS' own tolerance, and judged exactly afterwards
_TAKEN = 0.5
_PROVED = 0  # status of scipy.optimize.milp
_OUT_OF_NODES = "Solution limit reached"  # how HiGHS says so, in a message: scipy has no status for it


@frozen
class CaseGraphs:
    """The graphs of one case, how many positions share it, and how many should-rules its set may break.

    ``installed`` are keys of parts that hang there and stay: they cost nothing and are not stocked.
    """

    graphs: tuple[ArcGraph, ...]
    positions: int
    most_regrets: int
    installed: frozenset[str] = frozenset()


@frozen
class Way:
    """The path chosen for a case and the number of the graph that it runs through."""

    graph: int
    path: Path


@frozen
class Answer:
    """The best ways found, one for each case, and what no answer can cost less than.

    ``ways`` is None where the nodes were used up before any answer was found. ``floor_minor`` is the cost of ``ways``
    itself, but for rounding, where ``is_proved``. ``nodes`` of branch and bound were looked at.
    """

    ways: tuple[Way, ...] | None
    is_proved: bool
    floor_minor: float
    nodes: int = 0


@frozen
class _Taken:
    """The column of an arc and where it belongs."""

    column: int
    graph: int
    arc: Arc


@dataclass
class _Rows:
    """Sparse rows with a lower and an upper end."""

    entries: list[tuple[int, int, float]] = field(default_factory=list)
    low: list[float] = field(default_factory=list)
    high: list[float] = field(default_factory=list)

    def add(self, terms: Iterable[tuple[int, float]], low: float, high: float) -> None:
        row = len(self.low)
        self.entries.extend((row, column, value) for column, value in terms)
        self.low.append(low)
        self.high.append(high)


class MixedIntegerModel:
    """Built once; ``solve`` may be called again after ``forbid``."""

    def __init__(self, cases: tuple[CaseGraphs, ...], ladder: Callable[[str], Ladder], stock_price_minor: int) -> None:
        self._cases = cases
        self._ladder = ladder
        self._costs: list[float] = []
        self._upper: list[float] = []
        self._whole: list[int] = []
        self._rows = _Rows()
        self._arcs: list[list[_Taken]] = [self._columns_of(case) for case in cases]
        for case, arcs in zip(cases, self._arcs, strict=True):
            self._chain_rows(case, arcs)
        self._stock_rows(stock_price_minor)

    def solve(self, node_limit: int, should_stop: Callable[[], bool] = lambda: False) -> Answer:
        """Return the best way of every case, proved best unless the nodes are used up first.

        The work done ends the search, never the clock, so that equal questions get equal answers on any machine.

        ``should_stop`` is asked several times a second.

        Raises
        ------
        Cancelled
            If ``should_stop`` says so.
        StoreFault
            scipy is missing, or HiGHS finds the model faulty.
        """
        solved = self._solved(node_limit, should_stop)
        ways = None if solved.x is None else tuple(_way(arcs, solved.x) for arcs in self._arcs)
        floor = solved.mip_dual_bound
        is_proved = solved.status == _PROVED
        return Answer(ways, is_proved, -math.inf if floor is None else float(floor), int(solved.mip_node_count or 0))

    def forbid(self, case: int, way: Way) -> None:
        """Leave out exactly this way of a case."""
        items = way.path.items
        used = (
            (taken.column, 1.0)
            for taken in self._arcs[case]
            if taken.graph == way.graph and taken.arc.item is items[taken.arc.layer]
        )
        self._rows.add(used, -math.inf, len(items) - 1.0)

    def _column(self, cost: float, upper: float, *, whole: bool) -> int:
        self._costs.append(cost)
        self._upper.append(upper)
        self._whole.append(int(whole))
        return len(self._costs) - 1

    def _columns_of(self, case: CaseGraphs) -> list[_Taken]:
        return [
            _Taken(self._column(0.0, 1.0, whole=True), number, arc)
            for number, graph in enumerate(case.graphs)
            for arc in graph.arcs
        ]

    # one chain for each case

    def _chain_rows(self, case: CaseGraphs, arcs: list[_Taken]) -> None:
        self._conservation(case, arcs)
        self._sums(case, arcs)
        self._strengths(case, arcs)
        broken = [(taken.column, float(taken.arc.regrets)) for taken in arcs if taken.arc.regrets]
        if broken:
            self._rows.add(broken, -math.inf, case.most_regrets)

    def _conservation(self, case: CaseGraphs, arcs: list[_Taken]) -> None:
        """One unit leaves the roots of all graphs together; what enters an inner node leaves it."""
        roots = []
        flows: dict[tuple[int, int, int], list[tuple[int, float]]] = defaultdict(list)
        for taken in arcs:
            graph = case.graphs[taken.graph]
            if taken.arc.layer == 0:
                roots.append((taken.column, 1.0))
            else:
                flows[taken.graph, *taken.arc.start].append((taken.column, 1.0))
            if taken.arc.layer + 1 < len(graph.problem.layers):
                flows[taken.graph, *taken.arc.end].append((taken.column, -1.0))
        self._rows.add(roots, 1.0, 1.0)
        for terms in flows.values():
            self._rows.add(terms, 0.0, 0.0)

    def _sums(self, case: CaseGraphs, arcs: list[_Taken]) -> None:
        for index, limit in enumerate(case.graphs[0].problem.limits):
            if math.isinf(limit):
                continue
            terms = [(taken.column, taken.arc.item.loads[index]) for taken in arcs if taken.arc.item is not None]
            scale = max(abs(limit), *(abs(load) for _, load in terms)) if terms else 0.0
            if scale > 0:
                self._rows.add(
                    ((column, load / scale) for column, load in terms if load), -math.inf, limit / scale + _TOLERANCE
                )

    def _strengths(self, case: CaseGraphs, arcs: list[_Taken]) -> None:
        """Keep a part out of every chain in which another demands more than it bears."""
        demanding = [taken for taken in arcs if taken.arc.item is not None and taken.arc.item.demands > 0]
        for taken in arcs:
            item = taken.arc.item
            if item is None or math.isinf(item.bears):
                continue
            harder = [
                (other.column, 1.0)
                for other in demanding
                if other.arc.layer != taken.arc.layer and other.arc.item and other.arc.item.demands > item.bears
            ]
            if harder:
                self._rows.add([(taken.column, 1.0), *harder], -math.inf, 1.0)

    # part numbers over all cases

    def _stock_rows(self, stock_price_minor: int) -> None:
        uses: dict[str, list[tuple[int, float]]] = defaultdict(list)
        places: dict[tuple[int, int, str], list[int]] = defaultdict(list)
        for number, (case, arcs) in enumerate(zip(self._cases, self._arcs, strict=True)):
            for taken in arcs:
                if taken.arc.item is not None and taken.arc.item.key not in case.installed:
                    key = taken.arc.item.key
                    uses[key].append((taken.column, float(case.positions)))
                    places[number, taken.arc.layer, key].append(taken.column)
        stocked = {key: self._column(float(stock_price_minor), 1.0, whole=True) for key in sorted(uses)}
        for (_, _, key), columns in places.items():
            self._rows.add([*((column, 1.0) for column in columns), (stocked[key], -1.0)], -math.inf, 0.0)
        most = dict.fromkeys(uses, 0)
        for number, _, key in places:
            most[key] += self._cases[number].positions
        for key in sorted(uses):
            self._price_rows(key, uses[key], stocked[key], most[key])

    def _price_rows(self, key: str, uses: list[tuple[int, float]], stocked: int, most: int) -> None:
        """Let the pieces of a part cost what its price step says; no more than ``most`` pieces can be used."""
        steps = [(start, price) for start, price in self._ladder(key) if start <= most]
        if len(steps) == 1:
            for column, pieces in uses:
                self._costs[column] += pieces * steps[0][1]
            return
        ends = [start - 1 for start, _ in steps[1:]] + [most]
        quantities, chosen = [], []
        for (start, price), end in zip(steps, ends, strict=True):
            used = self._column(0.0, 1.0, whole=True)
            pieces_at = self._column(float(price), float(end), whole=False)
            self._rows.add([(pieces_at, 1.0), (used, -float(start))], 0.0, math.inf)
            self._rows.add([(pieces_at, 1.0), (used, -float(end))], -math.inf, 0.0)
            quantities.append((pieces_at, -1.0))
            chosen.append((used, 1.0))
        self._rows.add([*uses, *quantities], 0.0, 0.0)
        self._rows.add([*chosen, (stocked, -1.0)], 0.0, 0.0)

    # solving

    def _solved(self, node_limit: int, should_stop: Callable[[], bool]) -> Any:  # noqa: ANN401 - a result of scipy, which is loaded only here
        try:
            import numpy as np
            from scipy.optimize import Bounds, LinearConstraint, milp
            from scipy.sparse import csr_array
        except ImportError as fault:
            raise StoreFault(
                Worded("Commonality needs the package scipy, which cannot be loaded: {reason}", reason=fault)
            ) from fault
        rows, columns, values = zip(*self._rows.entries, strict=True)
        matrix = csr_array((values, (rows, columns)), shape=(len(self._rows.low), len(self._costs)))
        solved = waited_for(
            lambda: milp(
                np.array(self._costs),
                constraints=LinearConstraint(matrix, np.array(self._rows.low), np.array(self._rows.high)),
                integrality=np.array(self._whole),
                bounds=Bounds(0.0, np.array(self._upper)),
                options={"mip_rel_gap": 0.0, "node_limit": node_limit},
            ),
            should_stop,
        )
        if solved.status != _PROVED and _OUT_OF_NODES not in solved.message:
            raise StoreFault(
                Worded("The common sets of the station could not be found: {reason}", reason=solved.message)
            )
        return solved


def _way(arcs: list[_Taken], solution: Any) -> Way:  # noqa: ANN401 - an array of numpy
    taken = sorted((one for one in arcs if solution[one.column] > _TAKEN), key=lambda one: one.arc.layer)
    items = tuple(one.arc.item for one in taken)
    return Way(taken[0].graph, Path(sum(item.cost for item in items if item), items))
