"""What a position asks of its set, each line with the rule and source that set it."""

from __future__ import annotations

from collections import Counter
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.check import Bound
from spoutline.model.finding import Finding, Severity
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.model.liquid import Liquid, ListingClass, ListingScheme
from spoutline.model.material import MaterialColumn
from spoutline.model.part import HoseConstruction, NozzleService
from spoutline.model.port import FlowPath, Port
from spoutline.model.quantity import Fact, Quantity
from spoutline.model.survey import Position, Site


class Slot(StrEnum):
    """A place in the chain, dispenser first."""

    WHIP_HOSE = "whip_hose"
    BREAKAWAY = "breakaway"
    CURB_HOSE = "curb_hose"
    SWIVEL = "swivel"
    SWIVEL_BREAKAWAY = "swivel_breakaway"
    NOZZLE = "nozzle"
    ADAPTOR = "adaptor"  # between any two of the others
    SPLITTER = "splitter"  # at the dispenser outlet only


class RequirementId(StrEnum):
    """Lines of a requirement; a conflict names these."""

    LISTING_CLASS = "listing_class"
    LISTING_SCHEME = "listing_scheme"
    DEF_ZONE = "def_zone"
    LIQUID_SERVICE = "liquid_service"
    SPOUT = "spout"
    FILLER = "filler"
    MATERIALS = "materials"
    TEMPERATURE = "temperature"
    PRESSURE = "pressure"
    PATH = "path"
    VAPOUR_PARTS = "vapour_parts"
    OPERATION = "operation"
    HOLD_OPEN = "hold_open"
    NO_PRESSURE_DEVICE = "no_pressure_device"
    ENHANCED_CONVENTIONAL = "enhanced_conventional"
    CHAIN = "chain"
    BREAKAWAY_PLACE = "breakaway_place"
    RECONNECTABLE = "reconnectable"
    SEPARATION_FORCE = "separation_force"
    SERVICE_LOAD = "service_load"
    DRIVE_OFF = "drive_off"
    SWIVEL = "swivel"
    HOSE_CONSTRUCTION = "hose_construction"
    LOW_PERMEATION = "low_permeation"
    HOSE_LENGTH = "hose_length"
    REACH = "reach"
    GROUND_CLEARANCE = "ground_clearance"
    WHIP_LENGTH = "whip_length"
    CONTINUITY = "continuity"
    RESISTANCE = "resistance"
    FLOW = "flow"
    NOZZLE_FLOW = "nozzle_flow"
    VELOCITY = "velocity"
    STATUS = "status"
    LEAD_TIME = "lead_time"
    DECISION = "decision"
    PRICE = "price"
    JOINTS = "joints"


@frozen(kw_only=True)
class RequirementLine:
    """One derived line: what is asked, from which rule and limit rows, with the facts it was derived from."""

    id: RequirementId
    severity: Severity
    rule_id: str
    facts: tuple[Quantity | Fact, ...]
    limit_ids: tuple[LimitId, ...]
    source: str


@frozen(kw_only=True)
class Window:
    """A closed interval of SI values; None leaves a side open."""

    minimum: float | None
    maximum: float | None

    def holds(self, value: float, *, tolerance: float = 1e-9) -> bool:
        """Say whether ``value`` lies inside, ends included."""
        low = self.minimum is None or value >= self.minimum - tolerance
        return low and (self.maximum is None or value <= self.maximum + tolerance)


@frozen(kw_only=True)
class Requirement:
    """Everything that the part, joint and set rules need to know about a position. SI units in the names.

    ``chain`` lists the slots in order from the dispenser; adaptors may come between. ``listing_class`` is None for DEF.
    ``hose_length``: whip and curb hose together stay within its maximum; hoses and rigid parts together come to its
    minimum, the length that the furthest filler asks for.
    """

    site: Site
    position: Position
    liquid: Liquid
    listing_class: ListingClass | None
    scheme: ListingScheme
    material_column: MaterialColumn
    nozzle_services: frozenset[NozzleService]
    spout: Window
    path: FlowPath
    outlet: Port
    chain: tuple[Slot, ...]
    breakaway_at_nozzle: bool
    separation: Window
    swivel_planes: int | None
    hose_construction: HoseConstruction | None
    low_permeation: bool
    permeation_max_kg_m2_s: float | None
    automatic: bool
    hold_open: bool
    attitude_device: bool
    no_pressure_device: bool
    enhanced_conventional: bool
    def_zone: bool
    bonding_severity: Severity
    temperature_low_c: float
    temperature_high_c: float
    pressure_pa: float
    supply_pressure_pa: float
    supply_flow_m3_s: float
    wanted_flow_m3_s: float
    hose_length: Window
    whip_length_min_m: float | None
    drive_off_angle_rad: float
    outlet_pull_strength_n: float
    lines: tuple[RequirementLine, ...]
    findings: tuple[Finding, ...]
    limit_statuses: tuple[tuple[LimitId, LimitStatus], ...] = ()  # how well each limit of the lines is founded
    urea_percent: tuple[Bound, Bound] | None = None  # least and most urea by mass; None for fuels

    @property
    def footing(self) -> dict[LimitStatus, int]:
        """How many limits of this position have each status, the best founded first."""
        counts = Counter(status for _, status in self.limit_statuses)
        return {status: counts[status] for status in LimitStatus}


class RefusalStatus(StrEnum):
    """Why no requirement can be derived."""

    NO_LISTING_CLASS = "no_listing_class"
    CONTRADICTION = "contradiction"  # e.g. diesel with vapour recovery
    NOT_ALLOWED = "not_allowed"  # the jurisdiction does not allow what is asked
    NO_SET = "no_set"  # what was answered of the outlet contradicts itself: no part can be joined to it
    OUT_OF_RANGE = "out_of_range"  # geometry or temperature outside what can be computed
    NOT_DECIDED = "not_decided"  # no set was found, and it would take too much to say that there is none


class WayOut(StrEnum):
    """What a person can do about a refusal; worded by ``explain``."""

    USE_B20_OR_LESS = "use_b20_or_less"
    USE_B100 = "use_b100"
    USE_E85_OR_LESS = "use_e85_or_less"
    ASK_AUTHORITY_AND_MAKER = "ask_authority_and_maker"
    DROP_VAPOUR_RECOVERY = "drop_vapour_recovery"
    KEEP_VAPOUR_RECOVERY = "keep_vapour_recovery"
    DROP_HOLD_OPEN = "drop_hold_open"
    HEAT_OR_HOUSE_DEF = "heat_or_house_def"
    CORRECT_GEOMETRY = "correct_geometry"
    CORRECT_CLIMATE = "correct_climate"
    CORRECT_OUTLET = "correct_outlet"
    ASK_FOR_A_PART = "ask_for_a_part"
    LOOSEN_A_LIMIT = "loosen_a_limit"


@frozen(kw_only=True)
class Refusal:
    """No requirement, or one that a set may meet or not: the reasons, in findings, and the ways out."""

    status: RefusalStatus
    findings: tuple[Finding, ...]
    ways_out: tuple[WayOut, ...]
    lines: tuple[RequirementLine, ...]
