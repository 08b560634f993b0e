"""What a position asks, derived a second time from the published scopes and the trade's conventions.

Nothing here reads the program's rules, search or planning: only the shared vocabulary of ``spoutline.model``.
"""

from __future__ import annotations

from dataclasses import dataclass

from oracle.hanging import taut_length_m
from oracle.numbers import NUMBERS, Numbers, SpoutBand
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import HoseConstruction, NozzleService
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Slot
from spoutline.model.survey import Duty, Position, Retrieval, Service, Site, VapourStatus

NO_CLASS = "no class"
DEF_FREEZING_C = -11.5  # ISO 22241-3 (memory)
DATA_LOW_C, DATA_HIGH_C = -30.0, 45.0  # range of the viscosity anchors
BIODIESEL_POUR_C = -5.0  # least pour point of B100, AFDC, verified; colder it is no liquid to compute with


def listing_class_of(family: LiquidFamily, blend_percent: float) -> str | None:
    """Return the class of UL 2586, 2586A, 2586B scopes; ``NO_CLASS`` in a gap; None for DEF.

    Verified scopes: up to 10 % E10; up to 25 % E25; up to 85 % E85; B0-B5; B6-B20; B99.9/B100; nothing between.
    """
    if family is LiquidFamily.DEF:
        return None
    steps = ((10, "E10"), (25, "E25"), (85, "E85")) if family is LiquidFamily.GASOLINE else ((5, "B5"), (20, "B20"))
    for greatest, name in steps:
        if blend_percent <= greatest:
            return name
    if family is not LiquidFamily.GASOLINE and blend_percent >= 99.9:
        return "B100"
    return NO_CLASS


def refusals_owed(position: Position) -> frozenset[str]:
    """Return the statuses that the program may give instead of a plan; empty where a plan is owed."""
    owed = set()
    if listing_class_of(position.liquid.family, position.liquid.blend_percent) == NO_CLASS:
        owed.add("no_listing_class")
    if position.liquid.family is not LiquidFamily.GASOLINE and position.vapour_wanted is not VapourStatus.NONE:
        owed.add("contradiction")
    return frozenset(owed)


@dataclass(frozen=True, slots=True, kw_only=True)
class Need:
    """One position's requirement in the inspector's words."""

    site: Site
    position: Position
    numbers: Numbers
    listing_class: str | None
    path: FlowPath
    chains: tuple[tuple[Slot, ...], ...]  # more than one where the boundary is a matter of judgement
    at_nozzle: bool
    spouts: tuple[tuple[NozzleService, SpoutBand], ...]
    automatic: bool | None  # None: either will do
    hold_open: bool
    device: bool
    enhanced: bool
    construction: HoseConstruction | None
    planes: int
    length_max_m: float | None
    reach_m: float
    cold_c: float
    hot_c: float
    supply_pressure_pa: float
    supply_flow_m3_s: float
    wanted_flow_m3_s: float
    road_limit_m3_s: float | None

    @property
    def is_def(self) -> bool:
        """Whether the liquid is urea solution."""
        return self.position.liquid.family is LiquidFamily.DEF

    @property
    def column(self) -> str:
        """Column of the material table."""
        return self.listing_class or "DEF"


def need_of(position: Position, site: Site) -> Need:
    """Derive the need; only for a position that ``refusals_owed`` leaves without refusal."""
    numbers = NUMBERS[site.jurisdiction]
    family, duty = position.liquid.family, position.duty
    reach_m = _reach_m(position, numbers)
    low = max(site.climate.low_c, _data_low_c(position))
    flow_key = "def" if family is LiquidFamily.DEF else duty.value
    supply = position.supply
    chains, at_nozzle = _chains(position, numbers, reach_m)
    hold_open = position.hold_open_wanted and _hold_open_allowed(position, site, numbers)
    road = _road_gasoline(position)
    limit = numbers.gasoline_road_flow_m3_s if road else None
    wanted = _flow(supply.wanted_flow_l_min, dict(numbers.wanted_flow_l_min)[flow_key] / 60e3)
    return Need(
        site=site,
        position=position,
        numbers=numbers,
        listing_class=listing_class_of(family, position.liquid.blend_percent),
        path=FlowPath(position.vapour_wanted.value) if position.vapour_wanted.value != "none" else FlowPath.SINGLE,
        chains=chains,
        at_nozzle=at_nozzle,
        spouts=_spouts(family, duty, numbers),
        automatic=None if _manual_case(position, site) else True,
        hold_open=hold_open,
        device=hold_open or position.prepay or site.service is Service.UNATTENDED,
        enhanced=numbers.enhanced_conventional
        and family is LiquidFamily.GASOLINE
        and position.vapour_wanted is VapourStatus.NONE,
        construction=_construction(position, numbers),
        planes=numbers.planes_car if duty is Duty.CAR else numbers.planes_other,
        length_max_m=_length_max_m(position, site, numbers),
        reach_m=reach_m,
        cold_c=min(low, DATA_HIGH_C),
        hot_c=min(max(site.climate.high_c, low), DATA_HIGH_C),
        supply_pressure_pa=numbers.supply_pressure_pa if supply.pressure_kpa is None else supply.pressure_kpa * 1e3,
        supply_flow_m3_s=_flow(supply.maximum_flow_l_min, dict(numbers.supply_flow_m3_s)[flow_key]),
        wanted_flow_m3_s=wanted if limit is None else min(wanted, limit),
        road_limit_m3_s=limit,
    )


def _data_low_c(position: Position) -> float:
    """Lowest temperature at which the liquid is computed; the climate may be colder."""
    if position.liquid.family is LiquidFamily.DEF:
        return DEF_FREEZING_C
    pure_biodiesel = listing_class_of(position.liquid.family, position.liquid.blend_percent) == "B100"
    return BIODIESEL_POUR_C if pure_biodiesel else DATA_LOW_C


def _road_gasoline(position: Position) -> bool:
    """Gasoline into road vehicles; pumps only for heavy vehicles, boats or aircraft are exempt (61 FR 33033, verified).

    A reel may serve any vehicle, so it is not exempt.
    """
    return position.liquid.family is LiquidFamily.GASOLINE and position.duty in (Duty.CAR, Duty.REEL)


def _flow(surveyed_l_min: float | None, usual_m3_s: float) -> float:
    return usual_m3_s if surveyed_l_min is None else surveyed_l_min / 60e3


def _reach_m(position: Position, numbers: Numbers) -> float:
    """Taut way to the farthest filler and its slack: 5 % of the straight distance or 0.15 m (engineering judgement)."""
    lengths = []
    for filler in position.fillers:
        taut = taut_length_m(filler.distance_m, filler.height_m - position.outlet.height_m, filler.plan_legs_m, 0.0)
        lengths.append(taut + max(numbers.slack_fraction * taut, numbers.slack_least_m))
    return max(lengths)


def _chains(position: Position, numbers: Numbers, reach_m: float) -> tuple[tuple[tuple[Slot, ...], ...], bool]:
    """Order of the slots: above the curb hose as a rule, at the nozzle on a reel, retractor or long marine hose.

    With a retriever the breakaway lies between its clamp and the nozzle: Okla. 165:26-2-91(d), verified.
    """
    coaxial = position.vapour_wanted is not VapourStatus.NONE
    above = (Slot.WHIP_HOSE, Slot.BREAKAWAY, Slot.CURB_HOSE, *(() if coaxial else (Slot.SWIVEL,)), Slot.NOZZLE)
    below = (Slot.CURB_HOSE, Slot.BREAKAWAY if coaxial else Slot.SWIVEL_BREAKAWAY, Slot.NOZZLE)
    if position.retrieval is not Retrieval.NONE or position.duty is Duty.REEL:
        return (below,), True
    if position.duty is Duty.MARINE and abs(reach_m - numbers.marine_long_m) < 0.8:
        return (above, below), False
    if position.duty is Duty.MARINE and reach_m > numbers.marine_long_m:
        return (below,), True
    return (above,), False


def _spouts(family: LiquidFamily, duty: Duty, numbers: Numbers) -> tuple[tuple[NozzleService, SpoutBand], ...]:
    if family is LiquidFamily.GASOLINE:
        return ((NozzleService.GASOLINE, numbers.gasoline_spout),)
    if family is LiquidFamily.DEF:
        return ((NozzleService.DEF, numbers.def_spout),)
    car = (NozzleService.DIESEL_CAR, numbers.diesel_car_spout)
    truck = (NozzleService.DIESEL_TRUCK, numbers.diesel_truck_spout)
    if duty is Duty.CAR:
        return (car,)
    return (truck,) if duty is Duty.TRUCK else (car, truck)


def _manual_case(position: Position, site: Site) -> bool:
    """Manual nozzles: an attendant on a reel with the diesel family (common practice, no source)."""
    liquid_ok = position.liquid.family in (LiquidFamily.FUEL_OIL, LiquidFamily.DIESEL, LiquidFamily.KEROSENE)
    return site.service is Service.ATTENDED and position.duty is Duty.REEL and liquid_ok


def _hold_open_allowed(position: Position, site: Site, numbers: Numbers) -> bool:
    if position.duty is Duty.MARINE:
        return numbers.hold_open_marine
    if position.overhead and not numbers.hold_open_overhead and not numbers.hold_open_overhead_device:
        return False
    return site.service is not Service.UNATTENDED or numbers.hold_open_unattended


def _construction(position: Position, numbers: Numbers) -> HoseConstruction | None:
    """Hardwall for fuel in the United States, on reels too; softwall reels for DEF and in Europe (common practice)."""
    hardwall = numbers.fuel_hose_is_hardwall and position.liquid.family is not LiquidFamily.DEF
    if position.retrieval is Retrieval.REEL or position.duty is Duty.REEL:
        return HoseConstruction.HARDWALL if hardwall else HoseConstruction.SOFTWALL
    return HoseConstruction.HARDWALL if hardwall or position.retrieval is Retrieval.RETRACTOR else None


def _length_max_m(position: Position, site: Site, numbers: Numbers) -> float | None:
    if position.duty is Duty.MARINE:
        return numbers.hose_length_max_marine_m
    return numbers.hose_length_max_fenced_m if site.fenced else numbers.hose_length_max_m
