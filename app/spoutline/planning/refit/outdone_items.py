"""Items of a station that another is before wherever they may stand: no optimum of sets chosen together holds them.

Another of the same ports that costs less, adds no more to any limit that binds, bears as much, asks no more and breaks
no more *should* rules can take an item's place. Where one can in every place of every case, all pieces can be changed
at once: that costs less, and there are no more part numbers. Near copies of a part are mostly left out so.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from itertools import pairwise

import numpy as np

from spoutline.planning.refit.case_columns import CaseProblem
from spoutline.search.columns import heads

_HELD_AGAINST = 64  # cheapest items of the same ports


def stand_ins(problems: Iterable[CaseProblem]) -> Mapping[str, str]:
    """Return, by the key of an item that no optimum needs, the key of one that is before it wherever it may stand.

    Parameters
    ----------
    problems
        Every chain problem of every case with the items that may still matter.

    Returns
    -------
    Mapping
        Items that stand for others are left out themselves in no case. Where a set is turned down that holds one, those
        that it stands for may be in the optimum after all.
    """
    before: dict[str, frozenset[str]] = {}
    for problem in problems:
        for key, others in _before(problem):
            before[key] = before[key] & others if key in before else others
    left_out = {key: others for key, others in before.items() if others}
    return {key: min(others - left_out.keys()) for key, others in left_out.items()}


def _before(problem: CaseProblem) -> Iterator[tuple[str, frozenset[str]]]:
    """Yield each item's key with those of the same layer and ports that are before it; in each layer anew."""
    columns, rows = problem.columns, problem.columns.row
    least, dearest = problem.prices[rows, 0], problem.prices[rows, 2]
    bears = np.minimum(columns.bears, columns.demands.max(initial=0.0))  # nobody asks for more
    regrets = problem.regrets[rows]
    figures = np.column_stack([columns.loads[:, columns.binding()], columns.demands, -bears, regrets])
    keys = [problem.key(row) for row in rows.tolist()]
    for start, end in pairwise([*heads(columns.ports()).tolist(), len(columns)]):
        cheapest = start + np.argsort(dearest[start:end], kind="stable")[:_HELD_AGAINST]
        own = slice(start, end)
        is_before = dearest[cheapest] < least[own, None]
        for column in figures.T:
            is_before &= column[cheapest] <= column[own, None]
        for at, others in zip(range(start, end), is_before, strict=True):
            yield keys[at], frozenset([keys[other] for other in cheapest[others].tolist()])
