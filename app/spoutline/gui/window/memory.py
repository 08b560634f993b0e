"""What the window remembers from one start to the next: size, splitters, page, position, files. Nothing of a survey."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QObject, QSettings, Signal

from spoutline.frozen import frozen
from spoutline.gui.edits.question import Step
from spoutline.gui.places import Place

if TYPE_CHECKING:
    from PySide6.QtWidgets import QSplitter, QWidget

_MOST_FILES = 8
_GEOMETRY, _FILES = "window/geometry", "files/recent"


@frozen(kw_only=True)
class LastView:
    """What was in view: survey of the book, position, place, step of the walk."""

    survey_id: int
    label: str
    place: Place
    step: Step


class WindowMemory(QObject):
    """Kept in a file of settings; without a file it lasts as long as the window.

    Signals
    -------
    files_changed()
        Other files were read or written last.
    """

    files_changed = Signal()

    def __init__(self, file: Path | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._kept = QSettings(str(file), QSettings.Format.IniFormat) if file is not None else None
        self._files = [Path(one) for one in self._texts(_FILES)]

    # size and splitters

    def keep_window(self, window: QWidget) -> None:
        """Keep size and place of the window on the screen."""
        self._set(_GEOMETRY, window.saveGeometry())

    def give_window_back(self, window: QWidget) -> bool:
        """Give the window its last size and place; False where there is none, or its screen is gone."""
        kept = self._value(_GEOMETRY)
        return isinstance(kept, QByteArray) and window.restoreGeometry(kept)

    def keep_splitter(self, name: str, splitter: QSplitter) -> None:
        """Keep how a splitter divides its room."""
        self._set(f"splitters/{name}", splitter.saveState())

    def give_splitter_back(self, name: str, splitter: QSplitter) -> None:
        """Divide the room of a splitter as it was."""
        kept = self._value(f"splitters/{name}")
        if isinstance(kept, QByteArray):
            splitter.restoreState(kept)

    # what was in view

    def keep_view(self, view: LastView) -> None:
        """Keep what is in view."""
        for name, value in (
            ("survey", view.survey_id),
            ("label", view.label),
            ("place", view.place.value),
            ("step", view.step.value),
        ):
            self._set(f"view/{name}", value)

    def last_view(self) -> LastView | None:
        """Return what was in view; None where nothing is known of it."""
        try:
            return LastView(
                survey_id=int(str(self._value("view/survey"))),
                label=str(self._value("view/label")),
                place=Place(str(self._value("view/place"))),
                step=Step(str(self._value("view/step"))),
            )
        except ValueError:
            return None

    # files

    @property
    def files(self) -> tuple[Path, ...]:
        """The survey files that were read or written last and are still there, newest first."""
        # of a folder that may no longer be entered Path's own question fails
        return tuple(one for one in self._files if os.path.isfile(one))  # noqa: PTH113

    def add_file(self, path: Path) -> None:
        """Put a file at the head of those used last."""
        path = path.absolute()
        self._files = [path, *(one for one in self._files if one != path)][:_MOST_FILES]
        self._set(_FILES, [str(one) for one in self._files])
        self.files_changed.emit()

    # inside

    def _value(self, name: str) -> object:
        return self._kept.value(name) if self._kept is not None else None

    def _texts(self, name: str) -> list[str]:
        value = self._value(name)
        if isinstance(value, str):
            return [value] if value else []
        return [str(one) for one in value] if isinstance(value, list) else []

    def _set(self, name: str, value: object) -> None:
        if self._kept is not None:
            self._kept.setValue(name, value)
