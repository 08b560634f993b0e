"""What of an entry lacks or is wrong, whatever was read before; a part only where nothing does."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from spoutline.catalogue.descriptions import COLUMNS, Description, describe, figure_cells
from spoutline.model.catalogue_entry import CatalogueEntry, FigureCell
from spoutline.model.figure import Bounds
from spoutline.model.part import PartKind
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


_MEASURES = [
    (kind, column)
    for kind, columns in COLUMNS.items()
    for column, figure in columns.items()
    if figure.value_type is float and not figure.many
]
_WRITTEN = st.one_of(
    st.decimals(-10, 100_000, places=3, allow_nan=False).map(str),
    st.floats(0, 1e6, allow_nan=False).map(str),
    st.sampled_from(("0", "-0", "007.50", "1e3", "nan", "inf", "9" * 17, "9" * 40, ".5", "5.", "٣", "x", "1,5")),
)


@settings(max_examples=up_to(400), deadline=None)
@given(st.sampled_from(_MEASURES), _WRITTEN)
def test_a_measure_is_read_alike_with_blanks_around(measure: tuple[PartKind, str], text: str) -> None:
    """A text with blanks is read by the model of its column alone; without them a plain number never gets there."""
    kind, column = measure
    plain, wrong = figure_cells(kind, {column: text})
    by_model, wrong_by_model = figure_cells(kind, {column: f" {text} "})
    assert plain == by_model
    assert [(one[0], one[2]) for one in wrong] == [(one[0], one[2]) for one in wrong_by_model]
    if plain:  # what Python reads in the text, within the bounds that the figure declares
        declared = COLUMNS[kind][column].declared
        assert plain[0].value == float(text)
        assert Bounds(above=declared.above, least=declared.least, most=declared.most).admit(float(text))


@settings(max_examples=up_to(200), deadline=None)
@given(st.sampled_from(_MEASURES), st.floats(-10, 1e6) | st.sampled_from((math.nan, math.inf, -0.0, 0.0)))
def test_a_typed_measure_is_held_to_its_bounds(measure: tuple[PartKind, str], value: float) -> None:
    kind, column = measure
    declared = COLUMNS[kind][column].declared
    admitted = Bounds(above=declared.above, least=declared.least, most=declared.most).admit(value)
    cells, wrong = figure_cells(kind, {column: value})
    assert bool(wrong) == (not admitted or not math.isfinite(value))
    assert [repr(cell.value) for cell in cells] == ([] if wrong else [repr(value + 0.0)])  # no negative nought
