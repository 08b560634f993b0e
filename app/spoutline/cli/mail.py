"""Files that hand a paper to mail: a draft that a mail program opens, with the PDF attached."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.files import noted
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.quotation_terms import Party


_WORDS = "write a mail with this paper attached (PDF), not sent yet, here"


def add_mail(outputs: OutputArguments, words: str = _WORDS) -> None:
    """Declare the file."""
    outputs.add("--mail", FileForm.MAIL, words)


def mail_of(workbench: Workbench, path: Path, pdf: bytes, recipient: Party | None = None) -> bytes:
    """Return the mail for the file ``path``, after which the attached one is named; tell where it is very large."""
    from spoutline.documents.mail import LARGE_BYTES

    content = workbench.mailing().draft(pdf, path.stem, recipient)
    if len(content) > LARGE_BYTES:
        megabytes = len(content) / 1_000_000
        told = said("{path} has {megabytes:.0f} MB, more than many mail services take", path=path, megabytes=megabytes)
        sys.stderr.write(f"{noted(told)}\n")
    return content
