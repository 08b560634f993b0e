"""Read what a person types as an exact decimal: an amount of money, a percentage, hours."""

from __future__ import annotations

import re
from decimal import Decimal

from spoutline.model.faults import InputFault, InputProblem

_DECIMAL = re.compile(r"[+-]?(\d+\.?\d*|\.\d+)", re.ASCII)


def exact_decimal(text: str, *, field: str = "") -> Decimal:
    """Return the number in a text exactly as it is written.

    Parameters
    ----------
    text
        Digits with a decimal point where one is needed; blanks around them do not matter.
    field
        Name of the field for the message.

    Raises
    ------
    InputFault
        The text is no such number, or holds a comma.
    """
    written = text.strip()
    if "," in written:  # 1,234 is one thing in one country and another in the next, so neither is guessed
        raise _fault(field, written, "write a decimal point and no thousands separator, such as 1234.50")
    if not _DECIMAL.fullmatch(written):
        raise _fault(field, written, "write a number, such as 12.50")
    return Decimal(written)


def _fault(field: str, text: str, wanted: str) -> InputFault:
    return InputFault((InputProblem("", field, repr(text) if text else "nothing", wanted),))
