"""The steps of the walk side by side; each can be gone to at any time."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QWidget

from spoutline.gui.wording import tr

_PADDING = 30


class StepRail(QWidget):
    """Numbered steps, one of them open.

    Signals
    -------
    chosen(int)
        A person wants to go to the step at this place.
    """

    chosen = Signal(int)

    def __init__(self, titles: tuple[str, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2)
        self._group = QButtonGroup(self)
        self.buttons: list[QPushButton] = []
        for place, title in enumerate(titles):
            button = QPushButton(f"&{place + 1}  {title}", self)
            button.setObjectName("step")
            button.setCheckable(True)
            button.setAccessibleName(tr("Step {0}: {1}").format(place + 1, title))
            button.setToolTip(f"Alt+{place + 1}")
            self._group.addButton(button, place)
            bold = QFont(button.font())
            bold.setBold(True)  # the open step is bold and must not jump
            button.setMinimumWidth(QFontMetrics(bold).horizontalAdvance(f"{place + 1}  {title}") + _PADDING)
            row.addWidget(button)
            self.buttons.append(button)
        row.addStretch(1)
        self._group.idClicked.connect(self.chosen.emit)

    @property
    def place(self) -> int:
        """The place of the open step; -1 where none is open."""
        return self._group.checkedId()

    def show_place(self, place: int) -> None:
        """Mark the step at ``place`` as open; -1 for none."""
        if place < 0:
            self._group.setExclusive(False)
            for button in self.buttons:
                button.setChecked(False)
            self._group.setExclusive(True)
        else:
            self.buttons[place].setChecked(True)
