"""Ask which sets are agreed on, by whom and why."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QListWidgetItem, QPushButton, QWidget

from spoutline.frozen import frozen
from spoutline.gui.dialogs.named_step import NamedStepDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr


@frozen
class OfferedSet:
    """A position whose set can be agreed on: its parts in words; none where it has no set."""

    label: str
    words: str
    has_set: bool
    is_picked: bool


class AgreeDialog(NamedStepDialog):
    """Asks for positions too; those without a set cannot be picked."""

    def __init__(self, lead: str, sets: Sequence[OfferedSet], name: str, parent: QWidget | None = None) -> None:
        self.list = QListWidget()
        super().__init__(tr("Agree on these sets"), lead, name, tr("&Agree"), parent)
        self.list.setAccessibleName(tr("Positions to agree on"))
        for one in sets:
            item = QListWidgetItem(f"{one.label}:  {one.words}")
            item.setData(Qt.ItemDataRole.UserRole, one.label)
            if one.has_set:
                item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
                item.setCheckState(Qt.CheckState.Checked if one.is_picked else Qt.CheckState.Unchecked)
            else:
                item.setFlags(Qt.ItemFlag.NoItemFlags)
            self.list.addItem(item)
        self.list.itemChanged.connect(lambda _: self.check())
        self.middle.addWidget(self.list, 1)
        self.count_label = plain_label("", "quiet")
        row = QHBoxLayout()
        row.addWidget(self.count_label, 1)
        for words, state in ((tr("A&ll"), Qt.CheckState.Checked), (tr("N&one"), Qt.CheckState.Unchecked)):
            button = QPushButton(words, self)
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, wanted=state: self._check_all(wanted))
            row.addWidget(button)
        self.body.insertLayout(2, row)
        self.resize(640, 460)
        self.check()

    @property
    def labels(self) -> tuple[str, ...]:
        """The positions picked, in survey order."""
        items = (self.list.item(row) for row in range(self.list.count()))
        return tuple(
            str(item.data(Qt.ItemDataRole.UserRole)) for item in items if item.checkState() is Qt.CheckState.Checked
        )

    @property
    def is_whole(self) -> bool:
        """Whether every position that has a set is picked."""
        items = (self.list.item(row) for row in range(self.list.count()))
        return all(item.checkState() is Qt.CheckState.Checked for item in items if item.flags())

    def check(self) -> None:
        """Let only somebody with a name agree, on one position at least."""
        count = len(self.labels)
        super().check()
        if hasattr(self, "count_label"):
            words = tr("{0} positions picked") if count != 1 else tr("{0} position picked")
            self.count_label.setText(words.format(count))
            self.accept_button.setEnabled(self.is_signed and count > 0)

    def _check_all(self, state: Qt.CheckState) -> None:
        for row in range(self.list.count()):
            item = self.list.item(row)
            if item.flags() & Qt.ItemFlag.ItemIsUserCheckable:
                item.setCheckState(state)
