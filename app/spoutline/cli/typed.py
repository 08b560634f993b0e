"""Values as a person types them behind an option: each is read, or refused with what would be right."""

from __future__ import annotations

from argparse import ArgumentTypeError
from datetime import date

from spoutline.cli.voice import told
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

_MOST = 2**31 - 1  # more than anyone counts; both stores hold it
_DAY_WANTED = "write a date of the calendar as YYYY-MM-DD"


def serial(text: str) -> int:
    """Read a number of something that is counted from 1.

    Raises
    ------
    ArgumentTypeError
        Where it is no whole number from 1 to 2147483647.
    """
    plain = text.strip()
    if plain.isascii() and plain.isdigit() and len(plain) <= len(str(_MOST)) and 1 <= int(plain) <= _MOST:
        return int(plain)
    said = Worded("{given!r} is no number; a whole number from 1 up is wanted", given=text[:60])
    raise ArgumentTypeError(told(said))


def day(text: str) -> date:
    """Read a day as ISO 8601 writes it.

    Raises
    ------
    ArgumentTypeError
        Where it is no such day.
    """
    try:
        return date.fromisoformat(text)
    except ValueError:
        said = Worded("{given!r} is no day; {wanted}", given=text[:60], wanted=_DAY_WANTED)
        raise ArgumentTypeError(told(said)) from None


def day_of(text: str | None, option: str) -> date | None:
    """Read the day given with an option that may be left out; None for None.

    Raises
    ------
    InputFault
        Where it is no day; names the option.
    """
    if text is None:
        return None
    try:
        return date.fromisoformat(text)
    except ValueError as fault:
        raise InputFault((InputProblem("", option, repr(text), _DAY_WANTED),)) from fault
