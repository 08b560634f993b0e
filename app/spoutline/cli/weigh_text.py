"""Sets weighed against each other as lines of a terminal."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence

from spoutline.explain.phrases.front_words import FrontWord as Word
from spoutline.explain.plan.front_text import (
    axes_text,
    axis_notes,
    figure_text,
    front_sentences,
    remark_text,
    set_text,
    station_sentences,
    taken_text,
    title_text,
)
from spoutline.explain.plan.story import Story
from spoutline.model.front import FrontAxis, PositionFront, StationFront
from spoutline.planning.weighing.station_front import points_taken

_WIDTH = 110


def weigh_lines(found: PositionFront | StationFront, story: Story) -> Iterator[str]:
    """Yield what was found: how exact it is, and a line for each point."""
    yield title_text(found, story)
    axes = found.axes if isinstance(found, PositionFront) else (FrontAxis.PRICE, found.axis)
    yield f"{story.word(Word.AXES)}{story.writing.colon} {axes_text(axes, story)}"
    sentences = front_sentences(found, story) if isinstance(found, PositionFront) else station_sentences(found, story)
    for sentence in sentences:
        yield from textwrap.wrap(sentence, _WIDTH)
    yield ""
    yield from _position_lines(found, story) if isinstance(found, PositionFront) else _station_lines(found, story)
    yield ""
    for note in axis_notes(found, story):
        yield from textwrap.wrap(note, _WIDTH)


def _position_lines(found: PositionFront, story: Story) -> Iterator[str]:
    if not found.points:
        if found.plan.refusal is not None:
            yield from story.refusal(found.plan.refusal)
        elif found.plan.conflict is not None:
            yield from story.conflict(found.plan.conflict)
    rows = [
        tuple(
            figure_text(axis, figure, found.currency, story)
            for axis, figure in zip(found.axes, point.figures, strict=True)
        )
        for point in found.points
    ]
    for at, (start, point) in enumerate(zip(_aligned(rows), found.points, strict=True)):
        yield f"{start}  {set_text(point.judged.hanging_set)}"
        remark = remark_text(found, at, story)
        if remark:
            indent = " " * (len(start) + 2)
            yield from textwrap.wrap(remark, max(60, _WIDTH), initial_indent=indent, subsequent_indent=indent)


def _station_lines(found: StationFront, story: Story) -> Iterator[str]:
    axes = (FrontAxis.PRICE, found.axis)
    rows = [
        tuple(
            figure_text(axis, figure, found.currency, story)
            for axis, figure in zip(axes, (point.price, point.other), strict=True)
        )
        for point in found.points
    ]
    for start, point in zip(_aligned(rows), found.points, strict=True):
        yield start
        indent = " " * 6
        for group, taken in points_taken(found, point):
            labels = f"{', '.join(group.labels)}{story.writing.colon} "
            yield from textwrap.wrap(
                f"{labels}{taken_text(taken, found, story)}",
                _WIDTH,
                initial_indent=indent,
                subsequent_indent="        ",
            )


def _aligned(rows: Sequence[tuple[str, ...]]) -> Iterator[str]:
    """Yield numbered rows with their cells one below the other."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for at, row in enumerate(rows):
        cells = "  ".join(f"{cell:>{width}}" for cell, width in zip(row, widths, strict=True))
        yield f"{at + 1:>4}  {cells}"
