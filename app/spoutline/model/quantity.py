"""A number with a name and a dimension, so that every figure can be shown in any unit system."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen


class Dimension(StrEnum):
    """What a bare SI float measures; the unit in brackets is the one used inside the core."""

    DIAMETER = "diameter"  # m, shown in mm or in
    LENGTH = "length"  # m, shown in m or ft
    AREA = "area"  # m2
    VOLUME = "volume"  # m3
    MASS = "mass"  # kg
    MASS_PER_LENGTH = "mass_per_length"  # kg/m
    WEIGHT_PER_LENGTH = "weight_per_length"  # N/m
    FORCE = "force"  # N
    TORQUE = "torque"  # N.m
    PRESSURE = "pressure"  # Pa
    FLOW = "flow"  # m3/s
    VELOCITY = "velocity"  # m/s
    DENSITY = "density"  # kg/m3
    KINEMATIC_VISCOSITY = "kinematic_viscosity"  # m2/s
    TEMPERATURE = "temperature"  # degree Celsius
    TEMPERATURE_DIFFERENCE = "temperature_difference"  # K
    RESISTANCE = "resistance"  # ohm
    RESISTANCE_PER_LENGTH = "resistance_per_length"  # ohm/m
    CONDUCTIVITY = "conductivity"  # S/m
    PERMEATION = "permeation"  # kg/(m2.s), shown in g/(m2.day) or lb/(ft2.day)
    MASS_RATE = "mass_rate"  # kg/s, shown in g/day or lb/day
    EMISSION_FACTOR = "emission_factor"  # kg/m3 dispensed, shown in mg/L or lb/1000 gal
    ANGLE = "angle"  # rad, shown in degrees
    TIME = "time"  # s
    DAYS = "days"  # whole days, for lead times
    PERCENT = "percent"  # percent by volume
    RATIO = "ratio"  # dimensionless
    COUNT = "count"  # dimensionless, whole
    FLOW_COEFFICIENT = "flow_coefficient"  # Kv, m3/h at 1 bar


@frozen
class Quantity:
    """One named SI value.

    ``name`` is the symbol or word used in the worked line (``"Re"``, ``"bore"``); ``value`` is in the SI unit
    that the dimension names.
    """

    name: str
    value: float
    dimension: Dimension


@frozen
class Fact:
    """A named value that is not a number: a class, a thread, a part number, a yes or no."""

    name: str
    value: str
