"""Pictograms of the safety signs as plain geometry in a square from -1 to 1, drawn by us."""

from __future__ import annotations

import math
from typing import Final

from spoutline.frozen import frozen
from spoutline.ruletables.caution_signs import Pictogram

Point = tuple[float, float]


@frozen
class Area:
    """A filled outline; ``hollow`` cuts it out of what lies below."""

    points: tuple[Point, ...]
    hollow: bool = False


@frozen
class Disc:
    """A filled circle; ``hollow`` cuts it out of what lies below."""

    centre: Point
    radius: float
    hollow: bool = False


@frozen
class Stroke:
    """A line of a ``width`` in units of the square; ``hollow`` cuts it out of what lies below."""

    points: tuple[Point, ...]
    width: float = 0.16
    hollow: bool = False


Mark = Area | Disc | Stroke


def pictogram_marks(pictogram: Pictogram) -> tuple[Mark, ...]:
    """Return the marks of a pictogram, back to front."""
    return _PICTOGRAMS[pictogram]


def _box(left: float, bottom: float, right: float, top: float, *, hollow: bool = False) -> Area:
    return Area(((left, bottom), (right, bottom), (right, top), (left, top)), hollow)


def _arc(centre: Point, radius: float, start: float, end: float, steps: int = 18) -> tuple[Point, ...]:
    """Return points of an arc; angles in degrees, anticlockwise."""
    turns = (math.radians(start + (end - start) * step / steps) for step in range(steps + 1))
    return tuple((centre[0] + radius * math.cos(turn), centre[1] + radius * math.sin(turn)) for turn in turns)


def _drop(x: float, y: float, size: float, *, hollow: bool = False) -> Area:
    """Return a drop that hangs from (x, y + size)."""
    belly = _arc((x, y - 0.25 * size), 0.55 * size, 150, 390)
    return Area(((x, y + size), *belly), hollow)


def _star(rays: int, outer: float, inner: float) -> tuple[Point, ...]:
    radii = (outer if number % 2 == 0 else inner for number in range(2 * rays))
    turns = (math.pi * number / rays for number in range(2 * rays))
    return tuple((radius * math.sin(turn), radius * math.cos(turn)) for radius, turn in zip(radii, turns, strict=True))


def _frost() -> tuple[Mark, ...]:
    marks: list[Mark] = []
    for angle in (90, 150, 210, 270, 330, 30):
        turn = math.radians(angle)
        tip = (0.95 * math.cos(turn), 0.95 * math.sin(turn))
        marks.append(Stroke(((0.0, 0.0), tip), 0.13))
        root = (0.55 * math.cos(turn), 0.55 * math.sin(turn))
        for side in (50, -50):
            leaf = math.radians(angle + side)
            marks.append(Stroke((root, (root[0] + 0.3 * math.cos(leaf), root[1] + 0.3 * math.sin(leaf))), 0.11))
    return tuple(marks)


def _coil() -> tuple[Mark, ...]:
    steps = 90
    spiral = tuple(
        ((0.12 + 0.78 * step / steps) * math.cos(5 * math.pi * step / steps),
         (0.12 + 0.78 * step / steps) * math.sin(5 * math.pi * step / steps))
        for step in range(steps + 1)
    )  # fmt: skip
    return (Stroke(spiral, 0.15), Area(((-1.0, -0.12), (-0.6, -0.12), (-0.8, 0.28))))


def _waves() -> tuple[Mark, ...]:
    return tuple(
        Stroke(tuple((x / 10, level + 0.12 * math.sin(x * math.pi / 3.4)) for x in range(-9, 10)), 0.14)
        for level in (-0.75, -0.4)
    )


_FLAME: Final = (
    (-0.05, 1.0), (0.28, 0.62), (0.22, 0.3), (0.42, 0.42), (0.62, -0.05), (0.55, -0.55), (0.25, -0.85), (-0.25, -0.85),
    (-0.58, -0.55), (-0.62, -0.1), (-0.35, 0.35), (-0.3, 0.05), (-0.15, 0.4),
)  # fmt: skip
_HEART_OF_FLAME: Final = ((0.05, 0.1), (0.28, -0.3), (0.18, -0.62), (-0.12, -0.66), (-0.26, -0.4), (-0.05, -0.2))
_BOLT: Final = ((0.15, 1.0), (-0.5, -0.08), (-0.05, -0.08), (-0.25, -1.0), (0.5, 0.2), (0.05, 0.2), (0.45, 1.0))
_CAR: Final = (
    (-0.95, -0.35), (-0.95, 0.05), (-0.6, 0.1), (-0.35, 0.5), (0.3, 0.5), (0.55, 0.1), (0.95, 0.0), (0.95, -0.35),
)  # fmt: skip
_WRENCH: Final = (
    (-0.9, -0.7), (-0.7, -0.9), (0.28, 0.08), (0.55, 0.0), (0.85, 0.2), (0.92, 0.5), (0.6, 0.3), (0.38, 0.38),
    (0.3, 0.6), (0.5, 0.92), (0.2, 0.85), (0.0, 0.55), (0.08, 0.28),
)  # fmt: skip
_GLOVE: Final = (
    (-0.4, -0.95), (0.4, -0.95), (0.42, -0.3), (0.5, 0.55), (0.34, 0.6), (0.26, 0.1), (0.24, 0.9), (0.06, 0.9),
    (0.04, 0.15), (-0.06, 0.85), (-0.24, 0.82), (-0.2, 0.05), (-0.36, 0.5), (-0.5, 0.44), (-0.42, -0.1), (-0.85, 0.1),
    (-0.9, -0.08), (-0.42, -0.5),
)  # fmt: skip

_PICTOGRAMS: Final[dict[Pictogram, tuple[Mark, ...]]] = {
    Pictogram.BOOK: (
        Area(((-0.95, 0.6), (0.0, 0.45), (0.95, 0.6), (0.95, -0.65), (0.0, -0.8), (-0.95, -0.65))),
        Stroke(((0.0, 0.45), (0.0, -0.8)), 0.1, hollow=True),
        *(Stroke(((-0.75, y), (-0.2, y - 0.09)), 0.09, hollow=True) for y in (0.3, 0.0, -0.3)),
        *(Stroke(((0.2, y - 0.09), (0.75, y)), 0.09, hollow=True) for y in (0.3, 0.0, -0.3)),
    ),
    Pictogram.PERSON: (
        Disc((0.0, 0.62), 0.3),
        Area(((-0.55, -0.9), (-0.55, 0.1), (-0.3, 0.25), (0.3, 0.25), (0.55, 0.1), (0.55, -0.9))),
        _box(-0.2, -0.45, 0.2, -0.1, hollow=True),
        _box(-0.1, -0.35, 0.1, -0.2),
    ),
    Pictogram.PADLOCK: (
        Stroke(((-0.4, 0.0), *_arc((0.0, 0.3), 0.4, 180, 0), (0.4, 0.0)), 0.2),
        _box(-0.65, -0.85, 0.65, 0.1),
        Disc((0.0, -0.25), 0.14, hollow=True),
        _box(-0.06, -0.62, 0.06, -0.3, hollow=True),
    ),
    Pictogram.SWITCH: (
        _box(-0.7, -0.7, 0.7, 0.7),
        Disc((0.0, 0.0), 0.42, hollow=True),
        Disc((0.0, 0.0), 0.26),
    ),
    Pictogram.CONE: (
        Area(((-0.14, 0.9), (0.14, 0.9), (0.62, -0.6), (-0.62, -0.6))),
        _box(-0.95, -0.85, 0.95, -0.6),
        Area(((-0.26, 0.5), (0.26, 0.5), (0.35, 0.22), (-0.35, 0.22)), hollow=True),
        Area(((-0.43, -0.02), (0.43, -0.02), (0.52, -0.3), (-0.52, -0.3)), hollow=True),
    ),
    Pictogram.FLAME: (Area(_FLAME), Area(_HEART_OF_FLAME, hollow=True)),
    Pictogram.DROP: (_drop(0.0, -0.1, 0.95), _drop(-0.62, -0.55, 0.35), _drop(0.66, -0.55, 0.35)),
    Pictogram.GLOVE: (Area(_GLOVE), Stroke(((-0.4, -0.68), (0.4, -0.68)), 0.1, hollow=True)),
    Pictogram.WRENCH: (Area(_WRENCH),),
    Pictogram.SPARK: (Area(_BOLT),),
    Pictogram.LEAK: (
        _box(-0.95, 0.25, -0.12, 0.65),
        _box(0.12, 0.25, 0.95, 0.65),
        _box(-0.32, 0.12, -0.14, 0.78),
        _box(0.14, 0.12, 0.32, 0.78),
        _drop(0.0, -0.35, 0.42),
    ),
    Pictogram.ARROWS_APART: (
        Area(((-0.95, 0.0), (-0.5, 0.4), (-0.5, 0.16), (-0.14, 0.16), (-0.14, -0.16), (-0.5, -0.16), (-0.5, -0.4))),
        Area(((0.95, 0.0), (0.5, 0.4), (0.5, 0.16), (0.14, 0.16), (0.14, -0.16), (0.5, -0.16), (0.5, -0.4))),
        Stroke(((0.0, 0.75), (0.0, 0.35)), 0.12),
        Stroke(((0.0, -0.35), (0.0, -0.75)), 0.12),
    ),
    Pictogram.VEHICLE: (
        Area(_CAR),
        Area(((-0.3, 0.38), (0.0, 0.38), (0.0, 0.12), (-0.48, 0.12)), hollow=True),
        Disc((-0.5, -0.38), 0.22),
        Disc((0.5, -0.38), 0.22),
        Stroke(((-0.95, -0.15), (-1.0, 0.45), (-0.75, 0.8)), 0.12),
    ),
    Pictogram.MAGNIFIER: (
        Stroke((*_arc((-0.2, 0.2), 0.55, 0, 360), (0.35, 0.2)), 0.18),
        Stroke(((0.2, -0.2), (0.85, -0.85)), 0.26),
    ),
    Pictogram.COIL: _coil(),
    Pictogram.FALL: (
        Disc((-0.05, 0.72), 0.2),
        Stroke(((-0.1, 0.45), (0.12, -0.05), (-0.2, -0.45)), 0.24),
        Stroke(((0.1, 0.0), (0.5, -0.2)), 0.18),
        Stroke(((-0.08, 0.38), (-0.5, 0.55)), 0.16),
        Stroke(((-0.05, 0.35), (0.4, 0.5)), 0.16),
        Stroke(((-0.9, 0.1), (-0.9, -0.85), (0.9, -0.85)), 0.14),
    ),
    Pictogram.WAVES: (
        Area(((-0.8, -0.05), (0.8, -0.05), (0.5, -0.42), (-0.5, -0.42))),
        Area(((-0.05, 0.05), (-0.05, 0.9), (0.6, 0.05))),
        *_waves(),
    ),
    Pictogram.ATTACK: (
        _drop(0.0, 0.45, 0.5),
        Area(((-0.95, -0.85), (-0.95, -0.15), (-0.45, -0.15), (-0.3, -0.42), (0.3, -0.42), (0.45, -0.15),
              (0.95, -0.15), (0.95, -0.85))),
    ),
    Pictogram.TAG: (
        Area(((-0.95, 0.0), (-0.5, 0.55), (0.95, 0.55), (0.95, -0.55), (-0.5, -0.55))),
        Disc((-0.52, 0.0), 0.13, hollow=True),
        *(Stroke(((-0.2, y), (0.75, y)), 0.1, hollow=True) for y in (0.22, -0.02, -0.26)),
    ),
    Pictogram.CLOUD: (
        Disc((-0.45, 0.3), 0.38),
        Disc((0.1, 0.45), 0.45),
        Disc((0.55, 0.22), 0.36),
        _box(-0.5, -0.08, 0.6, 0.3),
        *(Stroke(((x, -0.35), (x + 0.14, -0.6), (x, -0.9)), 0.12) for x in (-0.5, 0.0, 0.5)),
    ),
    Pictogram.BURST: (Area(_star(9, 1.0, 0.52)), Disc((0.0, 0.0), 0.24, hollow=True)),
    Pictogram.CAP: (
        _box(-0.3, -0.95, 0.3, 0.05),
        _box(-0.62, 0.1, 0.62, 0.6),
        _box(-0.26, 0.6, 0.26, 0.85),
        Stroke(((-0.3, -0.35), (0.3, -0.35)), 0.1, hollow=True),
    ),
    Pictogram.FROST: _frost(),
    Pictogram.MIX: (
        _drop(-0.45, -0.05, 0.62),
        _drop(0.45, -0.05, 0.62),
        _drop(0.45, -0.14, 0.38, hollow=True),
    ),
    Pictogram.CLIPBOARD: (
        _box(-0.65, -0.95, 0.65, 0.75),
        _box(-0.28, 0.65, 0.28, 0.98),
        *(Stroke(((-0.42, y), (0.42, y)), 0.11, hollow=True) for y in (0.35, 0.0, -0.35, -0.68)),
    ),
}  # fmt: skip
