"""Where balloons stand at a given scale, so that they cover neither each other nor a label."""

from __future__ import annotations

import math
from typing import Final

from spoutline.documents.drawing.shapes import Anchor, Balloon, Drawing, Label, Place
from spoutline.frozen import frozen

BALLOON_RADIUS_PT: Final = 6.2
_GAP_PT: Final = 1.5
_DISTANCES_PT: Final = (24.0, 34.0, 46.0)
_DIRECTIONS: Final = 16
_WIDTH_PER_SIZE: Final = 0.6  # mean width of a character, in font sizes


@frozen
class _Spot:
    """A point on the medium, in points."""

    x: float
    y: float

    def near(self, other: _Spot, distance: float) -> bool:
        return math.hypot(self.x - other.x, self.y - other.y) < distance


@frozen
class _Block:
    """A rectangle of text on the medium."""

    left: float
    bottom: float
    right: float
    top: float

    def touches(self, spot: _Spot, radius: float) -> bool:
        x = min(max(spot.x, self.left), self.right)
        y = min(max(spot.y, self.bottom), self.top)
        return math.hypot(spot.x - x, spot.y - y) < radius


def balloon_offsets(drawing: Drawing, points_per_m: float) -> tuple[tuple[float, float], ...]:
    """Return the offset in points, right and up, of each balloon of ``drawing`` in painting order.

    The balloon's own offset is taken where it is free; else the nearest free place around the part, and its own again
    where none is.
    """
    blocks = [_block_of(shape, points_per_m) for shape in drawing.shapes if isinstance(shape, Label)]
    balloons = [shape for shape in drawing.shapes if isinstance(shape, Balloon)]
    targets = [_spot(balloon.target, points_per_m) for balloon in balloons]
    taken: list[_Spot] = []
    offsets: list[tuple[float, float]] = []
    for balloon, target in zip(balloons, targets, strict=True):
        chosen = balloon.offset_pt
        for offset in (balloon.offset_pt, *_around()):
            spot = _Spot(target.x + offset[0], target.y + offset[1])
            if _is_free(spot, taken, targets, blocks):
                chosen = offset
                break
        offsets.append(chosen)
        taken.append(_Spot(target.x + chosen[0], target.y + chosen[1]))
    return tuple(offsets)


def _is_free(spot: _Spot, taken: list[_Spot], targets: list[_Spot], blocks: list[_Block]) -> bool:
    radius = BALLOON_RADIUS_PT + _GAP_PT
    return not (
        any(spot.near(other, 2 * radius) for other in taken)
        or any(spot.near(target, 2 * radius) for target in targets)
        or any(block.touches(spot, radius) for block in blocks)
    )


def _around() -> tuple[tuple[float, float], ...]:
    """Return the places to try, near before far, upward before downward."""
    turns = sorted(range(_DIRECTIONS), key=lambda turn: (min(turn, _DIRECTIONS - turn), turn))
    return tuple(
        (distance * math.sin(math.tau * turn / _DIRECTIONS), distance * math.cos(math.tau * turn / _DIRECTIONS))
        for distance in _DISTANCES_PT
        for turn in turns
    )


def _spot(place: Place, points_per_m: float) -> _Spot:
    return _Spot(place.x_m * points_per_m, place.y_m * points_per_m)


def _block_of(label: Label, points_per_m: float) -> _Block:
    width = _WIDTH_PER_SIZE * label.size_pt * len(label.text)
    at = _spot(label.at, points_per_m)
    shift = {Anchor.START: 0.0, Anchor.MIDDLE: width / 2, Anchor.END: width}[label.anchor]
    left, bottom = at.x + label.offset_pt[0] - shift, at.y + label.offset_pt[1]
    return _Block(left, bottom, left + width, bottom + label.size_pt)
