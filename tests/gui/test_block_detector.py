"""The detector of blocks of the window's thread sees a block, tells work from waiting, and sees none where none is."""

from __future__ import annotations

import time

from PySide6.QtCore import QTimer
from pytestqt.qtbot import QtBot

from bench.window_clock import LEAST_S, BlockDetector


def test_a_block_of_a_tenth_of_a_second_is_seen(qtbot: QtBot) -> None:
    with BlockDetector() as detector:
        qtbot.wait(20)
        QTimer.singleShot(0, lambda: time.sleep(0.1))
        qtbot.waitUntil(lambda: detector.longest_s > LEAST_S)  # a busy machine lets the watcher wait, too
    block = max(detector.blocks, key=lambda one: one.seconds)
    assert block.seconds > LEAST_S
    assert block.work_s < 0.1  # it slept


def test_work_of_a_tenth_of_a_second_is_told_from_waiting(qtbot: QtBot) -> None:
    def busy() -> None:
        end = time.thread_time() + 0.1
        while time.thread_time() < end:
            pass

    with BlockDetector() as detector:
        qtbot.wait(20)
        QTimer.singleShot(0, busy)
        qtbot.waitUntil(lambda: any(block.work_s >= 0.1 for block in detector.blocks))


def test_a_window_that_answers_has_no_block_of_its_own_making(qtbot: QtBot) -> None:
    with BlockDetector() as detector:
        qtbot.wait(100)
    assert not [block for block in detector.blocks if block.work_s >= LEAST_S]
