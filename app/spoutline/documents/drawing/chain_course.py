"""The parts of a set laid along a line: which stretch of the hanging curve belongs to which part."""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Sequence
from itertools import accumulate, pairwise

from spoutline.documents.drawing.shapes import Ink, PartMark, Path, Place, Shape, Weight
from spoutline.model.plan import SetLink
from spoutline.model.requirement import Slot

_HOSES = frozenset({Slot.WHIP_HOSE, Slot.CURB_HOSE})
# drawn widths of rigid parts; their lengths are true
_WIDTH_M = {
    Slot.BREAKAWAY: 0.07,
    Slot.SWIVEL_BREAKAWAY: 0.07,
    Slot.SWIVEL: 0.05,
    Slot.ADAPTOR: 0.05,
    Slot.SPLITTER: 0.08,
    Slot.NOZZLE: 0.075,
}
_SPOUT_SHARE = 0.55  # share of a nozzle's length that is drawn as its spout


class Course:
    """A line walked from the dispenser, measured by its own length in metres."""

    def __init__(self, places: Sequence[Place]) -> None:
        self._places = tuple(places)
        self._along = tuple(accumulate((a.distance_to(b) for a, b in pairwise(self._places)), initial=0.0))

    @property
    def length_m(self) -> float:
        """Length of the line in metres."""
        return self._along[-1]

    def at(self, along_m: float) -> Place:
        """Return the place after ``along_m`` metres, an end of the line beyond its ends."""
        if along_m <= 0.0:
            return self._places[0]
        if along_m >= self.length_m:
            return self._places[-1]
        after = bisect_left(self._along, along_m)
        start, end = self._along[after - 1], self._along[after]
        share = (along_m - start) / (end - start)
        a, b = self._places[after - 1], self._places[after]
        return Place(a.x_m + share * (b.x_m - a.x_m), a.y_m + share * (b.y_m - a.y_m))

    def stretch(self, start_m: float, end_m: float) -> tuple[Place, ...]:
        """Return the part of the line between two lengths along it."""
        inner = (place for place, along in zip(self._places, self._along, strict=True) if start_m < along < end_m)
        return (self.at(start_m), *inner, self.at(end_m))


def chain_shapes(
    links: Sequence[tuple[int, SetLink]], course: Course, *, ink: Ink, hidden_m: float = 0.0
) -> tuple[tuple[Shape, ...], dict[int, Place]]:
    """Lay ``links`` (with their places in the set) along ``course``.

    ``hidden_m`` of the chain, at the dispenser, lies on a drum and is not drawn. Otherwise course and chain are equally
    long but for the rounding of the drawn curve, which is spread over all parts.
    Returns the shapes, hoses first so that fittings cover them, and the middle of what is drawn of each part.
    """
    lengths = _without_hidden([link.part.length_m for _, link in links], hidden_m)
    total = math.fsum(lengths)
    stretch = course.length_m / total if total > 0 else 0.0
    ends = list(accumulate((length * stretch for length in lengths), initial=0.0))
    hoses: list[Shape] = []
    fittings: list[Shape] = []
    middles: dict[int, Place] = {}
    for (index, link), (start, end) in zip(links, pairwise(ends), strict=True):
        mark = PartMark(index, link.part.ref)
        middles[index] = course.at((start + end) / 2)
        if link.slot in _HOSES:
            hoses.append(Path(places=course.stretch(start, end), ink=ink, weight=Weight.HEAVY, mark=mark))
        elif link.slot is Slot.NOZZLE:
            fittings.extend(nozzle_shapes(course.at(start), course.at(end), mark))
        else:
            fittings.append(_body(course.at(start), course.at(end), _WIDTH_M[link.slot], mark))
    return (*hoses, *fittings), middles


def nozzle_shapes(inlet: Place, tip: Place, mark: PartMark) -> tuple[Shape, ...]:
    """Return a nozzle from its inlet to the tip of its spout."""
    collar = Place(
        inlet.x_m + (tip.x_m - inlet.x_m) * (1 - _SPOUT_SHARE), inlet.y_m + (tip.y_m - inlet.y_m) * (1 - _SPOUT_SHARE)
    )
    spout = Path(places=(collar, tip), ink=Ink.FITTING, weight=Weight.HEAVY, mark=mark)
    return (spout, _body(inlet, collar, _WIDTH_M[Slot.NOZZLE], mark))


def _without_hidden(lengths_m: Sequence[float], hidden_m: float) -> list[float]:
    left: list[float] = []
    for length in lengths_m:
        taken = min(length, hidden_m)
        hidden_m -= taken
        left.append(length - taken)
    return left


def _body(start: Place, end: Place, width_m: float, mark: PartMark) -> Path:
    """Return a box of ``width_m`` around the piece from ``start`` to ``end``."""
    length = start.distance_to(end)
    if length == 0.0:
        return Path(places=(start, end), ink=Ink.FITTING, weight=Weight.HEAVY, mark=mark)
    across_x = -(end.y_m - start.y_m) / length * width_m / 2
    across_y = (end.x_m - start.x_m) / length * width_m / 2
    corners = (
        Place(start.x_m + across_x, start.y_m + across_y),
        Place(end.x_m + across_x, end.y_m + across_y),
        Place(end.x_m - across_x, end.y_m - across_y),
        Place(start.x_m - across_x, start.y_m - across_y),
    )
    return Path(places=corners, ink=Ink.FITTING, weight=Weight.MEDIUM, closed=True, fill=Ink.PAPER, mark=mark)
