"""An offer seen through columns is the offer seen part by part; the part by part view is the plain reading of terms."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest

from planning.quoting_terms import list_of, terms_of
from planning.stores import ListStore
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import HANGING_KINDS, Part, PartKind
from spoutline.model.part_columns import columns_of
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import BreakawayWish, HoseWish, OptionTerms
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.sellable import PartRow
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.refit.part_stores import OfferedParts, OfferedPrices, keeps

_EUROS = "EUR"


@pytest.fixture(scope="module")
def parts(catalogue: CatalogueStore) -> ListStore:
    """Return the demonstration's parts that hang; every third has no price in dollars, some come in an article."""
    found = [part for kind in HANGING_KINDS for part in catalogue.candidates(CandidateFilter(kind=kind))]
    hose = next(part for part in found if part.kind is PartKind.CURB_HOSE and part.inlet is not None)
    assert hose.inlet is not None
    included = replace(
        hose, number="ZZ-H900", inlet=replace(hose.inlet, made_up_in=f"{hose.maker} ZZ-N900/2"), prices=hose.prices
    )
    dollarless = [
        replace(part, prices=tuple(price for price in part.prices if price.currency != "USD")) if at % 3 == 0 else part
        for at, part in enumerate(found)
    ]
    return ListStore([*dollarless, included])


def pricer(parts: ListStore) -> Pricer:
    """Price one maker by a list, one part by hand, and leave the rest to the catalogue."""
    listed = {part.number: {1: "40.00", 12: "35.00"} for part in parts.all[::2]}
    lists = [list_of(listed, maker=maker) for maker in ("Larkspindle Couplings", "Quillmere Forgeworks")]
    by_hand = {"part": parts.all[1].number, "unit_price": "12.34", "reason": "agreed", "by": "A. Fenn"}
    terms = terms_of(overrides=[by_hand])
    return Pricer(terms, PriceBook(lists, terms.heading.dated))


def test_a_row_of_columns_is_priced_as_its_part_is(parts: ListStore) -> None:
    asked = pricer(parts)
    for kind in HANGING_KINDS:
        columns = parts.columns(kind)
        for row in range(len(columns)):
            seen = PartRow(columns, row)
            part = parts.part(seen.ref)
            assert part is not None
            assert (seen.kind, seen.is_included) == (part.kind, part.is_included)
            assert [seen.price_minor(one) for one in ("USD", _EUROS)] == [
                part.price_minor(one) for one in ("USD", _EUROS)
            ]
            for quantity in (1, 12):
                assert pricer(parts).unit_price(seen, quantity) == asked.unit_price(part, quantity)
    assert PartRow(parts.columns(PartKind.CURB_HOSE), _row(parts, "ZZ-H900")).is_included


def _row(parts: ListStore, number: str) -> int:
    columns = parts.columns(PartKind.CURB_HOSE)
    return next(row for row in range(len(columns)) if columns.number_at(row) == number)


def belongs(part: Part, option: OptionTerms, family: LiquidFamily) -> bool:
    """Say what the words of an option mean for a part."""
    if part.breakaway is not None and option.breakaway is not BreakawayWish.ANY:
        return part.breakaway.reconnectable == (option.breakaway is BreakawayWish.RECONNECTABLE)
    if part.hose is not None and option.hose is HoseWish.LOW_PERMEATION and family is LiquidFamily.GASOLINE:
        return part.hose.low_permeation
    return True


@pytest.mark.parametrize(("breakaway", "hose"), tuple(product(BreakawayWish, HoseWish)))
def test_the_columns_of_an_offer_are_those_of_its_parts(
    breakaway: BreakawayWish, hose: HoseWish, parts: ListStore
) -> None:
    option = OptionTerms(title="x", breakaway=breakaway, hose=hose)
    for family in (LiquidFamily.GASOLINE, LiquidFamily.DIESEL):
        prices = OfferedPrices(pricer(parts))
        offer = OfferedParts(parts, keeps(option, family), prices)
        for kind in HANGING_KINDS:
            wanted = [part for part in parts.all if part.kind is kind and belongs(part, option, family)]
            assert [part.ref for part in offer.candidates(CandidateFilter(kind=kind))] == [part.ref for part in wanted]
            of_parts = columns_of(kind, map(prices.part, wanted))
            seen = offer.columns(kind)
            assert [seen.ref_at(row) for row in range(len(seen))] == [part.ref for part in wanted]
            assert seen.price_minor("USD").tolist() == pytest.approx(of_parts.price_minor("USD").tolist(), nan_ok=True)


def test_a_part_asked_for_belongs_to_an_offer_that_wishes_for_others(parts: ListStore) -> None:
    """What is asked for by its number comes beside the wish, no more."""
    option = OptionTerms(title="x", breakaway=BreakawayWish.SINGLE_USE)
    asked = next(part for part in parts.all if part.breakaway is not None and part.breakaway.reconnectable)
    offer = OfferedParts(parts, keeps(option, LiquidFamily.GASOLINE, (asked.ref,)), OfferedPrices(pricer(parts)))
    wanted = [
        part.ref
        for part in parts.all
        if part.kind is asked.kind and (belongs(part, option, LiquidFamily.GASOLINE) or part.ref == asked.ref)
    ]
    assert asked.ref in wanted
    assert [part.ref for part in offer.candidates(CandidateFilter(kind=asked.kind))] == wanted
    seen = offer.columns(asked.kind)
    assert [seen.ref_at(row) for row in range(len(seen))] == wanted


def test_prices_of_an_offer_are_those_of_its_terms(parts: ListStore) -> None:
    """By hand: the list's 40.00 and the 12.34 agreed; what no list names keeps the price of the catalogue."""
    prices = OfferedPrices(pricer(parts))
    by_hand, listed = parts.all[1], next(one for one in parts.all[::2] if one.maker == "Larkspindle Couplings")
    unlisted = next(one for one in parts.all if one.maker == "Thistledown Hosewrights" and not one.is_included)
    assert prices.part(by_hand).price_minor("USD") == 1234
    assert prices.part(listed).price_minor("USD") == 4000
    assert prices.part(unlisted).price_minor("USD") == unlisted.price_minor("USD")
    included = parts.part(PartRef("ZZ-H900", next(one.maker for one in parts.all if one.number == "ZZ-H900")))
    assert included is not None
    assert prices.part(included).price_minor("USD") == 0
