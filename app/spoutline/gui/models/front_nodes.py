"""Sets weighed against each other as rows: a row for each point, its parts below it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.explain.phrases.front_words import FrontWord as Word
from spoutline.explain.plan.front_text import figure_text, remark_text, set_text, taken_text
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.yearly_text import yearly_sum
from spoutline.gui.models.node_tree import Node
from spoutline.model.front import FrontAxis, FrontPoint, PositionFront, StationFront
from spoutline.planning.weighing.station_front import points_taken


def front_titles(axes: Sequence[FrontAxis], story: Story) -> tuple[str, ...]:
    """Return the titles of the columns."""
    return (story.word(Word.NUMBER), *(story.title(axis) for axis in axes), story.word(Word.SET))


def front_nodes(found: PositionFront, story: Story) -> tuple[Node, ...]:
    """Return a row for each set with what else is to be said of it; below it its parts."""
    return tuple(
        Node(
            cells=(str(at + 1), *_figures(found.axes, point.figures, found.currency, story), _told(found, at, story)),
            record=at,
            hint=remark_text(found, at, story),
            children=(*_sum(found, point, story), *_parts(point, len(found.axes), found.currency, story)),
        )
        for at, point in enumerate(found.points)
    )


def station_nodes(found: StationFront, story: Story) -> tuple[Node, ...]:
    """Return a row for each combination, below it the set of each position."""
    axes = (FrontAxis.PRICE, found.axis)
    return tuple(
        Node(
            cells=(str(at + 1), *_figures(axes, (point.price, point.other), found.currency, story), ""),
            record=at,
            children=tuple(
                Node(
                    cells=(
                        "",
                        *_own(taken, group.front.axes, found.currency, story),
                        f"{', '.join(group.labels)}{story.writing.colon} {taken_text(taken, found, story)}",
                    ),
                    record=at,
                )
                for group, taken in points_taken(found, point)
            ),
        )
        for at, point in enumerate(found.points)
    )


def _figures(axes: Sequence[FrontAxis], figures: Sequence[int], currency: str, story: Story) -> Iterator[str]:
    yield from (figure_text(axis, figure, currency, story) for axis, figure in zip(axes, figures, strict=True))


def _own(taken: FrontPoint, axes: Sequence[FrontAxis], currency: str, story: Story) -> tuple[str, ...]:
    """Return the figures of one position's set in the two columns; an empty one where it has no such axis."""
    return (*_figures(axes, taken.figures, currency, story), "")[:2]


def _told(found: PositionFront, at: int, story: Story) -> str:
    remark = remark_text(found, at, story, with_sum=False)
    parts = set_text(found.points[at].judged.hanging_set)
    return story.writing.listed((parts, remark)) if remark else parts


def _sum(found: PositionFront, point: FrontPoint, story: Story) -> Iterator[Node]:
    """Yield the sum that the yearly cost is, where that is weighed."""
    told = yearly_sum(point, found.currency, story) if FrontAxis.YEARLY in found.axes else ""
    if told:
        yield Node(cells=("", *("",) * len(found.axes), told), record=None)


def _parts(point: FrontPoint, axes: int, currency: str, story: Story) -> Iterator[Node]:
    for link in point.judged.hanging_set.links:
        price = story.money(link.price_minor(currency), currency)
        name = f"{story.title(link.slot)}{story.writing.colon} {story.part(link.part)}, {price}"
        yield Node(cells=("", *("",) * axes, name), record=None)
