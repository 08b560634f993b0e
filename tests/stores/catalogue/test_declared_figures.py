"""Bounds and orders of figures hold whichever way a part comes in; what is written out agrees with the declaration."""

from __future__ import annotations

import math
from types import UnionType
from typing import Any, Union, get_args, get_origin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from spoutline.catalogue.rows import TABLES
from spoutline.catalogue.source_files import KINDS_OF_TABLE
from spoutline.catalogue.tables import FIGURE_TABLES, WORD_TABLES, CatalogueTable
from spoutline.documents.json.plan import PartAttributes, PortRecord
from spoutline.model.installed import InstalledPart
from spoutline.model.part import HANGING_KINDS, PartKind
from spoutline.model.part_figures import BLOCKS_OF_KIND, FIGURES, PartFigure, figures_in, figures_of
from spoutline.model.port import Port

END = {"thread": "NPT", "size": "3/4", "gender": "male", "path": "single"}
NUMBERS = [(figure, kind) for kind in HANGING_KINDS for figure in figures_of(kind) if figure.is_number]
# invented figures that lie in order: each lower end below its upper one
IN_ORDER = {
    "hose.bore_m": 0.02,
    "hose.outside_diameter_m": 0.03,
    "hose.inner_tube_bore_m": 0.006,
    "hose.inner_tube_outside_diameter_m": 0.009,
}


def usual(figure: PartFigure) -> Any:
    """Return a value that the declaration admits."""
    if figure.many or issubclass(figure.value_type, Port):
        return None
    if figure.choices:
        return figure.choices[0].value
    if figure.value_type is bool:
        return False
    if figure.value_type is int:
        return 1
    low, most = lowest(figure), figure.declared.bounds_si.most
    assert most is not None
    return IN_ORDER.get(figure.path, max(low, 0.0) + (most - max(low, 0.0)) / 4)


def lowest(figure: PartFigure) -> float:
    bounds = figure.declared.bounds_si
    low = bounds.above if bounds.least is None else bounds.least
    assert low is not None, figure.path
    return low


def described(kind: PartKind, **changes: Any) -> InstalledPart:
    figures: dict[str, Any] = {"inlet": END, "outlet": END, "wetted_materials": ["fkm"]}
    for block in BLOCKS_OF_KIND[kind]:
        figures[block] = {}
    for figure in figures_of(kind):
        value = changes.get(figure.path.replace(".", "__"), usual(figure))
        owner = figures[figure.block] if figure.block else figures
        if figure.many is frozenset and figure.block:
            owner[figure.name] = [next(iter(figure.choices)).value]
        elif value is not None:
            owner[figure.name] = value
    return InstalledPart.model_validate(
        {"kind": kind.value, "description": "worn plate", "listings": [], "figures": figures}
    )


@pytest.mark.parametrize("kind", HANGING_KINDS)
def test_a_part_whose_figures_are_all_usual_is_taken(kind: PartKind) -> None:
    assert described(kind).figures is not None


@given(st.sampled_from(NUMBERS), st.floats(1e-6, 1e6))
def test_a_survey_refuses_what_lies_outside_the_bounds_and_names_the_figure(
    asked: tuple[PartFigure, PartKind], beyond: float
) -> None:
    figure, kind = asked
    bounds = figure.declared.bounds_si
    assert bounds.most is not None
    for value in (bounds.most + beyond, lowest(figure) - beyond, math.nextafter(bounds.most, math.inf)):
        wrong = value if figure.value_type is float else round(value) + (1 if value > bounds.most else -1)
        if bounds.admit(wrong):
            continue
        with pytest.raises(ValidationError) as caught:
            described(kind, **{figure.path.replace(".", "__"): wrong})
        told = [(*map(str, one["loc"]), str(one.get("ctx", {}).get("field", ""))) for one in caught.value.errors()]
        assert any(figure.name in ".".join(one) for one in told), told


@pytest.mark.parametrize(("figure", "kind"), NUMBERS, ids=lambda one: getattr(one, "path", str(one)))
def test_a_survey_takes_the_bound_itself_where_the_declaration_does(figure: PartFigure, kind: PartKind) -> None:
    declared = figure.declared
    if declared.below or any(other.declared.below == figure.name for other in FIGURES):
        return  # the neighbour decides before the bound does
    top, low = declared.bounds_si.most, lowest(figure)
    change = {figure.path.replace(".", "__"): top if not declared.up_to else low}
    if declared.bounds_si.admit(next(iter(change.values()))):  # type: ignore[arg-type]
        assert described(kind, **change).figures is not None


@pytest.mark.parametrize("table", KINDS_OF_TABLE)
def test_a_table_has_the_same_bounds_as_a_survey(table: str) -> None:
    for kind in KINDS_OF_TABLE[table]:
        for figure in figures_of(kind):
            if not figure.declared.column or not figure.is_number:
                continue
            info, declared = TABLES[table].model_fields[figure.declared.column], figure.declared
            found = {
                type(one).__name__: next(
                    getattr(one, name) for name in ("gt", "ge", "le") if getattr(one, name, None) is not None
                )
                for one in info.metadata
            }
            written = {"Gt": declared.above, "Ge": declared.least, "Le": declared.most}
            expected = {name: bound for name, bound in written.items() if bound is not None}
            assert found == expected, figure.path
            assert declared.unit.to_si(declared.most or 0.0) == declared.bounds_si.most


@pytest.mark.parametrize(
    ("kind", "changes", "field"),
    [
        (PartKind.SWIVEL, {"temperature_minimum_c": 55.0, "temperature_maximum_c": 52.0}, "temperature_minimum_c"),
        (PartKind.CURB_HOSE, {"hose__bore_m": 0.03, "hose__outside_diameter_m": 0.03}, "hose.bore_m"),
        (PartKind.CURB_HOSE, {"hose__inner_tube_bore_m": 0.01}, "hose.inner_tube_bore_m"),
        (PartKind.CURB_HOSE, {"hose__inner_tube_outside_diameter_m": 0.02}, "hose.inner_tube_outside_diameter_m"),
        (PartKind.BREAKAWAY, {"breakaway__separation_minimum_n": 6000.0}, "breakaway.separation_minimum_n"),
        (PartKind.NOZZLE, {"nozzle__minimum_flow_m3_s": 0.006}, "nozzle.minimum_flow_m3_s"),
    ],
)
def test_a_survey_refuses_figures_in_the_wrong_order(kind: PartKind, changes: dict[str, float], field: str) -> None:
    with pytest.raises(ValidationError) as caught:
        described(kind, **changes)
    (fault,) = caught.value.errors()
    assert fault["ctx"]["field"] == f"figures.{field}"


def test_the_length_of_a_rigid_part_has_another_range_than_that_of_a_hose() -> None:
    assert described(PartKind.CURB_HOSE, length_m=3.0).figures is not None
    with pytest.raises(ValidationError, match=r"at most 0\.6"):
        described(PartKind.SWIVEL, length_m=3.0)


def without_none(annotation: Any) -> Any:
    if get_origin(annotation) in (Union, UnionType):
        (kept,) = [one for one in get_args(annotation) if one is not type(None)]
        return kept
    return annotation


def test_the_plan_document_states_every_figure_of_hanging_hardware_and_no_other() -> None:
    """The document is public and stays written out: a figure that is declared must be added to it by hand."""
    figures = {figure.name: figure for kind in HANGING_KINDS for figure in figures_of(kind)}
    documented = {
        name: info for name, info in PartAttributes.model_fields.items() if name not in {"status", "lead_time_days"}
    }
    assert set(documented) == set(figures)
    for name, info in documented.items():
        kept, value_type = without_none(info.annotation), figures[name].value_type
        if figures[name].many:
            assert get_args(kept)[0] is value_type, name
        else:
            assert kept is (PortRecord if value_type is Port else value_type), name


def test_the_store_keeps_every_declared_figure() -> None:
    for block, table in FIGURE_TABLES.items():
        columns = table.__table__.columns
        for figure in figures_in(block):
            if figure.many:
                assert issubclass(WORD_TABLES[figure.path], CatalogueTable)
            elif figure.value_type is not Port:
                assert columns[figure.name].nullable is figure.may_lack


def test_every_figure_of_a_table_has_one_column() -> None:
    for kind in PartKind:
        columns = [figure.declared.column for figure in figures_of(kind) if figure.declared.column]
        assert len(set(columns)) == len(columns), kind
