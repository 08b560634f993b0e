"""Sets weighed against each other in words, the same on paper, in the window and on the command line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.explain.phrases.front_words import FrontWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.yearly_text import yearly_notes, yearly_sum
from spoutline.model.front import (
    MONEY,
    UNIT_OF,
    WORST_COUNTS,
    FrontAxis,
    FrontPoint,
    PositionFront,
    StationFront,
    shown_figure,
)
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import HangingSet, PlanStatus

NOTHING = "–"


def figure_text(axis: FrontAxis, figure: int | None, currency: str, story: Story) -> str:
    """Return a figure of an axis with its unit; a dash where there is none."""
    if figure is None:
        return NOTHING
    if axis in MONEY:
        return story.money(figure, currency)
    if axis is FrontAxis.LEAD:
        return story.days(figure)
    if axis is FrontAxis.PRACTICE:
        return str(figure)
    dimension, _ = UNIT_OF[axis]
    return story.show(shown_figure(axis, figure), dimension)


def figures_text(axes: Sequence[FrontAxis], figures: Sequence[int], currency: str, story: Story) -> str:
    """Return the figures of several axes as one text, each with the name of its axis."""
    told = (
        f"{story.word(axis)} {figure_text(axis, figure, currency, story)}"
        for axis, figure in zip(axes, figures, strict=True)
    )
    return story.writing.listed(told)


def axes_text(axes: Sequence[FrontAxis], story: Story) -> str:
    """Return the axes as one text."""
    return story.writing.listed(story.word(axis) for axis in axes)


def title_text(found: PositionFront | StationFront, story: Story) -> str:
    """Return what was weighed."""
    name = found.label if isinstance(found, PositionFront) else found.survey.site.name
    return f"{story.word(Word.TITLE)}{story.writing.colon} {name}"


def set_text(hanging_set: HangingSet) -> str:
    """Return the part numbers of a set, dispenser first; those of equal number with their maker."""
    return " – ".join(told_apart(hanging_set.refs))


def taken_text(taken: FrontPoint, found: StationFront, story: Story) -> str:
    """Return the parts of a set that a position takes, with the sum of its yearly cost where that is weighed."""
    parts = set_text(taken.judged.hanging_set)
    told = yearly_sum(taken, found.currency, story) if found.axis is FrontAxis.YEARLY else ""
    return story.writing.listed((parts, told)) if told else parts


def remark_text(found: PositionFront, at: int, story: Story, *, with_sum: bool = True) -> str:
    """Return what else is to be said of a point: that it is planned, what it gives up, other makers' equals.

    Where a yearly cost is weighed, its parts too, unless they are told elsewhere.
    """
    point = found.points[at]
    told = []
    if at == found.planned:
        told.append(story.word(Word.PLANNED))
    if point.given_up:
        told.append(story.word(Word.GIVEN_UP).format(lines=story.line_names(point.given_up)))
    if point.alike:
        told.append(alike_text(point, story))
    if with_sum and FrontAxis.YEARLY in found.axes:
        told.append(yearly_sum(point, found.currency, story))
    return story.writing.listed(told)


def alike_text(point: FrontPoint, story: Story) -> str:
    """Return which parts of other makers are equal to those of a point in everything but the maker."""
    by_part: dict[PartRef, list[PartRef]] = {}
    for one in point.alike:
        by_part.setdefault(one.part, []).append(one.other)
    pairs = (f"{part} = {', '.join(str(other) for other in others)}" for part, others in by_part.items())
    parts = story.writing.listed(pairs)
    return story.word(Word.ALIKE).format(parts=parts)


def front_sentences(found: PositionFront, story: Story) -> Iterator[str]:
    """Yield what the front says of itself: how many, how exact, what counts, what is left out."""
    if not found.points and found.unchecked is not None:
        if found.plan.status is PlanStatus.NOT_DECIDED:
            yield story.word(Word.NOT_DECIDED)
        else:
            yield story.word(Word.NO_SET if found.plan.chosen is None else Word.NO_POINTS)
    if found.unchecked is None:
        yield story.word(Word.SEARCHING)
        if found.points:
            yield story.word(Word.SO_FAR).format(count=len(found.points))
            yield from _planned(found, story)
    elif found.points:
        yield story.word(Word.COUNT).format(count=len(found.points))
        yield from _how_exact(found, story)
        yield from _planned(found, story)
    if found.most_departures is not None:
        yield story.word(Word.PRACTICE).format(count=found.most_departures)
    elif FrontAxis.PRACTICE in found.axes:
        yield story.word(Word.PRACTICE_AXIS)
    for one in found.left_out:
        axis, slot = story.word(one.axis), story.word(one.slot)
        yield story.word(Word.LEFT_OUT).format(count=one.count, slot=slot, axis=axis)
    if found.pins_left_out:
        yield story.word(Word.PINS).format(count=found.pins_left_out)


def _how_exact(found: PositionFront, story: Story) -> Iterator[str]:
    if found.is_exact:
        yield story.word(Word.EXACT)
    if any(found.gap):
        axes = [axis for axis, gap in zip(found.axes, found.gap, strict=True) if gap]
        gaps = figures_text(axes, [gap for gap in found.gap if gap], found.currency, story)
        yield story.word(Word.GAP).format(gaps=gaps)
    if found.unchecked:
        yield story.word(Word.UNCHECKED).format(count=found.unchecked)
    if found.least is not None and not found.is_exact:
        yield story.word(Word.LEAST).format(figures=figures_text(found.axes, found.least, found.currency, story))
    if found.open_figures:
        yield story.word(Word.OPEN).format(count=len(found.open_figures))
    elif found.turned_down:
        yield story.word(Word.TURNED_DOWN).format(count=found.turned_down)


def _planned(found: PositionFront, story: Story) -> Iterator[str]:
    if found.planned is not None:
        yield story.word(Word.PLANNED_AMONG).format(number=found.planned + 1)
        return
    mine = found.planned_figures
    if mine is None:
        yield story.word(Word.PLANNED_UNKNOWN)
        return
    for at, point in enumerate(found.points):
        if all(own <= other for own, other in zip(point.figures, mine, strict=True)):
            figures = figures_text(found.axes, mine, found.currency, story)
            yield story.word(Word.PLANNED_OUTDONE).format(figures=figures, number=at + 1)
            return


def axis_notes(found: PositionFront | StationFront, story: Story) -> Iterator[str]:
    """Yield what is to be known of the axes chosen, and of all of them."""
    axes = (FrontAxis.PRICE, found.axis) if isinstance(found, StationFront) else found.axes
    notes = {
        FrontAxis.PRICE: Word.WORK_NOTE,
        FrontAxis.FLOW: Word.FLOW_NOTE,
        FrontAxis.PERMEATION: Word.PERMEATION_NOTE,
    }
    yield from (story.word(notes[axis]) for axis in axes if axis in notes)
    if FrontAxis.YEARLY in axes and found.yearly is not None:
        yield from yearly_notes(found.yearly, found.currency, story)
    yield story.word(Word.NOTE)


def station_sentences(found: StationFront, story: Story) -> Iterator[str]:
    """Yield what the front of a station says of itself."""
    axes = (FrontAxis.PRICE, found.axis)
    yield story.word(Word.COMBINATIONS).format(count=len(found.points))
    if found.gap_minor:
        yield story.word(Word.STATION_GAP).format(gap=story.money(found.gap_minor, found.currency))
    else:
        yield story.word(Word.STATION_EXACT)
    inexact = [label for one in found.groups if not one.front.is_exact for label in one.labels]
    if inexact:
        yield story.word(Word.STATION_INEXACT).format(labels=", ".join(inexact))
    if found.axis in WORST_COUNTS:
        yield story.word(Word.WORST).format(axis=story.word(found.axis))
    else:
        yield story.word(Word.SUMS)
    yield story.word(Word.EQUAL)
    if found.planned is not None:
        figures = figures_text(axes, found.planned, found.currency, story)
        yield story.word(Word.STATION_PLANNED).format(figures=figures)
    if found.without_set:
        yield story.word(Word.WITHOUT_SET).format(labels=", ".join(found.without_set))
    if found.survey.site.stock_price:
        yield story.word(Word.STOCK_NOTE)
