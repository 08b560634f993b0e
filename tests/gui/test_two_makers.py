"""Two makers with one number, in the window: why not, keep, refuse and other parts for a place name the one meant."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from spoutline import assets
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.gui.edits.question import Step
from spoutline.gui.window.workplace import Workplace
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Position, Site, Survey, SurveyLiquid
from two_makers import MAKER, NUMBER, OTHER, catalogue_of_two_makers


@pytest.fixture
def survey() -> Survey:
    liquid = SurveyLiquid(family=LiquidFamily.GASOLINE, blend_percent=10)
    labels = ("A1", "A2")
    return Survey(
        site=Site(name="Twin Number Fuels"),
        positions=tuple(Position(label=label, liquid=liquid) for label in labels),
    )


@pytest.fixture
def bench(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    folder = catalogue_of_two_makers(tmp_path / "catalog")
    monkeypatch.setattr(assets, "catalogue_folder", lambda: folder)
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    yield bench
    bench.close()


def ask_about(qtbot: QtBot, workplace: Workplace, maker: str) -> None:
    """Search for the number and mark the row of one maker, as a person would."""
    workplace.show_step(Step.SET)
    workplace.set_page.show_panel(workplace.set_page.why_not)
    panel = workplace.set_page.why_not
    panel.search_edit.setText(NUMBER)
    qtbot.waitUntil(lambda: [part.ref for part in panel.model.records] == list(both()), timeout=20_000)
    proxy = panel.table.model()
    column = next(at for at in range(proxy.columnCount()) if proxy.headerData(at, Qt.Orientation.Horizontal) == "Maker")
    rows = {proxy.index(row, column).data(): row for row in range(proxy.rowCount())}
    panel.verdict_label.setText("")
    panel.table.selectRow(rows[maker])
    qtbot.waitUntil(lambda: panel.verdict_label.text() != "", timeout=20_000)


def both() -> tuple[PartRef, ...]:
    return PartRef(NUMBER, OTHER), PartRef(NUMBER, MAKER)


@pytest.mark.parametrize("maker", [MAKER, OTHER])
def test_why_not_keeps_and_refuses_the_part_of_the_marked_maker(qtbot: QtBot, workplace: Workplace, maker: str) -> None:
    panel, session = workplace.set_page.why_not, workplace.session
    ask_about(qtbot, workplace, maker)
    QTest.mouseClick(panel.decisions.keep_button, Qt.MouseButton.LeftButton)
    assert session.position.decisions.pinned == (PartRef(NUMBER, maker),)
    wait_for_plans(qtbot, workplace)
    assert workplace.context.plan is not None
    assert workplace.context.plan.chosen is not None
    assert workplace.context.plan.chosen.hanging_set.refs[-1] == PartRef(NUMBER, maker)
    kept = [record.is_kept for record in workplace.side_panel.model.records]
    assert kept == [False] * (len(kept) - 1) + [True]
    session.undo_stack.undo()
    ask_about(qtbot, workplace, maker)
    QTest.mouseClick(panel.decisions.refuse_button, Qt.MouseButton.LeftButton)
    assert session.position.decisions.refused == (PartRef(NUMBER, maker),)
    wait_for_plans(qtbot, workplace)
    assert PartRef(NUMBER, maker) not in workplace.context.plan.chosen.hanging_set.refs


def test_marking_the_other_makers_part_after_keeping_one_offers_to_keep_it_too(
    qtbot: QtBot, workplace: Workplace
) -> None:
    panel = workplace.set_page.why_not
    ask_about(qtbot, workplace, MAKER)
    panel.decisions.keep_button.click()
    wait_for_plans(qtbot, workplace)
    ask_about(qtbot, workplace, OTHER)
    assert panel.decisions.keep_button.isEnabled()
    assert not panel.decisions.release_button.isEnabled()
