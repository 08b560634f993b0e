"""The record of answers tells each difference, at its position, and writes what the plan holds."""

from __future__ import annotations

from pathlib import Path

import pytest

from planning.surveys import CAR, TOO_FAR
from reliability.answers_record import answer_of, compare, differences
from spoutline.bootstrap import Workbench

_ONE = {
    "status": "fits",
    "chosen": [["A 1"], 100],
    "alternatives": {"lighter": [["A 2"], 130, 30]},
    "conflict": None,
    "counts": {},
}


def test_each_difference_is_told_at_its_position() -> None:
    other = _ONE | {"chosen": [["A 3"], 100], "alternatives": {"one_maker": [["A 2"], 130, 30]}}
    found = list(differences({"x": _ONE, "y": _ONE, "gone": _ONE}, {"x": other, "y": dict(_ONE), "new": _ONE}))
    assert [(at, what) for at, what, _, _ in found] == [
        ("gone", "position"),
        ("new", "position"),
        ("x", "alternatives.lighter"),
        ("x", "alternatives.one_maker"),
        ("x", "chosen"),
    ]


def test_comparing_files_ends_with_1_where_something_differs(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    before, after = tmp_path / "before.jsonl", tmp_path / "after.jsonl"
    before.write_text('{"at":"x","status":"fits"}\n', "utf-8")
    after.write_text('{"at":"x","status":"does_not_fit"}\n', "utf-8")
    assert compare(before, before) == 0
    assert compare(before, after) == 1
    assert "x: status" in capsys.readouterr().out


def test_an_answer_holds_set_alternatives_and_conflict(workbench: Workbench) -> None:
    plan = workbench.plan_position(CAR, "1A")
    answer = answer_of(plan)
    assert plan.chosen is not None
    assert answer["chosen"] == [[str(ref) for ref in plan.chosen.hanging_set.refs], plan.chosen.hanging_set.price_minor]
    assert set(answer["alternatives"]) == {str(one.kind) for one in plan.alternatives}
    none = answer_of(workbench.plan_position(TOO_FAR, "1A"))
    assert none["chosen"] is None
    assert none["conflict"]["lines"]
