"""The files that a record is made from: filled forms and photos."""

from __future__ import annotations

import hashlib
from pathlib import Path

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.record import PhotoNote

_LARGEST_FILE = 20_000_000  # bytes
_PICTURE_STARTS = (b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff")


def photo_of(path: Path) -> tuple[PhotoNote, bytes]:
    """Return a photo (PNG or JPEG) with the note that a record keeps of it; raise ``InputFault``."""
    content = content_of(path, "photo")
    if not content.startswith(_PICTURE_STARTS):
        wanted = "a PNG or JPEG picture is needed"
        raise InputFault((InputProblem(str(path), "photo", "the content", wanted),))
    return PhotoNote(name=path.name[:200], sha256=hashlib.sha256(content).hexdigest()), content


def content_of(path: Path, field: str) -> bytes:
    """Return the bytes of a file; raise ``InputFault`` at ``field`` where it is unreadable or too large."""
    try:
        content = path.read_bytes()
    except OSError as fault:
        wanted = f"a readable file is needed ({fault.strerror or fault})"
        raise InputFault((InputProblem(str(path), field, "this path", wanted),)) from fault
    if len(content) > _LARGEST_FILE:
        wanted = f"a file of at most {_LARGEST_FILE // 1_000_000} MB is needed"
        raise InputFault((InputProblem(str(path), field, f"{len(content)} bytes", wanted),))
    return content
