"""A filled commissioning form read back into records; every field that cannot be used is named."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from datetime import date
from io import BytesIO
from typing import TYPE_CHECKING, Any, Final

from pydantic import ValidationError

from spoutline.documents.pack.form_fields import (
    NOT_CHOSEN,
    FormField,
    ItemField,
    PartField,
    field_name,
    item_field,
    part_field,
    planned_refs,
)
from spoutline.input_bounds import BOUNDS, check_form
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import hidden_sign
from spoutline.model.position_tag import PositionTag, tag_from_text
from spoutline.model.record import (
    READING_DIMENSIONS,
    ChangeReason,
    CommissioningRecord,
    ItemResult,
    PartChange,
    RecordEntry,
    RecordItemId,
)
from spoutline.units.accepted import UnitSystem
from spoutline.units.quantities import parse

if TYPE_CHECKING:
    from pypdf import PdfReader

_TAG_FIELD = re.compile(r"p([0-9]{1,5})_tag")
_COMMA_LANGUAGES: Final = frozenset({Language.GERMAN, Language.FRENCH})
# in these languages 1.250 may be a thousand and more, so it is not guessed
_GROUPED: Final = re.compile(r"\d\.\d{3}(?!\d)")
_LONGEST_LINE: Final = 200
_LONGEST_NUMBER: Final = 60
_MOST_NUMBERS: Final = 6
_BETWEEN_NUMBERS: Final = re.compile(r"[\s,;+]+")
_LEFT_OUT: Final = "-"
_UNMADE: Final = ("", NOT_CHOSEN)
_LONGEST_TEXT: Final = 4000


def records_from_form(
    pdf: bytes, place: str, read_refs: Callable[[str], tuple[PartRef, ...]] | None = None
) -> tuple[CommissioningRecord, ...]:
    """Return the record of each position of a filled form, in the order of its pages.

    Parameters
    ----------
    pdf
        The form as a PDF reader saved it.
    place
        Where it came from, named in every fault.
    read_refs
        Reads the parts that a person wrote into one field; None takes every word as a bare number.

    Raises
    ------
    InputFault
        It is no form of this program, or fields cannot be used: all of them are named.
    """
    values = _field_values(pdf, place)
    numbers = sorted(int(found[1]) for name in values if (found := _TAG_FIELD.fullmatch(name)))
    if not numbers:
        wanted = "a commissioning form of this program is needed, saved with its fields"
        raise InputFault((InputProblem(place, "form", "no field of a position", wanted),))
    if len(numbers) > BOUNDS.form_positions:
        wanted = f"a form of at most {BOUNDS.form_positions} positions is read"
        raise InputFault((InputProblem(place, "form", f"{len(numbers)} positions", wanted),))
    problems: list[InputProblem] = []
    read = read_refs or _bare_refs
    readers = (_PositionReader(values, number, place, problems, read) for number in numbers)
    records = [record for reader in readers if (record := reader.record()) is not None]
    if problems:
        raise InputFault(tuple(problems))
    return tuple(records)


def _field_values(pdf: bytes, place: str) -> Mapping[str, str]:
    from pypdf import PdfReader

    check_form(pdf, place)
    try:
        return {name: _plain(value) for name, value in _fields(PdfReader(BytesIO(pdf)), place)}
    except InputFault:
        raise
    except Exception as fault:  # a damaged file fails in many ways
        wanted = "a PDF file that can be read is needed"
        raise InputFault((InputProblem(place, "file", "the content", wanted),)) from fault


def _fields(reader: PdfReader, place: str) -> Iterator[tuple[str, object]]:
    """Yield name and value of each field of a form (ISO 32000-1, 12.7.3); one without a value inherits it."""
    form = reader.root_object.get("/AcroForm", {})
    ahead = [(one, "", None) for one in reversed(_listed(form, "/Fields"))]
    seen = 0
    while ahead:
        reference, parent, inherited = ahead.pop()
        seen += 1
        if seen > BOUNDS.form_fields:
            wanted = f"a form of at most {BOUNDS.form_fields} fields is read"
            raise InputFault((InputProblem(place, "form", f"more than {BOUNDS.form_fields} fields", wanted),))
        field = reference.get_object()
        if not hasattr(field, "get"):
            continue
        own, value = field.get("/T"), field.get("/V", inherited)
        name = ".".join(part for part in (parent, own) if isinstance(part, str) and part)
        if isinstance(own, str):
            yield name, value
        ahead.extend((one, name, value) for one in reversed(_listed(field, "/Kids")))


def _listed(holder: Any, key: str) -> list[Any]:  # noqa: ANN401 - an object of the library
    whole = holder.get_object() if hasattr(holder, "get_object") else holder
    found = whole.get(key, []) if hasattr(whole, "get") else []
    found = found.get_object() if hasattr(found, "get_object") else found
    return list(found) if isinstance(found, list) else []


def _plain(value: object) -> str:
    """Return a field's value as text; a choice that was never made has none."""
    return "" if value is None or str(value) == "/Off" else str(value).replace("\r\n", "\n").replace("\r", "\n").strip()


def _bare_refs(text: str) -> tuple[PartRef, ...]:
    return tuple(PartRef(number) for number in _BETWEEN_NUMBERS.split(text) if number)


class _PositionReader:
    """Reads the fields of one position and gathers what is wrong with them."""

    def __init__(
        self,
        values: Mapping[str, str],
        number: int,
        place: str,
        problems: list[InputProblem],
        read_refs: Callable[[str], tuple[PartRef, ...]],
    ) -> None:
        self._read_refs = read_refs
        self._values = values
        self._number = number
        self._place = place
        self._problems = problems

    def record(self) -> CommissioningRecord | None:
        """Return the record; None where a problem was found."""
        before = len(self._problems)
        tag = self._tag()
        language = self._choice(field_name(self._number, FormField.LANGUAGE), Language)
        system = self._choice(field_name(self._number, FormField.UNITS), UnitSystem)
        entries = tuple(self._entry(item, language, system) for item in RecordItemId)
        planned = self._planned()
        changes = tuple(
            change for place, part in enumerate(planned, start=1) if (change := self._change(place, part)) is not None
        )
        done_on = self._day()
        people = {
            name: self._line(field_name(self._number, field), self._get(field), most)
            for name, field, most in (
                ("done_by", FormField.DONE_BY, _LONGEST_LINE),
                ("licence", FormField.LICENCE, _LONGEST_LINE),
                ("signed_by", FormField.SIGNED_BY, _LONGEST_LINE),
                ("remarks", FormField.REMARKS, _LONGEST_TEXT),
            )
        }
        if tag is None or len(self._problems) > before:
            return None
        return self._made(
            site=tag.site,
            position=tag.position,
            plan_revision=tag.revision,
            parts=planned,
            changes=changes,
            entries=tuple(entry for entry in entries if entry is not None),
            done_on=done_on,
            done_by=people["done_by"],
            licence=people["licence"],
            signed_by=people["signed_by"],
            remarks=people["remarks"],
        )

    def _made(self, **answers: object) -> CommissioningRecord | None:
        try:
            return CommissioningRecord.model_validate(answers)
        except ValidationError as fault:
            for one in fault.errors(include_url=False):
                field = ".".join(str(step) for step in one["loc"]) or "record"
                self._report(field, str(one["input"])[:60], f"this value fits no record ({one['msg']})")
            return None

    def _get(self, field: FormField) -> str:
        return self._values.get(field_name(self._number, field), "")

    def _report(self, field: str, value: str, wanted: str) -> None:
        self._problems.append(InputProblem(self._place, field, repr(value), wanted))

    def _tag(self) -> PositionTag | None:
        try:
            return tag_from_text(self._get(FormField.TAG))
        except InputFault as fault:
            name = field_name(self._number, FormField.TAG)
            self._problems.extend(replace(one, place=self._place, field=name) for one in fault.problems)
            return None

    def _planned(self) -> tuple[PartRef, ...]:
        written = self._get(FormField.PLANNED)
        try:
            return planned_refs(written)
        except ValueError:
            name = field_name(self._number, FormField.PLANNED)
            self._report(name, written[:60], "the planned parts must stand here as the form was printed")
            return ()

    def _choice(self, name: str, members: type[Language] | type[UnitSystem]) -> str:
        value = self._values.get(name, "")
        known = [member.value for member in members]
        if value not in known:
            self._report(name, value, f"one of {', '.join(known)} must stand here as the form was printed")
        return value

    def _entry(self, item: RecordItemId, language: str, system: str) -> RecordEntry | None:
        reading = self._reading(item, language, system)
        result = self._result(item)
        note_name = item_field(self._number, item, ItemField.NOTE)
        note = self._line(note_name, self._values.get(note_name, ""), _LONGEST_LINE)
        if reading is None and result is None and not note:
            return None
        return RecordEntry(item=item, reading=reading, result=result, note=note)

    def _reading(self, item: RecordItemId, language: str, system: str) -> float | None:
        name = item_field(self._number, item, ItemField.READING)
        text = self._values.get(name, "")
        dimension = READING_DIMENSIONS.get(item)
        if not text or dimension is None or system not in list(UnitSystem):
            return None
        if language in _COMMA_LANGUAGES and _GROUPED.search(text):
            self._report(name, text, "write a decimal comma and no thousands separator")
            return None
        written = text
        # a single comma with no point is the decimal sign of these languages; anything else is left to be refused
        if language in _COMMA_LANGUAGES and text.count(",") == 1 and "." not in text:
            written = text.replace(",", ".")
        try:
            value = parse(written, dimension, UnitSystem(system), field=name)
        except InputFault as fault:
            self._problems.extend(replace(one, place=self._place, value=repr(text)) for one in fault.problems)
            return None
        if value < 0:
            self._report(name, text, "a reading of zero or more is needed")
            return None
        return value

    def _result(self, item: RecordItemId) -> ItemResult | None:
        name = item_field(self._number, item, ItemField.RESULT)
        text = self._values.get(name, "")
        if text in _UNMADE:
            return None
        known = [result.value for result in ItemResult]
        if text not in known:
            self._report(name, text, f"choose one of {', '.join(known)}")
            return None
        return ItemResult(text)

    def _change(self, place: int, planned: PartRef) -> PartChange | None:
        name = part_field(self._number, place, PartField.FITTED)
        written = self._line(name, self._values.get(name, ""), _LONGEST_LINE)
        fitted = () if written.strip() == _LEFT_OUT else self._read_refs(written)
        reason_name = part_field(self._number, place, PartField.REASON)
        reason = self._values.get(reason_name, "")
        if not written.strip() or (len(fitted) == 1 and fitted[0].names(planned)):
            return None
        if any(len(ref.number) > _LONGEST_NUMBER for ref in fitted) or len(fitted) > _MOST_NUMBERS:
            self._report(
                name, written, f"write at most {_MOST_NUMBERS} part numbers, or {_LEFT_OUT} where none is fitted"
            )
            return None
        known = [one.value for one in ChangeReason]
        if reason not in known:
            self._report(reason_name, reason, f"say why {written} was fitted: one of {', '.join(known)}")
            return None
        return PartChange(planned=planned, fitted=fitted, reason=ChangeReason(reason))

    def _day(self) -> date | None:
        text = self._get(FormField.DONE_ON)
        if not text:
            return None
        try:
            return date.fromisoformat(text)
        except ValueError:
            wanted = "write a date of the calendar as YYYY-MM-DD"
            self._report(field_name(self._number, FormField.DONE_ON), text, wanted)
            return None

    def _line(self, name: str, text: str, most: int) -> str:
        if len(text) > most:
            self._report(name, f"{text[:40]}…", f"write at most {most} characters")
            return ""
        if told := hidden_sign(text):
            self._report(name, text[:40], told)
            return ""
        return text
