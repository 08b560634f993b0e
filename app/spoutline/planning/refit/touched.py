"""Which quotations a change of the catalogue or of a price list touches."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from datetime import date
from enum import StrEnum

from spoutline.book.quotation_records import StoredQuotation
from spoutline.frozen import frozen
from spoutline.model.part import PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceGap, PriceList, UnitPrice
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedAlternate, QuotedLine
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.protocols import PartStore
from spoutline.planning.refit.pins import part_text


class Touch(StrEnum):
    """How a quoted part differs today."""

    GONE = "gone"  # the catalogue no longer holds it
    SUPERSEDED = "superseded"
    DISCONTINUED = "discontinued"
    DATA = "data"  # something that the catalogue states about it
    PRICE = "price"  # another list price today
    PRICE_GONE = "price_gone"


@frozen(kw_only=True)
class TouchedPart:
    """One part of a quotation that is not what it was; ``detail`` names fields, a successor or prices."""

    part: PartRef
    touch: Touch
    detail: str


def touched_parts(
    quotation: Quotation, parts: PartStore, lists: Iterable[PriceList], today: date
) -> tuple[TouchedPart, ...]:
    """Return what became of the parts of a quotation, alternates offered among them, by part number.

    The catalogue's own list prices are left aside: the price lists decide what is quoted, and those are compared as
    they hold on ``today``.
    """
    now = {part.ref: part for part in parts.parts([pinned.ref for pinned in quotation.pins.parts])}
    pricer = Pricer(quotation.terms, PriceBook(lists, today))
    found: list[TouchedPart] = []
    sold = quotation.offered_parts
    for pinned in quotation.pins.parts:
        ref = pinned.ref
        if ref not in sold:  # hangs there and stays, whatever became of it in the catalogue
            continue
        part = now.get(ref)
        if part is None:
            found.append(TouchedPart(part=ref, touch=Touch.GONE, detail=""))
            continue
        found.extend(_stated(ref, json.loads(pinned.text), json.loads(part_text(part)), part.successor))
        quantities = {line.ordered for line in _listed(quotation)}
        found.extend(_priced(quotation, ref, {q: pricer.unit_price(part, q) for q in sorted(quantities)}))
    return tuple(found)


def touched_quotations(
    stored: Iterable[StoredQuotation], parts: PartStore, lists: Iterable[PriceList], today: date
) -> tuple[tuple[StoredQuotation, tuple[TouchedPart, ...]], ...]:
    """Return the quotations of which a part or price is not what it was, with those parts."""
    lists = tuple(lists)
    found = ((one, touched_parts(one.quotation, parts, lists, today)) for one in stored)
    return tuple((one, touched) for one, touched in found if touched)


def _stated(
    part: PartRef, before: dict[str, object], after: dict[str, object], successor: PartRef | None
) -> Iterator[TouchedPart]:
    status = after["status"]
    if status != before["status"]:
        if status == PartStatus.SUPERSEDED:
            yield TouchedPart(part=part, touch=Touch.SUPERSEDED, detail=_shown(successor, part))
        elif status == PartStatus.DISCONTINUED:
            yield TouchedPart(part=part, touch=Touch.DISCONTINUED, detail="")
    aside = ("status", "superseded_by", "superseded_by_maker", "prices")
    # a figure that an earlier program did not keep is no change of the part
    fields = sorted(name for name in before.keys() & after.keys() if name not in aside and before[name] != after[name])
    if fields:
        yield TouchedPart(part=part, touch=Touch.DATA, detail=", ".join(fields))


def _shown(successor: PartRef | None, part: PartRef) -> str:
    """Return the number of a successor, with its maker where that is another than the part's."""
    if successor is None:
        return ""
    return successor.number if successor.maker == part.maker else str(successor)


def _priced(quotation: Quotation, part: PartRef, prices: dict[int, UnitPrice | PriceGap]) -> Iterator[TouchedPart]:
    told: set[tuple[str, str]] = set()
    for line in _listed(quotation):
        if line.part != part or line.list_price is None:
            continue
        now = prices[line.ordered]
        if isinstance(now, PriceGap):
            key = ("gone", now.reason.value)
            touch, detail = Touch.PRICE_GONE, f"{now.reason.value}: {now.detail}"
        else:
            if (now.list_price, now.list_currency) == (line.list_price, line.list_currency):
                continue
            key = (str(line.list_price), str(now.list_price))
            touch = Touch.PRICE
            detail = f"{line.list_price:f} {line.list_currency} → {now.list_price:f} {now.list_currency}"
        if key not in told:
            told.add(key)
            yield TouchedPart(part=part, touch=touch, detail=detail)


def _listed(quotation: Quotation) -> tuple[QuotedLine | QuotedAlternate, ...]:
    """Return the lines, and what is offered instead of them, whose price came from a list."""
    found: list[QuotedLine | QuotedAlternate] = []
    for option in quotation.options:
        found.extend(line for line in option.lines if line.list_id)
        found.extend(one for one in option.offered_alternates if one.list_id)
    return tuple(found)
