"""Every row of published_hydraulics.csv; the source stands in the row."""

from __future__ import annotations

import csv
import json
import math
from pathlib import Path

import pytest

from calc.published_cases import ANSWERS
from spoutline.calc.ranges import OutOfRange, RangeReason

ROWS = tuple(csv.DictReader(Path(__file__).with_name("published_hydraulics.csv").read_text("utf-8").splitlines()))
REASONS = {"error: frozen": RangeReason.FROZEN, "error: cannot reach": RangeReason.CANNOT_REACH}
REFUSALS = tuple(row for row in ROWS if row["expected"].startswith("error"))
TRUTHS = tuple(row for row in ROWS if row["expected"] in ("True", "False"))
NUMBERS = tuple(row for row in ROWS if row not in REFUSALS and row not in TRUTHS)


def _name(row: dict[str, str]) -> str:
    return f"{row['case_id']} {row['topic']}"


def test_every_row_has_an_answer_and_every_answer_a_row() -> None:
    assert {row["case_id"] for row in ROWS} == set(ANSWERS)
    assert len(REFUSALS) + len(TRUTHS) + len(NUMBERS) == len(ROWS) == 74


@pytest.mark.parametrize("row", NUMBERS, ids=_name)
def test_number_agrees_with_its_source(row: dict[str, str]) -> None:
    expected, tolerance = float(row["expected"]), float(row["rel_tol"])
    answer = ANSWERS[row["case_id"]](json.loads(row["inputs_json"]))
    if expected == 0.0:
        assert abs(answer) <= tolerance, row["source"]
    else:
        # a tolerance of 0 asks for the number itself, up to rounding in the last digits
        assert math.isclose(answer, expected, rel_tol=max(tolerance, 1e-12)), (answer, expected, row["source"])


@pytest.mark.parametrize("row", TRUTHS, ids=_name)
def test_statement_agrees_with_its_source(row: dict[str, str]) -> None:
    assert ANSWERS[row["case_id"]](json.loads(row["inputs_json"])) is (row["expected"] == "True")


@pytest.mark.parametrize("row", REFUSALS, ids=_name)
def test_impossible_input_is_refused_for_the_right_reason(row: dict[str, str]) -> None:
    with pytest.raises(OutOfRange) as refused:
        ANSWERS[row["case_id"]](json.loads(row["inputs_json"]))
    assert refused.value.reason is REASONS[row["expected"]]
    assert row["expected"].removeprefix("error: ") in str(refused.value)
