"""Read a typed answer and put it into the survey: a valid survey, or a fault that says what would be right."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import Any, TypeVar, get_args

from pydantic import BaseModel, ValidationError
from pydantic.fields import FieldInfo

from spoutline.gui.edits.question import AnswerValue, Entry, Measure, Question, Step
from spoutline.model.answered import answers_of, unanswered
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.field_faults import FAULT_BESIDE_OTHERS
from spoutline.model.liquid import LiquidFamily
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Filler, Position, Site, Survey
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.ports import settle_outlet
from spoutline.units.display import Display
from spoutline.units.quantities import parse

_SEPARATOR = ";"
_OwnerT = TypeVar("_OwnerT", Position, Site, ConversionAnswers)


def shown_answer(value: AnswerValue, question: Question, display: Display) -> str:
    """Return a typed answer as the field shows it, in the units of ``display``; empty for no answer."""
    if value is None:
        return ""
    if question.measure is None:
        return str(value)
    if isinstance(value, tuple):
        return f"{_SEPARATOR} ".join(_shown_number(number, question.measure, display) for number in value)
    return _shown_number(float(value), question.measure, display)


def read_answer(text: str, question: Question, display: Display) -> AnswerValue:
    """Return the value that a typed text stands for, numbers in the survey's own unit.

    Raises
    ------
    InputFault
        The text is no quantity, or empty where an answer is needed.
    """
    if question.measure is None:
        return text
    if not text.strip():
        if question.entry is Entry.QUANTITIES:
            return ()
        if question.empty_means:
            return None
        example = display.example(question.measure.dimension)
        raise _fault(question, text, f"write a number and a unit, for example {example}")
    if question.entry is Entry.QUANTITIES:
        return tuple(_read_number(piece, question, display) for piece in text.split(_SEPARATOR))
    return _read_number(text, question, display)


def _read_number(text: str, question: Question, display: Display) -> float:
    measure = question.measure or Measure(Dimension.RATIO)
    # a person types whole counts and shares bare; every other bare number is in the unit shown beside the field
    return parse(text, measure.dimension, display.system, field=field_words(question)) / measure.factor


def _shown_number(stored: float, measure: Measure, display: Display) -> str:
    return display.show(stored * measure.factor, measure.dimension)


def set_answer(survey: Survey, label: str, question: Question, value: AnswerValue, display: Display) -> Survey:
    """Return the survey with one answer of one position, or of the site, replaced.

    Raises
    ------
    InputFault
        The survey does not admit the value; the range is told in the units of ``display``.
    """
    if question.step is Step.SITE:
        return survey.model_copy(update={"site": _with_value(survey.site, question, value, display)})
    if question.step is Step.CONVERSION:
        return survey.model_copy(update={"conversion": _with_value(survey.conversion, question, value, display)})
    old = survey.position(label)
    if old is None:
        raise KeyError(label)
    consistent = _made_consistent(old, question, value)
    return with_position(survey, label, _with_value(consistent, question, value, display))


def with_position(survey: Survey, label: str, position: Position) -> Survey:
    """Return the survey in which ``position`` stands in the place of the one named ``label``."""
    positions = tuple(position if old.label == label else old for old in survey.positions)
    return survey.model_copy(update={"positions": positions})


def with_filler(survey: Survey, label: str) -> Survey:
    """Return the survey with one more filler at a position, a copy of the main one to start from."""
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    limit = 12
    if len(position.other_fillers) >= limit:
        wanted = f"one position holds at most {limit} further fillers; put the rest on another position"
        raise InputFault((InputProblem("", "further fillers", str(len(position.other_fillers) + 1), wanted),))
    new = Filler(label="other side", distance_m=position.filler.distance_m, height_m=position.filler.height_m)
    return with_position(survey, label, position.model_copy(update={"other_fillers": (*position.other_fillers, new)}))


def without_filler(survey: Survey, label: str, index: int) -> Survey:
    """Return the survey without one of the further fillers of a position."""
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    rest = tuple(filler for place, filler in enumerate(position.other_fillers) if place != index)
    return with_position(survey, label, position.model_copy(update={"other_fillers": rest}))


def _made_consistent(position: Position, question: Question, value: AnswerValue) -> Position:
    """Return the position with what the new answer rules out set back: DEF has no blend."""
    if question.path == ("liquid", "family") and value == LiquidFamily.DEF:
        return position.model_copy(update={"liquid": unanswered(position.liquid, "blend_percent")})
    return position


def _with_value(owner: _OwnerT, question: Question, value: AnswerValue, display: Display) -> _OwnerT:
    stored = _stored_form(value, question)
    document = answers_of(owner)
    target: Any = document
    for step in question.path[:-1]:
        if isinstance(step, str):
            target.setdefault(step, {})
        if isinstance(target[step], tuple):
            target[step] = list(target[step])
        target = target[step]
    target[question.path[-1]] = stored
    settle_outlet(document, {question.name: str(value)})
    try:
        return type(owner).model_validate(document)
    except ValidationError as error:
        shown = shown_answer(value, question, display) if question.measure else repr(value)
        raise _fault(question, shown, _wanted(error, type(owner), question, display)) from error


def _stored_form(value: AnswerValue, question: Question) -> AnswerValue | int:
    """Return a whole number as one where the survey counts days."""
    if value == "" and question.empty_means:
        return None
    is_count = question.measure is not None and question.measure.dimension is Dimension.DAYS
    if is_count and isinstance(value, float) and value.is_integer():
        return int(value)
    return value


def _wanted(error: ValidationError, model: type[BaseModel], question: Question, display: Display) -> str:
    details = error.errors(include_url=False)[0]
    if details["type"] == FAULT_BESIDE_OTHERS:
        return str(details["ctx"]["wanted"])
    if details["type"] == "value_error":
        return str(details.get("ctx", {}).get("error", details["msg"]))
    if details["type"].startswith("int_"):
        return "write a whole number"
    if details["type"].startswith("string_too_short"):
        return "write at least one character"
    if details["type"].startswith("string_too_long"):
        return f"write at most {details['ctx']['max_length']} characters"
    field = _field_at(model, question.path)
    return _range_words(field, question, display) if field is not None else details["msg"]


def _range_words(field: FieldInfo, question: Question, display: Display) -> str:
    bounds = {
        name: getattr(item, name)
        for item in _constraints(field)
        for name in ("gt", "ge", "lt", "le")
        if getattr(item, name, None) is not None
    }
    measure = question.measure or Measure(Dimension.RATIO)
    words = {"gt": "more than", "ge": "at least", "lt": "less than", "le": "at most"}
    shown = {"gt": display.show, "ge": display.at_least, "lt": display.show, "le": display.at_most}
    parts = [
        f"{words[name]} {shown[name](float(bound) * measure.factor, measure.dimension)}"
        for name, bound in bounds.items()
    ]
    return f"it must be {' and '.join(parts)}" if parts else "write one of the choices"


def _constraints(field: FieldInfo) -> tuple[object, ...]:
    """Return the constraints of a field; for a list of numbers those of its entries."""
    inner = [item for argument in get_args(field.annotation) for item in getattr(argument, "__metadata__", ())]
    found: list[object] = []
    for item in (*field.metadata, *inner):
        found.extend(getattr(item, "metadata", ()) or (item,))
    return tuple(found)


@cache
def _field_at(model: type[BaseModel], path: tuple[str | int, ...]) -> FieldInfo | None:
    here: Any = model
    field: FieldInfo | None = None
    for step in path:
        if isinstance(step, int):
            here = Filler
            continue
        field = here.model_fields.get(step)
        if field is None:
            return None
        here = field.annotation
    return field


def field_words(question: Question) -> str:
    """Return the title of a question without its mnemonic, as a fault names it."""
    return question.title.replace("&", "").rstrip("?")


def _fault(question: Question, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place="", field=field_words(question), value=value or "nothing", wanted=wanted),))


def told_of(fault: InputFault, question: Question, text: str) -> str:
    """Return the sentence beside the field: the text that was typed and what would be right."""
    problem = replace(fault.problems[0], field=field_words(question), value=f"“{text}”" if text.strip() else "nothing")
    return Worded("{value} is not usable here; {wanted}.", value=problem.value, wanted=problem.wanted)
