"""The commissioning form: printed, filled in by another program (pypdf), read back without loss, faults named."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from io import BytesIO

import pytest
from pypdf import PdfReader, PdfWriter

from documents import plan_factory as factory
from documents.pack_words import words
from documents.readers import reader_of
from paper_text import text_of
from spoutline.documents.pack.form_fields import (
    FormField,
    ItemField,
    PartField,
    field_name,
    item_field,
    part_field,
)
from spoutline.documents.pack.form_reading import records_from_form
from spoutline.documents.pack.papers import form_pdf, pack_pdf, record_pdf
from spoutline.documents.pack.record_sheet import records_digest
from spoutline.model.check import Bound, Outcome
from spoutline.model.faults import InputFault
from spoutline.model.language import Language
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.model.pack import PackJob
from spoutline.model.part_ref import PartRef
from spoutline.model.record import (
    READING_DIMENSIONS,
    ChangeReason,
    CommissioningRecord,
    ItemResult,
    PartChange,
    PartMark,
    PhotoNote,
    ReadingVerdict,
    RecordEntry,
    RecordItemId,
)
from spoutline.model.survey import SurveyLiquid
from spoutline.rules.work.records import judged_record, record_items
from spoutline.units.accepted import UnitSystem

BOND = item_field(1, RecordItemId.BOND, ItemField.READING)
FLOW = item_field(1, RecordItemId.FLOW, ItemField.READING)
SPOUT = item_field(1, RecordItemId.SPOUT, ItemField.READING)
LEAK = item_field(1, RecordItemId.LEAK, ItemField.RESULT)


def printed(language: Language = Language.ENGLISH, system: UnitSystem = UnitSystem.SI, count: int = 1) -> bytes:
    plans = [factory.fitting_plan(factory.position(f"{number}A")) for number in range(1, count + 1)]
    return form_pdf(factory.site_plan(*plans), words(language, system))


def filled(pdf: bytes, **values: str) -> bytes:
    writer = PdfWriter(clone_from=BytesIO(pdf))
    for page in writer.pages:
        writer.update_page_form_field_values(page, dict(values), auto_regenerate=False)
    buffer = BytesIO()
    writer.write(buffer)
    return buffer.getvalue()


def read(pdf: bytes) -> CommissioningRecord:
    (record,) = records_from_form(pdf, "filled.pdf")
    return record


def test_an_empty_form_reads_back_as_the_plan_with_nothing_entered() -> None:
    record = read(printed())
    assert (record.site, record.position, record.plan_revision) == ("Bramblefork Fuels", "1A", "0123456789abcdef")
    assert record.parts == tuple(map(PartRef, factory.chain().numbers))
    assert record.entries == ()
    assert record.changes == ()
    assert record.as_built == tuple(map(PartRef, factory.chain().numbers))


def test_what_is_filled_in_comes_back_in_si() -> None:
    record = read(
        filled(
            printed(),
            **{
                BOND: "1.5 kohm",
                FLOW: "36",
                SPOUT: "20.8",
                LEAK: "passed",
                item_field(1, RecordItemId.LEAK, ItemField.NOTE): "dry after 10 min",
                field_name(1, FormField.DONE_ON): "2026-12-01",
                field_name(1, FormField.DONE_BY): "Ada Quill",
                field_name(1, FormField.LICENCE): "HF-1",
                field_name(1, FormField.SIGNED_BY): "A. Quill",
                field_name(1, FormField.REMARKS): "two\nlines, ñ ü é",
            },
        )
    )
    assert record.entry(RecordItemId.BOND) == RecordEntry(item=RecordItemId.BOND, reading=1500.0)
    flow, spout = record.entry(RecordItemId.FLOW), record.entry(RecordItemId.SPOUT)
    assert flow is not None
    assert flow.reading == pytest.approx(36 / 60000)  # 1 L/min is 1/60000 m3/s
    assert spout is not None
    assert spout.reading == pytest.approx(0.0208)
    leak = record.entry(RecordItemId.LEAK)
    assert leak == RecordEntry(item=RecordItemId.LEAK, result=ItemResult.PASSED, note="dry after 10 min")
    assert record.done_on == date(2026, 12, 1)
    assert (record.done_by, record.licence, record.signed_by) == ("Ada Quill", "HF-1", "A. Quill")
    assert record.remarks == "two\nlines, ñ ü é"


def test_a_bare_number_takes_the_unit_of_the_form() -> None:
    # NIST SP 811: 1 US gallon is 3.785 411 784 L, 1 inch is 25.4 mm
    record = read(filled(printed(system=UnitSystem.US), **{FLOW: "10", SPOUT: "0.82"}))
    flow, spout = record.entry(RecordItemId.FLOW), record.entry(RecordItemId.SPOUT)
    assert flow is not None
    assert flow.reading == pytest.approx(10 * 3.785411784e-3 / 60)
    assert spout is not None
    assert spout.reading == pytest.approx(0.82 * 0.0254)


@pytest.mark.parametrize(
    ("language", "text", "si"),
    [
        (Language.GERMAN, "20,8", 0.0208),
        (Language.FRENCH, "20,8 mm", 0.0208),
        (Language.GERMAN, "20.8", 0.0208),
        (Language.SPANISH, "20.8", 0.0208),
        (Language.SPANISH, "20,8", 0.0208),
    ],
)
def test_the_decimal_sign_of_the_language_is_understood(language: Language, text: str, si: float) -> None:
    entry = read(filled(printed(language), **{SPOUT: text})).entry(RecordItemId.SPOUT)
    assert entry is not None
    assert entry.reading == pytest.approx(si)


@pytest.mark.parametrize(
    ("field", "text", "words_of_it"),
    [
        (BOND, "1,500", "decimal point"),  # a thousand and a half, or one and a half: not guessed
        (BOND, "low", "OL for an open circuit"),
        (BOND, "-5", "zero or more"),
        (BOND, "5 mm", "units"),
        (FLOW, "1e999", "number"),
        (FLOW, "OL", "number"),  # no flow meter shows it
        (LEAK, "perhaps", "passed"),
        (field_name(1, FormField.DONE_ON), "1.12.2026", "YYYY-MM-DD"),
        (field_name(1, FormField.DONE_BY), "x" * 201, "200 characters"),
        (field_name(1, FormField.LANGUAGE), "xx", "as the form was printed"),
        (field_name(1, FormField.PLANNED), "[1", "as the form was printed"),
    ],
)
def test_a_field_that_cannot_be_used_is_asked_for_again_and_refuses_nothing_else(
    field: str, text: str, words_of_it: str
) -> None:
    note = item_field(1, RecordItemId.LEAK, ItemField.NOTE)
    record = read(filled(printed(), **{note: "dry", field_name(1, FormField.LICENCE): "HF-1", field: text}))
    (asked,) = record.unread
    assert (asked.field, asked.value) == (field, text)
    assert words_of_it in asked.wanted
    leak = record.entry(RecordItemId.LEAK)
    assert leak is not None
    assert (leak.note, record.licence) == ("dry", "HF-1")
    plan = factory.site_plan(factory.fitting_plan())
    judged = judged_record(record, record_items(plan.positions[0]), {})
    assert not judged.is_clear
    paper = text_of(record_pdf(plan, words(), (judged,), {}))
    assert "asked for again:" in paper
    assert field in paper


def test_a_part_fitted_without_a_reason_is_kept_and_its_reason_asked_for() -> None:
    record = read(filled(printed(), **{part_field(1, 2, PartField.FITTED): "QW-B9"}))
    assert record.changes == (PartChange(planned="QW-B7", fitted=("QW-B9",), reason=ChangeReason.NOT_STATED),)
    assert [one.field for one in record.unread] == [part_field(1, 2, PartField.REASON)]


def test_a_page_whose_position_cannot_be_told_leaves_the_others_and_is_named() -> None:
    bad = {field_name(1, FormField.TAG): "spoutline:site=x", item_field(2, RecordItemId.BOND, ItemField.READING): "700"}
    (record,) = records_from_form(filled(printed(count=2), **bad), "filled.pdf")
    assert record.position == "2A"
    assert record.entry(RecordItemId.BOND) == RecordEntry(item=RecordItemId.BOND, reading=700.0)
    assert field_name(1, FormField.TAG) in [one.field for one in record.unread]
    with pytest.raises(InputFault, match="code"):
        read(filled(printed(), **{field_name(1, FormField.TAG): "spoutline:site=x"}))


@pytest.mark.parametrize(
    ("text", "reading", "shown"),
    [
        # what multimeters show for an open circuit or beyond their range: common practice, no source
        ("OL", None, "OL (open circuit)"),
        ("O.L", None, "OL (open circuit)"),
        ("∞", None, "OL (open circuit)"),
        ("> 10 MΩ", 1e7, "> 10 MΩ"),
        (">10M", 1e7, "> 10 MΩ"),
    ],
)
def test_an_open_circuit_is_a_reading_out_of_limit(text: str, reading: float | None, shown: str) -> None:
    record = read(filled(printed(), **{BOND: text}))
    assert record.unread == ()
    assert record.entry(RecordItemId.BOND) == RecordEntry(item=RecordItemId.BOND, reading=reading, over_range=True)
    plan = factory.site_plan(factory.fitting_plan())
    judged = judged_record(record, record_items(plan.positions[0]), {})
    assert next(one.verdict for one in judged.entries if one.item.id is RecordItemId.BOND) is ReadingVerdict.OUTSIDE
    assert shown in text_of(record_pdf(plan, words(), (judged,), {}))


def test_a_meter_prefix_without_a_unit_is_of_ohms() -> None:
    # the prefixes of the SI brochure: k is 1000, M is 1000000
    for text, ohm in (("90k", 9e4), ("0.5 M", 5e5)):
        assert read(filled(printed(), **{BOND: text})).entry(RecordItemId.BOND) == RecordEntry(
            item=RecordItemId.BOND, reading=ohm
        )


def test_what_may_group_thousands_is_asked_again_where_the_language_leaves_it_open() -> None:
    for language, text in ((Language.GERMAN, "1.500"), (Language.SPANISH, "1,500")):
        record = read(filled(printed(language), **{BOND: text}))
        assert [(one.field, one.value) for one in record.unread] == [(BOND, text)]


# signs of Unicode Standard Annex 9, explicit formatting characters; a number longer than any reference may be
@pytest.mark.parametrize("number", ["QW-B\u200e7", "QW-B\u202e7", "Q" * 81])
def test_planned_parts_that_no_form_was_printed_with_are_asked_for_again(number: str) -> None:
    planned = field_name(1, FormField.PLANNED)
    values = {planned: f"QW-W18 {number}", part_field(1, 2, PartField.FITTED): "QW-B9"}
    record = read(filled(printed(), **values))
    assert record.parts == ()
    assert [one.field for one in record.unread] == [planned]


def test_all_faults_come_at_once() -> None:
    record = read(filled(printed(), **{BOND: "low", FLOW: "much", LEAK: "well"}))
    assert {one.field for one in record.unread} == {BOND, FLOW, LEAK}


@pytest.mark.parametrize(
    ("written", "fitted"), [("QW-B9", ("QW-B9",)), ("QW-A1, QW-B9", ("QW-A1", "QW-B9")), ("-", ())]
)
def test_another_part_is_recorded_with_its_reason(written: str, fitted: tuple[str, ...]) -> None:
    values = {part_field(1, 2, PartField.FITTED): written, part_field(1, 2, PartField.REASON): "not_on_van"}
    record = read(filled(printed(), **values))
    assert record.changes == (PartChange(planned="QW-B7", fitted=fitted, reason=ChangeReason.NOT_ON_VAN),)
    assert record.as_built == tuple(map(PartRef, ("QW-W18", *fitted, "QW-C12", "QW-S2", "QW-N101")))


def test_several_positions_are_read_in_order_and_kept_apart() -> None:
    pdf = filled(printed(count=3), **{item_field(2, RecordItemId.BOND, ItemField.READING): "700"})
    records = records_from_form(pdf, "filled.pdf")
    assert [record.position for record in records] == ["1A", "2A", "3A"]
    assert [bool(record.entries) for record in records] == [False, True, False]


@pytest.mark.parametrize("content", [b"", b"%PDF-1.7 broken", b"no pdf", b"\x00" * 500])
def test_a_file_that_is_no_form_is_refused(content: bytes) -> None:
    with pytest.raises(InputFault):
        records_from_form(content, "filled.pdf")


def test_a_pdf_without_fields_of_ours_is_refused() -> None:
    writer = PdfWriter()
    writer.add_blank_page(100, 100)
    buffer = BytesIO()
    writer.write(buffer)
    with pytest.raises(InputFault, match="commissioning form"):
        records_from_form(buffer.getvalue(), "blank.pdf")


@pytest.mark.parametrize("language", Language)
def test_every_field_has_a_tooltip_and_lies_on_one_page(language: Language) -> None:
    reader = PdfReader(BytesIO(printed(language)))
    assert len(reader.pages) == 1
    fields = reader.get_fields()
    assert fields
    assert all(field.get("/TU") for field in fields.values())
    width, height = reader.pages[0].mediabox.width, reader.pages[0].mediabox.height
    for annotation in reader.pages[0]["/Annots"]:
        x1, y1, x2, y2 = annotation.get_object()["/Rect"]
        assert 0 <= x1 < x2 <= width
        assert 0 <= y1 < y2 <= height


def test_what_the_form_was_made_from_cannot_be_changed() -> None:
    fields = PdfReader(BytesIO(printed())).get_fields()
    assert fields
    for name in (FormField.TAG, FormField.PLANNED, FormField.LANGUAGE, FormField.UNITS):
        assert fields[field_name(1, name)]["/Ff"] & 1  # bit 1: read only, ISO 32000-1 table 221


def test_a_form_needs_a_position_with_a_set() -> None:
    with pytest.raises(InputFault, match="position with a set"):
        form_pdf(factory.site_plan(factory.conflicting_plan()), words())


# the smallest PNG: one white pixel, written out by hand after the PNG specification
PIXEL = bytes.fromhex(
    "89504e470d0a1a0a0000000d4948445200000001000000010802000000907753de0000000c49444154789c63f8ffff3f0005fe02fe"
    "0def46b80000000049454e44ae426082"
)


def test_the_record_says_what_was_entered_flags_it_and_shows_the_photo() -> None:
    import hashlib

    digest = hashlib.sha256(PIXEL).hexdigest()
    record = read(filled(printed(), **{SPOUT: "25", LEAK: "failed", BOND: "900"})).model_copy(
        update={
            "photos": (PhotoNote(name="plate.png", sha256=digest, caption="breakaway plate"),),
            "done_by": "A. Quill",
        }
    )
    plan = factory.site_plan(factory.fitting_plan())
    judged = judged_record(record, record_items(plan.positions[0]), {})
    assert not judged.is_clear
    pdf = record_pdf(plan, words(), (judged,), {digest: PIXEL})
    text = text_of(pdf)
    for found in (
        "25 mm",
        "20.5 mm – 21.34 mm",
        "✗ OUT OF LIMIT",
        "failed",
        "900 Ω",
        "A. Quill",
        "plate.png: breakaway",
    ):
        assert found in text
    assert "the position stays closed until this is put right" in text
    assert records_digest((record,))[:24] in text
    assert any(page.images for page in reader_of(pdf).pages)


def test_another_entry_gives_another_digest() -> None:
    one = read(printed())
    assert records_digest((one,)) != records_digest((one.model_copy(update={"remarks": "x"}),))


def test_every_item_with_a_reading_has_its_dimension() -> None:
    for item in record_items(factory.fitting_plan()):
        assert (item.dimension is None) == (item.id not in READING_DIMENSIONS)


def test_form_record_and_sheet_write_figures_and_limits_alike() -> None:
    # NFPA 77 takes up to one megohm as bonded (from memory): 1 MOhm = 1000000 Ohm, 43 kOhm = 43000 Ohm
    bond = replace(factory.resistance_check(), value=43_000.0, outcome=Outcome.PASSES)
    plan = factory.fitting_plan(chosen=replace(factory.judged(), checks=(factory.spout_check(), bond)))
    site_plan = factory.site_plan(plan)
    form, sheet = text_of(form_pdf(site_plan, words())), text_of(pack_pdf(site_plan, words(), PackJob()))
    record = read(filled(form_pdf(site_plan, words()), **{BOND: "90 kohm"}))
    paper = text_of(record_pdf(site_plan, words(), (judged_record(record, record_items(plan), {}),), {}))
    assert "43 kΩ ≤ 1 MΩ" in form
    assert "43 kΩ ≤ 1 MΩ" in sheet
    assert "90 kΩ 43 kΩ ≤ 1 MΩ" in paper
    spout = "20.5 mm – 21.34 mm"  # SAE J285:2007 as reported
    assert all(spout in one for one in (form, sheet, paper))


def test_what_the_form_was_made_from_is_not_seen() -> None:
    pdf = printed()
    reader = PdfReader(BytesIO(pdf))
    shown = {}
    for annotation in reader.pages[0]["/Annots"]:
        field = annotation.get_object()
        shown[field["/T"]] = not field["/F"] & 2  # bit 2: hidden, ISO 32000-1 table 165
    made_from = {
        field_name(1, name) for name in (FormField.TAG, FormField.PLANNED, FormField.LANGUAGE, FormField.UNITS)
    }
    assert {name for name, is_shown in shown.items() if not is_shown} == made_from


@pytest.mark.parametrize(
    ("written", "until", "shown"),
    [
        ("2031-06", date(2031, 6, 30), "Jun 30, 2031"),
        ("2031", date(2031, 12, 31), "Dec 31, 2031"),
        ("2031-06-15", date(2031, 6, 15), "Jun 15, 2031"),
        ("", None, ""),
    ],
)
def test_serial_and_service_life_of_a_part_come_back_and_stand_in_the_record(
    written: str, until: date | None, shown: str
) -> None:
    serial, life = (part_field(1, 2, field) for field in (PartField.SERIAL, PartField.SERVICE_UNTIL))
    record = read(filled(printed(), **{serial: "SN 4711", life: written}))
    assert record.marks == (PartMark(part=2, serial="SN 4711", service_until=until),)
    assert record.is_filled
    plan = factory.fitting_plan()
    judged = judged_record(record, record_items(plan), {})
    text = text_of(record_pdf(factory.site_plan(plan), words(), (judged,), {}))
    assert "SN 4711" in text
    assert shown in text


def test_a_service_life_that_is_no_day_is_asked_again() -> None:
    life = part_field(1, 2, PartField.SERVICE_UNTIL)
    record = read(filled(printed(), **{life: "next summer"}))
    assert [(one.field, one.value) for one in record.unread] == [(life, "next summer")]


def test_every_trial_that_is_asked_comes_back_from_the_form() -> None:
    nozzle = factory.nozzle()
    assert nozzle.nozzle is not None
    data = replace(nozzle.nozzle, hold_open=True, attitude_device=True, no_pressure_device=True)
    chosen = factory.judged(factory.chain(last=replace(nozzle, nozzle=data)))
    position = factory.position(vapour_today="balance", vapour_wanted="none", prepay=True)
    plan = factory.fitting_plan(position, chosen=chosen)
    asked = {item.id for item in record_items(plan) if item.applies}
    # these chains carry no check of the clearance
    assert set(RecordItemId) - asked == {RecordItemId.CONCENTRATION, RecordItemId.CLEARANCE}
    trials = {item_field(1, item, ItemField.RESULT): "passed" for item in asked - set(READING_DIMENSIONS)}
    record = read(filled(form_pdf(factory.site_plan(plan), words()), **trials))
    assert {one.item for one in record.entries} == asked - set(READING_DIMENSIONS)
    plain = {item.id for item in record_items(factory.fitting_plan()) if item.applies}
    # Okla. 165:26-2-91(c): a dispenser runs only with the nozzle lifted and the switch operated
    assert {RecordItemId.LEVER_BEFORE, RecordItemId.LEVER_RETURNED} <= plain
    assert not plain & {
        RecordItemId.VAPOUR_CLOSING,
        RecordItemId.PRESSURE_DECAY,
        RecordItemId.VENT_VALVE,
        RecordItemId.ATTITUDE,
        RecordItemId.LATCH,
        RecordItemId.LEVER_PREPAID,
        RecordItemId.CONCENTRATION,
    }


def test_def_is_measured_by_refractometer_before_service() -> None:
    # ISO 22241-1:2019 as reported (secondary): 31.8 to 33.2 % urea by mass
    plan = factory.fitting_plan(factory.position(liquid=SurveyLiquid(family=LiquidFamily.DEF, blend_percent=0)))
    assert plan.requirement is not None
    low, high = (Bound(value=value, source="ISO 22241-1", status=LimitStatus.SECONDARY) for value in (31.8, 33.2))
    plan = replace(plan, requirement=replace(plan.requirement, urea_percent=(low, high)))
    pdf = form_pdf(factory.site_plan(plan), words())
    assert "31.8 % – 33.2 %" in text_of(pdf)
    reading = item_field(1, RecordItemId.CONCENTRATION, ItemField.READING)
    for written, verdict in (("32.5", ReadingVerdict.WITHIN), ("31.0", ReadingVerdict.OUTSIDE)):
        judged = judged_record(read(filled(pdf, **{reading: written})), record_items(plan), {})
        found = {one.item.id: one.verdict for one in judged.entries}
        assert found[RecordItemId.CONCENTRATION] is verdict
