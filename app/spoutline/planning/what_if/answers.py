"""The survey with one answer changed on trial, and what people write for such an answer."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from enum import StrEnum
from typing import TypeVar

from pydantic import ValidationError

from spoutline.model.answered import answers_of
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.coverage_kinds import OutletKind
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.liquid import LiquidFamily
from spoutline.model.port import Gender
from spoutline.model.port_sizes import path_of_thread, read_size, thread_named
from spoutline.model.survey import Duty, Outlet, Position, Survey, SurveyLiquid, VapourStatus
from spoutline.model.what_if import OF_THE_STATION, WhatIf, WhatIfQuestion, WhatIfValue
from spoutline.model.worded import Worded
from spoutline.planning.keeping.coverage_map import outlet_of
from spoutline.planning.survey_import.words import blend_named, liquid_word

_MOST_PERCENT = 100
_OF_OUTLET = ("thread", "size", "gender", "path", "vapour_return_available")  # what a usual outlet answers
_MemberT = TypeVar("_MemberT", bound=StrEnum)


def value_named(question: WhatIfQuestion, text: str, field: str) -> WhatIfValue:
    """Return the answer that a text names.

    Raises
    ------
    InputFault
        The text names no answer of this question; ``field`` is what the fault names.
    """
    match question:
        case WhatIfQuestion.BLEND:
            return blend_of(text, field)
        case WhatIfQuestion.DUTY:
            return _member(Duty, text, field)
        case WhatIfQuestion.OUTLET:
            return outlet_named(text, field)
        case WhatIfQuestion.VAPOUR:
            return _member(VapourStatus, text, field)
        case WhatIfQuestion.CATALOGUE:
            return EditionRef.from_text(text, field)
        case _:
            return text.strip()


def blend_of(text: str, field: str) -> SurveyLiquid:
    """Return the liquid that a blend such as E15 or B20 names; raise ``InputFault`` for any other text."""
    percent = blend_named(text)
    if percent is None or percent > _MOST_PERCENT:
        wanted = Worded(
            "write a blend as fuel labels name it, such as E15 or B20, at most {most} percent", most=_MOST_PERCENT
        )
        raise InputFault((InputProblem("", field, repr(text), wanted),))
    return SurveyLiquid(family=LiquidFamily(liquid_word(text)), blend_percent=percent)


def outlet_named(text: str, field: str) -> OutletKind | Outlet:
    """Return the usual outlet that a text names, or another by thread, size and gender, such as ``1 1/2 NPT male``.

    A gender that is not named is female. Raise ``InputFault`` for any other text.
    """
    usual = _member_or_none(OutletKind, text)
    if usual is not None:
        return usual
    words = text.casefold().split()
    genders = [Gender(word) for word in words if word in set(Gender)]
    port = " ".join(word for word in words if word not in set(Gender))
    thread = thread_named(port) if len(genders) < 2 else None
    if thread is not None:
        with suppress(ValueError):
            size = read_size(port, thread)
            gender = genders[0] if genders else Gender.FEMALE
            found = Outlet(thread=thread, size=size, gender=gender, path=path_of_thread(thread))
            return outlet_kind_of(found) or found
    wanted = Worded(
        "use one of: {known}; or thread, size and gender, such as 1 1/2 NPT male",
        known=", ".join(one.value for one in OutletKind),
    )
    raise InputFault((InputProblem("", field, repr(text), wanted),))


def touched_positions(survey: Survey, asked: WhatIf) -> tuple[Position, ...]:
    """Return the positions that the other answer is for.

    Of the whole station, a blend is for the positions that sell its family, and vapor recovery for those of gasoline:
    no other has it.

    Raises
    ------
    InputFault
        A label is of no position, or no position of the station is meant.
    """
    if asked.labels:
        return _named(survey, asked.labels)
    family = _family_meant(asked)
    found = tuple(one for one in survey.positions if family in (None, one.liquid.family))
    if not found:
        wanted = Worded("no position of this station sells {liquid}; name a position", liquid=family or "")
        raise InputFault((InputProblem("", asked.question.value, _shown(asked.value), wanted),))
    return found


def changed_survey(survey: Survey, asked: WhatIf) -> Survey:
    """Return the survey with the other answer; everything else stays as it was answered.

    Rules and catalog are answered for the whole station, whichever positions are looked at. Raise ``InputFault`` where
    the survey does not admit the answer.
    """
    if asked.question in OF_THE_STATION:
        touched_positions(survey, asked)
        if asked.question is WhatIfQuestion.CATALOGUE:
            return survey.model_copy(update={"catalogue": str(asked.value)})
        return survey.model_copy(update={"site": survey.site.model_copy(update={"jurisdiction": str(asked.value)})})
    touched = {one.label for one in touched_positions(survey, asked)}
    positions = (_answering(one, asked) if one.label in touched else one for one in survey.positions)
    return survey.model_copy(update={"positions": tuple(positions)})


def _answering(position: Position, asked: WhatIf) -> Position:
    document = answers_of(position)
    value = asked.value
    if isinstance(value, SurveyLiquid):
        document["liquid"] = {"family": value.family, "blend_percent": value.blend_percent}
    elif isinstance(value, OutletKind | Outlet):
        other = value if isinstance(value, Outlet) else outlet_of(value)
        document["outlet"] = answers_of(position.outlet) | {name: getattr(other, name) for name in _OF_OUTLET}
    elif isinstance(value, VapourStatus):
        document["vapour_wanted"] = value
    else:
        document["duty"] = value
    try:
        return Position.model_validate(document)
    except ValidationError as fault:
        wanted = fault.errors(include_url=False)[0]["msg"]
        place = Worded("position {label}", label=position.label)
        problem = InputProblem(place, asked.question.value, _shown(value), wanted)
        raise InputFault((problem,)) from fault


def outlet_kind_of(outlet: Outlet) -> OutletKind | None:
    """Return which usual outlet this is; None for another."""
    usual = ((kind, outlet_of(kind)) for kind in OutletKind)
    same = (kind for kind, one in usual if all(getattr(one, name) == getattr(outlet, name) for name in _OF_OUTLET))
    return next(same, None)


def _family_meant(asked: WhatIf) -> LiquidFamily | None:
    if isinstance(asked.value, SurveyLiquid):
        return asked.value.family
    return LiquidFamily.GASOLINE if asked.question is WhatIfQuestion.VAPOUR else None


def _named(survey: Survey, labels: Iterable[str]) -> tuple[Position, ...]:
    wanted = tuple(dict.fromkeys(labels))
    known = {one.label: one for one in survey.positions}
    unknown = [label for label in wanted if label not in known]
    if unknown:
        right = Worded("use one of: {known}", known=", ".join(known))
        raise InputFault(tuple(InputProblem("", "position", repr(label), right) for label in unknown))
    return tuple(one for one in survey.positions if one.label in wanted)


def _member_or_none(members: type[_MemberT], text: str) -> _MemberT | None:
    word = "_".join(text.casefold().replace("-", " ").split())
    return next((one for one in members if one.value == word), None)


def _member(members: type[_MemberT], text: str, field: str) -> _MemberT:
    found = _member_or_none(members, text)
    if found is None:
        wanted = Worded("use one of: {known}", known=", ".join(one.value for one in members))
        raise InputFault((InputProblem("", field, repr(text), wanted),))
    return found


def _shown(value: WhatIfValue) -> str:
    if isinstance(value, SurveyLiquid):
        return f"{value.family.value} {value.blend_percent:g} %"
    if isinstance(value, Outlet):
        return f"{value.size} {value.thread} {value.gender}"
    return str(value)
