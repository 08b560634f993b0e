"""Days and moments as the desktop writes them, in the zone of the machine; a day typed so, or year-month-day."""

from __future__ import annotations

from datetime import date, datetime

from PySide6.QtCore import QDate, QLocale, QTime

from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, InputProblem

_EXAMPLE = date(2026, 11, 28)


def day_text(day: date) -> str:
    """Return a day in the short form of the desktop's locale, its year in four digits."""
    return QLocale().toString(QDate(day.year, day.month, day.day), _day_format())


def moment_text(moment: datetime) -> str:
    """Return a moment as day and time of day on this machine's clock."""
    here = moment.astimezone()
    clock = QLocale().toString(QTime(here.hour, here.minute, here.second), QLocale.FormatType.ShortFormat)
    return f"{day_text(here.date())} {clock}"


def day_typed(text: str, field: str) -> date | None:
    """Return the day that a person typed or picked; None for an empty text.

    Raises
    ------
    InputFault
        The text is no day of the calendar, neither in the desktop's form nor as year-month-day.
    """
    written = text.strip()
    if not written:
        return None
    try:
        return date.fromisoformat(written)
    except ValueError as fault:
        found = QLocale().toDate(written, _day_format())
        if found.isValid():
            return date(found.year(), found.month(), found.day())
        wanted = tr("write a day such as {0}, or as YYYY-MM-DD").format(day_text(_EXAMPLE))
        raise InputFault((InputProblem("", field, repr(text), wanted),)) from fault


def _day_format() -> str:
    here = QLocale()
    if here.language() is QLocale.Language.C:  # of no country: its months and days would be told apart by nobody
        return "yyyy-MM-dd"
    form = here.dateFormat(QLocale.FormatType.ShortFormat)
    return form if "yyyy" in form else form.replace("yy", "yyyy")
