"""Panels that show one tree of results each: checks, what is asked, findings, other sets."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.plan.story import Story
from spoutline.gui.edits.decisions import keep_parts, release_all
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.result_nodes import (
    alternative_nodes,
    alternative_titles,
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
from spoutline.model.plan import Alternative, AlternativeKind, PositionPlan

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
        plan = self._plan()
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

    def _plan(self) -> PositionPlan | None:
        return self._context.plan_to_show

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


class OtherSetsPanel(ResultPanel):
    """Other sets with their price difference; taking one keeps its parts, which is an answer like any other.

    They are looked for when the set is there. Until they come none is shown: those of before are of other answers.

    Signals
    -------
    weigh_wanted()
        A person wants to see all sets that no other outdoes.
    """

    weigh_wanted = Signal()

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(
            context,
            name=tr("Other sets"),
            lead="",
            titles=alternative_titles(),
            nodes=alternative_nodes,
            shares=(44, 20, 22, 16),
            opened=True,
            parent=parent,
        )
        row = QHBoxLayout()
        self.take_button = QPushButton(tr("&Take the marked set"), self)
        self.take_button.setObjectName("primary")
        self.take_button.clicked.connect(lambda: self._take(self._marked()))
        self.release_button = QPushButton(tr("&Let all parts go"), self)
        self.release_button.clicked.connect(self._release)
        row.addWidget(self.take_button)
        self.weigh_button = QPushButton(tr("&Weigh all sets…"), self)
        self.weigh_button.setToolTip(tr("Every set that no other outdoes in price, lead time, flow and more."))
        self.weigh_button.clicked.connect(lambda _=False: self.weigh_wanted.emit())
        row.addWidget(self.release_button)
        row.addWidget(self.weigh_button)
        row.addStretch(1)
        self.column.addLayout(row)
        self.tree.opened.connect(self._take)
        self._kind: AlternativeKind | None = None  # marked and scrolled to, while none are there
        self._scrolled = 0

    @property
    def is_waiting(self) -> bool:
        """Whether other sets are being looked for."""
        staged = self._context.plans.staged(self._context.session.label)
        if staged is None:
            return not self._context.plans.trouble(self._context.session.label)
        return staged.plan.chosen is not None and staged.alternatives is None

    def refresh(self) -> None:
        """Show the other sets of the present plan; the one taken is always the one that is seen to be marked."""
        marked, scroll_bar = self._marked(), self.tree.verticalScrollBar()
        if marked is not None:
            self._kind, self._scrolled = marked.kind, scroll_bar.value()
        super().refresh()
        self._mark_again(self._kind)
        has_rows = self.model.rowCount() > 0
        if has_rows:
            scroll_bar.setValue(self._scrolled)
        if not has_rows and self.take_button.hasFocus():
            self.tree.setFocus()  # Qt would give the keyboard to what happens to come next
        self.take_button.setEnabled(has_rows)
        self.take_button.setToolTip(tr("Waits until the other sets are found.") if self.is_waiting else "")
        decisions = self._context.session.position.decisions
        self.release_button.setEnabled(bool(decisions.pinned or decisions.refused))
        self._lead.setText(self._lead_for(has_rows=has_rows, has_kept=bool(decisions.pinned)))

    def _plan(self) -> PositionPlan | None:
        """Return the set as planned: what a person takes here is an answer, whatever is agreed."""
        staged = self._context.plans.staged(self._context.session.label)
        return staged.whole if staged is not None else None

    def _lead_for(self, *, has_rows: bool, has_kept: bool) -> str:
        if self.is_waiting:
            return tr("Looking for other sets…")
        if has_rows:
            return tr(
                "Each differs in kind from the set in hand. Taking one keeps its parts; undo brings back the cheapest."
            )
        if has_kept:
            return tr(
                "Parts of this set are kept by choice, which leaves no other set to compare. Let them go to see others."
            )
        return tr("No other set differs in a way worth showing.")

    def _mark_again(self, kind: AlternativeKind | None) -> None:
        """Mark the set that differs in the same way as the one marked before, else the first."""
        rows = [self.model.index(row, 0) for row in range(self.model.rowCount())]
        alike = [index for index in rows if kind is not None and self._kind_at(index) is kind]
        for index in (*alike, *rows)[:1]:
            self.tree.pick(index)

    def _kind_at(self, index: QModelIndex) -> AlternativeKind | None:
        node = self.model.node_at(index)
        return node.record.kind if node is not None and isinstance(node.record, Alternative) else None

    def _marked(self) -> Alternative | None:
        index = self.tree.currentIndex().siblingAtColumn(0)
        if index.parent().isValid():
            index = index.parent()
        node = self.model.node_at(index)
        return node.record if node is not None and isinstance(node.record, Alternative) else None

    def _take(self, record: object) -> None:
        if isinstance(record, Alternative):
            session = self._context.session
            after = keep_parts(session.survey, session.label, record.judged.hanging_set.refs)
            self._context.edit(after, self._context.story.title(record.kind))

    def _release(self) -> None:
        session = self._context.session
        self._context.edit(release_all(session.survey, session.label), tr("Let all parts go"))
