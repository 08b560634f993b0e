"""The tables of inspection items and reading bands: complete, sourced, and checked before use."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import TypeVar

from pydantic import BaseModel, ConfigDict, Field

from spoutline.model.caution import CautionCondition
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.inspection import InspectionCause, InspectionInterval, InspectionItem, InspectionItemId
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import ListingScheme
from spoutline.model.record import ReadingBand, RecordItemId
from spoutline.ruletables.files import read_text
from spoutline.ruletables.schema import Line, read_toml, row_name, validated

_ITEMS = Path("inspection", "items.toml")
_READINGS = Path("inspection", "readings.toml")


class _ItemRow(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    id: InspectionItemId
    interval: InspectionInterval
    applies: tuple[CautionCondition, ...]
    cause: InspectionCause = InspectionCause.TIME
    schemes: tuple[ListingScheme, ...] = ()
    source: Line
    status: LimitStatus


class _ReadingRow(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    item: RecordItemId
    far_ratio: float = Field(gt=1, le=1000)
    source: Line
    status: LimitStatus


RowT = TypeVar("RowT", bound=BaseModel)


def load_inspection_items(resources: Path) -> tuple[InspectionItem, ...]:
    """Return the inspection items in the order of the table.

    Raises
    ------
    InputFault
        With every fault of the table.
    StoreFault
        The table cannot be read.
    """
    return inspection_items_from_toml(read_text(resources / _ITEMS), _ITEMS.name)


def inspection_items_from_toml(text: str, place: str) -> tuple[InspectionItem, ...]:
    """Return the items of a TOML text; each ``InspectionItemId`` stands once. Raise ``InputFault`` with all faults."""
    problems: list[InputProblem] = []
    rows = _rows(_ItemRow, text, place, "item", problems)
    found = [row.id for row in rows]
    for item in InspectionItemId:
        if found.count(item) > 1:
            problems.append(InputProblem(place, item.value, "written twice", "each item stands once"))
        elif item not in found and not problems:
            problems.append(InputProblem(place, item.value, "nothing", "write this item"))
    if problems:
        raise InputFault(tuple(problems))
    return tuple(
        InspectionItem(
            id=row.id,
            interval=row.interval,
            applies=frozenset(row.applies),
            source=row.source,
            status=row.status,
            cause=row.cause,
            schemes=frozenset(row.schemes),
        )
        for row in rows
    )


def load_reading_bands(resources: Path) -> Mapping[RecordItemId, ReadingBand]:
    """Return how far each reading may lie from its computed value; fails as ``load_inspection_items`` does."""
    problems: list[InputProblem] = []
    rows = _rows(_ReadingRow, read_text(resources / _READINGS), _READINGS.name, "reading", problems)
    if problems:
        raise InputFault(tuple(problems))
    bands = (ReadingBand(item=row.item, far_ratio=row.far_ratio, source=row.source, status=row.status) for row in rows)
    return {band.item: band for band in bands}


def _rows(row_type: type[RowT], text: str, place: str, name: str, problems: list[InputProblem]) -> list[RowT]:
    listed = read_toml(text, place).get(name)
    if not isinstance(listed, list) or not listed:
        problems.append(InputProblem(place, name, repr(listed), f"write the rows as [[{name}]] tables"))
        return []
    rows = (
        validated(row_type, data, place=place, row=row_name(data, index), problems=problems)
        for index, data in enumerate(listed, start=1)
    )
    return [row for row in rows if row is not None]
