"""Van and store in the window: a scanner types into a field that keeps the focus; an entry is undone by another one."""

from __future__ import annotations

import csv
import shutil
from collections.abc import Iterator
from io import StringIO
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from paper_text import text_of
from short_terms import SINGLE_USE, short_terms
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.stock import Asked
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.close_count import CloseCountDialog
from spoutline.gui.dialogs.supplier_orders import SupplierOrdersDialog
from spoutline.gui.pages.installer.stock_panel import StockPanel
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.scanned_item import SHOWN_SEPARATOR
from spoutline.model.stock_entry import Movement, StockLine

PART = "QW-N103"


@pytest.fixture
def bench(database_to_copy: Path, tmp_path: Path) -> Iterator[Workbench]:
    """Yield use cases over a book of which no other test knows."""
    shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    yield bench
    bench.close()


@pytest.fixture
def panel(window: MainWindow, workplace: Workplace, qtbot: QtBot) -> StockPanel:
    window.actions_by_id[ActionId.INSTALLER].trigger()
    page = workplace.installer_page
    page.tabs.setCurrentWidget(page.stock_panel)
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is page.stock_panel.scan.scan_edit, timeout=10_000)
    return page.stock_panel


def scanned(panel: StockPanel, qtbot: QtBot, code: str) -> None:
    """Type a code into whatever has the focus, as a scanner does, with Return behind it."""
    field = QApplication.focusWidget()
    assert field is panel.scan.scan_edit
    qtbot.keyClicks(field, code)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def test_scanning_counts_and_the_field_is_ready_for_the_next_code(
    panel: StockPanel, bench: Workbench, qtbot: QtBot
) -> None:
    panel.scan.place_box.setEditText("Van 7")
    for _ in range(3):
        scanned(panel, qtbot, PART)
        assert panel.scan.scan_edit.text() == ""
    scanned(panel, qtbot, "no-such-part")
    assert "no-such-part" in panel.scan.state_label.text()
    assert panel.scan.scan_edit.selectedText() == "no-such-part"  # the next scan takes its place
    scanned(panel, qtbot, PART)
    assert [one.quantity for one in bench.stock().balances()] == [4]
    assert [one.entry.place for one in bench.stock().entries()] == ["Van 7"] * 4
    assert [one.id for one in panel.scan.last_model.records] == [4, 3, 2, 1]
    panel.scan.undo_button.click()  # without one picked the last
    assert bench.stock().entries()[-1].entry.undoes == 4
    panel.scan.last_table.selectRow(3)
    panel.scan.undo_button.click()
    assert [one.quantity for one in bench.stock().balances()] == [2]
    qtbot.waitUntil(lambda: [line.balance.quantity for line in panel.model.records] == [2], timeout=10_000)


def test_a_book_without_a_van_tells_no_figures_of_a_job(panel: StockPanel, qtbot: QtBot) -> None:
    panel.job_box.setChecked(True)  # all of it is short, and not none
    qtbot.waitUntil(lambda: "count or receive something first" in panel.lines_label.text(), timeout=10_000)
    assert not any(letter.isdigit() for letter in panel.lines_label.text())
    assert not panel.order_button.isEnabled()


def test_the_separator_of_a_scanner_stays_in_the_code(panel: StockPanel, qtbot: QtBot) -> None:
    qtbot.keyClicks(panel.scan.scan_edit, "10A")
    qtbot.keyClick(panel.scan.scan_edit, Qt.Key.Key_BracketRight, Qt.KeyboardModifier.ControlModifier)
    pressed = QKeyEvent(QEvent.Type.KeyPress, 0, Qt.KeyboardModifier.NoModifier, "\x1d")
    QApplication.sendEvent(panel.scan.scan_edit, pressed)
    assert panel.scan.scan_edit.text() == f"10A{SHOWN_SEPARATOR}{SHOWN_SEPARATOR}"


def test_what_a_job_takes_is_shown_taken_and_put_on_paper(
    panel: StockPanel, bench: Workbench, qtbot: QtBot, tmp_path: Path
) -> None:
    panel.scan.place_box.setEditText("Van")
    panel.job_box.setChecked(True)
    scanned_part = bench.stock()
    panel.scan.movement_box.setCurrentIndex(panel.scan.movement_box.findData(Movement.RECEIVED))
    panel.scan.pieces_edit.setText("5")
    panel.scan.scan_edit.setFocus()
    scanned(panel, qtbot, PART)
    qtbot.waitUntil(lambda: any(line.short for line in panel.model.records), timeout=60_000)
    needed = [line for line in panel.model.records if line.needed]
    assert needed
    missing = next(line for line in needed if line.short)
    panel.scan.movement_box.setCurrentIndex(panel.scan.movement_box.findData(Movement.RECEIVED))
    scanned(panel, qtbot, str(missing.balance.part))
    qtbot.waitUntil(panel.take_button.isEnabled, timeout=60_000)
    for save, path in ((panel.hands.save_to, tmp_path / "job.pdf"), (panel.save_table, tmp_path / "job.csv")):
        save(path)
        qtbot.waitUntil(path.exists, timeout=20_000)
    assert "To take" in text_of(tmp_path / "job.pdf")
    rows = list(csv.DictReader(StringIO((tmp_path / "job.csv").read_text("utf-8-sig"), newline="")))
    assert {row["part_number"] for row in rows} >= {line.balance.part.number for line in needed}
    panel.take_button.click()
    taken = [one.entry for one in scanned_part.entries() if one.entry.movement is Movement.TAKEN]
    assert (missing.balance.part, 1) in {(one.part, one.quantity) for one in taken}
    assert {one.job for one in taken} == {panel._context.session.survey.site.name}


def test_a_level_is_set_for_the_part_picked(panel: StockPanel, bench: Workbench, qtbot: QtBot) -> None:
    scanned(panel, qtbot, PART)
    qtbot.waitUntil(lambda: bool(panel.model.records), timeout=20_000)
    panel.table.selectRow(0)
    panel.least_edit.setText("six")
    panel.level_button.click()
    assert "six" in panel.lines_label.text()
    panel.least_edit.setText("6")
    panel.lot_edit.setText("4")
    panel.level_button.click()
    # one lies there and six are to: five are lacking, two lots of four
    qtbot.waitUntil(lambda: [line.order for line in panel.model.records] == [8], timeout=20_000)
    assert [(one.least, one.lot) for one in bench.book().stock.levels()] == [(6, 4)]


def test_a_job_that_took_its_parts_takes_nothing_twice(panel: StockPanel, bench: Workbench, qtbot: QtBot) -> None:
    site = panel._context.session.survey.site.name
    service = bench.stock()
    service.add([service.entry(Asked(place="Van", movement=Movement.RECEIVED, code=PART, quantity=1))])
    panel.job_box.setChecked(True)
    qtbot.waitUntil(lambda: any(line.short for line in panel.model.records), timeout=60_000)
    part = next(line.balance.part for line in panel.model.records if line.short)
    service.add([service.entry(Asked(place="Van", movement=Movement.RECEIVED, code=str(part), quantity=9))])
    panel.refresh()
    qtbot.waitUntil(panel.take_button.isEnabled, timeout=60_000)
    panel.take_button.click()

    def line_of() -> StockLine:
        return next(line for line in panel.model.records if line.balance.part == part)

    qtbot.waitUntil(lambda: line_of().taken > 0, timeout=60_000)
    assert (line_of().takes, line_of().taken) == (0, line_of().needed)
    assert "Taken already" in panel.lines_label.text()
    assert panel.scan.job_edit.placeholderText() == site
    panel.again_box.setChecked(True)
    qtbot.waitUntil(lambda: line_of().takes > 0, timeout=60_000)
    panel.again_box.setChecked(False)
    panel.scan.job_edit.setText("after the drive-off")
    panel.scan.job_edit.editingFinished.emit()
    qtbot.waitUntil(lambda: line_of().takes > 0 and not line_of().taken, timeout=60_000)
    # somebody else takes for the same job before the button is pressed: nothing is noted twice
    other = Asked(place="Van", movement=Movement.TAKEN, code=str(part), quantity=1, job="after the drive-off")
    service.add([service.entry(other)])
    before = len(service.entries())
    panel.take_button.click()
    assert "look again" in panel.lines_label.text()
    assert len(service.entries()) == before


def test_a_count_is_closed_once_its_list_was_confirmed(
    panel: StockPanel, bench: Workbench, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    service = bench.stock()
    service.add([service.entry(Asked(place="Van", movement=Movement.RECEIVED, code="QW-N106", quantity=4))])
    panel.refresh()
    panel.scan.place_box.setEditText("Van")
    panel.scan.close_button.click()
    assert "count of this place" in panel.scan.state_label.text()
    scanned(panel, qtbot, PART)
    shown: list[tuple[str, int]] = []
    answers = iter((QDialog.DialogCode.Rejected, QDialog.DialogCode.Accepted))

    def exec_(dialog: CloseCountDialog) -> int:
        shown.extend((one.part.number, one.quantity) for one in dialog.model.records)
        assert not dialog.accept_button.isDefault()  # Return of a scanner confirms nothing
        return next(answers)

    monkeypatch.setattr(CloseCountDialog, "exec", exec_)
    panel.scan.close_button.click()
    assert (shown, len(service.entries())) == ([("QW-N106", 4)], 2)
    panel.scan.close_button.click()
    closed = service.entries()[-1].entry
    assert (closed.movement, closed.part.number, closed.quantity) == (Movement.COUNTED, "QW-N106", 0)
    panel.scan.close_button.click()
    assert "found everything" in panel.scan.state_label.text()
    assert len(shown) == 2


def test_what_is_to_be_ordered_is_shown_by_supplier_and_written_as_each_reads_it(
    panel: StockPanel, bench: Workbench, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    service = bench.stock()
    service.add([service.entry(Asked(place="Van", movement=Movement.RECEIVED, code=PART, quantity=1))])
    service.set_level("Van", PART, 6, 4)
    panel.refresh()
    qtbot.waitUntil(panel.order_button.isEnabled, timeout=20_000)
    written: list[Path] = []

    def exec_(dialog: SupplierOrdersDialog) -> int:
        assert dialog.save_all(tmp_path) == 1
        written.extend(tmp_path.glob("*.csv"))
        return 0

    monkeypatch.setattr(SupplierOrdersDialog, "exec", exec_)
    panel.order_button.click()
    (path,) = written
    assert "Quillmere" in path.name
    (row,) = csv.DictReader(path.read_text(encoding="utf-8-sig").splitlines())
    # one lies there and six are to: two lots of four
    assert (row["Part number"], row["Quantity"]) == (PART, "8")


def test_the_spares_of_the_quotation_go_with_the_job(
    panel: StockPanel, bench: Workbench, qtbot: QtBot, tmp_path: Path
) -> None:
    session, service = panel._context.session, bench.quoting()
    bench.stock().add([bench.stock().entry(Asked(place="Van", movement=Movement.RECEIVED, code=PART, quantity=1))])
    panel.job_box.setChecked(True)

    def needed() -> int:
        return sum({line.balance.part: line.needed for line in panel.model.records}.values())

    qtbot.waitUntil(lambda: needed() > 0, timeout=60_000)
    fitted = needed()
    panel.spares_box.setChecked(True)
    assert not panel.spares_box.isChecked(), "the book has no quotation of the station yet"
    terms = tmp_path / "terms.toml"
    rule = '[[spares]]\nkind = "nozzle"\npercent = 100\nsingles = "share"\n'
    terms.write_text(short_terms("SP-1", SINGLE_USE, rule), encoding="utf-8")
    quoted = service.quote(
        session.survey,
        service.terms().read_terms(terms),
        session.display,
        origin=(session.stored.id, session.stored.revision),
    ).quotation
    service.life().keep(quoted, "Odile")
    panel.spares_box.setChecked(True)
    # a hundred percent of the nozzles of two positions
    qtbot.waitUntil(lambda: needed() == fitted + 2, timeout=20_000)
