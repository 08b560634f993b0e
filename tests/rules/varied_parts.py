"""Parts changed in every declared figure: unknown, at the ends of its range, each word, each path; and many at random.

The figures are those that ``model.part_figures`` declares, so that a new one is varied without being named here.
"""

from __future__ import annotations

import random
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from spoutline.model.part import HANGING_KINDS, Part, PartStatus, Price
from spoutline.model.part_columns import ENDS
from spoutline.model.part_figures import PartFigure, figures_of, value_at
from spoutline.model.port import FlowPath

_FACTORS = (0.5, 0.8, 0.97, 1.03, 1.3, 2.0)
_WIDE = 1e12  # beyond any limit, where the figure's own range is open
_INSIDE = 1e-6  # share of its range by which a figure lies inside a bound that it may not have itself


def with_figure(part: Part, path: str, value: Any) -> Part:
    """Return the part with another value of one figure."""
    block, _, name = path.rpartition(".")
    return replace(part, **({block: replace(getattr(part, block), **{name: value})} if block else {name: value}))


def numbers_of(part: Part) -> Iterator[PartFigure]:
    """Yield the figures of a part that are numbers."""
    yield from (figure for figure in figures_of(part.kind) if figure.is_number)


def ends_of_range(figure: PartFigure) -> tuple[float, float]:
    """Return the least and the greatest value that a figure may have."""
    bounds = figure.declared.bounds_si
    most, above = _WIDE if bounds.most is None else bounds.most, bounds.above or 0.0
    least = above + _INSIDE * (most - above) if bounds.least is None else bounds.least
    return figure.value_type(least), figure.value_type(most)


def varied_one_by_one(part: Part) -> Iterator[Part]:
    """Yield the part with one figure changed at a time, each to every kind of value that it may have."""
    for figure in figures_of(part.kind):
        for value in _values(part, figure):
            if value != value_at(part, figure.path):
                yield with_figure(part, figure.path, value)
    yield from (replace(part, status=status) for status in PartStatus if status is not part.status)
    yield replace(part, prices=())
    yield replace(part, prices=(Price(currency="CHF", minor=1),))
    yield replace(part, lead_time_days=3650)


def _values(part: Part, figure: PartFigure) -> Iterator[Any]:
    value = value_at(part, figure.path)
    if figure.path in ENDS:
        if value is not None:
            yield from (replace(value, path=path) for path in FlowPath)  # type: ignore[type-var]
        return
    if figure.may_lack:
        yield None
    if figure.many is not None:
        yield from (figure.many((word,)) for word in figure.choices)
        yield figure.many(figure.choices)
        if not figure.declared.at_least_one:
            yield figure.many()
    elif figure.choices:
        yield from figure.choices
    elif figure.value_type is bool:
        yield from (True, False)
    elif figure.is_number:
        yield from ends_of_range(figure)


def changed_at_random(part: Part, chance: random.Random) -> Part:
    """Return the part with a fifth of its figures unknown, turned round or moved a little or far."""
    for figure in figures_of(part.kind):
        if figure.path in ENDS or chance.random() > 0.2:
            continue
        values = [*_values(part, figure)]
        value = value_at(part, figure.path)
        if figure.is_number and value is not None:
            values += [figure.value_type(value * factor) for factor in _FACTORS]  # type: ignore[operator]
        if figure.many is tuple:
            values.append(tuple(chance.choices(figure.choices, k=chance.randint(1, 4))))
        if values:
            part = with_figure(part, figure.path, chance.choice(values))
    return part


def by_kind(parts: list[Part]) -> dict[Any, tuple[Part, ...]]:
    """Return hanging parts under numbers of their own, by kind, sorted as columns are."""
    named = [replace(part, number=f"{part.number} {place:05}") for place, part in enumerate(parts)]
    return {
        kind: tuple(sorted((one for one in named if one.kind is kind), key=lambda one: one.ref))
        for kind in HANGING_KINDS
    }
