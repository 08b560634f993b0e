"""A field for a day: typed in the desktop's form or as year-month-day, or picked from a calendar."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QDate, QPoint, Qt
from PySide6.QtWidgets import QCalendarWidget, QLineEdit, QWidget

from spoutline.gui.local_days import day_text, day_typed
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.icons import icon
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault


class DayEdit(LineEditor):
    """A line with a calendar at its end; ``editingFinished`` tells of a picked day too."""

    def __init__(self, parent: QWidget | None = None, day: date | None = None) -> None:
        super().__init__(parent)
        self._calendar: QCalendarWidget | None = None
        self.pick_action = self.addAction(icon("calendar"), QLineEdit.ActionPosition.TrailingPosition)
        self.pick_action.setText(tr("Choose a day"))
        self.pick_action.setToolTip(tr("Choose a day"))
        self.pick_action.triggered.connect(self.open_calendar)
        self.setPlaceholderText(tr("none") if day is None else "")
        self.show_day(day)

    def show_day(self, day: date | None) -> None:
        """Show a day that is not of a person's typing."""
        self.show_text("" if day is None else day_text(day))

    def day(self, field: str) -> date | None:
        """Return the day; None where the field is empty. Raise ``InputFault`` for what is no day."""
        return day_typed(self.text(), field)

    def open_calendar(self) -> QCalendarWidget:
        """Open the calendar below the field, on the day that it holds or on today."""
        calendar = self._calendar or self._made_calendar()
        try:
            held = self.day("")
        except InputFault:
            held = None
        shown = QDate.currentDate() if held is None else QDate(held.year, held.month, held.day)
        calendar.setSelectedDate(shown)
        calendar.move(self.mapToGlobal(QPoint(0, self.height())))
        calendar.show()
        calendar.setFocus(Qt.FocusReason.PopupFocusReason)
        return calendar

    def _made_calendar(self) -> QCalendarWidget:
        # kept with the field: one that goes with each closing would be deleted within its own signal
        calendar = QCalendarWidget(self)
        calendar.setWindowFlags(Qt.WindowType.Popup)
        calendar.clicked.connect(self._take)
        calendar.activated.connect(self._take)
        self._calendar = calendar
        return calendar

    def _take(self, picked: QDate) -> None:
        self.setText(day_text(date(picked.year(), picked.month(), picked.day())))
        if self._calendar is not None:
            self._calendar.hide()
        self.editingFinished.emit()
