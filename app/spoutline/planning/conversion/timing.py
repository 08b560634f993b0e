"""Earliest times of a net of tasks on a working calendar, what drives the finish, and how long each may wait."""

from __future__ import annotations

from collections.abc import Mapping

from spoutline.frozen import frozen
from spoutline.model.conversion_sequence import Moment
from spoutline.planning.conversion.task_net import DayCount, Task
from spoutline.planning.conversion.work_calendar import WorkCalendar

START = Moment(day=0, minute=0)


@frozen(kw_only=True)
class Timed:
    """Earliest start and finish; ``slack_minutes`` of working time before the finish of the whole moves."""

    start: Moment
    finish: Moment
    critical: bool
    slack_minutes: int


def timed(tasks: tuple[Task, ...], calendar: WorkCalendar) -> dict[str, Timed]:
    """Return the earliest times of all tasks.

    The critical path is traced backwards: from the task that finishes last, through the predecessor whose end lets
    each one start. Slack is measured along the links of the net: how late a task may end before one that waits for it,
    or the finish of the whole, is moved.

    Parameters
    ----------
    tasks
        Each behind those that it waits for.
    calendar
        Working time.
    """
    starts: dict[str, Moment] = {}
    finishes: dict[str, Moment] = {}
    for task in tasks:
        ready = max((finishes[one] for one in task.after), key=_order, default=START)
        starts[task.id] = _start(task, ready, calendar)
        finishes[task.id] = _finish(task, starts[task.id], calendar)
    if not tasks:
        return {}
    critical = _driving(tasks, starts, finishes, calendar)
    late = _slack(tasks, starts, finishes, calendar)
    return {
        task.id: Timed(
            start=starts[task.id],
            finish=finishes[task.id],
            critical=task.id in critical,
            slack_minutes=0 if task.id in critical else late[task.id],
        )
        for task in tasks
    }


def _order(moment: Moment) -> tuple[int, int]:
    return moment.day, moment.minute


def _start(task: Task, ready: Moment, calendar: WorkCalendar) -> Moment:
    """Return when a task starts that is ready at ``ready``; what is to end on its day starts early enough."""
    start = calendar.opening(ready)
    left = calendar.minutes_per_day - start.minute
    too_long = task.unsplit and task.day_minutes > calendar.minutes_per_day and start.minute > 0
    if left < task.day_minutes <= calendar.minutes_per_day or too_long:
        return calendar.opening(Moment(day=start.day + 1, minute=0))
    return start


def _finish(task: Task, start: Moment, calendar: WorkCalendar) -> Moment:
    if task.waits_days:
        return _waited(task, start, calendar)
    if task.unsplit:  # a test goes on into the evening where the working day is shorter
        return Moment(day=start.day, minute=start.minute + task.minutes)
    return calendar.after_work(start, task.minutes)


def _waited(task: Task, start: Moment, calendar: WorkCalendar) -> Moment:
    match task.counted:
        case DayCount.WORKING:
            return calendar.after_weekdays(start, task.waits_days)
        case DayCount.TO_THE_HOUR:
            return calendar.opening(Moment(day=start.day + task.waits_days, minute=start.minute))
        case _:
            return calendar.after_days(start, task.waits_days)


def _driving(
    tasks: tuple[Task, ...],
    starts: Mapping[str, Moment],
    finishes: Mapping[str, Moment],
    calendar: WorkCalendar,
) -> set[str]:
    by_id = {task.id: task for task in tasks}
    last = max(_order(moment) for moment in finishes.values())
    waiting = [task.id for task in tasks if _order(finishes[task.id]) == last]
    found: set[str] = set()
    while waiting:
        task_id = waiting.pop()
        if task_id in found:
            continue
        found.add(task_id)
        task = by_id[task_id]
        waiting.extend(one for one in task.after if _start(task, finishes[one], calendar) == starts[task_id])
    return found


def _slack(
    tasks: tuple[Task, ...],
    starts: Mapping[str, Moment],
    finishes: Mapping[str, Moment],
    calendar: WorkCalendar,
) -> dict[str, int]:
    """Return total slack in working minutes, from the end of the net to its start."""
    end = max(finishes.values(), key=_order)
    followers: dict[str, list[str]] = {task.id: [] for task in tasks}
    for task in tasks:
        for earlier in task.after:
            followers[earlier].append(task.id)
    slack: dict[str, int] = {}
    for task in reversed(tasks):
        own_end = finishes[task.id]
        gaps = [calendar.minutes_between(own_end, starts[one]) + slack[one] for one in followers[task.id]]
        slack[task.id] = min(gaps, default=calendar.minutes_between(own_end, end))
    return slack
