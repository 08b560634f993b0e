"""Orders by supplier in the window: columns written in the form, seen at once, kept in the book and saved as files."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterator
from pathlib import Path

import openpyxl
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QPushButton
from pytestqt.qtbot import QtBot

from planning.quoting_terms import terms_of
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.supplier_orders import OrderedFrom, SupplierOrdersDialog
from spoutline.gui.edits.order_columns import ORDER_COLUMNS
from spoutline.gui.window.language import WindowLanguage
from spoutline.model.language import Language
from spoutline.model.quotation import Quotation
from spoutline.model.supplier_layout import OrderContent, OrderUnit
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

DELL = "Larkspindle Couplings"


@pytest.fixture
def desk(own_database: Path) -> Iterator[Workbench]:
    """Yield use cases over a book of its own: what is kept in it is nobody else's."""
    bench = open_workbench(Settings(database=str(own_database)))
    yield bench
    bench.close()


@pytest.fixture
def quotation(desk: Workbench) -> Quotation:
    terms = terms_of(options=({"title": "Single-use", "breakaway": "single_use"},), buying=({"percent": 40},))
    return desk.quoting().quote(demo_survey("marina"), terms, Display(UnitSystem.US)).quotation


@pytest.fixture
def opened(qtbot: QtBot, desk: Workbench, quotation: Quotation) -> SupplierOrdersDialog:
    ordered = OrderedFrom.of_option(quotation, 1, "Single-use")
    dialog = SupplierOrdersDialog(desk.supplier_orders(), ordered, lambda: ())
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog


def turn_to(dialog: SupplierOrdersDialog, supplier: str) -> None:
    rows = [row for row in range(dialog.list.count()) if dialog.list.item(row).text().startswith(supplier)]
    dialog.list.setCurrentRow(rows[0])


def shown(dialog: SupplierOrdersDialog) -> list[list[str]]:
    model = dialog.preview
    heads = [str(model.headerData(at, Qt.Orientation.Horizontal)) for at in range(model.columnCount())]
    return [heads, *([str(model.index(row, at).data()) for at in range(len(heads))] for row in range(model.rowCount()))]


def test_every_supplier_is_there_and_their_pieces_are_those_of_the_quotation(
    opened: SupplierOrdersDialog, quotation: Quotation
) -> None:
    (option,) = quotation.options
    assert opened.list.count() == len({line.maker for line in option.lines})
    pieces = [int(opened.list.item(row).text().rpartition(" ")[2]) for row in range(opened.list.count())]
    assert sum(pieces) == sum(line.ordered for line in option.lines)


def test_columns_are_written_seen_kept_and_there_again(
    qtbot: QtBot, opened: SupplierOrdersDialog, desk: Workbench, quotation: Quotation
) -> None:
    turn_to(opened, DELL)
    opened.columns.written.emit(
        (
            ("Article", OrderContent.PART_NUMBER, OrderUnit.NONE, ""),
            ("Qty", OrderContent.QUANTITY, OrderUnit.PIECES, ""),
            ("Account", OrderContent.FIXED, OrderUnit.NONE, "4711"),
        )
    )
    mine = [line for line in quotation.options[0].lines if line.maker == DELL]
    assert mine
    wanted = [["Article", "Qty", "Account"], *([line.part_number, str(line.ordered), "4711"] for line in mine)]
    assert shown(opened) == wanted
    opened.boxes["separator"].setCurrentIndex(1)
    qtbot.mouseClick(opened.keep_button, Qt.MouseButton.LeftButton)
    kept = desk.supplier_orders().named(DELL)
    assert [column.heading for column in kept.columns] == ["Article", "Qty", "Account"]
    assert kept.separator == "semicolon"
    turn_to(opened, opened.list.item(0).text())
    turn_to(opened, DELL)
    assert shown(opened) == wanted
    assert opened.name_edit.isReadOnly()
    qtbot.mouseClick(opened.forget_button, Qt.MouseButton.LeftButton)
    assert desk.supplier_orders().of(DELL) is None
    assert shown(opened)[0][1] == "Part number"


def test_what_cannot_be_is_told_where_it_stands_and_is_not_kept(opened: SupplierOrdersDialog, desk: Workbench) -> None:
    turn_to(opened, DELL)
    opened.columns.written.emit((("Qty", OrderContent.QUANTITY, OrderUnit.POUNDS, ""),))
    assert "pieces, packs" in opened.fault_label.text()
    assert not opened.keep_button.isEnabled()
    assert desk.supplier_orders().all() == ()
    opened.columns.written.emit((("Qty", OrderContent.QUANTITY, OrderUnit.PACKS, ""),))
    assert not opened.fault_label.isVisible()
    assert opened.keep_button.isEnabled()


def test_files_of_one_and_of_all_suppliers_hold_what_was_seen(
    opened: SupplierOrdersDialog, quotation: Quotation, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    turn_to(opened, DELL)
    seen = shown(opened)
    opened.save(tmp_path / "one.csv", FileForm.CSV)
    text = (tmp_path / "one.csv").read_bytes().decode("utf-8-sig")
    assert list(csv.reader(io.StringIO(text, newline=""))) == seen
    opened.save(tmp_path / "one.xlsx", FileForm.XLSX)
    sheet = openpyxl.load_workbook(tmp_path / "one.xlsx").active
    assert sheet is not None
    assert [str(cell.value) for cell in next(sheet.iter_rows())] == seen[0]
    opened.boxes["file_form"].setCurrentIndex(1)
    opened.keep_button.click()
    folder = tmp_path / "all"
    folder.mkdir()
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(folder))
    (button,) = (one for one in opened.findChildren(QPushButton) if one.text() == "Save &all…")
    button.click()
    files = sorted(folder.iterdir())
    assert len(files) == opened.list.count()
    (book,) = (path for path in files if path.suffix == ".xlsx")
    assert "-".join(DELL.split()) in book.name
    sheet = openpyxl.load_workbook(book).active
    assert sheet is not None
    head, *body = list(sheet.values)
    rows = [dict(zip(map(str, head), map(str, row), strict=True)) for row in body]
    for path in files:
        if path != book:
            rows += csv.DictReader(path.read_text(encoding="utf-8-sig").splitlines())
    found = sorted((row["Part number"], int(row["Quantity"])) for row in rows)
    assert found == sorted((line.part_number, line.ordered) for line in quotation.options[0].lines)


def test_every_content_has_words_and_the_dialog_holds_in_every_language(
    qtbot: QtBot, desk: Workbench, quotation: Quotation, qapp: QApplication
) -> None:
    content, unit = ORDER_COLUMNS.columns[1], ORDER_COLUMNS.columns[2]
    assert {option.value for option in content.options} == set(OrderContent)
    assert {option.value for option in unit.options} == set(OrderUnit)
    try:
        for language in Language:
            WindowLanguage().use(language)
            ordered = OrderedFrom.of_option(quotation, 1, "Single-use")
            dialog = SupplierOrdersDialog(desk.supplier_orders(), ordered, lambda: ())
            qtbot.addWidget(dialog)
            least = dialog.minimumSizeHint()
            assert (least.width() <= 1240, least.height() <= 640) == (True, True), (language, least)
    finally:
        WindowLanguage().use(Language.ENGLISH)


def test_everything_that_takes_the_keyboard_is_named(opened: SupplierOrdersDialog) -> None:
    act: Callable[[], None] = opened.list.setFocus
    act()
    named = [opened.list, opened.name_edit, opened.makers_edit, opened.preview_table, *opened.boxes.values()]
    assert all(widget.accessibleName() for widget in named)
