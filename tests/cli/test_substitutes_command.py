"""`substitutes`: what could hang in a place, as text and as a document, with its exit codes."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import jsonschema
import pytest

TOO_FAR = {
    "label": "far",
    "liquid": {"family": "gasoline", "blend_percent": 10},
    "filler": {"distance_m": 7.0},
}


def test_the_document_lists_what_could_hang_there_and_satisfies_its_schema(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    path = written()
    done = spoutline("substitutes", path, "1", "nozzle", "--misfits", "--json")
    assert done.code == 0
    document = json.loads(done.out)
    schema = json.loads(spoutline("schema", "--output", "substitutes").out)
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(document)
    plan = json.loads(spoutline("plan", path, "--json").out)["positions"][0]
    assert document["slot"] == "nozzle"
    assert document["set"] == [link["part_number"] for link in plan["set"]]
    assert document["set_price_minor"] == plan["price_minor"]
    assert document["fitting"]
    for one in document["fitting"]:
        assert one["part_number"] in one["set"]
        assert one["set_price_minor"] - one["price_difference_minor"] == plan["price_minor"]
    assert document["misfits"]
    assert all(one["reason"] for one in document["misfits"])
    listed = {one["part_number"] for one in (*document["fitting"], *document["misfits"])}
    assert document["part_number"] not in listed


@pytest.mark.parametrize(
    "every", [pytest.param(5, marks=pytest.mark.in_part), pytest.param(1, marks=pytest.mark.at_length)]
)
def test_whynot_agrees_with_the_list_part_by_part(every: int, spoutline: Any, written: Callable[..., Path]) -> None:
    path = written()
    document = json.loads(spoutline("substitutes", path, "1", "swivel", "--misfits", "--json").out)
    for one in document["fitting"][::every]:
        assert spoutline("whynot", path, "1", one["part_number"]).code == 0
    for one in document["misfits"][::every]:
        assert spoutline("whynot", path, "1", one["part_number"]).code == 1


def test_the_text_tells_price_difference_and_reason(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written()
    document = json.loads(spoutline("substitutes", path, "1", "breakaway", "--misfits", "--json").out)
    by_place = spoutline("substitutes", path, "1", "breakaway")
    by_number = spoutline("substitutes", path, "1", document["part_number"])
    assert by_place.out == by_number.out
    lines = by_place.out.splitlines()
    assert sum(line.startswith("✓") for line in lines) == len(document["fitting"])
    assert not any(line.startswith("✗") for line in lines)
    with_misfits = spoutline("substitutes", path, "1", "breakaway", "--misfits").out.splitlines()
    assert sum(line.startswith("✗") for line in with_misfits) == len(document["misfits"])
    dearest = max(document["fitting"], key=lambda one: one["price_difference_minor"])
    line = next(line for line in lines if f"✓ {dearest['part_number']}" in line)
    minor = dearest["price_difference_minor"]
    assert f"+{minor // 100:,}.{minor % 100:02}" in line


def test_a_position_without_a_set_says_so_with_exit_code_1(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written(TOO_FAR)
    done = spoutline("substitutes", path, "far", "nozzle")
    assert done.code == 1
    assert "no set" in done.out
    document = json.loads(spoutline("substitutes", path, "far", "nozzle", "--json").out)
    assert document["set"] == []
    assert document["slot"] is None


def test_an_unknown_place_position_or_part_is_bad_input(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written()
    for place, words in (("splitter", "the set has"), ("QW-N999", "name a part of the set"), ("", "name a part")):
        done = spoutline("substitutes", path, "1", place)
        assert done.code == 2
        assert words in done.err
    done = spoutline("substitutes", path, "9", "nozzle")
    assert done.code == 2
    assert "position" in done.err
    assert spoutline("schema", "--output", "nothing").code == 2


def test_rows_name_what_parts_differ_in_and_the_head_the_part_itself(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    head, _count, *rows = spoutline("substitutes", written(), "1", "breakaway", "--units", "si").out.splitlines()
    told = [row.split("(", 1)[1].rpartition("): ")[0] for row in rows if row.startswith("✓")]
    assert len(told) == len(set(told)) > 3
    # LS-B102 of the invented catalog separates at 600 N to 1100 N, single-use (its table of breakaways)
    medium = next(row for row in rows if "LS-B102" in row)
    assert "LS-B102 (600–1100 N, single-use" in medium
    assert not any("Breakaway 3/4 in" in row for row in rows)
    assert "(Breakaway 3/4 in" in head


def test_reasons_name_the_next_part_by_what_it_differs_in(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("why", written(), "1", "--units", "si", "--language", "de")
    # LS-B102: 600 N to 1100 N, LS-B101, which hangs there: 445 N to 890 N (the catalog's table of breakaways)
    assert "LS-B102 (600–1100 N" in " ".join(done.out.split())
