"""What a question of the walk is: its place in the survey, its words and how its answer is typed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import TYPE_CHECKING

from spoutline.frozen import frozen
from spoutline.model.quantity import Dimension

if TYPE_CHECKING:
    from spoutline.model.conversion_answers import ConversionAnswers
    from spoutline.model.survey import Position, Site


class Step(StrEnum):
    """Steps of the walk in their order; the site's own questions stand outside of it."""

    LIQUID = "liquid"
    DUTY = "duty"
    VAPOUR = "vapour"
    PLACE = "place"
    SET = "set"
    SITE = "site"
    CONVERSION = "conversion"


WALK = (Step.LIQUID, Step.DUTY, Step.VAPOUR, Step.PLACE, Step.SET)


class Entry(StrEnum):
    """How an answer is given."""

    CHOICE = "choice"
    SUGGESTED = "suggested"  # a text with suggestions
    QUANTITY = "quantity"
    QUANTITIES = "quantities"  # several, separated by semicolons
    TEXT = "text"
    LONG_TEXT = "long_text"
    SEVERAL = "several"  # any number of the choices
    YES_NO = "yes_no"
    YES_NO_OPEN = "yes_no_open"  # yes, no, or not answered yet


@frozen
class Option:
    """One choice: its value in the survey, its words, and what it means."""

    value: str
    words: str
    hint: str = ""


@frozen
class Measure:
    """How a number of the survey relates to the core's SI value: ``si = stored * factor``."""

    dimension: Dimension
    factor: float = 1.0


AnswerValue = str | float | bool | tuple[float, ...] | None


@frozen(kw_only=True)
class Question:
    """One question.

    ``path`` leads from the position (or the site) to the field. ``source`` says where the help's facts come from.
    ``empty_means`` is set where no answer is an answer. ``suggestions`` is asked only for a suggested text.
    """

    path: tuple[str | int, ...]
    step: Step
    group: str
    title: str
    help: str
    source: str
    entry: Entry
    options: tuple[Option, ...] = ()
    measure: Measure | None = None
    empty_means: str = ""
    asked: Callable[[Position], bool] | None = None
    suggestions: Callable[[Position], tuple[str, ...]] | None = None

    @property
    def name(self) -> str:
        """The path as one word, for object names and faults."""
        return ".".join(str(step) for step in self.path)

    def is_asked(self, position: Position) -> bool:
        """Say whether the question matters for this position."""
        return self.asked is None or self.asked(position)


def _member(values: object, place: int) -> object:
    return values[place] if isinstance(values, tuple) else None


def answer_in(owner: Position | Site | ConversionAnswers, question: Question) -> AnswerValue:
    """Return the present answer to ``question`` in what holds it, numbers in the survey's own unit."""
    value: object = owner
    for step in question.path:
        value = getattr(value, step) if isinstance(step, str) else _member(value, step)
    if value is None or isinstance(value, str | bool | float | tuple):
        return value
    if isinstance(value, int):
        return float(value)
    if isinstance(value, Decimal | date):
        return str(value)
    raise TypeError(f"{question.name} leads to {type(value).__name__}, not to an answer")
