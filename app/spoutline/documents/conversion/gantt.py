"""The sequence as bars over days: tasks, waits, the critical path, positions out of service."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from spoutline.documents.drawing.shapes import Anchor, Box, Drawing, Ink, Label, Path, Place, Shape, Weight
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.conversion_sequence import Moment, PlannedTask, Sequence

ROWS_PER_SHEET = 24
_NAME_M = 0.052
_BARS_M = 0.106
_ROW_M = 0.0043
_BAR_SHARE = 0.56
_MOST_DAY_LABELS = 9
_LEAST_BAR_M = 0.0006


@dataclass(frozen=True, slots=True)
class _Days:
    """Maps moments to metres on the paper, over the days that one sheet shows."""

    first: int
    last: int
    minutes_per_day: int

    def at(self, moment: Moment) -> float:
        days = moment.day + moment.minute / self.minutes_per_day - self.first
        return _NAME_M + days / (self.last - self.first) * _BARS_M


def gantt_drawings(sequence: Sequence, words: ConversionStory) -> tuple[Drawing, ...]:
    """Return the bars of all tasks, as many drawings as needed to stay readable."""
    tasks = sorted(sequence.tasks, key=lambda task: (task.start.day, task.start.minute, task.id))
    sheets = [tuple(tasks[start : start + ROWS_PER_SHEET]) for start in range(0, len(tasks), ROWS_PER_SHEET)]
    return tuple(_drawing(sheet, sequence, words, number, len(sheets)) for number, sheet in enumerate(sheets, start=1))


def _drawing(
    tasks: tuple[PlannedTask, ...], sequence: Sequence, words: ConversionStory, number: int, of: int
) -> Drawing:
    first = min(task.start.day for task in tasks)
    days = _Days(first, max(task.finish.day for task in tasks) + 1, sequence.minutes_per_day)
    height = _ROW_M * len(tasks)
    shapes: list[Shape] = list(_grid(days, sequence, height, words))
    for row, task in enumerate(tasks):
        shapes.extend(_row(task, days, height - _ROW_M * (row + 0.5), sequence))
    return Drawing(
        title=words.say("gantt_title"),
        description=words.say("gantt_description", number=number, of=of),
        shapes=tuple(shapes),
        box=Box(0.0, -0.003, _NAME_M + _BARS_M + 0.009, height + 0.010),
        true_scale=False,
    )


def _grid(days: _Days, sequence: Sequence, height: float, words: ConversionStory) -> Iterator[Shape]:
    gap = math.ceil((days.last - days.first) / _MOST_DAY_LABELS)
    for day in range(days.first, days.last + 1, gap):
        moment = Moment(day=day, minute=0)
        x = days.at(moment)
        yield Path(places=(Place(x, 0.0), Place(x, height + 0.002)), ink=Ink.GRID, weight=Weight.HAIR)
        text = words.day(moment, sequence.first_day)
        yield Label(at=Place(x, height + 0.002), text=text, offset_pt=(0.0, 3.0), size_pt=5.6)
    yield Path(places=(Place(_NAME_M, 0.0), Place(_NAME_M + _BARS_M, 0.0)), ink=Ink.AXIS, weight=Weight.HAIR)


def _row(task: PlannedTask, days: _Days, middle: float, sequence: Sequence) -> Iterator[Shape]:
    name = task.title if task.phase is None else f"{task.phase} · {task.title}"
    yield Label(at=Place(0.0, middle), text=name, anchor=Anchor.START, offset_pt=(0.0, -2.0), size_pt=5.8)
    left, right = days.at(task.start), days.at(task.finish)
    half = _ROW_M * _BAR_SHARE / 2.0
    if task.waits_days:
        yield Path(
            places=(Place(left, middle), Place(max(right, left + _LEAST_BAR_M), middle)),
            ink=Ink.HOT if task.critical else Ink.STATION,
            weight=Weight.MEDIUM,
            dashed=True,
        )
        return
    ink = Ink.HOT if task.critical else Ink.HOSE
    right = max(right, left + _LEAST_BAR_M)
    corners = (
        Place(left, middle - half),
        Place(right, middle - half),
        Place(right, middle + half),
        Place(left, middle + half),
    )
    # a bar that stops sales is full, the others are hollow: the two are told apart without colour
    yield Path(places=corners, ink=ink, weight=Weight.HAIR, closed=True, fill=ink if task.stops_sales else Ink.PAPER)
