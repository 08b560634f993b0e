"""Which rows nothing outdoes, held against every pair of rows looked at by the definition."""

from __future__ import annotations

import numpy as np
import pytest

from examples import seeds
from spoutline.search.item_table import Floats, Mask
from spoutline.search.undominated import Rows, undominated


def _outdoes(figures: Floats, tie: Floats, decisive: Mask, one: int, other: int) -> bool:
    if (figures[one] > figures[other]).any():
        return False
    return bool((figures[one] < figures[other])[decisive].any() or tie[one] <= tie[other])


def _plainly(rows: Rows) -> list[int]:
    count = len(rows.figures)
    may = np.ones(count, np.bool_) if rows.outdoes is None else rows.outdoes
    asked = rows.figures, rows.tie, rows.decisive
    return [
        other
        for other in range(count)
        if not any(
            may[one] and _outdoes(*asked, one, other) and (one < other or not _outdoes(*asked, other, one))
            for one in range(count)
            if one != other
        )
    ]


@pytest.mark.parametrize("seed", seeds(24))
@pytest.mark.parametrize("count", (1, 40, 300))
def test_rows_that_nothing_outdoes_are_those_of_the_definition(seed: int, count: int) -> None:
    random = np.random.default_rng(seed)
    columns = int(random.integers(1, 5))
    values = int(random.choice((3, 12, 1_000_000)))  # many equal rows, some, none
    figures = random.integers(0, values, (count, columns)).astype(np.float64)
    figures[random.random(count) < 0.02, 0] = np.inf
    outdoes = None if seed % 3 else np.asarray(random.random(count) < 0.7)
    rows = Rows(figures, random.integers(0, 4, count).astype(np.float64), random.random(columns) < 0.5, outdoes)
    if outdoes is not None:  # rows that are equal in all outdo each other: which stays is decided among those that may
        figures[:, 0] += np.where(outdoes, 0.0, 0.5)
    assert undominated(rows).tolist() == _plainly(rows)
