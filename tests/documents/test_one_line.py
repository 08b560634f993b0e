"""Plain words in one line are written where reportlab writes them, without its breaking of lines; so are links."""

from __future__ import annotations

from io import BytesIO

import pypdfium2
import pytest
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import Paragraph as Reference
from reportlab.platypus.flowables import Flowable

from spoutline.documents.content.blocks import Link
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import REGULAR, register_fonts
from spoutline.documents.pdf.paragraphs import Paragraph, linked_paragraph

WIDTH = 180.0


def written(paragraph: Flowable) -> list[tuple[str, tuple[float, ...]]]:
    """Return every sign of a paragraph with its box on the sheet, rounded to hundredths of a point."""
    buffer = BytesIO()
    canvas = Canvas(buffer, pagesize=(200, 100), initialFontName=REGULAR)
    _, height = paragraph.wrapOn(canvas, WIDTH, 1000)
    paragraph.drawOn(canvas, 10, 60 - height)
    canvas.showPage()
    canvas.save()
    page = pypdfium2.PdfDocument(buffer.getvalue())[0].get_textpage()
    boxes = (tuple(round(side, 2) for side in page.get_charbox(number)) for number in range(page.count_chars()))
    return list(zip(page.get_text_range(), boxes, strict=True))


@pytest.mark.parametrize("alignment", styles.HEAD_CELLS)
@pytest.mark.parametrize("text", ["✓ passes", "10 gpm", "at least 3 15/16\N{NO-BREAK SPACE}in", "wide gap", "Größe"])
def test_one_line_stands_where_the_library_sets_it(alignment: styles.Alignment, text: str) -> None:
    register_fonts()
    style = styles.HEAD_CELLS[alignment]
    own = Paragraph(text, style)
    assert written(own) == written(Reference(text, style))
    assert own.height == style.leading


@pytest.mark.parametrize("text", ["two  spaces", " led by one", "a line\nof its own", "many words of a cell " * 6])
def test_what_is_not_one_plain_line_is_left_to_the_library(text: str) -> None:
    register_fonts()
    assert written(Paragraph(text, styles.VALUE)) == written(Reference(text, styles.VALUE))


def test_a_line_in_a_narrower_place_is_broken_there() -> None:
    register_fonts()
    cell = Paragraph("a few plain words", styles.VALUE)
    assert cell.wrap(WIDTH, 100)[1] == styles.VALUE.leading
    assert cell.wrap(30.0, 100)[1] > styles.VALUE.leading
    assert cell.wrap(WIDTH, 100)[1] == styles.VALUE.leading


def test_linked_pieces_read_as_one_text_and_lead_where_they_should() -> None:
    register_fonts()
    pieces = [("G1", Link(0, 2, "one")), (", <b>&", None), ("G2", Link(4, 6, "two"))]
    buffer = BytesIO()
    canvas = Canvas(buffer, pagesize=(200, 100), initialFontName=REGULAR)
    for name in ("one", "two"):
        canvas.bookmarkPage(name)
    paragraph = linked_paragraph(pieces, styles.VALUE)
    paragraph.wrapOn(canvas, WIDTH, 100)
    paragraph.drawOn(canvas, 10, 50)
    canvas.showPage()
    canvas.save()
    page = pypdfium2.PdfDocument(buffer.getvalue())[0]
    assert page.get_textpage().get_text_range() == "G1, <b>&G2"
    assert buffer.getvalue().count(b"/Subtype /Link") == 2
