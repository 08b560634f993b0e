"""The panel of other sets, filled as they are found."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.edits.decisions import keep_parts, release_all
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.other_sets import OtherSetRows, are_of_a_kind, kind_of, other_set_titles
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.plan import Alternative, AlternativeKind
from spoutline.model.staged_plan import StagedPlan


class OtherSetsPanel(QWidget):
    """Other sets with their price difference; taking one keeps its parts, which is an answer like any other.

    They are looked for in turn when the set is there, and shown as they come: a row for each kind stands there from the
    beginning, and what was found is moved by nothing that comes later. Those of former answers are never shown.

    Signals
    -------
    weigh_wanted()
        A person wants to see all sets that no other outdoes.
    """

    weigh_wanted = Signal()

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 10, 10, 10)
        self._lead = plain_label("", "quiet", wraps=True)
        column.addWidget(self._lead)
        self.model = NodeTree(other_set_titles(), self)
        self.tree = Tree(tr("Other sets"), self, shares=(44, 20, 22, 16))
        self.tree.setModel(self.model)
        # a bar that appeared as rows come would narrow those that are being read
        self.tree.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        column.addWidget(self.tree, 1)
        column.addLayout(self._buttons())
        self.tree.opened.connect(self._take)
        self.tree.picked.connect(lambda _: self._show_whether_taken())
        self._rows: OtherSetRows | None = None
        self._kind: AlternativeKind | None = None  # marked and scrolled to, while none are there
        self._scrolled = 0

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.take_button = QPushButton(tr("&Take the marked set"), self)
        self.take_button.setObjectName("primary")
        self.take_button.clicked.connect(lambda: self._take(self._marked()))
        self.release_button = QPushButton(tr("&Let all parts go"), self)
        self.release_button.clicked.connect(self._release)
        self.weigh_button = QPushButton(tr("&Weigh all sets…"), self)
        self.weigh_button.setToolTip(tr("Every set that no other outdoes in price, lead time, flow and more."))
        self.weigh_button.clicked.connect(lambda _=False: self.weigh_wanted.emit())
        for button in (self.take_button, self.release_button, self.weigh_button):
            row.addWidget(button)
        row.addStretch(1)
        return row

    @property
    def is_waiting(self) -> bool:
        """Whether other sets are being looked for."""
        staged = self._staged
        if staged is None:
            return not self._context.plans.trouble(self._context.session.label)
        return staged.plan.chosen is not None and staged.alternatives is None

    @property
    def lead_text(self) -> str:
        """What stands above the tree."""
        return self._lead.text()

    def refresh(self) -> None:
        """Show the other sets known by now. One is always marked, and only what has come can be taken."""
        rows = self._rows_now()
        nodes = () if rows is None or self._staged is None else rows.nodes(self._staged)
        if rows is self._rows:
            self._fill(nodes)
        else:
            self._lay_out(rows, nodes)
        self._lead.setText(self._lead_text())
        self._show_whether_taken()
        decisions = self._context.session.position.decisions
        self.release_button.setEnabled(bool(decisions.pinned or decisions.refused))

    @property
    def _staged(self) -> StagedPlan | None:
        """The set as planned: what a person takes here is an answer, whatever is agreed."""
        return self._context.plans.staged(self._context.session.label)

    def _rows_now(self) -> OtherSetRows | None:
        """Return the rows that are shown, or new ones where these are of another set or in other units."""
        staged, story = self._staged, self._context.story
        if staged is None or staged.plan.chosen is None:
            return None
        chosen, shown = staged.plan.chosen.hanging_set, self._rows
        is_shown = shown is not None and shown.chosen is chosen and shown.story is story
        return shown if is_shown else OtherSetRows(chosen, story)

    def _lay_out(self, rows: OtherSetRows | None, nodes: tuple[Node, ...]) -> None:
        """Show the rows of another set; of these the kind marked before is marked again, else the first."""
        marked, scroll_bar = self._kind_at(self.tree.currentIndex()), self.tree.verticalScrollBar()
        if marked is not None:
            self._kind, self._scrolled = marked, scroll_bar.value()
        self._rows = rows
        self.model.show_nodes(nodes)
        self._open(self._row_indexes())
        self.tree.fit_columns()
        self._mark()
        if nodes:
            scroll_bar.setValue(self._scrolled)

    def _fill(self, nodes: tuple[Node, ...]) -> None:
        """Show what has come since in the rows that are there; the mark stays, and a person may have closed some."""
        empty = {self._kind_at(index) for index in self._row_indexes() if not self.model.rowCount(index)}
        if self.model.fill_nodes(nodes, are_of_a_kind):
            empty = {kind_of(node.record) for node in nodes}
        self._open([index for index in self._row_indexes() if self._kind_at(index) in empty])
        if not self.tree.currentIndex().isValid():
            self._mark()

    def _open(self, indexes: Sequence[QModelIndex]) -> None:
        self.tree.span_rows(self.model.spanning())
        for index in indexes:
            self.tree.expand(index)

    def _mark(self) -> None:
        rows = self._row_indexes()
        alike = [index for index in rows if self._kind is not None and self._kind_at(index) is self._kind]
        for index in (*alike, *rows)[:1]:
            self.tree.pick(index)

    def _row_indexes(self) -> list[QModelIndex]:
        return [self.model.index(row, 0) for row in range(self.model.rowCount())]

    def _lead_text(self) -> str:
        if self.model.rowCount() > 0:
            return tr(
                "Each differs in kind from the set in hand. Taking one keeps its parts; undo brings back the cheapest."
            )
        if self.is_waiting:
            return tr("Looking for other sets…")
        if self._context.session.position.decisions.pinned:
            return tr(
                "Parts of this set are kept by choice, which leaves no other set to compare. Let them go to see others."
            )
        return tr("No other set differs in a way worth showing.")

    def _show_whether_taken(self) -> None:
        """Say whether the marked set can be taken yet."""
        can_take = self._marked() is not None
        if not can_take and self.take_button.hasFocus():
            self.tree.setFocus()  # Qt would give the keyboard to what happens to come next
        self.take_button.setEnabled(can_take)
        self.take_button.setToolTip(
            tr("Waits until the other sets are found.") if self.is_waiting and not can_take else ""
        )

    def _kind_at(self, index: QModelIndex) -> AlternativeKind | None:
        node = self.model.node_at(_whole_row(index))
        return kind_of(node.record) if node is not None else None

    def _marked(self) -> Alternative | None:
        node = self.model.node_at(_whole_row(self.tree.currentIndex()))
        return node.record if node is not None and isinstance(node.record, Alternative) else None

    def _take(self, record: object) -> None:
        if isinstance(record, Alternative):
            session = self._context.session
            after = keep_parts(session.survey, session.label, record.judged.hanging_set.refs)
            self._context.edit(after, self._context.story.title(record.kind))

    def _release(self) -> None:
        session = self._context.session
        self._context.edit(release_all(session.survey, session.label), tr("Let all parts go"))


def _whole_row(index: QModelIndex) -> QModelIndex:
    """Return the row of an other set, where one of its parts is current."""
    first = index.siblingAtColumn(0)
    return first.parent() if first.parent().isValid() else first
