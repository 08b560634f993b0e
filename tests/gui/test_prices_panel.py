"""Price lists in the window: a price file taken into the draft, and the price of a day asked."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from gui import table_dialogs
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.pages.catalogues.prices_panel import PricesPanel
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_entry import CatalogueEntry

NAME, MAKER = "Office list", "Fennel Works"
# an invented price file; what is expected of it is read off by eye
FILE = "number,group,from_quantity,unit_price\nFX-1,couplings,1,12.50\nFX-1,couplings,10,11.00\n"


@pytest.fixture
def bench(database_to_copy: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Yield use cases over a book of the test's own with a catalogue of one part."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    bench.catalogues().create(NAME)
    with bench.catalogues().shelf().draft(NAME) as desk:
        desk.put((CatalogueEntry(number="FX-1", maker=MAKER),))
    yield bench
    bench.close()


@pytest.fixture
def panel(window: MainWindow, workplace: Workplace, qtbot: QtBot) -> PricesPanel:
    qtbot.keyClick(window, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    page = workplace.catalogues_page
    qtbot.waitUntil(lambda: page.in_hand.row is not None, timeout=20_000)
    rows = page.shelf_panel.model.records
    page.shelf_panel.table.pick_row(next(place for place, row in enumerate(rows) if row.facts.name == NAME))
    page.tabs.setCurrentWidget(page.prices_panel)
    qtbot.waitUntil(page.prices_panel.take_button.isEnabled, timeout=20_000)
    return page.prices_panel


def take(panel: PricesPanel, file: Path, qtbot: QtBot, *, first: str = "2026-07-01") -> None:
    for edit, text in (
        (panel.id_edit, "h2"),
        (panel.maker_edit, MAKER),
        (panel.currency_edit, "USD"),
        (panel.from_edit, first),
        (panel.to_edit, "2026-12-31"),
    ):
        edit.clear()
        QTest.keyClicks(edit, text)
    panel.take_in(file)


def test_a_price_file_is_taken_in_and_asked(panel: PricesPanel, qtbot: QtBot, tmp_path: Path) -> None:
    file = tmp_path / "prices.csv"
    file.write_text(FILE)
    take(panel, file, qtbot)
    qtbot.waitUntil(lambda: len(panel.lists.records) == 1, timeout=20_000)
    assert panel.lists.records[0].valid_to == date(2026, 12, 31)
    QTest.keyClicks(panel.part_edit, "FX-1")
    QTest.keyClicks(panel.day_edit, "2026-08-01")
    panel.quantity_box.setValue(12)
    qtbot.mouseClick(panel.ask_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "11.00 USD" in panel.answer_label.text(), timeout=20_000)
    assert "h2" in panel.answer_label.text()
    panel.day_edit.clear()
    QTest.keyClicks(panel.day_edit, "2027-08-01")
    qtbot.mouseClick(panel.ask_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "No price list applies" in panel.answer_label.text(), timeout=20_000)
    panel.table.pick_row(0)
    panel.table.selectRow(0)
    qtbot.mouseClick(panel.remove_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not panel.lists.records, timeout=20_000)


def test_a_wrong_day_or_file_is_told(panel: PricesPanel, qtbot: QtBot, tmp_path: Path) -> None:
    file = tmp_path / "prices.csv"
    file.write_text(FILE.replace("12.50", "-1"))
    take(panel, file, qtbot, first="soon")
    assert "2027-03-01" in panel.state_label.text()
    take(panel, file, qtbot)
    qtbot.waitUntil(lambda: "unit_price" in panel.state_label.text(), timeout=20_000)
    assert not panel.lists.records


def test_a_suppliers_table_is_repaired_in_place_on_its_way_into_a_list(
    panel: PricesPanel, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    file = tmp_path / "supplier.csv"
    file.write_text("Part no,Description,List price\nFX-1,swivel,$12.50\nFX-2,swivel,13 EUR\nTotal,,25.50\n")

    def mend(dialog: TableIntakeDialog) -> None:
        assert dialog.panel.look is not None
        (report,) = dialog.panel.look.reports
        assert "EUR and the column USD" in report.wanted
        assert not dialog.panel.take_button.isEnabled()
        price = next(place for place, one in enumerate(dialog.panel.preview.columns) if one.slot == report.field)
        dialog.panel.write_cells({(1, price): "13"})
        table_dialogs.looked(qtbot, dialog)
        changes = dialog.panel.look.result.changes
        assert (changes.new, changes.changed, changes.missing) == (2, 0, 0)
        assert changes.changes[1].fields[0].after == "13.00"
        table_dialogs.take(qtbot, dialog)

    def intake(dialog: TableIntakeDialog) -> int:
        table_dialogs.looked(qtbot, dialog)
        mend(dialog)
        return int(dialog.result())

    monkeypatch.setattr(TableIntakeDialog, "exec", intake)
    take_in(panel, file)
    qtbot.waitUntil(lambda: any(one.id == "h9" for one in panel.lists.records), timeout=20_000)
    made = next(one for one in panel.lists.records if one.id == "h9")
    assert [(row.part_number, str(row.breaks[0].unit_price)) for row in made.rows] == [
        ("FX-1", "12.50"),
        ("FX-2", "13.00"),
    ]
    told = "Price list h9: 2 prices. Numbers that no part of the draft has: 1, such as FX-2."
    assert panel.state_label.text() == told


def take_in(panel: PricesPanel, file: Path) -> None:
    for edit, text in (
        (panel.id_edit, "h9"),
        (panel.maker_edit, MAKER),
        (panel.currency_edit, "USD"),
        (panel.from_edit, "2026-07-01"),
        (panel.to_edit, ""),
    ):
        edit.setText(text)
    panel.take_in(file)
