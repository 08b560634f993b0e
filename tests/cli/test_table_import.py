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
    shown = spoutline("import", table, "--columns", "--map", "Pump=")
    assert "Hose  →  label" in shown.out
    assert "Pump  →  left out" in shown.out
    assert "outlet.height_m in ft" in shown.out
    assert spoutline("import", table, "--columns", "--map", "Pump").code == 2


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
