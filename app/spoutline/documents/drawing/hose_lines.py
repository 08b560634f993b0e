"""The lines along which a set hangs: at rest on its hook, and in use at a filler; the curves of the checks."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from enum import StrEnum

from spoutline.calc.hang_sketch import sketch_of
from spoutline.calc.hanging_curve import CurvePoint, HangingCurve
from spoutline.calc.reach import ClampedHang
from spoutline.documents.drawing.scenery import quay_edge_m
from spoutline.documents.drawing.shapes import Place
from spoutline.frozen import frozen
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Slot
from spoutline.model.survey import Duty, Filler, Position
from spoutline.rules.chain.hanging import hang_at_rest, hang_in_use, way_m
from spoutline.rules.derive.hose import is_on_reel

_POINTS = 120
# the shape of a uniform hose does not depend on its weight; only the pulls, which are not drawn, do
_ANY_WEIGHT_N_M = 1.0
_ROUNDING_M = 1e-6


class LineNote(StrEnum):
    """What the drawn line leaves open."""

    TOO_SHORT = "too_short"  # the chain does not hang between the ends: a straight line is drawn
    TAUT_ON_REEL = "taut_on_reel"  # the turns left would leave no slack: the reel gives out what is asked
    ON_THE_GROUND = "on_the_ground"
    APPROXIMATE = "approximate"  # the hose is too stiff to hang as a catenary
    UNFOLDED = "unfolded"  # the way round the vehicle is drawn in one plane


@frozen
class HoseLine:
    """Places from the dispenser to the inlet of the nozzle, and what must be said about them."""

    places: tuple[Place, ...]
    notes: tuple[LineNote, ...]


def line_in_use(position: Position, links: Sequence[SetLink], filler: Filler) -> HoseLine:
    """Return the line from the outlet to a filler; on a reel only what is off the drum.

    ``links`` are the parts before the nozzle, whose inlet the line ends at.
    """
    unfolded = (LineNote.UNFOLDED,) if filler.plan_legs_m else ()
    length = _length_m(links) - wound_length_m(position)
    alone = position.model_copy(update={"filler": filler, "other_fillers": ()})
    hangs = hang_in_use(alone, length_m=length, weight_n_m=_ANY_WEIGHT_N_M) if length > 0 else ()
    if not hangs:
        ends = (outlet_place(position), filler_place(filler))
        pays_out = is_on_reel(position) and _length_m(links) >= ends[0].distance_to(ends[1])
        return HoseLine(ends, (*unfolded, LineNote.TAUT_ON_REEL if pays_out else LineNote.TOO_SHORT))
    line = _drawn(hangs[0].curve, outlet_place(position), 1.0, _bend_radius_m(links))
    return _on_ground(HoseLine(line.places, (*unfolded, *line.notes)), _support(position, filler))


def line_at_rest(position: Position, links: Sequence[SetLink]) -> HoseLine:
    """Return the line from the outlet to the hook, which stands to the left of the outlet.

    ``links`` are the parts before the nozzle. A reel takes the hose in, so that only a straight end hangs out.
    """
    start, end = outlet_place(position), hook_place(position)
    if is_on_reel(position):
        return HoseLine((start, end), ())
    curve = hang_at_rest(position, length_m=_length_m(links), weight_n_m=_ANY_WEIGHT_N_M)
    if curve is None:
        return HoseLine((start, end), (LineNote.TOO_SHORT,))
    return _on_ground(_drawn(curve, start, -1.0, _bend_radius_m(links)), _level_ground)


def outlet_place(position: Position) -> Place:
    """Return where the outlet is drawn."""
    return Place(0.0, position.outlet.height_m)


def filler_place(filler: Filler) -> Place:
    """Return where a filler is drawn: round a vehicle, at the end of the way that is unrolled, as in the checks."""
    return Place(way_m(filler), filler.height_m)


def hook_place(position: Position) -> Place:
    """Return where the nozzle inlet rests on its hook."""
    return Place(-position.hook.distance_m, position.hook.height_m)


def clamp_place(position: Position) -> Place:
    """Return where the cord holds the hose at rest: midway between outlet and hook, as in the checks."""
    return Place(-position.hook.distance_m / 2, position.retractor.height_m)


def wound_length_m(position: Position) -> float:
    """Return the hose that stays on the drum while the filler is reached, in metres; 0 without a reel."""
    if not is_on_reel(position):
        return 0.0
    return position.reel.turns_left * math.pi * position.reel.drum_diameter_m


def before_nozzle(hanging_set: HangingSet) -> tuple[tuple[int, SetLink], ...]:
    """Return the links before the nozzle with their places in the chain."""
    return tuple((index, link) for index, link in enumerate(hanging_set.links) if link.slot is not Slot.NOZZLE)


def _drawn(curve: HangingCurve | ClampedHang, start: Place, direction: float, bend_radius_m: float | None) -> HoseLine:
    if isinstance(curve, ClampedHang) or bend_radius_m is None:
        return HoseLine(_places(curve.points(_POINTS), start, direction), ())
    sketch = sketch_of(curve, minimum_bend_radius_m=bend_radius_m, count=_POINTS)
    notes = (LineNote.APPROXIMATE,) if sketch.is_approximate else ()
    return HoseLine(_places(sketch.points, start, direction), notes)


def _places(points: Iterable[CurvePoint], start: Place, direction: float) -> tuple[Place, ...]:
    return tuple(Place(start.x_m + direction * point.x_m, point.height_m) for point in points)


def _level_ground(_x_m: float) -> float:
    return 0.0


def _support(position: Position, filler: Filler) -> Callable[[float], float]:
    """Return the height (m) of what bears the hose at a distance (m) from the outlet.

    That is the ground; beyond a quay nothing does, and the hose is drawn straight from its edge to the boat.
    """
    if position.duty is not Duty.MARINE:
        return _level_ground
    edge_m, end = quay_edge_m(position), filler_place(filler)

    def height_m(x_m: float) -> float:
        return 0.0 if x_m <= edge_m else end.y_m * (x_m - edge_m) / (end.x_m - edge_m)

    return height_m


def _on_ground(line: HoseLine, support: Callable[[float], float]) -> HoseLine:
    """Return the line with what would hang below its support laid on it; the note says so."""
    if all(place.y_m >= support(place.x_m) - _ROUNDING_M for place in line.places):
        return line
    laid = tuple(Place(place.x_m, max(place.y_m, support(place.x_m))) for place in line.places)
    return HoseLine(laid, (*line.notes, LineNote.ON_THE_GROUND))


def _length_m(links: Sequence[SetLink]) -> float:
    return math.fsum(link.part.length_m for link in links)


def _bend_radius_m(links: Sequence[SetLink]) -> float | None:
    """Return the bend radius of the longest hose, which forms the bow."""
    hoses = [link.part for link in links if link.part.hose is not None]
    if not hoses:
        return None
    longest = max(hoses, key=lambda part: part.length_m)
    return longest.hose.minimum_bend_radius_m if longest.hose else None
