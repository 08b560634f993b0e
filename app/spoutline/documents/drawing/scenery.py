"""What stands around the hose in a position drawing: ground, dispenser, hook, vehicle, quay."""

from __future__ import annotations

from spoutline.documents.drawing.shapes import Ink, Path, Place, Round, Shape, Weight
from spoutline.frozen import frozen
from spoutline.model.survey import Duty, OutletDirection, Position
from spoutline.rules.derive.hose import is_on_reel

# sizes of what is drawn for orientation only; nothing is computed from them
_CABINET_WIDTH_M = 0.55
_CABINET_TOP_LEAST_M = 1.5
_CABINET_TOP_MOST_M = 2.3
_ARM_M = 0.07
_CAR_WIDTH_M = 1.8
_CAR_TOP_M = 1.45
_TRUCK_WIDTH_M = 2.5
_TRUCK_TOP_M = 2.9
_BOAT_WIDTH_M = 2.6
_NOZZLE_BODY_M = 0.14


@frozen
class Surroundings:
    """Shapes behind the hose, and how far the ground reaches."""

    shapes: tuple[Shape, ...]
    left_m: float
    right_m: float
    floor_m: float


def surroundings(position: Position) -> Surroundings:
    """Return the dispenser with its hook, the vehicle with its fillers, and the ground under both.

    The outlet is at x = 0, the dispenser to its left, the vehicle to its right. Sizes of dispenser and vehicle are for
    orientation; outlet, hook and fillers stand where the survey has them.
    """
    dispenser, left = _dispenser(position)
    vehicle, right, floor = _vehicle(position)
    ground = _ground(position, left - 0.35, right + 0.35, floor)
    return Surroundings((*ground, *vehicle, *dispenser), left, right, floor)


def _dispenser(position: Position) -> tuple[tuple[Shape, ...], float]:
    outlet, hook = position.outlet, position.hook
    face = -hook.distance_m
    left = face - _CABINET_WIDTH_M
    wanted_top = max(_CABINET_TOP_LEAST_M, hook.height_m + 0.35)
    top = max(wanted_top, min(outlet.height_m + _ARM_M, _CABINET_TOP_MOST_M))
    shapes: list[Shape] = [
        _box(left, 0.0, face, top, ink=Ink.STATION, weight=Weight.MEDIUM, fill=Ink.PAPER),
        _box(left + 0.09, top - 0.52, face - 0.09, top - 0.2, ink=Ink.STATION, weight=Weight.HAIR),
    ]
    if not is_on_reel(position):
        shapes.extend(_arm(position, face, top))
    middle = Place(face, hook.height_m)
    holder = (Place(face, hook.height_m + 0.09), Place(face + 0.05, hook.height_m + 0.09), middle)
    shapes.append(Path(places=holder, ink=Ink.STATION, weight=Weight.MEDIUM, closed=True, fill=Ink.PAPER))
    return tuple(shapes), left


def _arm(position: Position, face: float, top: float) -> tuple[Shape, ...]:
    """Return the arm that carries the outlet, on a post where the outlet is above the cabinet."""
    height = position.outlet.height_m
    down = position.outlet.direction is OutletDirection.DOWN
    low, high = (height, height + _ARM_M) if down else (height - _ARM_M / 2, height + _ARM_M / 2)
    shapes: list[Shape] = []
    if low >= top:
        post = face - _CABINET_WIDTH_M / 2
        shapes.append(_box(post - 0.06, top, post + 0.06, high, ink=Ink.STATION, weight=Weight.MEDIUM, fill=Ink.PAPER))
        face = post + 0.06
    reach = _ARM_M / 2 if down else 0.0
    if reach > face:
        shapes.append(_box(face, low, reach, high, ink=Ink.STATION, weight=Weight.MEDIUM, fill=Ink.PAPER))
    return tuple(shapes)


def _vehicle(position: Position) -> tuple[tuple[Shape, ...], float, float]:
    # the flank stands behind the place of the filler, where the inlet of the nozzle is, so that only its spout enters
    near = min(filler.distance_m for filler in position.fillers) + _NOZZLE_BODY_M
    far = max(filler.distance_m for filler in position.fillers)
    if position.duty is Duty.MARINE:
        return _boat(position, near, far)
    truck = position.duty in (Duty.TRUCK, Duty.REEL)
    width = _TRUCK_WIDTH_M if truck else _CAR_WIDTH_M
    right = far if far - near > width / 2 else near + width
    if truck:
        return _truck(near, right), right, 0.0
    return _car(near, right), right, 0.0


def _car(left: float, right: float) -> tuple[Shape, ...]:
    inset = (right - left) * 0.14
    body = (
        Place(left, 0.3),
        Place(left, 0.82),
        Place(left + inset * 0.3, 0.95),
        Place(left + inset, _CAR_TOP_M - 0.06),
        Place(left + inset * 1.5, _CAR_TOP_M),
        Place(right - inset * 1.5, _CAR_TOP_M),
        Place(right - inset, _CAR_TOP_M - 0.06),
        Place(right - inset * 0.3, 0.95),
        Place(right, 0.82),
        Place(right, 0.3),
    )
    return (*_wheels(left, right, 0.6, 0.2), _outline(body))


def _truck(left: float, right: float) -> tuple[Shape, ...]:
    body = (
        Place(left, 0.55),
        Place(left, _TRUCK_TOP_M - 0.1),
        Place(left + 0.1, _TRUCK_TOP_M),
        Place(right - 0.1, _TRUCK_TOP_M),
        Place(right, _TRUCK_TOP_M - 0.1),
        Place(right, 0.55),
    )
    return (*_wheels(left, right, 1.0, 0.32), _outline(body))


def _boat(position: Position, near: float, far: float) -> tuple[tuple[Shape, ...], float, float]:
    deck = min(filler.height_m for filler in position.fillers)
    left = _boat_left_m(near)
    right = max(far + 0.15, left + _BOAT_WIDTH_M)
    keel = keel_m(position)
    inset = (right - left) * 0.2
    hull = (Place(left, deck), Place(left + inset, keel), Place(right - inset, keel), Place(right, deck))
    return (_outline(hull),), right, keel


def keel_m(position: Position) -> float:
    """Return how deep the keel of the boat is drawn, in metres above the ground."""
    return min(min(filler.height_m for filler in position.fillers) - 1.1, -0.6)


def _wheels(left: float, right: float, height: float, width: float) -> tuple[Shape, ...]:
    inset = (right - left) * 0.05
    return tuple(
        _box(x, 0.0, x + width, height, ink=Ink.VEHICLE, weight=Weight.HAIR, fill=Ink.PAPER)
        for x in (left + inset, right - inset - width)
    )


def quay_edge_m(position: Position) -> float:
    """Return how far from the outlet the quay is drawn to end, in metres: past halfway to the boat.

    The survey does not say where it ends; outlet and fillers stand where the survey has them.
    """
    return _boat_left_m(min(filler.distance_m for filler in position.fillers)) * 0.6


def _boat_left_m(near_m: float) -> float:
    return max(near_m - 0.15, 0.1)


def _ground(position: Position, left: float, right: float, floor: float) -> tuple[Shape, ...]:
    if position.duty is not Duty.MARINE:
        line = (Place(left, 0.0), Place(right, 0.0))
        return (Path(places=line, ink=Ink.GROUND, weight=Weight.MEDIUM),)
    edge = quay_edge_m(position)
    water = floor + 0.45  # at a third of the hull
    quay = (Place(left, 0.0), Place(edge, 0.0), Place(edge, min(floor, 0.0)))
    surface = (Place(edge, water), Place(right, water))
    return (
        Path(places=quay, ink=Ink.GROUND, weight=Weight.MEDIUM),
        Path(places=surface, ink=Ink.WATER, weight=Weight.THIN, dashed=True),
    )


def reel_drum(centre: Place, drum_diameter_m: float) -> tuple[Shape, ...]:
    """Return a hose reel: flange and the centre line of the hose on its drum."""
    flange = Round(
        centre=centre, radius_m=drum_diameter_m * 0.68, ink=Ink.STATION, weight=Weight.MEDIUM, fill=Ink.PAPER
    )
    return (
        flange,
        Round(centre=centre, radius_m=drum_diameter_m / 2, ink=Ink.HOSE, weight=Weight.MEDIUM),
        Round(centre=centre, radius_m=drum_diameter_m * 0.12, ink=Ink.STATION, weight=Weight.THIN),
    )


def _outline(places: tuple[Place, ...]) -> Path:
    return Path(places=places, ink=Ink.VEHICLE, weight=Weight.THIN, closed=True, fill=Ink.PAPER)


def _box(
    left: float, bottom: float, right: float, top: float, *, ink: Ink, weight: Weight, fill: Ink | None = None
) -> Path:
    corners = (Place(left, bottom), Place(left, top), Place(right, top), Place(right, bottom))
    return Path(places=corners, ink=ink, weight=weight, closed=True, fill=fill)
