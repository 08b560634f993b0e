"""How large a drawing is set: at the largest standard scale that fits its frame, alike on paper and in HTML."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from spoutline.documents.drawing.shapes import Drawing, Place

# the scales of ISO 5455 for reductions, and the intermediate ones that trade drawings use; from memory
SCALES: Final = (1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250, 500, 1000)
POINTS_PER_METRE: Final = 1000 * (72.0 / 2.54 * 0.1)  # 72 points to the inch
# texts at the edge reach beyond the places that bound a drawing
_PADDING_SIDE: Final = 34.0
_PADDING_TOP: Final = 30.0
_PADDING_BOTTOM: Final = 8.0


@dataclass(frozen=True, slots=True)
class Fit:
    """How a drawing is set: metres are multiplied by ``points_per_m``; ``scale`` is n of 1:n."""

    scale: int
    points_per_m: float
    width_pt: float
    height_pt: float


def fit(drawing: Drawing, *, width_pt: float, height_pt: float) -> Fit:
    """Return the largest standard scale at which ``drawing`` with its texts fits the frame.

    Raises
    ------
    ValueError
        The drawing fits at no standard scale.
    """
    side, top, bottom = paddings(drawing)
    for scale in SCALES if drawing.true_scale else (1,):
        points = POINTS_PER_METRE / scale
        width = drawing.box.width_m * points + 2 * side
        height = drawing.box.height_m * points + top + bottom
        if (width <= width_pt and height <= height_pt) or not drawing.true_scale:
            return Fit(scale, points, width, height)
    raise ValueError(f"the drawing {drawing.title!r} fits at no scale")


def paddings(drawing: Drawing) -> tuple[float, float, float]:
    """Return the room beside, above and below the places of a drawing, in points; a chart's box holds its texts."""
    return (_PADDING_SIDE, _PADDING_TOP, _PADDING_BOTTOM) if drawing.true_scale else (0.0, 0.0, 0.0)


def place_on_sheet(drawing: Drawing, fitted: Fit, place: Place) -> tuple[float, float]:
    """Return where a place lies on the set drawing, in points to the right and up from its lower left corner."""
    side, _, bottom = paddings(drawing)
    return (
        (place.x_m - drawing.box.left_m) * fitted.points_per_m + side,
        (place.y_m - drawing.box.bottom_m) * fitted.points_per_m + bottom,
    )
