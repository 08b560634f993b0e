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


def read_terms(path: Path) -> Terms:
    """Return the terms in the UTF-8 file ``path``; raise ``InputFault`` naming what is wrong, file faults included."""
    try:
        text = path.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as fault:
        wanted = f"a readable UTF-8 terms file is needed ({fault})"
        raise InputFault((InputProblem(str(path), "file", "this path", wanted),)) from fault
    return terms_from_toml(text, str(path))


def terms_from_toml(text: str, place: str) -> Terms:
    """Return the terms in a TOML text that came from ``place``; raise ``InputFault`` with every fault."""
    try:
        table = tomllib.loads(text, parse_float=Decimal)
    except tomllib.TOMLDecodeError as fault:
        raise InputFault((InputProblem(place, "terms", "the text", f"write valid TOML ({fault})"),)) from fault
    try:
        return Terms.model_validate(table)
    except ValidationError as fault:
        problems = problems_of(fault, Terms, place)
        raise InputFault(tuple(replace(one, field=one.field.replace("survey", "terms")) for one in problems)) from fault
