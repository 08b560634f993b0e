from __future__ import annotations

import sys

from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from spoutline.gui.short_turns import take_short_turns
from spoutline.gui.widgets.after_paint import AfterPaint


class Painted(QWidget):
    def __init__(self, parent: QWidget, order: list[str]) -> None:
        super().__init__(parent)
        self._order = order
        self.setMinimumSize(20, 20)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802  (Qt's name)
        self._order.append("paint")
        super().paintEvent(event)


def test_it_is_called_once_when_all_in_the_widget_is_painted(qtbot: QtBot) -> None:
    order: list[str] = []
    widget = QWidget()
    qtbot.addWidget(widget)
    QVBoxLayout(widget).addWidget(Painted(widget, order))
    AfterPaint(widget, lambda: order.append("call"))
    widget.show()
    qtbot.waitUntil(lambda: "call" in order)
    assert order.index("paint") < order.index("call")
    widget.repaint()
    qtbot.wait(250)
    assert order.count("call") == 1


def test_a_widget_that_nobody_sees_is_not_waited_for(qtbot: QtBot) -> None:
    called: list[str] = []
    widget = QWidget()
    qtbot.addWidget(widget)
    AfterPaint(widget, lambda: called.append("call"))
    qtbot.waitUntil(lambda: called == ["call"])


def test_a_worker_gives_up_its_turn_sooner_than_python_has_it_do() -> None:
    before = sys.getswitchinterval()
    take_short_turns()
    try:
        assert 0 < sys.getswitchinterval() < before
    finally:
        sys.setswitchinterval(before)
