"""How sure the checks are, in the window: figures to measure, the whole station, and the list for a visit as a file."""

from __future__ import annotations

from pathlib import Path

from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from paper_text import text_of
from spoutline.gui.edits.question import Step
from spoutline.gui.pages.result.measure_panel import MeasurePanel
from spoutline.gui.window.workplace import Workplace

OUTLET, FLOW = "Pull that the outlet bears", "Greatest flow of the dispenser"


def shown(qtbot: QtBot, workplace: Workplace) -> MeasurePanel:
    wait_for_plans(qtbot, workplace)
    workplace.show_step(Step.SET)
    panel = workplace.set_page.measure
    workplace.set_page.show_panel(panel)
    panel.refresh()
    wait_for_rows(qtbot, panel)
    return panel


def wait_for_rows(qtbot: QtBot, panel: MeasurePanel) -> None:
    qtbot.waitUntil(lambda: panel.model.rowCount() > 0, timeout=60_000)


def titles(panel: MeasurePanel, group: int = 0) -> list[str]:
    node = panel.model.node_at(panel.model.index(group, 0))
    assert node is not None
    return [child.cells[0] for child in node.children]


def test_a_position_shows_what_to_measure_first_with_its_effects_and_the_margins(
    qtbot: QtBot, workplace: Workplace
) -> None:
    panel = shown(qtbot, workplace)
    assert workplace.set_page.panel_in_view is panel
    heads = [panel.model.node_at(panel.model.index(row, 0)) for row in range(panel.model.rowCount())]
    told = [node.cells[0] for node in heads if node is not None]
    assert told[0] == "Measure these first"
    assert "Margins within the ranges" in told
    assert any("never pull at it" in text for text in told)
    first = heads[0]
    assert first is not None
    outlet = next(child for child in first.children if child.cells[0] == OUTLET)
    assert any("fails below" in child.cells[0] for child in outlet.children)


def test_an_answer_takes_the_figure_off_the_list(qtbot: QtBot, workplace: Workplace) -> None:
    panel = shown(qtbot, workplace)
    assert OUTLET in titles(panel)
    session = workplace.session
    position = session.position
    outlet = position.outlet.model_copy(update={"pull_strength_n": 2000.0})
    known = position.model_copy(update={"outlet": outlet})
    positions = tuple(known if one.label == known.label else one for one in session.survey.positions)
    workplace.context.edit(session.survey.model_copy(update={"positions": positions}), "Measured")
    wait_for_plans(qtbot, workplace)
    panel.refresh()
    qtbot.waitUntil(lambda: panel.model.rowCount() > 0 and OUTLET not in titles(panel), timeout=60_000)


def test_the_whole_station_is_listed_and_saved_for_a_visit(qtbot: QtBot, workplace: Workplace, tmp_path: Path) -> None:
    panel = shown(qtbot, workplace)
    panel.scope_box.setCurrentIndex(1)
    wait_for_rows(qtbot, panel)
    assert OUTLET in titles(panel)
    heads = [panel.model.node_at(panel.model.index(row, 0)) for row in range(panel.model.rowCount())]
    assert not any(node is not None and node.cells[0] == "Margins within the ranges" for node in heads)
    path = tmp_path / "visit.pdf"
    panel.hands.save_to(path)
    qtbot.waitUntil(lambda: str(path) in panel.state_label.text(), timeout=60_000)
    paper = " ".join(text_of(path.read_bytes()).split())
    assert "What to measure on site" in paper
    assert OUTLET in paper
