"""Papers as files: pages, HTML, or a mail that a mail program opens as a draft, with the PDF attached."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.files import noted
from spoutline.cli.outputs import OutputArguments, is_mail
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm, form_of

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.quotation_terms import Party


MakePaper = Callable[[PaperForm], bytes]
_WORDS = "write a mail with this paper attached (PDF), not sent yet, here"


def add_mail(outputs: OutputArguments, words: str = _WORDS) -> None:
    """Declare the file."""
    outputs.add("--mail", FileForm.MAIL, words)


def add_paper(outputs: OutputArguments, words: str) -> None:
    """Declare the paper of a command that has one: ``--pdf``, its form by the name of the file, and ``--mail``."""
    outputs.add_paper("--pdf", words)
    add_mail(outputs)


def paper_file(workbench: Workbench, path: Path, make: MakePaper) -> bytes:
    """Return a paper in the form that the name of its file asks for: PDF, HTML or a mail."""
    return mail_of(workbench, path, make(PaperForm.PDF)) if is_mail(path) else make(form_of(path))


def paper_files(workbench: Workbench, arguments: argparse.Namespace, make: MakePaper) -> dict[Path, bytes]:
    """Return the files of the one paper of a command: ``--pdf``, ``--mail`` and, where it is declared, ``--html``."""
    contents: dict[Path, bytes] = {}
    if arguments.pdf is not None:
        contents[arguments.pdf] = paper_file(workbench, arguments.pdf, make)
    if (page := getattr(arguments, "html", None)) is not None:
        contents[page] = make(PaperForm.HTML)
    if arguments.mail is not None:
        contents[arguments.mail] = mail_of(workbench, arguments.mail, make(PaperForm.PDF))
    return contents


def mail_of(workbench: Workbench, path: Path, pdf: bytes, recipient: Party | None = None) -> bytes:
    """Return the mail for the file ``path``, after which the attached one is named; tell where it is very large."""
    from spoutline.documents.mail import LARGE_BYTES

    content = workbench.mailing().draft(pdf, path.stem, recipient)
    if len(content) > LARGE_BYTES:
        megabytes = len(content) / 1_000_000
        told = said("{path} has {megabytes:.0f} MB, more than many mail services take", path=path, megabytes=megabytes)
        sys.stderr.write(f"{noted(told)}\n")
    return content
