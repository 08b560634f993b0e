"""The sets of a whole station as one mixed-integer program, solved by HiGHS through scipy.

Variables: an arc of a case is taken; a part number is stocked; a price step of a part is used, with its quantity.
Rows: flow conservation over the states of a case's ways, pull strengths, the limits that states do not keep, and what
links arcs to part numbers. The model admits a little more than the rules do (float tolerance, and whatever only a
full check can see); a set that is turned down afterwards gets a row of its own and the model is solved again, so
that the first answer whose sets all stand is an optimum.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import partial
from itertools import groupby
from operator import attrgetter, itemgetter

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Floats
from spoutline.planning.refit.case_graphs import CaseGraphs, Way
from spoutline.planning.refit.chain_arcs import Arc
from spoutline.planning.refit.ladders import Ladder
from spoutline.planning.refit.solver import Program, solved_by_highs
from spoutline.planning.refit.way_states import END, ROOT

_TOLERANCE = 1e-6  # of a row scaled to one: looser than HiGHS' own tolerance, and judged exactly afterwards


@frozen
class Likes:
    """So many cases that are like one, and the ways that none of them may take."""

    case: CaseGraphs
    count: int
    forbidden: frozenset[Way] = frozenset()


@frozen
class Answer:
    """The best ways found, as many for each group as it has cases, and what no answer can cost less than.

    ``ways`` is None where the nodes, or the memory, were used up before any answer was found. ``floor_minor`` is the
    cost of ``ways`` itself, but for rounding, where ``is_proved``. ``nodes`` of branch and bound were looked at.
    """

    ways: tuple[tuple[Way, ...], ...] | None
    is_proved: bool
    floor_minor: float
    nodes: int = 0


UNKNOWN = Answer(None, is_proved=False, floor_minor=-math.inf)  # of a model that takes more than it may


@frozen
class _Taken:
    """The column of an arc, and which of which graph it is."""

    column: int
    graph: int
    number: int
    arc: Arc


@frozen
class _Flow:
    """Arcs that lead from a state to another; ``column`` counts how often, where they lead between others as well."""

    graph: int
    start: int
    end: int
    arcs: tuple[_Taken, ...]
    column: int | None

    @property
    def columns(self) -> tuple[int, ...]:
        """What together counts how often the state is left so."""
        return tuple(one.column for one in self.arcs) if self.column is None else (self.column,)


@frozen
class _Columns:
    """The columns of a group of cases: its arcs, and what leads from state to state."""

    taken: list[_Taken]
    flows: list[_Flow]


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
    """The ways of all cases, like ones as units of one flow.

    What a row asks of a way by itself, it asks of like ones together: that admits a little more where they differ.
    """

    def __init__(self, groups: tuple[Likes, ...], ladder: Callable[[str], Ladder], stock_price_minor: int) -> None:
        self._groups = groups
        self._ladder = ladder
        self._costs: list[float] = []
        self._upper: list[float] = []
        self._whole: list[int] = []
        self._rows = _Rows()
        self._own = [self._columns_of(likes) for likes in groups]
        for likes, own in zip(groups, self._own, strict=True):
            self._conservation(likes, own.flows)
            self._chain_rows(likes, own.taken)
        self._stock_rows(stock_price_minor)

    @property
    def columns(self) -> int:
        """How many columns the model has."""
        return len(self._costs)

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
        solved = solved_by_highs(self._program(node_limit), should_stop)
        if solved is None:  # more memory than it may have
            return UNKNOWN
        ways = None if solved.solution is None else tuple(map(partial(_ways, solution=solved.solution), self._own))
        return Answer(ways, solved.is_proved, solved.floor, solved.nodes)

    def _column(self, cost: float, upper: float, *, whole: bool) -> int:
        self._costs.append(cost)
        self._upper.append(upper)
        self._whole.append(int(whole))
        return len(self._costs) - 1

    def _columns_of(self, likes: Likes) -> _Columns:
        """Make a column for each arc, and one for each step of a class of arcs that makes several."""
        found = _Columns([], [])
        upper = float(likes.count)
        for graph, (of_graph, states) in enumerate(zip(likes.case.graphs, likes.case.states, strict=True)):
            arcs = [
                _Taken(self._column(0.0, upper, whole=True), graph, number, arc)
                for number, arc in enumerate(of_graph.arcs)
            ]
            found.taken.extend(arcs)
            for of, steps in groupby(states.steps, key=attrgetter("of")):
                own = tuple(arcs[number] for number in states.classes[of])
                made = list(steps)
                counts = [self._column(0.0, upper, whole=True) for _ in made] if len(made) > 1 else [None]
                if len(made) > 1:
                    both = [*((one.column, 1.0) for one in own), *((one, -1.0) for one in counts if one is not None)]
                    self._rows.add(both, 0.0, 0.0)
                found.flows.extend(
                    _Flow(graph, step.start, step.end, own, count) for step, count in zip(made, counts, strict=True)
                )
        return found

    def _conservation(self, likes: Likes, flows: Iterable[_Flow]) -> None:
        """Let a unit for each case leave the roots of all graphs together; what enters an inner state leaves it."""
        roots: list[tuple[int, float]] = []
        inner: dict[tuple[int, int], list[tuple[int, float]]] = defaultdict(list)
        for flow in flows:
            leaving = roots if flow.start == ROOT else inner[flow.graph, flow.start]
            leaving.extend((column, 1.0) for column in flow.columns)
            if flow.end != END:
                inner[flow.graph, flow.end].extend((column, -1.0) for column in flow.columns)
        self._rows.add(roots, likes.count, likes.count)
        for terms in inner.values():
            self._rows.add(terms, 0.0, 0.0)

    # what is asked of each chain

    def _chain_rows(self, likes: Likes, arcs: list[_Taken]) -> None:
        self._sums(likes, arcs)
        self._strengths(likes, arcs)
        if likes.case.most_regrets is not None:
            broken = [(taken.column, float(taken.arc.regrets)) for taken in arcs if taken.arc.regrets]
            self._rows.add(broken, -math.inf, likes.case.most_regrets * likes.count)
        for way in sorted(likes.forbidden, key=lambda way: (way.graph, way.arcs)):
            used = [(one.column, 1.0) for one in arcs if one.graph == way.graph and one.number in way.arcs]
            self._rows.add(used, -math.inf, (len(way.arcs) - 1.0) * likes.count)

    def _sums(self, likes: Likes, arcs: list[_Taken]) -> None:
        for one in likes.case.limits:
            terms = [(taken.column, one.loads[taken.graph][taken.number]) for taken in arcs]
            scale = max(abs(one.limit), *(abs(load) for _, load in terms)) if terms else 0.0
            if scale > 0:
                most = (one.limit / scale + _TOLERANCE) * likes.count
                self._rows.add(((column, load / scale) for column, load in terms if load), -math.inf, most)

    def _strengths(self, likes: Likes, arcs: list[_Taken]) -> None:
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
                self._rows.add([(taken.column, 1.0), *harder], -math.inf, likes.count)

    # part numbers over all cases

    def _stock_rows(self, stock_price_minor: int) -> None:
        uses: dict[str, list[tuple[int, float]]] = defaultdict(list)
        places: dict[tuple[int, int, str], list[int]] = defaultdict(list)
        for number, (likes, own) in enumerate(zip(self._groups, self._own, strict=True)):
            for taken in own.taken:
                if taken.arc.item is not None and taken.arc.item.key not in likes.case.installed:
                    key = taken.arc.item.key
                    uses[key].append((taken.column, float(likes.case.positions)))
                    places[number, taken.arc.layer, key].append(taken.column)
        stocked = {key: self._column(float(stock_price_minor), 1.0, whole=True) for key in sorted(uses)}
        for (number, _, key), columns in places.items():
            most_ways = -float(self._groups[number].count)
            self._rows.add([*((column, 1.0) for column in columns), (stocked[key], most_ways)], -math.inf, 0.0)
        most = dict.fromkeys(uses, 0)
        for number, _, key in places:
            most[key] += self._groups[number].case.positions * self._groups[number].count
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

    def _program(self, node_limit: int) -> Program:
        rows, columns, values = zip(*self._rows.entries, strict=True)
        return Program(
            costs=np.array(self._costs),
            upper=np.array(self._upper),
            whole=np.array(self._whole),
            rows=np.array(rows),
            columns=np.array(columns),
            values=np.array(values),
            low=np.array(self._rows.low),
            high=np.array(self._rows.high),
            node_limit=node_limit,
        )


def _ways(own: _Columns, solution: Floats) -> tuple[Way, ...]:
    """Part a flow of whole units into its ways, one by one; from every state the first arc that has units left."""
    counted = [flow.column for flow in own.flows if flow.column is not None]
    left = {column: round(float(solution[column])) for column in (*(one.column for one in own.taken), *counted)}
    leaving: dict[tuple[int, int], list[_Flow]] = defaultdict(list)
    for flow in own.flows:
        if any(left[column] for column in flow.columns):
            leaving[flow.graph, flow.start].append(flow)
    ways: list[Way] = []
    for graph in sorted({graph for graph, start in leaving if start == ROOT}):
        while way := _first_way(graph, leaving, left):
            ways.append(Way(graph, way))
    return tuple(ways)


def _first_way(graph: int, leaving: Mapping[tuple[int, int], Sequence[_Flow]], left: dict[int, int]) -> tuple[int, ...]:
    """Take a unit along the first way of a graph that has units left, and return its arcs; empty for none."""
    way: list[int] = []
    state = ROOT
    while state != END:
        found = [
            (taken.column, taken.number, flow)
            for flow in leaving.get((graph, state), ())
            for taken in flow.arcs
            if left[taken.column] and (flow.column is None or left[flow.column])
        ]
        if not found:
            return ()
        column, number, flow = min(found, key=itemgetter(0))
        left[column] -= 1
        if flow.column is not None:
            left[flow.column] -= 1
        way.append(number)
        state = flow.end
    return tuple(way)
