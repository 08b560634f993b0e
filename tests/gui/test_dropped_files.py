"""Files dropped on the window: a survey opens, a table is mapped, anything else is refused in words."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow

_COPY, _LEFT, _NONE = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


def drop(window: MainWindow, *urls: QUrl) -> bool:
    """Drag what ``urls`` name over the window and let go; return whether the window would take it."""
    data = QMimeData()
    data.setUrls(list(urls))
    enter = QDragEnterEvent(QPoint(40, 40), _COPY, data, _LEFT, _NONE)
    QApplication.sendEvent(window, enter)
    if enter.isAccepted():
        QApplication.sendEvent(window, QDropEvent(QPointF(40, 40), _COPY, data, _LEFT, _NONE))
    return enter.isAccepted()


def local(path: Path) -> QUrl:
    return QUrl.fromLocalFile(str(path))


def test_a_dropped_survey_is_put_into_the_book_and_shown(
    qtbot: QtBot, window: MainWindow, session: Session, tmp_path: Path
) -> None:
    path = tmp_path / "marina.json"
    path.write_text(survey_to_json(demo_survey("marina")), encoding="utf-8")
    before = session.stored.id
    assert drop(window, local(path))
    qtbot.waitUntil(lambda: session.survey == demo_survey("marina"), timeout=10_000)
    assert session.stored.id != before


def test_a_dropped_table_asks_what_its_columns_hold(
    window: MainWindow, session: Session, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "HOSES.CSV"
    path.write_text("position,liquid\n9A,gasoline\n", encoding="utf-8")
    asked: list[str] = []
    monkeypatch.setattr(TableIntakeDialog, "exec", lambda dialog: asked.append(dialog.windowTitle()) or 0)
    before = session.survey
    assert drop(window, local(path))
    assert asked == ["Read positions from a table"]
    assert session.survey == before  # the dialog was left


def test_a_dropped_file_that_is_no_survey_is_named_and_nothing_changes(
    qtbot: QtBot, window: MainWindow, session: Session, tmp_path: Path
) -> None:
    path = tmp_path / "letter.odt"
    path.write_bytes(b"\x00\x01 not a survey")
    before = session.stored
    assert drop(window, local(path))
    qtbot.waitUntil(lambda: "letter.odt" in window.notices.text, timeout=10_000)
    assert session.stored == before


def test_several_files_and_files_of_another_machine_are_not_taken(window: MainWindow, tmp_path: Path) -> None:
    assert not drop(window, local(tmp_path / "a.json"), local(tmp_path / "b.json"))
    assert not drop(window, QUrl("https://stations.example/a.json"))


def test_how_a_size_was_read_is_told_above_the_page(
    qtbot: QtBot, window: MainWindow, session: Session, tmp_path: Path
) -> None:
    path = tmp_path / "typed.json"
    written = survey_to_json(demo_survey("small_town")).replace('"size": "3/4"', '"size": "DN 20"', 1)
    path.write_text(written, encoding="utf-8")
    assert drop(window, local(path))
    qtbot.waitUntil(lambda: "'DN 20' was read as 3/4 NPT" in window.notices.text, timeout=10_000)
    assert session.survey == demo_survey("small_town")
