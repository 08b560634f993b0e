"""The coverage map in the window: made, walked through with keys, explained, stopped, written to files."""

from __future__ import annotations

import threading
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from spoutline.documents.own_files import FileForm, is_own
from spoutline.gui.jobs import JobKind
from spoutline.gui.pages.catalogues import coverage_panel
from spoutline.gui.pages.catalogues.coverage_panel import CoveragePanel
from spoutline.gui.roles import Role, Tone
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.coverage_kinds import ClimateBand, OutletKind
from spoutline.model.coverage_map import CoverageCell, CoverageScope, LiquidClass
from spoutline.model.survey import Duty
from spoutline.planning.keeping import coverage_map

OUTLETS = (OutletKind.NPT_3_4, OutletKind.BALANCE)


@pytest.fixture
def panel(window: MainWindow, workplace: Workplace, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> CoveragePanel:
    """Return the panel over one liquid, one duty and two outlets, so that a test costs little."""

    def few(**axes: object) -> CoverageScope:
        few_axes = {"liquids": (LiquidClass.E10,), "duties": (Duty.CAR,), "outlets": OUTLETS, "most_counted": 2}
        return CoverageScope(**few_axes, **axes)  # type: ignore[arg-type]

    monkeypatch.setattr(coverage_panel, "CoverageScope", few)
    qtbot.keyClick(window, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    page = workplace.catalogues_page
    qtbot.waitUntil(lambda: page.in_hand.row is not None, timeout=20_000)
    page.tabs.setCurrentWidget(page.coverage_panel)
    return page.coverage_panel


def made(panel: CoveragePanel, qtbot: QtBot) -> None:
    qtbot.mouseClick(panel.make_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: panel.found is not None, timeout=60_000)


def test_the_map_is_made_and_walked_with_keys(panel: CoveragePanel, qtbot: QtBot) -> None:
    made(panel, qtbot)
    model = panel.model
    assert (model.rowCount(), model.columnCount()) == (3, 2)
    tones = [[model.index(row, column).data(Role.TONE) for column in range(2)] for row in range(3)]
    # none, balance, assist down; a single outlet and a balance coaxial one across: vapour needs a way back
    assert tones == [[Tone.GOOD, Tone.GOOD], [Tone.BAD, Tone.GOOD], [Tone.BAD, Tone.BAD]]
    marks = [str(model.index(row, 0).data())[0] for row in range(3)]
    assert marks == ["✓", "✗", "✗"]
    panel.table.setFocus()
    panel.table.setCurrentIndex(model.index(0, 0))
    QTest.keyClick(panel.table, Qt.Key.Key_Down)
    assert (panel.table.currentIndex().row(), panel.table.currentIndex().column()) == (1, 0)
    spoken = str(model.index(1, 0).data(Qt.ItemDataRole.AccessibleTextRole))
    assert "nothing fits" in spoken
    assert "joins up to the whip hose" in spoken


def test_a_cell_tells_what_would_be_chosen_or_why_nothing_fits(panel: CoveragePanel, qtbot: QtBot) -> None:
    made(panel, qtbot)
    panel.table.setCurrentIndex(panel.model.index(0, 0))
    cell = panel.model.cell(panel.model.index(0, 0))
    assert cell is not None
    qtbot.waitUntil(lambda: all(ref.number in panel.detail.toPlainText() for ref in cell.parts), timeout=20_000)
    panel.table.setCurrentIndex(panel.model.index(1, 0))
    qtbot.waitUntil(lambda: "No set" in panel.detail.toPlainText(), timeout=20_000)


def test_the_map_is_copied_under_its_names(panel: CoveragePanel, qtbot: QtBot) -> None:
    made(panel, qtbot)
    panel.table.setFocus()
    QTest.keyClick(panel.table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    rows = [line.split("\t") for line in QGuiApplication.clipboard().text().splitlines()]
    model = panel.model
    across = [str(model.headerData(column, Qt.Orientation.Horizontal)) for column in range(2)]
    assert rows[0] == ["", *across]
    for at, row in enumerate(rows[1:]):
        assert row[0] == model.headerData(at, Qt.Orientation.Vertical)
        assert row[1:] == [str(model.index(at, column).data()) for column in range(2)]
    assert len(rows) == 1 + model.rowCount()


def test_words_tell_how_far_the_map_is_for_the_bar_has_no_room_for_them(panel: CoveragePanel, qtbot: QtBot) -> None:
    told: list[str] = []
    panel._context.jobs.progressed.connect(lambda *_: told.append(panel.state_label.text()))
    made(panel, qtbot)
    whole = len(OUTLETS) * panel.model.rowCount()
    assert f"1 of {whole} combinations asked" in told
    assert not panel.bar.isTextVisible()


def test_the_map_can_be_stopped(panel: CoveragePanel, qtbot: QtBot) -> None:
    panel.make()
    panel.stop()
    assert not panel.make_button.isHidden()
    assert panel.stop_button.isHidden()
    assert "Stopped" in panel.state_label.text()
    assert not panel._context.jobs.is_busy(JobKind.CATALOGUE)
    made(panel, qtbot)


def test_what_was_answered_before_a_stop_stays_in_sight_and_no_paper_is_made_of_it(
    panel: CoveragePanel, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    answer, stopped, answered = coverage_map._cell, threading.Event(), []

    def held_after_one(*asked: Any) -> CoverageCell:
        if answered:
            stopped.wait(timeout=60)
        answered.append(answer(*asked))
        return answered[-1]

    monkeypatch.setattr(coverage_map, "_cell", held_after_one)
    panel.band_box.setCurrentIndex(list(ClimateBand).index(ClimateBand.WIDE))  # which no other test asks
    panel.make()
    qtbot.waitUntil(lambda: panel.model.rowCount() > 0, timeout=60_000)
    panel.stop()
    stopped.set()
    rows = panel.model.rowCount()
    assert rows
    assert panel.found is None
    assert not panel.paper_button.isEnabled()
    assert not panel.csv_button.isEnabled()
    qtbot.wait(200)  # what was on its way comes too late
    assert len(answered) <= 2
    assert panel.model.rowCount() == rows
    assert panel.found is None
    assert "not asked again" in panel.state_label.text()


def test_the_map_goes_into_files(panel: CoveragePanel, qtbot: QtBot, tmp_path: Path) -> None:
    assert not panel.paper_button.isEnabled()
    made(panel, qtbot)
    assert panel.paper_button.isEnabled()
    for form, save in ((FileForm.PDF, panel.hands.save_to), (FileForm.CSV, panel.save)):
        file = tmp_path / f"map.{form.value}"
        save(file)
        qtbot.waitUntil(file.exists, timeout=20_000)
        assert is_own(file, form)
