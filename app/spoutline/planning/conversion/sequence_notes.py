"""What a sequence cannot keep or does not know, and the days that a rule sets and no task shows."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from spoutline.model.conversion_answers import SequenceAnswers
from spoutline.model.conversion_sequence import (
    Deadline,
    DeadlineKind,
    Moment,
    Phase,
    SequenceFinding,
    SequenceNote,
)
from spoutline.model.removal_standing import RemovalStanding
from spoutline.model.tank_change import TankChange, TankProblem
from spoutline.model.vapour_figures import AgencyRow
from spoutline.planning.conversion.phases import Grouping
from spoutline.planning.conversion.task_net import Task
from spoutline.planning.conversion.timing import Timed
from spoutline.rules.conversion.standing import agency_source

_DAY_MINUTES = 24 * 60
Times = Mapping[str, Timed]


def sequence_notes(
    answers: SequenceAnswers, standing: RemovalStanding, grouping: Grouping, tasks: tuple[Task, ...], times: Times
) -> Iterator[SequenceNote]:
    """Yield what is not known and what could not be kept of the owner's own wishes.

    Parameters
    ----------
    answers, standing
        What the owner and the agency say.
    grouping
        The phases, and what alone takes too much of a grade out of service.
    tasks, times
        The net and its times.
    """
    if answers.start_date is None:
        yield SequenceNote(finding=SequenceFinding.NO_START_DATE)
    for overload in grouping.overloads:
        yield SequenceNote(
            finding=SequenceFinding.SHARE_TOO_SMALL,
            subject=f"{overload.dispenser}: {overload.grade}",
            number=overload.least_share,
            limit=answers.most_out_of_service,
        )
    if not grouping.proved:
        yield SequenceNote(finding=SequenceFinding.PHASES_NOT_PROVED, number=len(grouping.phases))
    steps = {task.step.id for task in tasks}
    if "give_notice" in steps and answers.notice_days is None and standing.agency.notice_days is None:
        yield SequenceNote(finding=SequenceFinding.NOTICE_UNKNOWN)
    if "await_permission" in steps and answers.permission_days is None:
        yield SequenceNote(finding=SequenceFinding.PERMISSION_OPEN)
    if "decay_test" in steps and answers.vapour_pipe_links_tanks is None:
        yield SequenceNote(finding=SequenceFinding.PIPES_UNKNOWN)
    longest = max((task for task in tasks if task.unsplit), key=lambda task: task.minutes, default=None)
    if longest is not None and longest.minutes > round(answers.hours_per_day * 60):
        yield SequenceNote(
            finding=SequenceFinding.TEST_OVER_DAY,
            subject=longest.step.title,
            number=longest.minutes / 60,
            limit=answers.hours_per_day,
        )


def tank_notes(changes: tuple[TankChange, ...]) -> Iterator[SequenceNote]:
    """Yield what is not known of the tanks that change their liquid, and what speaks against a change.

    Parameters: ``changes`` from the rules.
    """
    findings = {
        TankProblem.TANK_UNKNOWN: SequenceFinding.TANK_UNKNOWN,
        TankProblem.UNDERGROUND_UNKNOWN: SequenceFinding.UNDERGROUND_UNKNOWN,
        TankProblem.MIXED: SequenceFinding.TANK_MIXED,
        TankProblem.NO_SET: SequenceFinding.TANK_BLOCKED,
    }
    for change in changes:
        for problem in change.problems:
            if problem is TankProblem.MIXED:
                named = f"{change.tank}: {', '.join(change.others)}"
                yield SequenceNote(finding=findings[problem], subject=named)
            else:
                named = ", ".join(change.positions)
                yield SequenceNote(finding=findings[problem], subject=named, positions=change.positions)


def deadlines_of(agency: AgencyRow, tasks: tuple[Task, ...], times: Times) -> Iterator[Deadline]:
    """Yield the days that the agency's rule sets: when a notice lapses, when the work has to be finished.

    A notice is counted from the day on which it is sent, which is no later than the day of receipt.

    Parameters: ``agency``, its row; ``tasks`` and ``times`` of the plan.
    """
    begins = first_work(tasks, times)
    if begins is None:
        return
    source, status = agency_source(agency), agency.status
    notice = times.get("give_notice")
    if agency.notice_lapses_days is not None and notice is not None:
        day = notice.finish.day + agency.notice_lapses_days
        yield Deadline(
            kind=DeadlineKind.NOTICE_LAPSES,
            day=day,
            days=agency.notice_lapses_days,
            kept=begins.day <= day,
            source=source,
            status=status,
        )
    if agency.finish_days is not None:
        day = begins.day + agency.finish_days
        yield Deadline(
            kind=DeadlineKind.FINISH_BY,
            day=day,
            days=agency.finish_days,
            kept=max(one.finish.day for one in times.values()) <= day,
            source=source,
            status=status,
        )


def deadline_notes(
    agency: AgencyRow,
    deadlines: tuple[Deadline, ...],
    phases: tuple[Phase, ...],
    tasks: tuple[Task, ...],
    times: Times,
) -> Iterator[SequenceNote]:
    """Yield the agency's time limits that the plan does not keep.

    Parameters: ``agency``, its row; ``deadlines`` from ``deadlines_of``; ``phases``, ``tasks``, ``times`` of the plan.
    """
    begins = first_work(tasks, times)
    for deadline in deadlines:
        if begins is None or deadline.kept:
            continue
        if deadline.kind is DeadlineKind.NOTICE_LAPSES:
            number = begins.day - (deadline.day - deadline.days)
            yield SequenceNote(finding=SequenceFinding.NOTICE_LAPSES, number=number, limit=deadline.days)
        else:
            number = max(one.finish.day for one in times.values()) - begins.day
            yield SequenceNote(finding=SequenceFinding.FINISH_LATE, number=number, limit=deadline.days)
    second = times.get("second_notice")
    if second is not None and begins is not None and agency.second_notice_most_hours is not None:
        hours = (_clock(begins) - _clock(second.finish)) / 60
        if hours > agency.second_notice_most_hours:
            limit = agency.second_notice_most_hours
            yield SequenceNote(finding=SequenceFinding.SECOND_NOTICE_EARLY, number=hours, limit=limit)
    if agency.same_day:
        for phase in phases:
            if phase.start.day != phase.finish.day:
                yield SequenceNote(finding=SequenceFinding.NOT_WITHIN_DAY, subject=", ".join(phase.dispensers))


def first_work(tasks: tuple[Task, ...], times: Times) -> Moment | None:
    """Return when the work on the vapour system or the dispensers begins; None where there is none."""
    begins = [times[task.id].start for task in tasks if task.phase is not None or task.step.id == "relieve_tanks"]
    return min(begins, key=lambda moment: (moment.day, moment.minute), default=None)


def _clock(moment: Moment) -> int:
    return moment.day * _DAY_MINUTES + moment.minute
