"""The sequence as bars over the days on which something is done: names, dates, waits, the critical path."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from spoutline.documents.conversion.gantt_axis import Axis, axis_over
from spoutline.documents.drawing.shapes import Anchor, Box, Dot, Drawing, Ink, Label, Path, Place, Shape, Weight
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.conversion_sequence import Moment, PlannedTask, Sequence

_ROWS_PER_SHEET = 15
_DAYS_PER_SHEET = 4  # more would make slivers of the bars
_FEW_ROWS = 2  # so few at the end go to the drawing before
_NAME_M = 0.057
_DATES_M = 0.034
_BARS_M = 0.078
_ROW_M = 0.0046
_BAR_SHARE = 0.62
_LEAST_BAR_M = 0.0014
_LONGEST_NAME = 50  # characters; the table of tasks has every name in full
_TEXT_PT = 5.6
_DOT_PT = 1.7
_DOT_M = 0.0016  # from the middle of the dot to the first column


def gantt_drawings(sequence: Sequence, words: ConversionStory) -> tuple[Drawing, ...]:
    """Return the bars of all tasks, as many drawings as needed to stay readable.

    Days on which nothing but waiting goes on are drawn as one narrow gap, so that hours of work stay visible.
    """
    sheets = list(_sheets(sequence))
    if len(sheets) > 1 and len(sheets[-1]) <= _FEW_ROWS:
        sheets[-2:] = [(*sheets[-2], *sheets[-1])]
    return tuple(_drawing(sheet, sequence, words, number, len(sheets)) for number, sheet in enumerate(sheets, start=1))


def _sheets(sequence: Sequence) -> Iterator[tuple[PlannedTask, ...]]:
    """Yield the tasks of each drawing: few rows, few days of work."""
    tasks = sorted(sequence.tasks, key=lambda task: (task.start.day, task.start.minute, task.id))
    sheet: list[PlannedTask] = []
    for task in tasks:
        if sheet and (len(sheet) == _ROWS_PER_SHEET or len(work_days((*sheet, task))) > _DAYS_PER_SHEET):
            yield tuple(sheet)
            sheet = []
        sheet.append(task)
    if sheet:
        yield tuple(sheet)


def work_days(tasks: Iterable[PlannedTask]) -> set[int]:
    """Return the days on which work begins or ends."""
    return {moment.day for task in tasks if not task.waits_days for moment in (task.start, task.finish)}


def _drawing(
    tasks: tuple[PlannedTask, ...], sequence: Sequence, words: ConversionStory, number: int, of: int
) -> Drawing:
    left = _NAME_M + _DATES_M
    axis = axis_over(tasks, sequence.minutes_per_day, left, _BARS_M)
    height = _ROW_M * len(tasks)
    shapes: list[Shape] = list(_grid(axis, sequence, height, words))
    for row, task in enumerate(tasks):
        shapes.extend(_row(task, axis, height - _ROW_M * (row + 0.5), sequence, words))
    return Drawing(
        title=words.say("gantt_title"),
        description=words.say("gantt_description", number=number, of=of),
        shapes=tuple(shapes),
        box=Box(0.0, -0.002, left + _BARS_M + 0.002, height + 0.006),
        true_scale=False,
    )


def _grid(axis: Axis, sequence: Sequence, height: float, words: ConversionStory) -> Iterator[Shape]:
    for column in axis.columns:
        for x in (column.left_m, column.right_m):
            yield Path(places=(Place(x, 0.0), Place(x, height + 0.001)), ink=Ink.GRID, weight=Weight.HAIR)
        middle = Place((column.left_m + column.right_m) / 2.0, height + 0.001)
        if column.is_gap:
            text = words.say("gap", days=column.days)
            yield Label(at=middle, text=text, offset_pt=(0.0, 3.0), size_pt=5.0, ink=Ink.MEASURE)
        else:
            day = words.day(Moment(day=column.first_day, minute=0), sequence.first_day)
            yield Label(at=middle, text=day, offset_pt=(0.0, 3.0), size_pt=_TEXT_PT)
    yield Path(places=(Place(axis.left_m, 0.0), Place(axis.right_m, 0.0)), ink=Ink.AXIS, weight=Weight.HAIR)


def _row(task: PlannedTask, axis: Axis, middle: float, sequence: Sequence, words: ConversionStory) -> Iterator[Shape]:
    base = (0.0, -2.0)
    name = _shortened(words.gantt_name(task))
    yield Label(at=Place(0.0, middle), text=name, anchor=Anchor.START, offset_pt=base, size_pt=_TEXT_PT)
    dates = words.task_dates(task, sequence.first_day)
    yield Label(at=Place(_NAME_M, middle), text=dates, anchor=Anchor.START, offset_pt=base, size_pt=5.2)
    if task.critical:  # told without color too
        yield Dot(centre=Place(_NAME_M + _DATES_M - _DOT_M, middle), radius_pt=_DOT_PT, ink=Ink.HOT)
    left, right = axis.at(task.start), axis.at(task.finish)
    right = max(right, left + _LEAST_BAR_M)
    if task.waits_days:
        yield Path(
            places=(Place(left, middle), Place(right, middle)),
            ink=Ink.HOT if task.critical else Ink.STATION,
            weight=Weight.MEDIUM,
            dashed=True,
        )
        return
    if right > axis.right_m:
        left, right = left - (right - axis.right_m), axis.right_m
    ink = Ink.HOT if task.critical else Ink.HOSE
    half = _ROW_M * _BAR_SHARE / 2.0
    corners = (
        Place(left, middle - half),
        Place(right, middle - half),
        Place(right, middle + half),
        Place(left, middle + half),
    )
    # a bar that stops sales is full, the others are hollow: the two are told apart without colour
    yield Path(places=corners, ink=ink, weight=Weight.THIN, closed=True, fill=ink if task.stops_sales else Ink.PAPER)


def _shortened(name: str) -> str:
    return name if len(name) <= _LONGEST_NAME else f"{name[: _LONGEST_NAME - 1].rstrip()}…"
