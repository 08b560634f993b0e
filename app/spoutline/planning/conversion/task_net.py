"""From the table of steps to a net of tasks: which steps apply, how much work each is, what waits for what."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType

from spoutline.model.conversion_step import ConversionStep, StepCondition, StepScope, StepTable

AWAIT_NOTICE, AWAIT_PARTS, AWAIT_TESTS = "await_notice", "await_parts", "await_tests"
AWAIT_PERMISSION, AWAIT_SECOND_NOTICE = "await_permission", "await_second_notice"
_HOURS_OF_A_DAY = 24


@dataclass(frozen=True, slots=True, kw_only=True)
class PhaseWork:
    """How many units of work a phase holds."""

    number: int
    dispensers: tuple[str, ...]
    positions: tuple[str, ...]
    removed: int
    fitted: int
    closings: int
    holding: Mapping[StepCondition, tuple[str, ...]]  # positions for which a condition holds
    dispenser_of: Mapping[str, str]

    def positions_for(self, step: ConversionStep) -> tuple[str, ...]:
        """Return the positions that a step concerns, in the order of the phase."""
        if StepCondition.ALWAYS in step.conditions:
            return self.positions
        concerned = {label for condition in step.conditions for label in self.holding.get(condition, ())}
        return tuple(label for label in self.positions if label in concerned)

    def places_for(self, step: ConversionStep) -> tuple[str, ...]:
        """Return the dispensers or positions at which a step is done."""
        labels = self.positions_for(step)
        if step.scope is StepScope.DISPENSER:
            return tuple(dict.fromkeys(self.dispenser_of[label] for label in labels))
        return labels

    def units_of(self, step: ConversionStep) -> int:
        """Return how many times a step is done in the phase."""
        counted = {
            StepScope.PART_REMOVED: self.removed,
            StepScope.PART_FITTED: self.fitted,
            StepScope.CLOSING: self.closings,
        }
        return counted.get(step.scope, len(self.places_for(step)))


class DayCount(StrEnum):
    """How the days of a wait are counted."""

    CALENDAR = "calendar"
    WORKING = "working"  # Monday to Friday
    TO_THE_HOUR = "to_the_hour"  # so many times 24 hours


@dataclass(frozen=True, slots=True, kw_only=True)
class Wait:
    """How long a waiting step takes."""

    days: int = 0
    count: DayCount = DayCount.CALENDAR


@dataclass(frozen=True, slots=True, kw_only=True)
class Task:
    """One task before it has a time.

    ``minutes`` is elapsed working time, ``work_minutes`` the work of all crews. ``day_minutes`` is the length of the
    phase that the task begins: where that fits into a working day, the phase does not start too late to end on it, so
    that no dispenser stands open overnight without need. ``unsplit`` work is not interrupted over night at all.
    """

    id: str
    step: ConversionStep
    phase: int | None
    places: tuple[str, ...]
    minutes: int
    work_minutes: int
    waits_days: int
    after: tuple[str, ...]
    day_minutes: int = 0
    counted: DayCount = DayCount.CALENDAR
    unsplit: bool = False
    subject: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Waits:
    """How long the waiting steps take."""

    notice_days: int = 0
    lead_days: int = 0
    test_notice_days: int = 0
    test_notice_working: bool = False
    permission_days: int = 0
    second_notice_hours: int = 0

    def of(self, step_id: str) -> Wait:
        """Return how long a step waits; no days for a step that is work."""
        tests = DayCount.WORKING if self.test_notice_working else DayCount.CALENDAR
        hours = math.ceil(self.second_notice_hours / _HOURS_OF_A_DAY)
        return {
            AWAIT_NOTICE: Wait(days=self.notice_days),
            AWAIT_PARTS: Wait(days=self.lead_days),
            AWAIT_TESTS: Wait(days=self.test_notice_days, count=tests),
            AWAIT_PERMISSION: Wait(days=self.permission_days),
            AWAIT_SECOND_NOTICE: Wait(days=hours, count=DayCount.TO_THE_HOUR),
        }.get(step_id, Wait())


def task_net(
    table: StepTable,
    conditions: frozenset[StepCondition],
    phases: tuple[PhaseWork, ...],
    waits: Waits,
    crews: int,
    *,
    subjects: Mapping[str, str] = MappingProxyType({}),
) -> tuple[Task, ...]:
    """Return the tasks in an order in which every task stands behind those that it waits for.

    A step that does not apply hands its predecessors on to those that wait for it. A step in the phases is one task in
    each phase; a phase begins when the one before it is back in service.

    Parameters
    ----------
    table
        The steps, each behind its predecessors.
    conditions
        What holds for this conversion.
    phases
        The phases in order.
    waits
        Days of notice, delivery, test notice.
    crews
        Crews that share the work of a phase.
    subjects
        What a step of the site is about, by its id, such as the tests that an agency names.
    """
    return tuple(_Net(table, conditions, phases, waits, crews, subjects=subjects).tasks())


class _Net:
    def __init__(
        self,
        table: StepTable,
        conditions: frozenset[StepCondition],
        phases: tuple[PhaseWork, ...],
        waits: Waits,
        crews: int,
        *,
        subjects: Mapping[str, str],
    ) -> None:
        holding = conditions | {StepCondition.ALWAYS}
        self.steps = {step.id: step for step in table.steps if holding.intersection(step.conditions)}
        self.after = {step.id: step.after for step in table.steps}
        self.inside = {step.id for step in table.steps if step.scope is not StepScope.SITE}
        self.phases = phases
        self.waits = waits
        self.crews = crews
        self.subjects = subjects
        self.hands_on = {step.id: step.hands_on for step in table.steps}

    def tasks(self) -> Iterator[Task]:
        """Yield site tasks and, where the first step of the phases comes, all tasks of all phases."""
        phases_told = False
        for step in self.steps.values():
            if step.scope is StepScope.SITE:
                yield self._site_task(step)
            elif not phases_told:
                phases_told = True
                for phase in self.phases:
                    yield from self._phase_tasks(phase)

    def _is_done(self, step_id: str, phase: PhaseWork) -> bool:
        step = self.steps.get(step_id)
        return step is not None and phase.units_of(step) > 0

    def _before(self, step_id: str, phase: PhaseWork | None) -> Iterator[str]:
        """Yield the ids of the tasks that a step waits for; a step that is not done hands its own on."""
        for earlier in self.after[step_id]:
            if earlier not in self.inside:
                if earlier in self.steps:
                    yield earlier
                elif self.hands_on[earlier]:
                    yield from self._before(earlier, phase)
                continue
            for one in self.phases if phase is None else (phase,):
                yield from (_id_of(earlier, one),) if self._is_done(earlier, one) else self._before(earlier, one)

    def _site_task(self, step: ConversionStep) -> Task:
        wait = self.waits.of(step.id)
        return Task(
            id=step.id,
            step=step,
            phase=None,
            places=(),
            minutes=step.minutes,
            work_minutes=step.minutes,
            waits_days=wait.days,
            counted=wait.count,
            after=tuple(dict.fromkeys(self._before(step.id, None))),
            day_minutes=step.minutes if step.within_day else 0,
            unsplit=step.within_day,
            subject=self.subjects.get(step.id, ""),
        )

    def _phase_tasks(self, phase: PhaseWork) -> Iterator[Task]:
        done = [step for step in self.steps.values() if step.id in self.inside and self._is_done(step.id, phase)]
        own = {_id_of(step.id, phase) for step in done}
        tasks: list[Task] = []
        for step in done:
            before = tuple(dict.fromkeys(self._before(step.id, phase)))
            if own.isdisjoint(before):
                before = (*before, *self._ends_of(phase.number - 1))
            tasks.append(self._phase_task(step, phase, before))
        length = _length_of(tasks)
        yield from (replace(task, day_minutes=length) if own.isdisjoint(task.after) else task for task in tasks)

    def _ends_of(self, number: int) -> tuple[str, ...]:
        """Return the tasks that end phase ``number``; empty for the phase before the first."""
        if number < 1:
            return ()
        phase = self.phases[number - 1]
        done = [step_id for step_id in self.steps if step_id in self.inside and self._is_done(step_id, phase)]
        waited_for = {earlier for step_id in done for earlier in self._before(step_id, phase)}
        return tuple(task_id for task_id in (_id_of(one, phase) for one in done) if task_id not in waited_for)

    def _phase_task(self, step: ConversionStep, phase: PhaseWork, after: tuple[str, ...]) -> Task:
        work = step.minutes * phase.units_of(step)
        hands = max(1, min(self.crews, len(phase.dispensers)))
        return Task(
            id=_id_of(step.id, phase),
            step=step,
            phase=phase.number,
            places=phase.places_for(step),
            minutes=math.ceil(work / hands),
            work_minutes=work,
            waits_days=0,
            after=after,
        )


def _length_of(tasks: Sequence[Task]) -> int:
    """Return the minutes of the longest chain of tasks that wait for each other."""
    ends: dict[str, int] = {}
    for task in tasks:
        ends[task.id] = task.minutes + max((ends[one] for one in task.after if one in ends), default=0)
    return max(ends.values(), default=0)


def _id_of(step_id: str, phase: PhaseWork) -> str:
    return f"{step_id}-{phase.number}"
