"""The rows of the rule files as pydantic sees them, before their meaning is checked."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Any, TypeVar

from pydantic import BaseModel, ConfigDict, Field, StrictBool, StringConstraints, ValidationError
from pydantic_core import ErrorDetails

from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.caution import CautionCondition, CautionSeverity
from spoutline.model.faults import InputProblem
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.model.material import Material, MaterialColumn, Suitability
from spoutline.model.plain_values import PlainValues
from spoutline.ruletables.nearness import nearest

Line = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=300)]
OpenLine = Annotated[str, StringConstraints(strip_whitespace=True, max_length=600)]
RowId = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9_]{0,39}$")]

RowT = TypeVar("RowT", bound=BaseModel)

_SHOWN = 120  # characters of what stands there
_ENUM_WORDS: dict[type[StrEnum], str] = {
    LimitId: "limit",
    LimitStatus: "status",
    Material: "material",
    CautionSeverity: "severity",
}


class _Row(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class LimitRow(_Row):
    """One limit as a file writes it. ``title`` may be left out where a profile overrides a general row."""

    id: LimitId
    title: Line | None = None
    value: StrictBool | Decimal | str | tuple[str, ...] | None = None
    unit: str = ""
    source: Line
    clause: Line
    edition: Line
    status: LimitStatus
    note: OpenLine = ""


class ProfileHead(_Row):
    """The head of a profile file."""

    id: RowId
    title: Line
    edition: Line
    questions: tuple[Line, ...] = Field((), max_length=40)


class BasisRow(_Row):
    """Where some of a material's verdicts come from."""

    columns: tuple[MaterialColumn, ...] = Field(min_length=1)
    source: Line
    status: LimitStatus


class MaterialRow(_Row):
    """One material with its verdict for each liquid column; ``basis`` overrides source and status of some columns."""

    id: Material
    verdicts: dict[MaterialColumn, Suitability]
    source: Line
    status: LimitStatus
    basis: tuple[BasisRow, ...] = ()


class CautionHead(_Row):
    """The head of a caution file."""

    language: Annotated[str, StringConstraints(pattern=r"^[a-z]{2,3}$")]
    edition: Line


class CautionRow(_Row):
    """One caution as a file writes it."""

    id: RowId
    severity: CautionSeverity
    hazard: Line
    why: OpenLine = Field(min_length=1)
    what_to_do: OpenLine = Field(min_length=1)
    applies: tuple[CautionCondition, ...] = Field(min_length=1)
    source: Line
    status: LimitStatus


def read_toml(text: str, place: str) -> Mapping[str, Any]:
    """Return the TOML document, decimals kept as printed; raise ``InputFault`` naming the place of a syntax fault."""
    return toml_table(text, place, "file", parse_float=Decimal)


def validated(row_type: type[RowT], data: object, *, place: str, row: str, problems: list[InputProblem]) -> RowT | None:
    """Return ``data`` as a ``row_type``; where it is not one, add every fault to ``problems`` and return None."""
    try:
        return row_type.model_validate(data)
    except ValidationError as fault:
        problems.extend(_problems_of(fault, row_type, place=place, row=row))
        return None


def row_name(data: object, index: int) -> str:
    """Return how a message names a row: its id where it has one, else its number in the file."""
    if isinstance(data, Mapping) and isinstance(data.get("id"), str):
        return f"row {index} ({data['id']})"
    return f"row {index}"


def _problems_of(fault: ValidationError, row_type: type[BaseModel], *, place: str, row: str) -> list[InputProblem]:
    found: dict[str, InputProblem] = {}
    for error in fault.errors(include_url=False):
        location = error["loc"]
        field = str(location[0]) if location else "row"
        # a union reports one fault per member; the first is enough for the reader
        found.setdefault(field, InputProblem(place, f"{row}, {field}", _shown(error), _wanted(error, field, row_type)))
    return list(found.values())


def _shown(error: ErrorDetails) -> str:
    return "nothing" if error["type"] == "missing" else repr(error["input"])[:_SHOWN]


def _wanted(error: ErrorDetails, field: str, row_type: type[BaseModel]) -> str:
    if error["type"] == "missing":
        return "this field must be present"
    if error["type"] == "extra_forbidden":
        return f"no such field; {nearest(field, row_type.model_fields)}"
    if error["type"] == "enum":
        return _nearest_word(error, field, row_type)
    if field == "id":
        return "start with a letter and use lower-case letters, digits and underscores, 40 at most"
    if field == "value":
        return "write a number, true or false, a quoted word or a list of quoted words"
    return str(error["msg"]).removeprefix("Value error, ")


def _nearest_word(error: ErrorDetails, field: str, row_type: type[BaseModel]) -> str:
    annotation = row_type.model_fields[field].annotation
    word = _ENUM_WORDS.get(annotation, "word") if isinstance(annotation, type) else "word"
    known = re.findall(r"'([^']*)'", error["ctx"]["expected"])
    return f"no such {word}; {nearest(str(error['input']), known)}"
