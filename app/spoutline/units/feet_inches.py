"""Lengths as a tape is read in the United States: feet, inches and sixteenths of an inch.

Sixteenths, because that is the finest graduation along the whole of a common tape; it is also about as near as the
height of an outlet or the way to a filler is measured (1/16 in = 1.5875 mm), beside the millimetre of a metric tape.
"""

from __future__ import annotations

import math
from typing import Final

from spoutline.units.figures import figure

_INCH_M: Final = 0.0254  # exact, NIST SP 811 appendix B
_PARTS: Final = 16  # of an inch
_PARTS_OF_A_FOOT: Final = 12 * _PARTS
_DUST_PARTS: Final = 1e-6  # what binary numbers leave behind a whole sixteenth
_LONGEST_M: Final = 1e6
LEAST_STEP: Final = f"1/{_PARTS} in"


def tape_text(value_m: float) -> str:
    """Return a length to the nearest sixteenth of an inch: ``7 ft 6 1/2 in``, ``4 in``, ``-1 ft 2 in``.

    A length that would read as nothing is told in decimals of an inch. Raise ``ValueError`` if not finite.
    """
    return _told(value_m, round(_parts(value_m)))


def tape_text_at_least(value_m: float) -> str:
    """Return the least length on a tape that is not below ``value_m``; errors as ``tape_text``."""
    return _told(value_m, math.ceil(_parts(value_m) - _DUST_PARTS))


def tape_text_at_most(value_m: float) -> str:
    """Return the greatest length on a tape that is not above ``value_m``; errors as ``tape_text``."""
    parts = math.floor(_parts(value_m) + _DUST_PARTS)
    if parts == 0:  # in decimals, of which none may be rounded up
        return exact_tape_text(value_m)
    return _told(value_m, parts)


def exact_tape_text(value_m: float) -> str:
    """Return a length with every digit that it has: in sixteenths where it is a number of them, else in decimals."""
    parts = _parts(value_m)
    if abs(parts - round(parts)) <= _DUST_PARTS and round(parts):
        return _told(value_m, round(parts))
    feet, inches = divmod(abs(value_m) / _INCH_M, 12.0)
    text = f"{inches:.8f}".rstrip("0").rstrip(".")
    sign = "-" if value_m < 0 else ""
    return f"{sign}{feet:.0f} ft {text} in" if feet else f"{sign}{text} in"


def is_shorter_than_tape_tells(value_m: float) -> bool:
    """Say whether a length is none on a tape, to the nearest sixteenth of an inch."""
    return round(_parts(value_m)) == 0


def _parts(value_m: float) -> float:
    if not math.isfinite(value_m):
        raise ValueError(f"{value_m!r} cannot be shown as a figure")
    return value_m / _INCH_M * _PARTS


def _told(value_m: float, parts: int) -> str:
    if parts == 0:
        return f"{figure(value_m / _INCH_M, most=2)} in"
    if abs(value_m) > _LONGEST_M:
        return f"{figure(value_m / _INCH_M / 12)} ft"
    feet, rest = divmod(abs(parts), _PARTS_OF_A_FOOT)
    inches, top = divmod(rest, _PARTS)
    pieces = []
    if feet:
        pieces.append(f"{feet} ft")
    if inches or top:
        common = math.gcd(top, _PARTS)
        fraction = f"{top // common}/{_PARTS // common}" if top else ""
        pieces.append(" ".join(piece for piece in (str(inches) if inches else "", fraction, "in") if piece))
    return ("-" if parts < 0 else "") + " ".join(pieces)
