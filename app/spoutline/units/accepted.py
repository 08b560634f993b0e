"""Which units each dimension is shown in, and which spellings a person or a rule table may write."""

from __future__ import annotations

from enum import StrEnum

from spoutline.model.quantity import Dimension


class UnitSystem(StrEnum):
    """The two systems a person can choose between."""

    SI = "SI"
    US = "US"


_US_JURISDICTIONS = "us_"  # how the ids of the built-in ones of the United States begin


def usual_system(jurisdiction: str, grown_from: str = "") -> UnitSystem:
    """Return the units that are usual under a jurisdiction.

    Parameters
    ----------
    jurisdiction
        Its id.
    grown_from
        Its edition, which names the one that an own jurisdiction was copied from.
    """
    named = (jurisdiction, grown_from)
    return UnitSystem.US if any(one.startswith(_US_JURISDICTIONS) for one in named) else UnitSystem.SI


# Expressions as pint reads them, of the units in `units.unit_lines`; the SI one of each dimension is that of the core.
CORE_EXPRESSION: dict[Dimension, str] = {
    Dimension.DIAMETER: "meter",
    Dimension.LENGTH: "meter",
    Dimension.AREA: "meter**2",
    Dimension.VOLUME: "meter**3",
    Dimension.MASS: "kilogram",
    Dimension.MASS_PER_LENGTH: "kilogram/meter",
    Dimension.WEIGHT_PER_LENGTH: "newton/meter",
    Dimension.FORCE: "newton",
    Dimension.TORQUE: "newton*meter",
    Dimension.PRESSURE: "pascal",
    Dimension.FLOW: "meter**3/second",
    Dimension.VELOCITY: "meter/second",
    Dimension.DENSITY: "kilogram/meter**3",
    Dimension.KINEMATIC_VISCOSITY: "meter**2/second",
    Dimension.TEMPERATURE: "degC",
    Dimension.TEMPERATURE_DIFFERENCE: "kelvin",
    Dimension.RESISTANCE: "ohm",
    Dimension.RESISTANCE_PER_LENGTH: "ohm/meter",
    Dimension.CONDUCTIVITY: "siemens/meter",
    Dimension.PERMEATION: "kilogram/meter**2/second",
    Dimension.MASS_RATE: "kilogram/second",
    Dimension.EMISSION_FACTOR: "kilogram/meter**3",
    Dimension.ANGLE: "radian",
    Dimension.TIME: "second",
    Dimension.DAYS: "day",
    Dimension.PERCENT: "percent",
    Dimension.RATIO: "dimensionless",
    Dimension.COUNT: "dimensionless",
    Dimension.FLOW_COEFFICIENT: "meter**3/hour/bar**0.5",
}

# The spelling shown, first in SI, then in US units. Both must be keys of ACCEPTED.
SHOWN: dict[Dimension, tuple[str, str]] = {
    Dimension.DIAMETER: ("mm", "in"),
    Dimension.LENGTH: ("m", "ft"),
    Dimension.AREA: ("m²", "ft²"),
    Dimension.VOLUME: ("L", "gal"),
    Dimension.MASS: ("kg", "lb"),
    Dimension.MASS_PER_LENGTH: ("kg/m", "lb/ft"),
    Dimension.WEIGHT_PER_LENGTH: ("N/m", "lbf/ft"),
    Dimension.FORCE: ("N", "lbf"),
    Dimension.TORQUE: ("N·m", "lbf·ft"),
    Dimension.PRESSURE: ("kPa", "psi"),
    Dimension.FLOW: ("L/min", "gpm"),
    Dimension.VELOCITY: ("m/s", "ft/s"),
    Dimension.DENSITY: ("kg/m³", "lb/ft³"),
    Dimension.KINEMATIC_VISCOSITY: ("mm²/s", "cSt"),
    Dimension.TEMPERATURE: ("°C", "°F"),
    Dimension.TEMPERATURE_DIFFERENCE: ("K", "°F"),
    Dimension.RESISTANCE: ("Ω", "Ω"),
    Dimension.RESISTANCE_PER_LENGTH: ("Ω/m", "Ω/ft"),
    Dimension.CONDUCTIVITY: ("pS/m", "pS/m"),
    Dimension.PERMEATION: ("g/m²·day", "lb/ft²·day"),
    Dimension.MASS_RATE: ("g/day", "lb/day"),
    Dimension.EMISSION_FACTOR: ("mg/L", "lb/1000 gal"),
    Dimension.ANGLE: ("°", "°"),
    Dimension.TIME: ("s", "s"),
    Dimension.DAYS: ("days", "days"),
    Dimension.PERCENT: ("%", "%"),
    Dimension.RATIO: ("", ""),
    Dimension.COUNT: ("", ""),
    Dimension.FLOW_COEFFICIENT: ("Kv", "Cv"),
}

_LENGTHS = {
    "mm": "millimeter",
    "cm": "centimeter",
    "m": "meter",
    "in": "inch",
    "inch": "inch",
    "inches": "inch",
    '"': "inch",
    "ft": "foot",
    "foot": "foot",
    "feet": "foot",
    "'": "foot",
}

# what figures of published tables measure; a unit is looked up in this order
_OF_SOURCES = (
    Dimension.PERMEATION,
    Dimension.EMISSION_FACTOR,
    Dimension.VOLUME,
    Dimension.PRESSURE,
)

ACCEPTED: dict[Dimension, dict[str, str]] = {
    Dimension.DIAMETER: _LENGTHS,
    Dimension.LENGTH: _LENGTHS,
    Dimension.AREA: {
        "mm²": "millimeter**2",
        "mm2": "millimeter**2",
        "m²": "meter**2",
        "m2": "meter**2",
        "in²": "inch**2",
        "in2": "inch**2",
        "ft²": "foot**2",
        "ft2": "foot**2",
    },
    Dimension.VOLUME: {"L": "liter", "mL": "milliliter", "m³": "meter**3", "m3": "meter**3", "gal": "gallon"},
    Dimension.MASS: {"g": "gram", "kg": "kilogram", "lb": "pound", "oz": "ounce"},
    Dimension.MASS_PER_LENGTH: {"g/m": "gram/meter", "kg/m": "kilogram/meter", "lb/ft": "pound/foot"},
    Dimension.WEIGHT_PER_LENGTH: {"N/m": "newton/meter", "lbf/ft": "pound_force/foot"},
    Dimension.FORCE: {"N": "newton", "kN": "kilonewton", "lbf": "pound_force"},
    Dimension.TORQUE: {
        "N·m": "newton*meter",
        "N.m": "newton*meter",
        "Nm": "newton*meter",
        "lbf·ft": "pound_force*foot",
        "lbf.ft": "pound_force*foot",
        "ft·lbf": "pound_force*foot",
    },
    Dimension.PRESSURE: {"Pa": "pascal", "kPa": "kilopascal", "MPa": "megapascal", "bar": "bar", "psi": "psi"},
    Dimension.FLOW: {
        "L/min": "liter/minute",
        "L/s": "liter/second",
        "m³/h": "meter**3/hour",
        "m3/h": "meter**3/hour",
        "m³/s": "meter**3/second",
        "m3/s": "meter**3/second",
        "gpm": "gallon/minute",
        "gal/min": "gallon/minute",
    },
    Dimension.VELOCITY: {"m/s": "meter/second", "ft/s": "foot/second"},
    Dimension.DENSITY: {
        "kg/m³": "kilogram/meter**3",
        "kg/m3": "kilogram/meter**3",
        "kg/L": "kilogram/liter",
        "lb/ft³": "pound/foot**3",
        "lb/ft3": "pound/foot**3",
        "lb/gal": "pound/gallon",
    },
    Dimension.KINEMATIC_VISCOSITY: {
        "mm²/s": "millimeter**2/second",
        "mm2/s": "millimeter**2/second",
        "cSt": "centistokes",
        "m²/s": "meter**2/second",
        "m2/s": "meter**2/second",
    },
    Dimension.TEMPERATURE: {
        "°C": "degC",
        "degC": "degC",
        "C": "degC",
        "°F": "degF",
        "degF": "degF",
        "F": "degF",
        "K": "kelvin",
    },
    Dimension.TEMPERATURE_DIFFERENCE: {
        "K": "kelvin",
        "°C": "delta_degC",
        "degC": "delta_degC",
        "C": "delta_degC",
        "°F": "delta_degF",
        "degF": "delta_degF",
        "F": "delta_degF",
    },
    Dimension.RESISTANCE: {
        "Ω": "ohm",
        "ohm": "ohm",
        "kΩ": "kiloohm",
        "kohm": "kiloohm",
        "MΩ": "megaohm",
        "Mohm": "megaohm",
    },
    Dimension.RESISTANCE_PER_LENGTH: {
        "Ω/m": "ohm/meter",
        "ohm/m": "ohm/meter",
        "kΩ/m": "kiloohm/meter",
        "MΩ/m": "megaohm/meter",
        "Ω/ft": "ohm/foot",
        "ohm/ft": "ohm/foot",
        "kΩ/ft": "kiloohm/foot",
        "MΩ/ft": "megaohm/foot",
    },
    Dimension.CONDUCTIVITY: {"pS/m": "picosiemens/meter", "S/m": "siemens/meter"},
    Dimension.PERMEATION: {
        "g/m²·day": "gram/meter**2/day",
        "g/m2.day": "gram/meter**2/day",
        "g/(m2.day)": "gram/meter**2/day",
        "g/m²/day": "gram/meter**2/day",
        "lb/ft²·day": "pound/foot**2/day",
        "lb/ft2.day": "pound/foot**2/day",
    },
    Dimension.MASS_RATE: {
        "kg/year": "kilogram/year",
        "lb/year": "pound/year",
        "g/day": "gram/day",
        "lb/day": "pound/day",
        "kg/s": "kilogram/second",
    },
    Dimension.EMISSION_FACTOR: {
        "mg/L": "milligram/liter",
        "g/L": "gram/liter",
        "g/gal": "gram/gallon",
        "lb/1000 gal": "pound/kilogallon",
    },
    Dimension.ANGLE: {"°": "degree", "deg": "degree", "rad": "radian"},
    Dimension.TIME: {"s": "second", "ms": "millisecond", "min": "minute", "h": "hour"},
    Dimension.DAYS: {"days": "day", "day": "day", "d": "day", "weeks": "week", "week": "week"},
    Dimension.PERCENT: {"%": "percent", "percent": "percent"},
    Dimension.RATIO: {"": "dimensionless", "%": "percent"},
    Dimension.COUNT: {"": "dimensionless"},
    Dimension.FLOW_COEFFICIENT: {"Kv": "meter**3/hour/bar**0.5", "Cv": "gallon/minute/psi**0.5"},
}


def dimension_of_unit(unit: str) -> Dimension | None:
    """Return what a unit that a source prints measures; None for one that no figure is shown in."""
    return next((dimension for dimension in _OF_SOURCES if unit in ACCEPTED[dimension]), None)


def shown_unit(dimension: Dimension, system: UnitSystem) -> str:
    """Return the spelling in which ``dimension`` is shown in ``system``; empty for a bare number."""
    si_text, us_text = SHOWN[dimension]
    return si_text if system is UnitSystem.SI else us_text
