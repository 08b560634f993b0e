"""Panels that show one tree of results each: checks, what is asked, findings."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.plan.story import Story
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.result_nodes import (
    check_nodes,
    check_titles,
    finding_nodes,
    finding_titles,
    requirement_nodes,
    requirement_titles,
)
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.plan import PositionPlan

NodeMaker = Callable[[PositionPlan, Story], tuple[Node, ...]]


class ResultPanel(QWidget):
    """A lead and a tree below it."""

    def __init__(
        self,
        context: Context,
        *,
        name: str,
        lead: str,
        titles: tuple[str, ...],
        nodes: NodeMaker,
        shares: tuple[int, ...],
        opened: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._context, self._nodes, self._opened = context, nodes, opened
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(10, 10, 10, 10)
        self._lead = plain_label(lead, "quiet", wraps=True)
        self.column.addWidget(self._lead)
        self.model = NodeTree(titles, self)
        self.tree = Tree(name, self, shares=shares)
        self.tree.setModel(self.model)
        self.column.addWidget(self.tree, 1)

    def refresh(self) -> None:
        """Show the results of the present plan; rows that were open stay open."""
        plan = self._context.plan_to_show
        opened = self._opened_records()
        self.model.show_nodes(() if plan is None else self._nodes(plan, self._context.story))
        self.tree.span_rows(self.model.spanning())
        self.tree.fit_columns()
        if self._opened:
            self.tree.expandAll()
        for record in opened:
            index = self.model.index_of(record)
            if index.isValid():
                self.tree.expand(index)

    @property
    def lead_text(self) -> str:
        """What stands above the tree."""
        return self._lead.text()

    def _opened_records(self) -> tuple[object, ...]:
        rows = (self.model.index(row, 0) for row in range(self.model.rowCount()))
        nodes = (self.model.node_at(index) for index in rows if self.tree.isExpanded(index))
        return tuple(node.record for node in nodes if node is not None)


def checks_panel(context: Context, parent: QWidget | None = None) -> ResultPanel:
    """Return the panel of checks; every row opens to its worked lines: the calculation sheet."""

    def nodes(plan: PositionPlan, story: Story) -> tuple[Node, ...]:
        return () if plan.chosen is None else check_nodes(plan.chosen.checks, story)

    panel = ResultPanel(
        context,
        name=tr("Checks with their worked lines"),
        lead=tr("Open a row to follow the calculation by hand: formula, figures, result, source."),
        titles=check_titles(),
        nodes=nodes,
        shares=(30, 25, 22, 16, 13),
        parent=parent,
    )
    row = QHBoxLayout()
    for words, act in ((tr("Open a&ll"), panel.tree.expandAll), (tr("&Close all"), panel.tree.collapseAll)):
        button = QPushButton(words, panel)
        button.clicked.connect(act)
        row.addWidget(button)
    row.addStretch(1)
    panel.column.addLayout(row)
    return panel


def requirement_panel(context: Context, parent: QWidget | None = None) -> ResultPanel:
    """Return the panel of what the position asks of its set."""
    return ResultPanel(
        context,
        name=tr("What this position asks of its set"),
        lead=tr("Derived from the answers and the local rules. Open a row for the rule and its source."),
        titles=requirement_titles(),
        nodes=requirement_nodes,
        shares=(30, 56, 12),
        parent=parent,
    )


def findings_panel(context: Context, parent: QWidget | None = None) -> ResultPanel:
    """Return the panel of findings, grouped by weight."""
    return ResultPanel(
        context,
        name=tr("Findings by weight"),
        lead=tr("Nothing is hidden: what is broken, what is open, what is worth knowing."),
        titles=finding_titles(),
        nodes=finding_nodes,
        shares=(54, 16, 34),
        opened=True,
        parent=parent,
    )
