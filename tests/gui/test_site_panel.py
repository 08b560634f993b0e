"""The list of dispensers and positions at the window's left, where a station has many of them."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize
from PySide6.QtWidgets import QAbstractItemView, QStyleOptionViewItem
from pytestqt.qtbot import QtBot

from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.session import Session
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.gui.window.workplace import Workplace


class CountingDelegate(MarkDelegate):
    """Counts the cells that are measured."""

    measured = 0

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:  # noqa: N802
        self.measured += 1
        return super().sizeHint(option, index)


def test_of_a_big_station_only_rows_in_view_are_measured(qtbot: QtBot) -> None:
    """Measured by all of a thousand rows, the window stands still for half a second as it opens."""
    tree = Tree("Positions")
    qtbot.addWidget(tree)
    model, delegate = NodeTree(("Position",), tree), CountingDelegate(tree)
    tree.setItemDelegate(delegate)
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
    assert 0 < delegate.measured < 200


def test_the_panel_of_a_big_station_scrolls_row_by_row(workplace: Workplace, session: Session) -> None:
    panel, survey = workplace.site_panel, session.survey
    assert panel.tree.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerPixel
    first = survey.positions[0]
    many = tuple(first.model_copy(update={"label": f"{number}A"}) for number in range(80))
    workplace.context.edit(survey.model_copy(update={"positions": many}), "Many")
    assert panel.tree.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerItem
    session.undo_stack.undo()
    assert panel.tree.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerPixel


def test_the_head_of_the_first_position_is_in_view(workplace: Workplace, session: Session) -> None:
    """The list is filled before it is laid out, and a row that is brought into view then comes to stand at the top."""
    tree, survey = workplace.site_panel.tree, session.survey
    first = survey.positions[0]
    many = tuple(first.model_copy(update={"label": f"{number}A"}) for number in range(80))
    tree.resize(200, 1)
    workplace.context.edit(survey.model_copy(update={"positions": many}), "Many", focus="0A")
    assert tree.verticalScrollBar().value() == 0
