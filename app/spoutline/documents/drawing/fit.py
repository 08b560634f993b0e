"""How large a drawing is set: at the largest standard scale that fits its frame, alike on paper and in HTML."""

from __future__ import annotations

from typing import Final

from spoutline.documents.drawing.shapes import Anchor, Drawing, Measure, Place
from spoutline.frozen import frozen

# the scales of ISO 5455 for reductions, and the intermediate ones that trade drawings use; from memory
SCALES: Final = (1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250, 500, 1000)
POINTS_PER_METRE: Final = 1000 * (72.0 / 2.54 * 0.1)  # 72 points to the inch
# texts at the edge reach beyond the places that bound a drawing
_PADDING_SIDE: Final = 34.0
_WIDTH_PER_SIGN: Final = 4.0  # points, of the text of a dimension line; most signs are narrower
_PADDING_TOP: Final = 30.0
_PADDING_BOTTOM: Final = 8.0


@frozen
class Fit:
    """How a drawing is set: metres are multiplied by ``points_per_m``; ``scale`` is n of 1:n.

    ``left_pt`` and ``below_pt`` lie between the edge of the drawing and the places that bound it.
    """

    scale: int
    points_per_m: float
    width_pt: float
    height_pt: float
    left_pt: float
    below_pt: float


def fit(drawing: Drawing, *, width_pt: float, height_pt: float) -> Fit:
    """Return the largest standard scale at which ``drawing`` with its texts fits the frame.

    Raises
    ------
    ValueError
        The drawing fits at no standard scale.
    """
    for scale in SCALES if drawing.true_scale else (1,):
        fitted = _at_scale(drawing, scale)
        if (fitted.width_pt <= width_pt and fitted.height_pt <= height_pt) or not drawing.true_scale:
            return fitted
    raise ValueError(f"the drawing {drawing.title!r} fits at no scale")


def next_smaller(drawing: Drawing, fitted: Fit) -> Fit | None:
    """Return how ``drawing`` is set one standard scale smaller than ``fitted``; None for a chart and the smallest."""
    place = SCALES.index(fitted.scale) + 1
    if not drawing.true_scale or place == len(SCALES):
        return None
    return _at_scale(drawing, SCALES[place])


def _at_scale(drawing: Drawing, scale: int) -> Fit:
    left, right, top, bottom = paddings(drawing)
    points = POINTS_PER_METRE / scale
    width = drawing.box.width_m * points + left + right
    return Fit(scale, points, width, drawing.box.height_m * points + top + bottom, left, bottom)


def paddings(drawing: Drawing) -> tuple[float, float, float, float]:
    """Return the room left, right, above and below the places of a drawing, in points; a chart's box holds its texts.

    Texts of upright dimension lines stand beside these, outside.
    """
    if not drawing.true_scale:
        return (0.0, 0.0, 0.0, 0.0)
    left = _PADDING_SIDE + _longest_beside(drawing, Anchor.END)
    right = _PADDING_SIDE + _longest_beside(drawing, Anchor.START)
    return left, right, _PADDING_TOP, _PADDING_BOTTOM


def _longest_beside(drawing: Drawing, side: Anchor) -> float:
    """Return how far the longest text of an upright dimension line reaches beyond what every drawing has."""
    texts = (len(shape.text) for shape in drawing.shapes if isinstance(shape, Measure) and shape.text_at is side)
    return max(0.0, max(texts, default=0) * _WIDTH_PER_SIGN - _PADDING_SIDE + 4.0)


def place_on_sheet(drawing: Drawing, fitted: Fit, place: Place) -> tuple[float, float]:
    """Return where a place lies on the set drawing, in points to the right and up from its lower left corner."""
    return (
        (place.x_m - drawing.box.left_m) * fitted.points_per_m + fitted.left_pt,
        (place.y_m - drawing.box.bottom_m) * fitted.points_per_m + fitted.below_pt,
    )
