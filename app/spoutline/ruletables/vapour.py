"""The tables on vapour recovery: published figures, national shares of onboard recovery, rules of agencies."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import Decimal
from typing import Annotated, Any, TypeVar

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import LimitStatus
from spoutline.model.vapour_figures import (
    AgencyRow,
    OnboardShare,
    RemovalRule,
    VapourFigure,
    VapourFigureId,
    VapourTables,
)
from spoutline.ruletables.schema import Line, OpenLine, RowId, read_toml, row_name, validated

_LEAST_SHARE_ROWS = 2

RowT = TypeVar("RowT", bound=BaseModel)
_Percent = Annotated[Decimal, Field(ge=0, le=100)]
_Days = Annotated[int, Field(ge=0, le=3650)]


class _Row(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class _FigureRow(_Row):
    id: VapourFigureId
    title: Line
    value: Decimal
    unit: str = ""
    source: Line
    clause: Line
    edition: Line
    status: LimitStatus
    note: OpenLine = ""


class _ShareRow(_Row):
    year: Annotated[int, Field(ge=1990, le=2200)]
    vehicles: _Percent
    distance: _Percent
    gasoline: _Percent


class _AgencyRow(_Row):
    id: RowId
    title: Line
    removal: RemovalRule
    notice_days: _Days | None = None
    test_notice_days: _Days | None = None
    finish_days: _Days | None = None
    approval_first: bool = False
    same_day: bool = False
    weekdays_only: bool = False
    enhanced_nozzle: bool = False
    low_permeation_hose: bool = False
    grant: bool = False
    tests: tuple[Line, ...] = ()
    checklist: Annotated[str, StringConstraints(max_length=300)] = ""
    notice_lapses_days: _Days | None = None
    second_notice_least_hours: _Days | None = None
    second_notice_most_hours: _Days | None = None
    test_notice_working: bool = False
    further_tests: tuple[Line, ...] = ()
    profiles: tuple[RowId, ...] = ()
    source: Line
    clause: Line
    edition: Line
    status: LimitStatus
    note: OpenLine = ""


class _SharesHead(_Row):
    edition: Line
    source: Line
    status: LimitStatus


def vapour_tables_from_toml(figures: str, shares: str, agencies: str) -> VapourTables:
    """Return the tables written in three TOML texts; raise ``InputFault`` with every fault of them."""
    problems: list[InputProblem] = []
    figures_doc = read_toml(figures, "figures.toml")
    shares_doc = read_toml(shares, "onboard_shares.toml")
    agencies_doc = read_toml(agencies, "agencies.toml")
    figure_rows = _rows(_FigureRow, figures_doc, "figure", "figures.toml", problems)
    share_rows = _rows(_ShareRow, shares_doc, "share", "onboard_shares.toml", problems)
    agency_rows = _rows(_AgencyRow, agencies_doc, "agency", "agencies.toml", problems)
    head_data = {name: value for name, value in shares_doc.items() if name != "share"}
    head = validated(_SharesHead, head_data, place="onboard_shares.toml", row="head", problems=problems)
    problems.extend(_missing_figures(row.id for row in figure_rows))
    problems.extend(_twice((row.id for row in figure_rows), "figures.toml"))
    problems.extend(_twice((row.id for row in agency_rows), "agencies.toml"))
    problems.extend(_years(share_rows))
    edition = figures_doc.get("edition")
    if not isinstance(edition, str):
        problems.append(InputProblem("figures.toml", "edition", repr(edition), "write the edition in quotes"))
    if head is None or problems:
        raise InputFault(tuple(problems))
    return VapourTables(
        edition=str(edition),
        figures=tuple(_figure(row) for row in figure_rows),
        shares=tuple(_share(row) for row in share_rows),
        shares_source=f"{head.source} ({head.edition})",
        shares_status=head.status,
        agencies=tuple(AgencyRow(**row.model_dump()) for row in agency_rows),
    )


def _rows(
    row_type: type[RowT], document: Mapping[str, Any], name: str, place: str, problems: list[InputProblem]
) -> list[RowT]:
    written = document.get(name)
    if not isinstance(written, list) or not written:
        problems.append(InputProblem(place, name, repr(written), f"write the rows as [[{name}]] tables"))
        return []
    found = (
        validated(row_type, data, place=place, row=row_name(data, index), problems=problems)
        for index, data in enumerate(written, start=1)
    )
    return [row for row in found if row is not None]


def _missing_figures(present: Iterable[VapourFigureId]) -> Iterable[InputProblem]:
    held = set(present)
    for figure_id in VapourFigureId:
        if figure_id not in held:
            yield InputProblem("figures.toml", figure_id, "nothing", "this figure must have a row")


def _twice(names: Iterable[str], place: str) -> Iterable[InputProblem]:
    seen: set[str] = set()
    for name in names:
        if name in seen:
            yield InputProblem(place, name, "a second row", "each row stands once")
        seen.add(name)


def _years(rows: list[_ShareRow]) -> Iterable[InputProblem]:
    years = [row.year for row in rows]
    if years != sorted(set(years)):
        yield InputProblem("onboard_shares.toml", "year", repr(years), "write each year once, rising")
    elif len(years) < _LEAST_SHARE_ROWS:
        yield InputProblem("onboard_shares.toml", "share", repr(years), "write at least two years")


def _figure(row: _FigureRow) -> VapourFigure:
    return VapourFigure(
        id=row.id,
        title=row.title,
        value=float(row.value),
        unit=row.unit,
        source=row.source,
        clause=row.clause,
        edition=row.edition,
        status=row.status,
        note=row.note,
    )


def _share(row: _ShareRow) -> OnboardShare:
    return OnboardShare(row.year, float(row.vehicles / 100), float(row.distance / 100), float(row.gasoline / 100))
