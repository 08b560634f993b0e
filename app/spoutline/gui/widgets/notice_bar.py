"""A notice that tells what went wrong and offers what can be done about it, over the lower left corner of the window.

It lies over the page and moves nothing: whoever is about to press a button finds it where it was. What was merely done
stands at the foot of the window, over no control.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtGui import QAccessible, QAccessibleEvent, QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from spoutline.frozen import frozen
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.fitted_scroll import FittedScroll
from spoutline.gui.widgets.foot_line import FootLine
from spoutline.gui.widgets.marks import Mark
from spoutline.gui.widgets.tile_grid import TileGrid
from spoutline.gui.wording import told, tr

_WORDS = {
    Tone.GOOD: "Notice: done",
    Tone.CAUTION: "Notice: caution",
    Tone.BAD: "Notice: trouble",
    Tone.QUESTION: "Notice: question",
    Tone.NOTE: "Notice",
    Tone.WORKING: "Notice",
    Tone.OPEN: "Notice",
}
# pixels; for a sentence, no wider than what stands at the window's left, and for what does not fit into a few lines
_NARROW, _WIDE = 250, 460
_LONG_TEXT = 160  # characters
_MARGIN = 10
_DONE = frozenset({Tone.GOOD, Tone.NOTE})
_MOST_SHARE = 0.6  # of the height of what it lies over


@frozen
class Offer:
    """Something that can be done: its words and what it does."""

    words: str
    act: Callable[[], None]


class NoticeBar(QFrame):
    """Shows one notice until it is put away. It never takes the keyboard away from what a person is doing.

    What was done and offers nothing is told at the ``foot`` of the window, where there is one and it has the room.
    """

    def __init__(self, parent: QWidget, foot: FootLine | None = None) -> None:
        super().__init__(parent)
        self._foot = foot
        self.setObjectName("notice")
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 10, 10)
        row = QHBoxLayout()
        self._mark = Mark(self)
        self._scroll = FittedScroll(self)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._scroll.setAccessibleName(tr("Notice"))
        self._label = QLabel()
        self._label.setTextFormat(Qt.TextFormat.PlainText)
        self._label.setWordWrap(True)
        self._label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._scroll.column.addWidget(self._label)
        row.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self._scroll, 1)
        column.addLayout(row, 1)
        self._column = column
        self._grid: TileGrid | None = None
        self._buttons: list[QPushButton] = []
        self._over = parent
        parent.installEventFilter(self)
        self.hide()

    @property
    def text(self) -> str:
        """The notice shown, here or at the foot; empty while both are put away."""
        at_foot = self._foot.told if self._foot is not None else ""
        return at_foot or (self._label.text() if not self.isHidden() else "")

    def notify(self, text: str, *, tone: Tone = Tone.CAUTION, offers: tuple[Offer, ...] = ()) -> None:
        """Show a notice with its offers and a way to put it away."""
        text = told(text)
        if self._told_at_foot(text, tone, offers):
            return
        self._drop_buttons()
        self._mark.show_tone(tone, tr(_WORDS[tone]))
        self._label.setText(text)
        self.setAccessibleName(tr(_WORDS[tone]))
        self.setAccessibleDescription(text)
        grid = TileGrid(2, self)
        for words, act in (*((one.words, one.act) for one in offers), (tr("Put away"), self.put_away)):
            self._add_button(grid, words, act)
        self._grid = grid
        self._column.addWidget(grid)
        grid.show()
        self.show()
        self.raise_()
        self._lay_out()
        QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.Alert))

    def _told_at_foot(self, text: str, tone: Tone, offers: tuple[Offer, ...]) -> bool:
        """Tell at the foot what was done, in place of what was told before; return whether it was told there."""
        if self._foot is None:
            return False
        self._foot.clear_told()
        if tone not in _DONE or offers or not self._foot.tell(text):
            return False
        self._hide()
        return True

    def put_away(self) -> None:
        """Hide the notice; the keyboard goes on where it was where it was in here."""
        if self._foot is not None:
            self._foot.clear_told()
        self._hide()

    def _hide(self) -> None:
        had_keyboard = self.isAncestorOf(self.window().focusWidget() or self.window())
        self._drop_buttons()
        self._label.clear()
        self.hide()
        if had_keyboard:
            self._over.focusNextChild()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: Escape puts the notice away."""
        if event.key() == Qt.Key.Key_Escape:
            self.put_away()
        else:
            super().keyPressEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Qt: stay in the corner of what it lies over."""
        if event.type() == QEvent.Type.Resize and not self.isHidden():
            self._lay_out()
        return super().eventFilter(watched, event)

    def _lay_out(self) -> None:
        room = self._over.size() - QSize(2 * _MARGIN, 2 * _MARGIN)
        wide = min(_WIDE if len(self._label.text()) > _LONG_TEXT else _NARROW, room.width())
        self.setFixedWidth(wide)
        most = max(90, int(room.height() * _MOST_SHARE))
        edges = self._column.contentsMargins()
        text_wide = wide - edges.left() - edges.right() - self._mark.width() - 22
        words = self._label.heightForWidth(max(60, text_wide)) + 4
        below = self._grid.sizeHint().height() if self._grid is not None else 0
        high = min(most, words + below + edges.top() + edges.bottom() + self._column.spacing() + 6)
        self._scroll.fit()
        self.setFixedHeight(max(high, below + 60))
        self.move(_MARGIN, self._over.height() - self.height() - _MARGIN)

    def _add_button(self, grid: TileGrid, words: str, act: Callable[[], None]) -> None:
        button = QPushButton(words, grid)
        button.clicked.connect(lambda _=False: act())  # Qt's flag is none of its arguments
        grid.add(button)
        self._buttons.append(button)

    def _drop_buttons(self) -> None:
        if self._grid is not None:
            self._column.removeWidget(self._grid)
            self._grid.hide()
            self._grid.deleteLater()
            self._grid = None
        self._buttons.clear()
