"""Which quotations a change of the catalogue or of a price list touches."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from spoutline.book.quotation_records import StoredQuotation
from spoutline.model.part import PartStatus
from spoutline.model.pricing import PriceGap, PriceList, UnitPrice
from spoutline.model.quotation import Quotation
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


@dataclass(frozen=True, slots=True, kw_only=True)
class TouchedPart:
    """One part of a quotation that is not what it was; ``detail`` names fields, a successor or prices."""

    part_number: str
    touch: Touch
    detail: str


def touched_parts(
    quotation: Quotation, parts: PartStore, lists: Iterable[PriceList], today: date
) -> tuple[TouchedPart, ...]:
    """Return what became of the parts of a quotation, by part number.

    The catalogue's own list prices are left aside: the price lists decide what is quoted, and those are compared as
    they hold on ``today``.
    """
    now = {part.number: part for part in parts.parts([pinned.number for pinned in quotation.pins.parts])}
    pricer = Pricer(quotation.terms, PriceBook(lists, today))
    found: list[TouchedPart] = []
    sold = set(quotation.part_numbers)
    for pinned in quotation.pins.parts:
        if pinned.number not in sold:  # hangs there and stays, whatever became of it in the catalogue
            continue
        part = now.get(pinned.number)
        if part is None:
            found.append(TouchedPart(part_number=pinned.number, touch=Touch.GONE, detail=""))
            continue
        found.extend(_stated(pinned.number, json.loads(pinned.text), json.loads(part_text(part)), part.superseded_by))
        quantities = {line.ordered for option in quotation.options for line in option.lines if line.list_id}
        found.extend(_priced(quotation, pinned.number, {q: pricer.unit_price(part, q) for q in sorted(quantities)}))
    return tuple(found)


def touched_quotations(
    stored: Iterable[StoredQuotation], parts: PartStore, lists: Iterable[PriceList], today: date
) -> tuple[tuple[StoredQuotation, tuple[TouchedPart, ...]], ...]:
    """Return the quotations of which a part or price is not what it was, with those parts."""
    lists = tuple(lists)
    found = ((one, touched_parts(one.quotation, parts, lists, today)) for one in stored)
    return tuple((one, touched) for one, touched in found if touched)


def _stated(
    number: str, before: dict[str, object], after: dict[str, object], superseded_by: str | None
) -> Iterator[TouchedPart]:
    status = after["status"]
    if status != before["status"]:
        if status == PartStatus.SUPERSEDED:
            yield TouchedPart(part_number=number, touch=Touch.SUPERSEDED, detail=superseded_by or "")
        elif status == PartStatus.DISCONTINUED:
            yield TouchedPart(part_number=number, touch=Touch.DISCONTINUED, detail="")
    aside = ("status", "superseded_by", "prices")
    # a figure that an earlier program did not keep is no change of the part
    fields = sorted(name for name in before.keys() & after.keys() if name not in aside and before[name] != after[name])
    if fields:
        yield TouchedPart(part_number=number, touch=Touch.DATA, detail=", ".join(fields))


def _priced(quotation: Quotation, number: str, prices: dict[int, UnitPrice | PriceGap]) -> Iterator[TouchedPart]:
    told: set[tuple[str, str]] = set()
    for option in quotation.options:
        for line in option.lines:
            if line.part_number != number or not line.list_id or line.list_price is None:
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
                yield TouchedPart(part_number=number, touch=touch, detail=detail)
