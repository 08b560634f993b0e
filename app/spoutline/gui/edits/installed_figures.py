"""Put the plate and the figures of a described part into the survey: all of them, or none and the plate alone."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import SimpleNamespace
from typing import Any

from pydantic import ValidationError

from spoutline.gui.edits.answers import field_words, read_answer, shown_answer, with_position
from spoutline.gui.edits.installed_questions import NO_LISTING, FigureQuestion
from spoutline.gui.edits.question import Entry, Measure, Question
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.installed import InstalledPart
from spoutline.model.nominal_size import NominalSize
from spoutline.model.part import PartKind
from spoutline.model.part_figures import disordered_figures, figures_of, number_at
from spoutline.model.port import ThreadStandard
from spoutline.model.port_sizes import read_size, understood_words
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Survey
from spoutline.units.display import Display

SEPARATOR = ";"  # between the values of several choices


def described_texts(part: InstalledPart, questions: tuple[FigureQuestion, ...], display: Display) -> dict[str, str]:
    """Return the present answer to each question as its field shows it; empty where there is none."""
    return {
        asked.question.name: _shown(_value_at(part, asked.question), asked.question, display) for asked in questions
    }


def bounds_words(asked: FigureQuestion, display: Display) -> str:
    """Return between which figures a number must lie, each with its unit; empty for what is no number."""
    measure = asked.question.measure
    if measure is None:
        return ""
    lowest, least, most = asked.bounds.above, asked.bounds.least, asked.bounds.most
    bounds: tuple[tuple[str, float | None, Callable[[float, Dimension], str]], ...] = (
        ("more than", lowest, display.show),
        ("at least", least, display.at_least),
        ("at most", most, display.at_most),
    )
    return " and ".join(
        f"{words} {shown(bound, measure.dimension)}" for words, bound, shown in bounds if bound is not None
    )


def with_described(
    survey: Survey,
    label: str,
    index: int,
    questions: tuple[FigureQuestion, ...],
    texts: Mapping[str, str],
    *,
    display: Display,
) -> Survey:
    """Return the survey with the plate and figures of one described part replaced.

    Parameters
    ----------
    survey, label, index
        The survey, the position and the place of the part in its list, from 0.
    questions
        The questions of the part's kind.
    texts
        The answers by the names of the questions, as typed or chosen. Without any figure the part has
        none.
    display
        The units in which numbers are shown; a text that was not changed keeps its figure to the last digit.

    Raises
    ------
    InputFault
        Answers are missing or not usable; ``place`` of each problem is the name of its question, empty for the whole.
    """
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    old = position.installed[index]
    shown = described_texts(old, questions, display)
    has_figures = any(texts[q.question.name].strip() for q in questions if q.question.path[0] == "figures")
    document: dict[str, Any] = old.model_dump()
    document["figures"] = {} if has_figures else None
    problems: list[InputProblem] = []
    for asked in questions:
        question, text = asked.question, texts[asked.question.name]
        if question.path[0] == "figures" and not has_figures:
            continue
        try:
            same = text == shown[question.name] and bool(text)
            value = _value_at(old, question) if same else _read(text, asked, display)
            if is_size(question):
                value = size_read(question, text, texts)
        except InputFault as fault:
            problems += fault.problems
            continue
        _put(document, question.path, value)
    if problems:
        raise InputFault(tuple(problems))
    figures = document["figures"]
    if figures:
        _repeat(figures, old.kind)
        _check_order(figures, old.kind, questions, display)
    new = _validated(document)
    return with_position(
        survey,
        label,
        position.model_copy(update={"installed": (*position.installed[:index], new, *position.installed[index + 1 :])}),
    )


def is_size(question: Question) -> bool:
    """Say whether a question asks for the size of a port."""
    return question.path[-1] == "size"


def size_read(question: Question, text: str, texts: Mapping[str, str]) -> NominalSize | None:
    """Return the size that a text means beside the thread in ``texts``; None where no thread was chosen yet.

    Raises
    ------
    InputFault
        The text is no size of that thread.
    """
    thread = texts[question.name.removesuffix("size") + "thread"]
    if not thread or not text.strip():
        return None
    try:
        return read_size(text, ThreadStandard(thread))
    except ValueError as fault:
        raise _fault(question, text, str(fault)) from fault


def size_words(question: Question, texts: Mapping[str, str]) -> str:
    """Return how the present text of a size is understood; empty where it stands as typed or cannot be used yet."""
    text = texts[question.name]
    try:
        size = size_read(question, text, texts)
    except InputFault:
        return ""
    if size is None or text.strip() == size:
        return ""
    thread = ThreadStandard(texts[question.name.removesuffix("size") + "thread"])
    return tr("Read as {0}.").format(understood_words(size, thread))


def _validated(document: dict[str, Any]) -> InstalledPart:
    try:
        return InstalledPart.model_validate(document)
    except ValidationError as error:
        raise InputFault(
            tuple(
                InputProblem(".".join(str(step) for step in one["loc"]), "part", str(one["input"])[:40], one["msg"])
                for one in error.errors(include_url=False)
            )
        ) from error


def _repeat(figures: dict[str, Any], kind: PartKind) -> None:
    """Fill in the figures that repeat another one: a hose is as long as its tube."""
    for figure in figures_of(kind):
        if figure.declared.follows:
            value: Any = figures
            for step in figure.declared.follows.split("."):
                value = value[step]
            figures[figure.name] = value


def _check_order(
    figures: dict[str, Any], kind: PartKind, questions: tuple[FigureQuestion, ...], display: Display
) -> None:
    """Refuse figures of which the lower one is the higher, each at its question and in the units of ``display``."""
    given = SimpleNamespace(
        **{name: SimpleNamespace(**value) if isinstance(value, dict) else value for name, value in figures.items()}
    )
    by_name = {asked.question.name: asked.question for asked in questions}

    def shown(path: str) -> str:
        question = by_name[f"figures.{path}"]
        measure = question.measure or Measure(Dimension.RATIO)
        return display.show(number_at(given, path) or 0.0, measure.dimension)

    def other(path: str) -> str:
        return f"{field_words(by_name[f'figures.{path}'])} ({shown(path)})"

    problems = []
    for fault in disordered_figures(given, kind):
        question = by_name[f"figures.{fault.path}"]
        problems.append(InputProblem(question.name, field_words(question), shown(fault.path), fault.told(other)))
    if problems:
        raise InputFault(tuple(problems))


def _value_at(part: InstalledPart, question: Question) -> object:
    value: object = part
    for step in question.path:
        value = None if value is None else getattr(value, str(step))
    return value


def _shown(value: object, question: Question, display: Display) -> str:
    if question.path == ("listings",) and value == ():
        return NO_LISTING
    if value is None:
        return ""
    if question.entry is Entry.SEVERAL and isinstance(value, tuple | frozenset):
        return SEPARATOR.join(option.value for option in question.options if option.value in value)
    if question.entry is Entry.YES_NO:
        return "yes" if value else "no"
    if question.measure is not None and isinstance(value, int | float):
        return shown_answer(float(value), question, display)
    return str(value)


def _read(text: str, asked: FigureQuestion, display: Display) -> object:
    question = asked.question
    match question.entry:
        case Entry.SEVERAL:
            return _several(text, asked)
        case Entry.QUANTITY:
            return _number(text, asked, display)
        case _ if not text.strip():
            if question.empty_means:
                return None
            raise _fault(question, "", "write it" if question.entry is Entry.TEXT else "choose one")
        case Entry.YES_NO:
            return text == "yes"
    return text


def _several(text: str, asked: FigureQuestion) -> tuple[str, ...] | None:
    question = asked.question
    chosen = tuple(text.split(SEPARATOR)) if text else ()
    if question.path == ("listings",):
        if NO_LISTING in chosen and len(chosen) > 1:
            raise _fault(question, "no listing beside classes", "tick the classes, or no listing alone")
        return None if not chosen else tuple(item for item in chosen if item != NO_LISTING)
    if not chosen and not asked.may_be_none:
        raise _fault(question, "", "tick at least one")
    return chosen


def _number(text: str, asked: FigureQuestion, display: Display) -> float | None:
    question = asked.question
    try:
        value = read_answer(text, question, display)
    except InputFault as fault:
        raise _fault(question, text, fault.problems[0].wanted) from fault
    if value is None:
        return None
    number, measure = float(str(value)), question.measure or Measure(Dimension.RATIO)
    if not asked.bounds.admit(number):
        raise _fault(question, text, f"it must be {bounds_words(asked, display)}")
    if measure.dimension is Dimension.COUNT and not number.is_integer():
        raise _fault(question, text, "write a whole number")
    return number


def _put(document: dict[str, Any], path: tuple[str | int, ...], value: object) -> None:
    target = document
    for step in path[:-1]:
        target = target.setdefault(str(step), {})
    target[str(path[-1])] = value


def _fault(question: Question, text: str, wanted: str) -> InputFault:
    shown = f"“{text}”" if text.strip() else "nothing"
    return InputFault((InputProblem(question.name, field_words(question), shown, wanted),))
