"""Old numbers lead to parts: held by editions, carried by the exchange file, never in a circle."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pydantic import ValidationError

from examples import up_to
from spoutline.catalogue.checking import edition_faults
from spoutline.catalogue.cross_references import going_round
from spoutline.catalogue.exchange import exchange_bytes
from spoutline.catalogue.exchange_reader import ExchangeReader
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import CrossReference, NumberRelation, NumberStepKind
from spoutline.model.part import PartStatus
from spoutline.model.part_ref import PartRef
from stores.catalogue.entries import MAKER, NAME, priced_only, swivel

DRAFT = EditionRef(NAME, is_draft=True)
OTHER = "Brackwater Pumps"


def leads(number: str, to: str, maker: str = OTHER, to_maker: str = MAKER, *, same: bool = False) -> CrossReference:
    return CrossReference(
        number=number,
        maker=maker,
        part_number=to,
        part_maker=to_maker,
        relation=NumberRelation.SAME if same else NumberRelation.EQUIVALENT,
    )


def put(shelf: CatalogueShelf, *references: CrossReference, entries: tuple[CatalogueEntry, ...] = ()) -> None:
    with shelf.draft(NAME) as desk:
        desk.put(entries)
        desk.references.put(references)


def publish(shelf: CatalogueShelf) -> EditionRef:
    return shelf.publish(NAME, notes="next", publisher="Ada Fenn", on=date(2026, 11, 28)).ref


def test_an_edition_keeps_its_old_numbers_whatever_the_draft_does(shelf: CatalogueShelf) -> None:
    first = leads("B 1", "FW 900")
    put(shelf, first, leads("B 2", "FW 900"), entries=(priced_only(),))
    published = publish(shelf)
    assert not shelf.catalogue(NAME).has_changes
    with shelf.draft(NAME) as desk:
        desk.references.put([leads("B 1", "FW 901")])
        desk.references.take_out([PartRef("B 2", OTHER)])
    assert shelf.catalogue(NAME).has_changes
    assert [one.number for one in shelf.references(published)] == ["B 1", "B 2"]
    assert shelf.references(published)[0] == first
    assert [one.part_number for one in shelf.references(DRAFT)] == ["FW 901"]
    changed = shelf.reference_changes(published, DRAFT)
    assert [(one.ref.number, one.after is None) for one in changed] == [("B 1", False), ("B 2", True)]
    shelf.discard_draft(NAME)
    assert shelf.references(DRAFT) == shelf.references(published)
    assert not shelf.catalogue(NAME).has_changes  # what goes back to the published state is that state again


def test_the_fingerprint_tells_editions_with_other_old_numbers_apart(shelf: CatalogueShelf) -> None:
    put(shelf, entries=(priced_only(),))
    bare = shelf.opened(publish(shelf)).edition.fingerprint
    put(shelf, leads("B 1", "FW 900"))
    with_number = shelf.opened(publish(shelf)).edition.fingerprint
    with shelf.draft(NAME) as desk:
        desk.references.keep_only(set())
    assert shelf.opened(publish(shelf)).edition.fingerprint == bare != with_number


def test_a_number_is_followed_to_the_part_and_its_successor(shelf: CatalogueShelf) -> None:
    now = priced_only("FW 902")
    before = priced_only("FW 900").model_copy(
        update={"status": PartStatus.SUPERSEDED, "superseded_by": "FW 902", "item_number": "4711"}
    )
    put(shelf, leads("A 1", "B-1", "Aldertarn", OTHER), leads("B-1", "FW 900", same=True), entries=(before, now))
    (trace,) = shelf.parts(DRAFT).traces(PartRef("a1"))
    assert [one.kind for one in trace.steps] == [
        NumberStepKind.EQUIVALENT,
        NumberStepKind.SAME,
        NumberStepKind.SUCCESSOR,
    ]
    assert (trace.item, trace.current, trace.maker) == (before.ref, now.ref, "Aldertarn")
    (item,) = shelf.parts(DRAFT).traces(PartRef("4711"))
    assert [one.kind for one in item.steps] == [NumberStepKind.ITEM_NUMBER, NumberStepKind.SUCCESSOR]
    assert item.is_same_part
    assert not trace.is_same_part


def test_a_gtin_is_found_with_and_without_the_noughts_before_it(shelf: CatalogueShelf) -> None:
    # a GTIN-12 as GTIN-13 and GTIN-14 has noughts in front (GS1 General Specifications, "GTIN in a database field")
    part = priced_only().model_copy(update={"gtin": "012345678905"})
    put(shelf, entries=(part,))
    for written in ("012345678905", "0012345678905", "00012345678905"):
        (trace,) = shelf.parts(DRAFT).traces(PartRef(written))
        assert (trace.steps[0].kind, trace.current) == (NumberStepKind.GTIN, part.ref)


def test_a_number_of_two_makers_has_two_ways_until_a_maker_is_named(shelf: CatalogueShelf) -> None:
    parts = (priced_only("FW 900"), priced_only("FW 901"))
    put(shelf, leads("20-300", "FW 900"), leads("20-300", "FW 901", "Aldertarn"), entries=parts)
    store = shelf.parts(DRAFT)
    assert [one.maker for one in store.traces(PartRef("20-300"))] == ["Aldertarn", OTHER]
    for asked in (PartRef("20-300", "aldertarn"), PartRef("ALDERTARN 20300")):
        assert [one.current for one in store.traces(asked)] == [parts[1].ref]
    assert store.traces(PartRef("20-301")) == ()


def test_a_written_number_goes_before_what_is_only_alike(shelf: CatalogueShelf) -> None:
    parts = (priced_only("FW 900"), priced_only("FW 901"))
    put(shelf, leads("1-23", "FW 900"), leads("12-3", "FW 901", "Aldertarn"), entries=parts)
    assert [one.current for one in shelf.parts(DRAFT).traces(PartRef("12-3"))] == [parts[1].ref]
    assert len(shelf.parts(DRAFT).traces(PartRef("123"))) == 2


def test_a_circle_is_told_and_ends_where_somebody_follows_it(shelf: CatalogueShelf) -> None:
    ring = (leads("A", "B", to_maker=OTHER), leads("B", "C", to_maker=OTHER), leads("C", "A", to_maker=OTHER))
    tail = leads("T", "A", to_maker=OTHER)
    put(shelf, *ring, tail)
    assert going_round({one.ref: one for one in (*ring, tail)}) == ring
    (trace,) = shelf.parts(DRAFT).traces(PartRef("T"))
    assert trace.current is None
    assert len(trace.steps) == 4
    wanted = {fault.wanted for fault in edition_faults((), (*ring, tail))}
    assert wanted == {"a number that does not lead back to this one"}


def test_what_leads_nowhere_or_renames_a_part_keeps_an_edition_back() -> None:
    astray, renamed = leads("B 1", "FW 999"), leads("FW 900", "FW 901", MAKER)
    entries = (priced_only("FW 900"), priced_only("FW 901"))
    found = {(fault.ref.number, fault.column) for fault in edition_faults(entries, (astray, renamed))}
    assert found == {("B 1", "part_number"), ("FW 900", "number")}
    with pytest.raises(ValidationError, match="lead to itself"):
        leads("B 1", "B 1", OTHER, OTHER)


def test_another_number_of_the_very_part_is_the_part_and_an_equivalent_is_not(shelf: CatalogueShelf) -> None:
    part = swivel()
    put(shelf, leads("OLD 1", part.number, MAKER, same=True), leads("B 1", part.number), entries=(part,))
    store = shelf.parts(DRAFT)
    assert store.read_ref("OLD 1") == part.ref
    assert store.read_ref("B 1") == PartRef("B 1")
    found = store.under_other_numbers((PartRef("OLD 1", MAKER), PartRef("B 1", OTHER), PartRef("?")))
    assert {ref.number: one.ref for ref, one in found.items()} == {"OLD 1": part.ref}


numbers = st.text("AbÄя中9٤/.-+", min_size=1, max_size=8).map(lambda text: f"9{text}")
makers = st.sampled_from(["Brackwater", "=Thrap", "'+Well", "Ö und Söhne"])
references = st.builds(
    CrossReference,
    number=numbers,
    maker=makers,
    part_number=numbers.map(lambda text: f"P{text}"),
    part_maker=makers,
    relation=st.sampled_from(NumberRelation),
    remark=st.text("aÄ中'=+-@\",;… \n", max_size=20).map(str.strip),
)


@given(found=st.lists(references, max_size=12, unique_by=lambda one: one.ref))
@settings(max_examples=up_to(60), deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_the_exchange_file_gives_the_same_old_numbers_and_the_same_bytes(
    found: list[CrossReference], tmp_path: Path
) -> None:
    content = exchange_bytes([priced_only()], found)
    path = tmp_path / "exchange.zip"
    path.write_bytes(content)
    with ExchangeReader(path) as reader:
        entries = list(reader.entries())
        assert reader.references == {one.ref: one for one in found}
    assert reader.problems == []
    assert exchange_bytes(entries, reversed(list(reader.references.values()))) == content


def test_an_unsound_old_number_in_an_exchange_file_is_told_with_its_line(tmp_path: Path) -> None:
    from zipfile import ZipFile

    path = tmp_path / "exchange.zip"
    path.write_bytes(exchange_bytes([priced_only()], [leads("B 1", "FW 900"), leads("B 2", "FW 900")]))
    changed = tmp_path / "changed.zip"
    with ZipFile(path) as was, ZipFile(changed, "w") as now:
        for name in was.namelist():
            text = was.read(name)
            now.writestr(
                name, text.replace(b"B 2,", b"B 1,").replace(b"FW 900,", b"?,", 1) if "cross" in name else text
            )
    with ExchangeReader(changed) as reader:
        assert len(reader.references) == 1
    assert any("cross_references.csv, line 2" in str(one) and "part_number" in str(one) for one in reader.problems)


def test_only_letters_and_digits_count_where_numbers_are_compared(shelf: CatalogueShelf) -> None:
    part = priced_only("FW 900")
    put(shelf, leads("X-1/2.3 a", "FW 900"), entries=(part,))
    assert [one.current for one in shelf.parts(DRAFT).traces(PartRef("x123A"))] == [part.ref]
