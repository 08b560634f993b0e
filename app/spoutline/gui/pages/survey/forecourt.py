"""The forecourt from above: islands with the dispensers that stand on them, their positions on the two sides."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.gui.models.site_nodes import tone_words
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.forecourt_view import Box, Group, Tile
from spoutline.gui.wording import tr
from spoutline.model.survey import Position, Survey
from spoutline.planning.refit.dispensers import islands_of

_SIDES = ("A", "B")


class Tiles:
    """The tiles of positions by their labels, each with its side; one whose position and mark stay is not made anew."""

    def __init__(self) -> None:
        self._made: dict[str, tuple[Position, Tile, str]] = {}

    def of(self, position: Position, tone: Tone) -> tuple[Tile, str]:
        """Return the tile of a position and the side that its label names."""
        known = self._made.get(position.label)
        if known is None or known[0] is not position or known[1].tone is not tone:
            known = self._made[position.label] = position, _tile(position, tone), side_of(position)
        return known[1:]


def islands(
    survey: Survey, tone: Callable[[str], Tone], per_island: int, tiles: Tiles | None = None
) -> tuple[Group, ...]:
    """Return the islands that the survey names, then the dispensers that stand on none of them, ``per_island`` a row.

    A survey records no coordinates: the order of the dispensers is the order in which they stand. A dispenser whose
    positions name different islands stands on each of them, with the positions that say so. ``tiles`` are those made
    before, where the same station is shown again.
    """
    made = tiles if tiles is not None else Tiles()
    named: dict[str, dict[str, list[Position]]] = {}
    for position, island in zip(survey.positions, islands_of(survey), strict=True):
        named.setdefault(island, {}).setdefault(position.dispenser, []).append(position)
    loose = tuple(_box(name, mine, tone, made) for name, mine in named.pop("", {}).items())
    return (
        *(
            Group(tr("Island {0}").format(island), tuple(_box(name, mine, tone, made) for name, mine in boxes.items()))
            for island, boxes in named.items()
        ),
        *(Group("", loose[start : start + per_island]) for start in range(0, len(loose), per_island)),
    )


def side_of(position: Position) -> str:
    """Return the side that a label names behind its dispenser, A or B; empty where it names none."""
    rest = position.label.removeprefix(position.dispenser).lstrip(" -")
    is_side = rest[:1] in _SIDES and not rest[1:2].isalpha()
    return rest[0] if is_side else ""


def _box(name: str, mine: list[Position], tone: Callable[[str], Tone], tiles: Tiles) -> Box:
    """Put each position on the side that its label names; those that name none are shared out between the sides."""
    sided = [tiles.of(position, tone(position.label)) for position in mine]
    upper = [tile for tile, side in sided if side == "A"]
    lower = [tile for tile, side in sided if side == "B"]
    for tile, side in sided:
        if not side:
            (upper if len(upper) <= len(lower) else lower).append(tile)
    return Box(name, tuple(upper), tuple(lower))


def _tile(position: Position, tone: Tone) -> Tile:
    liquid = position.grade or f"{position.liquid.family.value.replace('_', ' ')} {position.liquid.blend_percent:g} %"
    return Tile(position.label, tone, f"{position.label}, {liquid}: {tone_words(tone)}")
