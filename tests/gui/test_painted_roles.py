"""What a cell is painted from is asked in one call, and is what the same cell answers role by role."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QAbstractItemModel, QModelIndex, QModelRoleData, QModelRoleDataSpan, Qt
from PySide6.QtWidgets import QStyleOptionViewItem
from pytestqt.qtbot import QtBot

from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.painted_roles import UNANSWERED
from spoutline.gui.models.record_table import Column, RecordTable, SortedRecords
from spoutline.gui.roles import Tone
from spoutline.gui.widgets import marks
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.gui.widgets.theme import DARK, LIGHT, colours_now
from spoutline.gui.window.workplace import Workplace

ROLE = Qt.ItemDataRole
PAINTED = tuple(  # what Qt's delegate asks of a cell (QStyledItemDelegate::initStyleOption)
    map(
        int,
        (
            ROLE.FontRole,
            ROLE.TextAlignmentRole,
            ROLE.ForegroundRole,
            ROLE.CheckStateRole,
            ROLE.DecorationRole,
            ROLE.DisplayRole,
            ROLE.BackgroundRole,
        ),
    )
)


class Asked(RecordTable[int]):
    """Notes the roles that it is asked for."""

    def __init__(self) -> None:
        super().__init__((Column(title="Row", text=str, tone=lambda _: Tone.GOOD), Column(title="Twice", text=str)))
        self.roles: list[int] = []

    def data(self, index: object, role: int = ROLE.DisplayRole) -> object:  # type: ignore[override]
        self.roles.append(int(role))
        return super().data(index, role)  # type: ignore[arg-type]


@pytest.fixture
def table(qtbot: QtBot) -> tuple[Table, Asked]:
    model, view = Asked(), Table("Rows")
    qtbot.addWidget(view)
    model.show_records(tuple(range(40)))
    proxy = SortedRecords(view)
    proxy.setSourceModel(model)
    view.setModel(proxy)
    view.resize(400, 300)
    with qtbot.waitExposed(view):
        view.show()
    return view, model


def test_a_painted_cell_is_not_asked_for_what_no_row_ever_says(table: tuple[Table, Asked]) -> None:
    view, model = table
    model.roles.clear()
    view.viewport().repaint()
    assert model.roles.count(ROLE.DisplayRole) >= 16
    assert not set(model.roles) & UNANSWERED


def test_marks_are_painted_once_for_all_rows(table: tuple[Table, Asked], monkeypatch: pytest.MonkeyPatch) -> None:
    view, _ = table
    painted: list[Tone] = []
    paint = marks.paint_mark

    def noted(painter: object, box: object, tone: Tone, colours: object) -> None:
        painted.append(tone)
        paint(painter, box, tone, colours)  # type: ignore[arg-type]

    monkeypatch.setattr(marks, "paint_mark", noted)
    view.setItemDelegate(MarkDelegate(view))
    view.viewport().repaint()
    view.viewport().repaint()
    assert painted == [Tone.GOOD]
    view.selectRow(0)  # on a plate of its own
    view.viewport().repaint()
    assert painted == [Tone.GOOD] * 2
    other = DARK if colours_now() is not DARK else LIGHT
    monkeypatch.setattr(marks, "colours_now", lambda: other)
    view.clearSelection()
    view.viewport().repaint()
    assert painted == [Tone.GOOD] * 3


def test_a_tree_answers_the_same_at_once_and_role_by_role(qtbot: QtBot) -> None:
    tree, model = Tree("Rows"), NodeTree(("One", "Two"))
    qtbot.addWidget(tree)
    model.show_nodes((Node(cells=("head", ""), is_head=True, children=(Node(cells=("a", "b"), tone=Tone.BAD),)),))
    tree.setModel(model)
    head = model.index(0, 0)
    for index in (head, model.index(0, 1), model.index(0, 0, head), model.index(0, 1, head)):
        _assert_alike(model, index)
    option = QStyleOptionViewItem()
    option.widget = tree  # type: ignore[attr-defined]
    MarkDelegate(tree).initStyleOption(option, head)
    assert option.font.bold()  # type: ignore[attr-defined]


def test_the_positions_answer_the_same_at_once_and_role_by_role(workplace: Workplace) -> None:
    page = workplace.grid_page
    workplace.show_grid()
    page.filter_edit.setText("a2")
    for column in range(page.proxy.columnCount()):
        _assert_alike(page.proxy, page.proxy.index(0, column))
    assert page.proxy.rowCount() == 1


def _assert_alike(model: QAbstractItemModel, index: QModelIndex) -> None:
    for role in PAINTED:
        held = QModelRoleData(role)
        model.multiData(index, QModelRoleDataSpan(held))
        assert held.data() == model.data(index, role), role
