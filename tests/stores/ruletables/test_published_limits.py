"""The built-in profiles against what the published texts print. Source and clause stand beside each figure.

Where the text itself was not read, the row's status says so and the comment says "from memory".
"""

from __future__ import annotations

import pytest

from spoutline import assets
from spoutline.model.limit import Jurisdiction, LimitId, LimitStatus
from spoutline.ruletables.kinds import KINDS, Form
from spoutline.ruletables.load import built_in_profiles, load_rule_tables

PROFILES = {profile.id: profile for profile in built_in_profiles(assets.resources_folder())}
EVERY_PROFILE = pytest.mark.parametrize("profile", PROFILES.values(), ids=PROFILES.keys())

US_NUMBERS = [
    # limit, SI value as the text prints it or converts exactly, relative tolerance
    (LimitId.LISTING_E10_MAX, 10.0, 0.0),  # UL 2586 clause 1.4
    (LimitId.LISTING_E25_MAX, 25.0, 0.0),  # UL 2586A clause 1.3
    (LimitId.LISTING_E85_MAX, 85.0, 0.0),  # UL 2586A clause 1.3
    (LimitId.LISTING_B5_MAX, 5.0, 0.0),  # UL 2586B clause 1.3
    (LimitId.LISTING_B20_MAX, 20.0, 0.0),  # UL 2586B clause 1.3
    (LimitId.LISTING_B100_MIN, 99.9, 0.0),  # UL 2586B clause 1.3
    (LimitId.SPOUT_GASOLINE_OD_MIN, 0.02050, 1e-3),  # SAE J285:2007 summary, 20.50 mm (0.807 in)
    (LimitId.SPOUT_GASOLINE_OD_MAX, 0.02134, 1e-3),  # 40 CFR 1090.1550 / SAE J285, 21.34 mm (0.840 in)
    (LimitId.SPOUT_GASOLINE_STRAIGHT_MIN, 0.0635, 1e-9),  # 40 CFR 1090.1550, 63.5 mm (2.5 in), from memory
    (LimitId.SPOUT_GASOLINE_SPRING_DISTANCE, 0.076, 5e-3),  # 40 CFR 1090.1550, 76 mm (3.0 in), from memory
    (LimitId.SPOUT_DIESEL_CAR_OD_MIN, 0.02360, 1e-3),  # SAE J285:2007 summary, 23.60 mm (0.929 in)
    (LimitId.SPOUT_DIESEL_CAR_OD_MAX, 0.02380, 1e-3),  # SAE J285:2007 summary, 23.80 mm (0.937 in)
    (LimitId.SPOUT_DIESEL_TRUCK_OD_MIN, 0.02850, 1e-3),  # SAE J285:2007 summary, 28.50 mm (1.122 in)
    (LimitId.SPOUT_DIESEL_TRUCK_OD_MAX, 0.03175, 1e-9),  # SAE J285:2007 summary, 31.75 mm (1.250 in)
    (LimitId.FLOW_GASOLINE_ROAD_MAX, 37.9e-3 / 60, 2e-3),  # EPA fact sheet 1997 on 40 CFR 80.22(j): 37.9 L/min (10 gpm)
    (LimitId.FLOW_SUPPLY_DEF, 40e-3 / 60, 1e-9),  # ISO 22241-4: up to 40 L/min, from memory
    (LimitId.PART_PRESSURE_MIN, 345e3, 2e-3),  # UL 2586A/B clause 1.1: 50 psi (345 kPa)
    (LimitId.NOZZLE_TEMPERATURE_MIN, -29.0, 5e-3),  # UL 2586A clause 1.1: -20 degF (-29 degC)
    (LimitId.NOZZLE_TEMPERATURE_MAX, 52.0, 7e-3),  # UL 2586A clause 1.1: 125 degF (52 degC)
    (LimitId.DEF_FREEZING, -11.5, 0.0),  # ISO 22241-3, from memory
    (LimitId.HOSE_LENGTH_MAX, 5.4864, 1e-9),  # Okla. 165:26-2-92(a)(1): 18 ft
    (LimitId.HOSE_LENGTH_MAX_FENCED, 15.24, 1e-9),  # Okla. 165:26-2-92(a)(3): 50 ft
    (LimitId.HOSE_LENGTH_MAX_MARINE, 15.24, 1e-9),  # NIST HB 44 3.30 UR.1.1.2: 50 ft, from memory
    (LimitId.HOSE_MARINE_PROTECT_ABOVE, 7.9248, 1e-9),  # NIST HB 44 3.30 UR.1.1.2: 26 ft, from memory
    (LimitId.HOSE_PERMEATION_MAX, 0.01 / 86400, 1e-9),  # UL 330 / CARB: 10 g/m2 per day, from memory
    (LimitId.BREAKAWAY_SEPARATION_MIN, 445.0, 1e-3),  # UL 567:2021 clause 6.3: 100 lbf (445 N)
    (LimitId.BREAKAWAY_SEPARATION_MAX, 1557.0, 1e-3),  # UL 567:2021 clause 6.3: 350 lbf (1557 N)
    (LimitId.OUTLET_PULL_STRENGTH, 1946.0, 1e-3),  # 350 lbf x 1.25; no public figure
    (LimitId.BOND_TOTAL_MAX, 1e6, 0.0),  # NFPA 77: 1 megohm, from memory
    (LimitId.BOND_HOSE_MAX, 229.7e3, 1e-3),  # UL 330 / PEI RP400: 70 000 ohm/ft (229.7 kohm/m), from memory
    (LimitId.BOND_DEVICE_MAX, 0.5e6, 0.0),  # UL 567A clause 12.2: 0.5 megohm
]

EUROPEAN_NUMBERS = [
    (LimitId.HOSE_OXYGENATE_MAX, 15.0, 0.0),  # EN 1360:2013 scope
    (LimitId.SPOUT_GASOLINE_OD_MAX, 0.0213, 1e-9),  # ISO 9158:1988: 21.3 mm, from memory
    (LimitId.SPOUT_DIESEL_CAR_OD_MIN, 0.0236, 1e-9),  # ISO 9159:1988: about 23.6 mm, from memory
    (LimitId.SPOUT_DIESEL_CAR_OD_MAX, 0.0255, 1e-9),  # ISO 9159:1988: about 25.5 mm, from memory
    (LimitId.FLOW_GASOLINE_ROAD_MAX, 200e-3 / 60, 1e-9),  # EN 13012:2021 scope: up to 200 L/min
    (LimitId.NOZZLE_TEMPERATURE_MIN, -20.0, 0.0),  # EN 13012:2021 scope
    (LimitId.NOZZLE_TEMPERATURE_MAX, 40.0, 0.0),  # EN 13012:2021 scope
    (LimitId.BREAKAWAY_SEPARATION_MIN, 800.0, 0.0),  # EN 13617-2: about 800 N, from memory
    (LimitId.BREAKAWAY_SEPARATION_MAX, 1500.0, 0.0),  # EN 13617-2: about 1500 N, from memory
]

# how far the texts behind these rows were read, see the comments above
READ_STATUS = [
    ("us_general", LimitId.FLOW_GASOLINE_ROAD_MAX, LimitStatus.VERIFIED),
    ("us_general", LimitId.SPOUT_GASOLINE_OD_MAX, LimitStatus.SECONDARY),
    ("us_general", LimitId.SPOUT_GASOLINE_STRAIGHT_MIN, LimitStatus.SECONDARY),
    ("us_general", LimitId.HOSE_LENGTH_MAX, LimitStatus.VERIFIED),
    ("us_general", LimitId.BREAKAWAY_SEPARATION_MAX, LimitStatus.SECONDARY),
    ("us_general", LimitId.BOND_DEVICE_MAX, LimitStatus.SECONDARY),
    ("us_general", LimitId.BOND_TOTAL_MAX, LimitStatus.MEMORY),
    ("us_general", LimitId.FLOW_WANTED_CAR, LimitStatus.COMMON_PRACTICE),
    ("us_general", LimitId.BREAKAWAY_SERVICE_MARGIN, LimitStatus.JUDGEMENT),
    ("europe", LimitId.HOSE_OXYGENATE_MAX, LimitStatus.VERIFIED),
    ("europe", LimitId.BREAKAWAY_SEPARATION_MIN, LimitStatus.MEMORY),
    ("us_vapour_rules", LimitId.ENHANCED_CONVENTIONAL, LimitStatus.VERIFIED),
]


def test_the_built_in_profiles_are_those_of_the_trade() -> None:
    assert list(PROFILES) == ["europe", "us_general", "us_vapour_rules", "us_without_recovery"]


@EVERY_PROFILE
def test_every_profile_holds_every_limit_once_with_its_source_edition_and_status(profile: Jurisdiction) -> None:
    assert [limit.id for limit in profile.limits] == list(LimitId)
    for limit in profile.limits:
        assert limit.title, limit.id
        assert limit.source, limit.id
        assert limit.clause, limit.id
        assert limit.edition, limit.id
        assert limit.status in LimitStatus


@EVERY_PROFILE
def test_a_profile_names_its_edition_and_asks_what_a_table_cannot_know(profile: Jurisdiction) -> None:
    assert profile.built_in
    assert profile.edition
    assert len(profile.questions) >= 3


@EVERY_PROFILE
def test_only_rows_that_may_be_empty_are_empty(profile: Jurisdiction) -> None:
    assert all(KINDS[limit.id].may_be_empty for limit in profile.limits if limit.value is None)


@EVERY_PROFILE
def test_a_row_of_practice_or_judgement_claims_no_text(profile: Jurisdiction) -> None:
    # a trade rule of thumb is marked as one, and a clause number is never hung on it
    for limit in profile.limits:
        if limit.status is LimitStatus.COMMON_PRACTICE:
            assert limit.source == "common practice, no source", limit.id


@pytest.mark.parametrize(("limit_id", "value", "tolerance"), US_NUMBERS)
def test_the_general_us_profile_holds_the_published_figure(limit_id: LimitId, value: float, tolerance: float) -> None:
    assert PROFILES["us_general"].number(limit_id) == pytest.approx(value, rel=tolerance)


@pytest.mark.parametrize(("limit_id", "value", "tolerance"), EUROPEAN_NUMBERS)
def test_the_european_profile_holds_the_published_figure(limit_id: LimitId, value: float, tolerance: float) -> None:
    assert PROFILES["europe"].number(limit_id) == pytest.approx(value, rel=tolerance)


@pytest.mark.parametrize(("profile_id", "limit_id", "status"), READ_STATUS)
def test_a_row_tells_how_far_its_text_was_read(profile_id: str, limit_id: LimitId, status: LimitStatus) -> None:
    assert PROFILES[profile_id].limit(limit_id).status is status


def test_a_figure_is_kept_as_its_source_prints_it() -> None:
    # SAE J285 prints 0.840 in with its last zero
    row = PROFILES["us_general"].limit(LimitId.SPOUT_GASOLINE_OD_MAX)
    assert (row.printed, row.printed_unit) == ("0.840", "in")


def test_the_angle_rows_are_the_ones_whose_cosines_are_worked_by_hand() -> None:
    # engineering judgement: above 45 degrees the line pull is 41 % more than the separation pull, at 60 twice as much
    import math

    general = PROFILES["us_general"]
    assert 1 / math.cos(general.number(LimitId.BREAKAWAY_ANGLE_ADVICE)) == pytest.approx(math.sqrt(2), rel=1e-9)
    assert 1 / math.cos(general.number(LimitId.BREAKAWAY_ANGLE_MAX)) == pytest.approx(2.0, rel=1e-9)


def test_the_assumed_outlet_bears_every_breakaway_of_the_profile_with_the_strength_margin() -> None:
    for profile in PROFILES.values():
        needed = profile.number(LimitId.BREAKAWAY_SEPARATION_MAX) * profile.number(LimitId.BREAKAWAY_STRENGTH_MARGIN)
        assert profile.number(LimitId.OUTLET_PULL_STRENGTH) == pytest.approx(needed, rel=1e-9)


def test_a_latch_is_never_allowed_at_a_marina_and_always_comes_with_a_no_pressure_device() -> None:
    # 29 CFR 1910.106(g)(4) from memory; NFPA 30A as reproduced by Colorado's Division of Oil and Public Safety
    for profile in PROFILES.values():
        assert not profile.flag(LimitId.HOLD_OPEN_MARINE)
        assert profile.flag(LimitId.NO_PRESSURE_DEVICE_WITH_HOLD_OPEN)
        assert profile.flag(LimitId.NO_PRESSURE_DEVICE_WITH_PREPAY)
        assert profile.flag(LimitId.BREAKAWAY_REQUIRED)  # Okla. 165:26-2-91(d)
        assert profile.flag(LimitId.NOZZLE_AUTOMATIC_REQUIRED)


def test_local_vapour_rules_keep_recovery_and_ask_for_low_permeation_hose_and_enhanced_nozzles() -> None:
    # CARB pages on retail Phase II; N.J.A.C. 7:27-16.3
    local = PROFILES["us_vapour_rules"]
    assert local.text(LimitId.VAPOUR_RECOVERY) == "required"
    assert local.text(LimitId.VAPOUR_REMOVAL) == "not_allowed"
    assert local.flag(LimitId.HOSE_LOW_PERMEATION)
    assert local.flag(LimitId.ENHANCED_CONVENTIONAL)


def test_rules_that_let_recovery_go_ask_for_low_permeation_hose_and_enhanced_nozzles() -> None:
    # N.J.A.C. 7:27-16.3; EPA proposed rule, FR doc 2019-25584, summary
    local = PROFILES["us_without_recovery"]
    assert local.text(LimitId.VAPOUR_RECOVERY) == "optional"
    assert local.text(LimitId.VAPOUR_REMOVAL) == "allowed"
    assert local.flag(LimitId.HOSE_LOW_PERMEATION)
    assert local.flag(LimitId.ENHANCED_CONVENTIONAL)


def test_the_federal_waiver_leaves_recovery_open_and_removal_to_the_state() -> None:
    # 40 CFR 51.126(b): the state revises its plan and gets approval before it drops the duty
    general = PROFILES["us_general"]
    assert general.text(LimitId.VAPOUR_RECOVERY) == "optional"
    assert general.text(LimitId.VAPOUR_REMOVAL) == "ask"


def test_europe_has_no_common_hose_length_and_asks_for_the_national_one() -> None:
    europe = PROFILES["europe"]
    assert europe.scheme == "EN"
    assert europe.optional_number(LimitId.HOSE_LENGTH_MAX) is None
    assert any("hose length" in question for question in europe.questions)
    # Directive 2009/126/EC Art. 3: thresholds 100, 500 and 3000 m3 a year
    throughput = next(question for question in europe.questions if "throughput" in question)
    assert all(figure in throughput for figure in ("100 m³", "500 m³", "3000 m³"))


@pytest.mark.parametrize("profile_id", ["us_vapour_rules", "us_without_recovery"])
def test_local_profiles_differ_only_where_the_local_text_says_so(profile_id: str) -> None:
    general, local = PROFILES["us_general"], PROFILES[profile_id]
    differing = {limit.id for limit in general.limits if limit != local.limit(limit.id)}
    assert differing == {
        LimitId.HOSE_LOW_PERMEATION,
        LimitId.ENHANCED_CONVENTIONAL,
        LimitId.VAPOUR_RECOVERY,
        LimitId.VAPOUR_REMOVAL,
    }


def test_manual_nozzles_are_few_attended_and_never_for_gasoline() -> None:
    # common practice, no source: NFPA 30A asks for automatic nozzles on Class I liquids
    for profile in PROFILES.values():
        cases = profile.texts(LimitId.NOZZLE_MANUAL_CASES)
        assert 0 < len(cases) <= 4
        for case in cases:
            service, duty, family = case.split(":")
            assert (service, duty) == ("attended", "reel")
            assert family != "gasoline"


def test_every_kind_is_declared_and_numbers_carry_their_dimension() -> None:
    assert set(KINDS) == set(LimitId)
    for kind in KINDS.values():
        assert (kind.dimension is not None) == (kind.form is Form.NUMBER)


def test_rule_tables_carry_jurisdiction_and_materials() -> None:
    tables = load_rule_tables("us_general", resources=assets.resources_folder(), own_profiles=None)
    assert tables.jurisdiction == PROFILES["us_general"]
    assert tables.materials.edition


def test_no_profile_speaks_of_approval() -> None:
    for profile in PROFILES.values():
        words = " ".join([*profile.questions, *(f"{limit.title} {limit.note}" for limit in profile.limits)]).casefold()
        assert "compliant" not in words
        assert "is approved" not in words
