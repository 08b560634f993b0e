"""The invented catalogue itself: big enough, complete, plausible against published figures, with its near misses."""

import re

import pytest

from catalogue_chains import remarks
from spoutline import assets
from spoutline.catalogue.rows import TABLES
from spoutline.model.liquid import ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import (
    NozzleService,
    Part,
    PartKind,
    PartStatus,
    Placement,
)
from spoutline.model.port import FlowPath, Gender, ThreadStandard

INCH = 0.0254  # m, exact
FOOT = 0.3048  # m, exact
LBF = 4.448222  # N
L_MIN = 1 / 60_000  # m3/s


def trap(reviewed, words: str) -> Part:
    said = remarks()
    found = [part for part in reviewed.parts if words in said[part.number]]
    assert len(found) == 1, words
    return found[0]


def test_there_are_enough_parts_of_every_kind_from_several_makers(reviewed):
    assert len(reviewed.parts) >= 350
    assert {part.kind for part in reviewed.parts} == set(PartKind)
    assert len({part.maker for part in reviewed.parts}) >= 5
    assert {maker.name for maker in reviewed.makers} == {part.maker for part in reviewed.parts}


def test_numbers_follow_the_plain_scheme(reviewed):
    prefixes = {maker.name: maker.prefix for maker in reviewed.makers}
    for part in reviewed.parts:
        assert re.fullmatch(rf"{prefixes[part.maker]}-[A-Z]\d+", part.number)


def test_the_readme_describes_every_column():
    text = (assets.catalogue_folder() / "README.md").read_text(encoding="utf-8")
    described = set(re.findall(r"^\| `(\w+)` \| (.+) \|$", text, re.MULTILINE))
    columns = {(name, info.description) for row in TABLES.values() for name, info in row.model_fields.items()}
    assert described == columns


def test_every_status_occurs_and_successors_are_sold(reviewed):
    assert {part.status for part in reviewed.parts} == set(PartStatus)
    by_number = {part.number: part for part in reviewed.parts}
    for part in reviewed.parts:
        if part.superseded_by:
            assert by_number[part.superseded_by].status is PartStatus.ACTIVE


def test_thread_sizes_are_known_ones(reviewed):
    # NPT: ASME B1.20.1; G: ISO 228-1. Coaxial M34x1.5 and 1-7/8-12 UN: common practice, no source.
    known = {
        ThreadStandard.NPT: {"1/2", "3/4", "1", "1-1/4"},
        ThreadStandard.G: {"1/2", "3/4", "1", "1-1/4"},
        ThreadStandard.M: {"34x1.5"},
        ThreadStandard.UN: {"1-7/8-12"},
    }
    for part in reviewed.parts:
        for port in filter(None, (part.inlet, part.outlet)):
            assert port.size in known[port.thread]


def test_prices_are_positive_and_nearly_always_in_both_currencies(reviewed):
    without_euro = [part for part in reviewed.parts if part.price_minor("EUR") is None]
    assert 1 <= len(without_euro) <= 5
    for part in reviewed.parts:
        assert part.price_minor("USD") > 0


def test_genders_follow_custom(sound):
    # common practice, no source: hoses male at both ends, nozzles and inlets of swivels female
    for part in sound:
        if part.kind in (PartKind.CURB_HOSE, PartKind.WHIP_HOSE):
            assert (part.inlet.gender, part.outlet.gender) == (Gender.MALE, Gender.MALE)
        if part.kind is PartKind.NOZZLE:
            assert part.inlet.gender is Gender.FEMALE
        if part.kind in (PartKind.SWIVEL, PartKind.SWIVEL_BREAKAWAY):
            assert (part.inlet.gender, part.outlet.gender) == (Gender.FEMALE, Gender.MALE)
        if part.kind is PartKind.BREAKAWAY:
            above_hose = Placement.DISPENSER_END in part.breakaway.placements
            assert part.outlet.gender is (Gender.FEMALE if above_hose else Gender.MALE)


# ---- plausibility against published figures


def test_spouts_of_sound_parts_have_the_published_diameters(sound):
    for part in (part for part in sound if part.nozzle):
        od_m = part.nozzle.spout_outside_diameter_m
        american = ListingScheme.UL in part.schemes
        if part.nozzle.service is NozzleService.GASOLINE:
            # 0.807 in SAE J285:2007; 0.840 in 40 CFR 1090.1550; 21.3 mm ISO 9158 (memory)
            assert 0.807 * INCH - 1e-9 <= od_m <= (0.840 * INCH + 1e-9 if american else 0.0213)
            assert part.nozzle.spout_straight_length_m >= 2.5 * INCH - 1e-9  # 40 CFR 1090.1550 (memory)
            assert part.nozzle.spring_distance_m >= 3.0 * INCH - 1e-9  # 40 CFR 1090.1550 (memory)
        elif part.nozzle.service is NozzleService.DIESEL_CAR:
            # 0.929 to 0.937 in SAE J285:2007; 23.6 to 25.5 mm ISO 9159 (memory, weak)
            assert 0.0236 - 1e-9 <= od_m <= (0.937 * INCH + 1e-9 if american else 0.0255)
        elif part.nozzle.service is NozzleService.DIESEL_TRUCK:
            assert 1.122 * INCH - 1e-9 <= od_m <= 1.250 * INCH + 1e-9  # SAE J285:2007
        else:
            assert od_m == pytest.approx(0.019)  # ISO 22241-4 nominal (memory)


def test_sound_breakaways_separate_inside_the_published_window(sound):
    for part in (part for part in sound if part.breakaway):
        data = part.breakaway
        if ListingScheme.UL in part.schemes and part.inlet.thread is not ThreadStandard.G:
            # 100 to 350 lbf, UL 567:2021 6.3 (secondary)
            assert 100 * LBF - 0.5 <= data.separation_minimum_n <= data.separation_maximum_n <= 350 * LBF
        else:
            # 800 to 1500 N, EN 13617-2 (memory, weak)
            assert 800 <= data.separation_minimum_n <= data.separation_maximum_n <= 1500


def test_sound_parts_outlast_the_strongest_breakaway(sound):
    strongest_n = max(part.breakaway.separation_maximum_n for part in sound if part.breakaway)
    for part in sound:
        if part.kind not in (PartKind.CAP, PartKind.HOSE_CLAMP, PartKind.SEALANT, PartKind.LABEL):
            assert part.pull_strength_n >= 1.25 * strongest_n  # margin 1.25: engineering judgement


def test_sound_parts_stand_pressure_and_climate(sound):
    for part in sound:
        if part.inlet and part.outlet:
            assert part.maximum_pressure_pa >= 345e3  # 50 psi: UL 2586A/B 1.1, UL 330 1.4
        if ListingScheme.UL in part.schemes:
            assert part.temperature_minimum_c <= -28.9  # -20 F: UL 2586A/B 1.1
            assert part.temperature_maximum_c >= 50  # EN 13012:2021 asks 40; UL 125 F
        elif ListingScheme.EN in part.schemes:
            assert part.temperature_minimum_c <= -20 <= 40 <= part.temperature_maximum_c  # EN 13012:2021 scope


def test_sound_parts_keep_their_own_resistance_limit(sound):
    for part in sound:
        if part.hose:
            assert part.hose.resistance_ohm_m <= 70_000 / FOOT  # 70 000 ohm/ft: UL 330, PEI RP400 (memory)
            assert part.resistance_ohm == pytest.approx(part.hose.resistance_ohm_m * part.length_m)
        elif part.inlet and part.kind is not PartKind.CAP:
            assert part.resistance_ohm <= 0.5e6  # UL 567A 12.2 (secondary)


def test_low_permeation_hoses_keep_the_limit(sound):
    limit = 10 / 1000 / 86_400  # 10 g/(m2.day): UL 330, CARB (memory)
    for part in (part for part in sound if part.hose and part.hose.low_permeation):
        assert part.hose.permeation_kg_m2_s <= limit


def test_hoses_have_the_usual_bores(sound):
    # 5/8, 3/4, 1 in: common practice, no source; metric 19 and 25 mm: EN 1360 nominal sizes (memory)
    usual_m = (0.625 * INCH, 0.75 * INCH, 1.0 * INCH, 0.019, 0.025)
    for part in (part for part in sound if part.hose and part.path is FlowPath.SINGLE):
        assert any(part.hose.bore_m == pytest.approx(bore_m) for bore_m in usual_m)


# Not suitable for a class or DEF: DOE/NREL and ORNL abstracts, DOE E85 handbook (memory), ISO 22241-3 annex (memory)
NOT_SUITABLE = {
    "E10": "sbr silicone natural_rubber epdm lead_tin",
    "E25": "neoprene sbr silicone polyurethane natural_rubber epdm cork_leather zinc lead_tin",
    "E85": "neoprene sbr silicone polyurethane natural_rubber epdm cork_leather aluminium brass zinc lead_tin",
    "B5": "sbr natural_rubber epdm",
    "B20": "sbr natural_rubber epdm",
    "B100": "nbr neoprene sbr polyurethane natural_rubber epdm polypropylene cork_leather brass copper_bronze zinc "
    "lead_tin",
    "DEF": "polyurethane polyamide cork_leather carbon_steel aluminium brass copper_bronze zinc lead_tin",
}


def test_sound_parts_wet_no_unsuitable_material(sound):
    for part in sound:
        classes = [str(listing) for listing in part.listings]
        if part.nozzle and part.nozzle.service is NozzleService.DEF:
            classes = ["DEF"]
        if not part.listings and part.inlet and part.kind is not PartKind.CAP:
            classes = ["DEF"]
        for listing in classes:
            barred = {Material(word) for word in NOT_SUITABLE[listing].split()}
            assert not barred & set(part.wetted_materials), part.number


def test_coaxial_hoses_follow_the_system(sound):
    for part in (part for part in sound if part.hose and part.path is not FlowPath.SINGLE):
        assert part.hose.built_in_swivel is (part.kind is PartKind.CURB_HOSE)
        wide = part.hose.inner_tube_outside_diameter_m / part.hose.bore_m
        # balance carries the liquid in a wide inner tube, vacuum assist the vapour in a thin one (CARB, memory)
        assert wide > 0.6 if part.path is FlowPath.BALANCE else wide < 0.45


# ---- near misses: each breaks the published figure that its remark names

TRAPS = [
    ("thicker than a gasoline spout", lambda part: part.nozzle.spout_outside_diameter_m > 0.840 * INCH),
    ("thinner than SAE J285", lambda part: part.nozzle.spout_outside_diameter_m < 0.807 * INCH),
    ("shorter than 63.5 mm", lambda part: part.nozzle.spout_straight_length_m < 2.5 * INCH),
    ("less than 76.2 mm", lambda part: part.nozzle.spring_distance_m < 3.0 * INCH),
    ("listed for E85 with bare aluminium", lambda part: Material.ALUMINIUM in part.wetted_materials),
    ("latch without a no-pressure", lambda part: part.nozzle.hold_open and not part.nozzle.no_pressure_device),
    ("below what a car dispenser gives", lambda part: part.nozzle.maximum_flow_m3_s < 37.85 * L_MIN),
    ("above 39 L/min", lambda part: part.nozzle.minimum_flow_m3_s > 37.9 * L_MIN),
    ("balance inlet but no bellows", lambda part: part.path is FlowPath.BALANCE and not part.nozzle.bellows),
    ("24.1 mm", lambda part: part.nozzle.spout_outside_diameter_m > 0.937 * INCH),
    ("32.0 mm", lambda part: part.nozzle.spout_outside_diameter_m > 1.250 * INCH),
    ("thicker than a DEF spout may be", lambda part: part.nozzle.spout_outside_diameter_m > 0.0195),
    ("aluminium is not suitable for DEF", lambda part: Material.ALUMINIUM in part.wetted_materials),
    ("0.62 megohm", lambda part: part.resistance_ohm > 0.5e6),
    ("0.7 megohm", lambda part: part.resistance_ohm > 0.5e6),
    ("from 350 N", lambda part: part.breakaway.separation_minimum_n < 100 * LBF),
    ("up to 1650 N", lambda part: part.breakaway.separation_maximum_n > 350 * LBF),
    ("male outlet: needs an adaptor", lambda part: part.outlet.gender is Gender.MALE),
    ("so not above the curb hose", lambda part: part.breakaway.placements == {Placement.NOZZLE_END}),
    ("does not close the vapour path", lambda part: not part.breakaway.closes_vapour),
    ("12 g/m2 a day", lambda part: part.hose.permeation_kg_m2_s > 10 / 1000 / 86_400),
    ("carries no low-permeation marking", lambda part: not part.hose.low_permeation),
    ("longer than a public land site", lambda part: part.length_m > 18 * FOOT),
    ("its outlet thread is G", lambda part: part.inlet.thread is not part.outlet.thread),
    ("without built-in swivel", lambda part: not part.hose.built_in_swivel),
    ("260 000 ohm per metre", lambda part: part.hose.resistance_ohm_m > 70_000 / FOOT),
]


@pytest.mark.parametrize(("words", "broken"), TRAPS)
def test_a_near_miss_breaks_what_its_remark_names(reviewed, words, broken):
    assert broken(trap(reviewed, words))


def test_a_long_resistive_hose_fails_as_a_whole_though_each_metre_passes(reviewed):
    part = trap(reviewed, "though each metre passes")
    assert part.hose.resistance_ohm_m <= 70_000 / FOOT  # UL 330 (memory)
    assert part.length_m * part.hose.resistance_ohm_m > 1e6  # 1 megohm guidance, NFPA 77 (memory)


def test_stock_lengths_reach_the_published_limits_exactly(reviewed):
    lengths_m = [part.length_m for part in reviewed.parts if part.kind is PartKind.CURB_HOSE]
    assert any(length_m == pytest.approx(18 * FOOT, abs=1e-9) for length_m in lengths_m)  # Okla. 165:26-2-92(a)(1)
    assert any(length_m == pytest.approx(50 * FOOT, abs=1e-9) for length_m in lengths_m)  # Okla. 165:26-2-92(a)(3)
