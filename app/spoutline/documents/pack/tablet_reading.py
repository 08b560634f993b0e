"""What a tablet's page saved, read back: the fields of the form, and its pictures made anew.

The file comes from a device that anybody may have had in hand: every value is checked, every picture is unpacked and
written again, so that nothing but its pixels is kept, and no text is taken for anything but text.
"""

from __future__ import annotations

import binascii
import hashlib
import re
from base64 import b64decode
from collections.abc import Callable, Iterator, Mapping
from enum import StrEnum
from io import BytesIO
from typing import Final

from spoutline.documents.pack.form_fields import LONGEST_LINE, LONGEST_TEXT
from spoutline.documents.pack.form_reading import records_from_fields
from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.json_text import json_object
from spoutline.input_bounds.picture import check_picture
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import without_hidden_signs
from spoutline.model.position_tag import tag_from_text
from spoutline.model.record import CommissioningRecord, PhotoNote
from spoutline.model.worded import Worded

# not begun with the program's name: what a person filled in is no paper that the program may replace unasked
FORMAT: Final = "filled-spoutline-form"
VERSION: Final = 1
LONGEST_EDGE: Final = 1600  # pixels of a photo as the page scales it down; more than a printed page shows
_QUALITY: Final = 85
_FIELD_NAME: Final = re.compile(r"p[1-9][0-9]{0,4}_[a-z0-9_]{1,60}")
_LONGEST_VALUE: Final = 4 * LONGEST_TEXT  # a longer text than a field holds is told by the reader of the fields
_PARTS: Final = frozenset({"format", "version", "fields", "pictures"})
_OF_PICTURE: Final = frozenset({"position", "kind", "name", "caption", "data"})
_SCHEMA: Final = "save the form again with the page for a tablet"


class PictureKind(StrEnum):
    """What a picture of the page is."""

    PHOTO = "photo"
    SIGNATURE = "signature"


@frozen
class FilledForm:
    """The records of a filled form, and the pictures that they name, by SHA-256."""

    records: tuple[CommissioningRecord, ...]
    photos: Mapping[str, bytes]


def form_from_page(
    text: str, place: str, signature: str, read_refs: Callable[[str], tuple[PartRef, ...]] | None = None
) -> FilledForm:
    """Return the records in what a tablet's page saved.

    Parameters
    ----------
    text
        The JSON text.
    place
        Where it came from, named in every fault.
    signature
        The word under a signature that was drawn.
    read_refs
        As of ``records_from_form``; so are the fields that cannot be used.

    Raises
    ------
    InputFault
        It is no such file, holds what no page saves, too many or too large pictures, or one that is none.
    """
    document = json_object(text, place, "filled form", _SCHEMA)
    _check_kind(document, place)
    values = dict(_fields(document["fields"], place))
    records = records_from_fields(values, place, read_refs)
    photos: dict[str, bytes] = {}
    notes: dict[str, list[PhotoNote]] = {}
    for label, note, content in _pictures(document["pictures"], values, place, signature):
        kept = notes.setdefault(label, [])
        if note.sha256 not in {one.sha256 for one in kept}:
            kept.append(note)
        photos[note.sha256] = content
    noted = (one.model_copy(update={"photos": tuple(notes.get(one.position, ()))}) for one in records)
    return FilledForm(tuple(noted), photos)


def _check_kind(document: Mapping[str, object], place: str) -> None:
    if document.get("format") != FORMAT:
        raise _fault(
            place,
            "format",
            document.get("format"),
            Worded('it must be "{format}": {schema}', format=FORMAT, schema=_SCHEMA),
        )
    if document.get("version") != VERSION:
        raise _fault(
            place,
            "version",
            document.get("version"),
            Worded("version {version} is read: {schema}", version=VERSION, schema=_SCHEMA),
        )
    if missing := sorted(_PARTS - document.keys()):
        raise _fault(place, missing[0], "nothing", _SCHEMA)
    if unknown := sorted(document.keys() - _PARTS):
        raise _fault(place, unknown[0][:LONGEST_LINE], "an unknown field", _SCHEMA)


def _fields(written: object, place: str) -> Iterator[tuple[str, str]]:
    """Yield name and value of each field; a page keeps those of each position together."""
    if not isinstance(written, list) or not all(isinstance(one, dict) for one in written):
        raise _fault(place, "fields", written, Worded("a list of fields by name is needed: {schema}", schema=_SCHEMA))
    seen: set[str] = set()
    for name, value in (pair for one in written for pair in one.items()):
        if not _FIELD_NAME.fullmatch(name) or name in seen:
            raise _fault(
                place,
                "fields",
                name,
                Worded("this is no field of a form, or stands here twice: {schema}", schema=_SCHEMA),
            )
        seen.add(name)
        if len(seen) > BOUNDS.form_fields:
            wanted = Worded("a form of at most {most} fields is read", most=BOUNDS.form_fields)
            raise _fault(place, "fields", Worded("more than {most} fields", most=BOUNDS.form_fields), wanted)
        if not isinstance(value, str) or len(value) > _LONGEST_VALUE:
            raise _fault(
                place,
                name,
                value,
                Worded("a text of at most {longest_text} characters is needed", longest_text=LONGEST_TEXT),
            )
        yield name, value.replace("\r\n", "\n").replace("\r", "\n").strip()


def _pictures(
    written: object, values: Mapping[str, str], place: str, signature: str
) -> Iterator[tuple[str, PhotoNote, bytes]]:
    """Yield the position, the note and the content of each picture."""
    if not isinstance(written, list):
        raise _fault(place, "pictures", written, Worded("a list is needed: {schema}", schema=_SCHEMA))
    seen: dict[tuple[str, PictureKind], int] = {}
    total = 0
    for at, one in enumerate(written, start=1):
        named = Worded("picture {at}", at=at)
        kind, label, name, caption = _told(one, values, place, named)
        content = _content(one["data"], place, named)
        total += len(content)
        seen[label, kind] = seen.get((label, kind), 0) + 1
        most = BOUNDS.tablet_photos if kind is PictureKind.PHOTO else 1
        if seen[label, kind] > most:
            raise _fault(
                place,
                named,
                Worded("{seen} of {label}", seen=seen[label, kind], label=label),
                Worded("at most {most} of a position are read", most=most),
            )
        if total > BOUNDS.tablet_total_bytes:
            wanted = Worded("all pictures together may have at most {most} bytes", most=BOUNDS.tablet_total_bytes)
            raise _fault(place, named, Worded("more than {most} bytes", most=BOUNDS.tablet_total_bytes), wanted)
        check_picture(content, place, named)
        anew = _written_again(content, kind)
        words = signature if kind is PictureKind.SIGNATURE else caption
        yield label, PhotoNote(name=name, sha256=hashlib.sha256(anew).hexdigest(), caption=words), anew


def _told(one: object, values: Mapping[str, str], place: str, named: str) -> tuple[PictureKind, str, str, str]:
    """Return kind, position, name and caption of a picture."""
    if not isinstance(one, dict) or one.keys() != _OF_PICTURE:
        raise _fault(
            place,
            named,
            "other fields",
            Worded("{of_picture} are needed: {schema}", of_picture=", ".join(sorted(_OF_PICTURE)), schema=_SCHEMA),
        )
    number, kind = one["position"], one["kind"]
    tag = values.get(f"p{number}_tag") if isinstance(number, int) and not isinstance(number, bool) else None
    if tag is None:
        raise _fault(
            place, Worded("{named}, position", named=named), number, "the number of a position of this form is needed"
        )
    if kind not in list(PictureKind):
        raise _fault(
            place,
            Worded("{named}, kind", named=named),
            kind,
            Worded("one of {picturekind} is needed", picturekind=", ".join(PictureKind)),
        )
    name = (
        without_hidden_signs(_line(one["name"], place, Worded("{named}, name", named=named))).strip()
        or f"{kind} {number}"
    )
    caption = without_hidden_signs(_line(one["caption"], place, Worded("{named}, caption", named=named))).strip()
    return PictureKind(kind), tag_from_text(tag).position, name, caption


def _line(value: object, place: str, field: str) -> str:
    if not isinstance(value, str) or len(value) > LONGEST_LINE:
        raise _fault(
            place,
            field,
            value,
            Worded("a text of at most {longest_line} characters is needed", longest_line=LONGEST_LINE),
        )
    return value


def _content(data: object, place: str, named: str) -> bytes:
    most = BOUNDS.tablet_photo_bytes
    if not isinstance(data, str) or len(data) > (most + 2) * 4 // 3 + 4:
        raise _fault(
            place,
            Worded("{named}, data", named=named),
            "too much of it",
            Worded("a picture of at most {most} bytes is needed", most=most),
        )
    try:
        content = b64decode(data, validate=True)
    except (binascii.Error, ValueError) as fault:
        raise _fault(
            place,
            Worded("{named}, data", named=named),
            data[:40],
            Worded("base64 (RFC 4648) is needed: {schema}", schema=_SCHEMA),
        ) from fault
    if len(content) > most:
        raise _fault(
            place,
            Worded("{named}, data", named=named),
            Worded("{count} bytes", count=len(content)),
            Worded("at most {most} bytes are read", most=most),
        )
    return content


def _written_again(content: bytes, kind: PictureKind) -> bytes:
    """Return a picture with nothing but its pixels: a photo as JPEG, a signature as PNG on white."""
    from PIL import Image

    with Image.open(BytesIO(content), formats=("PNG", "JPEG")) as picture:
        drawn = picture.convert("RGBA")
    drawn.thumbnail((LONGEST_EDGE, LONGEST_EDGE))
    paper = Image.new("RGB", drawn.size, "white")
    paper.paste(drawn, mask=drawn.getchannel("A"))
    out = BytesIO()
    if kind is PictureKind.SIGNATURE:
        paper.save(out, "PNG", optimize=True)
    else:
        paper.save(out, "JPEG", quality=_QUALITY)
    return out.getvalue()


def _fault(place: str, field: str, value: object, wanted: str) -> InputFault:
    shown = repr(value)
    return InputFault((InputProblem(place, field, shown if len(shown) <= 80 else f"{shown[:79]}…", wanted),))
