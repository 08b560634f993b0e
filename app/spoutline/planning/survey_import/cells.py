"""One cell of a table of positions: what it shows, and the survey after some of them were written."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping
from enum import StrEnum
from typing import Any

from pydantic import BaseModel, ValidationError

from spoutline.book.survey_faults import problems_of
from spoutline.model.answered import answers_of
from spoutline.model.faults import InputFault, InputNote, InputProblem
from spoutline.model.survey import Position, Survey
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.fields import BY_KEY, ImportField
from spoutline.planning.survey_import.ports import outlet_notes, settle_outlet
from spoutline.planning.survey_import.words import blend_named, put_value, value_of
from spoutline.units.display import Display


def cell_value(position: Position, field: ImportField) -> object:
    """Return the answer of a position to a field."""
    value: object = position
    for name in field.path:
        value = getattr(value, name)
    return value


def cell_text(position: Position, field: ImportField, display: Display) -> str:
    """Return what a cell shows: the survey's own words, figures in the units in use, nothing for no answer."""
    value = cell_value(position, field)
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, StrEnum):
        return value.value.replace("_", " ")
    if field.dimension is not None and isinstance(value, int | float):
        return display.show(float(value) * field.factor, field.dimension)
    return str(value)


def edit_text(position: Position, field: ImportField, display: Display) -> str:
    """Return a cell's text for editing and copying: as shown, but figures with every digit that they have."""
    value = cell_value(position, field)
    if field.dimension is None or isinstance(value, bool) or not isinstance(value, int | float):
        return cell_text(position, field, display)
    return display.exact(float(value) * field.factor, field.dimension)


def with_cells(
    survey: Survey,
    written: Mapping[tuple[str, str], str],
    display: Display,
    tell: Callable[[InputNote], None] | None = None,
) -> Survey:
    """Return the survey after texts were written into cells.

    Parameters
    ----------
    survey
        The survey before.
    written
        Label of the position (before the change) and key of the field, to the new text. An empty text takes an optional
        answer away; a text that the cell shows already changes nothing.
    display
        The units of bare numbers, and of what the cells show.
    tell
        Hears how a size was understood and which path does not go with its thread; the label is the place.

    Raises
    ------
    InputFault
        With every text that cannot be used, its position and field; nothing is taken then.
    """
    problems: list[InputProblem] = []
    by_label: dict[str, dict[str, str]] = {}
    for (label, key), text in written.items():
        by_label.setdefault(label, {})[key] = text
    positions = [
        _written(position, by_label[position.label], display, problems) if position.label in by_label else position
        for position in survey.positions
    ]
    counts = Counter(position.label for position in positions)
    for label in sorted(label for label, count in counts.items() if count > 1):
        problems.append(InputProblem("", "label", repr(label), "every position needs a label of its own"))
    if problems:
        raise InputFault(tuple(problems))
    if tell is not None:
        for position, origin in zip(positions, survey.positions, strict=True):
            for note in outlet_notes(position.outlet, by_label.get(origin.label, {})):
                tell(InputNote(position.label, note.field, note.value, note.told))
    return survey.model_copy(update={"positions": tuple(positions)})


def _written(position: Position, texts: Mapping[str, str], display: Display, problems: list[InputProblem]) -> Position:
    document = answers_of(position, mode="json")
    before, taken = len(problems), dict[str, str]()
    named = blend_named(texts.get("liquid.family", ""))
    if named is not None:  # E85 says what the liquid is and how much is blended
        texts = {"liquid.blend_percent": f"{named:g} %", **texts}
    for key, text in texts.items():
        field = BY_KEY[key]
        if text.strip() in (cell_text(position, field, display), edit_text(position, field, display)):
            continue
        try:
            if text.strip():
                put_value(document, field.path, value_of(text.strip(), field, "", display.system))
            else:
                _empty(document, position, field)
        except InputFault as fault:
            problems.extend(InputProblem(position.label, key, one.value, one.wanted) for one in fault.problems)
            continue
        taken[key] = text
    settle_outlet(document, taken)
    blend = document.get("liquid", {}).get("blend_percent", position.liquid.blend_percent)
    if named is not None and blend != named:
        wanted = Worded("{texts} says {named:g} %; let both say the same", texts=texts["liquid.family"], named=named)
        value = repr(texts["liquid.blend_percent"])
        problems.append(InputProblem(position.label, "liquid.blend_percent", value, wanted))
    if len(problems) > before:
        return position
    try:
        return Position.model_validate(document)
    except ValidationError as fault:
        problems.extend(problems_of(fault, Position, position.label, whole=", ".join(texts)))
        return position


def _empty(document: dict[str, Any], position: Position, field: ImportField) -> None:
    """Take an answer out of a position's document: nobody answers the field then, its usual value is assumed."""
    owner: BaseModel = position
    for name in field.path[:-1]:
        owner = getattr(owner, name)
    declared = type(owner).model_fields[field.path[-1]]
    if declared.is_required():
        raise InputFault((InputProblem("", field.key, "nothing", "this cell cannot stay empty"),))
    place: Any = document
    for name in field.path[:-1]:
        place = place.get(name, {})
    place.pop(field.path[-1], None)
