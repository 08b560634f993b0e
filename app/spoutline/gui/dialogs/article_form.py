"""What the forms of articles share: checked as one types, accepted once the draft took the article."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtWidgets import QFormLayout, QLineEdit, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.model.faults import InputFault, StoreFault

ArticleT = TypeVar("ArticleT")
_LONGEST = 120


class ArticleDialog(FormDialog, Generic[ArticleT]):
    """Asks for an article; accepted once ``take`` took it, which may raise ``InputFault``."""

    help_topic = "catalog"

    def __init__(self, title: str, take: Callable[[ArticleT], None], parent: QWidget | None = None) -> None:
        super().__init__(title, parent)
        self._make = take
        self.form = QFormLayout()
        self.state_label = plain_label("", "quiet", wraps=True)

    @abstractmethod
    def article(self) -> ArticleT:
        """Return the article as it is written; raise ``InputFault``."""

    @abstractmethod
    def needed(self) -> tuple[QLineEdit, ...]:
        """Return the lines without which there is nothing to check yet."""

    @abstractmethod
    def told(self, article: ArticleT) -> str:
        """Return what would come into the draft; raise ``InputFault`` where the article is not usable."""

    def line(self, words: str, hint: str = "") -> QLineEdit:
        """Add a line to the form and return it."""
        line = QLineEdit(self)
        line.setAccessibleName(words)
        line.setPlaceholderText(hint)
        line.setMaxLength(_LONGEST)
        line.textChanged.connect(lambda _: self.check())
        self.form.addRow(words, line)
        return line

    def check(self) -> None:
        """Say what would come into the draft, or what would be right."""
        told, fault = "", ""
        if all(line.text().strip() for line in self.needed()):
            try:
                told = self.told(self.article())
            except InputFault as found:
                fault = str(found.problems[0])
        self.state_label.setText(told)
        self.show_fault(fault)
        self.accept_button.setEnabled(bool(told))

    def accept(self) -> None:
        """Qt: take the article, or say why it cannot be taken."""
        try:
            self._make(self.article())
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        super().accept()
