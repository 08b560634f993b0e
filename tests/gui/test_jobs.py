from __future__ import annotations

import errno
import threading
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from spoutline.gui.jobs import URGENT, JobKey, JobKind, Jobs, ProgramFault, Ticket
from spoutline.model.faults import Cancelled, StoreFault

PLAN = JobKey(JobKind.PLAN, "A1")


class Inbox:
    def __init__(self) -> None:
        self.values: list[object] = []
        self.faults: list[Exception] = []


@pytest.fixture
def jobs(qtbot: QtBot) -> Iterator[Jobs]:
    jobs = Jobs()
    yield jobs
    jobs.close()


def test_answer_comes_on_the_windows_thread(qtbot: QtBot, jobs: Jobs) -> None:
    threads: dict[str, int] = {}

    def work(_: Ticket) -> str:
        threads["work"] = threading.get_ident()
        return "done"

    def deliver(value: object) -> None:
        threads["deliver"] = threading.get_ident()
        threads["value"] = len(str(value))

    jobs.start(PLAN, work, deliver, pytest.fail)
    qtbot.waitUntil(lambda: "deliver" in threads)
    assert threads["deliver"] == threading.get_ident() != threads["work"]


def test_late_answer_is_dropped_when_a_newer_question_was_asked(qtbot: QtBot, jobs: Jobs) -> None:
    inbox, gate, begun = Inbox(), threading.Event(), threading.Event()

    def slow(_: Ticket) -> str:
        begun.set()
        gate.wait(10)
        return "old"

    jobs.start(PLAN, slow, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(begun.is_set)
    jobs.start(PLAN, lambda _: "new", inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(lambda: inbox.values == ["new"])
    with qtbot.waitSignal(jobs.busy_changed, check_params_cb=lambda busy: not busy):
        gate.set()
    assert inbox.values == ["new"]
    assert inbox.faults == []


def test_work_is_told_to_stop_when_it_is_cancelled(qtbot: QtBot, jobs: Jobs) -> None:
    inbox, begun, ended = Inbox(), threading.Event(), threading.Event()

    def work(ticket: Ticket) -> str:
        begun.set()
        while not ticket.should_stop():
            ended.wait(0.002)
        raise Cancelled

    jobs.start(PLAN, work, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(begun.is_set)
    with qtbot.waitSignal(jobs.busy_changed, check_params_cb=lambda busy: not busy):
        jobs.cancel(PLAN)
    assert (inbox.values, inbox.faults) == ([], [])


def test_what_a_person_waits_for_is_done_while_long_work_takes_all_threads(qtbot: QtBot, jobs: Jobs) -> None:
    """A station of a thousand positions is planned for its paper in minutes, and converted at the same time."""
    inbox, ended, begun = Inbox(), threading.Event(), threading.Semaphore(0)

    def long(_: Ticket) -> str:
        begun.release()
        ended.wait(20)
        return "long"

    for name in ("paper", "conversion", "quotation"):
        jobs.start(JobKey(JobKind.SITE_PLAN, name), long, inbox.values.append, inbox.faults.append)
    assert begun.acquire(timeout=20)
    assert begun.acquire(timeout=20)
    jobs.start(PLAN, lambda _: "asked", inbox.values.append, inbox.faults.append, priority=URGENT)
    qtbot.waitUntil(lambda: inbox.values == ["asked"])
    assert not begun.acquire(blocking=False)  # the third waits its turn
    ended.set()
    qtbot.waitUntil(lambda: sorted(map(str, inbox.values)) == ["asked", "long", "long", "long"])


def test_failure_is_handed_over_once(qtbot: QtBot, jobs: Jobs) -> None:
    inbox = Inbox()

    def work(_: Ticket) -> None:
        raise StoreFault("the disk is full")

    jobs.start(PLAN, work, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(lambda: len(inbox.faults) == 1)
    assert str(inbox.faults[0]) == "the disk is full"
    assert inbox.values == []
    assert not jobs.is_busy(JobKind.PLAN)


def test_defect_is_worded_plainly_and_handed_on_to_be_written_down(qtbot: QtBot, jobs: Jobs) -> None:
    inbox = Inbox()
    broken: list[object] = []
    jobs.broke.connect(broken.append)

    def work(_: Ticket) -> None:
        raise AttributeError("'Story' object has no attribute 'ending'")

    jobs.start(PLAN, work, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(lambda: len(broken) == 1)
    assert isinstance(broken[0], AttributeError)
    assert "attribute" not in str(inbox.faults[0])
    assert "fault of its own" in str(inbox.faults[0])
    assert inbox.values == []


def test_jobs_of_different_subjects_do_not_replace_each_other(qtbot: QtBot, jobs: Jobs) -> None:
    inbox = Inbox()
    for label in ("A1", "A2", "A3"):
        jobs.start(JobKey(JobKind.PLAN, label), lambda _, said=label: said, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(lambda: sorted(map(str, inbox.values)) == ["A1", "A2", "A3"])


def test_progress_is_told_while_the_job_is_wanted(qtbot: QtBot, jobs: Jobs) -> None:
    told: list[tuple[object, int, int]] = []
    jobs.progressed.connect(lambda key, done, total: told.append((key, done, total)))
    inbox = Inbox()

    def work(ticket: Ticket) -> str:
        ticket.on_progress(1, 2)
        return "done"

    jobs.start(PLAN, work, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(lambda: bool(inbox.values))
    assert told == [(PLAN, 1, 2)]


def test_closing_waits_for_the_workers(qtbot: QtBot) -> None:
    jobs, ended = Jobs(), threading.Event()
    begun = threading.Event()

    def work(ticket: Ticket) -> None:
        begun.set()
        while not ticket.should_stop():
            ended.wait(0.002)
        ended.set()

    jobs.start(PLAN, work, pytest.fail, pytest.fail)
    qtbot.waitUntil(begun.is_set)
    jobs.close()
    assert ended.is_set()


def test_parts_of_an_answer_come_in_order_before_it(qtbot: QtBot, jobs: Jobs) -> None:
    inbox = Inbox()

    def work(ticket: Ticket) -> str:
        for value in range(5):
            ticket.hand_over(value)
        return "all"

    jobs.start(PLAN, work, inbox.values.append, inbox.faults.append, partly=inbox.values.append)
    qtbot.waitUntil(lambda: "all" in inbox.values)
    assert inbox.values == [0, 1, 2, 3, 4, "all"]


def test_parts_of_a_late_answer_are_dropped(qtbot: QtBot, jobs: Jobs) -> None:
    inbox, gate, begun = Inbox(), threading.Event(), threading.Event()

    def slow(ticket: Ticket) -> str:
        ticket.hand_over("before")
        begun.set()
        gate.wait(10)
        ticket.hand_over("late")
        return "old"

    jobs.start(PLAN, slow, inbox.values.append, inbox.faults.append, partly=inbox.values.append)
    begun.wait(10)  # what was handed over already waits in the window's queue
    jobs.cancel(PLAN)
    with qtbot.waitSignal(jobs.busy_changed, check_params_cb=lambda busy: not busy):
        gate.set()
    assert inbox.values == []


def test_a_job_that_asks_the_program_to_leave_does_not_end_it(qtbot: QtBot, jobs: Jobs) -> None:
    inbox, broke = Inbox(), Inbox()
    jobs.broke.connect(broke.faults.append)

    def leave(_: Ticket) -> None:
        raise SystemExit(3)

    jobs.start(PLAN, leave, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(lambda: len(inbox.faults) == 1)
    assert isinstance(inbox.faults[0], ProgramFault)
    assert "SystemExit" in str(broke.faults[0])


def test_what_nobody_waits_for_starts_after_what_somebody_waits_for(qtbot: QtBot, jobs: Jobs) -> None:
    order: list[str] = []
    begun, gate = threading.Event(), threading.Event()

    def urgent(_: Ticket) -> None:
        begun.set()
        gate.wait(10)
        order.append("urgent")

    jobs.start(PLAN, urgent, lambda _: None, pytest.fail, priority=URGENT)
    jobs.start(JobKey(JobKind.STANDING), lambda _: order.append("behind"), lambda _: None, pytest.fail)
    qtbot.waitUntil(begun.is_set)
    gate.set()
    qtbot.waitUntil(lambda: len(order) == 2)
    assert order == ["urgent", "behind"]


def test_what_nobody_waits_for_is_held_back_no_longer_than_a_moment(qtbot: QtBot, jobs: Jobs) -> None:
    gate, done = threading.Event(), threading.Event()
    jobs.start(PLAN, lambda _: gate.wait(20), lambda _: None, pytest.fail, priority=URGENT)
    jobs.start(JobKey(JobKind.STANDING), lambda _: done.set(), lambda _: None, pytest.fail)
    qtbot.waitUntil(done.is_set, timeout=10_000)
    assert not gate.is_set()
    gate.set()


def test_nothing_starts_while_a_view_is_built_then_what_is_urgent_first(qtbot: QtBot, jobs: Jobs) -> None:
    begun: list[str] = []
    gate = threading.Event()

    def urgent(_: Ticket) -> None:
        begun.append("urgent")
        gate.wait(10)

    jobs.hold()
    jobs.start(JobKey(JobKind.CHOICES), lambda _: begun.append("plain"), lambda _: None, pytest.fail)
    jobs.start(PLAN, urgent, lambda _: None, pytest.fail, priority=URGENT)
    qtbot.wait(50)
    assert begun == []
    jobs.let_go()
    qtbot.waitUntil(lambda: begun == ["urgent"])
    qtbot.wait(50)
    assert begun == ["urgent"]
    gate.set()
    qtbot.waitUntil(lambda: begun == ["urgent", "plain"])


def test_a_view_that_is_never_built_holds_no_work_for_good(
    qtbot: QtBot, jobs: Jobs, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoutline.gui.jobs._BUILDING_MS", 20)
    begun: list[str] = []
    jobs.hold()
    jobs.start(PLAN, lambda _: begun.append("plan"), lambda _: None, pytest.fail)
    qtbot.waitUntil(lambda: begun == ["plan"])


def test_what_is_dropped_while_a_view_is_built_never_runs(qtbot: QtBot, jobs: Jobs) -> None:
    begun: list[str] = []
    jobs.hold()
    jobs.start(PLAN, lambda _: begun.append("old"), lambda _: None, pytest.fail, priority=URGENT)
    jobs.start(PLAN, lambda _: begun.append("new"), lambda _: None, pytest.fail, priority=URGENT)
    with qtbot.waitSignal(jobs.busy_changed, check_params_cb=lambda busy: not busy):
        jobs.let_go()
    assert begun == ["new"]


def test_a_place_that_cannot_be_used_is_told_and_is_no_fault_of_the_program(qtbot: QtBot, jobs: Jobs) -> None:
    inbox, broken = Inbox(), Inbox()
    jobs.broke.connect(broken.values.append)

    def work(_: Ticket) -> None:
        raise PermissionError(errno.EACCES, "Permission denied", "/closed/bill.pdf")

    jobs.start(PLAN, work, inbox.values.append, inbox.faults.append)
    qtbot.waitUntil(lambda: bool(inbox.faults))
    assert [str(one) for one in inbox.faults] == ["/closed/bill.pdf cannot be used: Permission denied."]
    assert isinstance(inbox.faults[0], StoreFault)
    assert broken.values == []
