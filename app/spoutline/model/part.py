"""A catalogue item: what every part has, and what its kind adds. Each figure is declared once, here or beside its kind.

The annotation of a field declares the figure: bounds, table column and unit, label. ``model.part_figures`` walks the
declarations; checks, tables, store, forms and words are made from them. The figures of one kind stand in a module of
their own: ``nozzle_data``, ``hose_data``, ``breakaway_data``, ``fitting_data``, ``accessory_data``.
"""

from __future__ import annotations

from typing import Annotated, Final

from spoutline.frozen import frozen
from spoutline.model.accessory_data import AccessoryData
from spoutline.model.breakaway_data import BreakawayData, Placement
from spoutline.model.figure import Figure, TableUnit
from spoutline.model.fitting_data import AdaptorData, SwivelData
from spoutline.model.hose_data import HoseConstruction, HoseData
from spoutline.model.liquid import ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.nozzle_data import NozzleData, NozzleOperation, NozzleService
from spoutline.model.part_kind import ACCESSORIES, BREAKAWAYS, HANGING_KINDS, HOSES, PartKind, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath, Port
from spoutline.model.quantity import Dimension

__all__ = [
    "ACCESSORIES",
    "BREAKAWAYS",
    "HANGING_KINDS",
    "HOSES",
    "MOST_IN_ARTICLE",
    "PLACE_OF_PART",
    "AccessoryData",
    "AdaptorData",
    "BreakawayData",
    "HoseConstruction",
    "HoseData",
    "NozzleData",
    "NozzleOperation",
    "NozzleService",
    "Part",
    "PartKind",
    "PartStatus",
    "Placement",
    "Price",
    "SwivelData",
]

PLACE_OF_PART: Final = " part "  # stands between the number of an article and the place of a part in it
MOST_IN_ARTICLE: Final = 8
_RIGID = tuple(kind for kind in HANGING_KINDS if kind not in HOSES)
_WITH_OUTLET = tuple(kind for kind in HANGING_KINDS if kind is not PartKind.NOZZLE)
_MARKED = tuple(kind for kind in HANGING_KINDS if kind not in (PartKind.ADAPTOR, PartKind.SPLITTER))
_MM = TableUnit.MILLIMETRE
_KPA = TableUnit.KILOPASCAL


@frozen(kw_only=True)
class Price:
    """A list price in minor units (cents) of one currency."""

    currency: str
    minor: int


@frozen(kw_only=True)
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
            tells=10,
            bare=True,
        ),
        Figure(
            kinds=ACCESSORIES,
            column="inlet",
            holds="port that a cap closes; empty for the other kinds",
            leads=True,
            tells=10,
            bare=True,
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
            tells=11,
            bare=True,
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
            tells=20,
            bare=True,
        ),
        Figure(
            kinds=ACCESSORIES,
            column="listings",
            holds="listing classes that a sealant or cap is made for",
            label="listing_classes",
            leads=True,
            tells=20,
            bare=True,
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
            tells=21,
            bare=True,
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
    tightening_torque_n_m: Annotated[
        float | None,
        Figure(
            kinds=_MARKED,
            column="tightening_torque_n_m",
            dimension=Dimension.TORQUE,
            above=0,
            most=500,
            holds="torque to which its joints are tightened",
            label="tightening_torque",
            where_stated=True,
        ),
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

    @property
    def article(self) -> PartRef | None:
        """The article sold made up that the part belongs to; None for a part sold by itself.

        The article has the number of its first part, which carries the price of them all.
        """
        port = next((one for one in (self.inlet, self.outlet) if one is not None and one.made_up_in), None)
        if port is None:
            return None
        below = port.made_up_in.removeprefix(f"{self.maker} ")
        return PartRef(below.rpartition(PLACE_OF_PART)[0] or below, self.maker)

    @property
    def comes_with(self) -> PartRef | None:
        """The article that the part comes in, so that nobody orders it; None for what is ordered by its own number."""
        return None if self.article == self.ref else self.article

    @property
    def is_included(self) -> bool:
        """Whether it comes in an article under another number, which carries the price of all."""
        return self.comes_with is not None

    def price_minor(self, currency: str) -> int | None:
        """Return the list price in minor units of ``currency``; None where the list has none."""
        return next((price.minor for price in self.prices if price.currency == currency), None)
