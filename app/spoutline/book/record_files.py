"""The files that a record is made from: filled forms and photos."""

from __future__ import annotations

import hashlib
from pathlib import Path

from spoutline.input_bounds import BOUNDS, bounded_bytes, check_picture
from spoutline.model.plain_values import without_hidden_signs
from spoutline.model.record import PhotoNote


def photo_of(path: Path) -> tuple[PhotoNote, bytes]:
    """Return a photo (PNG or JPEG) with the note that a record keeps of it; raise ``InputFault``."""
    content = bounded_bytes(path, BOUNDS.picture_bytes, "photo", "a readable file is needed")
    check_picture(content, str(path), "photo")
    name = without_hidden_signs(path.name[:200])  # a file may be called anything
    return PhotoNote(name=name, sha256=hashlib.sha256(content).hexdigest()), content


def form_content(path: Path) -> bytes:
    """Return the bytes of a filled form; raise ``InputFault`` where it is unreadable or too large."""
    return bounded_bytes(path, BOUNDS.form_bytes, "form", "a readable file is needed")
