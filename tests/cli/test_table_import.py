"""The command import turns a table into a survey that the other commands read."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

TABLE = "Hose,Pump,Product,Blend,Height (ft)\n1A,1,gasoline,10,7\n1B,1,gasoline,10,7\n"


def test_an_imported_table_can_be_planned(spoutline: Any, tmp_path: Path) -> None:
    table, out = tmp_path / "t.csv", tmp_path / "s.json"
    table.write_text(TABLE)
    assert spoutline("import", table, "--site", "Fern Hollow", "--out", out).code == 0
    survey = json.loads(out.read_text())
    assert [one["label"] for one in survey["positions"]] == ["1A", "1B"]
    assert survey["site"]["name"] == "Fern Hollow"
    assert spoutline("site", out).code == 0


def test_the_mapping_is_shown_and_can_be_changed(spoutline: Any, tmp_path: Path) -> None:
    table = tmp_path / "t.csv"
    table.write_text(TABLE)
    shown = spoutline("import", table, "--columns", "--column", "Pump=")
    assert "Hose  →  label" in shown.out
    assert "Pump  →  left out" in shown.out
    assert "outlet.height_m in ft" in shown.out
    assert spoutline("import", table, "--columns", "--column", "Pump").code == 2
    assert "--column COLUMN=FIELD" in spoutline("import", table, "--columns", "--map", "Pump=").err


def test_a_faulty_cell_is_named_and_nothing_is_written(spoutline: Any, tmp_path: Path) -> None:
    table, out = tmp_path / "t.csv", tmp_path / "s.json"
    table.write_text(TABLE.replace("1B,1,gasoline", "1B,1,soup"))
    done = spoutline("import", table, "--site", "Fern Hollow", "--out", out)
    assert done.code == 2
    assert "cell C3" in done.err
    assert not out.exists()
    assert spoutline("import", table).code == 2


def test_a_decimal_comma_is_read_where_it_is_said(spoutline: Any, tmp_path: Path) -> None:
    table = tmp_path / "t.csv"
    table.write_text("Hose;Product;Height (m)\n1A;E10;2,15\n")
    assert "cell C2" in spoutline("import", table, "--site", "Fern Hollow").err
    made = json.loads(spoutline("import", table, "--site", "Fern Hollow", "--decimal-comma").out)
    assert made["positions"][0]["outlet"]["height_m"] == 2.15
    assert made["positions"][0]["liquid"]["blend_percent"] == 10


def test_another_survey_answers_what_the_table_leaves_out(spoutline: Any, tmp_path: Path) -> None:
    table, like = tmp_path / "t.csv", tmp_path / "like.json"
    table.write_text("Label\n7\n")
    spoutline("demo", "marina", "--out", like)
    made = json.loads(spoutline("import", table, "--like", like).out)
    first = json.loads(like.read_text())["positions"][0]
    assert made["positions"][0] == {**first, "label": "7"}


MESSY = "Hose;Pump;Fuel;Share;Height\n1A;1;gasolin;10;7 ft\n1B;1;gasolin;10;2,1 m\nTotal;;;20;\n"


def test_a_messy_table_is_mended_remembered_and_read_again(spoutline: Any, tmp_path: Path) -> None:
    table, kept, out = tmp_path / "t.csv", tmp_path / "map.toml", tmp_path / "s.json"
    table.write_text(MESSY)
    columns = ("--column", "Share=liquid.blend_percent in %", "--column", "E=outlet.height_m", "--units", "si")
    tried = spoutline("import", table, "--site", "Fern Hollow", *columns, "--dry-run", "--json")
    told = json.loads(tried.out)
    assert tried.code == 1
    assert {one["cell"].rsplit(" ", 1)[1] for one in told["reports"]} == {"C2", "C3", "E3"}
    assert told["offers"] == [{"field": "liquid.family", "word": "gasolin", "nearest": "gasoline", "times": 2}]
    mended = (*columns, "--decimal-comma", "--replace", "liquid.family:gasolin=gasoline")
    done = spoutline("import", table, "--site", "Fern Hollow", *mended, "--save-map", kept, "--out", out, "--json")
    assert done.code == 0, done.err
    assert (json.loads(done.out)["new"], json.loads(done.out)["taken_in"]) == (2, True)
    heights = [one["outlet"]["height_m"] for one in json.loads(out.read_text())["positions"]]
    assert heights == [round(7 * 0.3048, 9), 2.1]  # 1 ft = 0.3048 m exactly (1959 agreement)
    again = spoutline("import", table, "--site", "Fern Hollow", "--map", kept, "--dry-run")
    assert again.code == 0
    assert "2 new" in again.out
    assert "titles are not those" not in again.out
    table.write_text(MESSY.replace("Share", "Part"))
    other = spoutline(
        "import",
        table,
        "--site",
        "Fern Hollow",
        "--map",
        kept,
        "--column",
        "Part=liquid.blend_percent in %",
        "--dry-run",
    )
    assert "titles are not those that the map was made for" in other.out


def test_rows_go_into_a_survey_that_is_there(spoutline: Any, tmp_path: Path) -> None:
    table, before, out = tmp_path / "t.csv", tmp_path / "before.json", tmp_path / "after.json"
    table.write_text(TABLE)
    assert spoutline("import", table, "--site", "Fern Hollow", "--out", before).code == 0
    table.write_text("Hose,Product,Blend\n1B,,85\n2A,diesel,5\n")
    told = json.loads(spoutline("import", table, "--into", before, "--dry-run", "--json").out)
    assert (told["new"], told["changed"], told["missing"]) == (1, 1, 1)
    changed = next(one for one in told["changes"] if one["change"] == "changed")
    assert changed["fields"] == [{"field": "liquid.blend_percent", "before": "10", "after": "85"}]
    assert spoutline("import", table, "--into", before, "--out", out).code == 0
    made = json.loads(out.read_text())["positions"]
    assert [(one["label"], one["liquid"]["blend_percent"]) for one in made] == [("1A", 10), ("1B", 85), ("2A", 5)]
    assert made[1]["outlet"]["height_m"] == round(7 * 0.3048, 9)  # what the row leaves out stays
    assert spoutline("import", table, "--into", before, "--take-out-missing", "--out", out).code == 0
    assert [one["label"] for one in json.loads(out.read_text())["positions"]] == ["1B", "2A"]
    assert "--out FILE" in spoutline("import", table, "--into", before, "--json").err
    assert spoutline("import", table, "--site", "x", "--take-out-missing").code == 2


def test_a_row_names_the_type_of_its_dispenser(spoutline: Any, own_database: Path, tmp_path: Path) -> None:
    types, table = tmp_path / "types.csv", tmp_path / "t.csv"
    types.write_text("name,hook.height_m,outlet.height_m\nRushwater 7,1.05,2.3\n")
    database = ("--database", own_database)
    assert spoutline(*database, "dispenser-type", "import", types).code == 0
    table.write_text("Hose,Pump,Product,Pump model,Height (m)\n1A,1,E10,rushwater 7,\n1B,1,B5,,2.1\n2A,2,B5,,\n")
    done = spoutline(*database, "import", table, "--site", "Fern Hollow")
    assert done.code == 0, done.err
    first, second, third = json.loads(done.out)["positions"]
    assert [one.get("dispenser_type", {}).get("name") for one in (first, second, third)] == ["Rushwater 7"] * 2 + [None]
    assert second["outlet"]["height_m"] == 2.1
    assert second["dispenser_type"]["hook"]["height_m"] == 1.05
    table.write_text("Hose,Pump,Product,Pump model\n1A,1,E10,Rushwater 70\n")
    refused = spoutline(*database, "import", table, "--site", "Fern Hollow")
    assert refused.code == 2
    assert "did you mean Rushwater 7?" in refused.err
