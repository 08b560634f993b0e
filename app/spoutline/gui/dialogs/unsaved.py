"""Asked before something unsaved is left: wait, write it to a file, or lose it knowingly."""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum, auto

from PySide6.QtWidgets import QPushButton, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.session import SaveState, Session
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr


class Leaving(Enum):
    """How the question was answered."""

    STAY = auto()
    SAVED = auto()  # the book took it while the question stood
    WRITTEN = auto()  # it is in a file
    DISCARD = auto()


class UnsavedDialog(FormDialog):
    """Says why the last changes are not in the book. It closes by itself when they are. Escape stays."""

    def __init__(
        self,
        session: Session,
        write: Callable[[], bool],
        *,
        is_closing: bool,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("Not everything is saved"), parent)
        self._session, self._write = session, write
        self.answer = Leaving.STAY
        lead = tr("The last changes of “{name}” are not in the book.").format(name=session.survey.site.name)
        self.body.addWidget(plain_label(lead, wraps=True))
        self.reason_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.reason_label)
        self.stay_button = QPushButton(tr("&Stay here"), self)
        self.again_button = QPushButton(tr("Save &again"), self)
        self.write_button = QPushButton(tr("&Write to a file…"), self)
        lose = tr("Close and &lose the changes") if is_closing else tr("Leave and &lose the changes")
        self.discard_button = QPushButton(lose, self)
        self.stay_button.setObjectName("primary")
        self.stay_button.setDefault(True)
        self.stay_button.clicked.connect(self.reject)
        self.again_button.clicked.connect(session.save_again)
        self.write_button.clicked.connect(self._write_file)
        self.discard_button.clicked.connect(lambda: self._end(Leaving.DISCARD))
        for button in (self.discard_button, self.write_button, self.again_button, self.stay_button):
            button.setAutoDefault(button is self.stay_button)
            self.foot.addWidget(button)
        session.save_state_changed.connect(self._show_state)
        self.resize(560, 180)
        self._show_state(session.save_state, session.save_reason)

    def done(self, result: int) -> None:
        """Qt: listen no longer."""
        self._session.save_state_changed.disconnect(self._show_state)
        super().done(result)

    def _show_state(self, state: SaveState, reason: str) -> None:
        if state.is_saved:
            self._end(Leaving.SAVED)
            return
        is_on_its_way = state in (SaveState.SAVING, SaveState.WAITING)
        self.again_button.setVisible(state in (SaveState.FAILED, SaveState.READ_ONLY))
        waits = tr("They are saved by themselves as soon as the book takes them; this question then goes away.")
        lines = [reason or tr("They are on their way to the book.")]
        if is_on_its_way:
            lines.append(waits)
        self.reason_label.setText("\n".join(lines))

    def _write_file(self) -> None:
        if self._write():
            self._end(Leaving.WRITTEN)

    def _end(self, answer: Leaving) -> None:
        self.answer = answer
        self.accept()
