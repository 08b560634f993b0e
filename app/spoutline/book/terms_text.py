"""Terms of a quotation read from TOML: decimals are read exactly, and every fault is reported with its field."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path
from typing import TypeVar

from pydantic import BaseModel, ValidationError

from spoutline.book.survey_faults import problems_of
from spoutline.book.terms_writing import COMPLETE
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_text
from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quotation_terms import Terms
from spoutline.model.usual_terms import UsualTerms

_ModelT = TypeVar("_ModelT", bound=BaseModel)
_HEADING = "heading"


def read_terms(path: Path, usual: Path | None = None) -> Terms:
    """Return the terms in the UTF-8 file ``path``.

    Parameters
    ----------
    path
        The terms of one job.
    usual
        The person's usual terms: letterhead, labour table, taxes and so on. Whatever ``path`` does not name stands as
        it is there; a table that both name is the job's alone, except the heading, whose fields are taken one by one.
        None, a file that is not there, or ``complete = true`` in ``path`` adds nothing.

    Raises
    ------
    InputFault
        Naming what is wrong in either file, file faults included.
    """
    table = _table(file_text(path), str(path))
    is_complete = _taken_complete(table, str(path))
    if usual is not None and not is_complete and usual.is_file():
        table = _merged(_table(file_text(usual), str(usual)), table)
    return checked(table, Terms, str(path))


def usual_from_toml(text: str, place: str) -> UsualTerms:
    """Return the usual terms in a TOML text that came from ``place``; raise ``InputFault`` with every fault."""
    table = _table(text, place)
    _taken_complete(table, place)
    return checked(table, UsualTerms, place)


def checked(table: dict[str, object], model: type[_ModelT], place: str) -> _ModelT:
    """Return the model of plain values; raise ``InputFault`` with every fault, named by its path."""
    try:
        return model.model_validate(table)
    except ValidationError as fault:
        raise InputFault(problems_of(fault, model, place, whole="terms")) from fault


def file_text(path: Path) -> str:
    """Return the text of a UTF-8 terms file; raise ``InputFault`` where it cannot be read."""
    return bounded_text(path, BOUNDS.toml_bytes, "file", "a readable UTF-8 terms file is needed")


def _table(text: str, place: str) -> dict[str, object]:
    return toml_table(text, place, "terms", parse_float=Decimal)


def _taken_complete(table: dict[str, object], place: str) -> bool:
    """Take the key that says whether the file is complete out of the table, and return it."""
    value = table.pop(COMPLETE, False)
    if not isinstance(value, bool):
        raise InputFault((InputProblem(place, COMPLETE, repr(value), "true or false is needed, without quotes"),))
    return value


def _merged(usual: dict[str, object], job: dict[str, object]) -> dict[str, object]:
    usual_heading, job_heading = usual.get(_HEADING), job.get(_HEADING)
    table = usual | job
    if isinstance(usual_heading, dict) and isinstance(job_heading, dict):
        table[_HEADING] = usual_heading | job_heading
    return table
