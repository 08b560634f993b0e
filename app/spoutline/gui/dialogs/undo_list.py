"""Every change since the survey was opened, to go back to any of them and forward again."""

from __future__ import annotations

from PySide6.QtGui import QUndoStack
from PySide6.QtWidgets import QUndoView, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr


class UndoListDialog(FormDialog):
    """Shows the stack of changes. Choosing a row takes back what came after it, or makes it again."""

    def __init__(self, stack: QUndoStack, parent: QWidget | None = None) -> None:
        super().__init__(tr("Steps taken"), parent)
        words = tr("Choose a step to go back to it, or forward to it again. The page behind follows at once.")
        self.body.addWidget(plain_label(words, "quiet", wraps=True))
        self.view = QUndoView(stack, self)
        self.view.setEmptyLabel(tr("As the survey was opened"))
        self.view.setAccessibleName(tr("Steps taken since the survey was opened"))
        self.body.addWidget(self.view, 1)
        self.add_close()
        self.resize(460, 420)
