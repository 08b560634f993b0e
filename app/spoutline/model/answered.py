"""Which fields of a survey somebody answered, apart from their values; what nobody answered is assumed.

The models keep the set themselves (pydantic's ``model_fields_set``): a field is answered where a document, a cell or a
person gave it, even if the value is the usual one. Equality looks at values alone, so equal questions get equal plans.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from enum import StrEnum
from typing import Any, TypeVar

from pydantic import BaseModel

from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import Duty, Position, Retrieval, Site, Survey

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
    """Say whether two models hold the same values and the same of them were answered.

    The window asks this of a whole survey after every edit and every look at the book: what both share is not walked
    through, so that a station of a thousand positions takes no longer than what was changed at it.
    """
    return one is other or (one == other and _same_given(one, other, True, True))


class AsAnswered:
    """A survey compared by its values and by what was answered, as papers tell it: models compare by values alone."""

    __slots__ = ("_survey",)

    def __init__(self, survey: Survey) -> None:
        self._survey = survey

    def __eq__(self, other: object) -> bool:
        return isinstance(other, AsAnswered) and same_answers(self._survey, other._survey)

    __hash__ = None  # type: ignore[assignment]  # marks are no part of a survey's hash


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


def _same_given(one: BaseModel, other: BaseModel, given: bool, other_given: bool) -> bool:
    """Say whether of two equal models the same fields were answered; ``given`` says whether the models were."""
    if given == other_given and (one is other or not given):
        return True
    for name in type(one).model_fields:
        if isinstance(one, Survey) and name in _MARKS:
            continue
        value, beside = getattr(one, name), getattr(other, name)
        known, known_beside = given and name in one.model_fields_set, other_given and name in other.model_fields_set
        if isinstance(value, BaseModel):
            pairs: Iterable[tuple[BaseModel, BaseModel]] = ((value, beside),)
        elif isinstance(value, tuple) and value and all(isinstance(held, BaseModel) for held in value):
            pairs = zip(value, beside, strict=True)
        elif known != known_beside:
            return False
        else:
            continue
        if not all(_same_given(held, held_beside, known, known_beside) for held, held_beside in pairs):
            return False
    return True


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


class AssumedTopic(StrEnum):
    """What a person reads of the fields that nobody answered, in the order of the questions."""

    LIQUID = "liquid"
    BLEND = "blend"
    DUTY = "duty"
    VAPOUR = "vapour"
    OUTLET = "outlet"
    FILLER = "filler"
    HOOK = "hook"
    RETRIEVAL = "retrieval"
    RETRACTOR = "retractor"
    REEL = "reel"
    FLOW_WANTED = "flow_wanted"
    HOLD_OPEN = "hold_open"
    PREPAY = "prepay"
    OVERHEAD = "overhead"
    FLAMMABLE_ZONE = "flammable_zone"
    OUTLET_STRENGTH = "outlet_strength"  # these two are told of what a dispenser's type answers; see _INHERITED
    SUPPLY = "supply"


# Fields that decide a set, with the topic they are told under; of the station as a whole where there is none.
_DECIDING: dict[FieldPath, AssumedTopic | None] = {
    ("liquid", "family"): AssumedTopic.LIQUID,
    ("liquid", "blend_percent"): AssumedTopic.BLEND,
    ("duty",): AssumedTopic.DUTY,
    ("vapour_today",): AssumedTopic.VAPOUR,
    ("vapour_wanted",): AssumedTopic.VAPOUR,
    ("outlet", "thread"): AssumedTopic.OUTLET,
    ("outlet", "size"): AssumedTopic.OUTLET,
    ("outlet", "gender"): AssumedTopic.OUTLET,
    ("outlet", "path"): AssumedTopic.OUTLET,
    ("outlet", "height_m"): AssumedTopic.OUTLET,
    ("outlet", "direction"): AssumedTopic.OUTLET,
    ("outlet", "pull_strength_n"): None,
    ("filler", "distance_m"): AssumedTopic.FILLER,
    ("filler", "height_m"): AssumedTopic.FILLER,
    ("hook", "distance_m"): AssumedTopic.HOOK,
    ("hook", "height_m"): AssumedTopic.HOOK,
    ("retrieval",): AssumedTopic.RETRIEVAL,
    ("retractor", "height_m"): AssumedTopic.RETRACTOR,
    ("retractor", "clamp_fraction"): AssumedTopic.RETRACTOR,
    ("retractor", "force_n"): AssumedTopic.RETRACTOR,
    ("reel", "drum_diameter_m"): AssumedTopic.REEL,
    ("reel", "turns_left"): AssumedTopic.REEL,
    ("supply", "pressure_kpa"): None,
    ("supply", "maximum_flow_l_min"): None,
    ("supply", "wanted_flow_l_min"): AssumedTopic.FLOW_WANTED,
    ("hold_open_wanted",): AssumedTopic.HOLD_OPEN,
    ("prepay",): AssumedTopic.PREPAY,
    ("overhead",): AssumedTopic.OVERHEAD,
    ("in_flammable_zone",): AssumedTopic.FLAMMABLE_ZONE,
}
_INHERITED: dict[FieldPath, AssumedTopic] = {
    ("outlet", "vapour_return_available"): AssumedTopic.OUTLET,
    ("outlet", "pull_strength_n"): AssumedTopic.OUTLET_STRENGTH,
    ("supply", "pressure_kpa"): AssumedTopic.SUPPLY,
    ("supply", "maximum_flow_l_min"): AssumedTopic.SUPPLY,
}
_MAIN = (("liquid", "family"), ("liquid", "blend_percent"), ("duty",), ("vapour_today",), ("vapour_wanted",))
_OF_SITE: tuple[FieldPath, ...] = (
    ("jurisdiction",),
    ("climate", "low_c"),
    ("climate", "high_c"),
    ("currency",),
    ("service",),
    ("fenced",),
)


def assumptions(position: Position) -> tuple[str, ...]:
    """Return the fields that decide the set and that nobody answered, as ``outlet.height_m``, in a fixed order.

    Names, notes and what a person decides are no assumptions; nor is a field that is not read here, as the drum of a
    position without a reel.
    """
    silent = assumed_fields(position)
    return tuple(".".join(map(str, path)) for path in _DECIDING if path in silent and _is_read(path, position))


def assumed_topics(position: Position) -> tuple[AssumedTopic, ...]:
    """Return what was assumed in the words of the questions, each once; what is asked of the station is left out."""
    silent = assumed_fields(position)
    topics = (topic for path, topic in _DECIDING.items() if path in silent and _is_read(path, position))
    return tuple(dict.fromkeys(topic for topic in topics if topic is not None))


def topic_of(path: FieldPath, position: Position) -> AssumedTopic | None:
    """Return under which words a field is told that a dispenser's type answers; None where nobody reads it there."""
    return (_INHERITED.get(path) or _DECIDING.get(path)) if _is_read(path, position) else None


def site_assumptions(site: Site) -> tuple[str, ...]:
    """Return the fields of the station that decide sets and that nobody answered."""
    given = answered(site)
    return tuple(".".join(map(str, path)) for path in _OF_SITE if path not in given)


def is_surveyed(position: Position) -> bool:
    """Say whether anybody answered a main question: liquid, blend, duty or vapour recovery."""
    return any(_is_given(position, path) for path in _MAIN)


def _is_given(model: BaseModel, path: FieldPath) -> bool:
    """Say whether somebody answered a field; the window asks this of every position after every edit."""
    held: Any = model
    for name in path:
        if not isinstance(held, BaseModel) or name not in held.model_fields_set:
            return False
        held = getattr(held, str(name))
    return True


def surveyed_only(survey: Survey) -> Survey | None:
    """Return the survey without the positions that are not surveyed yet; None where none is surveyed."""
    kept = tuple(one for one in survey.positions if is_surveyed(one))
    if len(kept) == len(survey.positions):
        return survey
    return survey.model_copy(update={"positions": kept}) if kept else None


def _is_read(path: FieldPath, position: Position) -> bool:
    on_reel = position.duty is Duty.REEL or position.retrieval is Retrieval.REEL
    is_def = position.liquid.family is LiquidFamily.DEF
    match path[0]:
        case "retractor":
            return position.retrieval is Retrieval.RETRACTOR
        case "reel":
            return on_reel
        case "in_flammable_zone":
            return is_def
        case "hook":
            return not on_reel
    return path != ("liquid", "blend_percent") or not is_def
