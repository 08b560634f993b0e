"""Large documents with far too many faults: refused entry by entry, before hundreds of thousands of faults are made."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from typing import Any, Final, get_args, get_origin, get_type_hints

from pydantic import BaseModel, ValidationError

from spoutline.book.survey_faults import too_many_faults
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

_LARGE: Final = 2_000_000  # characters; below, all faults of the worst document take some ten megabytes


def refuse_hopeless(
    text: str, document: Mapping[str, Any], model: type[BaseModel], place: str, whole: str, *, strict: bool
) -> None:
    """Refuse a large document that has more faults than are told, or that holds far too much in one entry.

    Parameters
    ----------
    text, document
        The document as JSON, and its values.
    model, strict
        What it is to be read as, and whether no value may be turned into one of another type.
    place, whole
        Where it came from, and what it is called in faults.

    Raises
    ------
    InputFault
        It is beyond a bound.
    """
    if len(text) <= _LARGE:
        return
    faults = 0
    entries = _entry_models(model)
    for name, value in document.items():
        parts = value if name in entries and isinstance(value, list) else [value]
        for number, one in enumerate(parts):
            written = json.dumps(one)
            if written.count(",") > BOUNDS.json_entry_values:
                field = name if parts is not value else f"{name}[{number}]"
                wanted = Worded("at most {most} values of one entry are read", most=BOUNDS.json_entry_values)
                raise InputFault(
                    (InputProblem(place, field, Worded("about {count} values", count=written.count(",")), wanted),)
                )
            if parts is value:
                faults += _faults(written, entries[name], strict=strict)
            if faults > BOUNDS.problems:
                raise InputFault((too_many_faults(Worded("more than {most}", most=BOUNDS.problems), place, whole),))


def _faults(text: str, model: type[BaseModel], *, strict: bool) -> int:
    try:
        model.model_validate_json(text, strict=strict)
    except ValidationError as fault:
        return fault.error_count()
    return 0


def _entry_models(model: type[BaseModel]) -> dict[str, type[BaseModel]]:
    return dict(_lists_of_models(model))


def _lists_of_models(model: type[BaseModel]) -> Iterator[tuple[str, type[BaseModel]]]:
    for name, hint in get_type_hints(model).items():
        kept = get_args(hint)
        if get_origin(hint) is tuple and isinstance(kept[0], type) and issubclass(kept[0], BaseModel):
            yield name, kept[0]
