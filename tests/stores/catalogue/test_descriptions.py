"""What of an entry lacks or is wrong, whatever was read before; a part only where nothing does."""

from __future__ import annotations

from typing import Any

import pytest

from spoutline.catalogue.descriptions import Description, describe
from spoutline.model.catalogue_entry import CatalogueEntry, FigureCell
from stores.catalogue.entries import SWIVEL, swivel

# of a swivel, after the table of columns in catalog/README.md: a part without one of these is never chosen
NEEDED = ("inlet", "outlet", "materials", "temp_min_c", "temp_max_c", "max_pressure_kpa", "made_up_length_mm")


def without(column: str) -> CatalogueEntry:
    return swivel(**{column: {"name": "", "lead_days": None}.get(column)})


@pytest.mark.parametrize("column", ["name", "lead_days", "mass_kg", "planes", *NEEDED])
def test_what_lacks_is_named_and_makes_no_part(column: str) -> None:
    found = describe(without(column))
    assert (found.part, found.lacking, found.faults) == (None, (column,), ())


@pytest.mark.parametrize("column", sorted(SWIVEL.keys() - {*NEEDED, "mass_kg", "planes", "kv_m3_h"}))
def test_what_need_not_be_known_lacks_nothing(column: str) -> None:
    found = describe(without(column))
    assert found.part is not None
    assert (found.lacking, found.faults) == ((), ())


def test_a_part_that_is_there_at_once_is_described() -> None:
    part = describe(swivel(lead_days=0)).part
    assert part is not None
    assert part.lead_time_days == 0


def with_figure(column: str, value: Any) -> Description:
    entry = swivel()
    figure = FigureCell(column=column, value=value)
    return describe(entry.model_copy(update={"figures": (*entry.figures, figure)}))


def test_a_figure_that_no_part_of_the_kind_has_is_told_and_makes_no_part() -> None:
    found = with_figure("hose_length_m", 3.0)
    assert found.part is None
    assert [(one.column, one.value, one.wanted) for one in found.faults] == [
        ("hose_length_m", "3.0", "a swivel has no such figure")
    ]
