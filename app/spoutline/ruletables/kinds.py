"""What may stand in each limit row: a number of which dimension and range, a word, a yes or no, a list of cases."""

from __future__ import annotations

import math
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.limit import LimitId
from spoutline.model.liquid import LiquidFamily, ListingScheme
from spoutline.model.part import HoseConstruction
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Duty, Service


class Form(StrEnum):
    """The form of a row's value."""

    NUMBER = "number"
    YES_NO = "yes or no"
    WORD = "word"
    CASES = "list of cases"


@frozen(kw_only=True)
class Kind:
    """What a row may hold. ``minimum`` and ``maximum`` are in the core's unit of the dimension, ends included."""

    form: Form
    dimension: Dimension | None = None
    minimum: float = -math.inf
    maximum: float = math.inf
    whole: bool = False
    may_be_empty: bool = False
    words: tuple[str, ...] = ()


_SMALLEST = 1e-12  # stands for "more than zero" in any dimension


def _number(
    dimension: Dimension, minimum: float, maximum: float, *, whole: bool = False, may_be_empty: bool = False
) -> Kind:
    return Kind(
        form=Form.NUMBER,
        dimension=dimension,
        minimum=minimum,
        maximum=maximum,
        whole=whole,
        may_be_empty=may_be_empty,
    )


_DIAMETER = _number(Dimension.DIAMETER, _SMALLEST, 0.1)
_OPEN_DIAMETER = _number(Dimension.DIAMETER, _SMALLEST, 0.1, may_be_empty=True)
_LENGTH = _number(Dimension.LENGTH, _SMALLEST, 100.0)
_OPEN_LENGTH = _number(Dimension.LENGTH, _SMALLEST, 100.0, may_be_empty=True)
_FLOW = _number(Dimension.FLOW, _SMALLEST, 0.01)
_OPEN_FLOW = _number(Dimension.FLOW, _SMALLEST, 0.01, may_be_empty=True)
_PRESSURE = _number(Dimension.PRESSURE, _SMALLEST, 5e6)
_TEMPERATURE = _number(Dimension.TEMPERATURE, -80.0, 120.0)
_PERCENT = _number(Dimension.PERCENT, 0.0, 100.0)
_FORCE = _number(Dimension.FORCE, _SMALLEST, 20000.0)
_MARGIN = _number(Dimension.RATIO, 1.0, 10.0)
_ANGLE = _number(Dimension.ANGLE, 0.0, math.radians(89.0))
_RESISTANCE = _number(Dimension.RESISTANCE, _SMALLEST, 1e12)
_PLANES = _number(Dimension.COUNT, 1.0, 3.0, whole=True)
_YES_NO = Kind(form=Form.YES_NO)
_CONSTRUCTION = Kind(form=Form.WORD, words=(*(construction.value for construction in HoseConstruction), "any"))

KINDS: dict[LimitId, Kind] = {
    LimitId.LISTING_SCHEME: Kind(form=Form.WORD, words=tuple(scheme.value for scheme in ListingScheme)),
    LimitId.LISTING_E10_MAX: _PERCENT,
    LimitId.LISTING_E25_MAX: _PERCENT,
    LimitId.LISTING_E85_MAX: _PERCENT,
    LimitId.LISTING_B5_MAX: _PERCENT,
    LimitId.LISTING_B20_MAX: _PERCENT,
    LimitId.LISTING_B100_MIN: _PERCENT,
    LimitId.LISTING_DEF_ZONE: _YES_NO,
    LimitId.HOSE_OXYGENATE_MAX: _number(Dimension.PERCENT, 0.0, 100.0, may_be_empty=True),
    LimitId.SPOUT_GASOLINE_OD_MIN: _OPEN_DIAMETER,
    LimitId.SPOUT_GASOLINE_OD_MAX: _DIAMETER,
    LimitId.SPOUT_GASOLINE_STRAIGHT_MIN: _number(Dimension.DIAMETER, _SMALLEST, 0.5, may_be_empty=True),
    LimitId.SPOUT_GASOLINE_SPRING_DISTANCE: _number(Dimension.DIAMETER, _SMALLEST, 0.5, may_be_empty=True),
    LimitId.SPOUT_DIESEL_CAR_OD_MIN: _DIAMETER,
    LimitId.SPOUT_DIESEL_CAR_OD_MAX: _DIAMETER,
    LimitId.SPOUT_DIESEL_TRUCK_OD_MIN: _DIAMETER,
    LimitId.SPOUT_DIESEL_TRUCK_OD_MAX: _DIAMETER,
    LimitId.SPOUT_DEF_OD_MIN: _DIAMETER,
    LimitId.SPOUT_DEF_OD_MAX: _DIAMETER,
    LimitId.FILLER_GASOLINE_OPENING: _DIAMETER,
    LimitId.FILLER_DIESEL_CAR_OPENING: _DIAMETER,
    LimitId.FILLER_DEF_OPENING: _DIAMETER,
    LimitId.FLOW_GASOLINE_ROAD_MAX: _OPEN_FLOW,
    LimitId.FLOW_WANTED_CAR: _FLOW,
    LimitId.FLOW_WANTED_TRUCK: _FLOW,
    LimitId.FLOW_WANTED_MARINE: _FLOW,
    LimitId.FLOW_WANTED_REEL: _FLOW,
    LimitId.FLOW_WANTED_DEF: _FLOW,
    LimitId.FLOW_SUPPLY_CAR: _FLOW,
    LimitId.FLOW_SUPPLY_TRUCK: _FLOW,
    LimitId.FLOW_SUPPLY_MARINE: _FLOW,
    LimitId.FLOW_SUPPLY_REEL: _FLOW,
    LimitId.FLOW_SUPPLY_DEF: _FLOW,
    LimitId.FLOW_VELOCITY_MAX: _number(Dimension.VELOCITY, _SMALLEST, 50.0),
    LimitId.SUPPLY_PRESSURE: _PRESSURE,
    LimitId.PART_PRESSURE_MIN: _PRESSURE,
    LimitId.NOZZLE_TEMPERATURE_MIN: _TEMPERATURE,
    LimitId.NOZZLE_TEMPERATURE_MAX: _TEMPERATURE,
    LimitId.DEF_FREEZING: _TEMPERATURE,
    LimitId.DEF_UREA_MIN: _PERCENT,
    LimitId.DEF_UREA_MAX: _PERCENT,
    LimitId.HOSE_LENGTH_MAX: _OPEN_LENGTH,
    LimitId.HOSE_LENGTH_MAX_FENCED: _OPEN_LENGTH,
    LimitId.HOSE_LENGTH_MAX_MARINE: _OPEN_LENGTH,
    LimitId.HOSE_MARINE_PROTECT_ABOVE: _OPEN_LENGTH,
    LimitId.HOSE_MARINE_LONG: _LENGTH,
    LimitId.HOSE_CONSTRUCTION_PLAIN: _CONSTRUCTION,
    LimitId.HOSE_CONSTRUCTION_RETRACTOR: _CONSTRUCTION,
    LimitId.HOSE_CONSTRUCTION_REEL: _CONSTRUCTION,
    LimitId.HOSE_CONSTRUCTION_DEF: _CONSTRUCTION,
    LimitId.HOSE_CONSTRUCTION_DEF_REEL: _CONSTRUCTION,
    LimitId.HOSE_LOW_PERMEATION: _YES_NO,
    LimitId.HOSE_PERMEATION_MAX: _number(Dimension.PERMEATION, _SMALLEST, 1e-4, may_be_empty=True),
    LimitId.BREAKAWAY_REQUIRED: _YES_NO,
    LimitId.BREAKAWAY_SEPARATION_MIN: _FORCE,
    LimitId.BREAKAWAY_SEPARATION_MAX: _FORCE,
    LimitId.BREAKAWAY_SERVICE_MARGIN: _MARGIN,
    LimitId.BREAKAWAY_STRENGTH_MARGIN: _MARGIN,
    LimitId.BREAKAWAY_ANGLE_ADVICE: _ANGLE,
    LimitId.BREAKAWAY_ANGLE_MAX: _ANGLE,
    LimitId.PULL_USER_TUG: _number(Dimension.FORCE, 0.0, 2000.0),
    LimitId.OUTLET_PULL_STRENGTH: _FORCE,
    LimitId.BOND_TOTAL_MAX: _RESISTANCE,
    LimitId.BOND_HOSE_MAX: _number(Dimension.RESISTANCE_PER_LENGTH, _SMALLEST, 1e12, may_be_empty=True),
    LimitId.BOND_DEVICE_MAX: _number(Dimension.RESISTANCE, _SMALLEST, 1e12, may_be_empty=True),
    LimitId.BOND_JOINT: _number(Dimension.RESISTANCE, 0.0, 1e6),
    LimitId.BOND_DEF_REQUIRED: _YES_NO,
    LimitId.NOZZLE_AUTOMATIC_REQUIRED: _YES_NO,
    LimitId.NOZZLE_MANUAL_CASES: Kind(form=Form.CASES),
    LimitId.HOLD_OPEN_SELF: _YES_NO,
    LimitId.HOLD_OPEN_ATTENDED: _YES_NO,
    LimitId.HOLD_OPEN_UNATTENDED: _YES_NO,
    LimitId.HOLD_OPEN_MARINE: _YES_NO,
    LimitId.HOLD_OPEN_OVERHEAD: _YES_NO,
    LimitId.HOLD_OPEN_OVERHEAD_DEVICE: _YES_NO,
    LimitId.NO_PRESSURE_DEVICE_WITH_HOLD_OPEN: _YES_NO,
    LimitId.NO_PRESSURE_DEVICE_WITH_PREPAY: _YES_NO,
    LimitId.ENHANCED_CONVENTIONAL: _YES_NO,
    LimitId.VAPOUR_RECOVERY: Kind(form=Form.WORD, words=("required", "optional", "prohibited")),
    LimitId.VAPOUR_REMOVAL: Kind(form=Form.WORD, words=("allowed", "not_allowed", "ask")),
    LimitId.SWIVEL_PLANES_CAR: _PLANES,
    LimitId.SWIVEL_PLANES_TRUCK: _PLANES,
    LimitId.SWIVEL_PLANES_MARINE: _PLANES,
    LimitId.SWIVEL_PLANES_REEL: _PLANES,
    LimitId.REACH_SLACK_FRACTION: _number(Dimension.RATIO, 0.0, 1.0),
    LimitId.REACH_SLACK_MIN: _number(Dimension.LENGTH, 0.0, 5.0),
    LimitId.GROUND_CLEARANCE: _number(Dimension.LENGTH, 0.0, 1.0),
    LimitId.BEND_ANGLE_MARGIN: _MARGIN,
    LimitId.PRICE_USUAL_FACTOR: _number(Dimension.RATIO, 1.5, 1000.0),
}

CASE_PARTS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("service", tuple(service.value for service in Service)),
    ("duty", tuple(duty.value for duty in Duty)),
    ("liquid family", tuple(family.value for family in LiquidFamily)),
)
