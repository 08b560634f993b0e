"""The files that a record is made from: filled forms and photos."""

from __future__ import annotations

import hashlib
from pathlib import Path

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.picture import check_picture
from spoutline.input_bounds.reading import bounded_bytes, bounded_text
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


def is_saved_page(path: Path) -> bool:
    """Say whether a filled form is what a tablet's page saved, a JSON text, and no PDF."""
    try:
        with path.open("rb") as file:
            return file.read(64).removeprefix(b"\xef\xbb\xbf").lstrip().startswith(b"{")
    except (OSError, ValueError):
        return False  # what it is read as then tells why it cannot be


def saved_page_text(path: Path) -> str:
    """Return the text that a tablet's page saved; raise ``InputFault`` where it is unreadable or too large."""
    return bounded_text(path, BOUNDS.tablet_bytes, "form", "a form saved by the page for a tablet is needed")
