"""What a conversion does to emissions, year by year, and what the balance lacks."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.vapour_figures import VapourFigure


class ShareOrigin(StrEnum):
    """Where a year's share comes from."""

    OWN = "own"
    TABLE = "table"
    HELD = "held"


@frozen(kw_only=True)
class EmissionYear:
    """One year of the balance; kg are changes by the conversion, positive is more vapour. None: not computed."""

    year: int
    onboard_share: float
    origin: ShareOrigin
    increment: float
    displacement_kg: float | None
    spillage_kg: float | None
    permeation_kg: float | None

    @property
    def total_kg(self) -> float | None:
        """Sum of what could be computed for the year; None where the displacement could not."""
        if self.displacement_kg is None:
            return None
        return self.displacement_kg + (self.spillage_kg or 0.0) + (self.permeation_kg or 0.0)


@frozen(kw_only=True)
class SensitivityRow:
    """One input at a low and a high value: the result in the reference year, and the year of crossing."""

    input_name: str
    low: float
    high: float
    increment_low: float
    increment_high: float
    change_low_kg: float | None
    change_high_kg: float | None
    crossing_low: int | None
    crossing_high: int | None
    source: str


class EmissionGap(StrEnum):
    """What the balance lacks, for the reader to supply."""

    THROUGHPUT = "throughput"
    SHARES = "shares"
    SHARES_HELD = "shares_held"
    HOSE_RATES = "hose_rates"
    AMBIENT_DEFAULT = "ambient_default"
    VAPOUR_PRESSURE_DEFAULT = "vapour_pressure_default"
    PERMEATION_TEMPERATURE = "permeation_temperature"


@frozen(kw_only=True)
class EmissionSheet:
    """The emissions of taking recovery away (or bringing it in: signs are of the change that is planned)."""

    years: tuple[EmissionYear, ...]
    break_even: WorkedLine
    crossing_year: int | None
    crossing_moment: float | None
    reference_year: int | None
    lines: tuple[WorkedLine, ...]
    sensitivity: tuple[SensitivityRow, ...]
    figures: tuple[VapourFigure, ...]
    gaps: tuple[EmissionGap, ...]
    shares_source: str
    assist_share: float
    removing: bool
