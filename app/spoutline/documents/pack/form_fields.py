"""Names of the fields of a commissioning form: position by number, then what the field holds."""

from __future__ import annotations

import re
from enum import StrEnum
from typing import Final

from pydantic import TypeAdapter

from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.record import RecordItemId

_PLAIN = re.compile(r"[^\s\[]\S*")
_REFS = TypeAdapter(list[PartRef])
LONGEST_LINE: Final = 200  # characters of a field of one line
LONGEST_TEXT: Final = 4000
NOT_CHOSEN = "-"  # stored value of a choice that was not made: readers of PDF need one


class FormField(StrEnum):
    """Fields that stand once for each position."""

    TAG = "tag"  # the text of the code: which position of which plan
    LANGUAGE = "language"  # decides the decimal sign
    UNITS = "units"  # system of bare readings
    PLANNED = "planned"  # parts of the plan, dispenser first: see ``planned_text``
    DONE_ON = "done_on"
    DONE_BY = "done_by"
    LICENCE = "licence"
    INSTRUMENTS = "instruments"
    SIGNED_BY = "signed_by"
    REMARKS = "remarks"


class ItemField(StrEnum):
    """Fields of one item."""

    READING = "reading"
    RESULT = "result"
    NOTE = "note"


class PartField(StrEnum):
    """Fields of one part."""

    FITTED = "fitted"
    SERIAL = "serial"
    SERVICE_UNTIL = "service_until"
    REASON = "reason"


def planned_text(refs: tuple[PartRef, ...], known: tuple[PartRef, ...] = ()) -> str:
    """Return the planned parts in one line: numbers parted by blanks, as a JSON list where blanks would not part them.

    Makers are named where two parts, ``known`` ones among them, have one number; the plan that a record is judged by
    tells the others.
    """
    shown = told_apart(refs, known)
    if all(text == ref.number and _PLAIN.fullmatch(text) for text, ref in zip(shown, refs, strict=True)):
        return " ".join(shown)
    named = [ref if text != ref.number else PartRef(ref.number) for text, ref in zip(shown, refs, strict=True)]
    return _REFS.dump_json(named).decode()


def planned_refs(text: str) -> tuple[PartRef, ...]:
    """Return the parts that ``planned_text`` wrote; raise ``ValueError`` for what it never writes."""
    return tuple(_REFS.validate_json(text) if text.startswith("[") else _REFS.validate_python(text.split()))


def field_name(position: int, field: FormField) -> str:
    """Return the name of a field of the position with this number, counted from 1."""
    return f"p{position}_{field.value}"


def item_field(position: int, item: RecordItemId, field: ItemField) -> str:
    """Return the name of a field of an item."""
    return f"p{position}_{item.value}_{field.value}"


def part_field(position: int, place: int, field: PartField) -> str:
    """Return the name of a field of the part at a place of the chain, counted from 1."""
    return f"p{position}_part{place}_{field.value}"
