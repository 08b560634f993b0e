"""The dialog of a programme: a run over a folder, bad terms, stopping, and the programme kept in the book."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from random import Random

import pytest
from pytestqt.qtbot import QtBot

from bench.generated_sites_conversion import small_site
from planning.programme_sites import programme, site
from spoutline.bootstrap import Workbench
from spoutline.documents.own_files import FileForm, is_own
from spoutline.gui.dialogs.programme import ProgrammeDialog
from spoutline.gui.dialogs.programme_files import ProgrammeFiles
from spoutline.gui.jobs import JobKey, JobKind, Jobs
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    draw = Random(3)
    for number in (1, 2):
        text = small_site(number, draw).model_dump_json()
        (tmp_path / f"site_{number}.json").write_text(text, encoding="utf-8")
    (tmp_path / "torn.json").write_text("{", encoding="utf-8")
    return tmp_path


@pytest.fixture
def dialog(qtbot: QtBot, bench: Workbench) -> Iterator[ProgrammeDialog]:
    jobs = Jobs()
    shown = ProgrammeDialog(bench, jobs, processes=1)
    qtbot.addWidget(shown)
    shown.show()
    yield shown
    jobs.close()


def test_a_run_shows_its_sites_and_is_there_at_the_next_opening(
    qtbot: QtBot, bench: Workbench, dialog: ProgrammeDialog, folder: Path
) -> None:
    dialog.folder_edit.setText(str(folder))
    dialog.run_button.click()
    assert not dialog.run_button.isEnabled()
    qtbot.waitUntil(dialog.run_button.isEnabled, timeout=60_000)
    programme = dialog.programme
    assert programme is not None
    assert len(programme.ranked) + len(programme.others) == 3
    assert dialog.model.rowCount() >= 2  # a year, or what is in none, and what is not ready
    again = ProgrammeDialog(bench, Jobs(dialog))
    qtbot.addWidget(again)
    assert again.programme == programme


def test_words_tell_how_far_a_run_is_for_the_bar_has_no_room_for_them(
    qtbot: QtBot, dialog: ProgrammeDialog, folder: Path
) -> None:
    told: list[str] = []
    dialog.folder_edit.setText(str(folder))
    dialog._jobs.progressed.connect(lambda *_: told.append(dialog.state_label.text()))
    dialog.run_button.click()
    qtbot.waitUntil(dialog.run_button.isEnabled, timeout=60_000)
    assert "1 of 3 sites converted" in told
    assert "converted" not in dialog.state_label.text()
    assert not dialog.progress_bar.isTextVisible()


def test_a_run_that_fails_leaves_the_words_on_the_program_shown(
    qtbot: QtBot, dialog: ProgrammeDialog, folder: Path, tmp_path: Path
) -> None:
    dialog.folder_edit.setText(str(folder))
    dialog.run_button.click()
    qtbot.waitUntil(dialog.run_button.isEnabled, timeout=60_000)
    said = dialog.state_label.text()
    dialog.folder_edit.setText(str(tmp_path / "nowhere"))
    dialog.run_button.click()
    dialog._jobs.progressed.emit(JobKey(JobKind.SITE_PLAN, "programme"), 1, 2)
    assert dialog.state_label.text() == "1 of 2 sites converted"
    qtbot.waitUntil(dialog.run_button.isEnabled, timeout=60_000)
    assert dialog.state_label.text() == said


@pytest.mark.parametrize("typed", ["-4", "much", "0"])
def test_an_amount_that_cannot_be_is_told(typed: str, dialog: ProgrammeDialog, folder: Path) -> None:
    dialog.folder_edit.setText(str(folder))
    dialog.terms_form.budget_edit.setText(typed)
    dialog.run_button.click()
    assert "annual budget" in dialog.fault_label.text()
    assert dialog.run_button.isEnabled()


def test_a_folder_without_surveys_is_told(qtbot: QtBot, dialog: ProgrammeDialog, tmp_path: Path) -> None:
    dialog.folder_edit.setText(str(tmp_path / "nowhere"))
    dialog.run_button.click()
    qtbot.waitUntil(lambda: "folder" in dialog.fault_label.text(), timeout=20_000)


def test_a_stopped_run_lets_another_begin(dialog: ProgrammeDialog, folder: Path) -> None:
    dialog.folder_edit.setText(str(folder))
    dialog.run_button.click()
    dialog.stop_button.click()
    assert dialog.run_button.isEnabled()
    assert "Stopped" in dialog.state_label.text()


def test_terms_of_years_are_kept_and_the_row_of_a_site_says_why(
    qtbot: QtBot, bench: Workbench, dialog: ProgrammeDialog, folder: Path
) -> None:
    form = dialog.terms_form
    for edit, typed in (
        (form.budget_edit, "90000"),
        (form.first_year_edit, "2027"),
        (form.rise_edit, "3"),
        (form.interest_edit, "5"),
        (form.deadlines_edit, "site_1=2028; site_2.json=2030"),
    ):
        edit.setText(typed)
    form.carry_box.setChecked(True)
    dialog.folder_edit.setText(str(folder))
    dialog.run_button.click()
    qtbot.waitUntil(dialog.run_button.isEnabled, timeout=60_000)
    programme = dialog.programme
    assert programme is not None
    assert "Price rise: 3 %" in dialog.why_label.text()  # no row is current: the terms
    ranked = next(one for one in programme.ranked if one.year is not None)
    dialog.tree.picked.emit(ranked.site.place)
    assert f"Its deadline is {ranked.deadline}" in dialog.why_label.text()
    assert "A year later" in dialog.why_label.text()
    assert dialog.model.index(0, 0).data() == "2027"
    again = ProgrammeDialog(bench, Jobs(dialog))
    qtbot.addWidget(again)
    shown = again.terms_form
    assert (shown.budget_edit.text(), shown.first_year_edit.text(), shown.rise_edit.text()) == ("90000", "2027", "3")
    assert shown.carry_box.isChecked()


@pytest.mark.parametrize(
    ("field", "typed", "named"),
    [
        ("first_year_edit", "27", "first year"),
        ("rise_edit", "much", "price rise"),
        ("interest_edit", "60", "interest"),
        ("deadlines_edit", "site_1", "deadlines"),
    ],
)
def test_terms_that_cannot_be_are_told(field: str, typed: str, named: str, dialog: ProgrammeDialog) -> None:
    getattr(dialog.terms_form, field).setText(typed)
    dialog.run_button.click()
    assert named in dialog.fault_label.text()
    assert dialog.run_button.isEnabled()


def test_paper_tables_and_calendar_are_saved_from_the_dialog(
    qtbot: QtBot, bench: Workbench, dialog: ProgrammeDialog, tmp_path: Path
) -> None:
    found = programme(site("a", 10), budget=10, first_year=2027)
    dialog.files.show_programme(found, Display(UnitSystem.SI))
    for form, start in (
        (FileForm.XLSX, b"PK"),
        (FileForm.CSV, b"\xef\xbb\xbfrank,year"),
        (FileForm.ICS, b"BEGIN:VCALENDAR"),
    ):
        path = tmp_path / f"program.{form}"
        assert dialog.files.buttons[form].isEnabled()
        dialog.files.save_to(path, form)
        qtbot.waitUntil(lambda wanted=path: str(wanted) in dialog.state_label.text(), timeout=20_000)
        assert path.read_bytes().startswith(start)
        assert is_own(path, form)
    for page, start in ((tmp_path / "program.pdf", b"%PDF"), (tmp_path / "program.html", b"<!DOCTYPE html>")):
        dialog.files.hands.save_to(page)
        qtbot.waitUntil(lambda wanted=page: str(wanted) in dialog.state_label.text(), timeout=20_000)
        assert page.read_bytes().startswith(start)
    dialog.files.save_to(tmp_path / "nowhere" / "program.csv", FileForm.CSV)
    qtbot.waitUntil(lambda: dialog.fault_label.text() != "", timeout=20_000)


def test_there_is_nothing_to_save_before_a_program_and_no_calendar_of_counted_years(dialog: ProgrammeDialog) -> None:
    fresh = ProgrammeFiles(dialog.files._workbench, dialog.files._jobs, dialog._show_saved, dialog)
    assert not any(button.isEnabled() for button in fresh.buttons.values())
    fresh.show_programme(programme(site("a", 10), budget=10), Display(UnitSystem.SI))
    assert [form for form, button in fresh.buttons.items() if not button.isEnabled()] == [FileForm.ICS]
