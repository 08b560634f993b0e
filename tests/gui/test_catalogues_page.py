"""The keeper's page, driven as a person does: begin a catalog, take a supplier's table over, look, publish, plan."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QWidget
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.table_repair import RepairKind, TableRepairDialog
from spoutline.gui.pages.catalogues.page import CataloguesPage
from spoutline.gui.roles import Role, Tone
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.part_ref import PartRef
from spoutline.planning.table_intake.repairs import ChangeWhere, SkipWhere

MAKER = "Quillwort Works"
# maker, numbers and prices are invented
PARTS = """\
Part No.;Description;Bore (in);Length;Materials;Price
;;in;ft;;USD
Curb hoses;;;;;
QX-100;3/4" x 9' hardwall;3/4;9;aluminum, nbr;$12.50
QX-101;1" x 10' hardwall;1;10 ft;aluminum nbr;1,250.00
QX-102;1" x 12' hardwall;1;12;stainless steel nbr;1,250
Total;;;;;2,512.50
"""
NUMBER, BORE, MATERIALS, PRICE = 0, 2, 4, 5  # columns of it


@pytest.fixture
def bench(database_to_copy: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Yield use cases over a book and a data folder of the test's own: what it plans with is changed here."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    yield bench
    bench.close()


@pytest.fixture
def page(window: MainWindow, workplace: Workplace, qtbot: QtBot) -> CataloguesPage:
    qtbot.keyClick(window, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    page = workplace.catalogues_page
    qtbot.waitUntil(lambda: page.in_hand.row is not None, timeout=20_000)
    return page


@pytest.fixture
def parts(tmp_path: Path) -> Path:
    path = tmp_path / "parts.csv"
    path.write_text(PARTS, encoding="utf-8")
    return path


def click(qtbot: QtBot, widget: QWidget) -> None:
    assert widget.isEnabled(), widget
    qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)


def begin(page: CataloguesPage, qtbot: QtBot, name: str) -> None:
    """Begin a catalog by name and Return; its draft is in hand then."""
    qtbot.keyClicks(page.shelf_panel.name_edit, name)
    qtbot.keyClick(page.shelf_panel.name_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.in_hand.draft_name == name, timeout=20_000)


def open_parts(page: CataloguesPage, qtbot: QtBot, path: Path) -> None:
    """Open a table and say its maker."""
    panel = page.import_panel
    page.tabs.setCurrentWidget(panel)
    panel.open_file(path)
    qtbot.waitUntil(lambda: panel.opened is not None and panel.opened.table.place == str(path), timeout=20_000)
    if not panel.options.maker_edit.text():
        qtbot.keyClicks(panel.options.maker_edit, MAKER)
        qtbot.keyClick(panel.options.maker_edit, Qt.Key.Key_Return)
    looked(page, qtbot)


def looked(page: CataloguesPage, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: page.import_panel.look is not None, timeout=20_000)


def shown(page: CataloguesPage, row: int, column: int) -> str:
    return str(page.import_panel.preview.index(row, column).data())


def row_of(page: CataloguesPage, number: str) -> int:
    rows = page.import_panel.preview.rows
    return next(place for place, row in enumerate(rows) if row.texts.get("number") == number)


def type_into(page: CataloguesPage, qtbot: QtBot, row: int, column: int, text: str) -> None:
    """Click on a cell, write over it, press Return."""
    table = page.import_panel.table
    index = page.import_panel.preview.index(row, column)
    table.scrollTo(index)
    QTest.mouseClick(
        table.viewport(),
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
        table.visualRect(index).center(),
    )
    qtbot.keyClick(table, Qt.Key.Key_F2)
    editor = table.indexWidget(index)
    assert editor is not None
    qtbot.keyClick(editor, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(editor, text)
    qtbot.keyClick(editor, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: table.indexWidget(index) is None, timeout=20_000)  # Qt writes and closes when next idle


def choose(box: QComboBox, value: str) -> None:
    """Choose as a click on the line of a list does."""
    box.setCurrentIndex(box.findData(value))
    box.activated.emit(box.currentIndex())


def repaired(page: CataloguesPage, qtbot: QtBot, parts: Path) -> None:
    """Bring the table to where nothing is wrong: the nearest word everywhere, a price written anew."""
    open_parts(page, qtbot, parts)
    type_into(page, qtbot, row_of(page, "QX-102"), PRICE, "1250")
    looked(page, qtbot)
    panel = page.import_panel
    qtbot.waitUntil(panel.findings.replace_button.isEnabled, timeout=20_000)
    click(qtbot, panel.findings.replace_button)
    looked(page, qtbot)


def test_demonstration_is_listed_with_who_plans_with_it_and_cannot_be_written_to(page: CataloguesPage) -> None:
    panel = page.shelf_panel
    (row,) = [one for one in panel.model.records if one.facts.name == DEMONSTRATION][:1]
    assert row.edition is not None
    assert (row.by_book, row.by_survey) == (True, True)
    assert not panel.publish_button.isEnabled()
    assert not panel.discard_button.isEnabled()


def test_a_name_that_cannot_stand_is_told(page: CataloguesPage, qtbot: QtBot) -> None:
    qtbot.keyClicks(page.shelf_panel.name_edit, "demonstration")
    click(qtbot, page.shelf_panel.create_button)
    qtbot.waitUntil(lambda: "capitals do not count" in page.shelf_panel.fault_label.text(), timeout=20_000)
    assert page.in_hand.draft_name == ""


def test_cells_are_typed_and_each_fault_and_question_stands_at_its_cell(
    page: CataloguesPage, qtbot: QtBot, parts: Path
) -> None:
    begin(page, qtbot, "Office list")
    open_parts(page, qtbot, parts)
    panel = page.import_panel
    first = row_of(page, "QX-100")
    assert shown(page, first, BORE) == "19.05 mm"  # 3/4 in of 25.4 mm, NIST SP 811 B.8
    assert shown(page, first, 3) == "2.7432 m"  # 9 ft of 0.3048 m, NIST SP 811 B.8
    assert shown(page, first, PRICE) == "12.50 USD"
    tones = {panel.preview.index(row_of(page, "QX-102"), PRICE).data(Role.TONE)}
    tones.add(panel.preview.index(first, MATERIALS).data(Role.TONE))
    assert tones == {Tone.QUESTION, Tone.BAD}
    told = [(report.address.rsplit(" ", 1)[-1], report.nearest) for report in panel.findings.report_model.records]
    assert told == [("E4", "aluminium"), ("E5", "aluminium"), ("F6", "1250")]
    assert not panel.take_button.isEnabled()
    assert [panel.preview.headerData(row, Qt.Orientation.Vertical) for row in range(5)] == ["3", "4", "5", "6", "7"]


def test_a_cell_is_mended_where_it_stands_and_a_word_everywhere(
    page: CataloguesPage, qtbot: QtBot, parts: Path, bench: Workbench
) -> None:
    begin(page, qtbot, "Office list")
    repaired(page, qtbot, parts)
    panel = page.import_panel
    assert shown(page, row_of(page, "QX-102"), PRICE) == "1250.00 USD"
    assert shown(page, row_of(page, "QX-101"), MATERIALS) == "aluminium nbr"
    assert panel.findings.step_list.count() == 2
    assert [str(change.ref) for change in panel.findings.change_model.records] == [
        f"{MAKER} QX-100",
        f"{MAKER} QX-101",
        f"{MAKER} QX-102",
    ]
    click(qtbot, panel.take_button)
    draft = EditionRef("Office list", is_draft=True)
    shelf = bench.catalogues().shelf()
    qtbot.waitUntil(lambda: shelf.entry(draft, PartRef("QX-102", MAKER)) is not None, timeout=20_000)
    entry = shelf.entry(draft, PartRef("QX-102", MAKER))
    assert entry is not None
    assert [(price.currency, price.minor) for price in entry.prices] == [("USD", 125_000)]
    qtbot.waitUntil(lambda: page.in_hand.row is not None and page.in_hand.row.facts.draft_parts == 3, timeout=20_000)


def test_the_next_table_of_the_supplier_is_read_as_the_last_one(
    page: CataloguesPage, qtbot: QtBot, parts: Path, tmp_path: Path
) -> None:
    begin(page, qtbot, "Office list")
    repaired(page, qtbot, parts)
    panel = page.import_panel
    click(qtbot, panel.take_button)
    qtbot.waitUntil(lambda: page.in_hand.row is not None and page.in_hand.row.facts.draft_parts == 3, timeout=20_000)
    later = tmp_path / "july.csv"
    later.write_text(PARTS.replace("$12.50", "$15.10").replace("1,250\n", "1250\n"), encoding="utf-8")
    open_parts(page, qtbot, later)
    assert panel.opened is not None
    assert panel.opened.is_recognised
    assert panel.options.maker_edit.text() == MAKER
    assert panel.take_button.isEnabled()  # the word is replaced as last time
    (change,) = panel.findings.change_model.records
    assert [(one.before, one.after) for one in change.fields] == [("12.50", "15.10")]
    assert round(change.moves[0].share, 3) == 0.208  # 15.10 / 12.50 - 1, by hand


def test_a_column_is_left_out_and_a_step_taken_back(page: CataloguesPage, qtbot: QtBot, parts: Path) -> None:
    begin(page, qtbot, "Office list")
    open_parts(page, qtbot, parts)
    panel = page.import_panel
    choose(panel.column_list.field_boxes[MATERIALS], "")
    looked(page, qtbot)
    assert [report.address.rsplit(" ", 1)[-1] for report in panel.findings.report_model.records] == ["F6"]
    click(qtbot, panel.back_button)
    looked(page, qtbot)
    assert len(panel.findings.report_model.records) == 3
    assert panel.column_list.field_boxes[MATERIALS].currentData() == "materials"


def test_a_row_is_left_out_and_the_step_taken_away(page: CataloguesPage, qtbot: QtBot, parts: Path) -> None:
    begin(page, qtbot, "Office list")
    open_parts(page, qtbot, parts)
    findings = page.import_panel.findings
    findings.report_table.selectRow(2)
    click(qtbot, findings.skip_button)
    looked(page, qtbot)
    assert [report.row for report in findings.report_model.records] == [4, 5]
    findings.setCurrentIndex(3)
    findings.step_list.setCurrentRow(0)
    click(qtbot, findings.away_button)
    looked(page, qtbot)
    assert [report.row for report in findings.report_model.records] == [4, 5, 6]


def test_two_edits_of_one_cell_before_the_table_is_read_anew_both_hold(
    page: CataloguesPage, qtbot: QtBot, parts: Path
) -> None:
    begin(page, qtbot, "Office list")
    open_parts(page, qtbot, parts)
    row = row_of(page, "QX-102")
    for text in ("1300", "1400"):
        page.import_panel.write_cells({(row, PRICE): text})
    looked(page, qtbot)
    assert shown(page, row, PRICE) == "1400.00 USD"


@pytest.mark.parametrize(
    ("kind", "step"),
    [
        (RepairKind.CHANGE, ChangeWhere(where="materials", shows="steel", field="remark", to="ask")),
        (RepairKind.LEAVE_OUT, SkipWhere(where="materials", shows="steel")),
    ],
)
def test_many_rows_are_changed_by_what_they_show(
    page: CataloguesPage, qtbot: QtBot, tmp_path: Path, kind: RepairKind, step: object
) -> None:
    begin(page, qtbot, "Office list")
    path = tmp_path / "more.csv"
    path.write_text("Part No.;Materials;Remark;Price USD\nQX-1;steel;;1.00\nQX-2;brass;;2.00\n", encoding="utf-8")
    open_parts(page, qtbot, path)
    panel = page.import_panel
    assert panel.opened is not None
    dialog = TableRepairDialog(panel.opened.mapping, "materials", "steel", parent=panel)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.kind_box.setCurrentIndex(dialog.kind_box.findData(kind))
    dialog.field_box.setCurrentIndex(dialog.field_box.findData("remark"))
    if dialog.by_edit.isVisible():
        qtbot.keyClicks(dialog.by_edit, "ask")
    click(qtbot, dialog.accept_button)
    assert dialog.step == step
    panel.repair(dialog.step)
    looked(page, qtbot)
    first = panel.preview.rows[0]
    assert first.kind == ("part" if kind is RepairKind.CHANGE else "skipped")
    assert first.texts.get("remark", "") == ("ask" if kind is RepairKind.CHANGE else "")


def test_a_file_that_is_no_table_is_told_and_the_sheet_can_still_be_chosen(
    page: CataloguesPage, qtbot: QtBot, tmp_path: Path
) -> None:
    import openpyxl

    book = openpyxl.Workbook()
    book.active.append(["Dear customer"])
    prices = book.create_sheet("Prices")
    for row in (["Part No.", "Description", "Price USD"], ["QX-1", "a nozzle", 12.5]):
        prices.append(row)
    path = tmp_path / "prices.xlsx"
    book.save(path)
    begin(page, qtbot, "Office list")
    panel = page.import_panel
    page.tabs.setCurrentWidget(panel)
    panel.open_file(path)
    qtbot.waitUntil(lambda: "titles" in panel.state_label.text(), timeout=20_000)
    choose(panel.options.sheet_box, "Prices")
    qtbot.waitUntil(lambda: panel.opened is not None, timeout=20_000)
    qtbot.keyClicks(panel.options.maker_edit, MAKER)
    qtbot.keyClick(panel.options.maker_edit, Qt.Key.Key_Return)
    looked(page, qtbot)
    assert shown(page, 0, NUMBER) == "QX-1"


def test_entries_are_found_as_one_types_with_what_each_lacks(page: CataloguesPage, qtbot: QtBot, parts: Path) -> None:
    begin(page, qtbot, "Office list")
    repaired(page, qtbot, parts)
    click(qtbot, page.import_panel.take_button)
    qtbot.waitUntil(lambda: page.in_hand.row is not None and page.in_hand.row.facts.draft_parts == 3, timeout=20_000)
    panel = page.entries_panel
    page.tabs.setCurrentWidget(panel)
    qtbot.waitUntil(lambda: len(panel.model.records) == 3, timeout=20_000)
    qtbot.keyClicks(panel.search_edit, "qx-101 hardwall")
    qtbot.waitUntil(lambda: [line.entry.number for line in panel.model.records] == ["QX-101"], timeout=20_000)
    (line,) = panel.model.records
    assert {"lead_days", "mass_kg"} <= set(line.lacking)
    assert "bore_mm" not in line.lacking
    panel.search_edit.clear()
    qtbot.mouseClick(panel.lacking_box, Qt.MouseButton.LeftButton, pos=QPoint(8, panel.lacking_box.height() // 2))
    assert panel.lacking_box.isChecked()
    qtbot.waitUntil(lambda: len(panel.model.records) == 3, timeout=20_000)


def test_what_lacks_is_among_the_health_and_leads_to_its_entry(page: CataloguesPage, qtbot: QtBot, parts: Path) -> None:
    begin(page, qtbot, "Office list")
    repaired(page, qtbot, parts)
    click(qtbot, page.import_panel.take_button)
    qtbot.waitUntil(lambda: page.in_hand.row is not None and page.in_hand.row.facts.draft_parts == 3, timeout=20_000)
    panel = page.health_panel
    page.tabs.setCurrentWidget(panel)
    click(qtbot, panel.look_button)
    qtbot.waitUntil(lambda: len(panel.model.records) == 3, timeout=60_000)
    panel.table.setFocus()
    panel.table.selectRow(1)
    panel.table.activated.emit(panel.sorted.index(1, 0))
    assert page.tabs.currentWidget() is page.entries_panel
    assert page.entries_panel.search_edit.text() == panel.sorted.index(1, 0).data(Role.RECORD).ref.number


def test_a_draft_is_published_exported_and_planned_with(
    page: CataloguesPage, workplace: Workplace, qtbot: QtBot, parts: Path, tmp_path: Path, bench: Workbench
) -> None:
    begin(page, qtbot, "Office list")
    repaired(page, qtbot, parts)
    click(qtbot, page.import_panel.take_button)
    qtbot.waitUntil(lambda: page.in_hand.row is not None and page.in_hand.row.facts.draft_parts == 3, timeout=20_000)
    panel = page.shelf_panel
    page.tabs.setCurrentWidget(panel)
    click(qtbot, panel.publish_button)
    qtbot.waitUntil(lambda: "publisher" in panel.fault_label.text(), timeout=20_000)
    qtbot.keyClicks(panel.note_edit, "First prices")
    qtbot.keyClicks(panel.publisher_edit, "Ada Fenn")
    click(qtbot, panel.publish_button)
    qtbot.waitUntil(
        lambda: page.in_hand.row is not None and page.in_hand.row.ref == EditionRef("Office list", 1), timeout=20_000
    )
    row = page.in_hand.row
    assert row is not None
    assert row.edition is not None
    assert (row.edition.publisher, row.edition.notes) == ("Ada Fenn", "First prices")
    assert row.edition.published_on == date.today()
    assert (row.edition.parts_count, row.edition.described_count) == (3, 0)
    path = tmp_path / "office.zip"
    panel.export_to(path)
    qtbot.waitUntil(path.exists, timeout=20_000)
    assert path.read_bytes() == bench.catalogues().export(EditionRef("Office list", 1))
    plans_with_it(page, workplace, qtbot, bench)


def plans_with_it(page: CataloguesPage, workplace: Workplace, qtbot: QtBot, bench: Workbench) -> None:
    """Let the survey, then the book plan with the edition in hand; undo takes the survey's back."""
    panel, session = page.shelf_panel, workplace.session
    click(qtbot, panel.survey_button)
    assert session.survey.catalogue == "Office list"
    label = session.label
    qtbot.waitUntil(lambda: _has_no_set(workplace, label), timeout=60_000)
    session.undo_stack.undo()
    assert session.survey.catalogue is None
    qtbot.waitUntil(lambda: not _has_no_set(workplace, label) and workplace.plans.plan(label) is not None)
    qtbot.waitUntil(lambda: page.in_hand.row is not None and not page.in_hand.row.by_survey, timeout=20_000)
    click(qtbot, panel.book_button)
    qtbot.waitUntil(lambda: bench.catalogues().chosen() == EditionRef("Office list"), timeout=20_000)
    qtbot.waitUntil(lambda: _has_no_set(workplace, label), timeout=60_000)


def _has_no_set(workplace: Workplace, label: str) -> bool:
    """Say whether nothing could be planned: no part of the new catalog is described."""
    plan = workplace.plans.plan(label)
    return bool(workplace.plans.trouble(label)) or (plan is not None and plan.chosen is None)


@pytest.mark.parametrize("tab", range(7))
def test_no_tab_is_cut_off_on_a_small_screen(
    page: CataloguesPage, window: MainWindow, qtbot: QtBot, parts: Path, tab: int
) -> None:
    begin(page, qtbot, "Office list")
    open_parts(page, qtbot, parts)
    window.resize(1280, 720)
    page.tabs.setCurrentIndex(tab)
    QApplication.processEvents()
    assert (window.width(), window.height()) == (1280, 720)
    panel = page.tabs.currentWidget()
    for child in panel.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly):
        assert not child.isVisible() or panel.rect().contains(child.geometry()), child


def test_the_menu_names_the_page(window: MainWindow) -> None:
    assert window.actions_by_id[ActionId.CATALOGUES].text() == "Ca&talogs"
