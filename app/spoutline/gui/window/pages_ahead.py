"""Makes pages before they are first seen, one part at a time between the events of the window."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final, TypeVar

from PySide6.QtCore import QObject, QTimer

from spoutline.gui.widgets.in_parts import InParts

_PAUSE_MS: Final = 15  # after each part: what a person does meanwhile comes first
_WHILE_PLANNING_MS: Final = 200  # the set in focus is waited for, and drawn, before anything nobody asked for
USED_BY_PAGES: Final = (  # by what pages ask for first: else loaded on the window's thread as a page comes into view
    "spoutline.bootstrap.due_work",
    "spoutline.bootstrap.installer",
    "spoutline.bootstrap.kept_needs",
    "spoutline.bootstrap.table_maps",
    "spoutline.documents.pack.content",
    "spoutline.explain.pack.phrases",
    "spoutline.ruletables.inspection_items",
)
_PageT = TypeVar("_PageT", bound=InParts)


class PagesAhead(QObject):
    """Goes through the steps that make pages; a page that is asked for before it is whole is made whole at once.

    Nothing is made while ``is_waited_for`` says that somebody waits for other work.
    """

    def __init__(self, parent: QObject, is_waited_for: Callable[[], bool]) -> None:
        super().__init__(parent)
        self._is_waited_for = is_waited_for
        self._steps: Iterator[object] = iter(())
        self._page: InParts | None = None  # the one that is being made
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._go_on)

    @property
    def is_at_work(self) -> bool:
        """Whether pages are still to be made."""
        return self._timer.isActive()

    def go_through(self, steps: Iterator[object]) -> None:
        """Take these steps one after the other, from now on."""
        self._steps = steps
        self._timer.start(_PAUSE_MS)

    def parts_of(self, page: InParts) -> Iterator[None]:
        """Make a page with each step a part more, until it is whole or somebody has taken it."""
        self._page = page
        while self._page is page and page.make_part():
            yield

    def taken(self, kind: type[_PageT]) -> _PageT | None:
        """Return the page that is being made, whole, where it is of a kind; None where none is or it is of another."""
        page = self._page
        if not isinstance(page, kind):
            return None
        self._page = None
        page.make_rest()
        return page

    def _go_on(self) -> None:
        if self._is_waited_for():
            self._timer.start(_WHILE_PLANNING_MS)
            return
        try:
            is_over = next(self._steps, self) is self
        except BaseException:
            self._page = None  # nobody is to be given half of a page
            raise
        if not is_over:
            self._timer.start(_PAUSE_MS)
