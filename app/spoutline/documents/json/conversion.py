"""The conversion as a stable JSON document: what `convert --json` prints.

Every number is SI with the unit in its name; amounts are decimal texts in the document's currency. Fields are added in
later versions, never renamed; ``version`` counts changes that a reader must know of.
"""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Literal

from pydantic import Field

from spoutline.documents.json.head import HeadedDocument, Record
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.conversion_answers import EmissionBasis, OptionKind
from spoutline.model.conversion_money import CostKind, MoneyGap
from spoutline.model.conversion_sequence import DeadlineKind, SequenceFinding
from spoutline.model.conversion_step import StepRole
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.emission_sheet import EmissionGap, ShareOrigin
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import PartKind
from spoutline.model.position_conversion import (
    ConversionKind,
    DifferenceAction,
    LiveReason,
    PositionOutcome,
    VapourOpening,
)
from spoutline.model.removal_standing import Standing, StandingReason
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.tank_change import ChangeWay, TankProblem
from spoutline.model.vapour_figures import RemovalRule


class GroundRecord(Record):
    """One ground of the standing."""

    reason: StandingReason
    source: str
    status: LimitStatus
    threshold_m3_per_year: float | None


class StandingRecord(Record):
    """Whether recovery at the nozzle may be taken away; the agency decides, not this document."""

    standing: Standing
    positions: tuple[str, ...]
    agency: str
    agency_rule: RemovalRule
    grounds: tuple[GroundRecord, ...]
    says: str
    kept_against_rule: tuple[str, ...] = Field((), description="Positions that keep recovery though it is to go.")


class RuleRecord(Record):
    """A broken rule, or the requirement line that asks for a part."""

    rule_id: str
    severity: Severity
    says: str
    source: str


class DifferenceRecord(Record):
    """What happens with one part."""

    action: DifferenceAction
    reason: DifferenceReason
    slot: Slot | None
    kind: PartKind | None
    part_number: str | None
    maker: str | None
    installed: str
    quantity: int
    amount: Decimal | None = Field(description="What a new part costs, or what a kept part would cost new.")
    extra_to_keep: Decimal | None
    missing: tuple[str, ...]
    conflict: tuple[RequirementId, ...]
    rules: tuple[RuleRecord, ...]
    says: str


class ClosingRecord(Record):
    """A vapour opening to close."""

    opening: VapourOpening
    dispenser: str
    position: str
    quantity: int
    source: str
    status: LimitStatus


class LiveRecord(Record):
    """A vapour path that is not closed, because positions go on recovering through it."""

    opening: VapourOpening
    dispenser: str
    quantity: int
    needed_by: tuple[str, ...]
    reason: LiveReason
    says: str
    source: str
    status: LimitStatus


class TankChangeRecord(Record):
    """A tank that changes its liquid; ``notice_days`` is null where the tank agency need not be told."""

    tank: str
    positions: tuple[str, ...]
    family_today: LiquidFamily
    blend_percent_today: float
    family: LiquidFamily
    blend_percent: float
    way: ChangeWay
    why_within: tuple[str, ...]
    others: tuple[str, ...] = Field(description="Positions of the tank that would sell another liquid.")
    problems: tuple[TankProblem, ...]
    notice_days: int | None
    notice_status: LimitStatus | None
    label: str | None
    asks: tuple[str, ...]


class DecayRecord(Record):
    """The least pressure of the decay test after five minutes, and the nozzles whose constant it takes."""

    least_pressure_pa: float
    ullage_m3: float
    nozzles_recovering: int
    formula: str
    source: str


class OptionRecord(Record):
    """One way to convert a position; ``shown`` are sets that were handed in, such as agreed ones."""

    kind: OptionKind | Literal["shown"]
    part_numbers: tuple[str, ...]
    makers: tuple[str, ...]
    kept_part_numbers: tuple[str, ...]
    kept_makers: tuple[str, ...]
    bought: Decimal
    kept_value: Decimal | None
    departures: int


class PositionRecord(Record):
    """One position; ``set`` is the way that is followed."""

    label: str
    dispenser: str
    outcome: PositionOutcome
    kinds: tuple[ConversionKind, ...]
    follows: OptionKind | Literal["shown"] | None
    options: tuple[OptionRecord, ...]
    differences: tuple[DifferenceRecord, ...]
    tanks: tuple[str, ...] = ()
    assumed: tuple[str, ...] = Field((), description="Fields of the survey that decide the set and nobody answered.")
    inherited: tuple[str, ...] = Field((), description="Fields of the survey that are of the dispenser's type.")
    dispenser_type: str = Field("", description="Name of the dispenser's type; empty where none was chosen.")
    footing: dict[LimitStatus, int] = Field({}, description="How many limits behind the position have each status.")
    why_not: tuple[str, ...]


class EmissionYearRecord(Record):
    """One year; changes by the conversion, positive is more vapour."""

    year: int
    onboard_share: float
    origin: ShareOrigin
    increment: float
    displacement_kg: float | None
    spillage_kg: float | None
    permeation_kg: float | None
    total_kg: float | None


class SensitivityRecord(Record):
    """One input at its low and high end."""

    input: str
    low: float
    high: float
    increment_low: float
    increment_high: float
    change_low_kg: float | None
    change_high_kg: float | None
    crossing_low: int | None
    crossing_high: int | None
    source: str


class FigureRecord(Record):
    """A published figure with its status."""

    id: str
    value: float
    unit: str
    source: str
    status: LimitStatus


class EmissionRecord(Record):
    """The emissions of the conversion."""

    basis: EmissionBasis
    removing: bool
    break_even_share: float
    crossing_year: int | None
    reference_year: int | None
    assist_share: float
    shares_source: str
    years: tuple[EmissionYearRecord, ...]
    sensitivity: tuple[SensitivityRecord, ...]
    figures: tuple[FigureRecord, ...]
    gaps: tuple[EmissionGap, ...]


class TaskRecord(Record):
    """One task; days count from the first day of the plan, minutes from the start of the working day."""

    id: str
    title: str
    role: StepRole
    phase: int | None
    places: tuple[str, ...]
    start_day: int
    start_minute: int
    finish_day: int
    finish_minute: int
    start_date: date | None
    finish_date: date | None
    work_minutes: int
    waits_days: int
    after: tuple[str, ...]
    critical: bool
    slack_minutes: int
    stops_sales: bool
    subject: str = ""
    tank: str = ""


class DeadlineRecord(Record):
    """A day that a rule sets and no task shows."""

    kind: DeadlineKind
    day: int
    date: date | None
    limit_days: int
    kept: bool
    says: str
    source: str
    status: LimitStatus


class PhaseRecord(Record):
    """Dispensers out of service together."""

    number: int
    dispensers: tuple[str, ...]
    positions: tuple[str, ...]
    greatest_share_out_of_service: float


class NoteRecord(Record):
    """What the sequence cannot keep or does not know."""

    finding: SequenceFinding
    says: str


class SequenceRecord(Record):
    """The dated plan."""

    first_day: date | None
    finish_day: int
    work_minutes: int
    downtime_minutes: int
    site_stop_minutes: int
    phases: tuple[PhaseRecord, ...]
    tasks: tuple[TaskRecord, ...]
    notes: tuple[NoteRecord, ...]
    deadlines: tuple[DeadlineRecord, ...] = ()


class CostRecord(Record):
    """One line of the cost; ``amount`` is null where it is not priced."""

    kind: CostKind
    label: str
    amount: Decimal | None


class MoneyRecord(Record):
    """Cost against upkeep."""

    currency: str
    costs: tuple[CostRecord, ...]
    total: Decimal
    complete: bool
    yearly_saving: Decimal | None
    payback_years: Decimal | None
    discounted_payback_years: int | None
    net_present_value: Decimal | None
    grant_possible: Decimal | None
    renewal_parts: Decimal
    gaps: tuple[MoneyGap, ...]


class CaseRecord(Record):
    """A case beside the others; ``name`` is empty for what the survey asks. Null: not known, or nothing is done."""

    name: str
    changes: str
    positions: tuple[str, ...] = Field(description="Positions that are otherwise.")
    cost: Decimal
    cost_complete: bool
    net_present_value: Decimal | None
    years: int
    days: int | None
    stopped_position_hours: float
    change_kg: float | None
    losing_recovery: int
    departures: int
    without_set: int
    plan_complete: bool


class ConversionDocument(HeadedDocument):
    """The whole conversion of a site."""

    format: Literal["spoutline-conversion"] = "spoutline-conversion"
    advice: str = Field(description="The report is advice; it is no permission.")
    site: str
    case: str = Field("", description="Which case the document shows; empty for what the survey asks.")
    cases: tuple[CaseRecord, ...] = Field((), description="All cases that were worked out, the survey's first.")
    sets_from: SetsFrom = Field(SetsFrom(), description="Which sets the document shows.")
    jurisdiction: str
    assumed: tuple[str, ...] = Field((), description="Fields of the station that decide sets and nobody answered.")
    plan_complete: bool = Field(
        description="No rule read forbids what is wanted and every position has a set; no permission."
    )
    standing: StandingRecord
    positions: tuple[PositionRecord, ...]
    closings: tuple[ClosingRecord, ...]
    stays_live: tuple[LiveRecord, ...] = Field((), description="Vapor paths that are not closed, and who needs them.")
    tank_changes: tuple[TankChangeRecord, ...] = ()
    decay: DecayRecord | None = Field(None, description="Null where nothing is taken away or the space is not known.")
    sequence: SequenceRecord | None
    emissions: EmissionRecord | None
    money: MoneyRecord
