"""Safety signs and codes as SVG. Both only repeat what stands beside them in words, so a screen reader passes them."""

from __future__ import annotations

import math
from typing import Final

from spoutline.documents.drawing.pictograms import Area, Disc, Mark, pictogram_marks
from spoutline.documents.pdf.side_by_side import QUIET_MODULES, code_rows
from spoutline.documents.pdf.sign_painter import BLUE, MARK_SHARE, RED, YELLOW
from spoutline.ruletables.caution_signs import CautionSign, SignShape

_BLACK: Final = "#000000"
_WHITE: Final = "#ffffff"
_SHIFT: Final = 0.26  # a pictogram stands lower in a triangle


def sign_svg(sign: CautionSign) -> str:
    """Return a sign, its shape after ISO 3864-1, as an element that stands for nothing by itself."""
    share = MARK_SHARE[sign.shape]
    match sign.shape:
        case SignShape.WARNING:
            points = "0,-0.9 -0.954,0.774 0.954,0.774"
            shape = (
                f'<polygon points="{points}" fill="{YELLOW}" stroke="{_BLACK}" stroke-width="0.13" '
                'stroke-linejoin="round"/>'
            )
            marks = _marks(pictogram_marks(sign.pictogram), _BLACK, YELLOW)
            drawn = f'{shape}<g transform="translate(0 {_SHIFT}) scale({share})">{marks}</g>'
        case SignShape.PROHIBITION:
            reach = 0.86 * math.cos(math.pi / 4)
            ring = f'<circle r="0.86" fill="{_WHITE}" stroke="{RED}" stroke-width="0.18"/>'
            marks = _marks(pictogram_marks(sign.pictogram), _BLACK, _WHITE)
            bar = (
                f'<line x1="{-reach:.3f}" y1="{-reach:.3f}" x2="{reach:.3f}" y2="{reach:.3f}" '
                f'stroke="{RED}" stroke-width="0.15"/>'
            )
            drawn = f'{ring}<g transform="scale({share})">{marks}</g>{bar}'
        case SignShape.MANDATORY:
            marks = _marks(pictogram_marks(sign.pictogram), _WHITE, BLUE)
            drawn = f'<circle r="0.94" fill="{BLUE}"/><g transform="scale({share})">{marks}</g>'
    return f'<svg class="sign" viewBox="-1.05 -1.05 2.1 2.1" aria-hidden="true">{drawn}</svg>'


def _marks(marks: tuple[Mark, ...], ink: str, paper: str) -> str:
    return "".join(_mark(mark, paper if mark.hollow else ink) for mark in marks)


def _mark(mark: Mark, colour: str) -> str:
    if isinstance(mark, Disc):
        x, y = mark.centre
        return f'<circle cx="{x:.3f}" cy="{-y:.3f}" r="{mark.radius:.3f}" fill="{colour}"/>'
    points = " ".join(f"{x:.3f},{-y:.3f}" for x, y in mark.points)
    if isinstance(mark, Area):
        return f'<polygon points="{points}" fill="{colour}"/>'
    line = 'fill="none" stroke-linecap="round" stroke-linejoin="round"'
    return f'<polyline points="{points}" {line} stroke="{colour}" stroke-width="{mark.width:.3f}"/>'


def code_svg(text: str) -> str:
    """Return a code for cameras (QR, ISO/IEC 18004) with its quiet zone."""
    rows = code_rows(text)
    size = len(rows) + 2 * QUIET_MODULES
    dark = "".join(
        f"M{column + QUIET_MODULES} {row + QUIET_MODULES}h1v1h-1z"
        for row, modules in enumerate(rows)
        for column, is_dark in enumerate(modules)
        if is_dark
    )
    ground = f'<rect width="{size}" height="{size}" fill="{_WHITE}"/>'
    return (
        f'<svg class="code" viewBox="0 0 {size} {size}" aria-hidden="true" shape-rendering="crispEdges">'
        f'{ground}<path d="{dark}" fill="{_BLACK}"/></svg>'
    )
