"""The list of dispensers and positions at the window's left, where a station has many of them."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QCoreApplication, QModelIndex, QPersistentModelIndex, QSize
from PySide6.QtWidgets import QAbstractItemView, QStyleOptionViewItem
from pytestqt.qtbot import QtBot

from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.site_nodes import RowWords
from spoutline.gui.pages.survey import site_panel
from spoutline.gui.pages.survey.site_panel import SitePanel
from spoutline.gui.roles import Role, Tone
from spoutline.gui.session import Session
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.gui.window.workplace import Workplace
from spoutline.model.survey import Survey


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
    QCoreApplication.processEvents()
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
    QCoreApplication.processEvents()
    assert tree.model().rowCount() == 1
    assert tree.verticalScrollBar().value() == 0


def long_list(qtbot: QtBot) -> tuple[Tree, NodeTree, CountingDelegate]:
    """Return a tree of a thousand rows that is scrolled by rows, its first row current, and what counts measuring."""
    tree = Tree("Positions")
    qtbot.addWidget(tree)
    model, delegate = NodeTree(("Position",), tree), CountingDelegate(tree)
    tree.setItemDelegate(delegate)
    tree.resize(200, 300)
    tree.setModel(model)
    tree.scroll_by_rows(True)
    heads = (
        Node(
            cells=(f"D{one}",),
            children=tuple(Node(cells=(f"D{one}/{place}",), record=f"D{one}/{place}") for place in range(9)),
        )
        for one in range(100)
    )
    model.show_nodes(tuple(heads))
    tree.expandAll()
    tree.show()
    tree.pick(model.index_of("D0/0"))
    QCoreApplication.processEvents()
    delegate.measured = 0
    return tree, model, delegate


def test_a_row_far_down_is_come_to_without_measuring_all_before_it(qtbot: QtBot) -> None:
    tree, model, delegate = long_list(qtbot)
    picked: list[object] = []
    tree.picked.connect(picked.append)
    for closed in range(3, 40):
        tree.collapse(model.index(closed, 0))
    for label in ("D60/4", "D2/8", "D99/8", "D0/0"):
        tree.pick(model.index_of(label))
        QCoreApplication.processEvents()
        assert tree.viewport().rect().contains(tree.visualRect(model.index_of(label)))
        assert [index.data(Role.RECORD) for index in tree.selectionModel().selectedIndexes()] == [label]
        assert tree.verticalOffset() >= 0  # Qt asks for it at every click
    assert picked == ["D60/4", "D2/8", "D99/8", "D0/0"]
    assert delegate.measured < 100


def test_a_mark_far_down_is_painted_anew_without_measuring_all_before_it(qtbot: QtBot) -> None:
    tree, model, delegate = long_list(qtbot)
    for one in range(0, 100, 7):
        label = f"D{one}/5"
        assert model.follow_row(Node(cells=(label,), record=label, tone=Tone.GOOD))
    QCoreApplication.processEvents()
    assert delegate.measured < 200
    tree.pick(model.index_of("D98/5"))
    assert model.index_of("D98/5").data(Role.TONE) == Tone.GOOD


def test_an_edit_in_a_big_station_makes_one_row_anew(
    workplace: Workplace, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    panel, survey = workplace.site_panel, session.survey
    first = survey.positions[0]
    many = tuple(first.model_copy(update={"label": f"{number}A"}) for number in range(80))
    workplace.context.edit(survey.model_copy(update={"positions": many}), "Many", focus="7A")
    QCoreApplication.processEvents()
    made: list[str] = []
    row = site_panel.position_node

    def counted(label: str, words: RowWords) -> Node:
        made.append(label)
        return row(label, words)

    monkeypatch.setattr(site_panel, "position_node", counted)
    monkeypatch.setattr(site_panel, "site_nodes", lambda *_: made.append("all"))
    monkeypatch.setattr(workplace.plans, "_fetch", lambda: None)  # no plan is to come in between
    nearer = first.filler.model_copy(update={"distance_m": 1.01})
    edited = tuple(one.model_copy(update={"filler": nearer}) if one.label == "7A" else one for one in many)
    workplace.context.edit(session.survey.model_copy(update={"positions": edited}), "Move the filler")
    assert made == ["7A"]
    assert panel.model.index_of("7A").data(Role.TONE) == Tone.WORKING
    session.undo_stack.undo()
    assert made == ["7A", "7A"]


def test_a_list_of_many_rows_is_made_in_a_turn_of_its_own(
    workplace: Workplace, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    """An edit that moves many rows draws its set first; two of them within a turn make the list once."""
    panel, survey = workplace.site_panel, session.survey
    first = survey.positions[0]
    many = tuple(first.model_copy(update={"label": f"{number}A", "dispenser": "D"}) for number in range(80))
    monkeypatch.setattr(workplace.plans, "_fetch", lambda: None)
    made: list[int] = []
    nodes = site_panel.site_nodes

    def counted(survey: Survey, words: RowWords) -> tuple[Node, ...]:
        made.append(len(survey.positions))
        return nodes(survey, words)

    monkeypatch.setattr(site_panel, "site_nodes", counted)
    workplace.context.edit(survey.model_copy(update={"positions": many}), "Many", focus="7A")
    workplace.context.edit(survey.model_copy(update={"positions": many[1:]}), "One less", focus="7A")
    assert made == []
    QCoreApplication.processEvents()
    assert made == [79]
    assert [row.record for row in shown(panel, 0)] == [one.label for one in many[1:]]
    assert panel.tree.current_record() == "7A"
    assert panel.model.index_of("8A").data(Role.TONE) == Tone.WORKING


@pytest.mark.parametrize("other", ["liquid", "label", "dispenser", "site", "order"])
def test_an_edit_that_moves_rows_or_says_other_words_shows_all_anew(
    workplace: Workplace, session: Session, other: str
) -> None:
    panel, survey = workplace.site_panel, session.survey
    one, *rest = survey.positions
    changed = {
        "liquid": {"liquid": one.liquid.model_copy(update={"blend_percent": 0})},
        "label": {"label": "new name"},
        "dispenser": {"dispenser": "another"},
    }
    after = survey.model_copy(update={"positions": (one.model_copy(update=changed.get(other, {})), *rest)})
    if other == "site":
        after = survey.model_copy(update={"site": survey.site.model_copy(update={"address": "2 Quarry Road"})})
    if other == "order":
        after = survey.model_copy(update={"positions": (*rest, one)})
    workplace.context.edit(after, "Other words")
    rows = [child.record for head in range(panel.model.rowCount()) for child in shown(panel, head)]
    dispensers = dict.fromkeys(position.dispenser for position in after.positions)
    assert rows == [position.label for name in dispensers for position in after.positions if position.dispenser == name]
    cells = {child.record: child.cells[1] for head in range(panel.model.rowCount()) for child in shown(panel, head)}
    assert cells == {position.label: site_panel.liquid_words(position) for position in after.positions}
    assert panel.place_label.text() == (after.site.address or "no address yet")


def shown(panel: SitePanel, head: int) -> tuple[Node, ...]:
    node = panel.model.node_at(panel.model.index(head, 0))
    assert node is not None
    return node.children
