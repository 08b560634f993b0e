"""Working time: days from the first day of a plan, minutes into a working day, weekends left out."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from spoutline.model.conversion_sequence import Moment

_SATURDAY = 5
_WEEK = 7


@dataclass(frozen=True, slots=True)
class WorkCalendar:
    """Counts working minutes. Without a first day, day 0 is taken as a Monday."""

    minutes_per_day: int
    first_day: date | None = None
    weekend_work: bool = False

    def is_working(self, day: int) -> bool:
        """Say whether work goes on on this day of the plan."""
        monday = 0 if self.first_day is None else self.first_day.weekday()
        return self.weekend_work or (monday + day) % _WEEK < _SATURDAY

    def opening(self, moment: Moment) -> Moment:
        """Return the first moment at or after this one at which work can start."""
        day, minute = moment.day, moment.minute
        if minute >= self.minutes_per_day:
            day, minute = day + 1, 0
        while not self.is_working(day):
            day, minute = day + 1, 0
        return Moment(day=day, minute=minute)

    def after_work(self, start: Moment, minutes: int) -> Moment:
        """Return when ``minutes`` of work are done that start at the next opening; no work ends where it starts."""
        now = self.opening(start)
        left = minutes
        while left > self.minutes_per_day - now.minute:
            left -= self.minutes_per_day - now.minute
            now = self.opening(Moment(day=now.day + 1, minute=0))
        return Moment(day=now.day, minute=now.minute + left)

    def after_days(self, start: Moment, days: int) -> Moment:
        """Return the opening of the first working day at least ``days`` calendar days after ``start``."""
        if days == 0:
            return self.opening(start)
        return self.opening(Moment(day=start.day + days, minute=0))

    def after_weekdays(self, start: Moment, days: int) -> Moment:
        """Return the opening of the day at least ``days`` days from Monday to Friday after ``start``."""
        weekdays = WorkCalendar(self.minutes_per_day, self.first_day)
        day = start.day
        for _ in range(days):
            day = weekdays.opening(Moment(day=day + 1, minute=0)).day
        return self.opening(Moment(day=day, minute=0))

    def minutes_between(self, start: Moment, finish: Moment) -> int:
        """Return the working minutes from ``start`` to ``finish``; negative where ``finish`` comes first."""
        return self._minutes_until(finish) - self._minutes_until(start)

    def _minutes_until(self, moment: Moment) -> int:
        whole_weeks, rest = divmod(moment.day, _WEEK)
        working = whole_weeks * sum(self.is_working(day) for day in range(_WEEK))
        working += sum(self.is_working(day) for day in range(rest))
        own = min(moment.minute, self.minutes_per_day) if self.is_working(moment.day) else 0
        return working * self.minutes_per_day + own
