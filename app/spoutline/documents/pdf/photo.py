"""Photos of a record, scaled to the page and kept with their captions."""

from __future__ import annotations

from io import BytesIO
from typing import Final

from reportlab.lib.units import mm
from reportlab.lib.utils import ImageReader
from reportlab.platypus import Flowable, Image, KeepTogether, Spacer, Table

from spoutline.documents.content.blocks import Picture, PictureRow
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import markup
from spoutline.documents.pdf.paragraphs import Paragraph
from spoutline.input_bounds.picture import check_picture

_HEIGHT: Final = 80 * mm
_IN_A_ROW: Final = 3
_ROW_HEIGHT: Final = 38 * mm
_GAP: Final = 12  # points between pictures of a row
_WHOLE_PIXELS: Final = 16_000_000  # a larger photo is drawn from a smaller copy: it takes ten bytes for each pixel
_COPY: Final = (2_000, 2_000)  # least size of the copy, pixels; more than a press shows on this height
_QUALITY: Final = 90


def photo(block: Picture, width_pt: float) -> Flowable:
    """Return a photo with its caption; raise ``InputFault`` where it is none that can be shown."""
    content = drawable(block.content, block.caption, "photo")
    width, height = ImageReader(BytesIO(content)).getSize()
    scale = min(width_pt / width, _HEIGHT / height)
    image = Image(BytesIO(content), width * scale, height * scale, hAlign="LEFT")
    return KeepTogether([image, Paragraph(markup(block.caption), styles.CAPTION), Spacer(1, 6)])


def photo_row(block: PictureRow, width_pt: float) -> Flowable:
    """Return small pictures side by side with their captions; raise ``InputFault`` where one cannot be shown."""
    share = width_pt / _IN_A_ROW
    cells = [_small(one, share - _GAP) for one in block.pictures]
    cells += [[]] * (_IN_A_ROW - len(cells))
    table = Table([cells], colWidths=[share] * _IN_A_ROW, hAlign="LEFT")
    table.setStyle([("VALIGN", (0, 0), (-1, -1), "BOTTOM"), ("LEFTPADDING", (0, 0), (-1, -1), 0)])
    return table


def _small(block: Picture, width_pt: float) -> list[Flowable]:
    content = drawable(block.content, block.caption, "picture")
    width, height = ImageReader(BytesIO(content)).getSize()
    scale = min(width_pt / width, _ROW_HEIGHT / height)
    image = Image(BytesIO(content), width * scale, height * scale, hAlign="LEFT")
    return [image, Paragraph(markup(block.caption), styles.CAPTION)]


def drawable(content: bytes, place: str, field: str) -> bytes:
    """Return a picture as it goes onto paper, a very large photo as a smaller copy; raise ``InputFault`` for none."""
    from PIL import Image as Pictures

    check_picture(content, place, field)
    with Pictures.open(BytesIO(content)) as picture:
        if picture.format != "JPEG" or picture.width * picture.height <= _WHOLE_PIXELS:
            return content
        picture.draft("RGB", _COPY)  # unpacks at a half, a quarter or an eighth
        copy = BytesIO()
        picture.convert("RGB").save(copy, "JPEG", quality=_QUALITY)
        return copy.getvalue()
