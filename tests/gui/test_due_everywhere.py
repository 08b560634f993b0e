"""The work due at all stations in the window, and certificates of it; in a book of its own, whose records are told."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from paper_text import text_of
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.documents.own_files import FileForm
from spoutline.gui.actions import ActionId
from spoutline.gui.pages.installer.pack_panel import PaperKind, Scope
from spoutline.gui.pages.installer.page import InstallerPage
from spoutline.gui.roles import Role
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.due_work import StationDue
from spoutline.model.inspection import InspectionItemId
from spoutline.model.record import InspectionEntry
from spoutline.model.survey import Survey


@pytest.fixture
def bench(database_to_copy: Path, tmp_path: Path) -> Iterator[Workbench]:
    """Yield use cases over a book of which no other test knows."""
    shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    yield bench
    bench.close()


@pytest.fixture
def page(window: MainWindow, workplace: Workplace) -> InstallerPage:
    window.actions_by_id[ActionId.INSTALLER].trigger()
    return workplace.installer_page


def test_a_row_of_the_work_due_everywhere_leads_to_its_station(
    page: InstallerPage, bench: Workbench, survey: Survey, qtbot: QtBot, tmp_path: Path
) -> None:
    other = survey.model_copy(update={"site": survey.site.model_copy(update={"name": "Fern Pond Due Works"})})
    stored = bench.book().create(other)
    # 20 November, and the same day a year later: International Fire Code 2018 clause 2305.2.4 asks for it yearly
    bench.packing().records().add_inspection(
        InspectionEntry(
            site=other.site.name, position="A2", item=InspectionItemId.SHEAR_VALVE, done_on=date(2025, 11, 20)
        )
    )
    panel = page.stations_panel
    panel._today = lambda: date(2026, 11, 29)
    page.tabs.setCurrentWidget(panel)

    def here() -> list[StationDue]:
        return [one for one in panel.model.records if one.site.name == other.site.name]

    qtbot.waitUntil(lambda: bool(here()), timeout=60_000)
    (row,) = (one for one in here() if one.due.item.id is InspectionItemId.SHEAR_VALVE)
    assert (row.due.next_due, row.overdue_days(date(2026, 11, 29))) == (date(2026, 11, 20), 9)
    assert {one.due.position for one in here()} == {"A2"}
    assert f"{other.site.name} (A1)" in panel.state_label.text()
    days = [one.due.next_due for one in panel.model.records]
    assert days == sorted(days)
    path = tmp_path / "due.csv"
    panel.save_as(path, FileForm.CSV)
    qtbot.waitUntil(path.exists, timeout=10_000)
    assert f"{other.site.name}," in path.read_text(encoding="utf-8-sig")
    proxy = panel.table.model()
    at = next(n for n in range(proxy.rowCount()) if proxy.index(n, 0).data(Role.RECORD) is row)
    name = proxy.index(at, 3)
    assert name.data(Role.POSITIONS) == ("A2",)
    panel.table.scrollTo(name)
    qtbot.mouseClick(panel.table.viewport(), Qt.MouseButton.LeftButton, pos=panel.table.visualRect(name).center())
    assert (page._context.session.stored.id, page._context.session.label) == (stored.id, "A2")
    assert page.tabs.currentWidget() is page.inspection_panel
    assert page.inspection_panel.service_edit.day("") == date(2025, 11, 20)


def test_the_work_due_everywhere_is_saved_as_a_paper(
    page: InstallerPage, bench: Workbench, survey: Survey, qtbot: QtBot, tmp_path: Path
) -> None:
    name = survey.site.name
    bench.packing().records().add_inspection(
        InspectionEntry(site=name, position="A2", item=InspectionItemId.SHEAR_VALVE, done_on=date(2025, 11, 20))
    )
    panel = page.stations_panel
    panel._today = lambda: date(2026, 11, 29)
    page.tabs.setCurrentWidget(panel)
    qtbot.waitUntil(lambda: any(one.site.name == name for one in panel.model.records), timeout=60_000)
    for ending in ("pdf", "html"):
        path = tmp_path / f"due.{ending}"
        panel.hands.save_to(path)
        qtbot.waitUntil(path.exists, timeout=20_000)
    assert "9 d overdue" in (tmp_path / "due.html").read_text(encoding="utf-8")
    assert "Work due at all stations" in text_of(tmp_path / "due.pdf")


def test_certificates_are_shown_where_the_records_hold_a_measurement(
    page: InstallerPage, qtbot: QtBot, tmp_path: Path
) -> None:
    panel, session = page.pack_panel, page._context.session
    panel.scope_box.setCurrentIndex(panel.scope_box.findData(Scope.POSITION))
    panel.kind_box.setCurrentIndex(panel.kind_box.findData(PaperKind.BOND))
    qtbot.waitUntil(lambda: "no reading of the bond test" in panel.state_label.text(), timeout=20_000)
    # the inspection is noted beside the list of what is due, with what was read
    page.tabs.setCurrentWidget(page.inspection_panel)
    inspections = page.inspection_panel
    qtbot.waitUntil(lambda: bool(inspections.due_model.records), timeout=20_000)
    row = next(
        at
        for at in range(inspections.due_table.model().rowCount())
        if inspections.due_table.model().index(at, 0).data(Role.RECORD).item.id is InspectionItemId.CONTINUITY
        and inspections.due_table.model().index(at, 0).data(Role.RECORD).position == session.label
    )
    inspections.due_table.selectRow(row)
    inspections.done_by_edit.setText("Merle Ash")
    inspections.instruments_edit.setText("ohmmeter no. 4411")
    inspections.reading_edit.setText("much")
    inspections.done_button.click()
    assert "Resistance read" in inspections.state_label.text()
    inspections.reading_edit.setText("1.2 kohm")
    inspections.done_button.click()
    page.tabs.setCurrentWidget(panel)
    qtbot.waitUntil(lambda: panel.document is not None, timeout=20_000)
    panel.hands.save_to(tmp_path / "bond.pdf")
    qtbot.waitUntil((tmp_path / "bond.pdf").exists, timeout=20_000)
    told = text_of(tmp_path / "bond.pdf")
    assert "Bond test certificate" in told
    assert "1.2 kΩ" in told
    assert "ohmmeter no. 4411" in told
