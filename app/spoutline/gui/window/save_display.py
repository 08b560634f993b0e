"""What the window says of saving: the word at the foot, the notice with its offers, the question before it closes."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QLabel

from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.dialogs.unsaved import Leaving, UnsavedDialog
from spoutline.gui.edits.field_titles import position_field, site_field
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.roles import Tone
from spoutline.gui.session import SaveState, Session
from spoutline.gui.widgets.notice_bar import NoticeBar, Offer
from spoutline.gui.wording import tr
from spoutline.model.faults import StoreFault
from spoutline.planning.refit.survey_merge import MergeConflict

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

_LOOK_EVERY_MS = 3_000
_SAVING_SHOWN_AFTER_MS = 250  # a save that takes no longer is not worth a word that flickers
_CONFLICTS_SHOWN = 6

_WORDS = {
    SaveState.SAVED: "All changes are in the book",
    SaveState.NEWER: "Your changes are in the book; a newer revision too",
    SaveState.SAVING: "Saving…",
    SaveState.WAITING: "NOT saved yet: waiting for the book",
    SaveState.FAILED: "NOT saved",
    SaveState.READ_ONLY: "NOT saved: the book may only be read",
    SaveState.STALE: "NOT saved: saved by another window meanwhile",
    SaveState.REMOVED: "NOT in the book: taken off its list",
}


class SaveDisplay(QObject):
    """Shows the state of saving of one session and offers what can be done about it.

    Signals
    -------
    written(str)
        The survey was written into a file; its path.
    """

    written = Signal(str)

    def __init__(self, session: Session, label: QLabel, notices: NoticeBar, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._label, self._notices, self._window = session, label, notices, window
        self._has_notice = False
        self._slow = QTimer(self)
        self._slow.setSingleShot(True)
        self._slow.setInterval(_SAVING_SHOWN_AFTER_MS)
        self._slow.timeout.connect(self._show_saving)
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_EVERY_MS)
        self._look.timeout.connect(session.look)
        self._look.start()
        session.save_state_changed.connect(self.show_state)
        session.not_remembered.connect(self._tell)
        session.may_leave = self.may_leave
        self.show_state(session.save_state, session.save_reason)

    def stop(self) -> None:
        """Look at the book no more."""
        self._look.stop()
        self._slow.stop()

    def show_state(self, state: SaveState, reason: str) -> None:
        """Show whether the book holds what the window shows."""
        if state is SaveState.SAVING:
            self._slow.start()
            return
        self._slow.stop()
        self._label.setText(tr(_WORDS[state]))
        self._label.setToolTip(reason)
        if state is SaveState.SAVED:
            if self._has_notice:
                self._notices.put_away()
            self._has_notice = False
            return
        text, tone, offers = self._notice(state, reason)
        self._has_notice = True
        self._notices.notify(text, tone=tone, offers=offers)

    def _show_saving(self) -> None:
        if self._session.save_state is SaveState.SAVING:
            self._label.setText(tr(_WORDS[SaveState.SAVING]))

    def _notice(self, state: SaveState, reason: str) -> tuple[str, Tone, tuple[Offer, ...]]:
        session = self._session
        to_file = Offer(tr("Write to a file…"), self._write)
        again = Offer(tr("Save again"), session.save_again)
        if state is SaveState.NEWER:
            return reason, Tone.NOTE, (Offer(tr("Show theirs"), session.take_theirs),)
        if state is SaveState.STALE:
            offers = (
                Offer(tr("Merge both"), self._merge),
                Offer(tr("Keep both"), session.keep_both),
                Offer(tr("Keep mine"), session.keep_mine),
                Offer(tr("Take theirs"), session.take_theirs),
            )
            return reason, Tone.BAD, offers
        if state is SaveState.REMOVED:
            words = tr("This survey is not on the list of the book any more: it was taken off. It stays in the window.")
            return words, Tone.BAD, (Offer(tr("Put it back"), session.put_back), to_file)
        if state is SaveState.WAITING:
            words = tr("The last changes are not in the book yet: {reason} It is tried again by itself.")
            return words.format(reason=reason), Tone.CAUTION, (to_file,)
        if session.survey == session.stored.survey:
            return reason, Tone.BAD, (to_file, again)
        words = tr("This change is not in the book yet: {reason} It stays in the window.").format(reason=reason)
        return words, Tone.BAD, (again, to_file)

    def _merge(self) -> None:
        """Bring both edits together, and say where mine stands against theirs."""
        conflicts = self._session.merge_both()
        if conflicts is None:
            self._tell(tr("The two surveys do not go together. Keep both, or one of them."))
        elif conflicts:
            text = tr("Merged. Yours stands where both changed the same (yours / theirs):")
            self._tell("\n".join((text, *(_conflict_line(one) for one in conflicts[:_CONFLICTS_SHOWN]))))
        else:
            self._has_notice = False  # it tells of a success, which the save that follows must not put away
            self._notices.notify(tr("Merged: both edits go into the book."), tone=Tone.GOOD)

    def _tell(self, text: str) -> None:
        self._has_notice = False
        self._notices.notify(text, tone=Tone.BAD)

    # leaving

    def may_leave(self, *, is_closing: bool = False) -> bool:
        """Return True where nothing would be lost, or the person says what becomes of what is unsaved."""
        if self._session.settle():
            return True
        dialog = UnsavedDialog(self._session, self.ask_and_write, is_closing=is_closing, parent=self._window)
        dialog.exec()
        return dialog.answer is not Leaving.STAY

    def _write(self) -> None:
        self.ask_and_write()

    def ask_and_write(self) -> bool:
        """Ask for a place and write the survey there; say whether it was written."""
        name = f"{file_stem(self._session.survey.site.name)}.spoutline.json"
        saving = Saving(self._session.workbench.files_in_use, self._window)
        path = saving.ask(tr("Write the survey"), name, FileForm.JSON)
        return path is not None and self.write_file(path)

    def write_file(self, path: Path) -> bool:
        """Write the survey into a file and say so; return False where it cannot be written."""
        from spoutline.book.survey_text import survey_to_json
        from spoutline.whole_files import write_file

        try:
            numbered = self._session.survey.model_copy(update={"survey_id": self._session.stored.id})
            write_file(path, survey_to_json(numbered).encode("utf-8"))
        except StoreFault as fault:
            self._notices.notify(str(fault), tone=Tone.BAD)
            return False
        self.written.emit(str(path))
        self._notices.notify(tr("Written to {path}").format(path=path), tone=Tone.NOTE)
        return True


def _conflict_line(one: MergeConflict) -> str:
    field = position_field(one.field) if one.position else site_field(one.field)
    return f"{one.position or tr('site')} {field}: {one.mine or '–'} / {one.theirs or '–'}"
