"""Price lists of a catalogue: kept by edition, handed on in the exchange file, applied on a day."""

from __future__ import annotations

import zipfile
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.bootstrap import Workbench
from spoutline.catalogue.list_store import list_from_text, list_text
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice
from spoutline.model.faults import InputFault
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.planning.keeping.health import Matter
from spoutline.planning.pricing.applying import ListStanding, PriceAsked, price_answer

NAME, MAKER = "Office list", "Fennel Works"
REF = PartRef("FX-1", MAKER)
# the file is invented; its expected prices are read off it by eye
FILE = """number,group,from_quantity,unit_price
FX-1,couplings,1,12.50
FX-1,couplings,10,11.00
FX-2,hoses,5,40.00
"""
HEAD = {
    "id": "fennel-h2",
    "maker": MAKER,
    "supplier": "Larch Supply",
    "currency": "USD",
    "valid_from": date(2026, 7, 1),
    "valid_to": date(2026, 12, 31),
}


@pytest.fixture
def office(own_workbench: Workbench, tmp_path: Path) -> Workbench:
    """Return use cases over a book with a catalogue of two undescribed parts and one price list in its draft."""
    service = own_workbench.catalogues()
    service.create(NAME)
    with service.shelf().draft(NAME) as desk:
        desk.put(
            CatalogueEntry(number=number, maker=MAKER, prices=(EntryPrice(currency="USD", minor=1300),))
            for number in ("FX-1", "FX-2")
        )
    file = tmp_path / "prices.csv"
    file.write_text(FILE)
    service.prices().import_file(NAME, file, HEAD)
    return own_workbench


def asked(day: date, quantity: int = 1, *currencies: str, supplier: str = "") -> PriceAsked:
    return PriceAsked(part=REF, quantity=quantity, day=day, currencies=currencies, supplier=supplier)


def test_an_edition_keeps_its_lists(office: Workbench) -> None:
    service = office.catalogues()
    draft = EditionRef(NAME, is_draft=True)
    first = service.publish(NAME, notes="first", publisher="Ada Fenn", on=date(2026, 11, 1))
    assert not service.shelf().catalogue(NAME).has_changes
    service.prices().remove(NAME, "fennel-h2")
    assert service.shelf().catalogue(NAME).has_changes
    second = service.publish(NAME, notes="no list", publisher="Ada Fenn", on=date(2026, 11, 2))
    assert [one.id for one in service.shelf().price_lists(first.ref)] == ["fennel-h2"]
    assert service.shelf().price_lists(second.ref) == service.shelf().price_lists(draft) == ()
    assert first.fingerprint != second.fingerprint


def test_a_discarded_draft_has_the_lists_of_its_edition(office: Workbench) -> None:
    service = office.catalogues()
    service.publish(NAME, notes="first", publisher="Ada Fenn", on=date(2026, 11, 1))
    service.prices().remove(NAME, "fennel-h2")
    service.discard_draft(NAME)
    assert not service.shelf().catalogue(NAME).has_changes
    assert [one.id for one in service.shelf().price_lists(EditionRef(NAME, is_draft=True))] == ["fennel-h2"]


def test_the_exchange_file_hands_lists_on(office: Workbench, tmp_path: Path) -> None:
    service = office.catalogues()
    content = service.export(EditionRef(NAME, is_draft=True))
    file = tmp_path / "office.zip"
    file.write_bytes(content)
    service.create("Copy")
    service.import_exchange(file, "Copy")
    copy = EditionRef("Copy", is_draft=True)
    assert service.shelf().price_lists(copy) == service.shelf().price_lists(EditionRef(NAME, is_draft=True))
    assert service.export(copy) == content


def test_a_price_without_its_list_is_refused(office: Workbench, tmp_path: Path) -> None:
    service = office.catalogues()
    whole, broken = tmp_path / "whole.zip", tmp_path / "broken.zip"
    whole.write_bytes(service.export(EditionRef(NAME, is_draft=True)))
    with zipfile.ZipFile(whole) as source, zipfile.ZipFile(broken, "w") as target:
        for name in source.namelist():
            text = source.read(name).decode()
            target.writestr(name, text.replace("fennel-h2", "other") if name == "price_lists.csv" else text)
    service.create("Copy")
    with pytest.raises(InputFault, match="fennel-h2"):
        service.import_exchange(broken, "Copy")
    assert service.shelf().price_lists(EditionRef("Copy", is_draft=True)) == ()


@pytest.mark.parametrize(("quantity", "price"), [(1, "12.50"), (9, "12.50"), (10, "11.00"), (500, "11.00")], ids=str)
def test_the_break_that_was_reached_sets_the_price(office: Workbench, quantity: int, price: str) -> None:
    draft = EditionRef(NAME, is_draft=True)
    found = office.catalogues().prices().price(draft, asked(date(2026, 8, 1), quantity)).applies
    assert found is not None
    assert found.reached.unit_price == Decimal(price)
    assert found.row.discount_group == "couplings"


def made(name: str, begins: date, ends: date | None, currency: str = "USD", supplier: str = "") -> PriceList:
    rows = (PriceRow(part_number="FX-1", discount_group="", breaks=(PriceBreak(1, Decimal(10)),)),)
    return PriceList(name, MAKER, currency, begins, ends, rows, supplier)


def test_each_list_says_why_it_does_not_apply() -> None:
    lists = (
        made("gone", date(2025, 1, 1), date(2025, 12, 31)),
        made("older", date(2026, 1, 1), None),
        made("newer", date(2026, 6, 1), None),
        made("euro", date(2026, 6, 1), None, currency="EUR"),
        made("coming", date(2027, 1, 1), None),
    )
    answer = price_answer(asked(date(2026, 8, 1), 1, "USD"), lists)
    assert {one.price_list.id: one.standing for one in answer.verdicts} == {
        "newer": ListStanding.APPLIES,
        "older": ListStanding.COMES_AFTER,
        "euro": ListStanding.OTHER_CURRENCY,
        "coming": ListStanding.NOT_YET_VALID,
        "gone": ListStanding.EXPIRED,
    }


def test_first_and_last_day_belong_to_a_list() -> None:
    lists = (made("one", date(2026, 7, 1), date(2026, 12, 31)),)
    days = (date(2026, 6, 30), date(2026, 7, 1), date(2026, 12, 31), date(2027, 1, 1))
    assert [price_answer(asked(day), lists).applies is not None for day in days] == [False, True, True, False]


def test_only_the_lists_of_a_supplier_are_asked() -> None:
    lists = (
        made("larch", date(2026, 1, 1), None, supplier="Larch Supply"),
        made("alder", date(2026, 6, 1), None, supplier="Alder Trade"),
    )
    found = price_answer(asked(date(2026, 8, 1), supplier="Larch Supply"), lists).applies
    assert found is not None
    assert found.price_list.id == "larch"


@given(
    st.lists(
        st.tuples(
            st.text("AZ/.-+ é", min_size=1, max_size=8),
            st.text(max_size=5),
            st.dictionaries(st.integers(1, 100), st.decimals("0.01", "9999", places=2), min_size=1, max_size=3),
        ),
        max_size=5,
        unique_by=lambda row: row[0],
    )
)
def test_stored_text_gives_the_list_again(rows: list[tuple[str, str, dict[int, Decimal]]]) -> None:
    kept = tuple(
        PriceRow(
            part_number=number,
            discount_group=group,
            breaks=tuple(PriceBreak(quantity, price) for quantity, price in sorted(breaks.items())),
        )
        for number, group, breaks in sorted(rows)
    )
    one = PriceList("any", MAKER, "USD", date(2026, 1, 1), None, kept, "Larch")
    assert list_from_text(list_text(one)) == one


@pytest.mark.parametrize(
    ("today", "matter"),
    [
        (date(2026, 11, 28), None),  # more than thirty days before its last day
        (date(2026, 12, 20), Matter.LIST_EXPIRES),
        (date(2027, 1, 1), Matter.LIST_EXPIRED),
    ],
    ids=str,
)
def test_health_tells_of_lists_that_end(office: Workbench, today: date, matter: Matter | None) -> None:
    notes = office.catalogues().health(EditionRef(NAME, is_draft=True), today, "us_general")
    told = [note.matter for note in notes if note.price_list == "fennel-h2"]
    assert told == ([] if matter is None else [matter])
