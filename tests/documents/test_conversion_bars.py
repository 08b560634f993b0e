"""The bars of the sequence can be read: hours of work are wide, idle weeks narrow, the order of time is kept."""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.documents.conversion.gantt_axis import axis_over
from spoutline.model.conversion_sequence import Moment, PlannedTask
from spoutline.model.conversion_step import StepRole
from spoutline.model.limit import LimitStatus

DAY = 480
WIDTH_M = 0.08


def task(name: str, start: tuple[int, int], finish: tuple[int, int], waits_days: int = 0) -> PlannedTask:
    return PlannedTask(
        id=name,
        step_id=name,
        title=name,
        role=StepRole.OWNER,
        places=(),
        start=Moment(day=start[0], minute=start[1]),
        finish=Moment(day=finish[0], minute=finish[1]),
        work_minutes=0,
        waits_days=waits_days,
        after=(),
        critical=False,
        slack_minutes=0,
        stops_sales=False,
        phase=None,
        source="test",
        status=LimitStatus.JUDGEMENT,
    )


def test_an_hour_of_work_stays_visible_beside_a_month_of_waiting() -> None:
    # drawn to scale an hour of 30 days of 8 h would be 0.3 mm of 80 mm
    tasks = (
        task("notice", (0, 0), (0, 60)),
        task("wait", (0, 60), (30, 0), 30),
        task("work", (30, 0), (30, 60)),
        task("test", (30, 60), (30, 240)),
    )
    axis = axis_over(tasks, DAY, 0.0, WIDTH_M)
    assert [(one.is_gap, one.days) for one in axis.columns] == [(False, 1), (True, 29), (False, 1)]
    for one in (tasks[0], tasks[2]):
        assert axis.at(one.finish) - axis.at(one.start) > 0.006
    gap = axis.columns[1]
    assert gap.right_m - gap.left_m < 0.012
    assert axis.right_m == pytest.approx(WIDTH_M)


moments = st.tuples(st.integers(0, 40), st.integers(0, DAY))


@given(st.lists(st.tuples(moments, st.integers(0, DAY), st.booleans()), min_size=1, max_size=12))
def test_the_order_of_moments_is_the_order_on_the_paper(
    drawn: list[tuple[tuple[int, int], int, bool]],
) -> None:
    tasks = []
    for number, ((day, minute), length, waits) in enumerate(drawn):
        end = (day + 1 + length % 7, 0) if waits else (day, max(minute, min(DAY, minute + length)))
        tasks.append(task(str(number), (day, minute), end, 1 if waits else 0))
    axis = axis_over(tasks, DAY, 0.01, WIDTH_M)
    ends = [moment for one in tasks for moment in (one.start, one.finish)]
    ends.sort(key=lambda moment: (moment.day, moment.minute))
    places = [axis.at(moment) for moment in ends]
    assert all(before <= after + 1e-12 for before, after in itertools.pairwise(places))
    assert all(0.01 - 1e-12 <= place <= 0.01 + WIDTH_M + 1e-9 for place in places)
    assert all(one.right_m > one.left_m for one in axis.columns)
    assert all(one.right_m == after.left_m for one, after in itertools.pairwise(axis.columns))
