"""What a quotation made anew means in money, line by line, before it is taken in hand."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from spoutline.documents.quotation.money_change import OptionRows, money_rows
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.escaping import tip
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.planning.refit.money_change import MoneyChange


@frozen
class ForeseenWords:
    """What the dialog is called, what it compares, and what its answer does."""

    title: str
    lead: str
    accept: str


class ForeseenQuoteDialog(FormDialog):
    """Shows every option with what changes of it; accepted where the person wants it quoted so."""

    help_topic = "quotations"

    def __init__(self, change: MoneyChange, story: Story, words: ForeseenWords, parent: QWidget | None = None) -> None:
        super().__init__(words.title, parent)
        self.body.addWidget(plain_label(words.lead, "quiet", wraps=True))
        now = tr("Now, {0}").format(change.currency_after)
        self.model = NodeTree((tr("Option and line"), tr("Before"), now, tr("Difference")), self)
        self.tree = Tree(tr("What changes in money"), self, shares=(8, 3, 3, 3))
        self.tree.setModel(self.model)
        self.model.show_nodes(tuple(_node(rows) for rows in money_rows(change, story)))
        self.tree.expandAll()
        self.body.addWidget(self.tree, 1)
        self.add_buttons(words.accept)
        self.resize(820, 520)


def _node(rows: OptionRows) -> Node:
    total = rows.total
    details = tuple(
        Node(cells=(one.title, one.before, one.after, one.difference), hint=tip(one.title)) for one in rows.details
    )
    missing = (Node(cells=(rows.missing,), tone=Tone.CAUTION, spans=True),) if rows.missing else ()
    return Node(
        cells=(total.title, total.before, total.after, total.difference),
        is_head=True,
        children=(*missing, *details),
        hint=tip(total.title),
    )
