"""The data of a part as labelled texts, in an order a practitioner reads them: that of their declarations."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum

from spoutline.explain.phrases.part_words import PartWord as Word
from spoutline.explain.phrases.part_words import label_of
from spoutline.explain.plan.texts import Named
from spoutline.explain.plan.words import Words
from spoutline.model.part import Part
from spoutline.model.part_figures import PartFigure, figures_of, number_at, value_at
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension


def part_data(part: Part, story: Words) -> tuple[Named, ...]:
    """Return what the catalogue states about ``part``; a figure that it does not state reads as not stated."""
    return tuple(_rows(part, story))


def _rows(part: Part, story: Words) -> Iterator[Named]:
    yield Named(story.word(Word.KIND), story.word(part.kind))
    yield Named(story.word(Word.STATUS), story.superseded(story.word(part.status), part.superseded_by))
    figures = [figure for figure in figures_of(part.kind) if figure.declared.shown and not figure.declared.follows]
    leading = [figure for figure in figures if figure.declared.leads]
    of_its_kind = [figure for figure in figures if figure.block]
    others = [figure for figure in figures if not figure.block and not figure.declared.leads]
    for group in (leading, of_its_kind, others):
        yield from _figure_rows(part, group, story)
    yield Named(story.word(Word.LEAD_TIME), story.days(part.lead_time_days))


def _figure_rows(part: Part, figures: list[PartFigure], story: Words) -> Iterator[Named]:
    upper_ends = {figure.beside(figure.declared.up_to) for figure in figures if figure.declared.range_label}
    for figure in figures:
        if figure.path in upper_ends or not _is_told(part, figure):
            continue
        if figure.declared.range_label:
            ends = (figure.path, figure.beside(figure.declared.up_to))
            low, high = (story.show(number_at(part, path), _dimension(figure)) for path in ends)
            yield Named(
                story.word(label_of(figure.declared.range_label)), story.phrases.fill("between", low=low, high=high)
            )
        else:
            yield Named(story.word(label_of(figure.label)), _text(part, figure, story))


def _is_told(part: Part, figure: PartFigure) -> bool:
    """Say whether the figure has a row: a list without words has none, nor what only two tubes or few makers state."""
    value, declared = value_at(part, figure.path), figure.declared
    if figure.many:
        return bool(value)
    if declared.coaxial_only and part.hose is not None and part.hose.inner_tube_bore_m is None:
        return False
    return value is not None or not declared.where_stated


def _text(part: Part, figure: PartFigure, story: Words) -> str:
    value = value_at(part, figure.path)
    if isinstance(value, tuple | frozenset):
        words = [story.word(term) for term in value]
        return ", ".join(words if isinstance(value, tuple) else sorted(words))  # a tuple has its maker's order
    if isinstance(value, Port):
        return story.port(value)
    if isinstance(value, bool):
        return story.yes_no(value)
    if isinstance(value, StrEnum):
        return story.word(value)
    shown = story.show(number_at(part, figure.path), _dimension(figure))
    if value is None or figure.declared.at_c is None:
        return shown
    condition = story.show(figure.declared.at_c, Dimension.TEMPERATURE)
    return story.phrases.fill("at_condition", value=shown, condition=condition)


def _dimension(figure: PartFigure) -> Dimension:
    return figure.declared.dimension or Dimension.RATIO
