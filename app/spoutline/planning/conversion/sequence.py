"""The dated plan of a conversion: phases that keep the station selling, tasks with times, what cannot be kept."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping

from spoutline.frozen import frozen
from spoutline.model.conversion_sequence import Moment, Phase, PlannedTask, Sequence, SequenceFinding, SequenceNote
from spoutline.model.conversion_step import StepCondition, StepFigureId, StepTable
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.position_conversion import (
    Closing,
    ClosingPlan,
    ConversionKind,
    ConversionOption,
    DifferenceAction,
    PositionConversion,
    PositionOutcome,
    VapourOpening,
)
from spoutline.model.removal_standing import RemovalStanding
from spoutline.model.survey import Position, Survey, VapourStatus
from spoutline.model.tank_change import ChangeWay, TankChange
from spoutline.planning.conversion.downtime import Span, stopped_minutes
from spoutline.planning.conversion.phases import DispenserLoad, Grouping, grouped
from spoutline.planning.conversion.sequence_notes import deadline_notes, deadlines_of, sequence_notes, tank_notes
from spoutline.planning.conversion.task_net import ChangeWork, PhaseWork, Task, Waits, task_net
from spoutline.planning.conversion.timing import START, Timed, timed
from spoutline.planning.conversion.work_calendar import WorkCalendar
from spoutline.rules.conversion.standing import permission_is_open

_POSITION_CONDITIONS = (
    StepCondition.DECOMMISSION,
    StepCondition.ASSIST,
    StepCondition.BALANCE,
    StepCondition.ADDS_RECOVERY,
    StepCondition.WITHIN_CHANGE,
)
_ADDS = (ConversionKind.ADD_RECOVERY, ConversionKind.CHANGE_RECOVERY)


@frozen(kw_only=True)
class SequenceInput:
    """What the sequence is made from."""

    survey: Survey
    standing: RemovalStanding
    positions: tuple[PositionConversion, ...]
    closed: ClosingPlan
    changes: tuple[TankChange, ...]
    steps: StepTable

    @property
    def closings(self) -> tuple[Closing, ...]:
        """Everything that is closed."""
        return (*(closing for one in self.positions for closing in one.closings), *self.closed.shared)

    @property
    def worked_on(self) -> tuple[PositionConversion, ...]:
        """The positions at which something is done."""
        return tuple(one for one in self.positions if one.outcome is PositionOutcome.CONVERTS)

    def followed(self, conversion: PositionConversion) -> ConversionOption | None:
        """Return the way that the owner follows at a position."""
        return conversion.followed(self.survey.conversion.follow)


def grade_of(position: Position) -> str:
    """Return the grade by which sales go on: its name, else the liquid sold today and its blend."""
    liquid = position.liquid_today or position.liquid
    return position.grade or f"{liquid.family} {liquid.blend_percent:g}"


def sequence_of(made_from: SequenceInput) -> Sequence | None:
    """Return the dated plan; None where nothing is done."""
    if not made_from.worked_on:
        return None
    answers = made_from.survey.conversion.sequence
    calendar = WorkCalendar(
        minutes_per_day=round(answers.hours_per_day * 60),
        first_day=answers.start_date,
        weekend_work=answers.weekend_work and not made_from.standing.agency.weekdays_only,
    )
    grouping = _grouping(made_from)
    order = _ordered(grouping.phases, made_from.changes)
    works = tuple(_phase_work(number, names, made_from) for number, names in enumerate(order, start=1))
    conditions = _conditions(made_from)
    named = {"further_tests": ", ".join(made_from.standing.agency.further_tests)}
    tasks = task_net(
        made_from.steps, conditions, works, _waits(made_from), answers.crews, subjects=named, changes=_works(made_from)
    )
    times = timed(tasks, calendar)
    phases = tuple(_phase(work, tasks, times, made_from) for work in works)
    finish = max((one.finish for one in times.values()), key=lambda one: (one.day, one.minute), default=START)
    deadlines = tuple(deadlines_of(made_from.standing.agency, tasks, times))
    return Sequence(
        first_day=answers.start_date,
        minutes_per_day=calendar.minutes_per_day,
        tasks=tuple(_planned(task, times[task.id]) for task in tasks),
        phases=phases,
        notes=(
            *sequence_notes(answers, made_from.standing, grouping, tasks, times),
            *_stop_notes(tasks, times, calendar),
            *tank_notes(made_from.changes),
            *deadline_notes(made_from.standing.agency, deadlines, phases, tasks, times),
        ),
        finish=finish,
        work_minutes=sum(task.work_minutes for task in tasks),
        downtime_minutes=_downtime(made_from, phases, tasks, times, calendar),
        site_stop_minutes=stopped_minutes(_site_stops(tasks, times), calendar),
        deadlines=deadlines,
    )


def _stop_notes(tasks: tuple[Task, ...], times: Mapping[str, Timed], calendar: WorkCalendar) -> Iterator[SequenceNote]:
    stop = stopped_minutes(_site_stops(tasks, times), calendar)
    if stop:
        yield SequenceNote(finding=SequenceFinding.WHOLE_STATION_STOP, number=stop / 60)


def _site_stops(tasks: tuple[Task, ...], times: Mapping[str, Timed]) -> tuple[Span, ...]:
    """Return when the whole station stands still."""
    stopping = (task for task in tasks if task.phase is None and task.change is None and task.step.stops_sales)
    return tuple((times[task.id].start, times[task.id].finish) for task in stopping)


def _downtime(
    made_from: SequenceInput,
    phases: tuple[Phase, ...],
    tasks: tuple[Task, ...],
    times: Mapping[str, Timed],
    calendar: WorkCalendar,
) -> int:
    """Return the minutes that each position of today stands still, added up: of its phase, its tank, the station."""
    own: dict[str, list[Span]] = {}
    for phase in phases:
        for label in phase.positions:
            own.setdefault(label, []).append((phase.start, phase.finish))
    for change in made_from.changes:
        for label in change.positions:
            own.setdefault(label, []).extend(_tank_stops(change, label, phases, tasks, times))
    today = [position.label for position in made_from.survey.positions if position.exists_today]
    site_stops = _site_stops(tasks, times)
    return sum(stopped_minutes((*own.get(label, ()), *site_stops), calendar) for label in today)


def _tank_stops(
    change: TankChange, label: str, phases: tuple[Phase, ...], tasks: tuple[Task, ...], times: Mapping[str, Timed]
) -> Iterator[Span]:
    """Yield when a position stands still because its tank changes: until the new liquid flows there."""
    own = [times[task.id] for task in tasks if task.change == change.number and task.step.stops_sales]
    if not own:
        return
    start = min((one.start for one in own), key=_order)
    ends = [one.finish for one in own]
    if change.way is ChangeWay.WITHIN_CHANGE:
        ends += [phase.finish for phase in phases if label in phase.positions]
    yield start, max(ends, key=_order)


def _order(moment: Moment) -> tuple[int, int]:
    return moment.day, moment.minute


def _ordered(phases: tuple[tuple[str, ...], ...], changes: tuple[TankChange, ...]) -> tuple[tuple[str, ...], ...]:
    """Return the phases so that those of one shutdown follow each other; the others come first, as they were."""
    within = [change for change in changes if change.way is ChangeWay.WITHIN_CHANGE]

    def rank(phase: tuple[str, ...]) -> int:
        touching = (place for place, one in enumerate(within) if not set(one.dispensers).isdisjoint(phase))
        return next(touching, -1)

    return tuple(sorted(phases, key=rank))


def _works(made_from: SequenceInput) -> tuple[ChangeWork, ...]:
    ways = {
        ChangeWay.HARDWARE_FIRST: StepCondition.HARDWARE_FIRST,
        ChangeWay.WITHIN_CHANGE: StepCondition.WITHIN_CHANGE,
    }
    return tuple(
        ChangeWork(
            number=change.number,
            tank=change.tank,
            positions=change.positions,
            dispensers=change.dispensers,
            holding=frozenset(
                {StepCondition.CHANGES_LIQUID, ways[change.way]}
                | ({StepCondition.TANK_NOTICE} if change.notice else set())
            ),
            label=change.label.title if change.label else "",
        )
        for change in made_from.changes
    )


def _grouping(made_from: SequenceInput) -> Grouping:
    """Group whole dispensers: a locked-out dispenser takes every one of its positions out of service."""
    survey = made_from.survey
    answers = survey.conversion.sequence
    standing_today = [position for position in survey.positions if position.exists_today]
    concerned = dict.fromkeys(one.position.dispenser for one in made_from.worked_on)
    loads = [
        DispenserLoad(
            name=name,
            grades=Counter(grade_of(position) for position in standing_today if position.dispenser == name),
        )
        for name in concerned
    ]
    return grouped(
        loads,
        Counter(grade_of(position) for position in standing_today),
        most_share=answers.most_out_of_service,
        crews=answers.crews,
    )


def _phase_work(number: int, names: tuple[str, ...], made_from: SequenceInput) -> PhaseWork:
    here = [one for one in made_from.worked_on if one.position.dispenser in names]
    lines = [line for one in here for line in one.differences]
    fitted = sum(
        line.action is DifferenceAction.ADD and line.reason is not DifferenceReason.ACCESSORY for line in lines
    )
    return PhaseWork(
        number=number,
        dispensers=names,
        positions=tuple(one.position.label for one in here),
        removed=sum(line.action is DifferenceAction.REMOVE for line in lines),
        fitted=fitted,
        closings=sum(closing.quantity for closing in made_from.closings if closing.dispenser in names),
        holding={
            condition: tuple(one.position.label for one in here if condition in _conditions_of(one, made_from.changes))
            for condition in _POSITION_CONDITIONS
        },
        dispenser_of={one.position.label: one.position.dispenser for one in here},
    )


def _conditions_of(one: PositionConversion, changes: tuple[TankChange, ...]) -> frozenset[StepCondition]:
    """Return the conditions that hold at one position."""
    going = ConversionKind.DECOMMISSION in one.kinds
    today = one.position.vapour_today
    told = {
        StepCondition.DECOMMISSION: going,
        StepCondition.ASSIST: going and today is VapourStatus.VACUUM_ASSIST,
        StepCondition.BALANCE: going and today is VapourStatus.BALANCE,
        StepCondition.ADDS_RECOVERY: not set(_ADDS).isdisjoint(one.kinds),
        StepCondition.CHANGES_LIQUID: ConversionKind.CHANGE_LIQUID in one.kinds,
        StepCondition.WITHIN_CHANGE: any(
            change.way is ChangeWay.WITHIN_CHANGE and one.position.label in change.positions for change in changes
        ),
    }
    return frozenset(condition for condition, holds in told.items() if holds)


def _conditions(made_from: SequenceInput) -> frozenset[StepCondition]:
    answers = made_from.survey.conversion.sequence
    of_positions = frozenset(
        condition for one in made_from.worked_on for condition in _conditions_of(one, made_from.changes)
    )
    going = StepCondition.DECOMMISSION in of_positions
    options = [option for option in map(made_from.followed, made_from.worked_on) if option]
    shut = {closing.opening for closing in made_from.closed.shared}
    pipe_is_live = any(one.opening is VapourOpening.TANK_END for one in made_from.closed.live)
    told = {
        StepCondition.CENTRAL_VACUUM: VapourOpening.CENTRAL_UNIT in shut,
        StepCondition.TRAPS: VapourOpening.CONDENSATE_TRAP in shut,
        StepCondition.TANK_END: VapourOpening.TANK_END in shut,
        # a pipe that stays live goes on linking the tanks
        StepCondition.LINKED_TANKS: going and answers.vapour_pipe_links_tanks is True and not pipe_is_live,
        StepCondition.LINK_TO_PROVE: going and answers.vapour_pipe_links_tanks is not False,
        StepCondition.PERMISSION_OPEN: going and permission_is_open(made_from.standing),
        StepCondition.SECOND_NOTICE: going and made_from.standing.agency.second_notice_least_hours is not None,
        StepCondition.FURTHER_TESTS: going and bool(made_from.standing.agency.further_tests),
        StepCondition.ORDERS_PARTS: any(option.bought_minor or option.accessories for option in options),
    }
    return of_positions | {condition for condition, holds in told.items() if holds}


def _waits(made_from: SequenceInput) -> Waits:
    answers, agency = made_from.survey.conversion.sequence, made_from.standing.agency
    notice = answers.notice_days if answers.notice_days is not None else agency.notice_days
    options = [option for option in map(made_from.followed, made_from.worked_on) if option]
    leads = [
        link.part.lead_time_days
        for option in options
        for place, link in enumerate(option.judged.hanging_set.links)
        if place not in option.kept
    ]
    leads += [line.part.lead_time_days for option in options for line in option.accessories]
    return Waits(
        notice_days=notice or 0,
        lead_days=max(leads, default=0),
        test_notice_days=agency.test_notice_days or 0,
        test_notice_working=agency.test_notice_working,
        permission_days=answers.permission_days or 0,
        second_notice_hours=agency.second_notice_least_hours or 0,
        tank_notice_days=round(made_from.steps.figures[StepFigureId.TANK_NOTICE_DAYS].value),
    )


def _planned(task: Task, times: Timed) -> PlannedTask:
    return PlannedTask(
        id=task.id,
        step_id=task.step.id,
        title=task.step.title,
        role=task.step.role,
        places=task.places,
        start=times.start,
        finish=times.finish,
        work_minutes=task.work_minutes,
        waits_days=task.waits_days,
        after=task.after,
        critical=times.critical,
        slack_minutes=times.slack_minutes,
        stops_sales=task.step.stops_sales,
        phase=task.phase,
        source=task.step.source,
        status=task.step.status,
        subject=task.subject,
        change=task.change,
        tank=task.tank,
    )


def _phase(work: PhaseWork, tasks: tuple[Task, ...], times: dict[str, Timed], made_from: SequenceInput) -> Phase:
    own = [times[task.id] for task in tasks if task.phase == work.number]
    today = [position for position in made_from.survey.positions if position.exists_today]
    out = Counter(grade_of(position) for position in today if position.dispenser in work.dispensers)
    of_grade = Counter(grade_of(position) for position in today)
    return Phase(
        number=work.number,
        dispensers=work.dispensers,
        positions=tuple(position.label for position in today if position.dispenser in work.dispensers),
        start=min((one.start for one in own), key=lambda one: (one.day, one.minute)),
        finish=max((one.finish for one in own), key=lambda one: (one.day, one.minute)),
        out_of_service=tuple((grade, count, of_grade[grade]) for grade, count in out.items()),
    )
