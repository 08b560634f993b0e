"""Sets weighed among generated parts: the first answer, the front searched, all of it held to its checks.

Run on request: ``pytest tests/bench/test_front.py -s``. Processor milliseconds, the least of three, columns in memory
and the rest worked out anew each time: the planned set, which is the first point; the sets of a quick look, with how
many there are; the exact front searched, those of its sets checked that were shown before; the whole answer. No time is
asserted. That the
front is exact is tested in ``tests/search/test_front.py`` and ``tests/planning/test_position_front.py``.
"""

from __future__ import annotations

import os
import time

import pytest

from bench.column_stores import ColumnStore, generated_columns
from bench.test_first_set import POSITIONS, _tables
from spoutline.model.front import FrontAxis, PositionFront
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.weighing.position_front import FrontQuestion, position_front

SIZES = (1_000, 10_000, 100_000)[: int(os.environ.get("BENCH_SIZES", "2"))]
AXES = (
    (FrontAxis.PRICE, FrontAxis.LEAD, FrontAxis.FLOW),
    (FrontAxis.PRICE, FrontAxis.MASS, FrontAxis.FLOW),
    (FrontAxis.PRICE, FrontAxis.LEAD, FrontAxis.PRACTICE),
)


@pytest.mark.timeout(3_600)
@pytest.mark.parametrize("name", [name for name in POSITIONS if name not in ("low hook", "nothing fits")])
def test_front(name: str) -> None:
    survey = POSITIONS[name]
    for count in SIZES:
        store = ColumnStore(generated_columns(count))
        for axes in AXES:
            spent: list[tuple[float, ...]] = []
            found, many = None, 0
            for _ in range(3):
                context, told, before = PlanningContext(_tables(), store), [], time.process_time()

                def tell(front: PositionFront, at: list[tuple[float, PositionFront]] = told) -> None:
                    at.append((time.process_time(), front))

                found = position_front(survey.positions[0], survey.site, context, FrontQuestion(axes), tell)
                ended = time.process_time()
                early = [one for one in told if one[1].unchecked is None] or [(ended, found)]
                searched = next((when for when, front in told if front.unchecked is not None), ended)
                many = len(early[-1][1].points)
                spent.append(tuple((when - before) * 1e3 for when in (early[0][0], early[-1][0], searched, ended)))
            assert found is not None
            best = [min(column) for column in zip(*spent, strict=True)]
            shown = " | ".join(f"{one:.0f}" for one in best)
            named = ", ".join(axes)
            row = (name, f"{count:,}", named, len(found.points), found.turned_down, many, shown)
            print("\n| " + " | ".join(map(str, row)) + " |", end="")
