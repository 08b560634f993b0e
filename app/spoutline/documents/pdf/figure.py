"""A drawing with its caption on a page: one standard scale smaller where it stays on its page by that."""

from __future__ import annotations

from typing import Final

from reportlab.platypus import Flowable

from spoutline.documents.content.blocks import Figure
from spoutline.documents.drawing.fit import Fit, fit, next_smaller
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import markup
from spoutline.documents.pdf.painter import DrawingFlowable
from spoutline.documents.pdf.paragraphs import Paragraph

_BELOW: Final = 8.0  # points below the caption
_ENDLESS: Final = 1e6


class FigureFlowable(Flowable):  # type: ignore[misc]
    """A drawing above its caption, which names the scale that it is set at; never split."""

    def __init__(self, block: Figure, width_pt: float) -> None:
        super().__init__()
        preferred = fit(block.drawing, width_pt=width_pt, height_pt=styles.figure_height(block))
        smaller = next_smaller(block.drawing, preferred)
        self._block = block
        self._fits = (preferred,) if smaller is None else (preferred, smaller)
        self._set(preferred, width_pt)

    @property
    def least_height_pt(self) -> float:
        """The height of the drawing, without its caption, at the smallest scale that it is set at."""
        return self._fits[-1].height_pt

    def wrap(self, available_width: float, available_height: float) -> tuple[float, float]:
        """Return the size at the largest scale that is left room for; at the preferred one where none is."""
        for fitted in (*self._fits, self._fits[0]):
            self._set(fitted, available_width)
            if self.height <= available_height:
                break
        return self.width, self.height

    def split(self, _available_width: float, _available_height: float) -> list[Flowable]:
        """Return nothing: a figure goes to the next page as a whole."""
        return []

    def draw(self) -> None:
        """Paint the drawing, and its caption below it."""
        self._drawing.drawOn(self.canv, 0, self.height - self._drawing.height)
        self._caption.drawOn(self.canv, 0, _BELOW)

    def _set(self, fitted: Fit, width_pt: float) -> None:
        caption = self._block.caption
        if self._block.scale_phrase:
            caption = f"{caption} {self._block.scale_phrase.format(n=fitted.scale)}."
        self._drawing = DrawingFlowable(self._block.drawing, fitted)
        self._caption = Paragraph(markup(caption), styles.CAPTION)
        _, caption_height = self._caption.wrap(width_pt, _ENDLESS)
        gap = self._caption.getSpaceBefore()
        self.width, self.height = width_pt, self._drawing.height + gap + caption_height + _BELOW
