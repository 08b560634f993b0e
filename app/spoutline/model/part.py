"""A catalogue item: what every part has, and what its kind adds."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.port import FlowPath, Port


class PartKind(StrEnum):
    """Kinds of part in the catalogue."""

    NOZZLE = "nozzle"
    SWIVEL = "swivel"
    SWIVEL_BREAKAWAY = "swivel_breakaway"
    CURB_HOSE = "curb_hose"
    WHIP_HOSE = "whip_hose"
    BREAKAWAY = "breakaway"
    ADAPTOR = "adaptor"
    SPLITTER = "splitter"
    CAP = "cap"
    HOSE_CLAMP = "hose_clamp"
    SEALANT = "sealant"
    LABEL = "label"


class PartStatus(StrEnum):
    """Where a part stands in its maker's range."""

    ACTIVE = "active"
    SUPERSEDED = "superseded"
    DISCONTINUED = "discontinued"


class NozzleOperation(StrEnum):
    """Whether the nozzle closes by itself at a full tank."""

    AUTOMATIC = "automatic"
    MANUAL = "manual"


class NozzleService(StrEnum):
    """The filler a nozzle is made for; decides its spout."""

    GASOLINE = "gasoline"
    DIESEL_CAR = "diesel_car"
    DIESEL_TRUCK = "diesel_truck"
    DEF = "def"


class HoseConstruction(StrEnum):
    """Hardwall keeps its round bore on a bend (helical wire); softwall is textile-braided and lies flat on a reel."""

    HARDWALL = "hardwall"
    SOFTWALL = "softwall"


class Placement(StrEnum):
    """Where in the chain a breakaway may sit, by its marking."""

    DISPENSER_END = "dispenser_end"
    NOZZLE_END = "nozzle_end"


@dataclass(frozen=True, slots=True, kw_only=True)
class NozzleData:
    """What a nozzle adds. Flows in m3/s, pressures in Pa, lengths in m."""

    operation: NozzleOperation
    service: NozzleService
    liquids: frozenset[LiquidFamily]
    spout_outside_diameter_m: float
    spout_straight_length_m: float
    spring_distance_m: float | None
    hold_open: bool
    no_pressure_device: bool
    attitude_device: bool
    bellows: bool
    misfill_interlock: bool
    enhanced_conventional: bool
    def_zone_evaluated: bool
    minimum_flow_m3_s: float | None
    maximum_flow_m3_s: float
    opening_pressure_pa: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class HoseData:
    """What a hose adds. ``inner_tube_*`` describe the second tube of a coaxial hose and are None on one path.

    For balance hose liquid runs inside and vapour in the outer ring; for vacuum assist liquid runs in the ring round
    the inner vapour tube. ``permeation_kg_m2_s`` is on the inner area at 38 degrees Celsius; None where untested.
    """

    construction: HoseConstruction
    bore_m: float
    length_m: float
    outside_diameter_m: float
    minimum_bend_radius_m: float
    mass_kg_m: float
    resistance_ohm_m: float | None
    permeation_kg_m2_s: float | None
    low_permeation: bool
    built_in_swivel: bool
    inner_tube_bore_m: float | None
    inner_tube_outside_diameter_m: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class BreakawayData:
    """What a breakaway or swivel-breakaway adds. ``seal_diameter_m`` is None for a pressure-balanced coupling."""

    separation_minimum_n: float
    separation_maximum_n: float
    reconnectable: bool
    closes_vapour: bool
    omnidirectional: bool
    seal_diameter_m: float | None
    placements: frozenset[Placement]


@dataclass(frozen=True, slots=True, kw_only=True)
class SwivelData:
    """What a swivel or swivel-breakaway adds: planes of rotation."""

    planes: int


@dataclass(frozen=True, slots=True, kw_only=True)
class AdaptorData:
    """What an adaptor or splitter adds."""

    closes_vapour: bool
    needs_vapour_return: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class AccessoryData:
    """What a cap, clamp, sealant or label adds: what it fits."""

    fits_diameter_minimum_m: float | None
    fits_diameter_maximum_m: float | None
    label_classes: frozenset[ListingClass]
    label_def: bool
    label_family: LiquidFamily | None = None  # None: gasoline or diesel, as the class says


@dataclass(frozen=True, slots=True, kw_only=True)
class Price:
    """A list price in minor units (cents) of one currency."""

    currency: str
    minor: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One catalogue item.

    ``inlet`` faces the dispenser and ``outlet`` the vehicle; a nozzle has no outlet, an accessory may have neither.
    ``flow_coefficient_kv`` is m3/h at 1 bar for water; None for hoses (computed from bore and length) and accessories.
    ``resistance_ohm`` is end to end of the whole part, None where the maker states nothing. ``length_m`` is the
    made-up length of a rigid part, or the hose's own length. ``pull_strength_n`` is what the part and its ends bear.
    """

    number: str
    maker: str
    kind: PartKind
    name: str
    status: PartStatus
    superseded_by: str | None
    inlet: Port | None
    outlet: Port | None
    listings: frozenset[ListingClass]
    schemes: frozenset[ListingScheme]
    wetted_materials: tuple[Material, ...]
    temperature_minimum_c: float
    temperature_maximum_c: float
    maximum_pressure_pa: float
    flow_coefficient_kv: float | None
    mass_kg: float
    resistance_ohm: float | None
    length_m: float
    pull_strength_n: float | None
    prices: tuple[Price, ...]
    lead_time_days: int
    pack_quantity: int
    nozzle: NozzleData | None = None
    hose: HoseData | None = None
    breakaway: BreakawayData | None = None
    swivel: SwivelData | None = None
    adaptor: AdaptorData | None = None
    accessory: AccessoryData | None = None

    @property
    def path(self) -> FlowPath | None:
        """The path at the vehicle end, or at the dispenser end of a nozzle; None for an accessory without ports."""
        port = self.outlet or self.inlet
        return port.path if port else None

    def price_minor(self, currency: str) -> int | None:
        """Return the list price in minor units of ``currency``; None where the list has none."""
        return next((price.minor for price in self.prices if price.currency == currency), None)
