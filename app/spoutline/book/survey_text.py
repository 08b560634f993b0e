"""A survey as JSON text: reading reports every fault with its field, writing is the same for the same survey."""

from __future__ import annotations

import json
from collections.abc import Callable
from functools import cache
from pathlib import Path

from pydantic import ValidationError

from spoutline.book.large_documents import refuse_hopeless
from spoutline.book.size_notes import size_notes
from spoutline.book.survey_faults import names_in, problems_of
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.json_text import json_object
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.model.answered import answered_document
from spoutline.model.faults import InputFault, InputNote, InputProblem
from spoutline.model.survey import Survey
from spoutline.model.worded import Worded

Tell = Callable[[InputNote], None]
_SCHEMA = "`spoutline schema` prints what a survey looks like"


def _untold(_: InputNote) -> None:
    """Tell nobody."""


def read_survey(path: Path, tell: Tell = _untold) -> Survey:
    """Return the survey in the UTF-8 file ``path``; raise ``InputFault`` naming what is wrong, file faults included.

    ``tell`` hears how a size was understood that is written otherwise than its thread standard writes it.
    """
    place = str(path)
    raw = bounded_bytes(path, BOUNDS.survey_bytes, "file", "a readable survey file is needed")
    return survey_from_bytes(raw, place, tell)


def survey_from_bytes(raw: bytes, place: str, tell: Tell = _untold) -> Survey:
    """Return the survey in the UTF-8 bytes ``raw`` that came from ``place``; raise ``InputFault``."""
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as fault:
        value = Worded("byte {start} (0x{raw:02x})", start=fault.start, raw=raw[fault.start])
        raise InputFault((InputProblem(place, "encoding", value, "the file must be UTF-8 text"),)) from fault
    return survey_from_json(text, place, tell)


def survey_from_json(text: str, place: str, tell: Tell = _untold) -> Survey:
    """Return the survey in the JSON ``text`` that came from ``place``; raise ``InputFault`` with every fault."""
    document = json_object(text, place, "survey", _SCHEMA, _names())
    refuse_hopeless(text, document, Survey, place, "survey", strict=True)
    try:
        survey = read_strictly(text)
    except ValidationError as fault:
        raise InputFault(problems_of(fault, Survey, place)) from fault
    for note in size_notes(document, survey, place):
        tell(note)
    return survey


def read_strictly(text: str) -> Survey:
    """Return the survey in a JSON text, no value turned into that of another type; raise ``ValidationError``."""
    return Survey.model_validate_json(text, strict=True)


@cache
def _names() -> frozenset[str]:
    return names_in(Survey)


def survey_to_json(survey: Survey) -> str:
    """Return the survey as indented JSON: what was answered, fields in the order of the model.

    What nobody answered is left out, so that reading gives the same answers back and assumes the same.
    """
    return json.dumps(answered_document(survey), indent=2, ensure_ascii=False) + "\n"
