"""An edit lays out anew only what says something else; what nobody sees waits until it is seen."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QAbstractItemModel
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_whole_plan
from spoutline.gui.edits.question import Step
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.roles import Role, Tone
from spoutline.gui.window.workplace import Workplace


def edited(workplace: Workplace, **answers: object) -> None:
    """Answer questions of the position in focus."""
    survey, position = workplace.session.survey, workplace.session.position
    after = position.model_copy(update=answers)
    positions = tuple(after if one.label == position.label else one for one in survey.positions)
    workplace.context.edit(survey.model_copy(update={"positions": positions}), "Edit")


def filler_at(workplace: Workplace, distance_m: float) -> dict[str, object]:
    return {"filler": workplace.session.position.filler.model_copy(update={"distance_m": distance_m})}


def resets(model: QAbstractItemModel) -> list[bool]:
    """Return a list that grows each time the rows of a model are laid out anew."""
    seen: list[bool] = []
    model.modelReset.connect(lambda: seen.append(True))
    return seen


def test_an_answer_that_changes_no_figure_leaves_drawing_and_rows(qtbot: QtBot, workplace: Workplace) -> None:
    panel = workplace.side_panel
    drawing, parts, tree = panel.drawing.drawing, resets(panel.model), resets(workplace.site_panel.model)
    edited(workplace, notes="The gate is locked at night.")
    wait_for_whole_plan(qtbot, workplace)
    assert panel.drawing.drawing is drawing
    assert parts == []
    assert tree == []


def test_an_answer_about_the_place_draws_anew_and_keeps_the_rows(qtbot: QtBot, workplace: Workplace) -> None:
    panel, session = workplace.side_panel, workplace.session
    drawing, tree = panel.drawing.drawing, resets(workplace.site_panel.model)
    plan = workplace.context.plan
    edited(workplace, **filler_at(workplace, session.position.filler.distance_m + 0.01))
    assert panel.drawing.drawing is drawing  # until the plan is there
    assert not panel.drawing.is_stale
    wait_for_whole_plan(qtbot, workplace)
    assert workplace.context.plan is not plan
    assert panel.drawing.drawing is not drawing
    assert not panel.drawing.is_stale
    assert tree == []
    assert workplace.site_panel.tree.currentIndex().data(Role.RECORD) == session.label


def test_a_drawing_whose_plan_takes_a_while_is_greyed(
    qtbot: QtBot, workplace: Workplace, monkeypatch: pytest.MonkeyPatch
) -> None:
    drawing = workplace.side_panel.drawing
    monkeypatch.setattr(workplace.plans, "_start_in_focus", lambda _: None)  # as if the search took long
    edited(workplace, **filler_at(workplace, 2.22))
    qtbot.waitUntil(lambda: drawing.is_stale, timeout=10_000)
    monkeypatch.undo()
    workplace.plans.plan_again(workplace.session.label)
    wait_for_whole_plan(qtbot, workplace)
    assert not drawing.is_stale


def test_a_drawing_out_of_view_is_made_when_it_is_seen(qtbot: QtBot, workplace: Workplace) -> None:
    panel = workplace.side_panel
    drawing = panel.drawing.drawing
    workplace.show_grid()
    edited(workplace, **filler_at(workplace, 2.31))
    wait_for_whole_plan(qtbot, workplace)
    assert panel.drawing.drawing is drawing
    workplace.show_step(Step.PLACE)
    assert panel.drawing.drawing is not drawing


def test_rows_that_get_another_mark_stay_open_and_current() -> None:
    def rows(tone: Tone, cell: str = "2A") -> tuple[Node, ...]:
        below = (Node(cells=("1A",), record="1A", tone=tone), Node(cells=(cell,), record="2A", tone=Tone.GOOD))
        return (Node(cells=("Dispenser",), is_head=True, children=below),)

    model = NodeTree(("Position",))
    model.show_nodes(rows(Tone.WORKING))
    laid_out, told = resets(model), []
    model.dataChanged.connect(lambda first, last: told.append((first.data(Role.RECORD), last.column())))
    index = model.index_of("1A")
    assert not model.follow_nodes(rows(Tone.BAD))
    assert index.data(Role.TONE) == Tone.BAD
    assert ("1A", 0) in told
    assert "2A" not in [record for record, _ in told]
    assert laid_out == []
    assert model.follow_nodes(rows(Tone.BAD, "2B"))
    assert laid_out == [True]
