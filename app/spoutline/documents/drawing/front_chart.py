"""Sets weighed against each other as points over two axes, the third told by the size of the points."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from spoutline.documents.drawing.shapes import Anchor, Box, Dot, Drawing, Ink, Label, Path, Place, Shape, Weight
from spoutline.explain.phrases.front_words import FrontWord as Word
from spoutline.explain.plan.front_text import figure_text
from spoutline.explain.plan.story import Story
from spoutline.explain.writing.money import decimals
from spoutline.frozen import frozen
from spoutline.model.front import MONEY, UNIT_OF, FrontAxis, PositionFront, StationFront, shown_figure

WIDTH_M, HEIGHT_M = 0.140, 0.075
_TICKS = 6  # wanted on each axis
_NUMBERED = 14  # more points than these carry no numbers: they stand in the table
_SIZES_PT = (1.7, 2.6, 3.5)
_PLANNED_PT = 5.2
_AIR = 0.2  # share of a step between the outermost points and the frame
_TOGETHER_M = 0.0035  # points no farther apart share one label


@frozen
class Charted:
    """What is drawn: the axes to the right and upward, a point for each row, and which of them is the plan's."""

    x: FrontAxis
    y: FrontAxis
    points: tuple[tuple[int, int], ...]
    third: FrontAxis | None
    sizes: tuple[int, ...]  # by point, figures of the third axis
    planned: int | None
    currency: str


def charted_front(found: PositionFront, x_at: int = 0, y_at: int = 1) -> Charted | None:
    """Return what of a position's front is drawn, by the places of two of its axes; None for fewer than two axes."""
    if len(found.axes) < 2 or not found.points:
        return None
    rest = [at for at in range(len(found.axes)) if at not in (x_at, y_at)]
    third = rest[0] if rest else None
    return Charted(
        found.axes[x_at],
        found.axes[y_at],
        tuple((one.figures[x_at], one.figures[y_at]) for one in found.points),
        None if third is None else found.axes[third],
        () if third is None else tuple(one.figures[third] for one in found.points),
        found.planned,
        found.currency,
    )


def charted_station(found: StationFront) -> Charted | None:
    """Return what of a station's front is drawn; None without a point."""
    if not found.points:
        return None
    points = tuple((one.price, one.other) for one in found.points)
    planned = points.index(found.planned) if found.planned in points else None
    return Charted(FrontAxis.PRICE, found.axis, points, None, (), planned, found.currency)


@frozen
class Scale:
    """Maps figures of one axis to a share of its length; ticks are round in the unit that a person reads."""

    axis: FrontAxis
    low: float
    high: float
    ticks: tuple[tuple[float, str], ...]  # share of the length, and text

    @classmethod
    def of(cls, axis: FrontAxis, figures: Sequence[int], currency: str, story: Story) -> Scale:
        """Return a scale that holds all figures."""
        shown = [_shown(axis, one, currency, story) for one in figures]
        least, most = min(shown), max(shown)
        step = _step(most - least or max(abs(most) * 0.1, 1.0), whole=axis in (FrontAxis.LEAD, FrontAxis.PRACTICE))
        low = math.floor((least - _AIR * step) / step) * step
        low = max(low, 0.0) if least >= 0.0 else low
        high = math.ceil((most + _AIR * step) / step) * step
        ticks = tuple(
            ((value - low) / (high - low), _tick_text(axis, value, currency, story))
            for value in (low + step * at for at in range(round((high - low) / step) + 1))
        )
        return cls(axis, low, high, ticks)

    def share(self, figure: int, currency: str, story: Story) -> float:
        """Return where a figure lies along the axis, 0 to 1."""
        return (_shown(self.axis, figure, currency, story) - self.low) / (self.high - self.low)


def places_of_points(charted: Charted, story: Story) -> tuple[Place, ...]:
    """Return where each point lies on the chart."""
    xs, ys = _scales(charted, story)
    return tuple(
        Place(
            xs.share(x, charted.currency, story) * WIDTH_M,
            ys.share(y, charted.currency, story) * HEIGHT_M,
        )
        for x, y in charted.points
    )


def front_chart(charted: Charted, story: Story) -> Drawing:
    """Return the chart; its description tells axes and ranges for those who cannot see it."""
    xs, ys = _scales(charted, story)
    title = story.word(Word.CHART).format(y=story.title(charted.y), x=story.inside(story.title(charted.x)))
    return Drawing(
        title=title,
        description=description(charted, story),
        shapes=(*_frame(xs, ys, story), *_points(charted, places_of_points(charted, story))),
        box=Box(-0.024, -0.016, WIDTH_M + 0.008, HEIGHT_M + 0.010),
        true_scale=False,
    )


def description(charted: Charted, story: Story) -> str:
    """Return what the chart shows in words."""
    told = {}
    for name, axis, at in (("x", charted.x, 0), ("y", charted.y, 1)):
        figures = [one[at] for one in charted.points]
        told[name] = story.word(axis)
        told[f"{name}_low"] = figure_text(axis, min(figures), charted.currency, story)
        told[f"{name}_high"] = figure_text(axis, max(figures), charted.currency, story)
    text = story.word(Word.CHART_DESCRIPTION).format(count=len(charted.points), **told)
    if charted.third is None:
        return text
    return f"{text} {story.word(Word.CHART_THIRD).format(axis=story.word(charted.third))}"


def sizes_pt(charted: Charted) -> tuple[float, ...]:
    """Return the radius of each point: small for the least third of the range of the third axis, and so on."""
    if not charted.sizes:
        return (_SIZES_PT[1],) * len(charted.points)
    low, high = min(charted.sizes), max(charted.sizes)
    span = max(1, high - low)
    return tuple(_SIZES_PT[min(2, (one - low) * 3 // span)] for one in charted.sizes)


def _scales(charted: Charted, story: Story) -> tuple[Scale, Scale]:
    xs = Scale.of(charted.x, [x for x, _ in charted.points], charted.currency, story)
    ys = Scale.of(charted.y, [y for _, y in charted.points], charted.currency, story)
    return xs, ys


def _frame(xs: Scale, ys: Scale, story: Story) -> Iterator[Shape]:
    for at, text in xs.ticks:
        x = at * WIDTH_M
        yield Path(places=(Place(x, 0.0), Place(x, HEIGHT_M)), ink=Ink.GRID, weight=Weight.HAIR)
        yield Label(at=Place(x, 0.0), text=text, offset_pt=(0.0, -10.0))
    for at, text in ys.ticks:
        y = at * HEIGHT_M
        yield Path(places=(Place(0.0, y), Place(WIDTH_M, y)), ink=Ink.GRID, weight=Weight.HAIR)
        yield Label(at=Place(0.0, y), text=text, anchor=Anchor.END, offset_pt=(-4.0, -2.5))
    corner = (Place(0.0, HEIGHT_M), Place(0.0, 0.0), Place(WIDTH_M, 0.0))
    yield Path(places=corner, ink=Ink.AXIS, weight=Weight.THIN)
    top, right = Place(0.0, HEIGHT_M), Place(WIDTH_M, 0.0)
    yield Label(at=top, text=story.title(ys.axis), anchor=Anchor.START, offset_pt=(-30.0, 10.0))
    yield Label(at=right, text=story.title(xs.axis), anchor=Anchor.END, offset_pt=(0.0, -22.0))


def _points(charted: Charted, places: Sequence[Place]) -> Iterator[Shape]:
    if charted.planned is not None:
        yield Dot(centre=places[charted.planned], radius_pt=_PLANNED_PT, ink=Ink.HOT)
    for place, radius in zip(places, sizes_pt(charted), strict=True):
        yield Dot(centre=place, radius_pt=radius, ink=Ink.HOSE)
    if len(places) <= _NUMBERED:
        yield from _numbers(places)


def _numbers(places: Sequence[Place]) -> Iterator[Shape]:
    """Yield the number of each point beside it; points that lie together share one label."""
    left = list(range(len(places)))
    while left:
        first = places[left[0]]
        together = [at for at in left if places[at].distance_to(first) <= _TOGETHER_M]
        text = ", ".join(str(at + 1) for at in together)
        yield Label(at=first, text=text, anchor=Anchor.START, offset_pt=(6.0, 3.0))
        left = [at for at in left if at not in together]


def _shown(axis: FrontAxis, figure: int, currency: str, story: Story) -> float:
    """Return a figure in the unit that a person reads."""
    if axis in MONEY:
        return figure / float(10 ** decimals(currency))
    if axis in (FrontAxis.LEAD, FrontAxis.PRACTICE):
        return float(figure)
    return story.display.number(shown_figure(axis, figure), UNIT_OF[axis][0])


def _tick_text(axis: FrontAxis, shown: float, currency: str, story: Story) -> str:
    if axis in MONEY:
        return story.bare_money(round(shown * 10 ** decimals(currency)), currency)
    if axis in (FrontAxis.LEAD, FrontAxis.PRACTICE):
        return str(round(shown))
    dimension = UNIT_OF[axis][0]
    return story.show(story.display.from_shown(shown, dimension), dimension)


def _step(span: float, *, whole: bool) -> float:
    """Return a round step of which about so many as wanted make the span."""
    power = float(10.0 ** math.floor(math.log10(span / _TICKS)))
    step = next(times * power for times in (1.0, 2.0, 5.0, 10.0) if span / (times * power) <= _TICKS)
    return max(1.0, step) if whole else step
