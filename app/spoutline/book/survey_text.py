"""A survey as JSON text: reading reports every fault with its field, writing is the same for the same survey."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from pathlib import Path

from pydantic import ValidationError

from spoutline.book.size_notes import size_notes
from spoutline.book.survey_faults import problems_of
from spoutline.input_bounds import BOUNDS, bounded_bytes
from spoutline.model.answered import answered_document
from spoutline.model.faults import InputFault, InputNote, InputProblem
from spoutline.model.survey import Survey

Tell = Callable[[InputNote], None]


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
        value = f"byte {fault.start} (0x{raw[fault.start]:02x})"
        raise InputFault((InputProblem(place, "encoding", value, "the file must be UTF-8 text"),)) from fault
    return survey_from_json(text, place, tell)


def survey_from_json(text: str, place: str, tell: Tell = _untold) -> Survey:
    """Return the survey in the JSON ``text`` that came from ``place``; raise ``InputFault`` with every fault."""
    document = _json_object(text, place)
    try:
        survey = Survey.model_validate_json(text, strict=True)
    except ValidationError as fault:
        raise InputFault(problems_of(fault, Survey, place)) from fault
    for note in size_notes(document, survey, place):
        tell(note)
    return survey


def survey_to_json(survey: Survey) -> str:
    """Return the survey as indented JSON: what was answered, fields in the order of the model.

    What nobody answered is left out, so that reading gives the same answers back and assumes the same.
    """
    return json.dumps(answered_document(survey), indent=2, ensure_ascii=False) + "\n"


def survey_spelled_out(survey: Survey) -> str:
    """Return the survey as indented JSON with every field, assumed ones too: an example that shows what can be said."""
    return survey.model_dump_json(indent=2) + "\n"


def _json_object(text: str, place: str) -> dict[str, object]:
    """Return the JSON object in ``text``.

    Text that is no JSON object is refused, and one that says the same field twice: one of the two would get lost.
    """
    doubled: list[str] = []

    def note_doubles(pairs: Iterable[tuple[str, object]]) -> dict[str, object]:
        fields: dict[str, object] = {}
        for name, value in pairs:
            if name in fields:
                doubled.append(name)
            fields[name] = value
        return fields

    try:
        document = json.loads(text, object_pairs_hook=note_doubles)
    except json.JSONDecodeError as fault:
        where = f"{place}, line {fault.lineno}, column {fault.colno}"
        shown = "the text" if text.strip() else "an empty text"
        wanted = f"the file must be JSON ({fault.msg}); `spoutline schema` prints what a survey looks like"
        raise InputFault((InputProblem(where, "survey", shown, wanted),)) from fault
    except (ValueError, RecursionError) as fault:
        wanted = "the file must be a JSON survey; numbers and nesting are far beyond one"
        raise InputFault((InputProblem(place, "survey", "the text", wanted),)) from fault
    if not isinstance(document, dict):
        wanted = "the file must hold one JSON object with the fields site and positions"
        raise InputFault((InputProblem(place, "survey", f"a {_json_kind(document)}", wanted),))
    if doubled:
        raise InputFault(
            tuple(InputProblem(place, name, "written twice", "say each field once") for name in sorted(set(doubled)))
        )
    return document


def _json_kind(document: object) -> str:
    if isinstance(document, list):
        return "list"
    if isinstance(document, str):
        return "text"
    return "bare value"
