"""Validation errors of the survey model turned into problems a person can act on: field, value, what would be right."""

from __future__ import annotations

import types
from collections.abc import Callable, Iterator, Mapping
from dataclasses import fields, is_dataclass
from decimal import Decimal
from enum import Enum
from typing import Annotated, Any, TypeVar, Union, get_args, get_origin, get_type_hints

import annotated_types
from pydantic import BaseModel, ValidationError
from pydantic.fields import FieldInfo
from pydantic_core import ErrorDetails

from spoutline.book.choices import choice_of
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.field_faults import FAULT_BESIDE_OTHERS
from spoutline.model.figure import Figure, plain_number
from spoutline.model.worded import Worded

_SHOWN_LENGTH = 60
ModelT = TypeVar("ModelT", bound=BaseModel)


def problems_of(
    error: ValidationError, model: type[BaseModel], place: str, whole: str = "survey"
) -> tuple[InputProblem, ...]:
    """Return one problem per fault in ``error``.

    Arguments: ``model`` is the class that was validated, ``place`` the file or source named in each problem. The
    field is a path such as ``positions[2].outlet.thread``, or ``whole`` for a fault of the document as a whole.
    """
    count = error.error_count()
    if count > BOUNDS.problems:
        return (too_many_faults(str(count), place, whole),)
    faults = error.errors(include_url=False)
    # A list whose entries are faulty counts as too short as well: saying so would only confuse.
    inner = {fault["loc"][:depth] for fault in faults for depth in range(len(fault["loc"]))}
    told = [fault for fault in faults if not (fault["type"] == "too_short" and fault["loc"] in inner)]
    # a default that depends on a faulty field is no fault of its own
    told = [fault for fault in told if fault["type"] != "default_factory_not_called"]
    return tuple(_problem(fault, model, place, whole) for fault in told)


def too_many_faults(count: str, place: str, whole: str) -> InputProblem:
    """Return the one problem of a document that has so many faults that they are not told one by one."""
    wanted = Worded(
        "at most {most} faults are told one by one; this is hardly a document of its kind", most=BOUNDS.problems
    )
    return InputProblem(place, whole, Worded("{count} faults", count=count), wanted)


def made(model: type[ModelT], place: str = "", **answers: object) -> ModelT:
    """Return a document made of what a person entered; raise ``InputFault`` with every fault, named by its field."""
    try:
        return model.model_validate(answers)
    except ValidationError as fault:
        raise InputFault(problems_of(fault, model, place, whole="entry")) from fault


def _problem(details: ErrorDetails, model: type[BaseModel], place: str, whole: str) -> InputProblem:
    location = details["loc"]
    field = field_path(location) or whole
    if details["type"] == FAULT_BESIDE_OTHERS:
        context = details.get("ctx", {})
        path = ".".join(filter(None, (field_path(location), context["field"])))
        return InputProblem(place, path, context["value"], context["wanted"])
    if details["type"] == "missing":
        wanted = Worded("this field is needed: {meaning}", meaning=_meaning(model, location))
        return InputProblem(place, field, "nothing", wanted, is_missing=True)
    if details["type"] == "extra_forbidden":
        known = tuple(sorted(_fields_at(model, location[:-1])))
        wanted = Worded("there is no such field here; {choice_of}", choice_of=choice_of(str(location[-1]), known))
        return InputProblem(place, field, _shown(details["input"]), wanted)
    return InputProblem(place, field, _shown(details["input"]), _wanted(details, model))


def field_path(location: tuple[int | str, ...]) -> str:
    """Return a location as a person writes it: names joined by dots, list places in brackets."""
    path = ""
    for step in location:
        path += f"[{step}]" if isinstance(step, int) else f".{step}" if path else str(step)
    return path


def _shown(value: object) -> str:
    if isinstance(value, str):
        text = repr(value)
    elif isinstance(value, bool):
        text = str(value).lower()
    elif value is None:
        text = "null"
    elif isinstance(value, Mapping):
        text = "an object"
    elif isinstance(value, list | tuple):
        text = Worded("a list of {count}", count=len(value)) if value else "an empty list"
    else:
        text = str(value)
    return text if len(text) <= _SHOWN_LENGTH else f"{text[: _SHOWN_LENGTH - 1]}…"


def _wanted(details: ErrorDetails, model: type[BaseModel]) -> str:
    kind = details["type"]
    location = details["loc"]
    if kind == "value_error":
        return str(details.get("ctx", {}).get("error", details["msg"]))
    if kind == "enum":
        return choice_of(str(details["input"]), _enum_values(_annotation_at(model, location)))
    if kind == "literal_error":
        return Worded("it must be {get}", get=details.get("ctx", {}).get("expected", "the value that the schema names"))
    for prefix, describe in _BY_TYPE:
        if kind.startswith(prefix):
            return describe(model, location)
    return details["msg"][:1].lower() + details["msg"][1:]


def _number_wanted(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    return Worded("a number is needed{range_at}", range_at=_range_at(model, location))


def _whole_number_wanted(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    return Worded("a whole number is needed{range_at}", range_at=_range_at(model, location))


def _yes_no_wanted(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    return "true or false is needed, without quotes"


def _text_wanted(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    return Worded("a text is needed{lengths_at}", lengths_at=_lengths_at(model, location, Worded("characters")))


def _pattern_wanted(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    return Worded("it must be written as the schema says: {meaning} Example: USD", meaning=_meaning(model, location))


def _list_wanted(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    return Worded("a list is needed{lengths_at}", lengths_at=_lengths_at(model, location, Worded("entries")))


def _object_wanted(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    return Worded(
        "an object is needed, with fields such as: {fields_at}",
        fields_at=", ".join(sorted(_fields_at(model, location))),
    )


_BY_TYPE: tuple[tuple[str, Callable[[type[BaseModel], tuple[int | str, ...]], str]], ...] = (
    ("float_", _number_wanted),
    ("finite_number", _number_wanted),
    ("greater_than", _number_wanted),
    ("less_than", _number_wanted),
    ("int_", _whole_number_wanted),
    ("bool_", _yes_no_wanted),
    ("string_pattern_mismatch", _pattern_wanted),
    ("string_", _text_wanted),
    ("too_", _list_wanted),
    ("tuple_", _list_wanted),
    ("list_", _list_wanted),
    ("model_", _object_wanted),
    ("dataclass_", _object_wanted),
    ("dict_", _object_wanted),
)


def _flat(annotation: object) -> Iterator[object]:
    """Yield the plain types and the constraints inside an annotation, unions and Annotated opened."""
    origin = get_origin(annotation)
    if origin is Annotated:
        inner, *extras = get_args(annotation)
        yield from _flat(inner)
        for extra in extras:
            yield extra
            if isinstance(extra, Figure):  # declares several constraints at once
                yield from extra
    elif origin in (Union, types.UnionType):
        for inner in get_args(annotation):
            yield from _flat(inner)
    else:
        yield annotation


def _field_lists_in(annotation: object) -> Iterator[Mapping[str, tuple[object, str]]]:
    """Yield annotation and description of every field of each model or dataclass inside an annotation."""
    for item in _flat(annotation):
        if isinstance(item, type) and issubclass(item, BaseModel):
            yield {name: (_whole(field), field.description or "") for name, field in item.model_fields.items()}
        elif isinstance(item, type) and is_dataclass(item):
            hints = get_type_hints(item, include_extras=True)
            yield {field.name: (hints[field.name], _declared_meaning(hints[field.name])) for field in fields(item)}


def _declared_meaning(annotation: object) -> str:
    """Return what the declaration of a part's figure says that it is; empty for any other field."""
    return next((item.meaning for item in _flat(annotation) if isinstance(item, Figure)), "")


def _step(annotation: object, step: int | str) -> object:
    """Return the annotation one step further down the location; ``object`` where the model says nothing."""
    if isinstance(step, int):
        for item in _flat(annotation):
            if get_origin(item) in (tuple, list):
                return get_args(item)[0]
        return object
    for known in _field_lists_in(annotation):
        if step in known:
            return known[step][0]
    return object


def names_in(model: type[BaseModel]) -> frozenset[str]:
    """Return the names of all fields of a model and of the models in it."""
    found: set[str] = set()
    seen: set[object] = set()
    ahead: list[object] = [model]
    while ahead:
        annotation = ahead.pop()
        for item in _flat(annotation):
            inner = get_args(item)
            if inner:
                ahead.extend(inner)
            elif item not in seen:
                seen.add(item)
                for known in _field_lists_in(item):
                    found.update(known)
                    ahead.extend(annotation for annotation, _ in known.values())
    return frozenset(found)


def _whole(field: FieldInfo) -> object:
    """Return the field's annotation together with its constraints, which pydantic keeps apart."""
    annotation: Any = field.annotation
    for constraint in field.metadata:
        annotation = Annotated[annotation, constraint]
    return annotation


def _annotation_at(model: type[BaseModel], location: tuple[int | str, ...]) -> object:
    annotation: object = model
    for step in location:
        annotation = _step(annotation, step)
    return annotation


def _fields_at(model: type[BaseModel], location: tuple[int | str, ...]) -> tuple[str, ...]:
    return tuple(name for known in _field_lists_in(_annotation_at(model, location)) for name in known)


def _enum_values(annotation: object) -> tuple[str, ...]:
    return tuple(
        str(member.value)
        for item in _flat(annotation)
        if isinstance(item, type) and issubclass(item, Enum)
        for member in item
    )


def _meaning(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    """Return the field's own description; its name where it has none."""
    for known in _field_lists_in(_annotation_at(model, location[:-1])):
        _annotation, meaning = known.get(str(location[-1]), (object, ""))
        if meaning:
            return meaning
    return "see `spoutline schema`"


def _range_at(model: type[BaseModel], location: tuple[int | str, ...]) -> str:
    words = [word for item in _flat(_annotation_at(model, location)) for word in _bounds(item)]
    return Worded(", {bounds}", bounds=_both(words)) if words else ""


def _both(bounds: list[str]) -> str:
    """Return what bounds from below and from above as one phrase."""
    return Worded("{low} and {high}", low=bounds[0], high=bounds[-1]) if len(bounds) == 2 else " and ".join(bounds)


def _bounds(constraint: object) -> Iterator[str]:
    if isinstance(constraint, FieldInfo):
        for inner in constraint.metadata:
            yield from _bounds(inner)
    elif isinstance(constraint, annotated_types.Interval):
        for inner in constraint:
            yield from _bounds(inner)
    elif isinstance(constraint, annotated_types.Gt):
        yield Worded("above {plain_number}", plain_number=_plain_number(constraint.gt))
    elif isinstance(constraint, annotated_types.Ge):
        yield Worded("at least {plain_number}", plain_number=_plain_number(constraint.ge))
    elif isinstance(constraint, annotated_types.Lt):
        yield Worded("below {plain_number}", plain_number=_plain_number(constraint.lt))
    elif isinstance(constraint, annotated_types.Le):
        yield Worded("at most {plain_number}", plain_number=_plain_number(constraint.le))


def _plain_number(bound: object) -> str:
    """Return a bound as a person writes it, a decimal without an exponent."""
    if isinstance(bound, Decimal):
        return format(bound, "f")
    return plain_number(bound) if isinstance(bound, float) else str(bound)


def _lengths_at(model: type[BaseModel], location: tuple[int | str, ...], counted: str) -> str:
    bounds: list[str] = []
    for item in _flat(_annotation_at(model, location)):
        low = getattr(item, "min_length", None)
        high = getattr(item, "max_length", None)
        bounds += [Worded("at least {low}", low=low)] if isinstance(low, int) and low > 0 else []
        bounds += [Worded("at most {high}", high=high)] if isinstance(high, int) else []
    return Worded(" of {bounds} {counted}", bounds=_both(bounds), counted=counted) if bounds else ""
