"""The conversion page: result, answers, installed parts, files; every change can be undone."""

from __future__ import annotations

import io
import threading
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from pydantic import BaseModel
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QMessageBox
from pytestqt.qtbot import QtBot

from paper_text import text_of
from spoutline.bootstrap.conversions import ConversionService
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.command import make_edit
from spoutline.gui.pages.conversion.answers import SiteSide
from spoutline.gui.pages.conversion.page import ConversionPage
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.answered import unanswered
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.faults import Cancelled
from spoutline.model.installed import InstalledCondition
from spoutline.model.survey import Survey
from spoutline.planning.protocols import Progress


@pytest.fixture
def survey() -> Survey:
    """Return a station of two positions: one loses vapour recovery, one gets another liquid."""
    demo = demo_survey("conversion_assist")
    return demo.model_copy(update={"positions": (demo.positions[0], demo.positions[-1])})


@pytest.fixture
def page(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> ConversionPage:
    """Return the page with its report made."""
    window.actions_by_id[ActionId.CONVERSION].trigger()
    shown = workplace.conversion_page
    qtbot.waitUntil(lambda: shown.document is not None, timeout=60_000)
    return shown


def test_the_page_shows_standing_ways_positions_and_the_report(qtbot: QtBot, page: ConversionPage) -> None:
    assert "agency" in page.standing_label.text()
    assert page.ways_model.rowCount() == 3
    rows = [page.positions_model.index(row, 0).data() for row in range(page.positions_model.rowCount())]
    assert rows == [
        "1A regular",
        "4B diesel",
        "Closed once",
        "Changes of liquid, tank by tank",
        "What the sequence cannot keep or does not know",
    ]
    assert page.document is not None
    assert len(page.paper.images()) == len(PdfReader(io.BytesIO(page.document)).pages)
    first = page.positions_model.index(0, 0)
    assert page.positions_model.rowCount(first) > 3


def test_report_and_calendar_are_saved_as_shown(
    qtbot: QtBot, window: MainWindow, page: ConversionPage, tmp_path: Path
) -> None:
    forms = {"pdf": b"%PDF", "ics": b"BEGIN:VCALENDAR", "xlsx": b"PK", "csv": b"\xef\xbb\xbfkind,task"}
    for suffix, start in forms.items():
        path = tmp_path / f"conversion.{suffix}"
        if suffix == "pdf":
            page.hands.save_to(path)
        else:
            page.save_to(path, suffix)
        qtbot.waitUntil(path.exists, timeout=20_000)
        qtbot.waitUntil(lambda wanted=path: str(wanted) in window.notices.text)
        assert path.read_bytes().startswith(start)


@pytest.mark.parametrize(
    ("typed", "kind", "name", "start"),
    [
        ("tasks.csv", "XLSX", "tasks.csv", b"\xef\xbb\xbfkind,task"),
        ("tasks", "XLSX", "tasks.xlsx", b"PK"),
        ("tasks.xlsx", "CSV", "tasks.csv", b"\xef\xbb\xbfkind,task"),
        ("tasks.pdf", "XLSX", "tasks.xlsx", b"PK"),
    ],
)
def test_a_table_is_saved_in_the_form_that_its_name_tells(
    typed: str,
    kind: str,
    name: str,
    start: bytes,
    qtbot: QtBot,
    monkeypatch: pytest.MonkeyPatch,
    page: ConversionPage,
    tmp_path: Path,
) -> None:
    chosen = f"{kind} (*.{kind.lower()})"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / typed), chosen))
    page.buttons["xlsx"].click()
    qtbot.waitUntil((tmp_path / name).exists, timeout=20_000)
    assert [one.name for one in tmp_path.iterdir()] == [name]
    assert (tmp_path / name).read_bytes().startswith(start)


def test_a_calendar_without_a_first_day_leads_to_its_question_before_any_file_is_named(
    qtbot: QtBot, window: MainWindow, page: ConversionPage, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    sequence = session.survey.conversion.sequence.model_copy(update={"start_date": None})
    conversion = session.survey.conversion.model_copy(update={"sequence": sequence})
    session.replace_survey(session.survey.model_copy(update={"conversion": conversion}), session.label)
    qtbot.waitUntil(page.buttons["ics"].isEnabled, timeout=60_000)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: pytest.fail("a file is asked for"))
    page.buttons["ics"].click()
    assert "first day" in window.notices.text
    side = page.tabs.currentWidget()
    assert isinstance(side, SiteSide)
    focus = window.focusWidget()
    assert focus is not None
    assert side.form.field("sequence.start_date").isAncestorOf(focus)


def test_the_station_on_one_page_takes_the_place_of_the_report_and_is_saved(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, page: ConversionPage, tmp_path: Path
) -> None:
    report = page.document
    page.one_page_box.click()
    assert page.document is None
    assert not page.buttons["pdf"].isEnabled()
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert page.document != report
    assert len(page.paper.images()) == 1
    asked: list[str] = []

    def choose(_parent: object, _title: str, name: str, *_: object) -> tuple[str, str]:
        asked.append(name)
        return str(tmp_path / Path(name).name), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose)
    page.buttons["pdf"].click()
    path = tmp_path / asked[0]
    assert path.name.endswith("-one-page.pdf")
    qtbot.waitUntil(path.exists, timeout=20_000)
    assert path.read_bytes() == page.document
    assert "Station on one page" in text_of(path.read_bytes())
    html = tmp_path / "page.html"
    page.hands.save_to(html)
    qtbot.waitUntil(html.exists, timeout=20_000)
    assert "What hangs now, and what comes" in html.read_text(encoding="utf-8")
    page.one_page_box.click()
    qtbot.waitUntil(lambda: page.document == report, timeout=60_000)


def test_another_survey_is_worked_out_for_the_paper_that_was_chosen(
    qtbot: QtBot, workplace: Workplace, page: ConversionPage
) -> None:
    page.site_side.form.field("agency").given.emit("california_retail")
    assert page.conversion is None
    page.one_page_box.click()  # nothing is made of a conversion that holds no more
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    told = text_of(page.document or b"")
    assert "Station on one page" in told
    assert "not allowed here" in told


def test_another_agency_changes_what_is_said_and_undo_brings_it_back(
    qtbot: QtBot, workplace: Workplace, page: ConversionPage
) -> None:
    page.site_side.form.field("agency").given.emit("california_retail")
    assert workplace.session.survey.conversion.agency == "california_retail"
    qtbot.waitUntil(lambda: "not allowed" in page.standing_label.text(), timeout=60_000)
    workplace.session.undo_stack.undo()
    assert workplace.session.survey.conversion.agency == "wisconsin"
    qtbot.waitUntil(lambda: "not allowed" not in page.standing_label.text(), timeout=60_000)


def test_what_is_answered_as_it_was_assumed_is_told_anew(workplace: Workplace, page: ConversionPage) -> None:
    session = workplace.session
    first, *others = session.survey.positions
    bare = unanswered(first, "duty")
    assert bare == first
    edited = session.survey.model_copy(update={"positions": (bare, *others)})
    make_edit(session, edited, "duty")
    assert page.conversion is None


ANSWERS: tuple[tuple[str, str, object], ...] = (
    ("sequence.start_date", "2028-05-02", date(2028, 5, 2)),
    ("money.labour_rate_per_hour", "88.50", Decimal("88.50")),
    ("emissions.gasoline_throughput_m3", "6000 m3", 6000.0),
    ("emissions.reid_vapour_pressure_kpa", "62 kPa", 62.0),
    ("sequence.notice_days", "45", 45),
    ("sequence.notice_days", "", None),
    ("money.upkeep_today_per_year", "", None),
    ("longest_age_years", "12.5", 12.5),
    ("deadline_year", "2029", 2029),
    ("sequence.crews", "3", 3),
    ("sequence.condensate_traps", "2", 2),
    ("sequence.dual_vapour_pipes", "yes", True),
    ("sequence.central_vacuum", "yes", True),
    ("emissions.assist_share", "0.4", 0.4),
    ("emissions.national_shares", "no", False),
    ("emissions.own_shares_source", "register of vehicles", "register of vehicles"),
    ("emissions.mean_ambient_c", "59 °F", pytest.approx(15.0)),  # NIST SP 811 B.8: t/°C = (t/°F - 32)/1.8
    ("emissions.mean_fill_l", "10 gal", pytest.approx(37.85412)),  # NIST SP 811 B.8: 1 gal = 3.785412 L
    ("emissions.ullage_m3", "12 m3", 12.0),
    ("money.grant", "1500.50", Decimal("1500.50")),
    ("money.discount_percent", "4.25", Decimal("4.25")),
    ("money.years", "15", 15),
)


def test_a_typed_answer_lands_in_the_survey_and_undo_takes_it_back(workplace: Workplace, page: ConversionPage) -> None:
    """One window for all answers, as a person gives them one after the other."""
    before = workplace.session.survey
    for name, typed, stored in ANSWERS:
        page.site_side.form.field(name).given.emit(typed)
        value: object = workplace.session.survey.conversion
        for step in name.split("."):
            value = getattr(value, step)
        assert value == stored, (name, typed)
        if workplace.session.survey != before:
            workplace.session.undo_stack.undo()
        assert workplace.session.survey == before, (name, typed)


FAULTY = (
    ("sequence.start_date", "next spring"),
    ("money.labour_rate_per_hour", "a lot"),
    ("emissions.in_use_efficiency", "7"),
    ("longest_age_years", "0"),
    ("deadline_year", "29"),
    ("sequence.crews", "1.5"),
    ("sequence.crews", ""),
    ("sequence.condensate_traps", "-1"),
    ("emissions.assist_share", "1.2"),
    ("emissions.mean_ambient_c", "90 °C"),
    ("emissions.mean_fill_l", "0 L"),
    ("emissions.ullage_m3", "much"),
    ("money.grant", "-5"),
    ("money.discount_percent", "51"),
    ("money.discount_percent", ""),
    ("money.years", "0"),
)


def test_a_faulty_answer_stays_beside_its_field(workplace: Workplace, page: ConversionPage) -> None:
    before = workplace.session.survey
    for name, typed in FAULTY:
        page.site_side.form.field(name).given.emit(typed)
        assert page.site_side.form.field(name).fault, (name, typed)
        assert workplace.session.survey == before, (name, typed)


def leaves(model: type[BaseModel], path: str = "") -> list[str]:
    """Return the paths of all fields below a document that hold one answer each."""
    found: list[str] = []
    for name, field in model.model_fields.items():
        if isinstance(field.annotation, type) and issubclass(field.annotation, BaseModel):
            found += leaves(field.annotation, f"{path}{name}.")
        elif not str(field.annotation).startswith("tuple"):
            found.append(f"{path}{name}")
    return found


def test_every_single_answer_of_a_conversion_has_its_field(page: ConversionPage) -> None:
    assert sorted(page.site_side.form.names) == sorted(leaves(ConversionAnswers))


def test_installed_parts_are_added_changed_and_taken_away(
    qtbot: QtBot, workplace: Workplace, page: ConversionPage
) -> None:
    panel, session = page.position_side.installed_panel, workplace.session
    page.tabs.setCurrentIndex(3)
    before = session.position.installed
    panel.number_edit.setText("no such part")
    panel.add_button.click()
    assert panel.fault_label.isVisible()
    assert session.position.installed == before
    panel.number_edit.setText("QW-N101")
    qtbot.keyClick(panel.number_edit, Qt.Key.Key_Return)
    assert session.position.installed[-1].number == "QW-N101"
    panel.tree.setCurrentIndex(panel.model.index(len(before), 0))
    worn = panel.condition_box.findData(InstalledCondition.WORN)
    panel.condition_box.activated.emit(worn)
    assert session.position.installed[-1].condition is InstalledCondition.WORN
    panel.tree.setCurrentIndex(panel.model.index(len(before), 0))
    panel.remove_button.click()
    assert session.position.installed == before


def test_a_part_without_a_number_is_described_and_gets_an_age(
    qtbot: QtBot, workplace: Workplace, page: ConversionPage
) -> None:
    panel, session = page.position_side.installed_panel, workplace.session
    page.tabs.setCurrentIndex(3)
    before = len(session.position.installed)
    panel.describe_button.click()
    assert "description" in panel.fault_label.text()
    panel.description_edit.setText("hose, plate painted over")
    panel.describe_button.click()
    assert session.position.installed[-1].description == "hose, plate painted over"
    for typed, age in (("9.5", 9.5), ("old", 9.5), ("", None)):
        panel.tree.setCurrentIndex(panel.model.index(before, 0))
        panel.age_edit.setText(typed)
        qtbot.keyClick(panel.age_edit, Qt.Key.Key_Return)
        assert session.position.installed[-1].age_years == age


def test_the_planned_set_can_be_recorded_as_installed(
    monkeypatch: pytest.MonkeyPatch, workplace: Workplace, page: ConversionPage
) -> None:
    session = workplace.session
    assert session.position.installed, "what hangs there is recorded, so that a question comes first"
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Yes)
    page.position_side.installed_panel.planned_button.click()
    plan = workplace.context.plan_to_show
    assert plan is not None
    assert plan.chosen is not None
    assert tuple(item.number for item in session.position.installed) == plan.chosen.hanging_set.numbers


def test_the_liquid_sold_today_is_chosen_from_the_usual_ones(workplace: Workplace, page: ConversionPage) -> None:
    panel, session = page.position_side.installed_panel, workplace.session
    panel.liquid_box.activated.emit(2)
    assert session.position.liquid_today is not None
    assert session.position.liquid_today.blend_percent == 10
    panel.liquid_box.activated.emit(0)
    assert session.position.liquid_today is None


def test_the_conversion_says_how_far_it_is_and_can_be_stopped(
    window: MainWindow, workplace: Workplace, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    go_on = threading.Event()

    def slow(_service: ConversionService, _survey: Survey, watching: Progress) -> SiteConversion:
        watching.on_progress(3, 1_000)
        while not watching.should_stop():
            go_on.wait(0.01)
        raise Cancelled

    monkeypatch.setattr(ConversionService, "convert", slow)
    window.actions_by_id[ActionId.CONVERSION].trigger()
    page = workplace.conversion_page
    row = page.progress_row
    qtbot.waitUntil(lambda: (row.bar.value(), row.bar.maximum()) == (3, 1_000))
    qtbot.mouseClick(row.stop_button, Qt.MouseButton.LeftButton)
    assert row.bar.isHidden()
    assert page.state_label.text() == "Stopped."
    assert row.again_button.isVisible()
    monkeypatch.undo()
    qtbot.mouseClick(row.again_button, Qt.MouseButton.LeftButton)
    assert row.again_button.isHidden()
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert row.bar.isHidden()
    assert row.again_button.isHidden()
    assert page.standing_mark.isVisible()


def test_nothing_of_former_answers_stays_where_the_conversion_is_stopped(
    page: ConversionPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    go_on = threading.Event()

    def slow(_service: ConversionService, _survey: Survey, watching: Progress) -> SiteConversion:
        while not watching.should_stop():
            go_on.wait(0.01)
        raise Cancelled

    monkeypatch.setattr(ConversionService, "convert", slow)
    page.site_side.form.field("agency").given.emit("california_retail")
    page.progress_row.stop_button.click()
    assert (page.ways_model.rowCount(), page.positions_model.rowCount()) == (0, 0)
    assert page.standing_mark.isHidden()
    assert (page.standing_label.text(), page.document, page.paper.images()) == ("", None, ())


def test_answers_that_change_lay_no_field_out_anew(page: ConversionPage, monkeypatch: pytest.MonkeyPatch) -> None:
    form = page.site_side.form
    arranged: list[bool] = []
    arrange = form._arrange
    monkeypatch.setattr(form, "_arrange", lambda: arranged.append(True) or arrange())
    form.field("agency").given.emit("california_retail")
    page.site_side.refresh()
    assert arranged == []
    page.position_side.refresh()
    place, labels = page.position_side, [one.label for one in page._context.session.survey.positions]
    other = place.form
    arrange = other._arrange
    monkeypatch.setattr(other, "_arrange", lambda: arranged.append(True) or arrange())
    page._context.session.look_at(labels[-1])  # fields of another position are made anew
    place.refresh()
    assert arranged == [True]
    assert [field.isHidden() for field in map(other.field, other.names)] == [False] * len(other.names)
