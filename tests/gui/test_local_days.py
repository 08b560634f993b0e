"""Days in the window: shown and typed as the desktop writes them, or picked from a calendar."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime

import pytest
from PySide6.QtCore import QDate, QLocale
from pytestqt.qtbot import QtBot

from spoutline.gui.local_days import day_text, day_typed, moment_text
from spoutline.gui.widgets.day_edit import DayEdit
from spoutline.model.faults import InputFault


@pytest.fixture(params=["en_US", "de_DE", "en_GB", "fr_FR", "es_MX"])
def desktop(request: pytest.FixtureRequest) -> Iterator[str]:
    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield request.param
    QLocale.setDefault(before)


def test_a_day_is_written_as_the_desktop_writes_it_and_reads_back(desktop: str) -> None:
    # Unicode CLDR, short dates: month first in the United States, points in Germany, day first elsewhere
    wanted = {
        "en_US": "12/3/2026",
        "de_DE": "03.12.2026",
        "en_GB": "03/12/2026",
        "fr_FR": "03/12/2026",
        "es_MX": "03/12/2026",
    }[desktop]
    assert day_text(date(2026, 12, 3)) == wanted
    assert day_typed(wanted, "date") == date(2026, 12, 3)
    assert day_typed("2026-12-03", "date") == date(2026, 12, 3)


def test_a_moment_is_told_on_the_clock_of_the_machine() -> None:
    moment = datetime(2026, 12, 3, 23, 30, tzinfo=UTC)
    assert moment_text(moment).startswith(day_text(moment.astimezone().date()))


@pytest.mark.parametrize("text", ["32.12.2026", "tomorrow", "2026-02-30"])
def test_what_is_no_day_is_refused_with_an_example(text: str) -> None:
    with pytest.raises(InputFault) as caught:
        day_typed(text, "first day")
    (problem,) = caught.value.problems
    assert problem.field == "first day"
    assert day_text(date(2026, 11, 28)) in problem.wanted


@pytest.mark.qt_log_ignore("This plugin does not support")  # what the offscreen platform says of popups
def test_a_day_is_picked_from_the_calendar(qtbot: QtBot) -> None:
    field = DayEdit(day=date(2026, 12, 3))
    qtbot.addWidget(field)
    field.show()
    calendar = field.open_calendar()
    assert calendar.selectedDate() == QDate(2026, 12, 3)
    with qtbot.waitSignal(field.editingFinished):
        calendar.clicked.emit(QDate(2026, 12, 24))
    assert field.day("date") == date(2026, 12, 24)
    field.clear()
    assert field.day("date") is None
