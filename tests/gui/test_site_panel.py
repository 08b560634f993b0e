"""The list of dispensers and positions at the window's left, where a station has many of them."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSize
from PySide6.QtWidgets import QAbstractItemView
from pytestqt.qtbot import QtBot

from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.session import Session
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.gui.window.workplace import Workplace


def test_of_a_big_station_only_rows_in_view_are_measured(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    """Measured by all of a thousand rows, the window stands still for half a second as it opens."""
    measured = []
    size = MarkDelegate.sizeHint

    def counted(one: MarkDelegate, *given: object) -> QSize:
        measured.append(1)
        return size(one, *given)  # type: ignore[arg-type]

    monkeypatch.setattr(MarkDelegate, "sizeHint", counted)
    model = NodeTree(("Position",))
    tree = Tree("Positions")
    qtbot.addWidget(tree)
    tree.resize(200, 300)
    tree.setModel(model)
    tree.scroll_by_rows(True)
    heads = (
        Node(cells=(f"D{one}",), children=tuple(Node(cells=(f"D{one}/{place}",)) for place in range(9)))
        for one in range(100)
    )
    model.show_nodes(tuple(heads))
    tree.expandAll()
    tree.show()
    tree.verticalScrollBar().setValue(tree.verticalScrollBar().maximum())
    last = model.index(8, 0, model.index(99, 0))
    assert tree.viewport().rect().contains(tree.visualRect(last))
    assert 0 < len(measured) < 200
    # smooth scrolling measures every row
    measured.clear()
    tree.scroll_by_rows(False)
    assert tree.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerPixel


def test_the_panel_of_a_big_station_scrolls_row_by_row(workplace: Workplace, session: Session) -> None:
    panel, survey = workplace.site_panel, session.survey
    assert panel.tree.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerPixel
    first = survey.positions[0]
    many = tuple(first.model_copy(update={"label": f"{number}A"}) for number in range(80))
    workplace.context.edit(survey.model_copy(update={"positions": many}), "Many")
    assert panel.tree.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerItem
    session.undo_stack.undo()
    assert panel.tree.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerPixel
