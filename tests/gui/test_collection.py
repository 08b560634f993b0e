"""Garbage is collected on the window's thread alone.

Source: Qt, class reference of QObject, "Thread Affinity": an object is deleted on the thread on which it lives.
"""

from __future__ import annotations

import gc
import threading
import weakref
from typing import Any

import pytest
from PySide6.QtCore import QObject, Signal
from pytestqt.qtbot import QtBot

from spoutline.gui.collection import WindowCollector
from spoutline.gui.jobs import JobKey, JobKind, Jobs


class _Sender(QObject):
    told = Signal()


class _Knot:
    """A circle that only the collector takes away, with an object of Qt in it."""

    def __init__(self) -> None:
        self.itself = self
        self.sender = _Sender()


def _gone_on(threads: list[int]) -> weakref.ref[_Knot]:
    knot = _Knot()
    return weakref.ref(knot, lambda _: threads.append(threading.get_ident()))


def _much_garbage() -> None:
    kept: list[Any] = [[index] for index in range(200_000)]
    kept.append(kept)


def test_objects_of_the_window_go_on_its_thread(qtbot: QtBot, collector: WindowCollector) -> None:
    threads: list[int] = []
    watched = _gone_on(threads)
    for _ in range(3):
        worker = threading.Thread(target=_much_garbage)
        worker.start()
        worker.join()
    assert watched() is not None
    assert not gc.isenabled()
    qtbot.waitUntil(lambda: watched() is None, timeout=10_000)
    assert threads == [threading.get_ident()]


def test_a_look_collects_the_young_once_many_were_made(collector: WindowCollector) -> None:
    collector.look()
    threads: list[int] = []
    watched = _gone_on(threads)
    kept = [[index] for index in range(gc.get_threshold()[0] + 10)]
    collector.look()
    assert watched() is None
    assert kept


def test_the_oldest_wait_for_a_moment_in_which_nobody_does_anything(
    collector: WindowCollector, monkeypatch: pytest.MonkeyPatch
) -> None:
    counts, collected = [800, 0, 11], []
    monkeypatch.setattr(gc, "get_count", lambda: tuple(counts))
    monkeypatch.setattr(gc, "get_threshold", lambda: (700, 10, 10))
    monkeypatch.setattr(gc, "collect", collected.append)
    for _ in range(20):
        collector._look_again()
    assert collected == [0] * 20  # somebody works, and only the young go
    collected.clear()
    counts[0] = 10
    for _ in range(20):
        collector._look_again()
    assert collected == []  # a person may be reading
    while not collected:
        collector._look_again()
    assert collected == [2]


def test_the_middle_goes_in_small_portions(collector: WindowCollector, monkeypatch: pytest.MonkeyPatch) -> None:
    """While a thousand plans come in, each is gone through once more: after ten looks that is felt."""
    collected: list[int] = []
    counts = [800, 0, 0]
    monkeypatch.setattr(gc, "get_count", lambda: tuple(counts))
    monkeypatch.setattr(gc, "get_threshold", lambda: (700, 10, 10))
    monkeypatch.setattr(gc, "collect", collected.append)
    for looks in range(5):
        counts[1] = looks
        collector._look_again()
    assert collected == [0, 0, 0, 0, 1]


def test_the_oldest_go_in_the_end_though_somebody_works_without_a_pause(
    collector: WindowCollector, monkeypatch: pytest.MonkeyPatch
) -> None:
    collected: list[int] = []
    monkeypatch.setattr(gc, "get_count", lambda: (800, 11, 11))
    monkeypatch.setattr(gc, "get_threshold", lambda: (700, 10, 10))
    monkeypatch.setattr(gc, "collect", collected.append)
    while 2 not in collected:
        collector._look_again()
    assert 100 < len(collected) < 5_000
    assert set(collected) == {1, 2}


def test_what_a_job_holds_of_the_window_goes_on_the_windows_thread(qtbot: QtBot) -> None:
    threads: list[int] = []
    jobs = Jobs()
    answers: list[object] = []

    def start() -> None:
        sender = _Sender()
        weakref.finalize(sender, lambda: threads.append(threading.get_ident()))
        jobs.start(JobKey(JobKind.PLAN), lambda _: sender.objectName(), answers.append, answers.append)

    for _ in range(50):
        answers.clear()
        start()
        qtbot.waitUntil(lambda: bool(answers))
    jobs.close()
    assert threads == [threading.get_ident()] * 50


def test_stopped_it_leaves_collecting_as_it_was() -> None:
    was_on = gc.isenabled()
    gc.enable()
    try:
        collector = WindowCollector()
        assert not gc.isenabled()
        collector.stop()
        assert gc.isenabled()
    finally:
        if not was_on:
            gc.disable()
