"""The sequence of a conversion: tasks with their times, phases, and what could not be kept."""

from __future__ import annotations

from datetime import date
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.conversion_step import StepRole
from spoutline.model.limit import LimitStatus


@frozen(kw_only=True)
class Moment:
    """A point of the working calendar: whole days from the first day of the plan, and minutes into the working day."""

    day: int
    minute: int


@frozen(kw_only=True)
class PlannedTask:
    """One task with its times. ``after`` are ids of the tasks it waits for; ``slack_minutes`` is working time."""

    id: str
    step_id: str
    title: str
    role: StepRole
    places: tuple[str, ...]
    start: Moment
    finish: Moment
    work_minutes: int
    waits_days: int
    after: tuple[str, ...]
    critical: bool
    slack_minutes: int
    stops_sales: bool
    phase: int | None
    source: str
    status: LimitStatus
    subject: str = ""  # what it is about, such as the tests that an agency names
    change: int | None = None  # number of the change of a tank's liquid that it belongs to
    tank: str = ""


class SequenceFinding(StrEnum):
    """What the sequence cannot keep or does not know."""

    SHARE_TOO_SMALL = "share_too_small"
    NOTICE_UNKNOWN = "notice_unknown"
    FINISH_LATE = "finish_late"
    NOT_WITHIN_DAY = "not_within_day"
    NO_START_DATE = "no_start_date"
    WHOLE_STATION_STOP = "whole_station_stop"
    PHASES_NOT_PROVED = "phases_not_proved"
    PIPES_UNKNOWN = "pipes_unknown"
    PERMISSION_OPEN = "permission_open"
    NOTICE_LAPSES = "notice_lapses"
    SECOND_NOTICE_EARLY = "second_notice_early"
    TEST_OVER_DAY = "test_over_day"
    TANK_UNKNOWN = "tank_unknown"
    UNDERGROUND_UNKNOWN = "underground_unknown"
    TANK_MIXED = "tank_mixed"
    TANK_BLOCKED = "tank_blocked"


@frozen(kw_only=True)
class SequenceNote:
    """A finding on the sequence with the numbers it used; ``positions`` are those that its subject names one by one."""

    finding: SequenceFinding
    subject: str = ""
    number: float | None = None
    limit: float | None = None
    positions: tuple[str, ...] = ()


class DeadlineKind(StrEnum):
    """A day that a rule sets and no task of the plan shows."""

    NOTICE_LAPSES = "notice_lapses"  # a new notice is needed unless the work has begun
    FINISH_BY = "finish_by"


@frozen(kw_only=True)
class Deadline:
    """A day to keep; ``days`` is the limit that it was counted from, ``kept`` says whether the plan keeps it."""

    kind: DeadlineKind
    day: int
    days: int
    kept: bool
    source: str
    status: LimitStatus


@frozen(kw_only=True)
class Phase:
    """Dispensers that are out of service together; minutes are working time of the positions concerned."""

    number: int
    dispensers: tuple[str, ...]
    positions: tuple[str, ...]
    start: Moment
    finish: Moment
    out_of_service: tuple[tuple[str, int, int], ...]  # grade, positions out, positions in all


@frozen(kw_only=True)
class Sequence:
    """The dated plan. ``first_day`` is None where no start is known; days are then counted."""

    first_day: date | None
    minutes_per_day: int
    tasks: tuple[PlannedTask, ...]
    phases: tuple[Phase, ...]
    notes: tuple[SequenceNote, ...]
    finish: Moment
    work_minutes: int
    downtime_minutes: int  # working minutes times positions, stops of the whole station counted
    site_stop_minutes: int
    deadlines: tuple[Deadline, ...] = ()
