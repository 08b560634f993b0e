"""The window asks before it writes over a file that is not its own, and refuses what nothing may override."""

from __future__ import annotations

import os
import re
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Settings, open_workbench
from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.saving import Saving
from spoutline.whole_files import InUse

Answer = QMessageBox.StandardButton


class Asked:
    """What the person was told and asked, and what the answer is."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.warned: list[str] = []
        self.questions: list[str] = []
        self.answer = Answer.No
        monkeypatch.setattr(QMessageBox, "warning", lambda *args: self.warned.append(args[2]))
        monkeypatch.setattr(QMessageBox, "question", self._question)

    def _question(self, *arguments: Any) -> Answer:
        self.questions.append(arguments[2])
        assert arguments[-1] == Answer.No  # Enter pressed too soon loses nothing
        return self.answer


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> Asked:
    return Asked(monkeypatch)


@pytest.fixture
def parent(qtbot: QtBot) -> QWidget:
    widget = QWidget()
    qtbot.addWidget(widget)
    return widget


def test_a_file_of_somebody_else_is_asked_about(parent: QWidget, asked: Asked, tmp_path: Path) -> None:
    saving = Saving(tuple, parent)
    assert saving.may_write(tmp_path / "new.pdf", FileForm.PDF)
    letter = tmp_path / "letter.pdf"
    letter.write_bytes(b"%PDF-1.4 somebody's letter")
    assert not saving.may_write(letter, FileForm.PDF)
    assert len(asked.questions) == 1
    assert "letter.pdf is there already" in asked.questions[0]
    asked.answer = Answer.Yes
    assert saving.may_write(letter, FileForm.PDF)
    assert asked.warned == []


def test_terms_that_are_being_edited_are_saved_without_a_question(
    parent: QWidget, asked: Asked, tmp_path: Path
) -> None:
    terms, others = tmp_path / "terms.toml", tmp_path / "others.toml"
    terms.write_text("")
    others.write_text("")
    assert Saving(tuple, parent).may_write(tmp_path / "." / "terms.toml", FileForm.TOML, edited=terms)
    assert not Saving(tuple, parent).may_write(others, FileForm.TOML, edited=terms)
    assert len(asked.questions) == 1


def test_what_is_in_use_and_what_is_no_ordinary_file_is_refused(
    parent: QWidget, asked: Asked, tmp_path: Path, shared_database: Path
) -> None:
    bench = open_workbench(Settings(database=str(shared_database), profiles=tmp_path))
    form = tmp_path / "form.pdf"
    form.write_bytes(b"%PDF-")
    os.mkfifo(tmp_path / "pipe.pdf")
    (tmp_path / "link.pdf").symlink_to(shared_database)
    saving = Saving(bench.files_in_use, parent, (InUse(form, "the filled form"),))
    asked.answer = Answer.Yes
    told = {
        shared_database: "this is a file of the book",
        form: "this is the filled form",
        tmp_path / "pipe.pdf": "named pipe",
        tmp_path / "link.pdf": "symbolic link",
        tmp_path: "this is a folder",
        tmp_path / "nowhere" / "x.pdf": "is not there",
    }
    for path, words in told.items():
        assert not saving.may_write(path, FileForm.PDF), path
        assert words in asked.warned[-1]
    assert asked.questions == []
    bench.close()


def test_a_name_without_an_ending_gets_one_before_it_is_checked(
    parent: QWidget, asked: Asked, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "bill.pdf").write_bytes(b"somebody's")
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "bill"), ""))
    assert Saving(tuple, parent).ask("Save", "bill.pdf", FileForm.PDF) is None
    assert len(asked.questions) == 1
    asked.answer = Answer.Yes
    assert Saving(tuple, parent).ask("Save", "bill.pdf", FileForm.PDF) == tmp_path / "bill.pdf"


@pytest.mark.parametrize(
    ("typed", "kind", "wanted"),
    [
        ("bill", "PDF (*.pdf)", "bill.pdf"),
        ("bill", "HTML page, for screen readers (*.html)", "bill.html"),
        ("bill.pdf", "HTML page, for screen readers (*.html)", "bill.html"),
        ("bill.html", "PDF (*.pdf)", "bill.html"),
        ("bill.r2.pdf", "PDF (*.pdf)", "bill.r2.pdf"),
        ("bill rev 1.2", "PDF (*.pdf)", "bill rev 1.2.pdf"),
        ("bill rev 1.2", "HTML page, for screen readers (*.html)", "bill rev 1.2.html"),
        ("bill.htm", "PDF (*.pdf)", "bill.htm"),
        ("bill.xlsx", "PDF (*.pdf)", "bill.pdf"),
    ],
)
def test_a_paper_is_asked_for_as_pdf_or_html(
    parent: QWidget, asked: Asked, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, typed: str, kind: str, wanted: str
) -> None:
    offered: list[str] = []

    def ask(_parent: QWidget, _title: str, _name: str, types: str) -> tuple[str, str]:
        offered.append(types)
        return str(tmp_path / typed), kind

    monkeypatch.setattr(QFileDialog, "getSaveFileName", ask)
    assert Saving(tuple, parent).ask_paper("Save", "bill") == tmp_path / wanted
    assert offered == ["PDF (*.pdf);;HTML page, for screen readers (*.html)"]
    (tmp_path / wanted).write_bytes(b"somebody's")
    assert Saving(tuple, parent).ask_paper("Save", "bill") is None
    assert len(asked.questions) == 1


@pytest.mark.parametrize("typed", ["bill", "bill.xlsx"])
def test_a_file_that_the_dialog_did_not_ask_about_is_asked_about(
    parent: QWidget, asked: Asked, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, typed: str
) -> None:
    """The file dialog asks about the name as typed; the one that is written then has another ending."""
    own = tmp_path / "bill.json"
    own.write_text("{}", encoding="utf-8")
    monkeypatch.setattr("spoutline.gui.dialogs.saving.own_test", lambda _form: lambda _path: True)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / typed), ""))
    saving = Saving(tuple, parent)
    assert saving.ask("Save", "bill.json", FileForm.JSON) is None
    assert asked.questions == [f"{own} is there already. Replace it?"]
    asked.answer = Answer.Yes
    assert saving.ask("Save", "bill.json", FileForm.JSON) == own
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(own), ""))
    assert saving.ask("Save", "bill.json", FileForm.JSON) == own  # the dialog itself asked
    assert saving.ask("Save", "bill.json", FileForm.JSON, edited=own) == own
    assert len(asked.questions) == 2


def test_a_drawing_keeps_what_follows_a_point_in_its_name(
    parent: QWidget, asked: Asked, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "pump 1.5 ft"), "PNG (*.png)"))
    assert Saving(tuple, parent).ask_picture("Save", "pump") == tmp_path / "pump 1.5 ft.png"
    assert asked.questions == []


def test_nothing_in_the_window_asks_for_a_file_to_write_without_the_check() -> None:
    import spoutline.gui

    folder = Path(spoutline.gui.__file__).parent
    found = [path.name for path in folder.rglob("*.py") if re.search(r"getSaveFileName|AcceptSave", path.read_text())]
    assert found == ["saving.py"]
