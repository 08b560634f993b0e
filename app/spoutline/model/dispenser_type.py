"""Types of dispensers in a survey: chosen once for a dispenser, inherited by its positions.

A position keeps the type as it was when it was chosen, so that a later edit of the type changes no survey by itself. A
field is inherited where the type answers it and the position says the same; any other answer of the position stands.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any, Final

from pydantic import BaseModel

from spoutline.frozen import frozen
from spoutline.model.answered import AssumedTopic, FieldPath, answered, answers_of, topic_of
from spoutline.model.survey import DispenserType, Position, Survey

_IDENTITY: Final = frozenset({"name", "maker", "remark"})


def said_fields(kind: DispenserType) -> tuple[FieldPath, ...]:
    """Return what a type answers, in the order of its fields."""
    names = list(DispenserType.model_fields)
    said = (path for path in answered(kind) if path[0] not in _IDENTITY and _at(kind, path) is not None)
    return tuple(sorted(said, key=lambda path: (names.index(str(path[0])), path)))


def inherited_fields(position: Position) -> tuple[FieldPath, ...]:
    """Return the fields that a position has from its dispenser's type; none where it has no type."""
    kind = position.dispenser_type
    if kind is None:
        return ()
    own = answered(position)
    return tuple(path for path in said_fields(kind) if path in own and _at(position, path) == _at(kind, path))


def overridden_fields(position: Position) -> tuple[FieldPath, ...]:
    """Return the fields that the type answers and the position answers otherwise."""
    kind = position.dispenser_type
    if kind is None:
        return ()
    return tuple(path for path in said_fields(kind) if _at(position, path) != _at(kind, path))


def inherited_topics(position: Position) -> tuple[AssumedTopic, ...]:
    """Return what a position has from its dispenser's type, in the words of the questions, each once."""
    found = set(inherited_fields(position))
    topics = (topic_of(path, position) for path in found)
    kept = {topic for topic in topics if topic is not None}
    return tuple(topic for topic in AssumedTopic if topic in kept)


def with_type(position: Position, kind: DispenserType | None, *, overrides_too: bool = False) -> Position:
    """Return the position with another type, or none, of its dispenser.

    What it inherited from the type before is let go; its own answers stay, unless ``overrides_too`` lets those go that
    the new type answers. Raise ``ValidationError`` where the answers do not hold together with the type.
    """
    document = answers_of(position)
    for path in inherited_fields(position):
        _forget(document, path)
    if kind is None:
        document.pop("dispenser_type", None)
        return Position.model_validate(document)
    if overrides_too:
        for path in said_fields(kind):
            _forget(document, path)
    document["dispenser_type"] = answers_of(kind)
    return Position.model_validate(document)


def inheriting(position: Position) -> Position:
    """Return the position after its answers were put together anew: what it leaves open it has from its type."""
    return position if position.dispenser_type is None else Position.model_validate(answers_of(position))


def type_of_dispenser(survey: Survey, dispenser: str) -> DispenserType | None:
    """Return the type of a dispenser: that of its first position which has one."""
    kinds = (one.dispenser_type for one in survey.positions if one.dispenser == dispenser)
    return next((kind for kind in kinds if kind is not None), None)


def with_dispenser_type(
    survey: Survey, dispensers: Iterable[str], kind: DispenserType | None, *, overrides_too: bool = False
) -> Survey:
    """Return the survey with the type of some dispensers chosen for all their positions; see ``with_type``."""
    named = frozenset(dispensers)
    positions = tuple(
        with_type(one, kind, overrides_too=overrides_too) if one.dispenser in named else one for one in survey.positions
    )
    return survey.model_copy(update={"positions": positions})


@frozen(kw_only=True)
class ChangedType:
    """A type in a survey that the book knows otherwise now; ``current`` is None where it has none of this name."""

    dispensers: tuple[str, ...]
    before: DispenserType
    current: DispenserType | None
    fields: tuple[FieldPath, ...]  # that it answers otherwise now


def changed_types(survey: Survey, known: Mapping[str, DispenserType]) -> tuple[ChangedType, ...]:
    """Return which types of a survey the book knows otherwise now; ``known`` are the book's by folded name."""
    found: dict[str, tuple[DispenserType, dict[str, None]]] = {}
    for position in survey.positions:
        kind = position.dispenser_type
        if kind is not None:
            key = kind.model_dump_json(exclude_unset=True)
            found.setdefault(key, (kind, {}))[1][position.dispenser] = None
    changes = []
    for kind, dispensers in found.values():
        now = known.get(folded_type_name(kind.name))
        fields = () if now is None else changed_fields(kind, now)
        if now is None or fields:
            changes.append(ChangedType(dispensers=tuple(dispensers), before=kind, current=now, fields=fields))
    return tuple(sorted(changes, key=lambda one: (one.before.name, one.dispensers)))


def with_current_types(survey: Survey, known: Mapping[str, DispenserType]) -> Survey:
    """Return the survey with the figures that its types have in the book now; positions' own answers stay."""
    for change in changed_types(survey, known):
        if change.current is not None:
            survey = with_dispenser_type(survey, change.dispensers, change.current)
    return survey


def changed_fields(one: DispenserType, other: DispenserType) -> tuple[FieldPath, ...]:
    """Return the fields that two types answer otherwise, or only one of them answers."""
    mine, theirs = set(said_fields(one)), set(said_fields(other))
    differing = (path for path in mine & theirs if _at(one, path) != _at(other, path))
    return tuple(sorted({*(mine ^ theirs), *differing}))


def folded_type_name(name: str) -> str:
    """Return a type's name as names are compared: capitals do not count."""
    return " ".join(name.split()).casefold()


def _at(model: BaseModel, path: FieldPath) -> object:
    value: Any = model
    for step in path:
        value = getattr(value, str(step), None)
    return value


def _forget(document: dict[str, Any], path: FieldPath) -> None:
    *outer, last = map(str, path)
    place = document
    for name in outer:
        inner = place.get(name)
        if not isinstance(inner, dict):
            return
        place = inner
    place.pop(last, None)
