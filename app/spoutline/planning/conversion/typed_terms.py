"""The terms of a programme as a person types them: each is read, or refused with what would be right."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.units.decimals import exact_decimal

_FIRST, _LAST = 2000, 2200  # calendar years that a survey takes too
_MOST_PERCENT = Decimal(50)
_MOST_DIGITS = 12


def typed_budget(text: str, field: str) -> Decimal | None:
    """Return the money of a year; None for an empty text, which sets no limit. Raise ``InputFault``."""
    wanted = "write an amount above 0, such as 120000"
    value = _decimal(text, field, wanted)
    if value is not None and (value <= 0 or value.adjusted() >= _MOST_DIGITS):
        raise _fault(field, text, wanted)
    return value


def typed_percent(text: str, field: str) -> Decimal | None:
    """Return percent a year, 0 to 50; None for an empty text, which states none. Raise ``InputFault``."""
    wanted = Worded("write percent a year from 0 to {most_percent}, such as 3 or 2.5", most_percent=_MOST_PERCENT)
    value = _decimal(text.strip().removesuffix("%") or text, field, wanted)
    if value is not None and not 0 <= value <= _MOST_PERCENT:
        raise _fault(field, text, wanted)
    return value


def typed_year(text: str, field: str) -> int | None:
    """Return a calendar year; None for an empty text. Raise ``InputFault``."""
    plain = text.strip()
    if not plain:
        return None
    if plain.isascii() and plain.isdigit() and len(plain) == len(str(_LAST)) and _FIRST <= int(plain) <= _LAST:
        return int(plain)
    raise _fault(
        field,
        text,
        Worded("write a year of the calendar from {first} to {last}, such as 2027", first=_FIRST, last=_LAST),
    )


def typed_deadlines(texts: Iterable[str], field: str) -> dict[str, int]:
    """Return calendar years by site from texts such as ``north.json=2028``; raise ``InputFault`` with all faults."""
    found: dict[str, int] = {}
    problems: list[InputProblem] = []
    for text in filter(str.strip, texts):
        site, sign, year = text.rpartition("=")
        try:
            told = typed_year(year, field) if sign else None
        except InputFault:
            told = None
        if not site.strip() or told is None:
            problems.append(InputProblem("", field, repr(text), "write site and year, such as north.json=2028"))
        elif found.setdefault(site.strip(), told) != told:
            problems.append(
                InputProblem(
                    "", field, repr(text), Worded("'{site}' has another year already: name one", site=site.strip())
                )
            )
    if problems:
        raise InputFault(tuple(problems))
    return found


def listed_deadlines(text: str) -> Iterator[str]:
    """Yield the deadlines of one line of text, parted by semicolons."""
    yield from (one.strip() for one in text.split(";") if one.strip())


def _decimal(text: str, field: str, wanted: str) -> Decimal | None:
    if not text.strip():
        return None
    try:
        return exact_decimal(text, field=field)
    except InputFault as fault:
        if "," in text:
            raise
        raise _fault(field, text, wanted) from fault


def _fault(field: str, text: str, wanted: str) -> InputFault:
    return InputFault((InputProblem("", field, repr(text), wanted),))
