"""`catalogue entry` and `catalogue family`: parts of a draft found, filled, taken out; figures set once for several."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from program_runs import Spoutline

Run = Callable[..., Any]
MAKER = "Fernmoor Works"


@pytest.fixture
def run(own_database: Path, spoutline: Spoutline) -> Run:
    """Return a function that runs a command on a book whose draft holds two parts."""

    def run(*arguments: str) -> Any:
        return spoutline("--database", str(own_database), "catalogue", *arguments)

    assert run("new", "Own list").code == 0
    for number in ("FW-1/2", "FW 2"):
        fields = ("kind=swivel", "name=Swivel", "price=12.50 USD", "lead_days=5", "family=One plane")
        assert run("entry", "add", "Own list", MAKER, number, *fields).code == 0
    return run


def test_a_part_is_found_as_one_types_and_shown_with_its_fields(run: Run) -> None:
    found = json.loads(run("entry", "find", "Own list", "fw12", "--json").out)
    assert [one["number"] for one in found["entries"]] == ["FW-1/2"]
    assert (found["count"], found["is_all"]) == (1, True)
    assert "mass_kg" in found["entries"][0]["lacking"]
    assert run("entry", "find", "Own list", "* OR 1", "--not-described").out.startswith("Own list@draft: no entries")
    told = run("entry", "show", "Own list", "FW 2").out
    assert "price=12.50 USD" in told
    assert "mass_kg" not in told


def test_fields_of_several_parts_are_filled_at_once_or_not_at_all(run: Run) -> None:
    several = ("--part", "FW-1/2", "--part", f"{MAKER} FW 2")
    done = run("entry", "set", "Own list", "mass_kg=0.66 lb", "remark=heavy", *several)
    assert done.code == 0
    assert done.out.startswith("Own list@draft: 2 parts changed")
    document = json.loads(run("entry", "show", "Own list", "FW 2", "--json").out)
    assert document["fields"]["mass_kg"].startswith("0.299")  # 0.45359237 kg to the pound, NIST SP 811 B.8
    refused = run("entry", "set", "Own list", "remark=light", "mass_kg=far", *several)
    assert refused.code == 2
    assert "mass_kg" in refused.err
    assert "remark=heavy" in run("entry", "show", "Own list", "FW-1/2").out
    assert run("entry", "set", "Own list", "mass_kg=", "--part", "FW 2").code == 0
    assert "mass_kg" not in run("entry", "show", "Own list", "FW 2").out


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (("set", "Own list", "mas_kg=3", "--part", "FW 2"), "did you mean mass_kg?"),
        (("set", "Own list", "mass_kg", "--part", "FW 2"), "write FIELD=VALUE"),
        (("set", "Own list", "mass_kg=3", "--part", "FW 9"), "part number"),
        (("set", "Own list", "kind=pump", "--part", "FW 2"), "one of"),
        (("add", "Own list", MAKER, "FW 2"), "otherwise by now"),
        (("add", "Own list", MAKER, "???"), "letter or a digit"),
        (("set", "Demonstration", "remark=x", "--part", "QW-N101"), "only read"),
        (("remove", "Own list", "--part", "FW 9"), "part number"),
    ],
)
def test_what_cannot_be_done_is_refused_by_name_and_changes_nothing(
    run: Run, arguments: tuple[str, ...], told: str
) -> None:
    before = run("entry", "find", "Own list", "--json").out
    done = run("entry", *arguments)
    assert done.code == 2, done
    assert told in done.err
    assert run("entry", "find", "Own list", "--json").out == before


def test_parts_are_taken_out(run: Run) -> None:
    told = run("entry", "remove", "Own list", "--part", "FW 2").out.splitlines()[1:]
    assert [line.split() for line in told] == [["gone", *MAKER.split(), "FW", "2"]]
    assert run("entry", "find", "Own list").out.startswith("Own list@draft: 1 entry\n")


def test_figures_of_a_family_are_set_listed_told_as_a_change_and_taken_back(run: Run, tmp_path: Path) -> None:
    refused = run("family", "set", "Own list", "One plane", "mass_kg=0.3")
    assert refused.code == 2
    assert "--kind" in refused.err
    done = run("family", "set", "Own list", "One plane", "--kind", "swivel", "mass_kg=0.3 kg", "planes=1")
    assert done.out.splitlines()[0] == "Own list@draft, One plane, swivel: 2 parts have its figures"
    shown = run("entry", "show", "Own list", "FW 2").out
    assert "  mass_kg=0.3 kg  (family: One plane)" in shown
    assert run("entry", "set", "Own list", "mass_kg=0.4", "--part", "FW 2").code == 0
    assert run("family", "set", "Own list", "One plane", "mass_kg=0.5").code == 0
    values = [
        json.loads(run("entry", "show", "Own list", number, "--json").out)["fields"]["mass_kg"]
        for number in ("FW-1/2", "FW 2")
    ]
    assert values == ["0.5 kg", "0.4 kg"]
    assert run("publish", "Own list", "--note", "first", "--by", "Ada Fenn").code == 0
    assert run("family", "set", "Own list", "One plane", "planes=2").code == 0
    assert "families changed" in run("list").out
    told = run("diff", "Own list@1", "Own list@draft").out.splitlines()
    assert ["changed", "family", "One", "plane"] in [line.split() for line in told]
    file = tmp_path / "exchange.zip"
    assert run("export", "Own list@draft", "--out", str(file)).code == 0
    assert run("new", "Second").code == 0
    assert run("import", str(file), "--into", "Second").code == 0
    listed = [json.loads(run("family", "list", name, "--json").out)["families"] for name in ("Own list", "Second")]
    assert (
        listed[0]
        == listed[1]
        == [{"name": "One plane", "kind": "swivel", "figures": {"mass_kg": "0.5 kg", "planes": "2"}}]
    )
    renamed = run("family", "rename", "Own list", "One plane", "Plain")
    assert renamed.out.splitlines()[0] == "Own list@draft, Plain, swivel: 2 parts have its figures"
    assert "  planes=2  (family: Plain)" in run("entry", "show", "Own list", "FW 2").out
    assert run("family", "remove", "Own list", "Plain").code == 0
    assert "planes" not in run("entry", "show", "Own list", "FW 2").out
    assert run("family", "remove", "Own list", "One plane").code == 2
