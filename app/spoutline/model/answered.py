"""Which fields of a survey somebody answered, apart from their values; what nobody answered is assumed.

The models keep the set themselves (pydantic's ``model_fields_set``): a field is answered where a document, a cell or a
person gave it, even if the value is the usual one. Equality looks at values alone, so equal questions get equal plans.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any, TypeVar

from pydantic import BaseModel

from spoutline.model.survey import Position, Survey

FieldPath = tuple[str | int, ...]
_MARKS = frozenset({"format", "version"})  # of the document: nobody answers them
_ModelT = TypeVar("_ModelT", bound=BaseModel)


def answered(model: BaseModel) -> frozenset[FieldPath]:
    """Return the path of every answered field: of a survey, a position, or any part of them.

    A field that holds a model is answered field by field; a list counts as a whole, and its models field by field.
    """
    return frozenset(path for path, given in _fields(model, True) if given)


def assumed_fields(position: Position) -> frozenset[FieldPath]:
    """Return the path of every field of a position that nobody answered; its value is the usual one."""
    return frozenset(path for path, given in _fields(position, True) if not given)


def same_answers(one: BaseModel, other: BaseModel) -> bool:
    """Say whether two models hold the same values and the same of them were answered."""
    return one == other and answered(one) == answered(other)


def answered_document(survey: Survey) -> dict[str, Any]:
    """Return the survey as JSON values: what was answered, and what every survey's document needs."""
    written = _without_empty(survey.model_dump(mode="json", exclude_unset=True), survey)
    return {"format": survey.format, "version": survey.version, **written}


def answers_of(model: BaseModel, *, mode: str = "python") -> dict[str, Any]:
    """Return the answered fields of a model as a document from which it is read again with the same answers."""
    return model.model_dump(mode=mode, exclude_unset=True)


def unanswered(model: _ModelT, *names: str) -> _ModelT:
    """Return the model with its own fields ``names`` set back: the usual value, answered by nobody."""
    usual = {
        name: type(model).model_fields[name].get_default(call_default_factory=True, validated_data=dict(model))
        for name in names
    }
    copy = model.model_copy(update=usual)
    copy.model_fields_set.difference_update(names)
    return copy


def with_answers_from(model: _ModelT, origin: _ModelT, names: Iterable[str]) -> _ModelT:
    """Return the model with the fields ``names`` of ``origin``: their values, and whether they were answered."""
    taken = tuple(names)
    copy = model.model_copy(update={name: getattr(origin, name) for name in taken})
    copy.model_fields_set.difference_update(set(taken) - origin.model_fields_set)
    return copy


def _fields(model: BaseModel, given: bool) -> Iterator[tuple[FieldPath, bool]]:
    for name in type(model).model_fields:
        if isinstance(model, Survey) and name in _MARKS:
            continue
        value, known = getattr(model, name), given and name in model.model_fields_set
        if isinstance(value, BaseModel):
            inner = _fields(value, known)
        elif isinstance(value, tuple) and value and all(isinstance(one, BaseModel) for one in value):
            inner = (
                ((place, *path), is_given) for place, one in enumerate(value) for path, is_given in _fields(one, known)
            )
        else:
            inner = iter((((), known),))
        for path, is_given in inner:
            yield (name, *path), is_given


def _without_empty(document: dict[str, Any], model: BaseModel) -> dict[str, Any]:
    """Return a model's document without objects that answer nothing; one that could be null stays: it is not null."""
    found = {}
    for name, value in document.items():
        held, kept = getattr(model, name), value
        if isinstance(held, BaseModel):
            kept = _without_empty(value, held)
            if not kept and type(model).model_fields[name].default_factory is not None:
                continue
        elif isinstance(held, tuple):
            pairs = zip(value, held, strict=True)
            kept = [_without_empty(one, of) if isinstance(of, BaseModel) else one for one, of in pairs]
        found[name] = kept
    return found
