"""The survey in hand, its undo stack and what the window looks at: the only mutable state of the window."""

from __future__ import annotations

from enum import Flag, auto
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from spoutline.book.records import StaleSurvey, StoredSurvey
from spoutline.model.faults import StoreFault
from spoutline.model.survey import Position, Survey
from spoutline.planning.refit.survey_merge import MergeConflict, merged
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


_OWN_COPY = "(own copy)"
_NAME_ROOM = 60 - len(_OWN_COPY) - 1  # a site's name has at most 60 characters


class Changed(Flag):
    """What a view has to look at again."""

    SURVEY = auto()
    FOCUS = auto()
    UNITS = auto()
    PART = auto()
    ALL = SURVEY | FOCUS | UNITS


class SaveState(Flag):
    """Whether the book holds what the window shows."""

    SAVED = auto()
    FAILED = auto()
    STALE = auto()


class Session(QObject):
    """One open survey.

    Every edit reaches the book before the call returns. Where that fails the edit stays in the window and
    ``save_state`` says so; the next edit or ``save_again`` tries once more.

    Signals
    -------
    changed(Changed)
        The survey, the position looked at or the unit system is another one.
    save_state_changed(SaveState, str)
        The last save succeeded or failed, with the reason in plain words.
    """

    changed = Signal(object)
    save_state_changed = Signal(object, str)

    def __init__(
        self, workbench: Workbench, stored: StoredSurvey, system: UnitSystem, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.workbench = workbench
        self.undo_stack = QUndoStack(self)
        self.revision = 0
        self._stored = stored
        self._survey = stored.survey
        self._label = stored.survey.positions[0].label
        self._display = Display(system)
        self._save_state = SaveState.SAVED
        self._newer: StoredSurvey | None = None
        self._part_number = ""

    @property
    def survey(self) -> Survey:
        """The survey as the window shows it."""
        return self._survey

    @property
    def stored(self) -> StoredSurvey:
        """The survey as the book was last known to hold it."""
        return self._stored

    @property
    def label(self) -> str:
        """Label of the position looked at."""
        return self._label

    @property
    def position(self) -> Position:
        """The position looked at."""
        position = self._survey.position(self._label)
        return position if position is not None else self._survey.positions[0]

    @property
    def display(self) -> Display:
        """The unit system in which figures are shown and read."""
        return self._display

    @property
    def save_state(self) -> SaveState:
        """Whether the book holds what the window shows."""
        return self._save_state

    @property
    def part_number(self) -> str:
        """Number of the part looked at; empty for none."""
        return self._part_number

    def look_at_part(self, number: str) -> None:
        """Turn to another part, in the drawing and in every list at once."""
        if number != self._part_number:
            self._part_number = number
            self.changed.emit(Changed.PART)

    def look_at(self, label: str) -> None:
        """Turn to another position of the survey; an unknown label changes nothing."""
        if label != self._label and self._survey.position(label) is not None:
            self._label = label
            self.changed.emit(Changed.FOCUS)

    def use_units(self, system: UnitSystem) -> None:
        """Show and read figures in another unit system."""
        if system is not self._display.system:
            self._display = Display(system)
            self.changed.emit(Changed.UNITS)

    def replace_survey(self, survey: Survey, label: str) -> None:
        """Set the survey; for edit commands only. The book is told before any view is."""
        self._survey = survey
        self.revision += 1
        focus = survey.position(label) or survey.position(self._label) or survey.positions[0]
        what = Changed.SURVEY if focus.label == self._label else Changed.SURVEY | Changed.FOCUS
        self._label = focus.label
        self._save()
        self.changed.emit(what)

    def open(self, stored: StoredSurvey) -> None:
        """Turn to another survey of the book. Its undo stack is empty."""
        self._stored, self._survey, self._newer = stored, stored.survey, None
        self.revision += 1
        self._label = stored.survey.positions[0].label
        self.undo_stack.clear()
        self._announce(SaveState.SAVED, "")
        self.changed.emit(Changed.ALL)

    def save_again(self) -> None:
        """Try the failed save once more."""
        self._save()

    def keep_mine(self) -> None:
        """Save over the newer revision that somebody else wrote. The book keeps theirs among its past revisions."""
        if self._newer is not None:
            self._stored, self._newer = self._newer, None
            self._save()

    def take_theirs(self) -> None:
        """Turn to the newer revision that somebody else wrote."""
        if self._newer is not None:
            self.open(self._newer)

    def merge_both(self) -> tuple[MergeConflict, ...] | None:
        """Bring both edits together and save; return where mine stands against theirs, None where nothing was saved.

        Undo begins anew: what was done before would take their work away.
        """
        newer = self._newer
        if newer is None:
            return ()
        found = merged(self._stored.survey, self._survey, newer.survey)
        if found.survey is None:
            return None
        self._stored, self._newer, self._survey = newer, None, found.survey
        self.revision += 1
        if found.survey.position(self._label) is None:
            self._label = found.survey.positions[0].label
        self.undo_stack.clear()
        self._save()
        self.changed.emit(Changed.ALL)
        return found.conflicts

    def keep_both(self) -> None:
        """Put my survey into the book as one of its own and turn to it; theirs stays as it is."""
        if self._newer is None:
            return
        name = f"{self._survey.site.name[:_NAME_ROOM]} {_OWN_COPY}"
        site = self._survey.site.model_copy(update={"name": name})
        self.open(self.workbench.book().create(self._survey.model_copy(update={"site": site})))

    def _save(self) -> None:
        if self._newer is not None:
            self._announce(SaveState.STALE, str(StaleSurvey(self._newer)))
            return
        try:
            self._stored = self.workbench.book().save(self._stored, self._survey)
        except StaleSurvey as stale:
            self._newer = stale.stored
            self._announce(SaveState.STALE, str(stale))
        except StoreFault as fault:
            self._announce(SaveState.FAILED, str(fault))
        else:
            self._announce(SaveState.SAVED, "")

    def _announce(self, state: SaveState, reason: str) -> None:
        self._save_state = state
        self.save_state_changed.emit(state, reason)
