"""Old numbers in the window: kept in the draft of a catalog, followed where a part is asked for or recorded."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QTabWidget
from pytestqt.qtbot import QtBot

from gui.page_rooms import settle
from gui.table_dialogs import drive
from spoutline.bootstrap import Workbench
from spoutline.gui.jobs import JobKey, JobKind, Jobs
from spoutline.gui.pages.catalogues.references_panel import ReferencesPanel
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.part_ref import PartRef

NAME = "Old number list"


@pytest.fixture
def panel(qtbot: QtBot, bench: Workbench, window: MainWindow, workplace: Workplace) -> ReferencesPanel:
    """Return the panel of old numbers over the draft of an own catalogue."""
    if NAME not in {one.name for one in bench.catalogues().all()}:
        bench.catalogues().create(NAME)
    window.verbs.show_catalogues()  # type: ignore[attr-defined]
    page = workplace.catalogues_page
    page.refresh()
    rows = page.shelf_panel.model
    qtbot.waitUntil(lambda: any(one.facts.name == NAME for one in rows.records), timeout=20_000)
    place = next(place for place, one in enumerate(rows.records) if one.facts.name == NAME)
    page.shelf_panel.table.pick_row(place)
    tabs: QTabWidget = page.tabs
    tabs.setCurrentWidget(page.references_panel)
    return page.references_panel


def listed(bench: Workbench) -> list[tuple[str, str]]:
    found = bench.catalogues().shelf().references(EditionRef(NAME, is_draft=True))
    return [(one.number, one.part_number) for one in found]


def test_old_numbers_are_put_listed_followed_exported_and_taken_out(
    qtbot: QtBot, bench: Workbench, panel: ReferencesPanel, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for edit, text in zip(panel.edits, ("Brackwater", "B 100", "Quillwort", "QX-100"), strict=True):
        edit.clear()
        qtbot.keyClicks(edit, text)
    qtbot.mouseClick(panel.put_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: listed(bench) == [("B 100", "QX-100")], timeout=20_000)
    table = tmp_path / "numbers.csv"
    table.write_text("old number,old maker,part number,part maker\nC-1,Aldertarn,B 100,Brackwater\n", "utf-8")
    drive(monkeypatch, qtbot, table)
    panel.import_table()
    qtbot.waitUntil(lambda: len(panel.model.records) == 2, timeout=20_000)
    qtbot.keyClicks(panel.search_edit, "c1")
    qtbot.waitUntil(lambda: "C-1 → Brackwater B 100" in panel.way_label.text(), timeout=20_000)
    panel.search_edit.clear()
    qtbot.waitUntil(lambda: len(panel.model.records) == 2, timeout=20_000)
    written = tmp_path / "out.csv"
    panel.export_to(written)
    qtbot.waitUntil(written.exists, timeout=20_000)
    assert "C-1,Aldertarn,B 100,Brackwater,equivalent," in written.read_text("utf-8-sig")
    table.write_text("old number,old maker,part number,part maker\nB 100,Brackwater,C-1,Aldertarn\n", "utf-8")
    told: list[str] = []
    drive(monkeypatch, qtbot, table, lambda dialog: told.extend(one.wanted for one in dialog.panel.look.reports))
    panel.import_table()
    assert "does not lead back" in told[0]
    assert len(listed(bench)) == 2
    panel.table.pick_row(0)
    qtbot.waitUntil(panel.remove_button.isEnabled)
    qtbot.mouseClick(panel.remove_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: len(panel.model.records) == 1, timeout=20_000)
    panel.table.pick_row(0)
    panel.take_out()
    qtbot.waitUntil(lambda: listed(bench) == [], timeout=20_000)


def test_what_hangs_there_keeps_its_old_number_and_the_way_is_shown(qtbot: QtBot, workplace: Workplace) -> None:
    panel = workplace.conversion_page.position_side.installed_panel
    panel.number_edit.setText("Brindlemoss Pumpworks BM 4411")
    panel.add_button.click()
    (item,) = workplace.session.position.installed[-1:]
    assert (item.number, item.maker, item.kind) == ("BM 4411", "Brindlemoss Pumpworks", "nozzle")
    assert "QW-N101" in panel.way_label.text()
    panel.number_edit.setText("LS-B01")  # the very part under another number, see `catalog/cross_references.csv`
    panel.add_button.click()
    assert workplace.session.position.installed[-1].number == "LS-B101"
    panel.number_edit.setText("20-300")
    panel.add_button.click()
    assert "several makers have this number" in panel.fault_label.text()


@pytest.fixture
def started(monkeypatch: pytest.MonkeyPatch) -> list[JobKind]:
    """Return the kinds of the jobs that are started from here on."""
    kinds: list[JobKind] = []
    start = Jobs.start

    def noted(jobs: Jobs, key: JobKey, *given: object, **named: object) -> object:
        kinds.append(key.kind)
        return start(jobs, key, *given, **named)  # type: ignore[arg-type]

    monkeypatch.setattr(Jobs, "start", noted)
    return kinds


def asked(kinds: list[JobKind]) -> list[JobKind]:
    """Return the searches and verdicts among the jobs, in their order, and forget all."""
    found = [kind for kind in kinds if kind in {JobKind.PART_SEARCH, JobKind.WHY_NOT}]
    kinds.clear()
    return found


# Another maker's BM 4412 leads to LS-S113, which LS-S101 replaces, and BM 4411 to OB-N165, which QW-N101 replaces: see
# `catalog/cross_references.csv`. In the list of parts both find the part that is no longer the one of today.
@pytest.mark.parametrize(("number", "current"), [("BM 4412", "LS-S101"), ("BM 4411", "QW-N101")])
def test_an_old_number_is_searched_once_and_judged_once(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, started: list[JobKind], number: str, current: str
) -> None:
    workplace.show_part_question()
    panel = workplace.set_page.why_not
    settle(window)
    assert asked(started) == [JobKind.PART_SEARCH]  # the list when the panel is first seen
    qtbot.keyClicks(panel.search_edit, number)
    qtbot.keyClick(panel.search_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: panel.verdict_title.text().startswith(current), timeout=60_000)
    qtbot.wait(300)  # longer than the pause after which typing is answered
    settle(window)
    assert asked(started) == [JobKind.PART_SEARCH, JobKind.WHY_NOT]
    assert panel.verdict_title.text().startswith(current)
    # Return over what is answered already asks nothing again
    qtbot.keyClick(panel.search_edit, Qt.Key.Key_Return)
    settle(window)
    assert asked(started) == []
    # nor does typing that comes to rest before Return
    panel.search_edit.clear()
    qtbot.wait(300)
    settle(window)
    asked(started)
    qtbot.keyClicks(panel.search_edit, "QW-N104")
    qtbot.wait(300)
    settle(window)
    qtbot.keyClick(panel.search_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: panel.verdict_title.text().startswith("QW-N104"), timeout=60_000)
    assert asked(started) == [JobKind.PART_SEARCH, JobKind.WHY_NOT]


def test_a_part_asked_about_is_searched_once_whatever_kind_was_chosen(
    window: MainWindow, workplace: Workplace, started: list[JobKind]
) -> None:
    workplace.show_part_question()
    panel = workplace.set_page.why_not
    panel.kind_box.setCurrentIndex(panel.kind_box.findData("swivel"))
    settle(window)
    asked(started)
    workplace.set_page.ask_why_not(PartRef("QW-N101"))
    settle(window)
    assert asked(started) == [JobKind.PART_SEARCH, JobKind.WHY_NOT]
    assert panel.verdict_title.text().startswith("QW-N101")


def test_why_not_follows_an_old_number(qtbot: QtBot, workplace: Workplace) -> None:
    panel = workplace.set_page.why_not
    panel.start()
    panel.search_edit.setText("BM4412")
    qtbot.waitUntil(lambda: "LS-S113 → Larkspindle Couplings LS-S101" in panel.verdict_label.text(), timeout=60_000)
