"""A session that goes while its writer tells of a save: the post is not deleted under the writer's hands."""

from __future__ import annotations

import sys
import threading
from collections.abc import Iterator

import pytest
import shiboken6
from PySide6.QtCore import QObject

from spoutline.book.save_queue import SaveOutcome, SaveReport
from spoutline.gui.session import _Reports


@pytest.fixture
def threads_take_turns_often() -> Iterator[None]:
    before = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    yield
    sys.setswitchinterval(before)


@pytest.mark.usefixtures("qapp", "threads_take_turns_often")
def test_a_session_may_go_while_its_writer_tells() -> None:
    report = SaveReport(outcome=SaveOutcome.SAVED, turn=1, number=1, stored=None, reason="")
    for _ in range(1_000):
        session = QObject()
        post = _Reports(session)
        told = threading.Event()

        def tell(post: _Reports = post, told: threading.Event = told) -> None:
            for _ in range(200):
                post.tell(report)
                told.set()

        writer = threading.Thread(target=tell)
        writer.start()
        told.wait()
        shiboken6.delete(session)
        writer.join()
        post.tell(report)  # says nothing, and fails in nothing
