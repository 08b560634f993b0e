"""Results of a conversion: what stays and goes, what it costs, when it is done, what it does to emissions."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from enum import StrEnum

from spoutline.model.check import WorkedLine
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.finding import Finding
from spoutline.model.installed import InstalledPart
from spoutline.model.limit import Jurisdiction, LimitStatus
from spoutline.model.part import Part
from spoutline.model.plan import AccessoryLine, JudgedSet, PositionPlan, Provenance
from spoutline.model.requirement import RequirementId, RequirementLine, Slot
from spoutline.model.survey import Position, Survey
from spoutline.model.vapour_figures import AgencyRow, VapourFigure


class ConversionKind(StrEnum):
    """In what way a position is converted; one position may be converted in several ways at once."""

    DECOMMISSION = "decommission"
    ADD_RECOVERY = "add_recovery"
    CHANGE_RECOVERY = "change_recovery"
    CHANGE_LIQUID = "change_liquid"
    RECONNECTABLE = "reconnectable"
    RETIREMENT = "retirement"
    NEW_POSITION = "new_position"


class Standing(StrEnum):
    """What the rules say about taking recovery at the nozzle away, gravest first."""

    NOT_ALLOWED = "not_allowed"
    ASK = "ask"
    MAY_GO = "may_go"
    MUST_GO = "must_go"
    NOT_CONCERNED = "not_concerned"  # no position takes recovery away


class StandingReason(StrEnum):
    """Why the standing is what it is."""

    PROFILE_FORBIDS = "profile_forbids"
    PROFILE_ASKS = "profile_asks"
    PROFILE_ALLOWS = "profile_allows"
    PROFILE_PROHIBITS_RECOVERY = "profile_prohibits_recovery"
    AGENCY_FORBIDS = "agency_forbids"
    AGENCY_ALLOWS = "agency_allows"
    AGENCY_DEMANDS = "agency_demands"
    AGENCY_UNKNOWN = "agency_unknown"
    ABOVE_THRESHOLD = "above_threshold"
    BELOW_THRESHOLD = "below_threshold"
    THROUGHPUT_UNKNOWN = "throughput_unknown"


@dataclass(frozen=True, slots=True, kw_only=True)
class StandingGround:
    """One ground of the standing with its source."""

    reason: StandingReason
    source: str
    status: LimitStatus
    threshold: VapourFigure | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RemovalStanding:
    """Whether recovery may be taken away here, told before anything else; the agency decides."""

    standing: Standing
    grounds: tuple[StandingGround, ...]
    agency: AgencyRow
    positions: tuple[str, ...]  # labels of the positions that take recovery away


class DifferenceAction(StrEnum):
    """What happens with a part."""

    KEEP = "keep"
    REMOVE = "remove"
    ADD = "add"
    CAP = "cap"


class DifferenceReason(StrEnum):
    """Why it happens."""

    STILL_FITS = "still_fits"
    NO_PLACE = "no_place"
    BREAKS_RULE = "breaks_rule"
    DAMAGED = "damaged"
    TOO_OLD = "too_old"
    AGE_UNKNOWN = "age_unknown"
    SUPERSEDED = "superseded"
    FIGURES_UNKNOWN = "figures_unknown"
    NUMBER_UNKNOWN = "number_unknown"
    NOT_RECONNECTABLE = "not_reconnectable"
    REFUSED = "refused"
    RENEWED = "renewed"
    CHEAPER_WITHOUT = "cheaper_without"
    NO_SET_WITH_IT = "no_set_with_it"
    NO_SET_AT_ALL = "no_set_at_all"
    NOT_RECORDED = "not_recorded"
    ASKED_FOR = "asked_for"
    ACCESSORY = "accessory"
    OPENING = "opening"


class VapourOpening(StrEnum):
    """Where a vapour path is closed."""

    OUTLET = "outlet"
    CABINET_PIPE = "cabinet_pipe"
    PUMP_INLET = "pump_inlet"
    PUMP_OUTLET = "pump_outlet"
    RISER = "riser"
    CENTRAL_UNIT = "central_unit"
    CONDENSATE_TRAP = "condensate_trap"
    TANK_END = "tank_end"


@dataclass(frozen=True, slots=True, kw_only=True)
class Closing:
    """One kind of opening to close; ``position`` is empty for a whole dispenser, both are empty for the site."""

    opening: VapourOpening
    dispenser: str
    position: str
    quantity: int
    source: str
    status: LimitStatus


@dataclass(frozen=True, slots=True, kw_only=True)
class DifferenceLine:
    """One part of a position, today or afterwards, with the reason for what happens to it.

    ``findings`` are the broken rules; ``asked_by`` the requirement line that asks for an added part; ``missing`` names
    figures without which an installed part cannot be re-checked. ``amount_minor`` is what a new part costs, or what a
    kept part would cost new; ``extra_minor`` is what keeping the part would add to the set. ``conflict`` are the lines
    that exclude every set with the part.
    """

    action: DifferenceAction
    reason: DifferenceReason
    slot: Slot | None
    part: Part | None
    installed: InstalledPart | None = None
    quantity: int = 1
    findings: tuple[Finding, ...] = ()
    asked_by: RequirementLine | None = None
    missing: tuple[str, ...] = ()
    amount_minor: int | None = None
    extra_minor: int | None = None
    conflict: tuple[RequirementId, ...] = ()
    accessory_reason: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class ConversionOption:
    """One way to convert a position.

    ``kept`` are places in the chain, from 0, whose part stays. ``parts_minor`` is the list price of what is bought for
    the chain, ``accessories_minor`` of what goes with it, ``kept_minor`` what the kept parts would cost new (None where
    one of them has no price). ``departures`` counts broken should-rules and should-checks.
    """

    kind: OptionKind
    judged: JudgedSet
    kept: tuple[int, ...]
    accessories: tuple[AccessoryLine, ...]
    parts_minor: int
    accessories_minor: int
    kept_minor: int | None
    departures: int

    @property
    def bought_minor(self) -> int:
        """List price of everything that is bought."""
        return self.parts_minor + self.accessories_minor


class PositionOutcome(StrEnum):
    """How the conversion of a position ends."""

    CONVERTS = "converts"
    NOTHING_TO_DO = "nothing_to_do"
    NOT_ALLOWED = "not_allowed"
    NO_SET = "no_set"
    REFUSED = "refused"


@dataclass(frozen=True, slots=True, kw_only=True)
class PositionConversion:
    """Everything about one position's conversion. Without a set, ``renewal`` tells why."""

    position: Position
    kinds: tuple[ConversionKind, ...]
    outcome: PositionOutcome
    least_cost: ConversionOption | None
    good_practice: ConversionOption | None
    renewal: PositionPlan
    renewal_option: ConversionOption | None
    differences: tuple[DifferenceLine, ...]
    closings: tuple[Closing, ...]

    @property
    def options(self) -> tuple[ConversionOption, ...]:
        """The ways that exist, cheapest kind first."""
        found = (self.least_cost, self.good_practice, self.renewal_option)
        return tuple(option for option in found if option is not None)

    def followed(self, wanted: OptionKind) -> ConversionOption | None:
        """Return the way that the plan follows: the wanted one, else the nearest cheaper one; None without a set."""
        by_kind = {option.kind: option for option in self.options}
        order = list(OptionKind)
        for kind in reversed(order[: order.index(wanted) + 1]):
            if kind in by_kind:
                return by_kind[kind]
        return None


class ShareOrigin(StrEnum):
    """Where a year's share comes from."""

    OWN = "own"
    TABLE = "table"
    HELD = "held"


@dataclass(frozen=True, slots=True, kw_only=True)
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


@dataclass(frozen=True, slots=True, kw_only=True)
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


@dataclass(frozen=True, slots=True, kw_only=True)
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


@dataclass(frozen=True, slots=True, kw_only=True)
class Moment:
    """A point of the working calendar: whole days from the first day of the plan, and minutes into the working day."""

    day: int
    minute: int


class StepScope(StrEnum):
    """What a step of the table is done once for."""

    SITE = "site"
    DISPENSER = "dispenser"
    POSITION = "position"
    PART_REMOVED = "part_removed"
    PART_FITTED = "part_fitted"
    CLOSING = "closing"


class StepRole(StrEnum):
    """Who does a step."""

    OWNER = "owner"
    CONTRACTOR = "contractor"
    TESTER = "tester"
    AGENCY = "agency"


class StepCondition(StrEnum):
    """When a step belongs into the plan."""

    ALWAYS = "always"
    DECOMMISSION = "decommission"
    ASSIST = "assist"
    BALANCE = "balance"
    ADDS_RECOVERY = "adds_recovery"
    CHANGES_LIQUID = "changes_liquid"
    TRAPS = "traps"
    TANK_END = "tank_end"
    LINKED_TANKS = "linked_tanks"  # the vapour pipe is the only link between the tanks
    LINK_TO_PROVE = "link_to_prove"  # it is, or nobody knows
    APPROVAL_FIRST = "approval_first"
    ORDERS_PARTS = "orders_parts"


@dataclass(frozen=True, slots=True, kw_only=True)
class ConversionStep:
    """One row of the table of steps. ``minutes`` is work per unit of its scope; ``after`` are ids of earlier steps."""

    id: str
    title: str
    detail: str
    scope: StepScope
    role: StepRole
    minutes: int
    after: tuple[str, ...]
    conditions: tuple[StepCondition, ...]
    stops_sales: bool
    source: str
    status: LimitStatus


@dataclass(frozen=True, slots=True)
class StepTable:
    """All steps in the order of the work."""

    edition: str
    steps: tuple[ConversionStep, ...]

    def minutes_per(self, scope: StepScope) -> int:
        """Return the minutes of all steps that are done once per unit of ``scope``."""
        return sum(step.minutes for step in self.steps if step.scope is scope)


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedTask:
    """One task with its times. ``after`` are ids of the tasks it waits for; ``slack_minutes`` is working time."""

    id: str
    step_id: str
    title: str
    role: StepRole
    places: tuple[str, ...]
    start: Moment
    finish: Moment
    work_minutes: int
    waits_days: int
    after: tuple[str, ...]
    critical: bool
    slack_minutes: int
    stops_sales: bool
    phase: int | None
    source: str
    status: LimitStatus


class SequenceFinding(StrEnum):
    """What the sequence cannot keep or does not know."""

    SHARE_TOO_SMALL = "share_too_small"
    NOTICE_UNKNOWN = "notice_unknown"
    FINISH_LATE = "finish_late"
    NOT_WITHIN_DAY = "not_within_day"
    NO_START_DATE = "no_start_date"
    WHOLE_STATION_STOP = "whole_station_stop"
    PHASES_NOT_PROVED = "phases_not_proved"
    PIPES_UNKNOWN = "pipes_unknown"


@dataclass(frozen=True, slots=True, kw_only=True)
class SequenceNote:
    """A finding on the sequence with the numbers it used."""

    finding: SequenceFinding
    subject: str = ""
    number: float | None = None
    limit: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Phase:
    """Dispensers that are out of service together; minutes are working time of the positions concerned."""

    number: int
    dispensers: tuple[str, ...]
    positions: tuple[str, ...]
    start: Moment
    finish: Moment
    out_of_service: tuple[tuple[str, int, int], ...]  # grade, positions out, positions in all


@dataclass(frozen=True, slots=True, kw_only=True)
class Sequence:
    """The dated plan. ``first_day`` is None where no start is known; days are then counted."""

    first_day: date | None
    minutes_per_day: int
    tasks: tuple[PlannedTask, ...]
    phases: tuple[Phase, ...]
    notes: tuple[SequenceNote, ...]
    finish: Moment
    work_minutes: int
    downtime_minutes: int  # working minutes times positions
    site_stop_minutes: int


class CostKind(StrEnum):
    """Lines of the cost of a conversion."""

    PARTS = "parts"
    ACCESSORIES = "accessories"
    LABOUR = "labour"
    OWN = "own"
    LOST_MARGIN = "lost_margin"
    GRANT = "grant"


@dataclass(frozen=True, slots=True, kw_only=True)
class CostLine:
    """One line; ``amount`` is None where a price is missing."""

    kind: CostKind
    label: str
    amount: Decimal | None
    eligible: bool = False


class MoneyGap(StrEnum):
    """What the money lacks, for the reader to supply."""

    LABOUR_RATE = "labour_rate"
    UPKEEP = "upkeep"
    MARGIN = "margin"
    UNPRICED_PARTS = "unpriced_parts"
    POSITIONS_OPEN = "positions_open"


@dataclass(frozen=True, slots=True, kw_only=True)
class CashYear:
    """One year of the comparison; year 0 is the conversion."""

    year: int
    flow: Decimal
    discounted: Decimal
    balance: Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class MoneySheet:
    """Cost against upkeep. Payback and value are None unless the owner gave the figures that they need."""

    currency: str
    costs: tuple[CostLine, ...]
    total: Decimal
    complete: bool
    yearly_saving: Decimal | None
    payback_years: Decimal | None
    discounted_payback_years: int | None
    net_present_value: Decimal | None
    discount_percent: Decimal
    years: tuple[CashYear, ...]
    gaps: tuple[MoneyGap, ...]
    grant_possible: Decimal | None
    renewal_total: Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class SiteConversion:
    """The whole conversion of a site; every part of it is made from the same survey and tables."""

    survey: Survey
    jurisdiction: Jurisdiction
    standing: RemovalStanding
    positions: tuple[PositionConversion, ...]
    closings: tuple[Closing, ...]
    emissions: EmissionSheet | None
    sequence: Sequence | None
    money: MoneySheet
    provenance: Provenance
    decay: WorkedLine | None = None

    @property
    def plan_complete(self) -> bool:
        """True where no rule read forbids what is wanted and every position has a set; it is no permission."""
        good = (PositionOutcome.CONVERTS, PositionOutcome.NOTHING_TO_DO)
        return self.standing.standing is not Standing.NOT_ALLOWED and all(
            item.outcome in good for item in self.positions
        )
