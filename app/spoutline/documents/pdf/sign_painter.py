"""Safety signs painted as vectors: shape and colours after ISO 3864-1, legible in black and white."""

from __future__ import annotations

import math
from typing import Final

from reportlab.lib.colors import Color, HexColor, black, white
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import Flowable

from spoutline.documents.drawing.pictograms import Area, Disc, Mark, Stroke, pictogram_marks
from spoutline.ruletables.caution_signs import CautionSign, SignShape

# near the safety colours of ISO 3864-4, from memory; the shape carries the meaning where colour is lost
YELLOW: Final = "#f4c300"
RED: Final = "#b3191f"
BLUE: Final = "#0b4a8a"
_YELLOW, _RED, _BLUE = HexColor(YELLOW), HexColor(RED), HexColor(BLUE)
MARK_SHARE: Final = {SignShape.WARNING: 0.36, SignShape.PROHIBITION: 0.46, SignShape.MANDATORY: 0.5}


class SignFlowable(Flowable):  # type: ignore[misc]
    """A sign as a square block of ``size_pt`` points."""

    def __init__(self, sign: CautionSign, size_pt: float) -> None:
        super().__init__()
        self._sign = sign
        self.width = self.height = size_pt

    def wrap(self, _available_width: float, _available_height: float) -> tuple[float, float]:
        """Return the size, as reportlab asks for it."""
        return self.width, self.height

    def draw(self) -> None:
        """Paint shape and pictogram."""
        half = self.width / 2
        self.canv.saveState()
        self.canv.translate(half, half)
        self.canv.setLineJoin(1)
        self.canv.setLineCap(1)
        paint_sign(self.canv, self._sign, half)
        self.canv.restoreState()


def paint_sign(canvas: Canvas, sign: CautionSign, half_pt: float) -> None:
    """Paint a sign around the origin, ``half_pt`` points from its middle to its edge."""
    marks = pictogram_marks(sign.pictogram)
    unit = half_pt * MARK_SHARE[sign.shape]
    match sign.shape:
        case SignShape.WARNING:
            _triangle(canvas, half_pt)
            canvas.translate(0, -0.26 * half_pt)
            _paint(canvas, marks, unit, black, _YELLOW)
            canvas.translate(0, 0.26 * half_pt)
        case SignShape.PROHIBITION:
            canvas.setFillColor(white)
            canvas.setStrokeColor(_RED)
            canvas.setLineWidth(half_pt * 0.18)
            canvas.circle(0, 0, half_pt * 0.86, stroke=1, fill=1)
            _paint(canvas, marks, unit, black, white)
            canvas.setStrokeColor(_RED)
            canvas.setLineWidth(half_pt * 0.15)
            reach = half_pt * 0.86 * math.cos(math.pi / 4)
            canvas.line(-reach, reach, reach, -reach)
        case SignShape.MANDATORY:
            canvas.setFillColor(_BLUE)
            canvas.circle(0, 0, half_pt * 0.94, stroke=0, fill=1)
            _paint(canvas, marks, unit, white, _BLUE)


def paint_alert(canvas: Canvas, half_pt: float, ink: Color, paper: Color) -> None:
    """Paint the safety alert symbol of signal words around the origin: a triangle with an exclamation mark."""
    path = canvas.beginPath()
    path.moveTo(0, half_pt)
    path.lineTo(-half_pt * 1.06, -half_pt * 0.8)
    path.lineTo(half_pt * 1.06, -half_pt * 0.8)
    path.close()
    canvas.setFillColor(ink)
    canvas.drawPath(path, stroke=0, fill=1)
    canvas.setFillColor(paper)
    canvas.rect(-half_pt * 0.12, -half_pt * 0.22, half_pt * 0.24, half_pt * 0.72, stroke=0, fill=1)
    canvas.circle(0, -half_pt * 0.5, half_pt * 0.15, stroke=0, fill=1)


def _triangle(canvas: Canvas, half_pt: float) -> None:
    path = canvas.beginPath()
    inset = half_pt * 0.9
    path.moveTo(0, inset)
    path.lineTo(-inset * 1.06, -inset * 0.86)
    path.lineTo(inset * 1.06, -inset * 0.86)
    path.close()
    canvas.setFillColor(_YELLOW)
    canvas.setStrokeColor(black)
    canvas.setLineWidth(half_pt * 0.13)
    canvas.drawPath(path, stroke=1, fill=1)


def _paint(canvas: Canvas, marks: tuple[Mark, ...], unit: float, ink: Color, paper: Color) -> None:
    for mark in marks:
        colour = paper if mark.hollow else ink
        canvas.setFillColor(colour)
        canvas.setStrokeColor(colour)
        if isinstance(mark, Disc):
            canvas.circle(mark.centre[0] * unit, mark.centre[1] * unit, mark.radius * unit, stroke=0, fill=1)
            continue
        path = canvas.beginPath()
        first, *others = ((x * unit, y * unit) for x, y in mark.points)
        path.moveTo(*first)
        for point in others:
            path.lineTo(*point)
        if isinstance(mark, Area):
            path.close()
            canvas.drawPath(path, stroke=0, fill=1)
        elif isinstance(mark, Stroke):
            canvas.setLineWidth(mark.width * unit)
            canvas.drawPath(path, stroke=1, fill=0)
