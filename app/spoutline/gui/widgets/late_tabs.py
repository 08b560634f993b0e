"""Tabs whose panels are made when somebody first looks at one, or asks for it: all at once they would be felt."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar, cast

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from spoutline.gui.widgets.roomy_scroll import PageTabs

_Panel = TypeVar("_Panel", bound=QWidget)


class LateTabs(PageTabs):
    """Holds panels of different kinds, one of each; an empty page stands where one was not made yet.

    Signals
    -------
    panel_made(QWidget)
        A panel has taken its place.
    """

    panel_made = Signal(QWidget)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._makers: dict[type[QWidget], Callable[[], QWidget]] = {}
        self._made: dict[type[QWidget], QWidget] = {}
        self._empty: dict[type[QWidget], QWidget] = {}
        self.currentChanged.connect(self._make_in_view)

    def add_late(self, kind: type[_Panel], make: Callable[[], _Panel], words: str) -> None:
        """Add a tab whose panel ``make`` returns; it is called once."""
        self._makers[kind], self._empty[kind] = make, QWidget(self)
        self.addTab(self._empty[kind], words)

    def panel(self, kind: type[_Panel]) -> _Panel:
        """Return the panel of a kind, made now where it was not made yet; ``KeyError`` where no tab is for it."""
        made = self.made(kind)
        return made if made is not None else self._make(kind)

    def made(self, kind: type[_Panel]) -> _Panel | None:
        """Return the panel of a kind; None where it was not made yet."""
        return cast("_Panel | None", self._made.get(kind))

    def _make_in_view(self, place: int) -> None:
        kind = next((kind for kind, empty in self._empty.items() if empty is self.widget(place)), None)
        if kind is not None:
            self._make(kind)

    def _make(self, kind: type[_Panel]) -> _Panel:
        """Put a panel in the place of the empty page; the tab in view stays in view."""
        panel = cast("_Panel", self._makers[kind]())
        self._made[kind] = panel
        empty = self._empty.pop(kind)
        place, shown = self.indexOf(empty), self.currentIndex()
        words = self.tabText(place)
        self.blockSignals(True)
        self.insertTab(place, panel, words)
        self.removeTab(place + 1)
        self.setCurrentIndex(shown)
        self.blockSignals(False)
        empty.deleteLater()
        self.updateGeometry()
        self.panel_made.emit(panel)
        return panel
