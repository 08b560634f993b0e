"""The Qt binding in use keeps Python's own objects alive.

PySide6 6.12.0 gives back one reference to None too many for every empty value that Qt hands over. Before Python 3.12,
where None can be freed, the interpreter then ends the window after some thousand repaints.
"""

from __future__ import annotations

import sys
from collections.abc import Callable

import pytest
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QApplication, QComboBox, QWidget


class Painted(QWidget):
    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802 - Qt names it
        assert event is not None


def empty_item(qapp: QApplication) -> Callable[[], object]:
    box = QComboBox()
    box.addItem("empty", None)
    return box.currentData


def repaint(qapp: QApplication) -> Callable[[], object]:
    return Painted().grab


@pytest.mark.parametrize("make", [empty_item, repaint])
def test_binding_does_not_lose_references_to_none(
    qapp: QApplication, make: Callable[[QApplication], Callable[[], object]]
) -> None:
    act = make(qapp)
    act()
    before = sys.getrefcount(None)
    for _ in range(100):
        act()
    assert sys.getrefcount(None) > before - 50, "this PySide6 loses references to None: install another release"
