"""From the table of steps to a net of tasks: which steps apply, how much work each is, what waits for what."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from enum import StrEnum
from types import MappingProxyType

from spoutline.frozen import frozen
from spoutline.model.conversion_step import ConversionStep, StepCondition, StepScope, StepTable

AWAIT_NOTICE, AWAIT_PARTS, AWAIT_TESTS = "await_notice", "await_parts", "await_tests"
AWAIT_PERMISSION, AWAIT_SECOND_NOTICE = "await_permission", "await_second_notice"
AWAIT_TANK_NOTICE, CHANGE_WITHIN = "await_tank_notice", "change_within"
_LABEL_STEPS = ("label_positions", "change_labels")
_OF_TANKS = (StepScope.TANK, StepScope.TANK_POSITION)
_HOURS_OF_A_DAY = 24


@frozen(kw_only=True)
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


@frozen(kw_only=True)
class ChangeWork:
    """The work of one change of a tank's liquid: whom it concerns and which conditions hold for it."""

    number: int
    tank: str
    positions: tuple[str, ...]
    dispensers: tuple[str, ...]
    holding: frozenset[StepCondition]
    label: str = ""  # the label that the law asks for at the pump

    def has(self, step: ConversionStep) -> bool:
        """Say whether a step belongs to this change."""
        return not self.holding.isdisjoint(step.conditions)

    def touches(self, phase: PhaseWork) -> bool:
        """Say whether a phase opens a dispenser that the tank feeds."""
        return not set(self.dispensers).isdisjoint(phase.dispensers)


class DayCount(StrEnum):
    """How the days of a wait are counted."""

    CALENDAR = "calendar"
    WORKING = "working"  # Monday to Friday
    TO_THE_HOUR = "to_the_hour"  # so many times 24 hours


@frozen(kw_only=True)
class Wait:
    """How long a waiting step takes."""

    days: int = 0
    count: DayCount = DayCount.CALENDAR


@frozen(kw_only=True)
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
    change: int | None = None
    tank: str = ""


@frozen(kw_only=True)
class Waits:
    """How long the waiting steps take."""

    notice_days: int = 0
    lead_days: int = 0
    test_notice_days: int = 0
    test_notice_working: bool = False
    permission_days: int = 0
    second_notice_hours: int = 0
    tank_notice_days: int = 0

    def of(self, step_id: str) -> Wait:
        """Return how long a step waits; no days for a step that is work."""
        tests = DayCount.WORKING if self.test_notice_working else DayCount.CALENDAR
        hours = math.ceil(self.second_notice_hours / _HOURS_OF_A_DAY)
        return {
            AWAIT_NOTICE: Wait(days=self.notice_days),
            AWAIT_PARTS: Wait(days=self.lead_days),
            AWAIT_TESTS: Wait(days=self.test_notice_days, count=tests),
            AWAIT_TANK_NOTICE: Wait(days=self.tank_notice_days),
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
    changes: tuple[ChangeWork, ...] = (),
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
    changes
        The tanks that change their liquid.
    """
    net = _Net(table, conditions, phases, waits, crews, subjects=subjects, changes=changes)
    return _in_order(tuple(net.tasks()))


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
        changes: tuple[ChangeWork, ...],
    ) -> None:
        of_changes = frozenset(condition for change in changes for condition in change.holding)
        holding = conditions | of_changes | {StepCondition.ALWAYS}
        self.steps = {step.id: step for step in table.steps if holding.intersection(step.conditions)}
        self.after = {step.id: step.after for step in table.steps}
        self.of_tanks = {step.id for step in table.steps if step.scope in _OF_TANKS}
        self.inside = {step.id for step in table.steps if step.scope not in (StepScope.SITE, *_OF_TANKS)}
        self.changes = changes
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
            elif step.scope in _OF_TANKS:
                yield from (self._change_task(step, change) for change in self.changes if change.has(step))
            elif not phases_told:
                phases_told = True
                for phase in self.phases:
                    yield from self._phase_tasks(phase)

    def _is_done(self, step_id: str, phase: PhaseWork) -> bool:
        step = self.steps.get(step_id)
        return step is not None and phase.units_of(step) > 0

    def _before(self, step_id: str, asker: PhaseWork | ChangeWork | None) -> Iterator[str]:
        """Yield the ids of the tasks that a step waits for; a step that is not done hands its own on.

        A step of the site waits for all phases and changes, one of a phase for the changes that touch it, and one of a
        change for the phases that it touches.
        """
        for earlier in self.after[step_id]:
            if earlier in self.inside:
                for phase in self._phases_of(asker):
                    done = self._is_done(earlier, phase)
                    yield from (_id_of(earlier, phase),) if done else self._before(earlier, phase)
            elif earlier in self.of_tanks:
                yield from self._before_of_tanks(earlier, asker)
            elif earlier in self.steps:
                yield earlier
            elif self.hands_on[earlier]:
                yield from self._before(earlier, asker)

    def _before_of_tanks(self, earlier: str, asker: PhaseWork | ChangeWork | None) -> Iterator[str]:
        step = self.steps.get(earlier)
        changes = self._changes_of(asker)
        for change in changes:
            if step is not None and change.has(step):
                yield _id_of_change(earlier, change)
            elif self.hands_on[earlier]:
                yield from self._before(earlier, change)
        if not changes and self.hands_on[earlier]:
            yield from self._before(earlier, asker)

    def _phases_of(self, asker: PhaseWork | ChangeWork | None) -> tuple[PhaseWork, ...]:
        if isinstance(asker, PhaseWork):
            return (asker,)
        return tuple(phase for phase in self.phases if asker is None or asker.touches(phase))

    def _changes_of(self, asker: PhaseWork | ChangeWork | None) -> tuple[ChangeWork, ...]:
        if isinstance(asker, ChangeWork):
            return (asker,)
        return tuple(change for change in self.changes if asker is None or change.touches(asker))

    def _change_task(self, step: ConversionStep, change: ChangeWork) -> Task:
        before = list(self._before(step.id, change))
        if step.id == CHANGE_WITHIN:  # sales from the tank stop no earlier than they must
            first = next((phase.number for phase in self.phases if change.touches(phase)), 1)
            before += self._ends_of(first - 1)
        work = step.minutes * (len(change.positions) if step.scope is StepScope.TANK_POSITION else 1)
        hands = max(1, min(self.crews, len(change.dispensers))) if step.scope is StepScope.TANK_POSITION else 1
        wait = self.waits.of(step.id)
        return Task(
            id=_id_of_change(step.id, change),
            step=step,
            phase=None,
            places=change.positions,
            minutes=math.ceil(work / hands),
            work_minutes=work,
            waits_days=wait.days,
            after=tuple(dict.fromkeys(before)),
            counted=wait.count,
            subject=change.label if step.id in _LABEL_STEPS else "",
            change=change.number,
            tank=change.tank,
        )

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
            subject=self._labels_in(phase) if step.id in _LABEL_STEPS else "",
        )

    def _labels_in(self, phase: PhaseWork) -> str:
        """Return the labels that the law asks for where the liquid changes within this phase."""
        within = (one for one in self.changes if one.touches(phase) and StepCondition.WITHIN_CHANGE in one.holding)
        return ", ".join(dict.fromkeys(one.label for one in within if one.label))


def _length_of(tasks: Sequence[Task]) -> int:
    """Return the minutes of the longest chain of tasks that wait for each other."""
    ends: dict[str, int] = {}
    for task in tasks:
        ends[task.id] = task.minutes + max((ends[one] for one in task.after if one in ends), default=0)
    return max(ends.values(), default=0)


def _id_of(step_id: str, phase: PhaseWork) -> str:
    return f"{step_id}-{phase.number}"


def _id_of_change(step_id: str, change: ChangeWork) -> str:
    return f"{step_id}-tank-{change.number}"


def _in_order(tasks: tuple[Task, ...]) -> tuple[Task, ...]:
    """Return the tasks as they come, but each behind those that it waits for."""
    by_id = {task.id: task for task in tasks}
    placed: dict[str, Task] = {}
    for first in tasks:
        waiting = [first]
        while waiting:
            task = waiting[-1]
            open_ones = [by_id[one] for one in task.after if one not in placed]
            if open_ones:
                waiting.extend(reversed(open_ones))
                continue
            placed[task.id] = task
            waiting.pop()
    return tuple(placed.values())
