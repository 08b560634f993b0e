"""A catalogue item: what every part has, and what its kind adds. Each figure is declared here, and only here.

The annotation of a field declares the figure: bounds, table column and unit, label. ``model.part_figures`` walks the
declarations; checks, tables, store, forms and words are made from them.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from spoutline.model.figure import Figure, TableUnit
from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath, Port
from spoutline.model.quantity import Dimension


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


HOSES = (PartKind.CURB_HOSE, PartKind.WHIP_HOSE)
BREAKAWAYS = (PartKind.BREAKAWAY, PartKind.SWIVEL_BREAKAWAY)
HANGING_KINDS = (
    PartKind.NOZZLE,
    PartKind.SWIVEL,
    PartKind.SWIVEL_BREAKAWAY,
    PartKind.CURB_HOSE,
    PartKind.WHIP_HOSE,
    PartKind.BREAKAWAY,
    PartKind.ADAPTOR,
    PartKind.SPLITTER,
)
ACCESSORIES = (PartKind.CAP, PartKind.HOSE_CLAMP, PartKind.SEALANT, PartKind.LABEL)
_RIGID = tuple(kind for kind in HANGING_KINDS if kind not in HOSES)
_WITH_OUTLET = tuple(kind for kind in HANGING_KINDS if kind is not PartKind.NOZZLE)
_MARKED = tuple(kind for kind in HANGING_KINDS if kind not in (PartKind.ADAPTOR, PartKind.SPLITTER))
_MM, _KPA = TableUnit.MILLIMETRE, TableUnit.KILOPASCAL
_L_MIN, _G_M2_DAY = TableUnit.LITRE_PER_MINUTE, TableUnit.GRAM_PER_SQUARE_METRE_DAY


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

    operation: Annotated[
        NozzleOperation, Figure(column="operation", holds="whether it closes by itself at a full tank")
    ]
    service: Annotated[NozzleService, Figure(column="service", holds="the filler it is made for", label="made_for")]
    liquids: Annotated[
        frozenset[LiquidFamily],
        Figure(column="liquids", holds="liquid families it may deliver", at_least_one=True),
    ]
    spout_outside_diameter_m: Annotated[
        float,
        Figure(
            column="spout_od_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            least=5,
            most=60,
            holds="outside diameter of the spout",
            label="spout_outside_diameter",
        ),
    ]
    spout_straight_length_m: Annotated[
        float,
        Figure(
            column="spout_straight_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=400,
            holds="straight length at the spout's end",
            label="straight_end_of_the_spout",
        ),
    ]
    spring_distance_m: Annotated[
        float | None,
        Figure(
            column="spring_distance_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=400,
            holds="end of the spout spring from the tip",
            label="spring_ends_before_the_tip",
            where_stated=True,
        ),
    ]
    hold_open: Annotated[bool, Figure(column="hold_open", holds="hold-open latch", label="hold_open_latch")]
    no_pressure_device: Annotated[bool, Figure(column="no_pressure_device", holds="closes by itself without pressure")]
    attitude_device: Annotated[bool, Figure(column="attitude_device", holds="closes when held upwards")]
    bellows: Annotated[bool, Figure(column="bellows", holds="bellows over the spout")]
    misfill_interlock: Annotated[
        bool, Figure(column="misfill_interlock", holds="opens only inside the magnetic filler insert")
    ]
    enhanced_conventional: Annotated[
        bool,
        Figure(column="enhanced_conventional", holds="low-spillage single-path nozzle with boot interlock"),
    ]
    def_zone_evaluated: Annotated[
        bool,
        Figure(
            column="def_zone_evaluated",
            holds="evaluated for use in a flammable zone",
            label="evaluated_for_the_flammable_zone",
        ),
    ]
    minimum_flow_m3_s: Annotated[
        float | None,
        Figure(
            column="min_flow_l_min",
            unit=_L_MIN,
            dimension=Dimension.FLOW,
            above=0,
            most=400,
            up_to="maximum_flow_m3_s",
            holds="least flow at which it shuts off",
            label="least_flow_for_shut_off",
        ),
    ]
    maximum_flow_m3_s: Annotated[
        float,
        Figure(
            column="max_flow_l_min",
            unit=_L_MIN,
            dimension=Dimension.FLOW,
            above=0,
            most=400,
            holds="greatest flow",
            label="greatest_flow",
        ),
    ]
    opening_pressure_pa: Annotated[
        float | None,
        Figure(
            column="opening_pressure_kpa",
            unit=_KPA,
            dimension=Dimension.PRESSURE,
            above=0,
            most=400,
            holds="pressure at which it opens",
            label="opening_pressure",
            where_stated=True,
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class HoseData:
    """What a hose adds. ``inner_tube_*`` describe the second tube of a coaxial hose and are None on one path.

    For balance hose liquid runs inside and vapour in the outer ring; for vacuum assist liquid runs in the ring round
    the inner vapour tube. ``permeation_kg_m2_s`` is on the inner area at 38 degrees Celsius; None where untested.
    """

    construction: Annotated[
        HoseConstruction,
        Figure(column="construction", holds="hardwall keeps its round bore; softwall lies flat on a reel"),
    ]
    bore_m: Annotated[
        float,
        Figure(
            column="bore_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=5,
            most=80,
            below="outside_diameter_m",
            holds="bore of the hose, of the outer tube if coaxial",
            label="bore",
        ),
    ]
    length_m: Annotated[
        float,
        Figure(column="length_m", dimension=Dimension.LENGTH, above=0, most=40, holds="length", label="length"),
    ]
    outside_diameter_m: Annotated[
        float,
        Figure(
            column="outside_diameter_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=5,
            most=120,
            holds="outside diameter",
            label="outside_diameter",
        ),
    ]
    minimum_bend_radius_m: Annotated[
        float,
        Figure(
            column="min_bend_radius_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=1000,
            holds="smallest bend radius",
            label="least_bend_radius",
        ),
    ]
    mass_kg_m: Annotated[
        float,
        Figure(
            column="mass_kg_m",
            dimension=Dimension.MASS_PER_LENGTH,
            above=0,
            most=5,
            holds="mass of the empty hose",
            label="mass_per_length",
        ),
    ]
    resistance_ohm_m: Annotated[
        float | None,
        Figure(
            column="resistance_ohm_m",
            dimension=Dimension.RESISTANCE_PER_LENGTH,
            least=0,
            most=1e8,
            holds="electrical resistance",
            label="resistance_per_length",
        ),
    ]
    permeation_kg_m2_s: Annotated[
        float | None,
        Figure(
            column="permeation_g_m2_day",
            unit=_G_M2_DAY,
            dimension=Dimension.PERMEATION,
            least=0,
            most=1000,
            holds="permeation at 38 C",
            label="permeation",
            at_c=38.0,
        ),
    ]
    low_permeation: Annotated[bool, Figure(column="low_permeation", holds="marked low-permeation")]
    inner_tube_bore_m: Annotated[
        float | None,
        Figure(
            column="inner_tube_bore_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=60,
            below="inner_tube_outside_diameter_m",
            holds="bore of the inner tube",
            note="coaxial only",
            label="inner_tube_bore",
            coaxial_only=True,
        ),
    ]
    inner_tube_outside_diameter_m: Annotated[
        float | None,
        Figure(
            column="inner_tube_od_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=60,
            below="bore_m",
            holds="outside diameter of the inner tube",
            label="inner_tube_outside_diameter",
            coaxial_only=True,
        ),
    ]
    built_in_swivel: Annotated[
        bool,
        Figure(
            column="built_in_swivel",
            holds="turns at its end without a separate swivel",
            label="swivel_built_in",
            coaxial_only=True,
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class BreakawayData:
    """What a breakaway or swivel-breakaway adds. ``seal_diameter_m`` is None for a pressure-balanced coupling."""

    separation_minimum_n: Annotated[
        float,
        Figure(
            column="separation_min_n",
            dimension=Dimension.FORCE,
            above=0,
            most=20_000,
            up_to="separation_maximum_n",
            holds="least pull that separates it",
            label="least_pull_that_parts_it",
            range_label="parts_at_a_pull",
        ),
    ]
    separation_maximum_n: Annotated[
        float,
        Figure(
            column="separation_max_n",
            dimension=Dimension.FORCE,
            above=0,
            most=20_000,
            holds="greatest pull that it needs to separate",
            label="greatest_pull_that_parts_it",
        ),
    ]
    reconnectable: Annotated[
        bool,
        Figure(
            column="reconnectable",
            holds="can be put together again after a separation",
            label="can_be_reconnected",
        ),
    ]
    closes_vapour: Annotated[
        bool,
        Figure(
            column="closes_vapour",
            holds="closes the vapor path when it separates",
            label="closes_the_vapour_path",
        ),
    ]
    omnidirectional: Annotated[
        bool,
        Figure(column="omnidirectional", holds="separates at any angle of pull", label="parts_at_any_angle"),
    ]
    placements: Annotated[
        frozenset[Placement],
        Figure(
            column="placements", holds="where it may sit: dispenser_end, nozzle_end", label="place", at_least_one=True
        ),
    ]
    seal_diameter_m: Annotated[
        float | None,
        Figure(
            column="seal_diameter_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=100,
            holds="diameter that the pressure acts on",
            note="empty for a balanced coupling",
            label="seal_diameter",
            where_stated=True,
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class SwivelData:
    """What a swivel or swivel-breakaway adds: planes of rotation."""

    planes: Annotated[
        int,
        Figure(
            column="planes",
            dimension=Dimension.COUNT,
            least=1,
            most=3,
            holds="planes in which it turns",
            label="planes_of_rotation",
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class AdaptorData:
    """What an adaptor or splitter adds."""

    closes_vapour: Annotated[
        bool,
        Figure(
            kinds=(PartKind.ADAPTOR,),
            column="closes_vapour",
            holds="closes the vapor port of a coaxial end",
            label="closes_the_vapour_path",
        ),
        Figure(
            kinds=(PartKind.SPLITTER,),
            holds="closes the vapor port of a coaxial end",
            label="closes_the_vapour_path",
        ),
    ]
    needs_vapour_return: Annotated[
        bool, Figure(holds="joins a separate vapor return pipe", label="needs_a_vapour_return")
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class AccessoryData:
    """What a cap, clamp, sealant or label adds: what it fits."""

    fits_diameter_minimum_m: Annotated[
        float | None,
        Figure(
            column="fits_min_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=200,
            up_to="fits_diameter_maximum_m",
            holds="smallest diameter that it fits",
            shown=False,
        ),
    ]
    fits_diameter_maximum_m: Annotated[
        float | None,
        Figure(
            column="fits_max_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=200,
            holds="greatest diameter that it fits",
            shown=False,
        ),
    ]
    label_classes: Annotated[
        frozenset[ListingClass],
        Figure(column="label_classes", holds="classes that a label names", shown=False),
    ]
    label_def: Annotated[bool, Figure(column="label_def", holds="label for DEF", shown=False)]
    label_family: Annotated[
        LiquidFamily | None,
        Figure(
            column="label_family",
            holds="kerosene or fuel_oil where the label names it; empty for gasoline and diesel",
            shown=False,
        ),
    ] = None


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
    ``superseded_by`` is a number of the same maker where ``superseded_by_maker`` names no other.
    """

    number: str
    maker: str
    kind: PartKind
    name: str
    status: PartStatus
    superseded_by: str | None
    inlet: Annotated[
        Port | None,
        Figure(
            kinds=HANGING_KINDS,
            column="inlet",
            holds="port that faces the dispenser: thread standard, size, gender, path",
            stated=True,
            leads=True,
        ),
        Figure(
            kinds=ACCESSORIES,
            column="inlet",
            holds="port that a cap closes; empty for the other kinds",
            leads=True,
            where_stated=True,
        ),
    ]
    outlet: Annotated[
        Port | None,
        Figure(
            kinds=_WITH_OUTLET,
            column="outlet",
            holds="port that faces the vehicle: thread standard, size, gender, path",
            stated=True,
            leads=True,
        ),
    ]
    listings: Annotated[
        frozenset[ListingClass],
        Figure(
            kinds=HANGING_KINDS,
            column="listings",
            holds="listing classes that it carries",
            label="listing_classes",
            leads=True,
        ),
        Figure(
            kinds=ACCESSORIES,
            column="listings",
            holds="listing classes that a sealant or cap is made for",
            label="listing_classes",
            leads=True,
        ),
    ]
    schemes: Annotated[
        frozenset[ListingScheme],
        Figure(
            kinds=HANGING_KINDS,
            column="schemes",
            holds="whose standards its maker works to",
            label="listing_schemes",
            leads=True,
        ),
    ]
    wetted_materials: Annotated[
        tuple[Material, ...],
        Figure(kinds=HANGING_KINDS, column="materials", holds="wetted materials", at_least_one=True),
        Figure(kinds=ACCESSORIES, column="materials", holds="wetted materials"),
    ]
    temperature_minimum_c: Annotated[
        float,
        Figure(
            column="temp_min_c",
            dimension=Dimension.TEMPERATURE,
            least=-80,
            most=60,
            up_to="temperature_maximum_c",
            holds="lowest temperature",
            label="lowest_temperature",
            range_label="temperature",
        ),
    ]
    temperature_maximum_c: Annotated[
        float,
        Figure(
            column="temp_max_c",
            dimension=Dimension.TEMPERATURE,
            least=-20,
            most=200,
            holds="highest temperature",
            label="highest_temperature",
        ),
    ]
    maximum_pressure_pa: Annotated[
        float,
        Figure(
            kinds=HANGING_KINDS,
            column="max_pressure_kpa",
            unit=_KPA,
            dimension=Dimension.PRESSURE,
            above=0,
            most=5000,
            holds="greatest working pressure",
            note="0 where it holds none",
            label="greatest_pressure",
        ),
        Figure(
            kinds=ACCESSORIES,
            column="max_pressure_kpa",
            unit=_KPA,
            dimension=Dimension.PRESSURE,
            least=0,
            most=5000,
            holds="greatest working pressure",
            note="0 where it holds none",
            label="greatest_pressure",
        ),
    ]
    flow_coefficient_kv: Annotated[
        float | None,
        Figure(
            kinds=_RIGID,
            column="kv_m3_h",
            dimension=Dimension.FLOW_COEFFICIENT,
            above=0,
            most=200,
            holds="flow coefficient Kv",
            label="flow_coefficient",
        ),
    ]
    length_m: Annotated[
        float,
        Figure(
            kinds=_RIGID,
            column="made_up_length_mm",
            unit=_MM,
            dimension=Dimension.LENGTH,
            asked_as=Dimension.DIAMETER,
            above=0,
            most=600,
            holds="length that it adds to the chain when made up",
            label="length",
        ),
        Figure(
            kinds=HOSES,
            dimension=Dimension.LENGTH,
            above=0,
            most=40,
            holds="length of the hose",
            label="length",
            follows="hose.length_m",
        ),
    ]
    mass_kg: Annotated[
        float, Figure(column="mass_kg", dimension=Dimension.MASS, above=0, most=200, holds="mass", label="mass")
    ]
    resistance_ohm: Annotated[
        float | None,
        Figure(
            kinds=_RIGID,
            column="resistance_ohm",
            dimension=Dimension.RESISTANCE,
            least=0,
            most=1e9,
            holds="electrical resistance end to end",
            label="resistance",
        ),
        Figure(
            kinds=HOSES,
            dimension=Dimension.RESISTANCE,
            least=0,
            most=4e9,
            holds="electrical resistance end to end",
            label="resistance",
        ),
    ]
    pull_strength_n: Annotated[
        float | None,
        Figure(
            kinds=HANGING_KINDS,
            column="pull_strength_n",
            dimension=Dimension.FORCE,
            above=0,
            most=50_000,
            holds="pull that the part bears",
            label="pull_strength",
        ),
    ]
    serial_or_date_code_marked: Annotated[
        bool | None,
        Figure(
            kinds=_MARKED,
            column="serial_or_date_code_marked",
            holds="its maker marks a serial number or a date code on it",
        ),
    ] = None
    offered_for_def: Annotated[
        bool | None,
        Figure(kinds=_WITH_OUTLET, column="offered_for_def", holds="its maker offers it for DEF"),
    ] = None
    prices: tuple[Price, ...]
    lead_time_days: int
    pack_quantity: int
    nozzle: NozzleData | None = None
    hose: HoseData | None = None
    breakaway: BreakawayData | None = None
    swivel: SwivelData | None = None
    adaptor: AdaptorData | None = None
    accessory: AccessoryData | None = None
    superseded_by_maker: str | None = None

    @property
    def ref(self) -> PartRef:
        """Maker and number: what tells the part from every other."""
        return PartRef(self.number, self.maker)

    @property
    def successor(self) -> PartRef | None:
        """The part that took its place; None where none did."""
        return PartRef(self.superseded_by, self.superseded_by_maker or self.maker) if self.superseded_by else None

    @property
    def path(self) -> FlowPath | None:
        """The path at the vehicle end, or at the dispenser end of a nozzle; None for an accessory without ports."""
        port = self.outlet or self.inlet
        return port.path if port else None

    def price_minor(self, currency: str) -> int | None:
        """Return the list price in minor units of ``currency``; None where the list has none."""
        return next((price.minor for price in self.prices if price.currency == currency), None)
