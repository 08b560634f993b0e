"""Every row of published_vapour.csv; source and status stand in the row."""

from __future__ import annotations

import csv
import json
import math
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.vapour_cases import ANSWERS, SLOPE, TABLES
from spoutline.calc.emissions import YearValue, crossing_of
from spoutline.calc.ranges import OutOfRange
from spoutline.calc.vapour import break_even_line, program_difference_line, recovery_increment
from spoutline.model.limit import LimitStatus

ROWS = tuple(csv.DictReader(Path(__file__).with_name("published_vapour.csv").read_text("utf-8").splitlines()))
share = st.floats(0.0, 1.0)


def test_every_row_has_an_answer_and_every_answer_a_row() -> None:
    assert [row["case_id"] for row in ROWS] == list(ANSWERS)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['case_id']} {row['topic']} [{row['status']}]")
def test_result_agrees_with_its_source(row: dict[str, str]) -> None:
    answer = ANSWERS[row["case_id"]](json.loads(row["inputs_json"]))
    expected, tolerance = float(row["expected"]), float(row["rel_tol"])
    assert math.isclose(answer, expected, rel_tol=max(tolerance, 1e-9)), (answer, expected, row["source"])


# Equation 1 of EPA-457/B-12-001 as recalled, over the recalled national table; worked by hand to three
# decimals: 0.95 x 0.244 x 0.70 - 0.95 x 0.0777 x 0.756 = 0.10646 in the first case.
@pytest.mark.parametrize(
    ("year", "assist", "efficiency", "printed"),
    [
        (2012, 0.95, 0.70, 0.106),
        (2014, 0.95, 0.70, 0.055),
        (2016, 0.95, 0.70, 0.017),
        (2017, 0.95, 0.70, 0.004),
        (2018, 0.95, 0.70, -0.009),
        (2020, 0.95, 0.70, -0.027),
        (2012, 0.57, 0.75, 0.140),
        (2016, 0.57, 0.75, 0.049),
        (2020, 0.57, 0.75, 0.004),
    ],
)
def test_increment_over_the_recalled_table(year: int, assist: float, efficiency: float, printed: float) -> None:
    row = next(row for row in TABLES.shares if row.year == year)
    found = recovery_increment(
        recovered_share=0.95,
        assist_share=assist,
        onboard_share=row.gasoline,
        in_use_efficiency=efficiency,
        slope=SLOPE,
    )
    assert found.value == pytest.approx(printed, abs=5e-4)


# Break-even by algebra, all assist: the four values of the fact sheet, four decimals.
@pytest.mark.parametrize(("efficiency", "printed"), [(0.60, 0.8853), (0.70, 0.9001), (0.75, 0.9061), (0.86, 0.9171)])
def test_break_even_share_of_an_all_assist_station(efficiency: float, printed: float) -> None:
    line = break_even_line(recovered_share=1.0, assist_share=1.0, in_use_efficiency=efficiency, slope=SLOPE)
    assert line.result.value == pytest.approx(printed, abs=5e-5)


def test_a_fleet_with_onboard_recovery_only_gains_the_whole_compatibility_factor() -> None:
    found = recovery_increment(
        recovered_share=1.0, assist_share=1.0, onboard_share=1.0, in_use_efficiency=0.7, slope=SLOPE
    )
    assert found.value == pytest.approx(-0.0777)  # constant from memory of EPA-457/B-12-001


def test_the_two_programs_control_alike_at_the_share_worked_by_hand() -> None:
    # 0.90 x 0.86 / 0.98 = 0.789796: definition of this program, no published equation
    line = program_difference_line(
        onboard_share=0.90 * 0.86 / 0.98, onboard_efficiency=0.98, recovered_share=0.90, in_use_efficiency=0.86
    )
    assert line.result.value == pytest.approx(0.0, abs=1e-12)
    assert "EPA" not in line.source


def test_the_recalled_form_is_labelled_as_recalled() -> None:
    found = recovery_increment(
        recovered_share=1.0, assist_share=1.0, onboard_share=0.9, in_use_efficiency=0.7, slope=SLOPE
    )
    assert all("[memory]" in line.source for line in found.lines)
    assert TABLES.shares_status is LimitStatus.MEMORY


@given(share, st.floats(0.01, 1.0), st.floats(0.01, 1.0))
def test_more_onboard_recovery_never_makes_recovery_at_the_nozzle_worth_more(
    onboard: float, efficiency: float, assist: float
) -> None:
    def value(at: float) -> float:
        return recovery_increment(
            recovered_share=1.0, assist_share=assist, onboard_share=at, in_use_efficiency=efficiency, slope=SLOPE
        ).value

    assert value(min(onboard + 0.05, 1.0)) <= value(onboard) + 1e-12


@given(st.floats(0.01, 1.0), st.floats(0.0, 1.0), st.floats(0.01, 1.0))
def test_the_increment_is_zero_at_the_break_even_share(recovered: float, part: float, efficiency: float) -> None:
    assist = recovered * part
    line = break_even_line(recovered_share=recovered, assist_share=assist, in_use_efficiency=efficiency, slope=SLOPE)
    found = recovery_increment(
        recovered_share=recovered,
        assist_share=assist,
        onboard_share=line.result.value,
        in_use_efficiency=efficiency,
        slope=SLOPE,
    )
    assert found.value == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"recovered_share": 1.1}, "recovered_share"),
        ({"onboard_share": -0.01}, "onboard_share"),
        ({"in_use_efficiency": 2.0}, "in_use_efficiency"),
        ({"assist_share": 0.9, "recovered_share": 0.5}, "assist_share"),
    ],
)
def test_a_share_that_cannot_be_is_refused_by_name(changed: dict[str, float], field: str) -> None:
    inputs = {"recovered_share": 1.0, "assist_share": 0.0, "onboard_share": 0.9, "in_use_efficiency": 0.7}
    with pytest.raises(OutOfRange) as refused:
        recovery_increment(**{**inputs, **changed}, slope=SLOPE)
    assert refused.value.field == field


def test_a_series_crosses_on_the_line_between_two_years() -> None:
    found = crossing_of([YearValue(2017, 0.01), YearValue(2018, -0.03), YearValue(2019, -0.04)])
    assert found is not None
    assert found.year == 2018
    assert found.moment == pytest.approx(2017.25)
    assert crossing_of([YearValue(2017, 0.2), YearValue(2018, 0.1)]) is None
