"""A case as a person types it: ``NAME=CHANGE,CHANGE``, such as ``keep:WEST+EAST``, ``E15``, ``B20``, ``sold:5``."""

from __future__ import annotations

import re
from collections.abc import Iterable

from pydantic import ValidationError

from spoutline.model.conversion_case import ConversionCase
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

WANTED = "write NAME=CHANGES such as 'West stays=keep:West', changes of keep:ISLAND+ISLAND, retention, E15, B20, sold:5"
_BLEND = re.compile(r"([EB])(\d{1,3}(?:\.\d{1,2})?)", re.IGNORECASE | re.ASCII)
_YEARS = re.compile(r"sold:(\d{1,2})", re.IGNORECASE | re.ASCII)
_KEEP = "keep:"


def typed_cases(texts: Iterable[str], option: str) -> tuple[ConversionCase, ...]:
    """Return the cases that texts state; raise ``InputFault`` with every text that cannot be read."""
    found: list[ConversionCase] = []
    problems: list[InputProblem] = []
    for text in texts:
        case = _case(text)
        if case is None:
            problems.append(InputProblem("", option, repr(text), WANTED))
        elif any(case.name == one.name for one in found):
            wanted = Worded("'{name}' is there already: rename it", name=case.name)
            problems.append(InputProblem("", option, repr(text), wanted))
        else:
            found.append(case)
    if problems:
        raise InputFault(tuple(problems))
    return tuple(found)


def _case(text: str) -> ConversionCase | None:
    name, sign, changes = text.partition("=")
    values: dict[str, object] = {"name": name}
    for change in changes.split(","):
        told = _change(change.strip())
        if not sign or told is None or told[0] in values:
            return None
        values[told[0]] = told[1]
    try:
        return ConversionCase.model_validate(values)
    except ValidationError:
        return None


def _change(text: str) -> tuple[str, object] | None:
    if text.lower().startswith(_KEEP):
        return "keep_islands", tuple(one.strip() for one in text[len(_KEEP) :].split("+"))
    if text.lower() == "retention":
        return "retention", True
    if blend := _BLEND.fullmatch(text):
        return ("ethanol_percent" if blend[1].upper() == "E" else "biodiesel_percent"), float(blend[2])
    if years := _YEARS.fullmatch(text):
        return "sold_after_years", int(years[1])
    return None
