"""Which page of the manual fits what has the keyboard."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, Protocol, runtime_checkable

from spoutline.gui.places import Place

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

_PROPERTY: Final = "helpTopic"
_OF_PLACES: Final = {
    Place.START: "first_steps",
    Place.SURVEY: "window",
    Place.POSITIONS: "tables",
    Place.PARTS: "parts_lists",
    Place.QUOTATION: "quotations",
    Place.CONVERSION: "conversions",
    Place.INSTALLER: "installer",
    Place.CATALOGUES: "catalog",
}


@runtime_checkable
class HelpDesk(Protocol):
    """A window that can open the manual."""

    def open_help(self, topic: str, over: QWidget) -> None:
        """Open a page over a window."""
        ...


def explained_by(widget: QWidget, topic: str) -> None:
    """Let F1 lead from a widget, and from all in it, to a page."""
    widget.setProperty(_PROPERTY, topic)


def topic_of(widget: QWidget | None, place: Place) -> str:
    """Return the page for the widget with the keyboard: named by it or by what it stands in, else that of the place."""
    while widget is not None:
        named = widget.property(_PROPERTY)
        if named:
            return str(named)
        widget = widget.parentWidget()
    return _OF_PLACES[place]


def desk_of(widget: QWidget) -> HelpDesk | None:
    """Return the window around a widget, or around the dialogs that it stands in, that can open the manual."""
    found: QWidget | None = widget
    while found is not None:
        if isinstance(found, HelpDesk):
            return found
        found = found.parentWidget()
    return None
