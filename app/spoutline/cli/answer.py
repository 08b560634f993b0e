"""What a command answers on standard output: lines for a person, or one JSON document."""

from __future__ import annotations

import argparse
import json
import unicodedata
from collections.abc import Iterable, Mapping

from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output


def printable(text: str) -> str:
    """Return ``text`` as one line without control characters: a name in a survey must not steer a terminal."""
    if text.isprintable():  # as nearly every line is, which has none of them then
        return text
    return "".join(" " if unicodedata.category(character) in ("Cc", "Zl", "Zp") else character for character in text)


def write_answer(arguments: argparse.Namespace, lines: Iterable[str], document: Mapping[str, object]) -> ExitCode:
    """Write the lines, or with ``--json`` the document, and return that the command did what was asked."""
    if arguments.json:
        write_standard_output(json.dumps(document, indent=2, ensure_ascii=False) + "\n")
    else:
        write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return ExitCode.FITS
