"""Blocks beside each other, and codes for cameras."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final

from reportlab.lib.units import mm
from reportlab.platypus import Flowable, Spacer, Table, TableStyle

from spoutline.documents.content import blocks
from spoutline.documents.drawing.fit import fit
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import REGULAR, markup
from spoutline.documents.pdf.painter import DrawingFlowable
from spoutline.documents.pdf.paragraphs import Paragraph

COLUMN_GAP: Final = 8.0
_CODE_SIZE: Final = 22 * mm
QUIET_MODULES: Final = 4  # the quiet zone of ISO/IEC 18004

SetBlock = Callable[[blocks.Block, float], Iterator[Flowable]]


def side_by_side(block: blocks.Columns, width_pt: float, set_block: SetBlock) -> Flowable:
    """Return two columns of blocks; they stay on one page."""
    left_width = (width_pt - COLUMN_GAP) * block.left_share
    right_width = width_pt - COLUMN_GAP - left_width
    cells = [
        list(_cell(block.left, left_width, set_block)),
        "",
        list(_cell(block.right, right_width, set_block)),
    ]
    rules = [
        ("FONTNAME", (0, 0), (-1, -1), REGULAR),
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LEFTPADDING", (0, 0), (-1, -1), 0),
        ("RIGHTPADDING", (0, 0), (-1, -1), 0),
        ("TOPPADDING", (0, 0), (-1, -1), 0),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 2),
    ]
    return Table([cells], colWidths=[left_width, COLUMN_GAP, right_width], style=TableStyle(rules), hAlign="LEFT")


def _cell(content: tuple[blocks.Block, ...], width_pt: float, set_block: SetBlock) -> Iterator[Flowable]:
    for block in content:
        if isinstance(block, blocks.Figure):
            yield from _figure(block, width_pt)
        else:
            yield from set_block(block, width_pt)


def _figure(block: blocks.Figure, width_pt: float) -> Iterator[Flowable]:
    """Return a drawing with its caption; a block that keeps itself together cannot stand in a cell."""
    fitted = fit(block.drawing, width_pt=width_pt, height_pt=styles.figure_height(block, styles.FIGURE_HEIGHT_BESIDE))
    caption = block.caption
    if block.scale_phrase:
        caption = f"{block.scale_phrase.format(n=fitted.scale)}. {caption}"
    yield DrawingFlowable(block.drawing, fitted)
    yield Paragraph(markup(caption), styles.CAPTION)
    yield Spacer(1, 4)


class CodeFlowable(Flowable):  # type: ignore[misc]
    """A QR code as vectors, dark modules joined to runs."""

    def __init__(self, text: str, size_pt: float) -> None:
        super().__init__()
        self._text = text
        self.width = self.height = size_pt

    def wrap(self, _available_width: float, _available_height: float) -> tuple[float, float]:
        """Return the size, as reportlab asks for it."""
        return self.width, self.height

    def draw(self) -> None:
        """Paint the dark modules, the quiet zone left white."""
        rows = code_rows(self._text)
        module = self.width / (len(rows) + 2 * QUIET_MODULES)
        self.canv.saveState()
        self.canv.setFillColor(styles.BLACK)
        path = self.canv.beginPath()
        for number, row in enumerate(rows):
            y = self.height - (number + QUIET_MODULES + 1) * module
            for start, length in _dark_runs(row):
                path.rect((start + QUIET_MODULES) * module, y, length * module, module)
        self.canv.drawPath(path, stroke=0, fill=1)
        self.canv.restoreState()


def code_rows(text: str) -> tuple[tuple[bool, ...], ...]:
    """Return the modules of a QR code, True for dark; level M bears a smudge of 15 percent."""
    import segno

    code = segno.make_qr(text, error="m", boost_error=False)
    return tuple(tuple(bool(module) for module in row) for row in code.matrix)


def scan_code(block: blocks.ScanCode) -> Iterator[Flowable]:
    """Return the code with its caption."""
    code = CodeFlowable(block.text, _CODE_SIZE)
    code.hAlign = "RIGHT"
    yield code
    yield Paragraph(markup(block.caption), styles.CODE_CAPTION)


def _dark_runs(row: tuple[bool, ...]) -> Iterator[tuple[int, int]]:
    start = None
    for at, dark in enumerate((*row, False)):
        if dark and start is None:
            start = at
        elif not dark and start is not None:
            yield start, at - start
            start = None
