"""How each kind of part is drawn in the order of assembly: upright, dispenser at the top, in metres of paper."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Final

from spoutline.documents.drawing.shapes import Ink, PartMark, Path, Place, Shape, Weight
from spoutline.frozen import frozen
from spoutline.model.requirement import Slot

MM: Final = 0.001
STUB_M: Final = 2.4 * MM  # how far a male thread stands out of its part
_STUB_HALF: Final = 1.5 * MM
_SOCKET_HALF: Final = 2.3 * MM
_ARC_STEPS: Final = 14
_ARROW_ACROSS_MM: Final = 6.2


@frozen
class Frame:
    """Where a part is drawn: its middle line, its top and bottom ends."""

    x_m: float
    top_m: float
    bottom_m: float
    mark: PartMark

    def at(self, across_mm: float, share_down: float) -> Place:
        """Return the place ``across_mm`` right of the middle line, ``share_down`` of the way to the bottom."""
        return Place(self.x_m + across_mm * MM, self.top_m + (self.bottom_m - self.top_m) * share_down)

    def box(self, half_mm: float, top: float, bottom: float, weight: Weight = Weight.MEDIUM) -> Path:
        """Return a box of twice ``half_mm`` between two shares of the height."""
        corners = (self.at(-half_mm, top), self.at(half_mm, top), self.at(half_mm, bottom), self.at(-half_mm, bottom))
        return Path(places=corners, ink=Ink.FITTING, weight=weight, closed=True, fill=Ink.PAPER, mark=self.mark)

    def line(self, *places: Place, ink: Ink = Ink.FITTING, weight: Weight = Weight.THIN, dashed: bool = False) -> Path:
        """Return a line of this part."""
        return Path(places=places, ink=ink, weight=weight, dashed=dashed, mark=self.mark)


# height of each part in mm; lengths are not true, hoses are broken off
HEIGHTS_MM: Final = {
    Slot.WHIP_HOSE: 11.5,
    Slot.CURB_HOSE: 11.5,
    Slot.BREAKAWAY: 12.0,
    Slot.SWIVEL_BREAKAWAY: 13.0,
    Slot.SWIVEL: 9.0,
    Slot.ADAPTOR: 7.0,
    Slot.SPLITTER: 8.5,
    Slot.NOZZLE: 17.0,
}


def part_glyph(slot: Slot, frame: Frame, *, coaxial: bool) -> tuple[Shape, ...]:
    """Return the shapes of a part in ``slot``; ``coaxial`` draws a second path inside a hose."""
    if slot in (Slot.WHIP_HOSE, Slot.CURB_HOSE):
        return _hose(frame, coaxial=coaxial)
    return _GLYPHS[slot](frame)


def outlet_glyph(frame: Frame) -> tuple[Shape, ...]:
    """Return the foot of the dispenser with its outlet."""
    plate = (frame.at(-8.0, 0.0), frame.at(8.0, 0.0), frame.at(8.0, 0.45), frame.at(-8.0, 0.45))
    hatches = tuple(
        frame.line(frame.at(left, 0.42), frame.at(left + 2.0, 0.03), ink=Ink.STATION, weight=Weight.HAIR)
        for left in (-7.0, -4.5, -2.0, 0.5, 3.0, 5.5)
    )
    return (
        Path(places=plate, ink=Ink.STATION, weight=Weight.MEDIUM, closed=True, fill=Ink.PAPER, mark=frame.mark),
        *hatches,
        frame.box(2.6, 0.45, 1.0),
    )


def male_stub(x_m: float, end_m: float, direction: float, mark: PartMark) -> tuple[Shape, ...]:
    """Return a male thread that stands out of a part's end; ``direction`` 1 is upward, -1 downward."""
    tip = end_m + direction * STUB_M
    corners = (
        Place(x_m - _STUB_HALF, end_m),
        Place(x_m + _STUB_HALF, end_m),
        Place(x_m + _STUB_HALF, tip),
        Place(x_m - _STUB_HALF, tip),
    )
    turns = tuple(
        Path(
            places=(
                Place(x_m - _STUB_HALF, end_m + direction * STUB_M * share),
                Place(x_m + _STUB_HALF, end_m + direction * STUB_M * (share + 0.2)),
            ),
            ink=Ink.FITTING,
            weight=Weight.HAIR,
            mark=mark,
        )
        for share in (0.1, 0.4, 0.7)
    )
    body = Path(places=corners, ink=Ink.FITTING, weight=Weight.THIN, closed=True, fill=Ink.PAPER, mark=mark)
    return (body, *turns)


def female_socket(x_m: float, end_m: float, direction: float, mark: PartMark) -> tuple[Shape, ...]:
    """Return the mouth of a female thread sunk into a part's end; ``direction`` 1 opens upward, -1 downward."""
    depth = end_m - direction * STUB_M * 0.8
    walls = tuple(
        Path(
            places=(Place(x_m + side * _STUB_HALF, end_m), Place(x_m + side * _STUB_HALF, depth)),
            ink=Ink.FITTING,
            weight=Weight.THIN,
            dashed=True,
            mark=mark,
        )
        for side in (-1.0, 1.0)
    )
    rim = Path(
        places=(Place(x_m - _SOCKET_HALF, end_m), Place(x_m + _SOCKET_HALF, end_m)),
        ink=Ink.FITTING,
        weight=Weight.HEAVY,
        mark=mark,
    )
    return (*walls, rim)


def _hose(frame: Frame, *, coaxial: bool) -> tuple[Shape, ...]:
    shapes: list[Shape] = []
    for top, bottom in ((0.22, 0.45), (0.55, 0.78)):
        for across in (-2.0, 2.0):
            shapes.append(
                frame.line(frame.at(across, top), frame.at(across, bottom), ink=Ink.HOSE, weight=Weight.HEAVY)
            )
        if coaxial:
            for across in (-0.8, 0.8):
                inner = frame.line(frame.at(across, top), frame.at(across, bottom), ink=Ink.HOSE, dashed=True)
                shapes.append(inner)
    # a break line says that the hose is longer than it is drawn
    for share in (0.45, 0.55):
        wave = tuple(
            frame.at(-3.0 + 6.0 * step / _ARC_STEPS, share + 0.035 * math.sin(math.tau * step / _ARC_STEPS))
            for step in range(_ARC_STEPS + 1)
        )
        shapes.append(frame.line(*wave, ink=Ink.HOSE, weight=Weight.HAIR))
    return (*shapes, frame.box(2.7, 0.0, 0.22), frame.box(2.7, 0.78, 1.0))


def _breakaway(frame: Frame) -> tuple[Shape, ...]:
    upper, lower = frame.box(3.6, 0.0, 0.48), frame.box(4.1, 0.52, 1.0)
    parting = frame.line(frame.at(-6.5, 0.5), frame.at(6.5, 0.5), weight=Weight.MEDIUM, dashed=True)
    return (upper, lower, parting)


def _swivel(frame: Frame) -> tuple[Shape, ...]:
    return (frame.box(2.7, 0.0, 0.4), frame.box(3.4, 0.4, 1.0), *_turning(frame, 0.7))


def _swivel_breakaway(frame: Frame) -> tuple[Shape, ...]:
    upper, lower = frame.box(3.6, 0.0, 0.42), frame.box(4.1, 0.46, 1.0)
    parting = frame.line(frame.at(-6.5, 0.44), frame.at(6.5, 0.44), weight=Weight.MEDIUM, dashed=True)
    return (upper, lower, parting, *_turning(frame, 0.75))


def _adaptor(frame: Frame) -> tuple[Shape, ...]:
    flats = tuple(frame.line(frame.at(across, 0.25), frame.at(across, 0.75)) for across in (-1.4, 1.4))
    return (frame.box(2.6, 0.0, 1.0), frame.box(3.6, 0.25, 0.75), *flats)


def _splitter(frame: Frame) -> tuple[Shape, ...]:
    side = (frame.at(2.8, 0.3), frame.at(6.5, 0.15), frame.at(6.5, 0.45), frame.at(2.8, 0.6))
    branch = Path(places=side, ink=Ink.FITTING, weight=Weight.MEDIUM, closed=True, fill=Ink.PAPER, mark=frame.mark)
    return (frame.box(2.8, 0.0, 1.0), branch)


def _nozzle(frame: Frame) -> tuple[Shape, ...]:
    body = (frame.at(-2.6, 0.0), frame.at(2.6, 0.0), frame.at(3.2, 0.5), frame.at(1.6, 0.62), frame.at(-2.6, 0.55))
    spout = (frame.at(0.6, 0.6), frame.at(3.0, 0.78), frame.at(7.0, 1.0))
    spout_edge = (frame.at(2.6, 0.56), frame.at(4.6, 0.70), frame.at(8.2, 0.90), frame.at(7.0, 1.0))
    guard = (frame.at(-2.6, 0.08), frame.at(-6.4, 0.14), frame.at(-6.4, 0.48), frame.at(-2.6, 0.55))
    lever = (frame.at(-2.6, 0.46), frame.at(-5.0, 0.2))
    return (
        frame.line(*spout, weight=Weight.MEDIUM),
        frame.line(*spout_edge, weight=Weight.MEDIUM),
        Path(places=body, ink=Ink.FITTING, weight=Weight.MEDIUM, closed=True, fill=Ink.PAPER, mark=frame.mark),
        frame.line(*guard),
        frame.line(*lever, weight=Weight.MEDIUM),
    )


def _turning(frame: Frame, share: float) -> tuple[Shape, ...]:
    """Return an arc with a head that says that the part turns."""
    height = (frame.top_m - frame.bottom_m) / MM
    arc = tuple(
        frame.at(5.2 * math.cos(angle), share - 2.0 * math.sin(angle) / height)
        for angle in (math.radians(-150 + 300 * step / _ARC_STEPS) for step in range(_ARC_STEPS + 1))
    )
    x, y = arc[-1].x_m, arc[-1].y_m
    head = (Place(x - 0.2 * MM, y + 1.1 * MM), arc[-1], Place(x + 1.2 * MM, y + 0.7 * MM))
    return (frame.line(*arc), frame.line(*head))


def vehicle_arrow(frame: Frame, toward: Frame) -> tuple[Shape, ...]:
    """Return the arrow beside a breakaway's vehicle end: it points to the part drawn in ``toward``."""
    is_below = toward.top_m < frame.top_m
    start, end = (0.55, 0.95) if is_below else (0.45, 0.05)
    tip, back_m = frame.at(_ARROW_ACROSS_MM, end), (1.4 if is_below else -1.4) * MM
    head = (Place(tip.x_m - 0.9 * MM, tip.y_m + back_m), tip, Place(tip.x_m + 0.9 * MM, tip.y_m + back_m))
    return (
        frame.line(frame.at(_ARROW_ACROSS_MM, start), tip, weight=Weight.MEDIUM),
        frame.line(*head, weight=Weight.MEDIUM),
    )


_GLYPHS: Final[dict[Slot, Callable[[Frame], tuple[Shape, ...]]]] = {
    Slot.BREAKAWAY: _breakaway,
    Slot.SWIVEL: _swivel,
    Slot.SWIVEL_BREAKAWAY: _swivel_breakaway,
    Slot.ADAPTOR: _adaptor,
    Slot.SPLITTER: _splitter,
    Slot.NOZZLE: _nozzle,
}
