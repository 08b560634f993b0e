"""The answers of a dispenser type as a person writes and reads them, in the units in use."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from pydantic import ValidationError

from spoutline.model.answered import answered, answers_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import DispenserType
from spoutline.model.type_columns import TYPE_COLUMNS, TypeColumn
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.ports import settle_outlet
from spoutline.planning.table_intake.cell_values import CellFault, read_cell
from spoutline.planning.table_intake.intake_fields import CellKind, TableSubject, fields_of
from spoutline.units.display import Display
from spoutline.units.quantities import parse

_COLUMNS: Final = {column.key: column for column in TYPE_COLUMNS}
_FIELDS: Final = fields_of(TableSubject.DISPENSER_TYPES).by_key


def shown_answer(kind: DispenserType, column: TypeColumn, display: Display) -> str:
    """Return what a type answers in a column, as a person reads it; empty for no answer."""
    value = column.value(kind)
    if column.path not in answered(kind) or value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, int | float) and column.dimension is not None:
        return display.show(column.unit.to_si(float(value)), column.dimension)
    return f"{value:g}" if isinstance(value, float) else str(value)


def with_answers(base: DispenserType | None, written: Mapping[str, str], display: Display) -> DispenserType:
    """Return a type with what is written under the keys of ``TYPE_COLUMNS``; an empty text takes an answer away.

    Bare numbers are in the units of ``display``. Raise ``InputFault`` with everything that cannot be used.
    """
    document: dict[str, Any] = {} if base is None else answers_of(base, mode="json")
    problems: list[InputProblem] = []
    for key, text in written.items():
        column = _COLUMNS.get(key)
        if column is None:
            problems.append(
                InputProblem("", key, repr(text), Worded("use one of: {columns}", columns=", ".join(_COLUMNS)))
            )
            continue
        try:
            _put(document, column, _value(text.strip(), column, display) if text.strip() else None)
        except InputFault as fault:
            problems += [InputProblem("", key, one.value, one.wanted) for one in fault.problems]
        except CellFault as fault:
            problems.append(InputProblem("", key, repr(text), fault.wanted))
    settle_outlet(document, {key: text for key, text in written.items() if text.strip()})
    if problems:
        raise InputFault(tuple(problems))
    try:
        return DispenserType.model_validate(document)
    except ValidationError as fault:
        raise InputFault(tuple(_problem(error, document) for error in fault.errors(include_url=False))) from fault


def _value(text: str, column: TypeColumn, display: Display) -> object:
    field = _FIELDS[column.key]
    if column.dimension is not None:
        si = parse(text, column.dimension, display.system, field=column.key)
        return round(si / column.unit.to_si(1.0), 9)
    if field.cell is CellKind.TEXT:
        return text
    return read_cell(text, field)


def _put(document: dict[str, Any], column: TypeColumn, value: object) -> None:
    *outer, last = column.path
    place = document
    for step in outer:
        place = place.setdefault(step, {})
    if value is None:
        place.pop(last, None)
    else:
        place[last] = value
    if outer and not place:
        document.pop(outer[0], None)


def _problem(error: Any, document: Mapping[str, Any]) -> InputProblem:  # noqa: ANN401 - details of a validation error
    context = error.get("ctx") or {}
    steps = [str(step) for step in error["loc"]] + ([str(context["field"])] if "field" in context else [])
    said: Any = document
    for step in steps:
        said = said.get(step) if isinstance(said, Mapping) else None
    wanted = str(context.get("wanted") or error["msg"]).removeprefix("Value error, ")
    if error["type"] == "missing":
        wanted = "a name is needed"
    shown = "nothing" if said in (None, "") else repr(said)
    return InputProblem("", ".".join(steps) or "type", shown, wanted.replace("Input should", "it should"))
