"""The increment year by year as a chart: where recovery at the nozzle stops adding anything."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator

from spoutline.documents.drawing.shapes import Anchor, Box, Dot, Drawing, Ink, Label, Path, Place, Shape, Weight
from spoutline.explain.conversion.story import ConversionStory
from spoutline.frozen import frozen
from spoutline.model.emission_sheet import EmissionSheet, EmissionYear, ShareOrigin

_WIDTH_M = 0.145
_HEIGHT_M = 0.058
_STEPS = (0.01, 0.02, 0.05, 0.1, 0.2, 0.5)
_WANTED_LINES = 6
_MOST_YEAR_LABELS = 12


@frozen
class _Scale:
    """Maps years and increments to metres on the paper."""

    first_year: int
    last_year: int
    low: float
    high: float

    def place(self, year: float, value: float) -> Place:
        years = max(self.last_year - self.first_year, 1)
        x = (year - self.first_year) / years * _WIDTH_M
        return Place(x, (value - self.low) / (self.high - self.low) * _HEIGHT_M)


def emission_chart(sheet: EmissionSheet, words: ConversionStory) -> Drawing | None:
    """Return the chart of the increment over the known years; None for fewer than two years.

    Years whose share is the owner's assumption, held from an earlier year, are drawn dashed.
    """
    if len(sheet.years) < 2:
        return None
    step = _step(sheet.years)
    values = [0.0, *(one.increment for one in sheet.years)]
    low, high = (math.floor(min(values) / step) * step, math.ceil(max(values) / step) * step)
    if low == high:
        high = low + step
    scale = _Scale(sheet.years[0].year, sheet.years[-1].year, low, high)
    shapes = (
        *_frame(scale, step, words),
        *_curve(sheet.years, scale),
        *_crossing(sheet, scale, words),
    )
    return Drawing(
        title=words.say("chart_title"),
        description=_description(sheet, words),
        shapes=shapes,
        box=Box(-0.016, -0.012, _WIDTH_M + 0.004, _HEIGHT_M + 0.009),
        true_scale=False,
    )


def _description(sheet: EmissionSheet, words: ConversionStory) -> str:
    text = words.say("chart_description", share=words.percent(sheet.break_even.result.value))
    if sheet.crossing_year is None:
        return f"{text} {words.say('chart_no_crossing')}"
    return f"{text} {words.say('chart_crossing', year=sheet.crossing_year)}"


def _step(years: tuple[EmissionYear, ...]) -> float:
    values = [one.increment for one in years]
    span = max(*values, 0.0) - min(*values, 0.0)
    return next((step for step in _STEPS if span / step <= _WANTED_LINES), _STEPS[-1])


def _frame(scale: _Scale, step: float, words: ConversionStory) -> Iterator[Shape]:
    lines = round((scale.high - scale.low) / step)
    for number in range(lines + 1):
        value = scale.low + step * number
        left, right = scale.place(scale.first_year, value), scale.place(scale.last_year, value)
        zero = abs(value) < step / 1000.0
        yield Path(
            places=(left, right), ink=Ink.AXIS if zero else Ink.GRID, weight=Weight.THIN if zero else Weight.HAIR
        )
        yield Label(at=left, text=words.signed_percent(value), anchor=Anchor.END, offset_pt=(-4.0, -2.5))
    gap = math.ceil((scale.last_year - scale.first_year + 1) / _MOST_YEAR_LABELS)
    for year in range(scale.first_year, scale.last_year + 1, gap):
        bottom = scale.place(year, scale.low)
        yield Path(places=(bottom, scale.place(year, scale.high)), ink=Ink.GRID, weight=Weight.HAIR)
        yield Label(at=bottom, text=str(year), offset_pt=(0.0, -10.0))
    top = scale.place(scale.first_year, scale.high)
    yield Label(at=top, text=words.say("chart_axis"), anchor=Anchor.START, offset_pt=(-30.0, 9.0))


def _curve(years: tuple[EmissionYear, ...], scale: _Scale) -> Iterator[Shape]:
    for before, after in itertools.pairwise(years):
        held = after.origin is ShareOrigin.HELD or after.year - before.year > 1
        places = (scale.place(before.year, before.increment), scale.place(after.year, after.increment))
        yield Path(places=places, ink=Ink.HOSE, weight=Weight.MEDIUM, dashed=held)
    for one in years:
        if one.origin is not ShareOrigin.HELD:
            yield Dot(centre=scale.place(one.year, one.increment), radius_pt=1.7, ink=Ink.HOSE)


def _crossing(sheet: EmissionSheet, scale: _Scale, words: ConversionStory) -> Iterator[Shape]:
    if sheet.crossing_moment is None or sheet.crossing_year is None:
        return
    place = scale.place(sheet.crossing_moment, 0.0)
    yield Dot(centre=place, radius_pt=3.2, ink=Ink.HOT)
    text = words.say("chart_crossing_label", year=sheet.crossing_year)
    yield Label(at=place, text=text, anchor=Anchor.START, offset_pt=(5.0, 6.0), ink=Ink.HOT)
