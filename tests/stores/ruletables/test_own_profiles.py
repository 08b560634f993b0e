"""Own profiles: copied, changed, written and read back exactly; saved whole or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from spoutline import assets
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.limit import Jurisdiction, LimitId, LimitStatus
from spoutline.model.plain_values import hidden_sign
from spoutline.ruletables.load import built_in_profiles, load_rule_tables
from spoutline.ruletables.own_profiles import (
    own_profile,
    own_profile_ids,
    own_profiles,
    remove_own_profile,
    save_own_profile,
)
from spoutline.ruletables.profiles import WrittenRow, copy_profile, profile_from_toml, profile_to_toml, with_row

BUILT_IN = {profile.id: profile for profile in built_in_profiles(assets.resources_folder())}
GENERAL = BUILT_IN["us_general"]
# any text that a person can enter: TOML and UTF-8 hold every character but surrogates
entered = st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=60).filter(
    lambda text: text.strip() and not hidden_sign(text)
)


def archived_city(profile: Jurisdiction) -> Jurisdiction:
    # Chicago (archived municipal code): 16 ft (4.88 m), kept as an example of a local exception
    return with_row(
        profile,
        WrittenRow(
            id=LimitId.HOSE_LENGTH_MAX,
            printed="16",
            unit="ft",
            source="archived municipal code",
            clause="hose length",
            edition="archived",
            status=LimitStatus.VERIFIED,
        ),
    )


@pytest.mark.parametrize("base", BUILT_IN.values(), ids=BUILT_IN.keys())
def test_a_copy_holds_the_rows_of_its_base_and_survives_the_file(base: Jurisdiction) -> None:
    copy = copy_profile(base, "own_rules", "Invented county")
    assert not copy.built_in
    assert copy.limits == base.limits
    assert copy.questions == base.questions
    assert copy.edition.startswith(f"{base.id} {base.edition}")
    text = profile_to_toml(copy)
    assert profile_from_toml(text, "own_rules.toml") == copy
    assert profile_to_toml(profile_from_toml(text, "own_rules.toml")) == text


def test_a_changed_row_converts_its_unit_and_leaves_the_others() -> None:
    copy = copy_profile(GENERAL, "own_rules", "Invented city")
    city = archived_city(copy)
    assert city.number(LimitId.HOSE_LENGTH_MAX) == pytest.approx(4.8768, rel=1e-9)  # 16 ft, exact foot
    assert city.limit(LimitId.HOSE_LENGTH_MAX).title == copy.limit(LimitId.HOSE_LENGTH_MAX).title
    assert [row.id for row in city.limits] == list(LimitId)
    assert sum(new != old for new, old in zip(city.limits, copy.limits, strict=True)) == 1


def test_the_edition_tells_a_changed_profile_from_an_unchanged_one() -> None:
    copy = copy_profile(GENERAL, "own_rules", "Invented city")
    city = archived_city(copy)
    assert city.edition != copy.edition
    assert archived_city(city).edition == city.edition


def test_an_edit_made_by_hand_in_the_file_shows_in_the_edition() -> None:
    text = profile_to_toml(copy_profile(GENERAL, "own_rules", "Invented city"))
    by_hand = profile_from_toml(text.replace("value = 18\n", "value = 17\n"), "own_rules.toml")
    assert by_hand.number(LimitId.HOSE_LENGTH_MAX) == pytest.approx(17 * 0.3048, rel=1e-9)
    assert by_hand.edition != profile_from_toml(text, "own_rules.toml").edition


def test_an_optional_row_can_be_emptied_and_stays_empty_in_the_file() -> None:
    copy = copy_profile(GENERAL, "own_rules", "Invented city")
    emptied = with_row(
        copy,
        WrittenRow(
            id=LimitId.HOSE_LENGTH_MAX,
            printed="",
            unit="ft",
            source="no figure",
            clause="none",
            edition="2026",
            status=LimitStatus.MEMORY,
            note="asked",
        ),
    )
    assert emptied.optional_number(LimitId.HOSE_LENGTH_MAX) is None
    assert profile_from_toml(profile_to_toml(emptied), "own_rules.toml") == emptied


@pytest.mark.parametrize(
    ("limit_id", "printed", "value"),
    [
        (LimitId.HOLD_OPEN_SELF, "no", False),
        (LimitId.HOLD_OPEN_MARINE, "Yes", True),
        (LimitId.VAPOUR_REMOVAL, " allowed ", "allowed"),
        (
            LimitId.NOZZLE_MANUAL_CASES,
            "attended:marine:diesel, attended:reel:diesel",
            ("attended:marine:diesel", "attended:reel:diesel"),
        ),
        (LimitId.NOZZLE_MANUAL_CASES, "", ()),
    ],
)
def test_words_and_cases_are_entered_as_they_are_shown(limit_id: LimitId, printed: str, value: object) -> None:
    copy = copy_profile(GENERAL, "own_rules", "Invented city")
    changed = with_row(
        copy,
        WrittenRow(
            id=limit_id,
            printed=printed,
            unit="",
            source="Invented City Code",
            clause="9",
            edition="2026",
            status=LimitStatus.SECONDARY,
        ),
    )
    assert changed.limit(limit_id).value == value
    assert profile_from_toml(profile_to_toml(changed), "own_rules.toml") == changed


@settings(max_examples=up_to(30))
@given(title=entered, source=entered, note=entered, tenths=st.integers(min_value=60, max_value=180))
def test_whatever_text_a_person_enters_comes_back_from_the_file(
    title: str, source: str, note: str, tenths: int
) -> None:
    copy = with_row(
        copy_profile(GENERAL, "own_rules", title),
        WrittenRow(
            id=LimitId.HOSE_LENGTH_MAX,
            printed=f"{tenths / 10:.1f}",
            unit="ft",
            source=source,
            clause=source,
            edition="2026",
            status=LimitStatus.MEMORY,
            note=note,
        ),
    )
    assert profile_from_toml(profile_to_toml(copy), "own_rules.toml") == copy
    assert copy.number(LimitId.HOSE_LENGTH_MAX) == pytest.approx(tenths * 0.03048, rel=1e-9)


def test_a_saved_profile_is_listed_loaded_and_removed(tmp_path: Path) -> None:
    folder = tmp_path / "jurisdictions"
    assert own_profile_ids(folder) == ()
    city = archived_city(copy_profile(GENERAL, "own_rules", "Invented city"))
    path = save_own_profile(folder, city)
    assert path == folder / "own_rules.toml"
    assert own_profile_ids(folder) == ("own_rules",)
    assert own_profiles(folder) == (city,)
    tables = load_rule_tables("own_rules", resources=assets.resources_folder(), own_profiles=folder)
    assert tables.jurisdiction == city
    remove_own_profile(folder, "own_rules")
    assert own_profile_ids(folder) == ()
    with pytest.raises(InputFault):
        remove_own_profile(folder, "own_rules")


def test_only_own_profiles_can_be_removed_and_the_message_names_them(tmp_path: Path) -> None:
    with pytest.raises(InputFault, match="only your own can be removed, and there is none yet"):
        remove_own_profile(tmp_path, "us_general")
    save_own_profile(tmp_path, copy_profile(GENERAL, "my_county", "My county"))
    with pytest.raises(InputFault, match="those are my_county"):
        remove_own_profile(tmp_path, "us_general")


def test_a_built_in_profile_is_never_saved(tmp_path: Path) -> None:
    with pytest.raises(InputFault, match="copy the profile"):
        save_own_profile(tmp_path, GENERAL)


def test_a_save_that_fails_leaves_the_former_file_and_no_rest(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    copy = copy_profile(GENERAL, "own_rules", "Invented city")
    save_own_profile(tmp_path, copy)

    def full(self: Path, target: Path) -> Path:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "replace", full)
    with pytest.raises(StoreFault, match="No space left"):
        save_own_profile(tmp_path, archived_city(copy))
    assert [path.name for path in tmp_path.iterdir()] == ["own_rules.toml"]
    assert own_profile(tmp_path, "own_rules") == copy


def test_a_folder_that_cannot_be_made_is_a_store_fault(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", "utf-8")
    with pytest.raises(StoreFault, match="cannot be written"):
        save_own_profile(tmp_path / "file" / "profiles", copy_profile(GENERAL, "own_rules", "Invented city"))


def test_a_renamed_file_is_refused_because_its_id_differs(tmp_path: Path) -> None:
    path = save_own_profile(tmp_path, copy_profile(GENERAL, "own_rules", "Invented city"))
    path.rename(tmp_path / "other.toml")
    with pytest.raises(InputFault, match=r"the id must be other"):
        own_profile(tmp_path, "other")


def test_faults_of_several_own_files_come_together(tmp_path: Path) -> None:
    for name in ("first", "second"):
        (tmp_path / f"{name}.toml").write_text("id = 1\n", "utf-8")
    (tmp_path / "third.toml").write_bytes(b"\xff\xfe")
    with pytest.raises(InputFault) as caught:
        own_profiles(tmp_path)
    assert {problem.place for problem in caught.value.problems} == {"first.toml", "second.toml", "third.toml"}


@pytest.mark.parametrize("stray", ["../outside", "own_rules.toml", "own rules", ""])
def test_an_id_never_reaches_outside_the_folder(tmp_path: Path, stray: str) -> None:
    folder = tmp_path / "profiles"
    save_own_profile(folder, copy_profile(GENERAL, "own_rules", "Invented city"))
    (tmp_path / "outside.toml").write_text("", "utf-8")
    with pytest.raises(InputFault, match="no such rule profile"):
        own_profile(folder, stray)
    with pytest.raises(InputFault, match="no such rule profile"):
        remove_own_profile(folder, stray)
    assert (tmp_path / "outside.toml").exists()
