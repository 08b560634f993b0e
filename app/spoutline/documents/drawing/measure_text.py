"""Where the text of a dimension line stands: in a gap of the line where there is room, else beside it."""

from __future__ import annotations

from typing import Final

from spoutline.documents.drawing.shapes import Anchor, Measure
from spoutline.frozen import frozen

_BESIDE_PT: Final = 4.0  # between a line, or its end, and the text beside it
_HEADS_PT: Final = 14.0  # of a line that its text leaves in sight: two arrow heads and a little of the line


@frozen
class TextSpot:
    """A place on the medium in points; ``anchor`` is the end of the text that stands there."""

    x: float
    y: float
    anchor: Anchor
    in_gap: bool


def measure_spot(measure: Measure, start: tuple[float, float], end: tuple[float, float], width_pt: float) -> TextSpot:
    """Return where the text of ``measure`` stands, whose line runs from ``start`` to ``end`` on the medium.

    A text that would cover a level line stands beyond the line's right end. ``width_pt`` is the width of the text;
    upright lines have theirs where ``Measure.text_at`` says.
    """
    middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    if start[1] == end[1]:
        if abs(end[0] - start[0]) >= width_pt + _HEADS_PT:
            return TextSpot(*middle, Anchor.MIDDLE, in_gap=True)
        return TextSpot(max(start[0], end[0]) + _BESIDE_PT, middle[1], Anchor.START, in_gap=False)
    beside = {Anchor.START: _BESIDE_PT, Anchor.END: -_BESIDE_PT, Anchor.MIDDLE: 0.0}[measure.text_at]
    return TextSpot(middle[0] + beside, middle[1], measure.text_at, in_gap=measure.text_at is Anchor.MIDDLE)
