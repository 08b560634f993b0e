"""The marks that the program leaves in the files it writes; `own_files` knows them again."""

from __future__ import annotations

from typing import Final

PDF_PRODUCER: Final = "Spoutline"
XLSX_PROPERTY: Final = "Spoutline"
MAIL_PROGRAM: Final = "Spoutline"
HTML_GENERATOR: Final = "Spoutline "  # the blank ends the name: no other program's begins so


def xlsx_mark() -> tuple[str, str]:
    """Return name and value of the document property of a workbook."""
    return XLSX_PROPERTY, "written by the program"
