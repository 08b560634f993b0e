"""What of a page is laid over something else, or out of sight, at the size that the window has."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from PySide6.QtWidgets import QApplication, QComboBox, QLabel, QLineEdit, QPushButton, QTabWidget, QWidget

from spoutline.gui.edits.question import WALK, Step
from spoutline.gui.jobs import JobKind
from spoutline.gui.widgets.late_tabs import LateTabs
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace

_READ = (QLabel, QPushButton, QLineEdit, QComboBox)
_HAIR_PX = 2  # frames of neighbors may touch


def settle(window: MainWindow) -> None:
    """Let what was asked arrive and be laid out: an answer of a job asks for room once it is shown."""
    while any(map(window.jobs.is_busy, JobKind)):
        QApplication.processEvents()
    for _ in range(4):  # a layout in a layout is done a turn later
        QApplication.processEvents()


def make_late_panels(root: QWidget) -> None:
    """Have every panel made that waits to be looked at; tabs in view stay in view."""
    for tabs in root.findChildren(LateTabs):
        now = tabs.currentIndex()
        for at in range(tabs.count()):
            tabs.setCurrentIndex(at)
        tabs.setCurrentIndex(now)


def with_tabs(page: QWidget, window: MainWindow) -> Iterator[str]:
    """Bring each tab of a page into view; yield the names of the tabs, and an empty one for a page without."""
    tabs = page.findChild(QTabWidget)
    for place in range(tabs.count() if tabs is not None else 1):
        if tabs is not None:
            tabs.setCurrentIndex(place)
        settle(window)
        yield tabs.tabText(place) if tabs is not None else ""
    if tabs is not None:
        tabs.setCurrentIndex(0)


def with_steps(place: Workplace, window: MainWindow) -> Iterator[str]:
    """Bring each step of the walk into view; yield their names, and end at the first."""
    for step in (*WALK, Step.SITE):
        place.show_step(step)
        settle(window)
        yield str(step)
    place.show_step(WALK[0])


def laid_over(page: QWidget) -> list[tuple[str, str]]:
    """Return pairs of texts, fields and buttons beside each other of which one lies over a part of the other."""
    found = []
    parents = {one.parentWidget() for kind in _READ for one in page.findChildren(kind) if one.isVisible()}
    for parent in parents:
        read = [one for one in parent.children() if isinstance(one, _READ) and one.isVisible()]
        for one, other in combinations(read, 2):
            shared = one.geometry().intersected(other.geometry())
            if shared.width() > _HAIR_PX and shared.height() > _HAIR_PX:
                found.append((_told(one), _told(other)))
    return found


def _told(one: QWidget) -> str:
    return str(one.property("text") or one.accessibleName() or one.objectName() or type(one).__name__)
