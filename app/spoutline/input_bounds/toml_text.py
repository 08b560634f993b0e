"""Tables in TOML texts, neither too long nor nested too deep, and without numbers that no reader takes."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable
from decimal import Decimal
from typing import Any, Final

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.refusal import refusal
from spoutline.model.faults import InputFault
from spoutline.model.worded import Worded

# a name of more than 16 parts; it begins where a word begins, and never looks back (possessive), so that the time is
# linear in the text
_LONG_KEY: Final = re.compile(r"""(?<![^\s.="'\[\]{},])(?:[^\s.="'\[\]{},]++\s*+\.\s*+){16}""")


def toml_table(text: str, place: str, field: str, parse_float: Callable[[str], Any] = float) -> dict[str, Any]:
    """Return the table in a TOML text.

    Raises
    ------
    InputFault
        It is no TOML, holds a number that no reader takes, is far too long or nested far too deep.
    """
    if len(text) > BOUNDS.toml_bytes:
        raise refusal(
            place,
            field,
            Worded("{count} characters", count=len(text)),
            Worded("at most {most} characters are read", most=BOUNDS.toml_bytes),
        )
    if _LONG_KEY.search(text):  # reading one takes time with the square of its parts
        raise _too_deep(place, field)
    try:
        table = tomllib.loads(text, parse_float=parse_float)
    except tomllib.TOMLDecodeError as fault:
        raise refusal(
            place,
            field,
            str(fault) if field == "file" else "the text",
            Worded("write valid TOML ({reason})", reason=fault),
        ) from fault
    except RecursionError as fault:
        raise _too_deep(place, field) from fault
    except (ValueError, ArithmeticError) as fault:  # digits or an exponent beyond what a number may have
        raise refusal(place, field, "a number of far too many digits", "write numbers of at most 15 digits") from fault
    _check_values(table, place, field)
    return table


def _check_values(table: dict[str, Any], place: str, field: str) -> None:
    level: list[object] = [table]
    for _ in range(BOUNDS.nesting):
        inner: list[object] = []
        for one in level:
            if isinstance(one, dict | list) and len(one) > BOUNDS.toml_entries:
                wanted = Worded("write at most {most} entries into one table or list", most=BOUNDS.toml_entries)
                raise refusal(place, field, Worded("{count} entries", count=len(one)), wanted)
            inner.extend(one.values() if isinstance(one, dict) else one if isinstance(one, list) else ())
        for one in inner:
            if isinstance(one, int | Decimal) and not isinstance(one, bool) and _is_far(one):
                raise refusal(place, field, "a number of far too many digits", "write numbers of at most 15 digits")
        level = inner
        if not level:
            return
    raise _too_deep(place, field)


def _is_far(number: int | Decimal) -> bool:
    if isinstance(number, int):
        return number.bit_length() > 1000
    return number.is_finite() and (abs(number.adjusted()) > 300 or len(number.as_tuple().digits) > 300)


def _too_deep(place: str, field: str) -> InputFault:
    wanted = Worded("nest tables and lists at most {most} deep", most=BOUNDS.nesting)
    return refusal(place, field, Worded("more than {most} levels", most=BOUNDS.nesting), wanted)
