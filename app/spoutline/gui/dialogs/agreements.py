"""The agreements of a survey: their history, two of them compared, and planned, agreed and built side by side."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QTabWidget, QVBoxLayout, QWidget

from spoutline.explain.plan.agreed_words import entry_source, entry_word
from spoutline.explain.plan.story import Story
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.escaping import tip
from spoutline.gui.local_days import moment_text
from spoutline.gui.models.compared_sets import compared_nodes
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.position_links import lead_to
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.agreed_sets import AgreedSets, EntryKind
from spoutline.planning.agreement.comparison import ComparedPosition, agreed_sets_by_label, compared


class AgreementsDialog(FormDialog):
    """Reads only. ``withdraw_wanted`` says whether the person wants to take the last agreement back."""

    help_topic = "agreed_sets"

    def __init__(
        self,
        entries: Sequence[AgreedSets],
        labels: Sequence[str],
        story: Story,
        *,
        can_withdraw: bool,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("Agreements"), parent)
        self._entries, self._labels, self._story = tuple(entries), tuple(labels), story
        self.withdraw_wanted = False
        self.tabs = QTabWidget(self)
        self.tabs.addTab(self._history(), tr("&History"))
        self.tabs.addTab(self._sides(), tr("&Planned, agreed and built"))
        self.body.addWidget(self.tabs, 1)
        self.withdraw_button = QPushButton(tr("&Undo the last agreement…"), self)
        self.withdraw_button.setAutoDefault(False)
        self.withdraw_button.setEnabled(can_withdraw)
        self.withdraw_button.clicked.connect(self._withdraw)
        self.foot.insertWidget(0, self.withdraw_button)
        self.add_close()
        self.resize(860, 600)
        self._compare()

    def _history(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        self.model: RecordTable[AgreedSets] = RecordTable(_columns(self._story), self)
        self.model.show_records(tuple(reversed(self._entries)))
        self.table = Table(tr("Agreements and withdrawals"), self, shares=(2, 4, 7, 6, 12, 3, 8))
        self.table.setModel(self.model)
        column.addWidget(self.table, 2)
        row = QHBoxLayout()
        agreed = [one for one in self._entries if one.entry is EntryKind.AGREED]
        self.before_box, self.after_box = StillBox(side), StillBox(side)
        for box, words, place in (
            (self.before_box, tr("Compare agreement"), max(0, len(agreed) - 2)),
            (self.after_box, tr("with agreement"), len(agreed) - 1),
        ):
            box.setAccessibleName(words)
            for one in agreed:
                box.addItem(f"{one.serial}: {entry_source(one, self._story)}", one)
            box.setCurrentIndex(place)
            box.setMinimumContentsLength(14)
            box.currentIndexChanged.connect(lambda _: self._compare())
            row.addWidget(plain_label(words, "quiet"))
            row.addWidget(box, 1)
        column.addLayout(row)
        self.difference_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.difference_label)
        self.differences = NodeTree((tr("Position"), "", ""), self)
        self.difference_tree = Tree(tr("What differs between two agreements"), self, shares=(3, 4, 4))
        self.difference_tree.setModel(self.differences)
        column.addWidget(self.difference_tree, 3)
        return side

    def _sides(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        self.sides_label = plain_label(tr("Planning and reading what hangs there…"), "quiet", wraps=True)
        column.addWidget(self.sides_label)
        self.sides = NodeTree((tr("Position"), tr("Planned now"), tr("Agreed"), tr("Built")), self)
        self.sides_tree = Tree(tr("Planned, agreed and built side by side"), self, shares=(3, 3, 3, 3))
        self.sides_tree.setModel(self.sides)
        column.addWidget(self.sides_tree, 1)
        return side

    def show_sides(self, titles: Sequence[str], positions: Sequence[ComparedPosition]) -> None:
        """Show the sets of the whole site side by side."""
        self.sides.retitle((tr("Position"), *titles))
        self.sides.show_nodes(compared_nodes(positions, self._story))
        self.sides_tree.fit_columns()
        _open_what_differs(self.sides_tree, self.sides, positions)
        self.sides_label.setText(_told(positions))

    def turn_to_position(self, label: str) -> None:
        """Close, and bring a position that a row names into view; nothing is lost, since nothing is entered here."""
        self.accept()
        around = self.parentWidget()
        if around is not None:
            lead_to(around, label)

    def show_trouble(self, text: str) -> None:
        """Say why the sides cannot be shown."""
        self.sides_label.setText(told(text))

    def _compare(self) -> None:
        before, after = self.before_box.currentData(), self.after_box.currentData()
        if not isinstance(before, AgreedSets) or not isinstance(after, AgreedSets):
            self.difference_label.setText(tr("Nothing has been agreed yet."))
            return
        found = compared((agreed_sets_by_label(before), agreed_sets_by_label(after)), self._labels)
        words = tr("Agreement {0}")
        self.differences.retitle((tr("Position"), words.format(before.serial), words.format(after.serial)))
        self.differences.show_nodes(compared_nodes(found, self._story))
        self.difference_tree.fit_columns()
        _open_what_differs(self.difference_tree, self.differences, found)
        self.difference_label.setText(_told(found))

    def _withdraw(self) -> None:
        self.withdraw_wanted = True
        self.accept()


def _told(positions: Sequence[ComparedPosition]) -> str:
    count = sum(one.differs for one in positions)
    return tr("{0} of {1} positions differ.").format(count, len(positions))


def _open_what_differs(tree: Tree, model: NodeTree, positions: Sequence[ComparedPosition]) -> None:
    for one in positions:
        if one.differs:
            tree.expand(model.index_of(one.label))


def _columns(story: Story) -> tuple[Column[AgreedSets], ...]:
    def column(title: str, text: Callable[[AgreedSets], str]) -> Column[AgreedSets]:
        return Column(title=title, text=text, hint=lambda one: tip(text(one)))

    return (
        column(tr("No."), lambda one: str(one.serial)),
        column(tr("Step"), lambda one: entry_word(one, story)),
        column(tr("When"), lambda one: moment_text(one.agreed_at)),
        column(tr("Who"), lambda one: one.origin.by),
        column(tr("What chose the sets"), lambda one: entry_source(one, story)),
        column(tr("Sets"), lambda one: str(sum(bool(place.set) for place in one.positions)) if one.positions else ""),
        column(tr("Reason"), lambda one: one.origin.reason),
    )
