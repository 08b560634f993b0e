"""Two copies of the published figures, made apart, must agree: the inspector's and the rule tables'."""

from __future__ import annotations

import pytest

from oracle.numbers import NUMBERS
from oracle.suitability import TABLE
from spoutline.assets import resources_folder
from spoutline.model.limit import LimitId, RuleTables
from spoutline.ruletables.load import load_rule_tables


@pytest.fixture(params=sorted(NUMBERS))
def profile(request: pytest.FixtureRequest) -> RuleTables:
    return load_rule_tables(str(request.param), resources=resources_folder(), own_profiles=None)


PAIRS = {
    LimitId.HOSE_OXYGENATE_MAX: "oxygenate_max_percent",
    LimitId.SPOUT_GASOLINE_STRAIGHT_MIN: "gasoline_straight_m",
    LimitId.SPOUT_GASOLINE_SPRING_DISTANCE: "gasoline_spring_m",
    LimitId.FLOW_GASOLINE_ROAD_MAX: "gasoline_road_flow_m3_s",
    LimitId.HOSE_LENGTH_MAX: "hose_length_max_m",
    LimitId.HOSE_LENGTH_MAX_FENCED: "hose_length_max_fenced_m",
    LimitId.HOSE_LENGTH_MAX_MARINE: "hose_length_max_marine_m",
    LimitId.HOSE_MARINE_LONG: "marine_long_m",
    LimitId.HOSE_PERMEATION_MAX: "permeation_max_kg_m2_s",
    LimitId.BREAKAWAY_SEPARATION_MIN: "separation_least_n",
    LimitId.BREAKAWAY_SEPARATION_MAX: "separation_greatest_n",
    LimitId.BREAKAWAY_SERVICE_MARGIN: "service_margin",
    LimitId.BREAKAWAY_STRENGTH_MARGIN: "strength_margin",
    LimitId.FLOW_VELOCITY_MAX: "velocity_max_m_s",
    LimitId.PULL_USER_TUG: "user_tug_n",
    LimitId.OUTLET_PULL_STRENGTH: "outlet_strength_n",
    LimitId.PART_PRESSURE_MIN: "pressure_rating_pa",
    LimitId.SUPPLY_PRESSURE: "supply_pressure_pa",
    LimitId.BOND_HOSE_MAX: "hose_resistance_max_ohm_m",
    LimitId.BOND_DEVICE_MAX: "device_resistance_max_ohm",
    LimitId.BOND_TOTAL_MAX: "total_resistance_max_ohm",
    LimitId.BOND_JOINT: "joint_resistance_ohm",
    LimitId.REACH_SLACK_FRACTION: "slack_fraction",
    LimitId.REACH_SLACK_MIN: "slack_least_m",
    LimitId.GROUND_CLEARANCE: "ground_clearance_m",
    LimitId.BEND_ANGLE_MARGIN: "whip_margin",
    LimitId.SWIVEL_PLANES_CAR: "planes_car",
    LimitId.SWIVEL_PLANES_TRUCK: "planes_other",
    LimitId.SWIVEL_PLANES_MARINE: "planes_other",
    LimitId.SWIVEL_PLANES_REEL: "planes_other",
}


def test_single_figures_agree(profile: RuleTables) -> None:
    own = NUMBERS[profile.jurisdiction.id]
    for limit_id, name in PAIRS.items():
        ours, theirs = getattr(own, name), profile.jurisdiction.optional_number(limit_id)
        assert theirs == (None if ours is None else pytest.approx(ours, rel=2e-3)), limit_id


def test_yes_or_no_rows_agree(profile: RuleTables) -> None:
    own, law = NUMBERS[profile.jurisdiction.id], profile.jurisdiction
    assert law.text(LimitId.LISTING_SCHEME) == own.scheme
    assert (law.text(LimitId.HOSE_CONSTRUCTION_PLAIN) == "hardwall") is own.fuel_hose_is_hardwall
    assert (law.text(LimitId.HOSE_CONSTRUCTION_REEL) == "hardwall") is own.fuel_hose_is_hardwall
    assert law.flag(LimitId.HOSE_LOW_PERMEATION) == own.low_permeation
    assert law.flag(LimitId.ENHANCED_CONVENTIONAL) == own.enhanced_conventional
    assert law.flag(LimitId.HOLD_OPEN_MARINE) == own.hold_open_marine
    assert law.flag(LimitId.HOLD_OPEN_OVERHEAD) == own.hold_open_overhead
    assert law.flag(LimitId.HOLD_OPEN_OVERHEAD_DEVICE) == own.hold_open_overhead_device
    assert law.flag(LimitId.HOLD_OPEN_UNATTENDED) == own.hold_open_unattended
    assert law.text(LimitId.VAPOUR_RECOVERY) == own.vapour_recovery
    assert law.text(LimitId.VAPOUR_REMOVAL) == own.vapour_removal


def test_spout_windows_agree(profile: RuleTables) -> None:
    own, law = NUMBERS[profile.jurisdiction.id], profile.jurisdiction
    for band, low, high in (
        (own.gasoline_spout, LimitId.SPOUT_GASOLINE_OD_MIN, LimitId.SPOUT_GASOLINE_OD_MAX),
        (own.diesel_car_spout, LimitId.SPOUT_DIESEL_CAR_OD_MIN, LimitId.SPOUT_DIESEL_CAR_OD_MAX),
        (own.diesel_truck_spout, LimitId.SPOUT_DIESEL_TRUCK_OD_MIN, LimitId.SPOUT_DIESEL_TRUCK_OD_MAX),
        (own.def_spout, LimitId.SPOUT_DEF_OD_MIN, LimitId.SPOUT_DEF_OD_MAX),
    ):
        assert (law.optional_number(low) or 0.0) == pytest.approx(band.least_m, abs=1e-6)
        assert law.number(high) == pytest.approx(band.greatest_m, abs=1e-6)


def test_usual_flows_agree(profile: RuleTables) -> None:
    own, law = NUMBERS[profile.jurisdiction.id], profile.jurisdiction
    for key, litres_per_minute in own.wanted_flow_l_min:
        assert law.number(LimitId(f"flow.wanted_{key}")) == pytest.approx(litres_per_minute / 60e3, rel=1e-9)
    for key, flow_m3_s in own.supply_flow_m3_s:
        assert law.number(LimitId(f"flow.supply_{key}")) == pytest.approx(flow_m3_s, rel=1e-9)


def test_material_tables_agree(profile: RuleTables) -> None:
    letters = {"suitable": "S", "caution": "C", "unsuitable": "N"}
    theirs = {(e.material.value, e.column.value): letters[e.suitability] for e in profile.materials.entries}
    assert theirs == TABLE
