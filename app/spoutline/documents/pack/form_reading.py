"""A filled commissioning form read back into records; a field that cannot be used is kept as written and named."""

from __future__ import annotations

import calendar
import re
from collections.abc import Callable, Iterator, Mapping
from datetime import date
from io import BytesIO
from typing import TYPE_CHECKING, Any, Final

from pydantic import ValidationError

from spoutline.documents.pack.form_fields import (
    LONGEST_LINE,
    LONGEST_TEXT,
    NOT_CHOSEN,
    FormField,
    ItemField,
    PartField,
    field_name,
    item_field,
    part_field,
    planned_refs,
)
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.form import check_form
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
    PartMark,
    RecordEntry,
    RecordItemId,
    UnreadField,
)
from spoutline.model.worded import Worded
from spoutline.units.accepted import UnitSystem
from spoutline.units.meter_readings import MeterReading, parse_reading

if TYPE_CHECKING:
    from pypdf import PdfReader

_SERVICE_END: Final = re.compile(r"(?P<year>[0-9]{4})(?:-(?P<month>[0-9]{2}))?")
_TAG_FIELD = re.compile(r"p([0-9]{1,5})_tag")
_LONGEST_NUMBER: Final = 60
_MOST_NUMBERS: Final = 6
_BETWEEN_NUMBERS: Final = re.compile(r"[\s,;+]+")
_LEFT_OUT: Final = "-"
_UNMADE: Final = ("", NOT_CHOSEN)
_MOST_UNREAD: Final = 400


def service_end(text: str) -> date | None:
    """Return the last day of a service life that a person wrote as a month, a year or a day; None for nothing.

    Raises
    ------
    InputFault
        It is none of these.
    """
    written = text.strip()
    if not written:
        return None
    found = _SERVICE_END.fullmatch(written)
    try:
        if found is None:
            return date.fromisoformat(written)
        year, month = int(found["year"]), int(found["month"] or 12)
        return date(year, month, calendar.monthrange(year, month)[1])
    except ValueError as fault:
        wanted = "write the end of the service life as YYYY-MM, YYYY or YYYY-MM-DD"
        raise InputFault((InputProblem("", "service life", repr(text), wanted),)) from fault


def records_from_form(
    pdf: bytes, place: str, read_refs: Callable[[str], tuple[PartRef, ...]] | None = None
) -> tuple[CommissioningRecord, ...]:
    """Return the record of each position of a filled form, in the order of its pages.

    A field that cannot be read refuses nothing else: it stands in ``unread`` of its record, to be asked for again. So
    does the code of a page that cannot be told, in the first record of the form.

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
        It is no form of this program, or no page of it says which position it is of.
    """
    return records_from_fields(_field_values(pdf, place), place, read_refs)


def records_from_fields(
    values: Mapping[str, str], place: str, read_refs: Callable[[str], tuple[PartRef, ...]] | None = None
) -> tuple[CommissioningRecord, ...]:
    """Return the record of each position from the fields of a form, by name, in whatever file they came.

    Parameters and errors as of ``records_from_form``.
    """
    numbers = sorted(int(found[1]) for name in values if (found := _TAG_FIELD.fullmatch(name)))
    if not numbers:
        wanted = "a commissioning form of this program is needed, saved with its fields"
        raise InputFault((InputProblem(place, "form", "no field of a position", wanted),))
    if len(numbers) > BOUNDS.form_positions:
        wanted = Worded("a form of at most {most} positions is read", most=BOUNDS.form_positions)
        raise InputFault((InputProblem(place, "form", Worded("{count} positions", count=len(numbers)), wanted),))
    read = read_refs or _bare_refs
    readers = [_PositionReader(values, number, read) for number in numbers]
    pages = [(reader, reader.record()) for reader in readers]
    records = [record for _, record in pages if record is not None]
    lost = tuple(one for reader, record in pages if record is None for one in reader.unread)
    if not records:
        raise InputFault(tuple(InputProblem(place, one.field, repr(one.value), one.wanted) for one in lost))
    if lost:
        records[0] = records[0].model_copy(update={"unread": (*records[0].unread, *lost)[:_MOST_UNREAD]})
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
            wanted = Worded("a form of at most {most} fields is read", most=BOUNDS.form_fields)
            raise InputFault(
                (InputProblem(place, "form", Worded("more than {most} fields", most=BOUNDS.form_fields), wanted),)
            )
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
        read_refs: Callable[[str], tuple[PartRef, ...]],
    ) -> None:
        self._read_refs = read_refs
        self._values = values
        self._number = number
        self.unread: list[UnreadField] = []

    def record(self) -> CommissioningRecord | None:
        """Return the record with what could not be read; None where the page does not say what it is of."""
        tag = self._tag()
        language = self._choice(field_name(self._number, FormField.LANGUAGE), Language)
        system = self._choice(field_name(self._number, FormField.UNITS), UnitSystem)
        entries = tuple(self._entry(item, language, system) for item in RecordItemId)
        planned = self._planned()
        changes = tuple(
            change for place, part in enumerate(planned, start=1) if (change := self._change(place, part)) is not None
        )
        marks = tuple(
            mark for place in range(1, len(planned) + 1) if (mark := self._mark(place)) != PartMark(part=place)
        )
        done_on = self._day()
        people = {
            name: self._line(field_name(self._number, field), self._get(field), most)
            for name, field, most in (
                ("done_by", FormField.DONE_BY, LONGEST_LINE),
                ("licence", FormField.LICENCE, LONGEST_LINE),
                ("instruments", FormField.INSTRUMENTS, LONGEST_LINE),
                ("signed_by", FormField.SIGNED_BY, LONGEST_LINE),
                ("remarks", FormField.REMARKS, LONGEST_TEXT),
            )
        }
        if tag is None:
            return None
        return self._made(
            site=tag.site,
            position=tag.position,
            plan_revision=tag.revision,
            parts=planned,
            changes=changes,
            marks=marks,
            entries=tuple(entry for entry in entries if entry is not None),
            done_on=done_on,
            done_by=people["done_by"],
            licence=people["licence"],
            instruments=people["instruments"],
            signed_by=people["signed_by"],
            remarks=people["remarks"],
            unread=tuple(self.unread[:_MOST_UNREAD]),
        )

    def _made(self, **answers: object) -> CommissioningRecord | None:
        try:
            return CommissioningRecord.model_validate(answers)
        except ValidationError as fault:
            for one in fault.errors(include_url=False):
                field = ".".join(str(step) for step in one["loc"]) or "record"
                self._report(field, str(one["input"])[:60], Worded("this value fits no record ({one})", one=one["msg"]))
            return None

    def _get(self, field: FormField) -> str:
        return self._values.get(field_name(self._number, field), "")

    def _report(self, field: str, value: str, wanted: str) -> None:
        """Keep what was written in a field, without what does not show, with what would be right."""
        shown = "".join(sign if sign.isprintable() else " " for sign in value)[:LONGEST_TEXT]
        self.unread.append(UnreadField(field=field, value=shown, wanted=wanted[:LONGEST_TEXT]))

    def _tag(self) -> PositionTag | None:
        try:
            return tag_from_text(self._get(FormField.TAG))
        except InputFault as fault:
            name = field_name(self._number, FormField.TAG)
            self._report_all(name, self._get(FormField.TAG), fault)
            return None

    def _report_all(self, name: str, text: str, fault: InputFault) -> None:
        for one in fault.problems:
            self._report(name, text, one.wanted)

    def _planned(self) -> tuple[PartRef, ...]:
        written = self._get(FormField.PLANNED)
        try:
            refs = planned_refs(written)
        except ValueError:
            refs = None
        if refs is None or any(hidden_sign(text) for ref in refs for text in (ref.number, ref.maker)):
            name = field_name(self._number, FormField.PLANNED)
            self._report(name, written, "the planned parts must stand here as the form was printed")
            return ()
        return refs

    def _choice(self, name: str, members: type[Language] | type[UnitSystem]) -> str:
        value = self._values.get(name, "")
        known = [member.value for member in members]
        if value not in known:
            self._report(
                name, value, Worded("one of {known} must stand here as the form was printed", known=", ".join(known))
            )
        return value

    def _entry(self, item: RecordItemId, language: str, system: str) -> RecordEntry | None:
        reading = self._reading(item, language, system)
        result = self._result(item)
        note_name = item_field(self._number, item, ItemField.NOTE)
        note = self._line(note_name, self._values.get(note_name, ""), LONGEST_LINE)
        if reading is None and result is None and not note:
            return None
        value, over = (reading.value, reading.over_range) if reading is not None else (None, False)
        return RecordEntry(item=item, reading=value, over_range=over, result=result, note=note)

    def _reading(self, item: RecordItemId, language: str, system: str) -> MeterReading | None:
        name = item_field(self._number, item, ItemField.READING)
        text = self._values.get(name, "")
        dimension = READING_DIMENSIONS.get(item)
        if not text or dimension is None:
            return None
        if system not in list(UnitSystem) or language not in list(Language):
            self._report(name, text, "write it again with its unit: the form does not say its units and language")
            return None
        try:
            return parse_reading(text, dimension, UnitSystem(system), Language(language), field=name)
        except InputFault as fault:
            self._report_all(name, text, fault)
            return None

    def _result(self, item: RecordItemId) -> ItemResult | None:
        name = item_field(self._number, item, ItemField.RESULT)
        text = self._values.get(name, "")
        if text in _UNMADE:
            return None
        known = [result.value for result in ItemResult]
        if text not in known:
            self._report(name, text, Worded("choose one of {known}", known=", ".join(known)))
            return None
        return ItemResult(text)

    def _change(self, place: int, planned: PartRef) -> PartChange | None:
        name = part_field(self._number, place, PartField.FITTED)
        written = self._line(name, self._values.get(name, ""), LONGEST_LINE)
        try:
            fitted = () if written.strip() == _LEFT_OUT else self._read_refs(written)
        except InputFault as fault:
            self._report_all(name, written, fault)
            return None
        reason_name = part_field(self._number, place, PartField.REASON)
        reason = self._values.get(reason_name, "")
        if not written.strip() or (len(fitted) == 1 and fitted[0].names(planned)):
            return None
        if any(len(ref.number) > _LONGEST_NUMBER for ref in fitted) or len(fitted) > _MOST_NUMBERS:
            self._report(
                name,
                written,
                Worded(
                    "write at most {most_numbers} part numbers, or {left_out} where none is fitted",
                    most_numbers=_MOST_NUMBERS,
                    left_out=_LEFT_OUT,
                ),
            )
            return None
        known = [one.value for one in ChangeReason if one is not ChangeReason.NOT_STATED]
        if reason not in known:
            self._report(
                reason_name,
                reason,
                Worded("say why {written} was fitted: one of {known}", written=written, known=", ".join(known)),
            )
            reason = ChangeReason.NOT_STATED
        return PartChange(planned=planned, fitted=fitted, reason=ChangeReason(reason))

    def _mark(self, place: int) -> PartMark:
        serial_name = part_field(self._number, place, PartField.SERIAL)
        until_name = part_field(self._number, place, PartField.SERVICE_UNTIL)
        until = self._line(until_name, self._values.get(until_name, ""), LONGEST_LINE)
        last: date | None = None
        try:
            last = service_end(until)
        except InputFault as fault:
            self._report_all(until_name, until, fault)
        serial = self._line(serial_name, self._values.get(serial_name, ""), LONGEST_LINE)
        return PartMark(part=place, serial=serial, service_until=last)

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
            self._report(name, text, Worded("write at most {most} characters", most=most))
            return ""
        if told := hidden_sign(text):
            self._report(name, text, told)
            return ""
        return text
