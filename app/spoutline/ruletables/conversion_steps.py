"""The table of steps of a conversion: what is done, in which order, by whom, how long it takes."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field

from spoutline.model.conversion_step import (
    ConversionStep,
    StepCondition,
    StepFigure,
    StepFigureId,
    StepRole,
    StepScope,
    StepTable,
)
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import LimitStatus
from spoutline.ruletables.files import read_text
from spoutline.ruletables.nearness import nearest
from spoutline.ruletables.schema import Line, OpenLine, RowId, read_toml, row_name, validated

_FILE = Path("conversion", "steps.toml")


class _StepRow(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    id: RowId
    title: Line
    detail: OpenLine
    scope: StepScope
    role: StepRole
    minutes: Annotated[int, Field(ge=0, le=10000)]
    after: tuple[RowId, ...] = ()
    conditions: tuple[StepCondition, ...] = Field(min_length=1)
    stops_sales: bool = False
    within_day: bool = False
    hands_on: bool = True
    source: Line
    status: LimitStatus


class _FigureRow(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)

    id: StepFigureId
    title: Line
    value: Annotated[float, Field(ge=0, le=10000)]
    unit: Line
    source: Line
    status: LimitStatus
    note: OpenLine = ""


def load_step_table(resources: Path) -> StepTable:
    """Return the steps in the order of the work.

    Parameters
    ----------
    resources
        The resources folder.

    Raises
    ------
    InputFault
        With every fault of the file.
    StoreFault
        The file cannot be read.
    """
    path = resources / _FILE
    return steps_from_toml(read_text(path), path.name)


def steps_from_toml(text: str, place: str) -> StepTable:
    """Return the table of a TOML text; raise ``InputFault`` with every fault, a step before its predecessors too."""
    document = read_toml(text, place)
    problems: list[InputProblem] = []
    edition = document.get("edition")
    if not isinstance(edition, str) or not edition.strip():
        problems.append(InputProblem(place, "edition", repr(edition), "write the edition of the table in quotes"))
    written = document.get("step")
    if not isinstance(written, list) or not written:
        problems.append(InputProblem(place, "step", repr(written), "write the steps as [[step]] tables"))
        written = []
    steps: dict[str, ConversionStep] = {}
    for index, data in enumerate(written, start=1):
        label = row_name(data, index)
        row = validated(_StepRow, data, place=place, row=label, problems=problems)
        if row is None:
            continue
        if row.id in steps:
            problems.append(InputProblem(place, f"{label}, id", repr(row.id), "each step stands once"))
        for earlier in row.after:
            if earlier not in steps:
                wanted = f"a step waits only for steps above it; {nearest(earlier, steps)}"
                problems.append(InputProblem(place, f"{label}, after", repr(earlier), wanted))
        steps[row.id] = ConversionStep(**row.model_dump())
    figures = _figures(document, place, problems)
    if problems:
        raise InputFault(tuple(problems))
    return StepTable(str(edition), tuple(steps.values()), tuple(figures.values()))


def _figures(
    document: Mapping[str, Any], place: str, problems: list[InputProblem]
) -> Mapping[StepFigureId, StepFigure]:
    """Return the figures by their id; add a problem for each that is wrong, twice or missing."""
    found: dict[StepFigureId, StepFigure] = {}
    written = document.get("figure")
    for index, data in enumerate(written if isinstance(written, list) else [], start=1):
        label = row_name(data, index)
        row = validated(_FigureRow, data, place=place, row=label, problems=problems)
        if row is not None and row.id in found:
            problems.append(InputProblem(place, f"{label}, id", repr(row.id.value), "each figure stands once"))
        elif row is not None:
            found[row.id] = StepFigure(**row.model_dump())
    for missing in StepFigureId:
        if missing not in found and not problems:
            problems.append(InputProblem(place, missing, "nothing", "this figure must have a row"))
    return found
