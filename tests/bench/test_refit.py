"""A station of a thousand positions, planned and quoted; run with ``pytest tests/bench -p no:xdist``."""

from __future__ import annotations

from decimal import Decimal

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.quotation import Quotation
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

POSITIONS = 1000
DISTANCES_M = (0.0, 0.05, 0.1)  # added to the reach, so that not all dispensers ask the same


def large_station() -> Survey:
    """Return the demo refit over and over, dispensers renamed, every third copy a little farther from the vehicle."""
    demo = demo_survey("refit_48")
    positions = []
    for number in range(POSITIONS):
        copy, place = divmod(number, len(demo.positions))
        one = demo.positions[place]
        distance = one.filler.distance_m + DISTANCES_M[copy % len(DISTANCES_M)]
        changes = {
            "label": f"{copy}/{one.label}",
            "dispenser": f"{copy}/{one.dispenser}",
            "filler": one.filler.model_copy(update={"distance_m": round(distance, 3)}),
        }
        positions.append(one.model_copy(update=changes))
    return demo.model_copy(update={"positions": tuple(positions)})


@pytest.mark.parametrize("stock_price", [None, "35.00"])
def test_a_thousand_positions_are_planned_and_quoted(
    benchmark: BenchmarkFixture, workbench: Workbench, stock_price: str | None
) -> None:
    survey = large_station()
    labour = {"hourly_rate": 80, "tasks": [{"title": "Exchange", "hours": "0.4"}]}
    terms = terms_of(stock_price=stock_price, labour=labour, spares=[{"kind": "nozzle", "percent": 5}])

    def quoted() -> Quotation:
        return workbench.quoting().quote(survey, terms, Display(UnitSystem.SI)).quotation

    quotation = benchmark.pedantic(quoted, rounds=1, iterations=1)
    (option,) = quotation.options
    assert len(option.positions) == POSITIONS
    assert option.labour[0].amount == Decimal(sum(bool(one.part_numbers) for one in option.positions)) * 32
    assert option.goods_amount == sum(line.unit_price * line.ordered for line in option.lines if line.unit_price)
    assert quotation.open_lines == ()
