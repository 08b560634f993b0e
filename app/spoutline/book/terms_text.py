"""Terms of a quotation as TOML text: decimals are read exactly, and every fault is reported with its field."""

from __future__ import annotations

import tomllib
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

from pydantic import ValidationError

from spoutline.book.survey_faults import problems_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quotation_terms import Terms


def read_terms(path: Path, usual: Path | None = None) -> Terms:
    """Return the terms in the UTF-8 file ``path``.

    Parameters
    ----------
    path
        The terms of one job.
    usual
        The person's usual terms: letterhead, labour table, taxes and so on. Whatever ``path`` does not name stands as
        it is there; a table that both name is the job's alone. None, or a file that is not there, adds nothing.

    Raises
    ------
    InputFault
        Naming what is wrong in either file, file faults included.
    """
    table = _table(_text(path), str(path))
    if usual is not None and usual.is_file():
        table = {**_table(_text(usual), str(usual)), **table}
    return _terms(table, str(path))


def terms_from_toml(text: str, place: str) -> Terms:
    """Return the terms in a TOML text that came from ``place``; raise ``InputFault`` with every fault."""
    return _terms(_table(text, place), place)


def _text(path: Path) -> str:
    try:
        return path.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as fault:
        wanted = f"a readable UTF-8 terms file is needed ({fault})"
        raise InputFault((InputProblem(str(path), "file", "this path", wanted),)) from fault


def _table(text: str, place: str) -> dict[str, object]:
    try:
        return tomllib.loads(text, parse_float=Decimal)
    except tomllib.TOMLDecodeError as fault:
        raise InputFault((InputProblem(place, "terms", "the text", f"write valid TOML ({fault})"),)) from fault


def _terms(table: dict[str, object], place: str) -> Terms:
    try:
        return Terms.model_validate(table)
    except ValidationError as fault:
        problems = problems_of(fault, Terms, place)
        raise InputFault(tuple(replace(one, field=one.field.replace("survey", "terms")) for one in problems)) from fault
