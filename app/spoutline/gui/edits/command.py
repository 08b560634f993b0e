"""Every edit is a command that swaps one frozen survey for another."""

from __future__ import annotations

from weakref import ref

from PySide6.QtGui import QUndoCommand

from spoutline.gui.session import Session
from spoutline.model.answered import same_answers
from spoutline.model.survey import Survey


class SwapSurvey(QUndoCommand):
    """Set the survey after the edit; undo sets the one before. The window turns to the position that changed."""

    def __init__(self, session: Session, after: Survey, text: str, focus_after: str) -> None:
        super().__init__(text)
        self._session = ref(session)  # see ``EditStack``
        self._before, self._after = session.survey, after
        self._focus_before, self._focus_after = session.label, focus_after

    def redo(self) -> None:
        """Set the survey after the edit."""
        self._replace(self._after, self._focus_after)

    def undo(self) -> None:
        """Set the survey before the edit."""
        self._replace(self._before, self._focus_before)

    def _replace(self, survey: Survey, focus: str) -> None:
        session = self._session()
        if session is not None:
            session.replace_survey(survey, focus)


def make_edit(session: Session, after: Survey, text: str, focus: str | None = None) -> bool:
    """Put an edit on the undo stack and carry it out; an edit that changes nothing is none.

    Parameters
    ----------
    session
        The survey in hand.
    after
        The survey after the edit, already valid.
    text
        What the undo menu calls the edit.
    focus
        Label of the position to turn to; the one looked at where None.

    Returns
    -------
    bool
        Whether anything changed.
    """
    if same_answers(after, session.survey):
        return False
    session.undo_stack.push(SwapSurvey(session, after, text, focus or session.label))
    return True
