"""Numbers that several calculations share, each with unit, source and status."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus


@frozen
class Constant:
    """A number that is not an input: its name, value, unit, where it comes from and how well that is founded."""

    name: str
    value: float
    unit: str
    source: str
    status: LimitStatus

    @property
    def origin(self) -> str:
        """The source with its status, as it stands in a worked line."""
        return self.source if self.status is LimitStatus.VERIFIED else f"{self.source} ({self.status})"


STANDARD_GRAVITY = Constant(
    "standard gravity", 9.80665, "m/s2", "standard acceleration of gravity, exact by definition", LimitStatus.VERIFIED
)
VACUUM_PERMITTIVITY = Constant(
    "vacuum permittivity", 8.8541878128e-12, "F/m", "CODATA 2018 recommended value", LimitStatus.SECONDARY
)
ZERO_CELSIUS = Constant("zero degrees Celsius", 273.15, "K", "exact by definition of the scale", LimitStatus.VERIFIED)
WATER_FREEZES_C = Constant(
    "freezing point of water at 101.325 kPa", 0.0, "degC", "handbooks of physics, to 0.01 degC", LimitStatus.MEMORY
)
SECONDS_PER_HOUR = Constant("seconds per hour", 3600.0, "s", "exact", LimitStatus.VERIFIED)
SECONDS_PER_DAY = Constant("seconds per day", 86400.0, "s", "exact", LimitStatus.VERIFIED)
BAR = Constant("bar", 1.0e5, "Pa", "exact by definition", LimitStatus.VERIFIED)
KV_REFERENCE_DENSITY = Constant(
    "density of water in the definition of Kv",
    1000.0,
    "kg/m3",
    "definition of the flow coefficient",
    LimitStatus.MEMORY,
)
