"""What makes a letter of a document: the letterhead and the lines for signatures."""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO
from typing import Final

from reportlab.lib.utils import ImageReader
from reportlab.platypus import Flowable, Image, KeepTogether, Spacer, Table, TableStyle

from spoutline.documents.content.blocks import Letterhead, SignatureLines
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import REGULAR, markup
from spoutline.documents.pdf.paragraphs import Paragraph
from spoutline.documents.pdf.photo import drawable

_PICTURE_WIDTH: Final = 130.0  # points; a wider or higher picture is scaled down, a smaller one keeps its size
_PICTURE_HEIGHT: Final = 54.0
_SIGNING_ROOM: Final = 34.0
_FONT: Final = ("FONTNAME", (0, 0), (-1, -1), REGULAR)


def letterhead(block: Letterhead, width_pt: float) -> Iterator[Flowable]:
    """Return the letterhead: picture at the left where there is one, name and lines at the right."""
    text = [Paragraph(f"<b>{markup(block.name)}</b>", styles.LETTER_NAME)]
    text += [Paragraph(markup(line), styles.LETTER_LINE) for line in block.lines]
    picture: Flowable | str = _picture(block.picture) if block.picture else ""
    rules = [_FONT, ("VALIGN", (0, 0), (-1, -1), "TOP"), ("LEFTPADDING", (0, 0), (0, -1), 0)]
    rules.append(("RIGHTPADDING", (-1, 0), (-1, -1), 0))
    yield Table([[picture, text]], colWidths=[width_pt * 0.5, width_pt * 0.5], style=TableStyle(rules), hAlign="LEFT")
    yield Spacer(1, 8)


def signature_lines(block: SignatureLines, width_pt: float) -> Flowable:
    """Return one line for each label, side by side."""
    labels = [Paragraph(markup(label), styles.LABEL) for label in block.labels]
    gap = 12.0
    width = (width_pt - gap * (len(labels) - 1)) / len(labels)
    cells: list[object] = []
    widths: list[float] = []
    rules: list[tuple[object, ...]] = [_FONT, ("LEFTPADDING", (0, 0), (-1, -1), 0)]
    for label in labels:
        if cells:
            cells.append("")
            widths.append(gap)
        rules.append(("LINEABOVE", (len(cells), 0), (len(cells), 0), 0.7, styles.BLACK))
        cells.append(label)
        widths.append(width)
    table = Table([cells], colWidths=widths, style=TableStyle(rules), hAlign="LEFT")
    return KeepTogether([Spacer(1, _SIGNING_ROOM), table])


def _picture(content: bytes) -> Image:
    content = drawable(content, "", "seller.logo")
    width, height = ImageReader(BytesIO(content)).getSize()
    scale = min(1.0, _PICTURE_WIDTH / width, _PICTURE_HEIGHT / height)
    return Image(BytesIO(content), width * scale, height * scale, hAlign="LEFT")
