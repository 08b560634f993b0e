"""The agreed set of the position in focus: whether it still serves, and the set as planned now beside it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.plan.agreed_words import broken_musts, standing_sentence
from spoutline.gui.models.compared_sets import part_nodes
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.plan import PositionPlan
from spoutline.planning.agreement.comparison import ComparedPosition
from spoutline.planning.agreement.making import links_of
from spoutline.planning.agreement.standing import standing_of


class AgreementPanel(QWidget):
    """Shows both sets side by side; agreeing on another one is a person's step.

    Signals
    -------
    agree_wanted(str)
        A person wants to agree on the planned set of the position with this label.
    history_wanted()
        A person wants to read the agreements of the survey.
    """

    agree_wanted = Signal(str)
    history_wanted = Signal()

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 10, 10, 10)
        self.state_label = plain_label("", wraps=True)
        column.addWidget(self.state_label)
        self.model = NodeTree((tr("Place"), tr("Planned now"), tr("Agreed")), self)
        self.tree = Tree(tr("Sets of the position side by side"), self, shares=(3, 4, 4, 4))
        self.tree.setModel(self.model)
        self.tree.setRootIsDecorated(False)
        column.addWidget(self.tree, 1)
        row = QHBoxLayout()
        self.agree_button = QPushButton(tr("Ag&ree on the planned set…"), self)
        self.agree_button.setObjectName("primary")
        self.agree_button.clicked.connect(lambda _=False: self.agree_wanted.emit(context.session.label))
        self.again_button = QPushButton(tr("Plan this position &again"), self)
        self.again_button.clicked.connect(lambda _=False: self.plan_again())
        self.history_button = QPushButton(tr("Al&l agreements…"), self)
        self.history_button.clicked.connect(lambda _=False: self.history_wanted.emit())
        for button in (self.agree_button, self.again_button, self.history_button):
            row.addWidget(button)
        row.addStretch(1)
        column.addLayout(row)
        context.plans.updated.connect(self._on_updated)
        context.sets.updated.connect(self._on_updated)

    def plan_again(self) -> None:
        """Plan the position for the answers of today; the new set is shown beside the agreed one."""
        self._context.plans.plan_again(self._context.session.label)
        self.refresh()

    def refresh(self) -> None:
        """Show the sets of the position in focus."""
        context, label = self._context, self._context.session.label
        story, planned, agreed = context.story, context.plans.plan(label), context.sets.agreed_plan(label)
        columns = {tr("Planned now"): planned, tr("Agreed"): agreed}
        if context.sets.source is SetsSource.BUILT:
            columns[tr("Built")] = context.sets.plan(label)
        compared = ComparedPosition(label=label, sets=tuple(links_of(one) if one else None for one in columns.values()))
        self.model.retitle((tr("Place"), *columns))
        sums = tuple(_sum_words(one, context) for one in columns.values())
        self.model.show_nodes((*part_nodes(compared, story), Node(cells=(tr("Set, list price"), *sums), is_head=True)))
        self.tree.fit_columns()
        self.state_label.setText(self._state(planned, agreed))
        self.agree_button.setEnabled(planned is not None and planned.chosen is not None)

    def _state(self, planned: PositionPlan | None, agreed: PositionPlan | None) -> str:
        story, label = self._context.story, self._context.session.label
        standing = standing_of(agreed) if agreed is not None else None
        lines = [tr("Nothing is agreed for this position.") if standing is None else standing_sentence(standing, story)]
        if agreed is not None and standing is not None and not agreed.keeps_every_must:
            lines += broken_musts(agreed, story)
        if planned is None:
            lines.append(self._context.plans.trouble(label) or tr("Planning this position…"))
        return "\n".join(lines)

    def _on_updated(self, label: str) -> None:
        if label == self._context.session.label and self.isVisible():
            self.refresh()


def _sum_words(plan: PositionPlan | None, context: Context) -> str:
    if plan is None or plan.chosen is None:
        return tr("no set")
    hanging_set = plan.chosen.hanging_set
    return context.story.money(hanging_set.price_minor, hanging_set.currency)
