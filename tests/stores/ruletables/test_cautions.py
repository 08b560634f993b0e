"""The caution table: complete for each kind of job, sourced, and never claiming more than advice."""

from __future__ import annotations

from pathlib import Path

import pytest

from spoutline import assets
from spoutline.model.caution import CautionCondition, CautionSeverity
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.limit import LimitStatus
from spoutline.ruletables.cautions import cautions_from_toml, load_caution_table, load_cautions

TABLE = load_caution_table(assets.resources_folder())
TEXT = (assets.resources_folder() / "cautions" / "en.toml").read_text(encoding="utf-8")
BY_ID = {caution.id: caution for caution in TABLE.cautions}

GASOLINE_JOB = {CautionCondition.FLAMMABLE, CautionCondition.GASOLINE, CautionCondition.BREAKAWAY}
DEF_JOB = {CautionCondition.DEF}


def ids_for(conditions: set[CautionCondition]) -> set[str]:
    return {caution.id for caution in TABLE.chosen(conditions)}


def test_every_caution_says_what_why_and_what_to_do_with_source_and_status() -> None:
    for caution in TABLE.cautions:
        assert caution.hazard
        assert caution.why.endswith(".")
        assert caution.what_to_do.endswith(".")
        assert caution.source
        assert caution.status in LimitStatus
    assert TABLE.edition
    assert load_cautions(assets.resources_folder()) == TABLE.cautions


def test_every_condition_and_every_signal_word_is_used() -> None:
    assert {condition for caution in TABLE.cautions for condition in caution.applies} == set(CautionCondition)
    assert {caution.severity for caution in TABLE.cautions} == set(CautionSeverity)


def test_every_job_isolates_barricades_and_defers_to_local_rules_and_licensed_people() -> None:
    # 29 CFR 1910.147(d): isolate, apply the device, release stored energy, verify, then work
    for conditions in (set[CautionCondition](), GASOLINE_JOB, DEF_JOB):
        assert {"local_rules", "qualified_people", "lock_out", "barricade"} <= ids_for(conditions)
    lock_out = BY_ID["lock_out"].what_to_do
    assert all(word in lock_out for word in ("isolate", "lock", "tag", "stored energy", "try to start"))
    assert "authority having jurisdiction" in BY_ID["local_rules"].what_to_do
    assert "licen" in BY_ID["qualified_people"].what_to_do


def test_a_fuel_job_drains_keeps_ignition_away_bonds_and_leak_tests() -> None:
    # IFC 2018 clause 2305.4 on smoking, flame and engines; PEI RP400 on continuity
    assert {
        "ignition_sources",
        "drain_first",
        "static_bond",
        "leak_test",
        "labels",
        "breakaway_fitting",
        "drive_off_check",
    } <= ids_for(GASOLINE_JOB)
    assert all(word in BY_ID["ignition_sources"].what_to_do for word in ("smoking", "flame", "engines off"))
    assert "before the position goes back into service" in BY_ID["static_bond"].what_to_do.casefold()


def test_a_def_job_speaks_of_cold_materials_and_parts_apart_and_not_of_fire_at_the_hose() -> None:
    chosen = ids_for(DEF_JOB)
    assert {"def_cold", "def_materials", "def_apart_from_fuel", "def_leak_test"} <= chosen
    assert not chosen & {"ignition_sources", "static_bond", "drain_first", "gasoline_vapour", "labels"}
    assert "-11.5 °C" in BY_ID["def_cold"].why  # ISO 22241-3, from memory


def test_removing_vapour_recovery_caps_every_path_and_tells_the_agency() -> None:
    # Connecticut CGS 22a-174e: every path above and below ground; 40 CFR 51.126(b)
    chosen = ids_for(GASOLINE_JOB | {CautionCondition.VAPOUR_REMOVED})
    assert {"vapour_capping", "vapour_pipe_explosive", "vapour_notice"} <= chosen
    assert "above and below ground" in BY_ID["vapour_capping"].what_to_do
    assert "vapour_paths" not in chosen


@pytest.mark.parametrize(
    ("condition", "caution_id"),
    [
        (CautionCondition.ETHANOL_ABOVE_10, "ethanol_change"),  # IFC 2018 clause 2306.8.3: review before dispensing
        (CautionCondition.BIODIESEL_ABOVE_20, "biodiesel_change"),  # 76 FR 39095
        (CautionCondition.VAPOUR_PRESENT, "vapour_paths"),
        (CautionCondition.REEL, "reel_energy"),
        (CautionCondition.RETRACTOR, "retractor_tension"),  # Okla. 165:26-2-91(d)
        (CautionCondition.MARINE, "marine_fuelling"),
        (CautionCondition.HOLD_OPEN, "hold_open_check"),
        (CautionCondition.SINGLE_USE_BREAKAWAY, "single_use_breakaway"),
        (CautionCondition.RECONNECTABLE_BREAKAWAY, "reconnectable_breakaway"),
        (CautionCondition.OVERHEAD, "overhead_work"),
        (CautionCondition.LOW_TEMPERATURE, "cold_work"),
        (CautionCondition.DIESEL_FAMILY, "diesel_contact"),
    ],
)
def test_a_condition_brings_its_caution_and_its_absence_leaves_it_out(
    condition: CautionCondition, caution_id: str
) -> None:
    assert caution_id in ids_for({CautionCondition.FLAMMABLE, condition})
    assert caution_id not in ids_for({CautionCondition.FLAMMABLE})


def test_a_fuel_change_asks_for_labels_and_official_review() -> None:
    # IFC 2018 clause 2306.8.3: review by the fire official before dispensing the changed fuel
    assert all(
        word in BY_ID["ethanol_change"].what_to_do for word in ("labels", "fire official", "before the first sale")
    )


def test_no_caution_claims_approval_or_compliance() -> None:
    words = " ".join(f"{caution.hazard} {caution.why} {caution.what_to_do}" for caution in TABLE.cautions).casefold()
    assert "compliant" not in words
    assert "is approved" not in words
    assert "is safe" not in words


def faults_of(text: str) -> list[str]:
    with pytest.raises(InputFault) as caught:
        cautions_from_toml(text, "en.toml")
    return [str(problem) for problem in caught.value.problems]


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('severity = "notice"', 'severity = "notise"', ("row 1 (local_rules), severity", "did you mean notice")),
        ('applies = ["reel"]', 'applies = ["real"]', ("row 19 (reel_energy), applies", "'real'", "did you mean reel")),
        ('applies = ["reel"]', "applies = []", ("reel_energy", "applies")),
        ("what_to_do = ", "todo = ", ("todo", "did you mean")),
        ('id = "lock_out"', 'id = "local_rules"', ("stands once",)),
        ('language = "en"', "", ("language", "must be present")),
        ('why = "A sale', 'why = "" # "A sale', ("lock_out", "why")),
    ],
)
def test_a_fault_names_row_field_and_what_would_be_right(old: str, new: str, words: tuple[str, ...]) -> None:
    assert old in TEXT
    faults = faults_of(TEXT.replace(old, new, 1))
    assert any(all(word in fault for word in words) for fault in faults), faults


def test_all_faults_come_at_once_and_an_empty_table_is_one() -> None:
    assert len(faults_of(TEXT.replace('status = "memory"', 'status = "hearsay"'))) > 3
    assert faults_of('language = "en"\nedition = "1"\n')


def test_a_language_without_a_table_is_a_store_fault(tmp_path: Path) -> None:
    with pytest.raises(StoreFault, match="cannot be read"):
        load_cautions(tmp_path, "xx")
