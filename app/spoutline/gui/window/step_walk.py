"""The walk through one position, step by step: the rail, the page of the step, the strip of places and the foot."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from spoutline.gui.edits.question import WALK, Step
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.reading_order import reading_order
from spoutline.gui.widgets.slot_strip import SlotStrip
from spoutline.gui.widgets.step_rail import StepRail
from spoutline.gui.window.step_pages import STEP_WORDS, StepPages
from spoutline.gui.window.strip_counts import StripCounts
from spoutline.gui.wording import tr


class StepWalk(QWidget):
    """Shows one step at a time; its pages are made when they are first seen.

    Signals
    -------
    step_wanted(Step)
        A person chose a step on the rail.
    moved(int)
        A person goes so many steps on, or back.
    drawing_wanted(bool)
        In a narrow window the drawing is to be seen in place of the page, or no longer.
    """

    step_wanted = Signal(object)
    moved = Signal(int)
    drawing_wanted = Signal(bool)

    def __init__(self, context: Context, parent: QWidget) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        self.stack = QStackedWidget(self)
        self.pages = StepPages(context, self.stack)
        self.strip = SlotStrip(self)
        self.counts = StripCounts(context, self.strip)
        column.addWidget(self._head())
        column.addWidget(self.stack, 1)
        column.addWidget(self.strip)
        column.addLayout(self._foot())

    def _head(self) -> QWidget:
        head = QFrame(self)
        head.setObjectName("card")
        self.rail = StepRail(tuple(tr(STEP_WORDS[step].rail) for step in WALK), head)
        self.rail.chosen.connect(lambda place: self.step_wanted.emit(WALK[place]))
        row = QHBoxLayout(head)
        row.setContentsMargins(12, 0, 14, 0)
        row.addWidget(self.rail, 1)
        return head

    def _foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 8, 8)
        self.back_button = QPushButton(tr("Back"), self)
        self.back_button.setToolTip("Alt+Left")
        self.back_button.clicked.connect(lambda: self.moved.emit(-1))
        self.next_button = QPushButton(tr("Next"), self)
        self.next_button.setObjectName("primary")
        self.next_button.setToolTip("Alt+Right")
        self.next_button.clicked.connect(lambda: self.moved.emit(1))
        self.drawing_button = QPushButton(tr("Drawing"), self)
        self.drawing_button.setCheckable(True)
        self.drawing_button.toggled.connect(self.drawing_wanted)
        self.drawing_button.hide()
        row.addWidget(self.back_button)
        row.addStretch(1)
        row.addWidget(self.drawing_button)
        row.addWidget(self.next_button)
        return row

    @property
    def step(self) -> Step:
        """The step in view."""
        shown = self.stack.currentWidget()
        return next((step for step, page in self.pages.items() if page is shown), Step.SET)

    def show_page(self, step: Step, page: QWidget) -> None:
        """Bring the page of a step into view."""
        self.stack.setCurrentWidget(page)
        self.rail.show_place(WALK.index(step) if step in WALK else -1)
        self.strip.setVisible(step is not Step.SITE)
        self.back_button.setEnabled(step in WALK and step is not WALK[0])
        self.next_button.setText(tr("Parts list") if step is Step.SET else tr("Next"))

    def focus_page(self) -> None:
        """Put the keyboard on the first question, or whatever comes first, of the step in view."""
        first = next(iter(reading_order(self.stack)), None)
        if first is not None:
            first.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def show_narrow(self, *, is_narrow: bool) -> None:
        """Offer the drawing where it has no room beside the page, and show one of the two."""
        self.drawing_button.setVisible(is_narrow)
        is_seen = not (is_narrow and self.drawing_button.isChecked())
        self.stack.setVisible(is_seen)
        self.strip.setVisible(is_seen and self.step is not Step.SITE)
