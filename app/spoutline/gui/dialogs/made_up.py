"""A set sold made up: which parts it is made from, in their order, under which number and at what price."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QListWidget, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.dialogs.article_form import ArticleDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.planning.keeping.cut_texts import read_amounts
from spoutline.planning.keeping.made_up import MadeUpSet, joining_order, made_up_entries


class MadeUpDialog(ArticleDialog[MadeUpSet]):
    """Asks for the article as one types, its parts in an order in which they join where there is one."""

    def __init__(
        self, parts: Iterable[CatalogueEntry], take: Callable[[MadeUpSet], None], parent: QWidget | None = None
    ) -> None:
        super().__init__(tr("Set sold made up"), take, parent)
        self._parts = [*joining_order(parts)]
        words = tr("These parts are sold joined to each other, as one article. Dispenser first, vehicle last:")
        self.body.addWidget(plain_label(words, "quiet", wraps=True))
        self.body.addLayout(self._list())
        self.number_edit = self.line(tr("Number of the article"))
        self.price_edit = self.line(tr("Price of the article"), "412.00 USD")
        self.maker_edit = self.line(tr("Made up by"), self._parts[0].maker)
        self.name_edit = self.line(tr("Called"), tr("made from its parts"))
        self.body.addLayout(self.form)
        self.body.addWidget(self.state_label)
        self.add_buttons(tr("&Put the article into the draft"))
        self.resize(620, 480)
        self._show_parts(0)

    def _list(self) -> QHBoxLayout:
        row, column = QHBoxLayout(), QVBoxLayout()
        self.part_list = QListWidget(self)
        self.part_list.setAccessibleName(tr("Parts of the article, dispenser first"))
        self.up_button = QPushButton(tr("Toward the &dispenser"), self)
        self.up_button.clicked.connect(lambda: self._move(-1))
        self.down_button = QPushButton(tr("Toward the &vehicle"), self)
        self.down_button.clicked.connect(lambda: self._move(1))
        self.part_list.currentRowChanged.connect(lambda _: self._enable())
        for button in (self.up_button, self.down_button):
            button.setAutoDefault(False)
            column.addWidget(button)
        column.addStretch(1)
        row.addWidget(self.part_list, 1)
        row.addLayout(column)
        return row

    def _show_parts(self, row: int) -> None:
        self.part_list.clear()
        self.part_list.addItems([f"{one.ref}  {one.name}" for one in self._parts])
        self.part_list.setCurrentRow(row)
        self._enable()
        self.check()

    def _move(self, by: int) -> None:
        row = self.part_list.currentRow()
        self._parts[row], self._parts[row + by] = self._parts[row + by], self._parts[row]
        self._show_parts(row + by)

    def _enable(self) -> None:
        row = self.part_list.currentRow()
        self.up_button.setEnabled(row > 0)
        self.down_button.setEnabled(0 <= row < len(self._parts) - 1)

    def article(self) -> MadeUpSet:
        """Return the article as it is written; raise ``InputFault``."""
        return MadeUpSet(
            number=self.number_edit.text().strip(),
            parts=tuple(self._parts),
            prices=read_amounts(self.price_edit.text(), tr("Price of the article")),
            maker=self.maker_edit.text().strip(),
            name=self.name_edit.text().strip(),
        )

    def needed(self) -> tuple[QLineEdit, ...]:
        """Return number and price."""
        return self.number_edit, self.price_edit

    def told(self, article: MadeUpSet) -> str:
        """Return number, name and how many parts it has."""
        made = made_up_entries(article)
        return tr("{0}: {1}, {2} parts").format(made[0].number, made[0].name, len(made))
