"""How sure the verdicts are, in words: what to measure first, what each figure could change, what margin is left."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from spoutline.explain.plan.words import Words
from spoutline.frozen import frozen
from spoutline.model.doubt import (
    MEASURE_FIRST,
    CheckDoubt,
    Flip,
    PositionDoubts,
    StationDoubts,
    UnmeasuredFigure,
    VisitLine,
)
from spoutline.model.finding import Severity
from spoutline.model.quantity import Dimension
from spoutline.model.site_figure import SiteFigure

_LABELS_SHOWN: Final = 6  # more positions are counted


@frozen
class FigureText:
    """One unmeasured figure in words: its name, what is assumed and possible, what it could change or leaves."""

    title: str
    assumed: str
    effects: tuple[str, ...]
    flips: bool
    musts: bool


@frozen
class CaseText:
    """Positions where a figure does the same, in words and by their ``labels``, and what it does."""

    positions: str
    text: FigureText
    labels: tuple[str, ...]


@frozen
class VisitText:
    """One line of the list for a visit: what to measure, where, and what that could change, the gravest first."""

    title: str
    positions: str
    labels: tuple[str, ...]  # of the same positions, one by one; none of a figure that the station has once
    cases: tuple[CaseText, ...]
    flips: bool
    musts: bool


@frozen
class MarginText:
    """A check in words: its margin as assumed, the least within the ranges, and the figure that leaves it."""

    title: str
    margin: str
    least: str
    figure: str
    flips: bool


def figure_text(figure: UnmeasuredFigure, words: Words) -> FigureText:
    """Return an unmeasured figure in words."""
    dimension = figure.figure.dimension
    assumed = words.phrases.fill(
        "measure_assumed",
        assumed=words.show(figure.assumed, dimension),
        low=words.show(figure.least, dimension),
        high=words.show(figure.most, dimension),
        footing=words.word(figure.range.status),
    )
    flips = tuple(_flip(flip, figure, words) for flip in figure.flips)
    effects = flips or (_kept(figure, words),)
    return FigureText(_named(figure.figure, figure.filler, words), assumed, effects, bool(flips), figure.musts > 0)


def _named(figure: SiteFigure, filler: str, words: Words) -> str:
    """Return the name of a figure, with the filler that it is of where that is a further one."""
    return f"{words.title(figure)} ({filler})" if filler else words.title(figure)


def _flip(flip: Flip, figure: UnmeasuredFigure, words: Words) -> str:
    """Return what a value of the figure would change, from which value on, and how far that is from what is assumed."""
    dimension = figure.figure.dimension
    apart = Dimension.TEMPERATURE_DIFFERENCE if dimension is Dimension.TEMPERATURE else dimension
    return words.phrases.fill(
        f"flip_{flip.after}_{'above' if flip.above else 'below'}",
        judged=f"{words.title(flip.judged)} ({words.word(flip.severity)})",
        value=words.show(flip.at_value, dimension),
        distance=words.show(abs(flip.at_value - figure.assumed), apart),
    )


def _kept(figure: UnmeasuredFigure, words: Words) -> str:
    """Return which check comes nearest to its limit where no verdict changes."""
    nearest = figure.nearest
    if nearest is None:
        return words.phrases.text["measure_moves_nothing"]
    margin = words.display.reading(nearest.least_margin, nearest.dimension)
    return words.phrases.fill("measure_keeps", check=words.inside(words.title(nearest.check)), margin=margin)


def visit_texts(doubts: StationDoubts, words: Words) -> tuple[VisitText, ...]:
    """Return the list for a visit to a station, what to measure first first."""
    every = len(doubts.positions)
    return tuple(_visit_text(line, every, words) for line in doubts.lines)


def _visit_text(line: VisitLine, every: int, words: Words) -> VisitText:
    grouped: dict[FigureText, list[str]] = {}
    for label, figure in line.cases:
        grouped.setdefault(figure_text(figure, words), []).append(label)
    cases = tuple(CaseText(_positions(labels, every, words), text, tuple(labels)) for text, labels in grouped.items())
    everywhere = _positions(list(line.labels), every, words)
    labels = () if line.figure.is_of_site else line.labels
    return VisitText(_named(line.figure, line.filler, words), everywhere, labels, cases, line.flips > 0, line.musts > 0)


def _positions(labels: list[str], every: int, words: Words) -> str:
    if len(labels) == every > 1:
        return words.phrases.text["measure_everywhere"]
    shown = ", ".join(labels[:_LABELS_SHOWN])
    rest = len(labels) - _LABELS_SHOWN
    return words.phrases.fill("measure_positions", positions=shown, count=rest) if rest > 0 else shown


def margin_texts(doubts: PositionDoubts, words: Words) -> Iterator[MarginText]:
    """Yield the checks whose margin a figure moves or whose verdict it could turn, in their order."""
    for one in doubts.checks:
        if one.figure is not None or one.flips_by:
            figures = dict.fromkeys((*((one.figure,) if one.figure else ()), *one.flips_by))
            yield MarginText(
                title=_check_title(one, words),
                margin=_signed(one.margin, one.dimension, words),
                least=_signed(one.least_margin, one.dimension, words),
                figure=", ".join(map(words.word, figures)),
                flips=bool(one.flips_by),
            )


def _check_title(doubt: CheckDoubt, words: Words) -> str:
    return (
        words.title(doubt.check)
        if doubt.severity is Severity.MUST
        else (f"{words.title(doubt.check)} ({words.word(doubt.severity)})")
    )


def _signed(margin: float | None, dimension: Dimension, words: Words) -> str:
    if margin is None:
        return ""
    shown = words.display.reading(abs(margin), dimension)
    return f"{'-' if margin < 0 else '+'}{shown}"


def first_and_others(count: int) -> tuple[range, range]:
    """Return the places of what to measure first and of the rest, of ``count`` lines."""
    first = min(count, MEASURE_FIRST)
    return range(first), range(first, count)
