"""The installer's page: papers, a record judged while typed, a swap that lands in the record, inspections, a scan."""

from __future__ import annotations

import json
import re
import threading
from dataclasses import replace
from datetime import date
from html import unescape
from pathlib import Path

import pytest
from pypdf import PdfWriter
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFileDialog, QLineEdit
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from paper_text import text_of
from reliability.fuzz_seeds import saved_page
from spoutline.bootstrap import Workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.pages.installer.pack_panel import PaperKind, Scope
from spoutline.gui.pages.installer.page import InstallerPage
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.faults import Cancelled
from spoutline.model.inspection import InspectionItemId
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import SitePlan
from spoutline.model.position_tag import PositionTag
from spoutline.model.record import ChangeReason, RecordItemId
from spoutline.model.survey import Survey
from spoutline.planning.pack import swap
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.plan_site import fingerprint_of
from spoutline.search.listener import Listener


@pytest.fixture
def page(window: MainWindow, workplace: Workplace, qtbot: QtBot) -> InstallerPage:
    window.actions_by_id[ActionId.INSTALLER].trigger()
    page = workplace.installer_page
    qtbot.waitUntil(lambda: page.pack_panel.document is not None, timeout=20_000)
    return page


def field(page: InstallerPage, name: str) -> QLineEdit:
    found = page.record_panel.findChild(QLineEdit, name)
    assert found is not None, name
    return found


def box(page: InstallerPage, name: str) -> QComboBox:
    found = page.record_panel.findChild(QComboBox, name)
    assert found is not None, name
    return found


def show_record(page: InstallerPage) -> None:
    page.tabs.setCurrentWidget(page.record_panel)


def verdict_of(page: InstallerPage, item: RecordItemId) -> str:
    row = next(row for row in page.record_panel.fields._items if row.item.id is item)
    return row.verdict.text()


def test_the_key_brings_the_page_into_view(window: MainWindow, workplace: Workplace, qtbot: QtBot) -> None:
    qtbot.keyClick(window, Qt.Key.Key_J, Qt.KeyboardModifier.ControlModifier)
    assert workplace.views.currentWidget() is workplace.installer_page


def test_each_paper_is_made_in_the_language_chosen_and_saved(page: InstallerPage, qtbot: QtBot, tmp_path: Path) -> None:
    page.language_box.setCurrentIndex(page.language_box.findData(Language.SPANISH))
    panel = page.pack_panel
    for kind, title in (
        (PaperKind.PACK, "Carpeta del instalador"),
        (PaperKind.CAUTIONS, "Hoja de advertencias"),
        (PaperKind.FORM, "Hoja de puesta en servicio"),
    ):
        panel.kind_box.setCurrentIndex(panel.kind_box.findData(kind))
        panel.refresh()
        qtbot.waitUntil(lambda: panel.document is not None, timeout=20_000)
        path = tmp_path / f"{kind}.pdf"
        panel.hands.save_to(path)
        qtbot.waitUntil(path.exists, timeout=10_000)
        assert title in text_of(path)


def test_the_pack_of_one_position_holds_that_one(page: InstallerPage, qtbot: QtBot, tmp_path: Path) -> None:
    panel = page.pack_panel
    panel.scope_box.setCurrentIndex(panel.scope_box.findData(Scope.POSITION))
    qtbot.waitUntil(lambda: panel.document is not None, timeout=20_000)
    path = tmp_path / "one.pdf"
    panel.hands.save_to(path)
    qtbot.waitUntil(path.exists, timeout=10_000)
    text = text_of(path)
    assert "Position A1" in text
    assert "Position A2" not in text


def test_a_faulty_day_is_named_and_no_paper_is_made_of_it(page: InstallerPage) -> None:
    panel = page.pack_panel
    panel.fields["first_day"].setText("1.12.2026")
    panel.refresh()
    assert "YYYY-MM-DD" in panel.state_label.text()
    panel.fields["first_day"].setText("2026-12-02")
    panel.fields["last_day"].setText("2026-12-01")
    panel.refresh()
    assert "last day" in panel.state_label.text()
    panel.fields["last_day"].clear()
    panel.contacts_edit.setPlainText("Operator")
    panel.refresh()
    assert "role; name; telephone" in panel.state_label.text()


@pytest.mark.parametrize(
    ("text", "words"),
    [("2 Mohm", "OUT OF LIMIT"), ("90 kohm", "inside the limits"), ("much", "write a number"), ("", "OPEN")],
)
def test_a_reading_is_judged_while_it_is_typed(page: InstallerPage, text: str, words: str) -> None:
    show_record(page)
    field(page, "reading_bond").setText(text)
    assert words in verdict_of(page, RecordItemId.BOND)


def test_a_kept_record_is_in_the_book_as_entered(page: InstallerPage, bench: Workbench) -> None:
    show_record(page)
    field(page, "reading_bond").setText("90 kohm")
    box(page, "result_leak").setCurrentIndex(1)
    field(page, "record_done_by").setText("Ada Quill")
    field(page, "record_done_on").setText("2026-12-01")
    page.record_panel.keep()
    stored = bench.packing().records().commissioning("Maple Ferry Fuels", "A1")[-1].record
    bond = stored.entry(RecordItemId.BOND)
    assert bond is not None
    assert bond.reading == pytest.approx(90_000)
    assert (stored.done_by, stored.done_on) == ("Ada Quill", date(2026, 12, 1))


def test_an_open_circuit_is_entered_as_the_meter_shows_it(page: InstallerPage, bench: Workbench) -> None:
    show_record(page)
    field(page, "reading_bond").setText("OL")
    assert "OUT OF LIMIT" in verdict_of(page, RecordItemId.BOND)
    page.record_panel.keep()
    bond = bench.packing().records().commissioning("Maple Ferry Fuels", "A1")[-1].record.entry(RecordItemId.BOND)
    assert bond is not None
    assert (bond.reading, bond.over_range) == (None, True)


def test_another_part_needs_a_reason_and_a_number_of_the_catalogue(page: InstallerPage) -> None:
    show_record(page)
    field(page, "fitted_1").setText("TH-W999")
    page.record_panel.keep()
    assert "choose why" in page.record_panel.state_label.text()
    box(page, "reason_1").setCurrentIndex(1)
    page.record_panel.keep()
    assert "part number" in page.record_panel.state_label.text()


def test_a_filled_form_shows_on_screen_before_it_is_kept(page: InstallerPage, bench: Workbench, tmp_path: Path) -> None:
    session = page._context.session
    form, filled = tmp_path / "form.pdf", tmp_path / "filled.pdf"
    form.write_bytes(bench.packing().form(bench.plan_site(session.survey), Language.GERMAN, session.display))
    writer = PdfWriter(clone_from=form)
    for one in writer.pages:
        values = {
            "p1_spout_reading": "20,9",
            "p1_bond_reading": "mittel",
            "p1_leak_result": "failed",
            "p1_remarks": "hose wet",
            "p2_done_by": "Bo Fen",
        }
        writer.update_page_form_field_values(one, values, auto_regenerate=False)
    writer.write(filled)
    show_record(page)
    page.record_panel.read_form(filled)
    assert field(page, "reading_spout").text() == "20.9 mm"
    assert "OUT OF LIMIT" in verdict_of(page, RecordItemId.LEAK)
    assert page.record_panel.fields.remarks_edit.toPlainText() == "hose wet"
    session.look_at("A2")
    assert field(page, "record_done_by").text() == "Bo Fen"
    session.look_at("A1")
    assert field(page, "reading_bond").text() == "mittel"
    assert "bond_reading" in page.record_panel.state_label.text()
    assert "number" in verdict_of(page, RecordItemId.BOND)
    page.record_panel.read_form(tmp_path / "none.pdf")
    assert "none.pdf" in page.record_panel.state_label.text()


def test_a_page_for_a_tablet_is_saved_and_what_it_saved_is_read_with_its_photos(
    page: InstallerPage, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    session = page._context.session
    target, filled = tmp_path / "tablet.html", tmp_path / "filled.json"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(target), ""))
    qtbot.mouseClick(page.pack_panel.tablet_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(target.exists, timeout=20_000)
    tags = re.findall(r'id="(p[0-9]+_(?:tag|planned|language|units))"[^>]*value="([^"]*)"', target.read_text("utf-8"))
    document = json.loads(saved_page(pictures=1))
    document["fields"] = [{**{name: unescape(value) for name, value in tags}, "p1_leak_result": "failed"}]
    filled.write_text(json.dumps(document), encoding="utf-8")
    show_record(page)
    page.record_panel.read_form(filled)
    assert "OUT OF LIMIT" in verdict_of(page, RecordItemId.LEAK)
    assert page.record_panel.photo_label.text() == "0.jpg"
    page.record_panel.keep()
    records = session.workbench.packing().records()
    stored = records.commissioning(session.survey.site.name, session.label)[-1]
    (note,) = stored.record.photos
    assert (note.name, note.caption) == ("0.jpg", "the valve")
    assert records.photos(stored.id).keys() == {note.sha256}


def test_the_record_and_the_bill_as_built_are_saved(page: InstallerPage, qtbot: QtBot, tmp_path: Path) -> None:
    show_record(page)
    field(page, "reading_bond").setText("2 Mohm")
    record, bill = tmp_path / "record.pdf", tmp_path / "bill.pdf"
    page.record_panel.hands.save_to(record)
    qtbot.waitUntil(record.exists, timeout=20_000)
    page.record_panel.bill_hands.save_to(bill)
    qtbot.waitUntil(bill.exists, timeout=20_000)
    assert "OUT OF LIMIT" in text_of(record)
    assert "Bill of materials as built" in text_of(bill)


def test_a_swap_is_checked_and_lands_in_the_record(page: InstallerPage, qtbot: QtBot, tmp_path: Path) -> None:
    page.tabs.setCurrentWidget(page.swap_panel)
    panel = page.swap_panel
    panel.missing_box.setCurrentIndex(panel.missing_box.count() - 1)  # the nozzle is last in the chain
    missing = panel.missing_box.currentData()
    stock = tmp_path / "stock.csv"
    # the enhanced nozzle without a latch would do at a car position; the truck nozzle would not
    stock.write_text("part_number,quantity\nQW-N104,1\nQW-N143,2\n")
    panel.use_stock(stock)
    panel.ask()
    qtbot.waitUntil(lambda: panel.model.rowCount() == 2, timeout=20_000)
    assert "1 of 2" in panel.state_label.text()
    assert panel.fit_button.isEnabled()
    panel.fit()
    assert page.tabs.currentWidget() is page.record_panel
    (change,) = page.record_panel.fields.record(()).changes
    assert (change.planned, change.fitted, change.reason) == (
        missing,
        (PartRef("QW-N104", "Quillmere Forgeworks"),),
        ChangeReason.NOT_ON_VAN,
    )


def test_a_stocked_part_that_is_not_decided_is_said_to_be_so(
    page: InstallerPage, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    page.tabs.setCurrentWidget(page.swap_panel)
    panel = page.swap_panel
    panel.missing_box.setCurrentIndex(panel.missing_box.count() - 1)
    panel.stock_edit.setPlainText("QW-N104,1\nQW-N143,2")
    whole = swap.chooser_for

    class Nothing(Listener):
        most_work = 1.0

    monkeypatch.setattr(
        swap,
        "chooser_for",
        lambda requirement, pool, context: whole(requirement, pool, replace(context, listener=Nothing())),
    )
    panel.ask()
    qtbot.waitUntil(lambda: panel.model.rowCount() == 2, timeout=20_000)
    assert panel.state_label.text() == "0 of 2 stocked parts of this kind would do. Not decided for 1 of them."
    rows = [panel.model.index(row, 2).data() for row in range(2)]
    assert rows == ["not decided whether it would do", "would not do"]  # the truck nozzle breaks musts by itself
    details = panel.model.index(0, 0, panel.model.index(0, 0))
    assert "nor was it shown that none fits" in details.data()
    assert not panel.fit_button.isEnabled()


def test_a_faulty_stock_list_is_told_with_its_line(page: InstallerPage) -> None:
    page.tabs.setCurrentWidget(page.swap_panel)
    page.swap_panel.stock_edit.setPlainText("QW-N104,many")
    page.swap_panel.ask()
    assert "line 2" in page.swap_panel.state_label.text()


def test_an_empty_list_of_swaps_says_why(page: InstallerPage, qtbot: QtBot) -> None:
    page.tabs.setCurrentWidget(page.swap_panel)
    panel = page.swap_panel
    taught = panel.state_label.text()
    assert taught.startswith("Pick the missing part")
    panel.missing_box.setCurrentIndex(panel.missing_box.count() - 1)
    panel.stock_edit.setPlainText("QW-N104,1")
    panel.ask()
    qtbot.waitUntil(lambda: panel.model.rowCount() == 1, timeout=20_000)
    panel.refresh()
    assert panel.model.rowCount() == 1, "an answer stays while part and set do"
    panel.stock_edit.setPlainText("QW-N104,many")
    panel.ask()
    assert panel.model.rowCount() == 0, "the answer before is of another stock"
    assert not panel.fit_button.isEnabled()
    assert "line 2" in panel.state_label.text()


def test_an_answer_about_another_part_or_position_is_taken_away(page: InstallerPage, qtbot: QtBot) -> None:
    page.tabs.setCurrentWidget(page.swap_panel)
    panel, session = page.swap_panel, page.swap_panel._context.session
    panel.missing_box.setCurrentIndex(panel.missing_box.count() - 1)
    panel.stock_edit.setPlainText("QW-N104,1")
    panel.ask()
    qtbot.waitUntil(lambda: panel.model.rowCount() == 1, timeout=20_000)
    panel.missing_box.setCurrentIndex(0)
    panel.missing_box.activated.emit(0)
    assert panel.model.rowCount() == 0
    assert panel.state_label.text().startswith("Pick the missing part")
    panel.missing_box.setCurrentIndex(panel.missing_box.count() - 1)
    panel.ask()
    qtbot.waitUntil(lambda: panel.model.rowCount() == 1, timeout=20_000)
    other = next(one.label for one in session.survey.positions if one.label != session.label)
    session.look_at(other)
    panel.refresh()
    assert panel.model.rowCount() == 0
    assert not panel.fit_button.isEnabled()


def test_an_inspection_done_moves_its_next_day_and_wear_is_logged(
    page: InstallerPage, qtbot: QtBot, tmp_path: Path
) -> None:
    page.tabs.setCurrentWidget(page.inspection_panel)
    panel = page.inspection_panel
    qtbot.waitUntil(lambda: panel.due_model.rowCount() > 0, timeout=20_000)
    panel.due_table.pick_row(0)
    picked = panel.due_table.current_record()
    panel.note_done()
    qtbot.waitUntil(lambda: any(one.last_done is not None for one in panel.due_model.records), timeout=20_000)
    done = next(one for one in panel.due_model.records if one.last_done is not None)
    assert (done.position, done.item) == (picked.position, picked.item)  # type: ignore[attr-defined]
    panel.fitted_edit.setText("TH-W1O1")
    panel.note_wear()
    assert "part number" in panel.state_label.text()

    def offered() -> list[str]:
        return [panel.removed_box.itemText(place) for place in range(panel.removed_box.count())]

    before = offered()
    assert "TH-W101" not in before
    panel.fitted_edit.setText("TH-W101")
    panel.wear_note_edit.setText("car drove off")
    panel.note_wear()
    (entry,) = panel.wear_model.records
    assert (entry.fitted, entry.reason, entry.note) == (
        PartRef("TH-W101", "Thistledown Hosewrights"),
        ChangeReason.DRIVE_OFF,
        "car drove off",
    )
    # what hangs there now, not what the plan says
    qtbot.waitUntil(lambda: offered() == ["TH-W101", *before[1:]], timeout=20_000)
    qtbot.waitUntil(lambda: "due by today" in panel.state_label.text(), timeout=20_000)
    due = {one.item.id for one in panel.due_model.records if one.position == entry.position}
    assert {InspectionItemId.AFTER_BOND, InspectionItemId.AFTER_SHEAR_VALVE} <= due
    for save, path in (
        (panel.hands.save_to, tmp_path / "plan.pdf"),
        (panel.save_calendar, tmp_path / "plan.ics"),
    ):
        save(path)
        qtbot.waitUntil(path.exists, timeout=20_000)


def test_a_scanned_code_turns_to_its_position_and_says_if_the_survey_changed(
    page: InstallerPage, workplace: Workplace, qtbot: QtBot
) -> None:
    session = workplace.session
    code = PositionTag(site="Maple Ferry Fuels", position="A2", revision=fingerprint_of(session.survey))
    page.code_edit.setText(str(code))
    page.open_code()
    assert session.label == "A2"
    assert "as it was when the sheet was printed" in page.state_label.text()
    page.code_edit.setText(str(PositionTag(site="Maple Ferry Fuels", position="A1", revision="0" * 16)))
    page.open_code()
    assert session.label == "A1"
    assert "changed since" in page.state_label.text()
    page.code_edit.setText("https://invented.invalid")
    page.open_code()
    assert "scan the code" in page.state_label.text()
    wait_for_plans(qtbot, workplace)


def test_what_was_planned_for_the_parts_list_is_not_planned_again_for_the_pack(
    window: MainWindow, workplace: Workplace, qtbot: QtBot, bench: Workbench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A station of a thousand positions takes minutes to be planned."""
    planned: list[bool] = []
    really = Workbench.plan_site

    def plan_site(self: Workbench, *asked: object, with_alternatives: bool = True) -> SitePlan:
        planned.append(with_alternatives)
        return really(self, *asked, with_alternatives=with_alternatives)  # type: ignore[arg-type]

    monkeypatch.setattr(Workbench, "plan_site", plan_site)
    window.actions_by_id[ActionId.INSTALLER].trigger()
    panel = workplace.installer_page.pack_panel
    qtbot.waitUntil(lambda: panel.document is not None, timeout=20_000)
    assert planned == [False], "no paper of the installer shows other sets"
    alone = panel.document
    workplace.show_bill()
    qtbot.waitUntil(lambda: workplace.bill_page.document is not None, timeout=60_000)
    assert planned == [False, True]
    # each of these makes a paper of the sets that are there, which is the paper of before
    window.actions_by_id[ActionId.INSTALLER].trigger()
    panel.scope_box.setCurrentIndex(panel.scope_box.findData(Scope.POSITION))
    panel.scope_box.setCurrentIndex(panel.scope_box.findData(Scope.ALL))
    qtbot.waitUntil(lambda: panel.document is not None, timeout=20_000)
    assert panel.document == alone
    workplace.session.look_at(workplace.session.survey.positions[-1].label)
    assert panel.document is not None, "a look at another position changes nothing of the pack"
    assert planned == [False, True]
    # what a person asks for again is planned again, and so is another survey
    panel.show_button.click()
    qtbot.waitUntil(lambda: panel.document is not None, timeout=20_000)
    assert planned == [False, True, False]
    workplace.context.edit(with_a_note(workplace.session.survey), "A note")
    qtbot.waitUntil(lambda: len(planned) == 4 and panel.document is not None, timeout=20_000)
    assert panel.document != alone


def with_a_note(survey: Survey) -> Survey:
    first, *others = survey.positions
    noted = first.model_copy(update={"notes": "behind the gate"})
    return survey.model_copy(update={"positions": (noted, *others)})


def test_a_pack_that_is_stopped_stays_so_until_it_is_asked_for(
    window: MainWindow, workplace: Workplace, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    go_on = threading.Event()

    def slow(watching: Progress | None) -> SitePlan:
        assert watching is not None
        while not watching.should_stop():
            watching.on_progress(3, 1_000)
            go_on.wait(0.01)
        raise Cancelled

    monkeypatch.setattr(workplace.context.sets, "whole_site", lambda **_: slow)
    window.actions_by_id[ActionId.INSTALLER].trigger()
    panel = workplace.installer_page.pack_panel
    row = panel.paper.progress.row
    qtbot.waitUntil(lambda: (row.bar.isVisible(), row.bar.value(), row.bar.maximum()) == (True, 3, 1_000))
    qtbot.mouseClick(row.stop_button, Qt.MouseButton.LeftButton)
    assert panel.state_label.text() == "Stopped."
    panel.refresh()
    assert panel.paper.progress.label.text() == "Stopped."
    monkeypatch.undo()
    panel.show_button.click()
    qtbot.waitUntil(lambda: panel.document is not None, timeout=20_000)
    assert panel.paper.progress.isHidden()
