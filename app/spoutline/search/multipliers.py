"""Prices of the limits: what keeping a limit costs, found so that the cheapest chain at these prices bounds the cost.

The best prices solve the Lagrangian dual of the chain problem (Held and Karp, Mathematical Programming 1, 1971). It is
solved as a Dantzig-Wolfe programme (Operations Research 8, 1960): mix chains of meeting ports so that the mixed loads
keep every limit at the least mixed cost. Its columns are chains, made when needed by a pass at the prices of the
moment. Prices between the best known and the programme's own keep it from leaping about (Wentges, International
Transactions in Operational Research 4, 1997).
"""

from __future__ import annotations

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns
from spoutline.search.item_table import Floats
from spoutline.search.passes import Passes

_ROUNDS = 80
_NEAR = 1e-4  # of the bound: nearer to the programme's value than this, another round does not pay
_ALLOWED = 2e-9  # of a limit, twice what ``within`` allows a sum


@frozen
class Priced:
    """A cost that no chain within the limits goes below, with the prices of the limits that show it.

    The bound is infinite where the prices prove that no chain keeps all limits.
    """

    bound: float
    prices: Floats


def priced(columns: Columns, passes: Passes, most: float = np.inf) -> Priced:
    """Return the best bound found and its prices, none negative; majors and strengths are left aside.

    Of chains that cost more than ``most`` none is asked for: the bound is infinite as soon as all are known to.
    """
    cost = columns.cost.astype(np.float64)
    bound, path = passes.least_path(cost)
    count = len(columns.limits)
    if bound == np.inf or not count:
        return Priced(bound, np.zeros(count))
    return _Dual(columns, passes, cost, most).solved(bound, path)


class _Dual:
    """The limits of one problem, scaled, and the rounds of pricing."""

    def __init__(self, columns: Columns, passes: Passes, cost: Floats, most: float) -> None:
        self._passes, self._cost = passes, cost
        limits = columns.limits
        self._scale = np.maximum(np.abs(limits), np.abs(columns.eased).max(axis=0, initial=0.0)) + 1e-9
        self._loads = columns.eased / self._scale
        self._right = (limits + _ALLOWED * np.maximum(np.abs(limits), 1.0)) / self._scale
        dearest = float(columns.most_cost())
        least = -float(columns.most(-cost[:, None]).sum())
        self._most, self._span = min(dearest, most), dearest - least + 1.0

    def solved(self, bound: float, path: list[int]) -> Priced:
        """Return the best bound and prices, starting from the cheapest chain, its limits left aside."""
        programme = _Programme(self._excess(path), bound, 100.0 * self._span)
        best = np.zeros(len(self._right))
        for round_ in range(_ROUNDS):
            own = programme.prices()
            entered = False
            for share in (0.5, 0.0) if round_ else (0.0,):
                tried = share * best + (1.0 - share) * own
                value, path = self._least_at(tried)
                if value > bound:
                    bound, best = value, tried
                if programme.takes(self._excess(path), float(self._cost[path].sum()), 1e-7 * (abs(value) + 1.0)):
                    entered = True
                    break
            if bound > self._most + 1.0:
                return Priced(np.inf, best / self._scale)
            if not entered or bound > programme.value() - _NEAR * (abs(bound) + 1.0):
                break
        if self._is_ray(best):
            return Priced(np.inf, best / self._scale)
        return Priced(bound, best / self._scale)

    def _excess(self, path: list[int]) -> Floats:
        return np.asarray(self._loads[path].sum(axis=0) - self._right)

    def _least_at(self, prices: Floats) -> tuple[float, list[int]]:
        """Return the least cost of any chain that pays for its loads and is paid for the limits."""
        value, path = self._passes.least_path(self._cost + self._loads @ prices)
        return value - float(prices @ self._right), path

    def _is_ray(self, prices: Floats) -> bool:
        """Say whether every chain exceeds the limits weighed by these prices alone: then no chain keeps them all."""
        total = float(prices.sum())
        if total <= 0.0:
            return False
        weights = prices / total
        least, _ = self._passes.least_path(self._loads @ weights)
        return least - float(weights @ self._right) > 1e-6


class _Programme:
    """The programme over the chains known so far, as a revised simplex: a row for each limit, one for the mixture."""

    def __init__(self, excess: Floats, cost: float, fine: float) -> None:
        """Start from one chain; its excess over limits is paid for at ``fine``, more than keeping them could cost."""
        self._count = len(excess)
        self._fine = fine
        over = excess > 0.0
        basis = np.diag(np.append(np.where(over, -1.0, 1.0), 1.0))
        basis[: self._count, self._count] = excess
        self._inverse = np.linalg.inv(basis)
        self._charge = np.append(np.where(over, fine, 0.0), cost)

    def prices(self) -> Floats:
        """Let slack in wherever a limit would be paid for being kept, and return the prices of the limits."""
        for _ in range(4 * self._count):
            duals = (self._charge @ self._inverse)[: self._count]
            worst = int(duals.argmax())
            if duals[worst] <= 1e-9 * self._fine or not self._enter(np.eye(self._count + 1)[worst], 0.0):
                break
        return np.maximum(-(self._charge @ self._inverse)[: self._count], 0.0)

    def value(self) -> float:
        """Return the cost of the best mixture so far."""
        return float(self._charge @ self._inverse[:, self._count])

    def takes(self, excess: Floats, cost: float, worth: float) -> bool:
        """Let a chain in where it would make the mixture cheaper by more than ``worth``."""
        column = np.append(excess, 1.0)
        gain = float(self._charge @ self._inverse @ column) - cost
        return gain > worth and self._enter(column, cost)

    def _enter(self, column: Floats, cost: float) -> bool:
        direction = self._inverse @ column
        rising = direction > 1e-11
        if not rising.any():
            return False
        now = np.maximum(self._inverse[:, self._count], 0.0)
        ratio = np.where(rising, now / np.where(rising, direction, 1.0), np.inf)
        out = int(ratio.argmin())
        pivot = self._inverse[out] / direction[out]
        self._inverse = self._inverse - np.outer(direction, pivot)
        self._inverse[out] = pivot
        self._charge[out] = cost
        return True
