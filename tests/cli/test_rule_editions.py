"""`profile` as the keeper of local rules uses it: changed with a source, compared, published, its effect seen."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from program_runs import Spoutline
from spoutline.input_bounds.toml_text import toml_table

Run = Callable[..., tuple[int, str, str]]
GASOLINE = {"family": "gasoline", "blend_percent": 10}
ROW = ("--source", "County code 12", "--clause", "4.2", "--edition", "2026", "--status", "verified")
# NIST HB 44 and NFPA 30A put a free hose at 18 ft; what a county asks here is invented
SHORTER = ("hose.length_max", "--value", "3", "--unit", "ft")


@pytest.fixture
def rules(shared_database: Path, spoutline: Spoutline, tmp_path: Path) -> Run:
    def run(*words: object) -> tuple[int, str, str]:
        given = ("--database", str(shared_database), "--profiles", str(tmp_path / "profiles"))
        done = spoutline(*given, *words)
        return done.code, done.out, done.err

    assert run("profile", "copy", "us_general", "my_county")[0] == 0
    return run


def told(rules: Run, *words: object) -> dict[str, object]:
    done = json.loads(rules("profile", *words, "--json")[1])
    assert isinstance(done, dict)
    return done


def test_a_copy_differs_in_nothing_until_it_is_changed(rules: Run) -> None:
    assert told(rules, "compare", "my_county")["rows"] == []
    assert told(rules, "compare", "my_county")["against"] == "us_general"
    assert rules("profile", "set", "my_county", *SHORTER, *ROW)[0] == 0
    (row,) = told(rules, "compare", "my_county")["rows"]  # type: ignore[misc]
    assert (row["before"]["value"], row["after"]["value"]) == ("18", "3")
    assert (row["after"]["source"], row["after"]["clause"]) == ("County code 12", "4.2")
    assert rules("rules", "compare", "my_county")[1] == rules("profile", "compare", "my_county")[1]


def test_a_built_in_table_is_held_against_the_general_one(rules: Run) -> None:
    """The rows that ``europe`` overrides stand in its table; no other may differ."""
    from spoutline import assets

    file = assets.resources_folder() / "rules" / "jurisdictions" / "europe.toml"
    written = {row["id"] for row in toml_table(file.read_text(encoding="utf-8"), "europe", "rules")["override"]}
    shown = {row["id"] for row in told(rules, "compare", "europe")["rows"]}  # type: ignore[attr-defined]
    assert shown <= written
    assert {"listing.scheme", "spout.gasoline_od_max"} <= shown


def test_an_edition_of_own_rules_is_an_answer_looked_at_before_it_is_given(rules: Run, tmp_path: Path) -> None:
    """NIST HB 44 and NFPA 30A put a free hose at 18 ft; under 3 ft, invented, no hose reaches a car."""
    published = ("--by", "A. Keeper", "--note")
    assert rules("profile", "publish", "my_county", *published, "As copied.")[0] == 0
    assert rules("profile", "set", "my_county", *SHORTER, *ROW)[0] == 0
    assert rules("profile", "publish", "my_county", *published, "Shorter hoses.")[0] == 0
    path = tmp_path / "survey.json"
    path.write_text(json.dumps({"site": {"name": "S"}, "positions": [{"label": "1", "liquid": GASOLINE}]}))
    assert rules("whatif", path, "--jurisdiction", "my_county@1")[0] == 0
    code, out, _ = rules("whatif", path, "--jurisdiction", "my_county@2")
    assert code == 1
    assert "no set fits any more" in out
    code, out, _ = rules("whatif", path, "--jurisdiction", "my_county@1", "--jurisdiction", "my_county@2", "--json")
    assert [one["answer"] for one in json.loads(out)["columns"]] == ["my_county@1", "my_county@2"]


@pytest.mark.parametrize("lacking", ["--source", "--clause", "--edition"])
def test_a_row_without_a_source_cannot_be_saved(rules: Run, lacking: str) -> None:
    words = list(ROW)
    words[words.index(lacking) + 1] = "  "
    code, _, err = rules("profile", "set", "my_county", *SHORTER, *words)
    assert code == 2
    assert lacking.removeprefix("--") in err
    assert told(rules, "compare", "my_county")["rows"] == []


def test_bad_rows_are_refused_with_what_would_be_right(rules: Run) -> None:
    for words, wanted in (
        (("my_county", "hose.length_maximum", "--value", "3"), "hose.length_max"),
        (("my_county", "hose.length_max", "--value", "3", "--unit", "kg"), "unit"),
        (("us_general", *SHORTER), "copy"),
    ):
        code, _, err = rules("profile", "set", *words, *ROW)
        assert code == 2
        assert wanted in err


def test_recalled_figures_are_looked_at_before_publishing(rules: Run) -> None:
    rules("profile", "set", "my_county", *SHORTER, *ROW)
    assert rules("profile", "check", "my_county")[0] == 0
    rules("profile", "set", "my_county", *SHORTER, *ROW[:-1], "memory")
    code, out, _ = rules("profile", "check", "my_county")
    assert code == 1
    assert "hose.length_max" in out


def test_editions_are_numbered_and_never_change(rules: Run, tmp_path: Path) -> None:
    publish = ("profile", "publish", "my_county", "--by", "Ada Fenn", "--note")
    assert rules(*publish, "as copied")[0] == 0
    code, _, err = rules(*publish, "again")
    assert code == 2
    assert "nothing changed" in err
    rules("profile", "set", "my_county", *SHORTER, *ROW)
    assert told(rules, "editions", "my_county")["changed_since"] is True
    file = next((tmp_path / "profiles" / "editions").glob("my_county@1.toml"))
    before = file.read_bytes()
    assert rules(*publish, "shorter hose")[0] == 0
    assert file.read_bytes() == before
    numbers = [one["edition"] for one in told(rules, "editions", "my_county")["editions"]]  # type: ignore[attr-defined]
    assert numbers == ["my_county@1", "my_county@2"]
    (row,) = told(rules, "compare", "my_county@2", "my_county@1")["rows"]  # type: ignore[misc]
    assert row["id"] == "hose.length_max"
    assert rules(*publish[:-1], "--note", " ")[0] == 2
    assert rules("profile", "show", "my_county@3")[0] == 2
    assert rules("profile", "publish", "europe", "--by", "Ada Fenn", "--note", "mine")[0] == 2


def test_the_effect_on_stations_is_seen_before(rules: Run, written: Callable[..., Path]) -> None:
    """A hose of at most 3 ft reaches no filler at 2 m (6.6 ft): every set breaks."""
    survey = written({"label": "1", "liquid": GASOLINE})
    rules("profile", "publish", "my_county", "--by", "Ada Fenn", "--note", "as copied")
    rules("profile", "set", "my_county", *SHORTER, *ROW)
    document = told(rules, "effect", "my_county", "--surveys", survey)
    assert document["against"] == "my_county@1"
    (position,) = document["positions"]  # type: ignore[misc]
    assert position["effect"] == "breaks"
    assert rules("profile", "effect", "us_general", "--surveys", survey)[0] == 2
    content = json.loads(survey.read_text())
    for jurisdiction, code in (("my_county", 1), ("my_county@1", 0)):
        content["site"]["jurisdiction"] = jurisdiction
        survey.write_text(json.dumps(content))
        assert rules("plan", survey)[0] == code


def test_rules_are_written_as_a_paper(spoutline: Spoutline, own_database: Path, tmp_path: Path) -> None:
    paper, table = tmp_path / "rules.pdf", tmp_path / "rules.toml"
    done = spoutline("--database", str(own_database), "profile", "export", "us_general", "--pdf", str(paper))
    assert (done.code, done.out) == (0, ""), done.err
    assert paper.read_bytes().startswith(b"%PDF-")
    both = ("--out", str(table), "--pdf", str(tmp_path / "again.pdf"))
    assert spoutline("--database", str(own_database), "profile", "export", "us_general", *both).code == 0
    assert table.read_text(encoding="utf-8").strip()
