"""What the window says of saving is true, and nothing unsaved goes without a word."""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.gui.dialogs.backups import BackupsDialog
from spoutline.gui.dialogs.unsaved import UnsavedDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.positions import add_position
from spoutline.gui.session import SaveState, Session
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.start import Opening
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem


@pytest.fixture
def own_bench(own_database: Path) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=str(own_database)))
    yield bench
    bench.close()


@pytest.fixture
def own_window(qtbot: QtBot, qapp: QApplication, own_bench: Workbench, survey: Survey) -> Iterator[MainWindow]:
    dress(qapp, dark=False)
    window = MainWindow()
    window.attach(Session(own_bench, own_bench.book().create(survey), UnitSystem.SI, window))
    window.show()
    yield window
    session_of(window).may_leave = lambda: True
    if window.saving is not None:
        window.saving.stop()
    window.saving = None
    session_of(window).close()
    window.jobs.close()
    qtbot.wait(50)
    window.close()


def session_of(window: MainWindow) -> Session:
    assert window.workplace is not None
    return window.workplace.session


def edit(session: Session, label: str) -> None:
    make_edit(session, add_position(session.survey, label, "9"), "Add")


def button(window: MainWindow, words: str) -> object:
    return next(one for one in window.notices._buttons if one.text() == words)


def wait_state(qtbot: QtBot, window: MainWindow, state: SaveState) -> None:
    qtbot.waitUntil(lambda: session_of(window).save_state is state, timeout=15_000)


def test_a_survey_that_another_window_takes_off_the_list_is_not_called_saved(
    qtbot: QtBot, own_window: MainWindow, own_bench: Workbench
) -> None:
    session = session_of(own_window)
    own_bench.book().remove(session.stored.id)
    wait_state(qtbot, own_window, SaveState.REMOVED)  # found without an edit
    assert own_window.save_label.text() == "NOT in the book: taken off its list"
    button(own_window, "Put it back").click()  # type: ignore[attr-defined]
    wait_state(qtbot, own_window, SaveState.SAVED)
    assert own_window.notices.text == ""
    assert own_bench.book().stored(session.stored.id).survey == session.survey


def test_a_deleted_file_is_told_and_what_is_in_the_window_can_be_written_to_a_file(
    qtbot: QtBot, own_window: MainWindow, own_database: Path, tmp_path: Path
) -> None:
    aside = own_database.with_name("aside.sqlite3")
    own_database.rename(aside)
    wait_state(qtbot, own_window, SaveState.FAILED)
    assert own_window.save_label.text() == "NOT saved"
    assert "no longer there" in own_window.notices.text
    edit(session_of(own_window), "Z9")
    wait_state(qtbot, own_window, SaveState.FAILED)
    assert own_window.saving is not None
    assert own_window.saving.write_file(tmp_path / "kept.json")
    assert '"Z9"' in (tmp_path / "kept.json").read_text()
    assert not own_database.exists()
    aside.rename(own_database)
    wait_state(qtbot, own_window, SaveState.SAVED)  # it came back: the edit is saved without being asked for
    with closing(sqlite3.connect(own_database)) as raw:
        assert '"Z9"' in raw.execute("SELECT document FROM surveys ORDER BY id DESC").fetchone()[0]


def test_a_locked_book_does_not_hold_up_the_window(qtbot: QtBot, own_window: MainWindow, own_database: Path) -> None:
    beats: list[int] = []
    pulse = QTimer()
    pulse.timeout.connect(lambda: beats.append(1))
    with closing(sqlite3.connect(own_database, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        pulse.start(10)
        edit(session_of(own_window), "Z9")
        assert beats == []  # the edit returned before anything was waited for
        wait_state(qtbot, own_window, SaveState.WAITING)
        assert len(beats) >= 2  # the window went on while the writer waited for the lock
        assert own_window.save_label.text() == "NOT saved yet: waiting for the book"
        other.execute("ROLLBACK")
    wait_state(qtbot, own_window, SaveState.SAVED)
    assert own_window.save_label.text() == "All changes are in the book"


def answer(qtbot: QtBot, choose: str, seen: list[str]) -> None:
    """Press a button of the question as soon as it stands."""

    def press() -> None:
        dialog = QApplication.activeModalWidget()
        if not isinstance(dialog, UnsavedDialog):
            QTimer.singleShot(50, press)
            return
        seen.append(dialog.reason_label.text())
        getattr(dialog, choose).click()

    QTimer.singleShot(50, press)


def test_closing_with_something_unsaved_asks(qtbot: QtBot, own_window: MainWindow, own_database: Path) -> None:
    seen: list[str] = []
    own_database.rename(own_database.with_name("aside.sqlite3"))
    edit(session_of(own_window), "Z9")
    wait_state(qtbot, own_window, SaveState.FAILED)
    answer(qtbot, "stay_button", seen)
    assert not own_window.close()
    assert own_window.isVisible()
    answer(qtbot, "discard_button", seen)
    assert own_window.close()
    assert len(seen) == 2
    assert "no longer there" in seen[0]


def test_the_question_goes_away_when_the_book_takes_the_changes(
    qtbot: QtBot, own_window: MainWindow, own_database: Path
) -> None:
    other = sqlite3.connect(own_database, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    edit(session_of(own_window), "Z9")
    wait_state(qtbot, own_window, SaveState.WAITING)
    QTimer.singleShot(300, lambda: other.execute("ROLLBACK"))
    assert own_window.close()
    other.close()
    with closing(sqlite3.connect(own_database)) as raw:
        assert '"Z9"' in raw.execute("SELECT document FROM surveys ORDER BY id DESC").fetchone()[0]


def test_a_damaged_book_is_told_at_the_start_and_a_backup_put_back(
    qtbot: QtBot, qapp: QApplication, own_bench: Workbench, own_database: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from spoutline.bootstrap.demos import demo_survey
    from spoutline.bootstrap.fault_log import FaultLog
    from spoutline.gui.window.faults import UnexpectedFault

    stored = own_bench.book().create(demo_survey("marina"))
    own_bench.keeping().back_up()
    own_bench.close()
    own_database.write_bytes(b"")
    dress(qapp, dark=False)
    window = MainWindow()
    window.show()
    opening = Opening(window, lambda: own_bench, None, UnexpectedFault(window, FaultLog(own_database.parent)))
    opening.start()
    qtbot.waitUntil(lambda: "0 bytes" in window.notices.text, timeout=15_000)
    assert own_database.read_bytes() == b""
    monkeypatch.setattr(BackupsDialog, "is_sure", lambda *_: True)

    def press() -> None:
        dialog = QApplication.activeModalWidget()
        if not isinstance(dialog, BackupsDialog):
            QTimer.singleShot(50, press)
            return
        assert len(dialog.model.records) == 1
        dialog.restore_button.click()

    QTimer.singleShot(50, press)
    button(window, "Restore a backup…").click()  # type: ignore[attr-defined]
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    assert own_bench.book().stored(stored.id) == stored
    assert len(list(own_database.parent.glob("*.set-aside-*"))) >= 1
    qtbot.waitUntil(lambda: len(own_bench.keeping().backups()) == 2, timeout=15_000)  # the one of the day was made
    window.close()
    opening.close()
    shutil.rmtree(own_database.parent, ignore_errors=True)
