"""Cash and emissions of a programme, year by year, as bars: told apart by place and fill, without colour."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from spoutline.documents.drawing.shapes import Anchor, Box, Drawing, Ink, Label, Path, Place, Shape, Weight
from spoutline.explain.conversion.programme_words import ProgrammeWords
from spoutline.frozen import frozen
from spoutline.model.programme import ProgrammeYear
from spoutline.model.quantity import Dimension

_WIDTH_M = 0.15
_HEIGHT_M = 0.032  # of each of the two rows of bars
_GAP_M = 0.016
_SHARE = 0.56  # of its room that a bar takes
_MOST_FIGURES = 12  # beside so many bars figures still stand free; of more only the least and the greatest are told
_SMALL_PT = 6.0


@frozen
class _Bars:
    """One row of bars: its values, how they are written, and where it lies."""

    values: tuple[float, ...]
    texts: tuple[str, ...]
    title: str
    bottom_m: float
    fill: Ink
    line: float | None = None  # what a dashed line marks
    below_axis: bool = False  # figures stand below the axis, clear of the line

    @property
    def bounds(self) -> tuple[float, float]:
        """Return the least and the greatest value of the axis, 0 always among them."""
        marked = (*self.values, 0.0, *(() if self.line is None else (self.line,)))
        low, high = min(marked), max(marked)
        return (low, high) if high > low else (low, low + 1.0)

    def height(self, value: float) -> float:
        """Return the height of a value on the paper."""
        low, high = self.bounds
        return self.bottom_m + (value - low) / (high - low) * _HEIGHT_M


def programme_chart(words: ProgrammeWords) -> Drawing | None:
    """Return the chart of all years; None where there is no year."""
    years = words.programme.years
    if not years:
        return None
    rows = (_cash(words, years), _emissions(words, years))
    shapes = (*(shape for bars in rows for shape in _row(bars)), *_years(words, years))
    return Drawing(
        title=words.words.say("program_chart"),
        description=_description(words, years),
        shapes=shapes,
        box=Box(-0.004, -0.008, _WIDTH_M + 0.004, 2 * _HEIGHT_M + _GAP_M + 0.012),
        true_scale=False,
    )


def _description(words: ProgrammeWords, years: Sequence[ProgrammeYear]) -> str:
    told = (
        words.words.say(
            "program_chart_year",
            year=words.year(one.year),
            cash=words.money(one.spent),
            mass=words.words.mass(one.after_kg),
        )
        for one in years
    )
    return " ".join((words.words.say("program_chart_told"), *told))


def _cash(words: ProgrammeWords, years: Sequence[ProgrammeYear]) -> _Bars:
    budget = words.programme.budget
    return _Bars(
        values=tuple(float(one.spent) for one in years),
        texts=tuple(words.words.story.writing.decimal(one.spent, 0) for one in years),
        title=words.words.say(
            "program_chart_cash" if budget is None else "program_chart_budget", currency=words.programme.currency
        ),
        bottom_m=_HEIGHT_M + _GAP_M,
        fill=Ink.STATION,
        line=None if budget is None else float(budget),
        below_axis=True,
    )


def _emissions(words: ProgrammeWords, years: Sequence[ProgrammeYear]) -> _Bars:
    display = words.words.story.display
    shown = tuple(display.number(one.after_kg, Dimension.MASS) for one in years)
    return _Bars(
        values=shown,
        texts=tuple(words.words.story.writing.decimal(one, 0, signed=True) for one in shown),
        title=words.words.say("program_chart_emissions", unit=display.unit(Dimension.MASS)),
        bottom_m=0.0,
        fill=Ink.PAPER,
    )


def _row(bars: _Bars) -> Iterator[Shape]:
    zero = bars.height(0.0)
    yield Label(at=Place(0.0, bars.bottom_m + _HEIGHT_M), text=bars.title, anchor=Anchor.START, offset_pt=(0.0, 12.0))
    room = _WIDTH_M / len(bars.values)
    lowest, highest = (bars.values.index(end(bars.values)) for end in (min, max))
    for number, (value, text) in enumerate(zip(bars.values, bars.texts, strict=True)):
        left, right = room * (number + (1 - _SHARE) / 2), room * (number + (1 + _SHARE) / 2)
        top = bars.height(value)
        corners = (Place(left, zero), Place(left, top), Place(right, top), Place(right, zero))
        if not math.isclose(top, zero):
            yield Path(places=corners, ink=Ink.AXIS, weight=Weight.THIN, closed=True, fill=bars.fill)
        if len(bars.values) <= _MOST_FIGURES or number in (lowest, highest):
            offset = -8.0 if value < 0 or bars.below_axis else 3.0
            at = Place((left + right) / 2, min(zero, top) if bars.below_axis else top)
            yield Label(at=at, text=text, offset_pt=(0.0, offset), size_pt=_SMALL_PT)
    yield Path(places=(Place(0.0, zero), Place(_WIDTH_M, zero)), ink=Ink.AXIS)
    if bars.line is not None:
        height = bars.height(bars.line)
        yield Path(places=(Place(0.0, height), Place(_WIDTH_M, height)), ink=Ink.AXIS, dashed=True)


def _years(words: ProgrammeWords, years: Sequence[ProgrammeYear]) -> Iterator[Shape]:
    room, gap = _WIDTH_M / len(years), math.ceil(len(years) / _MOST_FIGURES)
    for number, one in enumerate(years):
        if number % gap == 0:
            place = Place(room * (number + 0.5), 0.0)
            yield Label(at=place, text=words.year(one.year), offset_pt=(0.0, -18.0))
