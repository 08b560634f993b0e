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
from spoutline.model.faults import InputFault, InputProblem

_HEIGHT: Final = 80 * mm


def photo(block: Picture, width_pt: float) -> Flowable:
    """Return a photo with its caption; raise ``InputFault`` where it is none that can be shown."""
    try:
        width, height = ImageReader(BytesIO(block.content)).getSize()
    except Exception as fault:  # the picture library has many ways to refuse a file
        wanted = "a PNG or JPEG picture is needed"
        raise InputFault((InputProblem(block.caption, "photo", "the picture", wanted),)) from fault
    scale = min(width_pt / width, _HEIGHT / height)
    image = Image(BytesIO(block.content), width * scale, height * scale, hAlign="LEFT")
    return KeepTogether([image, Paragraph(markup(block.caption), styles.CAPTION), Spacer(1, 6)])
