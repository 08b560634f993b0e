"""Hours of a labour table before sets are chosen; the sums are worked out by hand beside each check."""

from __future__ import annotations

from decimal import Decimal

import pytest

from planning.quoting_terms import terms_of
from spoutline.model.survey import Position
from spoutline.planning.pricing.labour_forecast import labour_forecast


def positions(count: int, per_dispenser: int) -> list[Position]:
    return [Position.model_validate({"label": f"P{at}", "dispenser": str(at // per_dispenser)}) for at in range(count)]


@pytest.mark.parametrize(("count", "each", "hours"), [(48, 6, "30.2"), (1, 6, "4.85"), (0, 6, "0")])
def test_hours_count_for_positions_dispensers_and_site(count: int, each: int, hours: str) -> None:
    """48 x 0.45 + 8 x 0.575 + 4 = 21.6 + 4.6 + 4 = 30.2; 0.45 + 0.4 + 4 = 4.85 with the second table."""
    second = "0.575" if count == 48 else "0.4"
    tasks = terms_of(
        labour={
            "tasks": [
                {"title": "Exchange", "per": "position", "hours": "0.45"},
                {"title": "Lock out", "per": "dispenser", "hours": second},
                {"title": "Journey", "per": "site", "hours": 4},
            ]
        }
    ).labour.tasks
    found = labour_forecast(tasks, positions(count, each))
    assert found.hours == Decimal(hours)
    assert (found.positions, found.dispensers) == (count, -(-count // each))
    assert not found.is_most


def test_a_task_for_certain_parts_makes_it_an_upper_bound() -> None:
    tasks = terms_of(labour={"tasks": [{"title": "Mount", "hours": 1, "kinds": ["swivel"]}]}).labour.tasks
    found = labour_forecast(tasks, positions(2, 1))
    assert (found.hours, found.is_most) == (2, True)
