"""How a wrong word is answered: with the nearest right one, and with all that would do."""

from __future__ import annotations

import difflib

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

_MANY = 24


def choice_of(value: str, known: tuple[str, ...]) -> str:
    """Return the allowed words in one phrase, the nearest one to ``value`` named first where one is close."""
    if not known:
        return "there is nothing to choose from"
    near = difflib.get_close_matches(value, known, n=1, cutoff=0.6)
    nearest = Worded("did you mean {near}? ", near=near[0]) if near else ""
    more = Worded(" and {count} more", count=len(known) - _MANY) if len(known) > _MANY else ""
    return Worded("{nearest}use one of: {known}{more}", nearest=nearest, known=", ".join(known[:_MANY]), more=more)


def not_one_of(value: str, known: tuple[str, ...], *, field: str, place: str = "") -> InputFault:
    """Return the fault for a ``value`` of ``field`` that is none of ``known``."""
    return InputFault((InputProblem(place, field, repr(value), choice_of(value, known)),))


def taken(value: str, *, field: str) -> InputFault:
    """Return the fault for a ``value`` of ``field`` that already names something else."""
    return InputFault((InputProblem("", field, repr(value), "this name is taken already; choose another"),))
