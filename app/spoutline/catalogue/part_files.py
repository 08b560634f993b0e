"""Files of parts: taken in as a person gives them, kept once by their content, handed out again.

A picture is unpacked and written anew, so that nothing is kept but what it shows: no place where it was taken, no
camera, no file hidden behind it. A document is kept as it is once it opens, is not locked, and runs nothing.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from pydantic import ValidationError
from sqlalchemy import Connection, insert, select

from spoutline.catalogue.tables import FileRow
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.picture import check_picture
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_file import FileMatter, MediaType, PartFile
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from PIL import Image
    from pypdf import PdfReader

MOST_PIXELS: Final = 1_600  # on the longer side of a kept picture: 8 in at 200 to the inch
_QUALITY: Final = 88
_RUNS: Final = frozenset({"/JavaScript", "/Launch", "/SubmitForm", "/ImportData", "/GoToR", "/GoToE", "/Rendition"})


def file_from_path(path: Path, title: str, matter: FileMatter | None) -> tuple[PartFile, bytes]:
    """Return a file that a person gives as it is kept, with its content; raise ``InputFault``.

    Without a ``matter`` a picture is one and a document a data sheet; without a title it is called as the file is.
    """
    content = bounded_bytes(path, BOUNDS.part_file_bytes, "file", "a readable picture or document is needed")
    return kept_file(content, str(path), title.strip() or path.stem, matter)


def kept_file(content: bytes, place: str, title: str, matter: FileMatter | None) -> tuple[PartFile, bytes]:
    """Return a picture (PNG, JPEG) or document (PDF) as it is kept, with its content; raise ``InputFault``."""
    if content.startswith(b"%PDF-"):
        _check_document(content, place)
        media, kept = MediaType.PDF, content
    else:
        check_picture(content, place, "file")
        media, kept = _written_anew(content)
    meant = matter or (FileMatter.DATA_SHEET if media is MediaType.PDF else FileMatter.PICTURE)
    if (meant is FileMatter.PICTURE) != (media is not MediaType.PDF):
        wanted = "a picture is PNG or JPEG, any other file of a part PDF"
        raise InputFault((InputProblem(place, "matter", str(meant), wanted),))
    return _described(kept, place, title, meant, media), kept


def _described(kept: bytes, place: str, title: str, matter: FileMatter, media: MediaType) -> PartFile:
    try:
        return PartFile(title=title, matter=matter, media=media, digest=digest_of(kept), size=len(kept))
    except ValidationError as fault:
        told = "; ".join(one["msg"].removeprefix("Value error, ") for one in fault.errors(include_url=False))
        raise InputFault((InputProblem(place, "title", repr(title[:80]), told),)) from fault


def digest_of(content: bytes) -> str:
    """Return what the content of a file is kept by: SHA-256 in hexadecimal."""
    return hashlib.sha256(content).hexdigest()


def _written_anew(content: bytes) -> tuple[MediaType, bytes]:
    """Return a checked picture turned upright, no larger than needed, without anything beside its pixels."""
    from PIL import Image, ImageOps

    target = BytesIO()
    with Image.open(BytesIO(content), formats=("PNG", "JPEG")) as given:
        is_photo = given.format == "JPEG"
        if is_photo:
            given.draft("RGB", (MOST_PIXELS, MOST_PIXELS))
        upright = ImageOps.exif_transpose(given)
        upright.thumbnail((MOST_PIXELS, MOST_PIXELS))
        if is_photo:
            _bare(upright.convert("RGB")).save(target, "JPEG", quality=_QUALITY)
            return MediaType.JPEG, target.getvalue()
        has_alpha = "A" in upright.getbands() or "transparency" in upright.info
        _bare(_on_white(upright.convert("RGBA")) if has_alpha else upright.convert("RGB")).save(target, "PNG")
    return MediaType.PNG, target.getvalue()


def _on_white(picture: Image.Image) -> Image.Image:
    """Return a picture without transparency: paper is white, and a dark window must not swallow a dark part."""
    from PIL import Image

    ground = Image.new("RGBA", picture.size, "white")
    ground.alpha_composite(picture)
    return ground.convert("RGB")


def _bare(picture: Image.Image) -> Image.Image:
    """Return the pixels of a picture and nothing else."""
    picture.info.clear()
    return picture


def _check_document(content: bytes, place: str) -> None:
    """Refuse a PDF that does not open, is locked, has far too many pages, or runs or fetches something."""
    import pypdf
    from pypdf.errors import PyPdfError

    needed = "a PDF document that opens is needed"
    try:
        reader = pypdf.PdfReader(BytesIO(content), strict=False)
        if reader.is_encrypted:
            raise _refused(place, "a locked document", "save it without a password first")
        pages = len(reader.pages)
        if not 1 <= pages <= BOUNDS.part_document_pages:
            raise _refused(
                place,
                Worded("{pages} pages", pages=pages),
                Worded("a document of 1 to {most} pages is kept", most=BOUNDS.part_document_pages),
            )
        if any(map(_is_active, _dictionaries(reader, place))):
            wanted = "a document without scripts, actions and files inside; print it to a new PDF"
            raise _refused(place, "a document that runs or holds something", wanted)
    except InputFault:
        raise
    except (PyPdfError, ValueError, KeyError, TypeError, IndexError, AttributeError, RecursionError, OSError) as fault:
        raise _refused(place, "the content", needed) from fault


def _dictionaries(reader: PdfReader, place: str) -> Iterator[dict[Any, Any]]:
    """Yield every dictionary of a document, those inside others too; raise ``InputFault`` where there are too many."""
    numbers = {number for generation in reader.xref.values() for number in generation} | {*reader.xref_objStm}
    if len(numbers) > BOUNDS.form_objects:
        raise _refused(
            place,
            Worded("{count} objects", count=len(numbers)),
            Worded("a document of at most {most} objects is kept", most=BOUNDS.form_objects),
        )
    waiting: list[tuple[object, int]] = [(reader.get_object(number), 0) for number in sorted(numbers) if number]
    while waiting:
        one, depth = waiting.pop()
        inside = one.values() if isinstance(one, dict) else one if isinstance(one, list) else ()
        if isinstance(one, dict):
            yield one
        if depth < BOUNDS.nesting:  # what an object only points to stands among the others
            waiting += [(held, depth + 1) for held in inside if isinstance(held, dict | list)]


def _is_active(one: dict[Any, Any]) -> bool:
    """Say whether a dictionary of a document runs, sends or fetches something, or holds a file."""
    return "/JS" in one or "/EmbeddedFiles" in one or one.get("/Type") == "/EmbeddedFile" or one.get("/S") in _RUNS


def _refused(place: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place, "file", value, wanted),))


def check_handed_on(file: PartFile, content: bytes, place: str) -> None:
    """Refuse the content of a file that an exchange file hands on unless it is as this program keeps it."""
    if len(content) != file.size or digest_of(content) != file.digest:
        raise _refused(place, file.title, "its content must be as its digest says")
    if file.media is MediaType.PDF:
        _check_document(content, place)
        return
    check_picture(content, place, "file")
    sign = b"\x89PNG" if file.media is MediaType.PNG else b"\xff\xd8"
    if not content.startswith(sign):
        raise _refused(place, file.title, Worded("a picture of the form {media}", media=file.media))


def keep_content(connection: Connection, file: PartFile, content: bytes) -> None:
    """Keep the content of a file unless it is kept already."""
    if connection.execute(select(FileRow.digest).where(FileRow.digest == file.digest)).scalar() is None:
        connection.execute(insert(FileRow), [{"digest": file.digest, "media": file.media, "content": content}])


def content_kept(connection: Connection, digest: str) -> bytes | None:
    """Return the content of a file; None where the book has it not."""
    return connection.execute(select(FileRow.content).where(FileRow.digest == digest)).scalar()
