"""Ask who takes a step, and why."""

from __future__ import annotations

from PySide6.QtWidgets import QFormLayout, QHBoxLayout, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.wording import tr

_NAME_ROOM = 120
_REASON_ROOM = 2000


class NamedStepDialog(FormDialog):
    """Asks for the name of the person who takes a step, and why."""

    help_topic = "agreed_sets"

    def __init__(
        self,
        title: str,
        lead: str,
        name: str,
        accept_words: str,
        parent: QWidget | None = None,
        *,
        needs_reason: bool = False,
    ) -> None:
        super().__init__(title, parent)
        self._needs_reason = needs_reason
        self.body.addWidget(plain_label(lead, wraps=True))
        self.middle = QHBoxLayout()
        self.body.addLayout(self.middle)
        form = QFormLayout()
        self.name_edit = LineEditor(name, self)
        self.name_edit.setObjectName("agreedBy")
        self.name_edit.setMaxLength(_NAME_ROOM)
        self.name_edit.setAccessibleName(tr("Your name"))
        self.reason_edit = LineEditor(self)
        self.reason_edit.setObjectName("agreedWhy")
        self.reason_edit.setMaxLength(_REASON_ROOM)
        self.reason_edit.setAccessibleName(tr("Reason"))
        form.addRow(tr("Your name"), self.name_edit)
        form.addRow(tr("Reason"), self.reason_edit)
        self.body.addLayout(form)
        self.add_buttons(accept_words)
        self.name_edit.textChanged.connect(lambda _: self.check())
        self.reason_edit.textChanged.connect(lambda _: self.check())
        (self.reason_edit if name and needs_reason else self.name_edit).setFocus()
        self.resize(520, 190)
        self.check()

    @property
    def name(self) -> str:
        """Who takes the step."""
        return self.name_edit.text().strip()

    @property
    def reason(self) -> str:
        """Why; empty where nobody said."""
        return self.reason_edit.text().strip()

    @property
    def is_signed(self) -> bool:
        """Whether name and reason are there."""
        return bool(self.name) and (bool(self.reason) or not self._needs_reason)

    def check(self) -> None:
        """Let the step be taken only by somebody with a name, and a reason where one is needed."""
        self.accept_button.setEnabled(self.is_signed)
