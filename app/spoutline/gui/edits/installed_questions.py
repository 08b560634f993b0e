"""The questions about a described part: its plate and every figure that a re-check in a new set needs."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import field
from enum import StrEnum

from spoutline.explain.phrases.part_words import label_of
from spoutline.frozen import frozen
from spoutline.gui.edits.question import Entry, Measure, Option, Question, Step
from spoutline.model.figure import Bounds
from spoutline.model.liquid import ListingClass
from spoutline.model.material import Material
from spoutline.model.part import PartKind
from spoutline.model.part_figures import PartFigure, figures_of
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.model.quantity import Dimension

NO_LISTING = "none"  # the plate was read and carries no listing; nothing ticked means that it was not read
_SHEET = "Plate or maker's sheet"
_MATERIALS = "Materials that get wet"
_GROUPS = {
    "": "Ratings",
    "nozzle": "Nozzle",
    "hose": "Hose",
    "breakaway": "Breakaway",
    "swivel": "Swivel",
    "adaptor": "Adapter",
}
_ASKED_ON_THE_PLATE = ("listings",)
Word = Callable[[StrEnum], str]


@frozen(kw_only=True)
class FigureQuestion:
    """A question with its bounds in SI; ``may_be_none`` where nothing ticked is an answer."""

    question: Question
    bounds: Bounds = field(default_factory=Bounds)
    may_be_none: bool = True


def described_questions(kind: PartKind, word: Word) -> tuple[FigureQuestion, ...]:
    """Return the questions about a described part of this kind; ``word`` gives the trade word of a choice."""
    figures = [figure for figure in figures_of(kind) if figure.is_labelled and figure.name not in _ASKED_ON_THE_PLATE]
    asked = [_figure_question(figure, word) for figure in figures if figure.value_type is not Port]
    return (*_plate_questions(word), *_port_questions(kind, word), *asked)


def _plate_questions(word: Word) -> list[FigureQuestion]:
    classes = (*_options(ListingClass, word), Option(NO_LISTING, "no listing"))
    return [
        _asked("description", "Plate", "Description", Entry.TEXT, "What it is and what its plate says."),
        _choice("path", "Plate", "Path, where known", _options(FlowPath, word), empty_means="not known"),
        _several("listings", "Plate", "Listing classes", classes, "Nothing ticked: the plate was not read."),
    ]


def _port_questions(kind: PartKind, word: Word) -> list[FigureQuestion]:
    ends = [("inlet", "End towards the dispenser")]
    if kind is not PartKind.NOZZLE:
        ends.append(("outlet", "End towards the vehicle"))
    found = []
    for end, group in ends:
        found += [
            _choice(f"figures.{end}.thread", group, f"Thread, {end}", _options(ThreadStandard, word)),
            _asked(
                f"figures.{end}.size",
                group,
                f"Size, {end}",
                Entry.TEXT,
                "Nominal, such as 3/4, 19 mm, DN 20 or 34x1.5.",
            ),
            _choice(f"figures.{end}.gender", group, f"Gender, {end}", _options(Gender, word)),
            _choice(f"figures.{end}.path", group, f"Path, {end}", _options(FlowPath, word)),
        ]
    return found


def _figure_question(figure: PartFigure, word: Word) -> FigureQuestion:
    """Return the question that asks for a declared figure."""
    declared = figure.declared
    group = _MATERIALS if figure.value_type is Material else _GROUPS[figure.block]
    options: tuple[Option, ...] = ()
    help_text, measure, bounds = f"{declared.holds[:1].upper()}{declared.holds[1:]}.", None, Bounds()
    if figure.many:
        entry, options = Entry.SEVERAL, _options(figure.choices, word)
        help_text = "At least one." if declared.at_least_one else "None where there is none."
    elif figure.value_type is bool:
        entry, options = Entry.YES_NO, (Option("yes", "yes"), Option("no", "no"))
    elif figure.is_number:
        dimension = declared.asked_as or declared.dimension or Dimension.RATIO
        entry, measure, bounds = Entry.QUANTITY, Measure(dimension), declared.bounds_si
        help_text = ""
    else:
        entry, options = Entry.CHOICE, _options(figure.choices, word)
    question = Question(
        path=("figures", *figure.path.split(".")),
        step=Step.VAPOUR,
        group=group,
        title=word(label_of(figure.label)),
        help=help_text,
        source=_SHEET,
        entry=entry,
        options=options,
        measure=measure,
        empty_means="not stated" if figure.may_lack else "",
    )
    return FigureQuestion(question=question, bounds=bounds, may_be_none=not declared.at_least_one)


def _options(terms: Iterable[StrEnum], word: Word) -> tuple[Option, ...]:
    return tuple(Option(term.value, word(term)) for term in terms)


def _asked(
    path: str,
    group: str,
    title: str,
    entry: Entry,
    help_text: str = "",
    *,
    options: tuple[Option, ...] = (),
    empty_means: str = "",
) -> FigureQuestion:
    question = Question(
        path=tuple(path.split(".")),
        step=Step.VAPOUR,
        group=group,
        title=title,
        help=help_text,
        source=_SHEET,
        entry=entry,
        options=options,
        empty_means=empty_means,
    )
    return FigureQuestion(question=question)


def _choice(path: str, group: str, title: str, options: tuple[Option, ...], *, empty_means: str = "") -> FigureQuestion:
    return _asked(path, group, title, Entry.CHOICE, options=options, empty_means=empty_means)


def _several(path: str, group: str, title: str, options: tuple[Option, ...], help_text: str) -> FigureQuestion:
    return _asked(path, group, title, Entry.SEVERAL, help_text, options=options)
