"""Agreed sets in a file, read again within the bounds of documents."""

from __future__ import annotations

from pathlib import Path

from pydantic import ValidationError

from spoutline.book.large_documents import refuse_hopeless
from spoutline.book.survey_faults import problems_of
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.json_text import json_object
from spoutline.input_bounds.reading import bounded_text
from spoutline.model.agreed_sets import AgreedSets
from spoutline.model.faults import InputFault

_WRITTEN_BY = "`spoutline agreed SURVEY.json --json` writes one"


def read_agreed_file(path: Path) -> AgreedSets:
    """Return the agreed sets in a file as ``spoutline agreed --json`` writes it; raise ``InputFault``."""
    text = bounded_text(path, BOUNDS.document_bytes, "--sets", "a readable file is needed")
    document = json_object(text, str(path), "agreed sets", _WRITTEN_BY)
    refuse_hopeless(text, document, AgreedSets, str(path), "the file", strict=False)
    try:
        return AgreedSets.model_validate_json(text)
    except ValidationError as fault:
        raise InputFault(problems_of(fault, AgreedSets, str(path), whole="the file")) from fault
