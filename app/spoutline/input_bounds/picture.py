"""A picture looked at before it is unpacked."""

from __future__ import annotations

import warnings
from io import BytesIO
from typing import Final

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.refusal import refusal
from spoutline.model.faults import InputFault
from spoutline.model.worded import Worded

_JPEG_SCAN: Final = 0xDA  # begins the pixels (ITU-T T.81, table B.1)
_PICTURES: Final = ("PNG", "JPEG")


def check_picture(content: bytes, place: str, field: str) -> None:
    """Refuse what is no PNG or JPEG picture that can be drawn, and one of too many pixels, before it is unpacked.

    Raises
    ------
    InputFault
        It is damaged, of another form, or would take far more memory than a paper needs.
    """
    from PIL import Image

    needed = "a PNG or JPEG picture is needed"
    if _pieces(content) > BOUNDS.picture_pieces:
        wanted = Worded("a picture of at most {most} pieces is read; save it anew", most=BOUNDS.picture_pieces)
        raise refusal(place, field, Worded("more than {most} pieces", most=BOUNDS.picture_pieces), wanted)
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # the library's own bound on pixels is told below
            picture = Image.open(BytesIO(content), formats=_PICTURES)
            most = BOUNDS.png_pixels if picture.format == "PNG" else BOUNDS.jpeg_pixels
            pixels = picture.width * picture.height
            if pixels > most:
                wanted = Worded("save it smaller: at most {most} million pixels are read", most=most // 1000000)
                raise refusal(
                    place,
                    field,
                    Worded("a picture of {width} x {height} pixels", width=picture.width, height=picture.height),
                    wanted,
                )
            picture.draft("RGB", (picture.width // 8 or 1, picture.height // 8 or 1))  # of a JPEG every block is read
            picture.load()
    except InputFault:
        raise
    except Image.DecompressionBombError as fault:
        raise refusal(
            place, field, Worded("a picture of far too many pixels ({reason})", reason=fault), "save it smaller"
        ) from fault
    except Exception as fault:  # the library has many ways to refuse a damaged picture
        raise refusal(place, field, "the content", needed) from fault


def _pieces(content: bytes) -> int:
    """Count the pieces of a picture up to its bound: chunks of a PNG (its specification, 5.3), segments of a JPEG.

    The library looks at each, however small it is.
    """
    is_png = content.startswith(b"\x89PNG")
    place, count = (8, 0) if is_png else (2, 0)
    while place + 4 <= len(content) and count <= BOUNDS.picture_pieces:
        if not is_png and content[place + 1] == _JPEG_SCAN:
            break
        length = int.from_bytes(content[place : place + 4] if is_png else content[place + 2 : place + 4], "big")
        place += length + 12 if is_png else length + 2
        count += 1
    return count
