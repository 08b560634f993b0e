"""Paragraphs that read and break their text once.

A table asks each cell for its height when it is measured, when it is broken over pages and when it is drawn, each time
at the same width; reportlab breaks the lines anew each time.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Any

from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import Paragraph as _Paragraph

_MARKUP = frozenset("<&\n\r\t")


class Paragraph(_Paragraph):  # type: ignore[misc]
    """A paragraph whose lines stay as they were broken for as long as its width stays."""

    _measured: tuple[float, tuple[float, float]] | None = None

    def __init__(self, text: str | None, style: ParagraphStyle, **options: Any) -> None:  # noqa: ANN401  # reportlab's own
        if "frags" not in options and text is not None and _is_plain(text):
            options["frags"] = [_run(style).clone(text=text)]
        super().__init__(text, style, **options)

    def wrap(self, width_pt: float, height_pt: float) -> tuple[float, float]:
        """Return width and height at a width, as reportlab asks; lines that it dropped are broken again."""
        if self._measured is None or self._measured[0] != width_pt or not hasattr(self, "blPara"):
            self._measured = (width_pt, super().wrap(width_pt, height_pt))
        return self._measured[1]


def _is_plain(text: str) -> bool:
    """Return whether a text is already what reading its markup would give: one run, no white space outside."""
    return bool(text) and _MARKUP.isdisjoint(text) and text == text.strip()


@lru_cache(maxsize=128)
def _run(style: ParagraphStyle) -> Any:  # noqa: ANN401  # reportlab tells no types
    """Return the run of text that reportlab's own reader makes of plain text in a style."""
    return _Paragraph("x", style).frags[0]
