"""A drawing as SVG: the geometry, scale and words of the paper, with a title and a description to be read aloud."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from typing import Final

from reportlab.pdfbase.pdfmetrics import stringWidth

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
from spoutline.documents.html.escaping import attribute, html_text, plain
from spoutline.documents.pdf.fonts import REGULAR, register_fonts
from spoutline.documents.pdf.painter import ARROW, DASHES, MEASURE_SIZE, SHARES, shortened
from spoutline.documents.pdf.picture import figure_fit
from spoutline.documents.pdf.styles import INKS

_NAMESPACE: Final = "http://www.w3.org/2000/svg"
_ANCHORS: Final = {Anchor.START: "start", Anchor.MIDDLE: "middle", Anchor.END: "end"}
_FONT: Final = "DejaVu Sans, Verdana, Arial, sans-serif"
_BALLOON_SIZE: Final = 6.8


def drawing_svg(drawing: Drawing, fitted: Fit, name: str) -> str:
    """Return ``drawing`` as an ``svg`` element for a page, as large as on paper.

    ``name`` begins the ids of its title and description; it is unique on the page.
    """
    register_fonts()
    size = f'width="{_n(fitted.width_pt)}pt" height="{_n(fitted.height_pt)}pt"'
    box = f'viewBox="0 0 {_n(fitted.width_pt)} {_n(fitted.height_pt)}"'
    head = f'<svg xmlns="{_NAMESPACE}" {size} {box} role="img" aria-labelledby="{name}-title {name}-desc">'
    told = f'<title id="{name}-title">{_text(drawing.title)}</title>'
    told += f'<desc id="{name}-desc">{_text(" ".join((drawing.description, *drawing.notes)))}</desc>'
    group = f'<g stroke-linecap="round" stroke-linejoin="round" fill="none" font-family="{_FONT}">'
    return "".join((head, told, group, *_Pen(drawing, fitted).elements(), "</g></svg>"))


def drawing_file(drawing: Drawing) -> bytes:
    """Return ``drawing`` as an SVG file on white, as large as on paper; equal drawings give equal bytes."""
    fitted = figure_fit(drawing)
    ground = f'<rect width="100%" height="100%" fill="{_hex(Ink.PAPER)}"/>'
    text = drawing_svg(drawing, fitted, "drawing").replace("<g ", f"{ground}<g ", 1)
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{text}\n'.encode()


class _Pen:
    """Writes the shapes of one drawing, back to front."""

    def __init__(self, drawing: Drawing, fitted: Fit) -> None:
        self._drawing, self._fit = drawing, fitted

    def elements(self) -> Iterator[str]:
        offsets = iter(balloon_offsets(self._drawing, self._fit.points_per_m))
        for shape in self._drawing.shapes:
            yield self._balloon(shape, next(offsets)) if isinstance(shape, Balloon) else self._element(shape)

    def _element(self, shape: Shape) -> str:
        match shape:
            case Path():
                dashes = f' stroke-dasharray="{" ".join(map(_n, DASHES))}"' if shape.dashed else ""
                points = _points(self._at(place) for place in shape.places)
                element = "polygon" if shape.closed else "polyline"
                return f'<{element} points="{points}"{_stroke(shape.ink, shape.weight)}{dashes}{_fill(shape.fill)}/>'
            case Round():
                circle = _circle(self._at(shape.centre), shape.radius_m * self._fit.points_per_m)
                return f"{circle}{_stroke(shape.ink, shape.weight)}{_fill(shape.fill)}/>"
            case Dot():
                return f"{_circle(self._at(shape.centre), shape.radius_pt)}{_fill(shape.ink)}/>"
            case Label():
                return self._label(shape)
            case Measure():
                return self._measure(shape)
        raise TypeError(f"no way to draw {shape!r}")

    def _label(self, shape: Label) -> str:
        x, y = self._at(shape.at)
        x, y = x + shape.offset_pt[0], y - shape.offset_pt[1]
        width = self._fit.width_pt
        # a long name is cut so that it stays inside the drawing, as on paper
        room = {Anchor.START: width - x, Anchor.END: x, Anchor.MIDDLE: 2 * min(x, width - x)}
        text = shortened(plain(shape.text), shape.size_pt, room[shape.anchor])
        width = stringWidth(text, REGULAR, shape.size_pt)
        ground = _ground(x - width * SHARES[shape.anchor], y, width, shape.size_pt) if shape.covers else ""
        return ground + _words(text, x, y, shape.size_pt, shape.anchor, shape.ink)

    def _measure(self, shape: Measure) -> str:
        (x1, y1), (x2, y2) = self._at(shape.start), self._at(shape.end)
        line = f'<line x1="{_n(x1)}" y1="{_n(y1)}" x2="{_n(x2)}" y2="{_n(y2)}"{_stroke(Ink.MEASURE, Weight.HAIR)}/>'
        angle = math.atan2(y2 - y1, x2 - x1)
        heads = _arrow_head(x1, y1, angle) + _arrow_head(x2, y2, angle + math.pi)
        width = stringWidth(plain(shape.text), REGULAR, MEASURE_SIZE)
        spot = measure_spot(shape, (x1, y1), (x2, y2), width)
        baseline = spot.y + MEASURE_SIZE * 0.36
        gap = _ground(spot.x - width * SHARES[spot.anchor], baseline, width, MEASURE_SIZE) if spot.in_gap else ""
        words = _words(plain(shape.text), spot.x, baseline, MEASURE_SIZE, spot.anchor, Ink.TEXT)
        return "".join((line, heads, gap, words))

    def _balloon(self, shape: Balloon, offset_pt: tuple[float, float]) -> str:
        x, y = self._at(shape.target)
        centre_x, centre_y = x + offset_pt[0], y - offset_pt[1]
        stroke = _stroke(Ink.TEXT, Weight.HAIR)
        line = f'<line x1="{_n(x)}" y1="{_n(y)}" x2="{_n(centre_x)}" y2="{_n(centre_y)}"{stroke}/>'
        circle = f"{_circle((centre_x, centre_y), BALLOON_RADIUS_PT)}{stroke}{_fill(Ink.PAPER)}/>"
        words = _words(plain(shape.text), centre_x, centre_y + 2.4, _BALLOON_SIZE, Anchor.MIDDLE, Ink.TEXT, bold=True)
        return "".join((line, circle, words))

    def _at(self, place: Place) -> tuple[float, float]:
        x, up = place_on_sheet(self._drawing, self._fit, place)
        return x, self._fit.height_pt - up


def _words(  # noqa: PLR0917  (as many as a text on a canvas has)
    text: str, x: float, y: float, size_pt: float, anchor: Anchor, ink: Ink, *, bold: bool = False
) -> str:
    weight = ' font-weight="bold"' if bold else ""
    place = f'x="{_n(x)}" y="{_n(y)}" font-size="{_n(size_pt)}" text-anchor="{_ANCHORS[anchor]}"'
    return f"<text {place}{weight}{_fill(ink)}>{_text(text)}</text>"


def _ground(left: float, baseline: float, width: float, size_pt: float) -> str:
    """Return what covers the lines behind a line of text."""
    place = f'x="{_n(left - 2)}" y="{_n(baseline - size_pt * 0.96)}"'
    return f'<rect {place} width="{_n(width + 4)}" height="{_n(size_pt * 1.2)}"{_fill(Ink.PAPER)}/>'


def _arrow_head(x: float, y: float, angle: float) -> str:
    sides = ((x + ARROW * math.cos(angle + turn), y + ARROW * math.sin(angle + turn)) for turn in (0.26, -0.26))
    return f'<polygon points="{_points(((x, y), *sides))}"{_fill(Ink.MEASURE)}/>'


def _circle(centre: tuple[float, float], radius: float) -> str:
    return f'<circle cx="{_n(centre[0])}" cy="{_n(centre[1])}" r="{_n(radius)}"'


def _points(points: Iterable[tuple[float, float]]) -> str:
    return " ".join(f"{_n(x)},{_n(y)}" for x, y in points)


def _stroke(ink: Ink, weight: Weight) -> str:
    return f' stroke="{_hex(ink)}" stroke-width="{_n(weight.value)}"'


def _fill(ink: Ink | None) -> str:
    return "" if ink is None else f' fill="{_hex(ink)}"'


def _hex(ink: Ink) -> str:
    return attribute(f"#{INKS[ink].hexval()[2:]}")


def _text(text: str) -> str:
    return html_text(text).replace("<br>", " ")


def _n(value: float) -> str:
    """Return a length in points, to a hundredth, without needless zeros."""
    return f"{value:.2f}".rstrip("0").rstrip(".").replace("-0.00", "0")
