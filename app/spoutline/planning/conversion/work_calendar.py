"""Working time: days from the first day of a plan, minutes into a working day, weekends left out."""

from __future__ import annotations

from datetime import date
from functools import cache
from itertools import accumulate

from spoutline.frozen import frozen
from spoutline.model.conversion_sequence import Moment

_SATURDAY = 5
_WEEK = 7


@frozen
class WorkCalendar:
    """Counts working minutes. Without a first day, day 0 is taken as a Monday."""

    minutes_per_day: int
    first_day: date | None = None
    weekend_work: bool = False

    def is_working(self, day: int) -> bool:
        """Say whether work goes on on this day of the plan."""
        return self.weekend_work or (self._first_weekday + day) % _WEEK < _SATURDAY

    @property
    def _first_weekday(self) -> int:
        return 0 if self.first_day is None else self.first_day.weekday()

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
        worked = _days_worked(self._first_weekday, weekend_work=self.weekend_work)
        own = min(moment.minute, self.minutes_per_day) * (worked[rest + 1] - worked[rest])
        return (whole_weeks * worked[_WEEK] + worked[rest]) * self.minutes_per_day + own


@cache
def _days_worked(first_weekday: int, *, weekend_work: bool) -> tuple[int, ...]:
    """Return how many of the first days of a plan are worked, for no day up to a week."""
    days = ((first_weekday + day) % _WEEK for day in range(_WEEK))
    return tuple(accumulate((int(weekend_work or day < _SATURDAY) for day in days), initial=0))
