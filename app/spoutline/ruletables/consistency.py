"""Checks between the rows of one profile: ends in order, windows apart, classes rising."""

from __future__ import annotations

from spoutline.model.faults import InputProblem
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.worded import Worded

# (lower row, higher row, may they be equal): the lower one must not exceed the higher one
_ORDER: tuple[tuple[LimitId, LimitId, bool], ...] = (
    (LimitId.LISTING_E10_MAX, LimitId.LISTING_E25_MAX, False),
    (LimitId.LISTING_E25_MAX, LimitId.LISTING_E85_MAX, False),
    (LimitId.LISTING_B5_MAX, LimitId.LISTING_B20_MAX, False),
    (LimitId.LISTING_B20_MAX, LimitId.LISTING_B100_MIN, False),
    (LimitId.SPOUT_DEF_OD_MIN, LimitId.SPOUT_DEF_OD_MAX, True),
    (LimitId.SPOUT_GASOLINE_OD_MIN, LimitId.SPOUT_GASOLINE_OD_MAX, True),
    (LimitId.SPOUT_DIESEL_CAR_OD_MIN, LimitId.SPOUT_DIESEL_CAR_OD_MAX, True),
    (LimitId.SPOUT_DIESEL_TRUCK_OD_MIN, LimitId.SPOUT_DIESEL_TRUCK_OD_MAX, True),
    # spout windows lie apart, so that a spout tells its liquid
    (LimitId.SPOUT_DEF_OD_MAX, LimitId.SPOUT_GASOLINE_OD_MIN, False),
    (LimitId.SPOUT_DEF_OD_MAX, LimitId.SPOUT_GASOLINE_OD_MAX, False),
    (LimitId.SPOUT_GASOLINE_OD_MAX, LimitId.SPOUT_DIESEL_CAR_OD_MIN, False),
    (LimitId.SPOUT_DIESEL_CAR_OD_MAX, LimitId.SPOUT_DIESEL_TRUCK_OD_MIN, False),
    # a filler admits its own spouts and stops the next larger kind
    (LimitId.SPOUT_DEF_OD_MAX, LimitId.FILLER_DEF_OPENING, True),
    (LimitId.FILLER_DEF_OPENING, LimitId.SPOUT_GASOLINE_OD_MAX, False),
    (LimitId.SPOUT_GASOLINE_OD_MAX, LimitId.FILLER_GASOLINE_OPENING, True),
    (LimitId.FILLER_GASOLINE_OPENING, LimitId.SPOUT_DIESEL_CAR_OD_MIN, False),
    (LimitId.SPOUT_DIESEL_CAR_OD_MAX, LimitId.FILLER_DIESEL_CAR_OPENING, True),
    (LimitId.FILLER_DIESEL_CAR_OPENING, LimitId.SPOUT_DIESEL_TRUCK_OD_MIN, False),
    (LimitId.SPOUT_GASOLINE_STRAIGHT_MIN, LimitId.SPOUT_GASOLINE_SPRING_DISTANCE, True),
    (LimitId.FLOW_WANTED_CAR, LimitId.FLOW_SUPPLY_CAR, True),
    (LimitId.FLOW_WANTED_TRUCK, LimitId.FLOW_SUPPLY_TRUCK, True),
    (LimitId.FLOW_WANTED_MARINE, LimitId.FLOW_SUPPLY_MARINE, True),
    (LimitId.FLOW_WANTED_REEL, LimitId.FLOW_SUPPLY_REEL, True),
    (LimitId.FLOW_WANTED_DEF, LimitId.FLOW_SUPPLY_DEF, True),
    (LimitId.SUPPLY_PRESSURE, LimitId.PART_PRESSURE_MIN, True),
    (LimitId.NOZZLE_TEMPERATURE_MIN, LimitId.NOZZLE_TEMPERATURE_MAX, False),
    (LimitId.HOSE_LENGTH_MAX, LimitId.HOSE_LENGTH_MAX_FENCED, True),
    (LimitId.HOSE_MARINE_PROTECT_ABOVE, LimitId.HOSE_LENGTH_MAX_MARINE, True),
    (LimitId.HOSE_MARINE_LONG, LimitId.HOSE_LENGTH_MAX_MARINE, True),
    (LimitId.BREAKAWAY_SEPARATION_MIN, LimitId.BREAKAWAY_SEPARATION_MAX, False),
    (LimitId.BREAKAWAY_ANGLE_ADVICE, LimitId.BREAKAWAY_ANGLE_MAX, True),
    (LimitId.BREAKAWAY_SEPARATION_MAX, LimitId.OUTLET_PULL_STRENGTH, True),
)


def contradictions(profile: Jurisdiction, place: str) -> list[InputProblem]:
    """Return one problem for each pair of rows that cannot both hold; empty rows are left out of account."""
    problems: list[InputProblem] = []
    for lower_id, higher_id, may_equal in _ORDER:
        lower, higher = profile.optional_number(lower_id), profile.optional_number(higher_id)
        if lower is None or higher is None or lower < higher or (may_equal and lower == higher):
            continue
        wanted = Worded(
            "it must {given} {higher_id}, {printed}",
            given="not exceed" if may_equal else "be less than",
            higher_id=higher_id,
            printed=_printed(profile, higher_id),
        )
        problems.append(InputProblem(place, lower_id, _printed(profile, lower_id), wanted))
    return problems


def _printed(profile: Jurisdiction, limit_id: LimitId) -> str:
    limit = profile.limit(limit_id)
    return f"{limit.printed} {limit.printed_unit}".strip()
