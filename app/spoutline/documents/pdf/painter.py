"""A drawing painted as vectors, true to a scale."""

from __future__ import annotations

import math
from typing import Final

from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import Flowable

from spoutline.documents.drawing.balloons import BALLOON_RADIUS_PT, balloon_offsets
from spoutline.documents.drawing.fit import Fit, place_on_sheet
from spoutline.documents.drawing.measure_text import measure_spot
from spoutline.documents.drawing.shapes import (
    Anchor,
    Balloon,
    Dot,
    Drawing,
    Ink,
    Label,
    Measure,
    Path,
    Place,
    Round,
    Shape,
    Weight,
)
from spoutline.documents.pdf.fonts import BOLD, REGULAR, printable
from spoutline.documents.pdf.scripts import draw_text, text_width
from spoutline.documents.pdf.styles import INKS

MEASURE_SIZE: Final = 6.6
SHARES: Final = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}  # of a text left of its place
ARROW: Final = 4.0
DASHES: Final = (3.0, 2.2)


class DrawingFlowable(Flowable):  # type: ignore[misc]
    """A drawing as a block of a page."""

    def __init__(self, drawing: Drawing, fitted: Fit) -> None:
        super().__init__()
        self._drawing = drawing
        self._fit = fitted
        self.width, self.height = fitted.width_pt, fitted.height_pt

    def wrap(self, _available_width: float, _available_height: float) -> tuple[float, float]:
        """Return the size, as reportlab asks for it."""
        return self.width, self.height

    def draw(self) -> None:
        """Paint all shapes, back to front."""
        canvas = self.canv
        canvas.setLineJoin(1)
        canvas.setLineCap(1)
        offsets = iter(balloon_offsets(self._drawing, self._fit.points_per_m))
        for shape in self._drawing.shapes:
            if isinstance(shape, Balloon):
                self._balloon(canvas, shape, next(offsets))
            else:
                self._paint(canvas, shape)

    def _paint(self, canvas: Canvas, shape: Shape) -> None:
        match shape:
            case Path():
                self._path(canvas, shape)
            case Round():
                _pen(canvas, shape.ink, shape.weight)
                _brush(canvas, shape.fill)
                x, y = self._at(shape.centre)
                radius = shape.radius_m * self._fit.points_per_m
                canvas.circle(x, y, radius, stroke=1, fill=int(shape.fill is not None))
            case Dot():
                x, y = self._at(shape.centre)
                canvas.setFillColor(INKS[shape.ink])
                canvas.circle(x, y, shape.radius_pt, stroke=0, fill=1)
            case Label():
                self._label(canvas, shape)
            case Measure():
                self._measure(canvas, shape)

    def _path(self, canvas: Canvas, shape: Path) -> None:
        _pen(canvas, shape.ink, shape.weight, dashed=shape.dashed)
        _brush(canvas, shape.fill)
        path = canvas.beginPath()
        first, *others = (self._at(place) for place in shape.places)
        path.moveTo(*first)
        for point in others:
            path.lineTo(*point)
        if shape.closed:
            path.close()
        canvas.drawPath(path, stroke=1, fill=int(shape.fill is not None))

    def _measure(self, canvas: Canvas, shape: Measure) -> None:
        (x1, y1), (x2, y2) = self._at(shape.start), self._at(shape.end)
        _pen(canvas, Ink.MEASURE, Weight.HAIR)
        canvas.line(x1, y1, x2, y2)
        angle = math.atan2(y2 - y1, x2 - x1)
        _arrow_head(canvas, x1, y1, angle)
        _arrow_head(canvas, x2, y2, angle + math.pi)
        text = printable(shape.text)
        width = text_width(text, REGULAR, MEASURE_SIZE)
        spot = measure_spot(shape, (x1, y1), (x2, y2), width)
        share = SHARES[spot.anchor]
        if spot.in_gap:
            _ground(canvas, spot.x - width * share, spot.y - MEASURE_SIZE * 0.36, width, MEASURE_SIZE)
        canvas.setFillColor(INKS[Ink.TEXT])
        canvas.setFont(REGULAR, MEASURE_SIZE)
        draw_text(canvas, text, (spot.x, spot.y - MEASURE_SIZE * 0.36), REGULAR, MEASURE_SIZE, share)

    def _balloon(self, canvas: Canvas, shape: Balloon, offset_pt: tuple[float, float]) -> None:
        x, y = self._at(shape.target)
        centre_x, centre_y = x + offset_pt[0], y + offset_pt[1]
        _pen(canvas, Ink.TEXT, Weight.HAIR)
        canvas.line(x, y, centre_x, centre_y)
        canvas.setFillColor(INKS[Ink.PAPER])
        canvas.circle(centre_x, centre_y, BALLOON_RADIUS_PT, stroke=1, fill=1)
        canvas.setFillColor(INKS[Ink.TEXT])
        canvas.setFont(BOLD, 6.8)
        canvas.drawCentredString(centre_x, centre_y - 2.4, printable(shape.text))

    def _label(self, canvas: Canvas, shape: Label) -> None:
        x, y = self._at(shape.at)
        x, y = x + shape.offset_pt[0], y + shape.offset_pt[1]
        # a long name is cut so that it stays inside the drawing
        room = {Anchor.START: self.width - x, Anchor.END: x, Anchor.MIDDLE: 2 * min(x, self.width - x)}
        text = shortened(printable(shape.text), shape.size_pt, room[shape.anchor])
        share = SHARES[shape.anchor]
        if shape.covers:
            width = text_width(text, REGULAR, shape.size_pt)
            _ground(canvas, x - width * share, y, width, shape.size_pt)
        canvas.setFillColor(INKS[shape.ink])
        canvas.setFont(REGULAR, shape.size_pt)
        draw_text(canvas, text, (x, y), REGULAR, shape.size_pt, share)

    def _at(self, place: Place) -> tuple[float, float]:
        return place_on_sheet(self._drawing, self._fit, place)


def shortened(text: str, size_pt: float, room_pt: float, font: str = REGULAR) -> str:
    """Return ``text``, cut with an ellipsis where it is wider than ``room_pt``."""
    if text_width(text, font, size_pt) <= room_pt:
        return text
    while text and text_width(f"{text}…", font, size_pt) > room_pt:
        text = text[:-1]
    return f"{text}…"


def _ground(canvas: Canvas, left: float, baseline: float, width: float, size_pt: float) -> None:
    """Cover what lies behind a line of text."""
    canvas.setFillColor(INKS[Ink.PAPER])
    canvas.rect(left - 2, baseline - size_pt * 0.24, width + 4, size_pt * 1.2, stroke=0, fill=1)


def _pen(canvas: Canvas, ink: Ink, weight: Weight, *, dashed: bool = False) -> None:
    canvas.setStrokeColor(INKS[ink])
    canvas.setLineWidth(weight.value)
    canvas.setDash(list(DASHES) if dashed else [])


def _brush(canvas: Canvas, fill: Ink | None) -> None:
    if fill is not None:
        canvas.setFillColor(INKS[fill])


def _arrow_head(canvas: Canvas, x: float, y: float, angle: float) -> None:
    """Paint a slim head with its point at x, y, opening toward ``angle``."""
    path = canvas.beginPath()
    path.moveTo(x, y)
    for turn in (0.26, -0.26):
        path.lineTo(x + ARROW * math.cos(angle + turn), y + ARROW * math.sin(angle + turn))
    path.close()
    canvas.setFillColor(INKS[Ink.MEASURE])
    canvas.drawPath(path, stroke=0, fill=1)
