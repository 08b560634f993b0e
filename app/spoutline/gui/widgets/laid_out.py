"""Lays a widget out before it is painted at all."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QWidget

_PASSES: Final = 4  # a layout that gets another size asks those around it and in it once more


def show_laid_out(widget: QWidget) -> None:
    """Show a widget with all in it where it will stand, so that its first frame is not that of a layout half done.

    Qt lays what was put into a window out in several turns of its loop, and paints in between.
    """
    widget.show()
    for _ in range(_PASSES):
        QCoreApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest.value)
