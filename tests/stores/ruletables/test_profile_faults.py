"""Faults in rule files: all of them at once, each with file, row, field, value and what would be right."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from spoutline import assets
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.limit import Jurisdiction, LimitId, LimitStatus
from spoutline.ruletables.load import built_in_profiles, load_rule_tables
from spoutline.ruletables.profiles import WrittenRow, copy_profile, profile_from_toml, profile_to_toml, with_row

BUILT_IN = {profile.id: profile for profile in built_in_profiles(assets.resources_folder())}
OWN = copy_profile(BUILT_IN["us_general"], "own_rules", "Invented county")
TEXT = profile_to_toml(OWN)
PLACE = "own_rules.toml"


def problems_of(action: Callable[[], object]) -> tuple[InputProblem, ...]:
    with pytest.raises(InputFault) as caught:
        action()
    return caught.value.problems


def faults_of(text: str) -> tuple[InputProblem, ...]:
    return problems_of(lambda: profile_from_toml(text, PLACE))


def edited(old: str, new: str) -> str:
    assert old in TEXT
    return TEXT.replace(old, new, 1)


@pytest.mark.parametrize(
    ("old", "new", "field", "wanted"),
    [
        ('id = "listing.e25_max"', 'id = "listing.e25max"', "listing.e25max", "did you mean listing.e25_max"),
        ('status = "secondary"', 'status = "secondry"', "status", "did you mean secondary"),
        ("clause = ", "claus = ", "claus", "did you mean clause"),
        ('unit = "in"', 'unit = "psi"', "unit", "mm"),
        ('unit = "in"\n', "", "unit", "mm"),
        ("value = 0.840", 'value = "0.840"', "value", "number"),
        ("value = 0.840", "value = true", "value", "number"),
        ("value = 0.840", "value = nan", "value", "number"),
        ("value = 0.840", "value = inf", "value", "number"),
        ("value = 0.840", "value = -0.840", "value", "more than 0"),
        ("value = 0.840", "value = 84.0", "value", "at most"),
        ("value = 0.840\n", "", "value", "must hold"),
        ("value = 0.840", "value = 2026-11-25", "value", "number"),
        ('value = "UL"', 'value = "XY"', "value", "UL, EN"),
        ('value = "UL"', 'value = "UL"\nunit = "in"', "unit", "leave the unit out"),
        ("value = true", 'value = "perhaps"', "value", "true or false"),
        ('"attended:reel:diesel"', '"attended:reel"', "value", "service:duty:family"),
        ('"attended:reel:diesel"', '"attended:reel:disel"', "value", "did you mean diesel"),
        ('edition = "us_general', 'edition = "" #', "edition", "at least 1"),
        ('id = "own_rules"', 'id = "../own"', "profile, id", "lower-case"),
        ("questions = ", "question = ", "question", "did you mean questions"),
        ('title = "Invented county"', "", "profile, title", "must be present"),
        ('title = "Listing scheme"\n', "", "title", "title"),
        ('id = "listing.e10_max"', 'id = "listing.scheme"', "id", "once"),
    ],
)
def test_a_fault_names_its_row_and_field_and_what_would_be_right(old: str, new: str, field: str, wanted: str) -> None:
    problems = faults_of(edited(old, new))
    assert any(field in problem.field and wanted in problem.wanted for problem in problems), problems
    assert all(problem.place == PLACE for problem in problems)


def test_every_fault_of_a_file_is_reported_at_once() -> None:
    text = edited("value = 0.840", "value = -1")
    text = text.replace('status = "verified"', 'status = "certain"', 1).replace('unit = "lbf"', 'unit = "kg"', 1)
    fields = [problem.field for problem in faults_of(text)]
    assert len(fields) == 3
    assert any("spout.gasoline_od_max" in field for field in fields)
    assert any("status" in field for field in fields)
    assert any("breakaway.separation_min" in field for field in fields)


def test_a_missing_row_is_named() -> None:
    rows = TEXT.split("\n\n[[limit]]\n")
    without = "\n\n[[limit]]\n".join(row for row in rows if not row.startswith('id = "bond.joint"'))
    (problem,) = faults_of(without)
    assert (problem.field, problem.wanted) == ("bond.joint", "this limit must have a row")


def test_broken_toml_is_an_input_fault_with_the_line() -> None:
    (problem,) = faults_of("id = ]\n")
    assert problem.place == PLACE
    assert "line 1" in problem.value


def test_rows_that_are_no_tables_are_refused() -> None:
    assert faults_of('id = "x"\ntitle = "x"\nedition = "1"\nlimit = 3\n')
    assert faults_of('id = "x"\ntitle = "x"\nedition = "1"\nlimit = [3]\n')


@pytest.mark.parametrize(
    ("limit_id", "printed", "unit", "other"),
    [
        # each value is allowed alone; beside the other row of the general profile it cannot stand
        (LimitId.LISTING_E25_MAX, "9", "%", "listing.e25_max"),
        (LimitId.LISTING_B20_MAX, "100", "%", "listing.b100_min"),
        (LimitId.SPOUT_GASOLINE_OD_MAX, "0.930", "in", "spout.diesel_car_od_min"),
        (LimitId.SPOUT_DIESEL_CAR_OD_MAX, "1.150", "in", "spout.diesel_truck_od_min"),
        (LimitId.SPOUT_DEF_OD_MAX, "21", "mm", "spout.gasoline_od_min"),
        (LimitId.FILLER_GASOLINE_OPENING, "0.930", "in", "spout.diesel_car_od_min"),
        (LimitId.FILLER_GASOLINE_OPENING, "0.800", "in", "filler.gasoline_opening"),
        (LimitId.BREAKAWAY_SEPARATION_MIN, "400", "lbf", "breakaway.separation_max"),
        (LimitId.NOZZLE_TEMPERATURE_MAX, "-30", "°C", "nozzle.temperature_max"),
        (LimitId.BREAKAWAY_ANGLE_ADVICE, "70", "°", "breakaway.angle_max"),
        (LimitId.FLOW_WANTED_CAR, "50", "L/min", "flow.supply_car"),
        (LimitId.HOSE_LENGTH_MAX, "60", "ft", "hose.length_max_fenced"),
    ],
)
def test_a_row_that_contradicts_another_is_refused(limit_id: LimitId, printed: str, unit: str, other: str) -> None:
    problems = problems_of(lambda: changed(OWN, limit_id, printed, unit))
    assert any(other in problem.wanted or other == problem.field for problem in problems)


def changed(profile: Jurisdiction, limit_id: LimitId, printed: str, unit: str) -> Jurisdiction:
    return with_row(
        profile,
        WrittenRow(
            id=limit_id,
            printed=printed,
            unit=unit,
            source="Invented County Code",
            clause="7",
            edition="2026",
            status=LimitStatus.VERIFIED,
        ),
    )


@pytest.mark.parametrize(
    ("limit_id", "printed", "unit", "wanted"),
    [
        (LimitId.HOSE_LENGTH_MAX, "16", "psi", "length"),
        (LimitId.HOSE_LENGTH_MAX, "16,5", "ft", "decimal point"),
        (LimitId.HOSE_LENGTH_MAX, "sixteen", "ft", "number"),
        (LimitId.HOSE_LENGTH_MAX, "NaN", "ft", "number"),
        (LimitId.HOSE_LENGTH_MAX, "1e999", "ft", "at most"),
        (LimitId.SWIVEL_PLANES_CAR, "1.5", "", "whole"),
        (LimitId.SWIVEL_PLANES_CAR, "", "", "must hold"),
        (LimitId.HOLD_OPEN_SELF, "maybe", "", "true or false"),
        (LimitId.VAPOUR_REMOVAL, "sometimes", "", "allowed, not_allowed, ask"),
        (LimitId.NOZZLE_MANUAL_CASES, "self:boat:diesel", "", "duty"),
    ],
)
def test_a_changed_row_is_held_to_its_kind(limit_id: LimitId, printed: str, unit: str, wanted: str) -> None:
    problems = problems_of(lambda: changed(OWN, limit_id, printed, unit))
    assert any(wanted in problem.wanted for problem in problems), problems


def test_a_row_without_a_source_is_refused() -> None:
    problems = problems_of(
        lambda: with_row(
            OWN,
            WrittenRow(
                id=LimitId.HOSE_LENGTH_MAX,
                printed="16",
                unit="ft",
                source=" ",
                clause="7",
                edition="2026",
                status=LimitStatus.VERIFIED,
            ),
        )
    )
    assert [problem.field for problem in problems] == ["hose.length_max, source"]


def test_a_built_in_profile_is_copied_before_it_is_changed() -> None:
    (problem,) = problems_of(lambda: changed(BUILT_IN["us_general"], LimitId.HOSE_LENGTH_MAX, "16", "ft"))
    assert "copy" in problem.wanted


@pytest.mark.parametrize("new_id", ["", "us_general", "Own", "1st", "a b", "../x", "a" * 41])
def test_a_copy_needs_an_id_of_its_own(new_id: str) -> None:
    assert problems_of(lambda: copy_profile(BUILT_IN["us_general"], new_id, "Copy"))


def test_an_unknown_profile_is_answered_with_the_nearest_known_ones(tmp_path: Path) -> None:
    resources = assets.resources_folder()
    (problem,) = problems_of(lambda: load_rule_tables("us_genral", resources=resources, own_profiles=tmp_path))
    assert "did you mean us_general" in problem.wanted
    assert problems_of(lambda: load_rule_tables("../../etc/passwd", resources=resources, own_profiles=tmp_path))


def test_resources_without_rule_tables_are_a_store_fault(tmp_path: Path) -> None:
    with pytest.raises(StoreFault, match="rule tables"):
        built_in_profiles(tmp_path)


def copied_resources(tmp_path: Path) -> Path:
    for path in (assets.resources_folder() / "rules").rglob("*.toml"):
        target = tmp_path / path.relative_to(assets.resources_folder())
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(path.read_bytes())
    return tmp_path


def test_faults_in_several_general_files_come_together(tmp_path: Path) -> None:
    resources = copied_resources(tmp_path)
    hose, spout = resources / "rules/limits/hose.toml", resources / "rules/limits/spout.toml"
    hose.write_text(hose.read_text("utf-8").replace('unit = "ft"', 'unit = "lbf"', 1), "utf-8")
    spout.write_bytes(b"\xff" + spout.read_bytes())
    places = {problem.place for problem in problems_of(lambda: built_in_profiles(resources))}
    assert places == {"hose.toml", "spout.toml"}


def test_a_limit_in_two_files_and_a_stray_table_are_refused(tmp_path: Path) -> None:
    resources = copied_resources(tmp_path)
    limits = resources / "rules/limits"
    (limits / "zz_extra.toml").write_bytes((limits / "reach.toml").read_bytes() + b"\n[other]\n")
    wanted = {problem.wanted for problem in problems_of(lambda: built_in_profiles(resources))}
    assert wanted == {"each limit stands in one file", "only [[limit]] rows stand here"}


def test_a_built_in_file_is_named_like_its_profile(tmp_path: Path) -> None:
    resources = copied_resources(tmp_path)
    folder = resources / "rules/jurisdictions"
    (folder / "europe.toml").rename(folder / "eu.toml")
    (problem,) = problems_of(lambda: built_in_profiles(resources))
    assert (problem.place, problem.wanted) == ("eu.toml", "the file is named eu.toml, so the id must be eu")


def test_a_general_row_that_is_missing_everywhere_is_named(tmp_path: Path) -> None:
    resources = copied_resources(tmp_path)
    (resources / "rules/limits/reach.toml").write_text("", "utf-8")
    fields = {problem.field for problem in problems_of(lambda: built_in_profiles(resources))}
    assert fields == {"reach.slack_fraction", "reach.slack_min", "reach.ground_clearance", "reach.whip_margin"}
