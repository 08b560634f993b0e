"""Entries changed as a person changes them: typed texts, one field of several, the figures of a similar part."""

from __future__ import annotations

from datetime import date

import pytest

from spoutline.catalogue.descriptions import COLUMNS, describe, entry_of
from spoutline.catalogue.source import read_source
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, FigureCell, Origin
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.planning.keeping.draft_check import successor_problems
from spoutline.planning.keeping.entry_editing import edited, with_field, with_figures_of
from spoutline.planning.keeping.entry_fields import entry_fields, shown_texts

MAKER = "Quillwort Works"


def hose(number: str = "QX 1", **said: object) -> CatalogueEntry:
    return CatalogueEntry(number=number, maker=MAKER, kind=PartKind.CURB_HOSE, **said)  # type: ignore[arg-type]


def places(fault: InputFault) -> set[str]:
    return {problem.place for problem in fault.problems}


def test_quantities_are_read_in_any_unit_and_kept_in_that_of_the_column() -> None:
    after = edited(hose(), {"kind": "curb_hose", "bore_mm": '3/4"', "length_m": "12 ft", "outside_diameter_mm": "31"})
    assert after.figure("bore_mm") == 19.05  # 25.4 mm to the inch, NIST SP 811 B.8
    assert after.figure("length_m") == 3.6576  # 0.3048 m to the foot, NIST SP 811 B.8
    assert after.figure("outside_diameter_mm") == 31
    assert {cell.origin for cell in after.figures} == {Origin.STATED}


def test_every_text_that_is_not_usable_is_told_at_its_field() -> None:
    texts = {"kind": "curb_hose", "bore_mm": "wide", "outlet": "NPT 3/4", "price": "12.50", "gtin": "1"}
    with pytest.raises(InputFault) as caught:
        edited(hose(), texts)
    assert places(caught.value) == {"bore_mm", "outlet", "price"}
    with pytest.raises(InputFault) as caught:
        edited(hose(), {"kind": "curb_hose", "gtin": "4006381333932"})
    assert places(caught.value) == {"gtin"}  # 4006381333931 is sound: GS1 check digit


def test_prices_dates_and_successors_are_read() -> None:
    texts = {"kind": "curb_hose", "price": "12.50 USD; 1,250.00 EUR", "discontinued_from": "2027-01-31"}
    after = edited(hose(), texts | {"superseded_by": "QX 2"})
    assert after.prices == (EntryPrice(currency="EUR", minor=125_000), EntryPrice(currency="USD", minor=1_250))
    assert after.discontinued_from == date(2027, 1, 31)
    assert (after.status, after.successor) == (PartStatus.SUPERSEDED, PartRef("QX 2", MAKER))
    back = edited(after, {"kind": "curb_hose", "superseded_by": ""})
    assert (back.status, back.successor) == (PartStatus.ACTIVE, None)


def test_a_text_that_stands_as_it_was_keeps_its_value_and_origin() -> None:
    cell = FigureCell(column="bore_mm", value=19.0512345678, origin=Origin.TEXT, source="hose_bore: 3/4")
    before = hose(figures=(cell,))
    after = edited(before, shown_texts(before) | {"name": "Hardwall"})
    assert after.figures == (cell,)
    assert edited(before, shown_texts(before) | {"bore_mm": ""}).figures == ()


@pytest.mark.parametrize("kind", list(PartKind))
def test_each_part_of_the_demonstration_stands_in_its_form_as_it_is(kind: PartKind) -> None:
    from spoutline import assets

    part = next(part for part in read_source(assets.catalogue_folder()).parts if part.kind is kind)
    entry = entry_of(part)
    texts = shown_texts(entry)
    assert [field.key for field in entry_fields(kind) if field.is_figure] == list(COLUMNS[kind])
    bare = CatalogueEntry(number=entry.number, maker=entry.maker)
    made = edited(bare, texts)
    assert describe(made).lacking == describe(made).faults == ()
    assert made == entry  # every text says all that its figure is


def test_several_parts_get_one_field_and_nothing_else() -> None:
    for entry in (hose("QX 1", name="one"), hose("QX 2", name="two", lead_days=3)):
        after = with_field(entry, "lead_days", "7 days")
        assert after == entry.model_copy(update={"lead_days": 7})
    with pytest.raises(InputFault) as caught:
        with_field(hose(), "spout_od_mm", "24")
    assert "curb_hose has no such field" in str(caught.value)


def test_figures_of_a_similar_part_fill_what_lacks_and_say_from_where() -> None:
    similar = edited(hose("QX 1"), {"kind": "curb_hose", "bore_mm": "19", "length_m": "3"})
    entry = edited(hose("QX 2"), {"kind": "curb_hose", "length_m": "4"})
    after = with_figures_of(entry, similar)
    assert after.figure("length_m") == 4
    assert [
        (cell.column, cell.value, cell.origin, cell.source) for cell in after.figures if cell.column == "bore_mm"
    ] == [("bore_mm", 19, Origin.SIMILAR, f"{MAKER} QX 1")]
    with pytest.raises(InputFault):
        with_figures_of(CatalogueEntry(number="QX 3", maker=MAKER, kind=PartKind.NOZZLE), similar)
    unknown = CatalogueEntry(number="QX 4", maker=MAKER)
    assert with_figures_of(unknown, similar).kind is PartKind.CURB_HOSE


class Held:
    """A draft of a few entries."""

    def __init__(self, *entries: CatalogueEntry) -> None:
        self._held = {entry.ref: entry for entry in entries}

    def entries(self, refs: object) -> dict[PartRef, CatalogueEntry]:
        return {ref: self._held[ref] for ref in refs if ref in self._held}  # type: ignore[attr-defined]


def after(number: str, successor: str) -> CatalogueEntry:
    return hose(number, superseded_by=successor, status=PartStatus.SUPERSEDED)


def test_successors_never_lead_in_a_circle_and_are_parts_of_the_draft() -> None:
    chain = (after("QX 1", "QX 2"), after("QX 2", "QX 3"), hose("QX 3"))
    assert list(successor_problems(Held(*chain), chain)) == []
    circle = (after("QX 1", "QX 2"), after("QX 2", "QX 3"), after("QX 3", "QX 1"))
    assert [(one.place, one.wanted) for one in successor_problems(Held(*circle), circle[:1])] == [
        ("superseded_by", "a part that does not lead back to this one")
    ]
    (lost,) = successor_problems(Held(chain[0]), chain[:1])
    assert lost.wanted == "number and maker of a part of the draft"
