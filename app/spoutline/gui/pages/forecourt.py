"""The forecourt from above: dispensers in rows as islands, their positions on the two sides."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.gui.models.site_nodes import tone_words
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.forecourt_view import Box, Group, Tile
from spoutline.model.survey import Position, Survey

_SIDES = ("A", "B")


def islands(survey: Survey, tone: Callable[[str], Tone], per_island: int) -> tuple[Group, ...]:
    """Return the dispensers in the order of the survey, ``per_island`` of them on each island.

    A survey records no coordinates: the order of the dispensers is the order in which they stand.
    """
    names = tuple(dict.fromkeys(position.dispenser for position in survey.positions))
    boxes = tuple(_box(survey, name, tone) for name in names)
    return tuple(boxes[start : start + per_island] for start in range(0, len(boxes), per_island))


def side_of(position: Position) -> str:
    """Return the side that a label names behind its dispenser, A or B; empty where it names none."""
    rest = position.label.removeprefix(position.dispenser).lstrip(" -")
    is_side = rest[:1] in _SIDES and not rest[1:2].isalpha()
    return rest[0] if is_side else ""


def _box(survey: Survey, name: str, tone: Callable[[str], Tone]) -> Box:
    """Put each position on the side that its label names; those that name none are shared out between the sides."""
    mine = [position for position in survey.positions if position.dispenser == name]
    upper = [position for position in mine if side_of(position) == "A"]
    lower = [position for position in mine if side_of(position) == "B"]
    for position in mine:
        if not side_of(position):
            (upper if len(upper) <= len(lower) else lower).append(position)
    return Box(name, *(tuple(_tile(one, tone(one.label)) for one in side) for side in (upper, lower)))


def _tile(position: Position, tone: Tone) -> Tile:
    liquid = position.grade or f"{position.liquid.family.value.replace('_', ' ')} {position.liquid.blend_percent:g} %"
    return Tile(position.label, tone, f"{position.label}, {liquid}: {tone_words(tone)}")
