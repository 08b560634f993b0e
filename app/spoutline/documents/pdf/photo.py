"""Photos of a record, scaled to the page and kept with their captions."""

from __future__ import annotations

from io import BytesIO
from typing import Final

from reportlab.lib.units import mm
from reportlab.lib.utils import ImageReader
from reportlab.platypus import Flowable, Image, KeepTogether, Paragraph, Spacer

from spoutline.documents.content.blocks import Picture
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import markup
from spoutline.input_bounds import check_picture

_HEIGHT: Final = 80 * mm


def photo(block: Picture, width_pt: float) -> Flowable:
    """Return a photo with its caption; raise ``InputFault`` where it is none that can be shown."""
    check_picture(block.content, block.caption, "photo")
    width, height = ImageReader(BytesIO(block.content)).getSize()
    scale = min(width_pt / width, _HEIGHT / height)
    image = Image(BytesIO(block.content), width * scale, height * scale, hAlign="LEFT")
    return KeepTogether([image, Paragraph(markup(block.caption), styles.CAPTION), Spacer(1, 6)])
