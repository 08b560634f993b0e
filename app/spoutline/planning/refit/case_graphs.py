"""What a model knows of one case: its graphs, the states of their ways, and the limits that are left as rows."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from spoutline.frozen import frozen
from spoutline.planning.refit.chain_arcs import ArcGraph
from spoutline.planning.refit.sum_limits import SumLimit, binding_limits, exceeded_limits, loads_of
from spoutline.planning.refit.way_states import NO_WAY, Sums, WayStates, way_states
from spoutline.search.graph import Path

_REGRETS = -1  # stands for the broken should-rules among the numbers of limits


@frozen
class CaseGraphs:
    """The graphs of one case, how many positions share it, and how many should-rules its set may break.

    ``states`` are those of the ways of each graph; ``limits`` those of load sums that some way exceeds all the same,
    and ``most_regrets`` is None where no way breaks more than it may. ``installed`` are keys of parts that hang there
    and stay: they cost nothing and are not stocked.
    """

    graphs: tuple[ArcGraph, ...]
    positions: int
    most_regrets: int | None
    limits: tuple[SumLimit, ...]
    states: tuple[WayStates, ...]
    installed: frozenset[str] = frozenset()


@frozen
class Way:
    """The graph that is run through, and its arcs on the way, by their numbers."""

    graph: int
    arcs: tuple[int, ...]

    def path(self, case: CaseGraphs) -> Path:
        """Return the items of a case that lie on the way."""
        found = case.graphs[self.graph].arcs
        items = tuple(found[number].item for number in self.arcs)
        return Path(sum(item.cost for item in items if item), items)

    def among(self, case: CaseGraphs, other: CaseGraphs) -> Way:
        """Return the way in other graphs of the same case, which hold all its arcs."""
        numbers = {arc.place: number for number, arc in enumerate(other.graphs[self.graph].arcs)}
        arcs = case.graphs[self.graph].arcs
        return Way(self.graph, tuple(numbers[arcs[number].place] for number in self.arcs))


def case_graphs(
    graphs: Sequence[ArcGraph], positions: int, most_regrets: int, installed: frozenset[str] = frozenset()
) -> CaseGraphs:
    """Return what a model needs of a case; arcs that are on no way within the limits are gone.

    Limits are kept by states as far as these are few, one limit after the other.
    """
    kept: list[int] = []
    states = [way_states(graph, ()) or NO_WAY for graph in graphs]
    exceeded = [*([_REGRETS] if _may_break_more(graphs, most_regrets) else []), *exceeded_limits(graphs)]
    rows: list[int] = []
    for index in exceeded:
        more = _states(graphs, [*kept, index], most_regrets)
        if more is None:
            rows.append(index)
        else:
            kept, states = [*kept, index], more
    left = tuple(
        ArcGraph(graph.problem, tuple(graph.arcs[number] for number in of_graph.arcs))
        for graph, of_graph in zip(graphs, states, strict=True)
    )
    return CaseGraphs(
        graphs=left,
        positions=positions,
        most_regrets=most_regrets if _REGRETS in rows else None,
        limits=binding_limits(left, [index for index in rows if index != _REGRETS and index in exceeded_limits(left)]),
        states=tuple(one.renumbered() for one in states),
        installed=installed,
    )


def _states(graphs: Sequence[ArcGraph], which: Iterable[int], most_regrets: int) -> list[WayStates] | None:
    found = [way_states(graph, [_sums(graph, index, most_regrets) for index in which]) for graph in graphs]
    known = [one for one in found if one is not None]
    return known if len(known) == len(found) else None


def _sums(graph: ArcGraph, index: int, most_regrets: int) -> Sums:
    if index == _REGRETS:
        return Sums(most_regrets, tuple(float(arc.regrets) for arc in graph.arcs))
    return Sums(graph.problem.limits[index], loads_of(graph, index))


def _may_break_more(graphs: Sequence[ArcGraph], most_regrets: int) -> bool:
    """Say whether some way breaks more should-rules than it may, each layer looked at by itself."""
    for graph in graphs:
        most: dict[int, int] = {}
        for arc in graph.arcs:
            most[arc.layer] = max(most.get(arc.layer, 0), arc.regrets)
        if sum(most.values()) > most_regrets:
            return True
    return False
