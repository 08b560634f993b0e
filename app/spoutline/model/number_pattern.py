"""Numbers of quotations by a pattern: ``{year}-{serial:04}`` gives 2026-0001, 2026-0002 and so on.

``{year}`` and ``{month}`` are those of the quotation's day; ``{serial}`` counts from 1 for each way in which the rest
of the pattern is filled, so that a pattern with a year begins anew each year. ``{serial:04}`` has at least four digits.
"""

from __future__ import annotations

import re
from datetime import date
from typing import Final

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

MOST_SIGNS: Final = 80  # of a quotation's number
_SERIAL: Final = re.compile(r"\{serial(?::0([1-9]))?\}")
_WANTED: Final = "a pattern holds {serial} or {serial:04} once, and {year} and {month} at will: {year}-{serial:04}"


def is_pattern(number: str) -> bool:
    """Say whether a number is a pattern, of which the book makes the number when the quotation is kept."""
    return "{serial" in number


def check_pattern(number: str) -> None:
    """Raise ``InputFault`` where a number is a pattern that cannot be filled; any other number is taken as written."""
    if is_pattern(number):
        series_of(number, date(2000, 1, 1))


def series_of(pattern: str, day: date) -> str:
    """Return the pattern filled but for its serial: quotations of one series are counted together."""
    series = pattern.replace("{year}", f"{day.year:04}").replace("{month}", f"{day.month:02}")
    if len(_SERIAL.findall(series)) != 1 or re.search(r"[{}]", _SERIAL.sub("", series)):
        raise InputFault((InputProblem("", "heading.number", repr(pattern), _WANTED),))
    return series


def number_in(series: str, serial: int) -> str:
    """Return the number of a series; raise ``InputFault`` where it is longer than a number may be."""
    found = _SERIAL.search(series)
    if found is None:
        raise ValueError("a series holds a serial")
    number = f"{series[: found.start()]}{serial:0{int(found[1] or 1)}}{series[found.end() :]}"
    if len(number) > MOST_SIGNS:
        raise InputFault(
            (
                InputProblem(
                    "",
                    "heading.number",
                    number,
                    Worded("a number has {most_signs} signs at most", most_signs=MOST_SIGNS),
                ),
            )
        )
    return number
