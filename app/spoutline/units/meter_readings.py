"""Readings as people copy them from a meter: open circuits, prefixes without a unit, a decimal comma."""

from __future__ import annotations

import re
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.quantity import Dimension
from spoutline.model.worded import Worded
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display
from spoutline.units.quantities import parse

OPEN_CIRCUIT: Final = "OL"  # what most meters show; read back as it is written
_COMMA_LANGUAGES: Final = frozenset({Language.GERMAN, Language.FRENCH})
# in these languages 1.250 may be a thousand and more, so it is not guessed
_GROUPED_BY_POINT: Final = re.compile(r"\d\.\d{3}(?!\d)")
_GROUPED_BY_COMMA: Final = re.compile(r"\d,\d{3}(?!\d)")
_OPEN: Final = re.compile(
    r"^\s*[>+]?\s*(?:∞|o\.?\s?l\.?|o\.?f\.?l\.?|over|overload|inf|infinite|infinity|open)\s*(?:[kM]?(?:Ω|ohm))?\s*$",
    re.IGNORECASE,
)
_BEYOND: Final = re.compile(r"^\s*[>≫]\s*(?P<rest>\S.*)$")
_BARE: Final = re.compile(r"^[+-]?[\d.,/\s-]+$")
_BARE_PREFIX: Final = re.compile(r"^(?P<number>.*\d)\s*(?P<prefix>[kKM])\s*$")


@frozen(kw_only=True)
class MeterReading:
    """What a meter showed: ``value`` in SI, and whether the measure was beyond it or beyond the meter altogether."""

    value: float | None
    over_range: bool = False


def parse_reading(
    text: str, dimension: Dimension, system: UnitSystem, language: Language, *, field: str = ""
) -> MeterReading:
    """Return the reading that a person wrote down.

    Resistances may be an open circuit (``OL``, ``∞``), more than the meter's range (``>10M``), or carry a prefix alone
    (``90k``). A decimal comma is read in languages that write one, and in Spanish, which writes both, where it
    cannot part thousands.

    Parameters
    ----------
    text
        What was written.
    dimension
        What was measured.
    system
        The system whose shown unit a bare number takes.
    language
        Language of the form.
    field
        Name of the field for the message.

    Raises
    ------
    InputFault
        The text is no reading, or less than zero, or a bare number where a tape gives feet and inches.
    """
    written, over = text.strip(), False
    if dimension is Dimension.RESISTANCE:
        if _OPEN.match(written):
            return MeterReading(value=None, over_range=True)
        if beyond := _BEYOND.match(written):
            written, over = beyond["rest"], True
        if bare := _BARE_PREFIX.match(written):
            written = Worded("{bare} {bare2}ohm", bare=bare["number"], bare2=bare["prefix"].replace("K", "k"))
    if system is UnitSystem.US and dimension is Dimension.LENGTH and _BARE.match(written):
        # 4 beside a tape may be four inches or four feet, and neither is guessed where somebody signs for it
        with_units = "write feet and inches with their units, such as 4 in or 1 ft 2 1/2 in"
        raise InputFault((InputProblem("", field, repr(text), with_units),))
    try:
        value = parse(_with_point(written, language), dimension, system, field=field)
    except InputFault as fault:
        wanted = [_asked(one.wanted, dimension) for one in fault.problems]
        raise InputFault(tuple(InputProblem("", field, repr(text), one) for one in wanted)) from fault
    if value < 0:
        raise InputFault((InputProblem("", field, repr(text), "a reading of zero or more is needed"),))
    return MeterReading(value=value, over_range=over)


def reading_as_written(reading: MeterReading, dimension: Dimension, display: Display) -> str:
    """Return a reading in the unit that its field asks for, as ``parse_reading`` reads it back; empty for none."""
    if reading.value is None:
        return OPEN_CIRCUIT if reading.over_range else ""
    shown = display.show(reading.value, dimension, prefixed=False)
    return f"> {shown}" if reading.over_range else shown


def reading_as_shown(reading: MeterReading, dimension: Dimension, display: Display) -> str:
    """Return a reading beside its limit, both in the same unit and as many digits; empty for none."""
    if reading.value is None:
        return OPEN_CIRCUIT if reading.over_range else ""
    shown = display.show(reading.value, dimension)
    return f"> {shown}" if reading.over_range else shown


def writes_comma(language: Language) -> bool:
    """Say whether a comma is the decimal sign of ``language``; a point that may part thousands is refused there."""
    return language in _COMMA_LANGUAGES


def takes_comma(language: Language) -> bool:
    """Say whether a decimal comma is read in ``language`` where it cannot part thousands."""
    return writes_comma(language) or language is Language.SPANISH


def _with_point(text: str, language: Language) -> str:
    """Return ``text`` with a decimal point where its comma can be nothing else in ``language``."""
    has_comma = writes_comma(language)
    if has_comma and _GROUPED_BY_POINT.search(text):
        wanted = "write a decimal comma and no thousands separator"
        raise InputFault((InputProblem("", "", repr(text), wanted),))
    is_one = text.count(",") == 1 and "." not in text
    if is_one and (has_comma or (takes_comma(language) and not _GROUPED_BY_COMMA.search(text))):
        return text.replace(",", ".")
    return text  # anything else is left to be refused


def _asked(wanted: str, dimension: Dimension) -> str:
    return (
        Worded("{wanted}; {open_circuit} for an open circuit", wanted=wanted, open_circuit=OPEN_CIRCUIT)
        if dimension is Dimension.RESISTANCE
        else wanted
    )
