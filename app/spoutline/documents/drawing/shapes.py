"""Primitive shapes of a drawing, in metres, painted alike on screen and paper.

Places are metres; text, line weights, arrow heads and balloons keep their size on the medium and are given in points,
so that a painter scales places only. Inks name a meaning; each painter maps them to colours of its own.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from enum import Enum, StrEnum

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef


class Ink(StrEnum):
    """What a line or an area stands for."""

    GROUND = "ground"
    WATER = "water"
    STATION = "station"  # dispenser, hook, retractor, reel
    VEHICLE = "vehicle"
    HOSE = "hose"
    HOSE_AT_REST = "hose_at_rest"
    FITTING = "fitting"
    CORD = "cord"
    MEASURE = "measure"
    TEXT = "text"
    PAPER = "paper"  # covers what lies behind
    GRID = "grid"
    AXIS = "axis"
    COLD = "cold"
    HOT = "hot"
    FAULT = "fault"  # what is wrong with how something hangs; always with words or a pattern


class Weight(Enum):
    """Line weight in points."""

    HAIR = 0.4
    THIN = 0.7
    MEDIUM = 1.2
    HEAVY = 2.4


class Anchor(StrEnum):
    """Which end of a label stands at its place."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@frozen
class Place:
    """A point: metres to the right of the outlet and metres above the ground."""

    x_m: float
    y_m: float

    def distance_to(self, other: Place) -> float:
        """Return the straight distance in metres."""
        return math.hypot(other.x_m - self.x_m, other.y_m - self.y_m)


@frozen
class PartMark:
    """Which link of the set a shape stands for: its place in the chain from 0, and the part."""

    link: int
    part: PartRef


@frozen(kw_only=True)
class Path:
    """An open or closed run of straight pieces."""

    places: tuple[Place, ...]
    ink: Ink
    weight: Weight = Weight.THIN
    dashed: bool = False
    closed: bool = False
    fill: Ink | None = None
    mark: PartMark | None = None


@frozen(kw_only=True)
class Round:
    """A circle of a true radius."""

    centre: Place
    radius_m: float
    ink: Ink
    weight: Weight = Weight.THIN
    fill: Ink | None = None
    mark: PartMark | None = None


@frozen(kw_only=True)
class Dot:
    """A filled circle that keeps its size on the medium."""

    centre: Place
    radius_pt: float
    ink: Ink
    mark: PartMark | None = None


@frozen(kw_only=True)
class Label:
    """One line of text beside a place; the offset is in points, to the right and up.

    With ``covers`` it stands on a ground of its own, so that lines behind it do not run through it.
    """

    at: Place
    text: str
    anchor: Anchor = Anchor.MIDDLE
    offset_pt: tuple[float, float] = (0.0, 0.0)
    size_pt: float = 7.0
    ink: Ink = Ink.TEXT
    covers: bool = False


@frozen(kw_only=True)
class Measure:
    """A dimension line with arrow heads and its text; the line is level or upright.

    ``text_at`` is of an upright line: the text begins at it, stands in a gap of it, or ends at it.
    """

    start: Place
    end: Place
    text: str
    text_at: Anchor = Anchor.MIDDLE


@frozen(kw_only=True)
class Balloon:
    """A numbered circle tied to the part it names; the offset from the part is in points."""

    target: Place
    offset_pt: tuple[float, float]
    text: str
    mark: PartMark


Shape = Path | Round | Dot | Label | Measure | Balloon


@frozen
class Box:
    """The rectangle that holds all places of a drawing, in metres."""

    left_m: float
    bottom_m: float
    right_m: float
    top_m: float

    @property
    def width_m(self) -> float:
        """Width in metres."""
        return self.right_m - self.left_m

    @property
    def height_m(self) -> float:
        """Height in metres."""
        return self.top_m - self.bottom_m


@frozen(kw_only=True)
class Drawing:
    """Shapes in painting order, back to front.

    ``true_scale`` says that lengths mean something in the field, so paper shows a scale 1:n; a chart has none.
    ``description`` tells what the drawing shows, for those who cannot see it; ``notes`` stand below it.
    """

    title: str
    description: str
    shapes: tuple[Shape, ...]
    box: Box
    true_scale: bool
    notes: tuple[str, ...] = ()


def places_of(shape: Shape) -> tuple[Place, ...]:
    """Return the places that bound a shape."""
    match shape:
        case Path():
            return shape.places
        case Round():
            centre, radius = shape.centre, shape.radius_m
            return (
                Place(centre.x_m - radius, centre.y_m - radius),
                Place(centre.x_m + radius, centre.y_m + radius),
            )
        case Dot():
            return (shape.centre,)
        case Label():
            return (shape.at,)
        case Measure():
            return (shape.start, shape.end)
        case Balloon():
            return (shape.target,)


def box_around(shapes: Iterable[Shape]) -> Box:
    """Return the smallest box that holds every place; ``ValueError`` for no shapes."""
    places = [place for shape in shapes for place in places_of(shape)]
    return Box(
        min(place.x_m for place in places),
        min(place.y_m for place in places),
        max(place.x_m for place in places),
        max(place.y_m for place in places),
    )
