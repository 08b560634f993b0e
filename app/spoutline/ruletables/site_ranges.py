"""The table of ranges in which figures that nobody measured may lie: resources/rules/site_ranges.toml."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path
from typing import Final

from pydantic import BaseModel, ConfigDict

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.model.site_figure import PlausibleRange, SiteFigure, SiteRanges
from spoutline.model.survey import Duty
from spoutline.ruletables.files import read_text
from spoutline.ruletables.schema import Line, read_toml, validated
from spoutline.units.accepted import ACCEPTED
from spoutline.units.unit_lines import to_core

_FILE: Final = Path("rules", "site_ranges.toml")


class _RangeRow(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)

    figure: SiteFigure
    duty: Duty | None = None
    liquid: LiquidFamily | None = None
    least: Decimal
    most: Decimal
    unit: str
    source: Line
    status: LimitStatus


def load_site_ranges(resources: Path) -> SiteRanges:
    """Return the table; raise ``InputFault`` with every fault in it, ``StoreFault`` where it cannot be read."""
    path = resources / _FILE
    return site_ranges_from_toml(read_text(path), path.name)


def site_ranges_from_toml(text: str, place: str) -> SiteRanges:
    """Return the table of a TOML text.

    Raises
    ------
    InputFault
        With every fault: unknown figures or units, ends in the wrong order, a figure without a row for every duty.
    """
    document = read_toml(text, place)
    problems: list[InputProblem] = []
    rows: list[PlausibleRange] = []
    for index, data in enumerate(document.get("range", []), start=1):
        name = f"row {index} ({data.get('figure', '?')})"
        row = validated(_RangeRow, data, place=place, row=name, problems=problems)
        found = None if row is None else _range_of(row, place, name, problems)
        if found is not None:
            rows.append(found)
    general = {row.figure for row in rows if row.duty is None and row.family is None}
    problems.extend(
        InputProblem(place, figure, "nothing", "this figure must have a row that names neither duty nor liquid")
        for figure in SiteFigure
        if figure not in general and not problems
    )
    if problems:
        raise InputFault(tuple(problems))
    return SiteRanges(str(document.get("edition", "")), tuple(rows))


def _range_of(row: _RangeRow, place: str, name: str, problems: list[InputProblem]) -> PlausibleRange | None:
    dimension = row.figure.dimension
    if row.unit not in ACCEPTED[dimension]:
        problems.append(
            InputProblem(place, f"{name}, unit", repr(row.unit), f"use one of {', '.join(ACCEPTED[dimension])}")
        )
        return None
    if row.least >= row.most:
        problems.append(InputProblem(place, f"{name}, least", str(row.least), f"it must be less than {row.most}"))
        return None
    return PlausibleRange(
        figure=row.figure,
        least=to_core(float(row.least), row.unit, dimension),
        most=to_core(float(row.most), row.unit, dimension),
        source=row.source,
        status=row.status,
        duty=row.duty,
        family=row.liquid,
    )
