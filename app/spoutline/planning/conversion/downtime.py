"""How long something stands still by the schedule: working minutes of spans that may overlap, each minute once."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from spoutline.model.conversion_sequence import Moment
from spoutline.planning.conversion.work_calendar import WorkCalendar

Span = tuple[Moment, Moment]


def stopped_minutes(spans: Iterable[Span], calendar: WorkCalendar) -> int:
    """Return the working minutes that lie in at least one of the spans.

    Nights and days without work count nothing; what runs past the end of a working day counts to its own end.

    Parameters
    ----------
    spans
        Start and end of each stop.
    calendar
        Working time.
    """
    by_day: dict[int, list[tuple[int, int]]] = {}
    for span in spans:
        for day, start, finish in _parts(span, calendar):
            by_day.setdefault(day, []).append((start, finish))
    return sum(_covered(parts) for parts in by_day.values())


def _parts(span: Span, calendar: WorkCalendar) -> Iterator[tuple[int, int, int]]:
    start, finish = span
    for day in range(start.day, finish.day + 1):
        if not calendar.is_working(day):
            continue
        begins = start.minute if day == start.day else 0
        yield day, begins, finish.minute if day == finish.day else max(begins, calendar.minutes_per_day)


def _covered(parts: list[tuple[int, int]]) -> int:
    total, reached = 0, 0
    for start, finish in sorted(parts):
        total += max(0, finish - max(start, reached))
        reached = max(reached, finish)
    return total
