"""Published figures on vapour recovery, with the status of each: what the conversion's emissions are computed from."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import cached_property

from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus


class VapourFigureId(StrEnum):
    """Every figure that an emission or conversion calculation reads. The table must hold each one."""

    COMPATIBILITY_SLOPE = "compatibility_slope"
    IN_USE_EFFICIENCY = "in_use_efficiency"
    IN_USE_EFFICIENCY_LOW = "in_use_efficiency_low"
    IN_USE_EFFICIENCY_HIGH = "in_use_efficiency_high"
    ONBOARD_EFFICIENCY = "onboard_efficiency"
    RATE_CONSTANT = "rate_constant"
    RATE_DIFFERENCE = "rate_difference"
    RATE_DISPENSED = "rate_dispensed"
    RATE_VAPOUR_PRESSURE = "rate_vapour_pressure"
    DISPENSED_CONSTANT = "dispensed_constant"
    DISPENSED_SLOPE = "dispensed_slope"
    DIFFERENCE_SLOPE = "difference_slope"
    DIFFERENCE_CONSTANT = "difference_constant"
    DIFFERENCE_MAXIMUM = "difference_maximum"
    ONBOARD_RATE = "onboard_rate"
    MODEL_SPILLAGE = "model_spillage"
    MODEL_SPILLAGE_ONBOARD = "model_spillage_onboard"
    AP42_DISPLACEMENT = "ap42_displacement"
    AP42_DISPLACEMENT_CONTROLLED = "ap42_displacement_controlled"
    AP42_SPILLAGE = "ap42_spillage"
    CARB_WITHOUT_ONBOARD = "carb_without_onboard"
    CARB_WITHOUT_ONBOARD_CONTROLLED = "carb_without_onboard_controlled"
    CARB_ONBOARD = "carb_onboard"
    CARB_ONBOARD_CONTROLLED = "carb_onboard_controlled"
    CARB_SPILLAGE = "carb_spillage"
    CARB_SPILLAGE_CONTROLLED = "carb_spillage_controlled"
    CARB_SPILLAGE_ENHANCED = "carb_spillage_enhanced"
    HOSE_PERMEATION = "hose_permeation"
    HOSE_PERMEATION_LOW = "hose_permeation_low"
    DECAY_STAGE_ONE = "decay_stage_one"
    DECAY_ASSIST_6 = "decay_assist_6"
    DECAY_ASSIST_12 = "decay_assist_12"
    DECAY_ASSIST_18 = "decay_assist_18"
    DECAY_ASSIST_24 = "decay_assist_24"
    DECAY_ASSIST_MORE = "decay_assist_more"
    DECAY_BALANCE_6 = "decay_balance_6"
    DECAY_BALANCE_12 = "decay_balance_12"
    DECAY_BALANCE_18 = "decay_balance_18"
    DECAY_BALANCE_24 = "decay_balance_24"
    DECAY_BALANCE_MORE = "decay_balance_more"
    DECAY_START = "decay_start"
    EU_THRESHOLD_NEW = "eu_threshold_new"
    EU_THRESHOLD_UNDER_QUARTERS = "eu_threshold_under_quarters"
    EU_THRESHOLD_EXISTING = "eu_threshold_existing"
    EU_EFFICIENCY = "eu_efficiency"
    UPKEEP_SAVING = "upkeep_saving"
    GRANT_SHARE = "grant_share"
    GRANT_MAXIMUM = "grant_maximum"
    DEFAULT_VAPOUR_PRESSURE = "default_vapour_pressure"
    DEFAULT_AMBIENT = "default_ambient"


@frozen(kw_only=True)
class VapourFigure:
    """One row: ``value`` stands in the printed ``unit``, since the published formulas are written in it."""

    id: VapourFigureId
    title: str
    value: float
    unit: str
    source: str
    clause: str
    edition: str
    status: LimitStatus
    note: str = ""

    @property
    def origin(self) -> str:
        """Source and clause with the status, as it stands in a worked line; the status of a text read is left out."""
        place = f"{self.source}, {self.clause}" if self.clause else self.source
        return place if self.status is LimitStatus.VERIFIED else f"{place} [{self.status}]"


@frozen
class OnboardShare:
    """Share of gasoline that went into vehicles with onboard recovery by the end of a year, as a fraction."""

    year: int
    vehicles: float
    distance: float
    gasoline: float


class RemovalRule(StrEnum):
    """What an agency's rule says about recovery at the nozzle that is there today."""

    MUST_GO = "must_go"
    MAY_GO = "may_go"
    NOT_ALLOWED = "not_allowed"
    THRESHOLD = "threshold"  # decided by the station's throughput
    UNKNOWN = "unknown"


@frozen(kw_only=True)
class AgencyRow:
    """What is known of one agency's rule on removal; times in days, None where no figure was found."""

    id: str
    title: str
    removal: RemovalRule
    notice_days: int | None
    test_notice_days: int | None
    finish_days: int | None
    approval_first: bool
    same_day: bool
    weekdays_only: bool
    enhanced_nozzle: bool
    low_permeation_hose: bool
    grant: bool
    tests: tuple[str, ...]
    checklist: str
    profiles: tuple[str, ...]  # rule profiles whose sites fall under this agency unless the survey says otherwise
    source: str
    clause: str
    edition: str
    status: LimitStatus
    note: str = ""
    notice_lapses_days: int | None = None  # a notice is worth nothing where the work has not begun by then
    second_notice_least_hours: int | None = None  # a second notice goes out so long before the work ...
    second_notice_most_hours: int | None = None  # ... and no earlier than this
    test_notice_working: bool = False  # the days of test_notice_days are working days
    further_tests: tuple[str, ...] = ()  # tests that the table of steps does not hold by themselves


@dataclass(frozen=True)
class VapourTables:
    """Everything about vapour recovery that a conversion is given."""

    edition: str
    figures: tuple[VapourFigure, ...]
    shares: tuple[OnboardShare, ...]
    shares_source: str
    shares_status: LimitStatus
    agencies: tuple[AgencyRow, ...]

    @cached_property
    def _by_id(self) -> dict[VapourFigureId, VapourFigure]:
        return {figure.id: figure for figure in self.figures}

    def figure(self, figure_id: VapourFigureId) -> VapourFigure:
        """Return the row; ``KeyError`` cannot happen for a loaded table."""
        return self._by_id[figure_id]

    def value(self, figure_id: VapourFigureId) -> float:
        """Return the row's value in its printed unit."""
        return self._by_id[figure_id].value

    def agency_of_profile(self, jurisdiction_id: str) -> AgencyRow | None:
        """Return the agency row that a rule profile brings with it; None where it brings none."""
        return next((row for row in self.agencies if jurisdiction_id in row.profiles), None)

    def agency(self, agency_id: str) -> AgencyRow | None:
        """Return an agency's row; None where the table has none of that id."""
        return next((row for row in self.agencies if row.id == agency_id), None)
