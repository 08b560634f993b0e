"""The chain problems of a case as columns: what no optimum can hold is left out before an arc is made of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property

import numpy as np

from spoutline.model.part_columns import Floats, Ints, Mask, PartColumns
from spoutline.planning.refit.case import Case
from spoutline.planning.refit.chain_arcs import ALLOWANCE, ArcGraph, graph_of
from spoutline.planning.refit.ladders import Ladders
from spoutline.search.columns import Columns, columns_of
from spoutline.search.graph import Item, Problem
from spoutline.search.item_table import ItemsOf, ItemTable, apart, some_of
from spoutline.search.passes import Passes

_SAME_RATIO = 1 + 1e-12  # ratios that floats may tell apart though they are equal


@dataclass(frozen=True)
class CaseProblem:
    """One chain problem of a case, the items that may still matter, and what each costs and breaks.

    Parameters
    ----------
    problem
        The chain to fill, all items.
    columns
        The items that may still matter.
    prices
        Least price of a piece at any quantity, price of the first step, and dearest price: infinite where a price rises
        with the quantity. Minor units, three columns; nothing for what is not bought. A row for each item of
        ``problem``, layer by layer.
    is_bought
        Whether an item is bought at all.
    regrets
        Broken should-rules of each item.
    """

    problem: Problem
    columns: Columns
    prices: Floats
    is_bought: Mask
    regrets: Floats

    def least_minor(self) -> float:
        """Return the least that a chain costs at any quantity, limits left aside; infinite where there is none."""
        rows = self.columns.row
        least = Passes(self.columns).backward(self.prices[rows, :1])
        return float(least[0, self.columns.start, 0])

    def steepest_fall(self) -> Fraction:
        """Return the least ratio of a part's lowest price to that of its first step, of what a chain may hold."""
        if (self.prices[:, 0] == self.prices[:, 1]).all():
            return Fraction(1)
        rows = self.columns.row[np.isfinite(Passes(self.columns).through(self.prices[self.columns.row, :1])[:, 0])]
        prices = self.prices[rows[self.is_bought[rows]]]
        prices = prices[prices[:, 1] > 0, :2]
        if not len(prices):
            return Fraction(1)
        ratios = prices[:, 0] / prices[:, 1]
        lowest = prices[ratios <= ratios.min() * _SAME_RATIO]
        return min(Fraction(int(least), int(first)) for least, first in np.unique(lowest, axis=0).tolist())

    def key(self, row: int) -> str:
        """Return the key of an item, as ``Columns.row`` counts them."""
        return self._items.key(row)

    @cached_property
    def _items(self) -> ItemsOf:
        return ItemsOf(self.problem)

    def graph(self) -> ArcGraph:
        """Return every arc that can be reached, of all items of the problem."""
        prices, regrets = self.prices[:, 0].tolist(), self.regrets.tolist()
        rows = ((layer, item.key) for layer, of_layer in enumerate(self.problem.layers) for item in of_layer.items)
        figures = {place: (int(prices[row]), int(regrets[row])) for row, place in enumerate(rows)}
        return graph_of(self.problem, lambda layer, item: figures[layer, item.key])

    def only(self, keeps: Mask) -> CaseProblem:
        """Return the problem with some of the items that may still matter, the others let go."""
        rows = self.columns.row[keeps]
        problem, at = _by_itself(some_of(self.problem, apart(rows, self.problem))), np.sort(rows)
        columns = columns_of(problem)
        if columns is None:
            raise ValueError("a price is too large for whole numbers of 64 bits")
        return CaseProblem(problem, columns, self.prices[at], self.is_bought[at], self.regrets[at])

    def narrowed(self, *, most_minor: int, most_regrets: int) -> CaseProblem:
        """Return the problem without items that lie only on ways dearer, past a limit or breaking more.

        Each bound is looked at by itself, until nothing goes any more: no way that keeps them all is lost.
        """
        columns, held = self.columns, np.isfinite(self.columns.limits)
        limits = columns.limits[held]
        most = np.concatenate([[most_minor, most_regrets], limits + ALLOWANCE * np.maximum(1.0, np.abs(limits))])
        while True:
            own = self.prices[columns.row, 0], self.regrets[columns.row]
            through = Passes(columns).through(np.column_stack([*own, columns.loads[:, held]]))
            keeps = np.asarray((through <= most).all(axis=1))
            if keeps.all():
                return self.only(np.isin(self.columns.row, columns.row))
            columns = columns.only(keeps)


def _by_itself(problem: Problem) -> Problem:
    """Return the problem with items that know their keys, so that those they were taken from can go."""
    layers = tuple(replace(layer, items=_with_keys(layer.items)) for layer in problem.layers)
    return replace(problem, layers=layers)


def _with_keys(items: Sequence[Item]) -> Sequence[Item]:
    if not isinstance(items, ItemTable):
        return items
    keys = [items.key_of(row) for row in range(len(items))]
    return replace(items, key_of=keys.__getitem__, number=None, known={})


def case_problems(case: Case, ladders: Ladders) -> tuple[CaseProblem, ...]:
    """Return the chain problems of a case, one for each design flow."""
    return tuple(_case_problems(case, ladders))


def _case_problems(case: Case, ladders: Ladders) -> Iterator[CaseProblem]:
    for assembled, finder in case.chooser.search.finders_of(case.query):
        problem = finder.problem
        columns = columns_of(problem)
        if columns is None:
            raise ValueError("a price is too large for whole numbers of 64 bits")
        portions = [(parts, rows) for place in assembled.places for parts, rows in place.portions]
        bought = [~parts.columns.is_one_of(case.installed)[rows] for parts, rows in portions]
        prices = [
            _prices(parts.columns, rows, is_bought, ladders)
            for (parts, rows), is_bought in zip(portions, bought, strict=True)
        ]
        yield CaseProblem(
            problem=problem,
            columns=columns,
            prices=np.concatenate([np.zeros((0, 3)), *prices]),
            is_bought=np.concatenate([np.zeros(0, np.bool_), *bought]),
            regrets=np.concatenate([np.zeros(0), *(parts.regrets[rows] for parts, rows in portions)]),
        )


def _prices(columns: PartColumns, rows: Ints, is_bought: Mask, ladders: Ladders) -> Floats:
    """Return least, first and dearest price of some rows; what stays costs nothing, whatever it would cost to buy."""
    found = np.zeros((len(rows), 3))
    found[is_bought] = ladders.figures(columns, rows[is_bought])
    return found
