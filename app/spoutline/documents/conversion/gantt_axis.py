"""The axis below the bars: a column for each day of work, as wide as its work is long, a narrow one for idle days."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.frozen import frozen
from spoutline.model.conversion_sequence import Moment, PlannedTask

_GAP_M = 0.010
_GAPS_SHARE = 0.4  # of the room: what all gaps take together at most
_LEAST_DAY_M = 0.017  # a date fits above it


@frozen(kw_only=True)
class Column:
    """Days that stand side by side on the paper; minutes from ``opens`` to ``closes`` of a day of work are shown."""

    first_day: int
    last_day: int
    left_m: float
    right_m: float
    opens: int
    closes: int
    is_gap: bool

    @property
    def days(self) -> int:
        """How many days the column stands for."""
        return self.last_day - self.first_day + 1

    def at(self, moment: Moment) -> float:
        """Return the place of a moment of these days, in metres."""
        if self.is_gap:
            share = (moment.day - self.first_day) / self.days
        else:
            share = (moment.minute - self.opens) / max(self.closes - self.opens, 1)
        return self.left_m + min(max(share, 0.0), 1.0) * (self.right_m - self.left_m)


@frozen
class Axis:
    """The columns of one drawing, in the order of the days."""

    columns: tuple[Column, ...]

    @property
    def left_m(self) -> float:
        """Where the axis begins."""
        return self.columns[0].left_m

    @property
    def right_m(self) -> float:
        """Where the axis ends."""
        return self.columns[-1].right_m

    def at(self, moment: Moment) -> float:
        """Return the place of a moment in metres; what lies outside is put at the end of the axis."""
        for column in self.columns:
            if moment.day <= column.last_day:
                return column.at(moment) if moment.day >= column.first_day else column.left_m
        return self.right_m


def axis_over(tasks: Iterable[PlannedTask], minutes_per_day: int, left_m: float, width_m: float) -> Axis:
    """Return the axis for some tasks.

    Parameters
    ----------
    tasks
        What is to be drawn.
    minutes_per_day
        Working minutes of a day, for days of which nothing but their name is known.
    left_m, width_m
        Room on the paper, metres.
    """
    tasks = tuple(tasks)
    windows = _windows(tasks, minutes_per_day)
    runs: list[tuple[int, int, bool]] = []
    first = min(task.start.day for task in tasks)
    last = max((task.finish.day - 1 if task.waits_days else task.finish.day) for task in tasks)
    reached = first
    for day in sorted(windows):
        if day > reached:
            runs.append((reached, day - 1, True))
        runs.append((day, day, False))
        reached = day + 1
    if last >= reached:
        runs.append((reached, last, True))
    gaps = sum(is_gap for *_, is_gap in runs)
    gap = min(_GAP_M, width_m * _GAPS_SHARE / max(gaps, 1)) if windows else width_m / max(gaps, 1)
    room = width_m - gaps * gap
    widths = _day_widths({day: closes - opens for day, (opens, closes) in windows.items()}, room)
    columns: list[Column] = []
    x = left_m
    for begin, end, is_gap in runs:
        width = gap if is_gap else widths[begin]
        opens, closes = (0, minutes_per_day) if is_gap else windows[begin]
        columns.append(
            Column(
                first_day=begin,
                last_day=end,
                left_m=x,
                right_m=x + width,
                opens=opens,
                closes=closes,
                is_gap=is_gap,
            )
        )
        x += width
    return Axis(tuple(columns))


def _windows(tasks: tuple[PlannedTask, ...], minutes_per_day: int) -> dict[int, tuple[int, int]]:
    """Return the minutes of each day of work between which something is done."""
    found: dict[int, tuple[int, int]] = {}
    for task in tasks:
        if task.waits_days:
            continue
        for day in {task.start.day, task.finish.day}:
            opens = task.start.minute if day == task.start.day else 0
            closes = task.finish.minute if day == task.finish.day else max(minutes_per_day, opens)
            known = found.get(day, (opens, closes))
            found[day] = (min(known[0], opens), max(known[1], closes))
    return found


def _day_widths(lengths: dict[int, int], room_m: float) -> dict[int, float]:
    """Share the room by the length of the work; no day is narrower than its date, as far as the room goes."""
    if not lengths:
        return {}
    least = min(_LEAST_DAY_M, room_m / len(lengths))
    spare = room_m - least * len(lengths)
    total = sum(lengths.values())
    return {day: least + spare * (length / total if total else 1 / len(lengths)) for day, length in lengths.items()}
