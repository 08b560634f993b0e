"""Law as data: one limit row with its source, and the jurisdiction that gathers rows."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import cached_property

from spoutline.frozen import frozen
from spoutline.model.liquid import ListingScheme
from spoutline.model.material import MaterialTable
from spoutline.model.quantity import Dimension


class LimitStatus(StrEnum):
    """How well a row's figure is founded; see DEVELOPERS.md."""

    VERIFIED = "verified"
    SECONDARY = "secondary"
    MEMORY = "memory"
    COMMON_PRACTICE = "common practice"
    JUDGEMENT = "engineering judgement"


class LimitId(StrEnum):
    """Every limit that a rule or check reads. A jurisdiction must hold each one (its value may be None)."""

    # listing
    LISTING_SCHEME = "listing.scheme"  # text: UL or EN
    LISTING_E10_MAX = "listing.e10_max"  # percent ethanol
    LISTING_E25_MAX = "listing.e25_max"
    LISTING_E85_MAX = "listing.e85_max"
    LISTING_B5_MAX = "listing.b5_max"  # percent biodiesel
    LISTING_B20_MAX = "listing.b20_max"
    LISTING_B100_MIN = "listing.b100_min"
    LISTING_DEF_ZONE = "listing.def_zone"  # bool: nozzle evaluated for the flammable zone is asked there
    HOSE_OXYGENATE_MAX = "hose.oxygenate_max"  # percent, or None
    # spout and filler
    SPOUT_GASOLINE_OD_MIN = "spout.gasoline_od_min"
    SPOUT_GASOLINE_OD_MAX = "spout.gasoline_od_max"
    SPOUT_GASOLINE_STRAIGHT_MIN = "spout.gasoline_straight_min"
    SPOUT_GASOLINE_SPRING_DISTANCE = "spout.gasoline_spring_distance"
    SPOUT_DIESEL_CAR_OD_MIN = "spout.diesel_car_od_min"
    SPOUT_DIESEL_CAR_OD_MAX = "spout.diesel_car_od_max"
    SPOUT_DIESEL_TRUCK_OD_MIN = "spout.diesel_truck_od_min"
    SPOUT_DIESEL_TRUCK_OD_MAX = "spout.diesel_truck_od_max"
    SPOUT_DEF_OD_MIN = "spout.def_od_min"
    SPOUT_DEF_OD_MAX = "spout.def_od_max"
    FILLER_GASOLINE_OPENING = "filler.gasoline_opening"  # largest spout that a car gasoline filler admits
    FILLER_DIESEL_CAR_OPENING = "filler.diesel_car_opening"
    FILLER_DEF_OPENING = "filler.def_opening"
    # flow and pressure
    FLOW_GASOLINE_ROAD_MAX = "flow.gasoline_road_max"
    FLOW_WANTED_CAR = "flow.wanted_car"
    FLOW_WANTED_TRUCK = "flow.wanted_truck"
    FLOW_WANTED_MARINE = "flow.wanted_marine"
    FLOW_WANTED_REEL = "flow.wanted_reel"
    FLOW_WANTED_DEF = "flow.wanted_def"
    FLOW_SUPPLY_CAR = "flow.supply_car"  # greatest flow of the dispenser where the survey is silent
    FLOW_SUPPLY_TRUCK = "flow.supply_truck"
    FLOW_SUPPLY_MARINE = "flow.supply_marine"
    FLOW_SUPPLY_REEL = "flow.supply_reel"
    FLOW_SUPPLY_DEF = "flow.supply_def"
    FLOW_VELOCITY_MAX = "flow.velocity_max"
    SUPPLY_PRESSURE = "supply.pressure"  # at the outlet where the survey is silent
    PART_PRESSURE_MIN = "part.pressure_min"  # every wetted part must stand this
    NOZZLE_TEMPERATURE_MIN = "nozzle.temperature_min"
    NOZZLE_TEMPERATURE_MAX = "nozzle.temperature_max"
    DEF_FREEZING = "def.freezing"
    DEF_UREA_MIN = "def.urea_min"  # percent by mass
    DEF_UREA_MAX = "def.urea_max"
    # hose
    HOSE_LENGTH_MAX = "hose.length_max"
    HOSE_LENGTH_MAX_FENCED = "hose.length_max_fenced"
    HOSE_LENGTH_MAX_MARINE = "hose.length_max_marine"
    HOSE_MARINE_PROTECT_ABOVE = "hose.marine_protect_above"
    HOSE_MARINE_LONG = "hose.marine_long"  # above this a marine hose carries its breakaway at the nozzle
    HOSE_CONSTRUCTION_PLAIN = "hose.construction_plain"  # text: hardwall, softwall or any
    HOSE_CONSTRUCTION_RETRACTOR = "hose.construction_retractor"
    HOSE_CONSTRUCTION_REEL = "hose.construction_reel"
    HOSE_CONSTRUCTION_DEF = "hose.construction_def"  # DEF that hangs free; with a retractor as for fuel
    HOSE_CONSTRUCTION_DEF_REEL = "hose.construction_def_reel"
    HOSE_LOW_PERMEATION = "hose.low_permeation_required"  # bool, gasoline only
    HOSE_PERMEATION_MAX = "hose.permeation_max"
    # breakaway and pull
    BREAKAWAY_REQUIRED = "breakaway.required"  # bool, on every fuel hose
    BREAKAWAY_SEPARATION_MIN = "breakaway.separation_min"
    BREAKAWAY_SEPARATION_MAX = "breakaway.separation_max"
    BREAKAWAY_SERVICE_MARGIN = "breakaway.service_margin"
    BREAKAWAY_STRENGTH_MARGIN = "breakaway.strength_margin"
    BREAKAWAY_ANGLE_ADVICE = "breakaway.angle_advice"
    BREAKAWAY_ANGLE_MAX = "breakaway.angle_max"
    PULL_USER_TUG = "pull.user_tug"
    OUTLET_PULL_STRENGTH = "outlet.pull_strength"  # assumed where the survey is silent; a question to the user
    # bond
    BOND_TOTAL_MAX = "bond.total_max"
    BOND_HOSE_MAX = "bond.hose_max"  # ohm per metre
    BOND_DEVICE_MAX = "bond.device_max"
    BOND_JOINT = "bond.joint"  # allowance per joint
    BOND_DEF_REQUIRED = "bond.def_required"  # bool
    # nozzle
    NOZZLE_AUTOMATIC_REQUIRED = "nozzle.automatic_required"  # bool
    NOZZLE_MANUAL_CASES = "nozzle.manual_cases"  # text list: service/duty/family triples
    HOLD_OPEN_SELF = "hold_open.self"  # bool: allowed where customers fuel
    HOLD_OPEN_ATTENDED = "hold_open.attended"
    HOLD_OPEN_UNATTENDED = "hold_open.unattended"
    HOLD_OPEN_MARINE = "hold_open.marine"
    HOLD_OPEN_OVERHEAD = "hold_open.overhead"
    HOLD_OPEN_OVERHEAD_DEVICE = "hold_open.overhead_device"  # with one that closes the nozzle out of the filler
    NO_PRESSURE_DEVICE_WITH_HOLD_OPEN = "no_pressure_device.with_hold_open"  # bool
    NO_PRESSURE_DEVICE_WITH_PREPAY = "no_pressure_device.with_prepay"
    ENHANCED_CONVENTIONAL = "nozzle.enhanced_conventional_required"  # bool, single-path gasoline
    # vapour
    VAPOUR_RECOVERY = "vapour.recovery"  # text: required, optional, prohibited
    VAPOUR_REMOVAL = "vapour.removal"  # text: allowed, not_allowed, ask
    # swivel
    SWIVEL_PLANES_CAR = "swivel.planes_car"
    SWIVEL_PLANES_TRUCK = "swivel.planes_truck"
    SWIVEL_PLANES_MARINE = "swivel.planes_marine"
    SWIVEL_PLANES_REEL = "swivel.planes_reel"
    # reach
    REACH_SLACK_FRACTION = "reach.slack_fraction"
    REACH_SLACK_MIN = "reach.slack_min"
    GROUND_CLEARANCE = "reach.ground_clearance"
    BEND_ANGLE_MARGIN = "reach.whip_margin"  # ratio on the whip length from its bend
    # price
    PRICE_USUAL_FACTOR = "price.usual_factor"  # ratio to the middle of the kind, beyond which a price is asked about


LimitValue = float | str | bool | tuple[str, ...] | None


@frozen(kw_only=True)
class Limit:
    """One row of a rule table.

    ``value`` is SI for numbers; ``printed`` and ``printed_unit`` keep what the source prints. ``dimension`` is None
    for text, lists and yes/no.
    """

    id: LimitId
    title: str
    value: LimitValue
    dimension: Dimension | None
    printed: str
    printed_unit: str
    source: str
    clause: str
    edition: str
    status: LimitStatus
    note: str = ""


@dataclass(frozen=True)
class Jurisdiction:
    """A rule profile: which limits apply, each with its source. Every ``LimitId`` is present."""

    id: str
    title: str
    edition: str
    built_in: bool
    limits: tuple[Limit, ...]
    questions: tuple[str, ...] = ()

    @cached_property
    def _by_id(self) -> dict[LimitId, Limit]:
        return {limit.id: limit for limit in self.limits}

    def limit(self, limit_id: LimitId) -> Limit:
        """Return the row; ``KeyError`` cannot happen for a loaded profile."""
        return self._by_id[limit_id]

    def number(self, limit_id: LimitId) -> float:
        """Return the SI value of a numeric row; raise ``TypeError`` where the profile leaves it empty."""
        value = self.limit(limit_id).value
        if isinstance(value, bool) or not isinstance(value, int | float):
            raise TypeError(f"{limit_id} holds {value!r}, not a number")
        return float(value)

    def optional_number(self, limit_id: LimitId) -> float | None:
        """Return the SI value, or None where this jurisdiction sets no figure."""
        return None if self.limit(limit_id).value is None else self.number(limit_id)

    def flag(self, limit_id: LimitId) -> bool:
        """Return the value of a yes/no row."""
        value = self.limit(limit_id).value
        if not isinstance(value, bool):
            raise TypeError(f"{limit_id} holds {value!r}, not yes or no")
        return value

    def text(self, limit_id: LimitId) -> str:
        """Return the value of a text row."""
        value = self.limit(limit_id).value
        if not isinstance(value, str):
            raise TypeError(f"{limit_id} holds {value!r}, not a text")
        return value

    def texts(self, limit_id: LimitId) -> tuple[str, ...]:
        """Return the value of a list row."""
        value = self.limit(limit_id).value
        if not isinstance(value, tuple):
            raise TypeError(f"{limit_id} holds {value!r}, not a list")
        return value

    @property
    def scheme(self) -> ListingScheme:
        """Whose listings count here."""
        return ListingScheme(self.text(LimitId.LISTING_SCHEME))


@frozen
class RuleTables:
    """Everything the rules are given: the jurisdiction and the material table.

    ``asked_with_removal`` are the rows of the jurisdiction that an air agency set: they hold without vapour recovery.
    """

    jurisdiction: Jurisdiction
    materials: MaterialTable
    asked_with_removal: frozenset[LimitId] = frozenset()
