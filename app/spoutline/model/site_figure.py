"""Figures that a visit to the station can measure, and the range in which each may lie while nobody has."""

from __future__ import annotations

from enum import StrEnum
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Duty, Position, Site

_LITRES_PER_MINUTE: Final = 1e-3 / 60  # m3/s
_KILOPASCAL: Final = 1e3  # Pa


class SiteFigure(StrEnum):
    """A figure that can be measured, in the order of the questions; the value is its path in the survey."""

    OUTLET_HEIGHT = "outlet.height_m"
    OUTLET_STRENGTH = "outlet.pull_strength_n"
    FILLER_DISTANCE = "filler.distance_m"
    FILLER_HEIGHT = "filler.height_m"
    HOOK_DISTANCE = "hook.distance_m"
    HOOK_HEIGHT = "hook.height_m"
    RETRACTOR_HEIGHT = "retractor.height_m"
    RETRACTOR_CLAMP = "retractor.clamp_fraction"
    RETRACTOR_FORCE = "retractor.force_n"
    DRUM_DIAMETER = "reel.drum_diameter_m"
    TURNS_LEFT = "reel.turns_left"
    SUPPLY_PRESSURE = "supply.pressure_kpa"
    SUPPLY_FLOW = "supply.maximum_flow_l_min"
    CLIMATE_LOW = "climate.low_c"
    CLIMATE_HIGH = "climate.high_c"

    @property
    def is_of_site(self) -> bool:
        """Whether the station has it once, and not each position."""
        return self in (SiteFigure.CLIMATE_LOW, SiteFigure.CLIMATE_HIGH)

    @property
    def dimension(self) -> Dimension:
        """What it measures."""
        return _DIMENSIONS.get(self, Dimension.LENGTH)

    @property
    def unit_si(self) -> float:
        """How much of the SI unit of its dimension one unit of its field is."""
        return {SiteFigure.SUPPLY_PRESSURE: _KILOPASCAL, SiteFigure.SUPPLY_FLOW: _LITRES_PER_MINUTE}.get(self, 1.0)

    def stated_si(self, position: Position, site: Site) -> float | None:
        """Return its value in a survey in SI, whoever gave it; None where the field is empty."""
        block, name = self.value.split(".")
        value = getattr(getattr(site if self.is_of_site else position, block), name)
        return None if value is None else value * self.unit_si


_DIMENSIONS: Final = {
    SiteFigure.OUTLET_STRENGTH: Dimension.FORCE,
    SiteFigure.RETRACTOR_FORCE: Dimension.FORCE,
    SiteFigure.RETRACTOR_CLAMP: Dimension.RATIO,
    SiteFigure.TURNS_LEFT: Dimension.RATIO,
    SiteFigure.SUPPLY_PRESSURE: Dimension.PRESSURE,
    SiteFigure.SUPPLY_FLOW: Dimension.FLOW,
    SiteFigure.CLIMATE_LOW: Dimension.TEMPERATURE,
    SiteFigure.CLIMATE_HIGH: Dimension.TEMPERATURE,
}


@frozen(kw_only=True)
class PlausibleRange:
    """Where a figure that nobody measured may lie, SI, ends taken in; of one duty or liquid where it names them."""

    figure: SiteFigure
    least: float
    most: float
    source: str
    status: LimitStatus
    duty: Duty | None = None
    family: LiquidFamily | None = None

    def holds_for(self, position: Position) -> bool:
        """Say whether the range is meant for a position."""
        return self.duty in (None, position.duty) and self.family in (None, position.liquid.family)


@frozen
class SiteRanges:
    """The table of plausible ranges. Every figure has a row for any duty and liquid, see ``ruletables.site_ranges``."""

    edition: str
    rows: tuple[PlausibleRange, ...]

    def of(self, figure: SiteFigure, position: Position) -> PlausibleRange:
        """Return the range of a figure at a position: that of its liquid, else of its duty, else of all."""
        found = (row for row in self.rows if row.figure is figure and row.holds_for(position))
        return max(found, key=lambda row: (row.family is not None, row.duty is not None))
