"""Sizes of ports on the command line: what was understood is told, what no thread has is refused, before any plan.

What people call a size: common practice, no source; 3/4 in is DN 20 in ASME B36.10M (memory).
"""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

from spoutline.book.survey_text import survey_from_json

E10 = {"family": "gasoline", "blend_percent": 10}


def outlet(**answers: Any) -> dict[str, Any]:
    return {"label": "1", "liquid": E10, "outlet": answers}


def test_a_survey_is_planned_by_the_size_that_was_meant(spoutline: Any, written: Callable[..., Path]) -> None:
    plain = spoutline("plan", written(outlet(thread="NPT", size="3/4")), "--json")
    assert plain.err == ""
    for text in ("19 mm", "DN 20", "¾", "0.75", '3/4"', "3/4 NPT"):
        done = spoutline("plan", written(outlet(thread="NPT", size=text)), "--json")
        assert (done.code, done.out) == (0, plain.out)
        assert "note" in done.err
        assert f"positions[0].outlet.size: {text!r} was read as 3/4 NPT, nominal (DN 20)" in done.err


def test_a_size_that_the_thread_does_not_have_is_refused(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("plan", written(outlet(thread="NPT", size="7/8")))
    assert done.code == 2
    assert "positions[0].outlet.size: '7/8'" in done.err
    assert "1/2, 3/4, 1, 1-1/4, 1-1/2, 2" in done.err
    assert spoutline("plan", written(outlet(thread="M", size="0.75"))).code == 2


def test_a_thread_without_a_size_takes_the_one_that_it_has(spoutline: Any, written: Callable[..., Path]) -> None:
    answers = {"thread": "M", "path": "vacuum_assist"}
    recovering = {"vapour_today": "vacuum_assist", "vapour_wanted": "vacuum_assist"}
    done = spoutline("plan", written({**outlet(**answers), **recovering}), "--json")
    assert (done.code, done.err) == (0, "")
    assert json.loads(done.out)["positions"][0]["set"][0]["attributes"]["inlet"]["size"] == "34x1.5"


def test_thread_and_path_that_contradict_are_a_finding(spoutline: Any, written: Callable[..., Path]) -> None:
    for path in ("balance", "vacuum_assist"):
        done = spoutline("plan", written(outlet(thread="NPT", path=path)), "--json")
        (planned,) = json.loads(done.out)["positions"]
        assert (done.code, planned["status"]) == (1, "no_set")
        (found,) = [one for one in planned["findings"] if one["rule_id"] == "path_on_thread"]
        facts = {fact["name"]: fact["value"] for fact in found["facts"]}
        assert (facts["thread"], facts["path"], facts["path_of_thread"]) == ("NPT", path, "single")
        told = spoutline("plan", written(outlet(thread="NPT", path=path)))
        assert told.code == 1
        assert "Thread and path contradict each other" in told.out


def test_a_conversion_of_such_an_outlet_has_no_set(spoutline: Any, written: Callable[..., Path]) -> None:
    converting = {**outlet(thread="NPT", path="balance"), "vapour_today": "balance"}
    done = spoutline("convert", written(converting), "--json")
    assert done.code == 1
    assert json.loads(done.out)["positions"][0]["outcome"] == "no_set"


def imported(spoutline: Any, tmp_path: Path, *rows: str) -> Any:
    table = tmp_path / "t.csv"
    table.write_text("\n".join(("Hose,Product,Outlet thread,Outlet size,Outlet path", *rows)) + "\n")
    return spoutline("import", table, "--site", "Fern Hollow")


def test_an_import_tells_by_cell_what_it_understood(spoutline: Any, tmp_path: Path) -> None:
    rows = ("1A,E10,NPT,19 mm,", "1B,E10,,1 G,", "2A,E10,M,,vacuum assist", "2B,E10,NPT,3/4,balance", "3A,E10,NPT,3/4,")
    done = imported(spoutline, tmp_path, *rows)
    assert done.code == 0
    outlets = [one.outlet for one in survey_from_json(done.out, "imported").positions]
    assert [(one.thread, one.size) for one in outlets] == [
        ("NPT", "3/4"),
        ("G", "1"),
        ("M", "34x1.5"),
        ("NPT", "3/4"),
        ("NPT", "3/4"),
    ]
    notes = done.err.splitlines()
    assert len(notes) == 3
    assert "cell D2: outlet.size: '19 mm' was read as 3/4 NPT" in notes[0]
    assert "cell D3: outlet.size: '1 G' was read as 1 G" in notes[1]
    assert "cell E5: outlet.path: 'balance' (NPT, path balance)" in notes[2]


def test_an_import_refuses_a_size_at_its_cell(spoutline: Any, tmp_path: Path) -> None:
    done = imported(spoutline, tmp_path, "1A,E10,NPT,7/8,", "1B,E10,NPT,1 G,")
    assert (done.code, done.out) == (2, "")
    first, second = done.err.splitlines()
    assert "cell D2: outlet.size: '7/8'" in first
    assert "the sizes of NPT threads" in first
    assert "cell D3: outlet.size: '1 G'" in second
    assert "the text names G and the thread is NPT" in second
