"""The graphs of all cases of a station, without what no optimum of sets chosen together can hold."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

import numpy as np

from spoutline.planning.refit.case import Case
from spoutline.planning.refit.case_columns import CaseProblem, case_problems
from spoutline.planning.refit.case_graphs import CaseGraphs, case_graphs
from spoutline.planning.refit.chain_arcs import narrowed
from spoutline.planning.refit.ladders import Ladders
from spoutline.planning.refit.outdone_items import stand_ins
from spoutline.planning.refit.stock_figures import bought_in, figures_of
from spoutline.planning.watched import unless_stopped


class StationGraphs:
    """The graphs of every case.

    The sets chosen alone are an answer, so an optimum costs no more than they do, part numbers included. Every other
    case costs at least its floor, and at least the part numbers of one chain of which nothing stays are stocked: what
    is left is the most that the set of a case may cost. Items that another is before wherever they may stand are left
    out; where a set is turned down that holds the other, ``let_in_for`` takes them back.

    ``least_minor`` is what no choice can cost less than, part numbers included: little, and known before any model.
    ``should_stop`` is asked before each case is looked at; ``Cancelled`` is raised where it says so.
    """

    def __init__(
        self,
        cases: Sequence[Case],
        stock_price_minor: int,
        ladders: Ladders,
        should_stop: Callable[[], bool] = lambda: False,
    ) -> None:
        self._cases, self._ladders, self._should_stop = cases, ladders, should_stop
        floors = [_floor(case, _problems(case, ladders), ladders) for case in unless_stopped(cases, should_stop)]
        self.least_minor = self._least_minor(floors, stock_price_minor)
        left = max(0, self._alone_minor(stock_price_minor) - self.least_minor)
        self._most = [floor + left // case.positions for case, floor in zip(cases, floors, strict=True)]
        # made twice, since all items of all cases at once are some gigabytes at a large station
        self._kept = [
            [one.narrowed(most_minor=most, most_regrets=case.most_regrets) for one in _problems(case, ladders)]
            for case, most in zip(unless_stopped(cases, should_stop), self._most, strict=True)
        ]
        self._stand_ins = dict(stand_ins(one for of_case in unless_stopped(self._kept, should_stop) for one in of_case))

    def graphs(self) -> tuple[CaseGraphs, ...]:
        """Return the graphs of each case as they are now."""
        cases = unless_stopped(self._cases, self._should_stop)
        return tuple(map(self._graphs_of, cases, self._kept, self._most))

    def let_in_for(self, keys: frozenset[str]) -> bool:
        """Take back what was left out because one of these items is before it; say whether there was any."""
        back = [key for key, other in self._stand_ins.items() if other in keys]
        for key in back:
            del self._stand_ins[key]
        return bool(back)

    def _alone_minor(self, stock_price_minor: int) -> int:
        return figures_of(
            [bought_in(case, case.choice.judged.hanging_set) for case in self._cases],
            [case.positions for case in self._cases],
            self._ladders,
        ).objective_minor(stock_price_minor)

    def _least_minor(self, floors: Sequence[int], stock_price_minor: int) -> int:
        everything = sum(floor * case.positions for floor, case in zip(floors, self._cases, strict=True))
        stocked = max((len(case.requirement.chain) for case in self._cases if not case.installed), default=0)
        return everything + stock_price_minor * stocked

    def _graphs_of(self, case: Case, kept: Sequence[CaseProblem], most_minor: int) -> CaseGraphs:
        found = []
        for one in kept:
            stays = [one.key(row) not in self._stand_ins for row in one.columns.row.tolist()]
            graph = one.only(np.array(stays, np.bool_)).graph()
            found.append(narrowed(graph, most_minor=most_minor, most_regrets=case.most_regrets))
        return case_graphs(found, case.positions, case.most_regrets, frozenset(part.key for part in case.installed))


def _problems(case: Case, ladders: Ladders) -> tuple[CaseProblem, ...]:
    try:
        return case_problems(case, ladders)
    finally:
        case.chooser.search.forget_loads()


def _floor(case: Case, problems: Sequence[CaseProblem], ladders: Ladders) -> int:
    """Return what the set of a case costs at least, whatever the quantities.

    The set chosen alone is the cheapest at the prices of one piece; quantity can lower it by no more than the steepest
    fall of any price. The cheapest way at the lowest prices, limits left aside, is a floor as well.
    """
    chosen = sum(ladders(part.key)[0][1] for part in bought_in(case, case.choice.judged.hanging_set))
    fall = min((one.steepest_fall() for one in problems), default=1)
    cheapest = min((one.least_minor() for one in problems), default=math.inf)
    return max(0 if math.isinf(cheapest) else int(cheapest), math.floor(chosen * fall))
