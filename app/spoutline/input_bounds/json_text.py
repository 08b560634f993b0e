"""Objects in JSON texts, each of their fields said once, and no more of them than such a document has."""

from __future__ import annotations

import json

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.refusal import refusal
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded


def json_object(
    text: str, place: str, whole: str, schema: str, known: frozenset[str] = frozenset()
) -> dict[str, object]:
    r"""Return the JSON object in a text.

    Parameters
    ----------
    text, place
        The text, and where it came from.
    whole
        What the document is called in faults, such as ``survey``.
    schema
        What shows how it is written, such as ``\`spoutline schema\` prints what a survey looks like``.
    known
        The names of all fields that such a document may have; empty where any may stand.

    Raises
    ------
    InputFault
        It is no JSON object, says the same field twice (one of the two would get lost), or is beyond a bound.
    """
    _check_counts(text, place, whole)
    seen = _Seen(known)
    try:
        document = json.loads(text, object_pairs_hook=seen.note)
    except json.JSONDecodeError as fault:
        where = Worded("{place}, line {lineno}, column {colno}", place=place, lineno=fault.lineno, colno=fault.colno)
        shown = "the text" if text.strip() else "an empty text"
        raise refusal(
            where, whole, shown, Worded("the file must be JSON ({reason}); {schema}", reason=fault.msg, schema=schema)
        ) from fault
    except (ValueError, RecursionError) as fault:
        wanted = Worded("the file must be a JSON {whole}; numbers and nesting are far beyond one", whole=whole)
        raise refusal(place, whole, "the text", wanted) from fault
    if not isinstance(document, dict):
        kind = "list" if isinstance(document, list) else "text" if isinstance(document, str) else "bare value"
        raise refusal(place, whole, f"a {kind}", Worded("the file must hold one JSON object; {schema}", schema=schema))
    seen.check(place, whole, schema)
    return document


class _Seen:
    """Notes, while a text is read, what makes it none of the documents that are read."""

    def __init__(self, known: frozenset[str]) -> None:
        self._known = known
        self._doubled: list[str] = []
        self._crowded = 0  # fields of the object that has the most of them, where that is beyond the bound
        self._unknown = 0

    def note(self, pairs: list[tuple[str, object]]) -> dict[str, object]:
        """Return the object of the pairs of one that was read."""
        fields: dict[str, object] = {}
        for name, value in pairs:
            if name in fields:
                self._doubled.append(name)
            fields[name] = value
        if len(fields) > BOUNDS.json_members:
            self._crowded = max(self._crowded, len(fields))
        if self._known:
            self._unknown += len(fields.keys() - self._known)
        return fields

    def check(self, place: str, whole: str, schema: str) -> None:
        """Raise ``InputFault`` for what was noted."""
        if self._crowded:
            wanted = Worded(
                "at most {most} fields of one object are read; {schema}", most=BOUNDS.json_members, schema=schema
            )
            raise refusal(place, whole, Worded("{crowded} fields of one object", crowded=self._crowded), wanted)
        if self._unknown > BOUNDS.json_unknown:
            raise refusal(
                place,
                whole,
                Worded("{unknown} unknown fields", unknown=self._unknown),
                Worded("this is no {whole} of this program; {schema}", whole=whole, schema=schema),
            )
        if self._doubled:
            told = sorted(set(self._doubled))[: BOUNDS.problems]
            raise InputFault(tuple(InputProblem(place, name, "written twice", "say each field once") for name in told))


def _check_counts(text: str, place: str, whole: str) -> None:
    for signs, most, what in (
        ("[{", BOUNDS.json_objects, "objects and lists"),
        (",", BOUNDS.json_values, Worded("values")),
    ):
        count = sum(text.count(sign) for sign in signs)
        if count > most:
            raise refusal(
                place,
                whole,
                Worded("about {count} {what}", count=count, what=what),
                Worded("at most {most} {what} are read", most=most, what=what),
            )
