"""Names of the fields of a commissioning form: position by number, then what the field holds."""

from __future__ import annotations

from enum import StrEnum

from spoutline.model.record import RecordItemId

NOT_CHOSEN = "-"  # stored value of a choice that was not made: readers of PDF need one


class FormField(StrEnum):
    """Fields that stand once for each position."""

    TAG = "tag"  # the text of the code: which position of which plan
    LANGUAGE = "language"  # decides the decimal sign
    UNITS = "units"  # system of bare readings
    PLANNED = "planned"  # part numbers of the plan, dispenser first, parted by blanks
    DONE_ON = "done_on"
    DONE_BY = "done_by"
    LICENCE = "licence"
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
    REASON = "reason"


def field_name(position: int, field: FormField) -> str:
    """Return the name of a field of the position with this number, counted from 1."""
    return f"p{position}_{field.value}"


def item_field(position: int, item: RecordItemId, field: ItemField) -> str:
    """Return the name of a field of an item."""
    return f"p{position}_{item.value}_{field.value}"


def part_field(position: int, place: int, field: PartField) -> str:
    """Return the name of a field of the part at a place of the chain, counted from 1."""
    return f"p{position}_part{place}_{field.value}"
