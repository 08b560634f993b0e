"""The forms in which a paper can be had."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path


class PaperForm(StrEnum):
    """The form of a paper; the value is the ending of its file's name."""

    PDF = "pdf"  # pages as they are printed
    HTML = "html"  # one page for screen readers, large type and mails


def form_of(path: Path) -> PaperForm:
    """Return the form that the ending of a file's name asks for; PDF where it asks for none."""
    return PaperForm.HTML if path.suffix.lower() in (".html", ".htm") else PaperForm.PDF
