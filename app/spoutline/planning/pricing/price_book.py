"""Which price list holds for a part on the day of the quotation."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from spoutline.model.price_gap import GapReason
from spoutline.model.pricing import FoundPrice, PriceGap, PriceList
from spoutline.planning.pricing.sellable import Sellable


class PriceBook:
    """Every price list at hand, asked for one day.

    Of several valid lists of a maker, one in the wanted currency comes first; of those the one that began last.
    """

    def __init__(self, lists: Iterable[PriceList], day: date) -> None:
        self.day = day
        self._by_maker: dict[str, list[PriceList]] = {}
        for one in lists:
            self._by_maker.setdefault(one.maker, []).append(one)

    def find(self, part: Sellable, quantity: int, currencies: tuple[str, ...]) -> FoundPrice | PriceGap:
        """Return the list price of ``part`` for ``quantity`` pieces.

        ``currencies`` are those that can be reckoned with, the quotation's own first.
        """
        maker = part.ref.maker
        lists = self._by_maker.get(maker, [])
        if not lists:
            return PriceGap(part=part.ref, reason=GapReason.NO_LIST, detail=maker)
        valid = [one for one in lists if one.holds_on(self.day)]
        if not valid:
            return self._outdated(part, lists)
        usable = [one for one in valid if one.currency in currencies]
        if not usable:
            known = ", ".join(sorted({one.currency for one in valid}))
            return PriceGap(part=part.ref, reason=GapReason.NO_EXCHANGE_RATE, detail=known)
        usable.sort(key=lambda one: (currencies.index(one.currency), -one.valid_from.toordinal(), one.id))
        return _in_first(part, quantity, usable)

    def _outdated(self, part: Sellable, lists: list[PriceList]) -> PriceGap:
        """Name the list that comes nearest: the one that ran out last, or else the one that begins first."""
        gone = [one for one in lists if one.valid_to is not None and one.valid_to < self.day]
        if gone:
            last = max(gone, key=lambda one: (one.valid_to or date.min, one.id))
            return PriceGap(part=part.ref, reason=GapReason.EXPIRED, detail=f"{last.id}, {last.valid_to}")
        first = min(lists, key=lambda one: (one.valid_from, one.id))
        return PriceGap(part=part.ref, reason=GapReason.NOT_YET_VALID, detail=f"{first.id}, {first.valid_from}")


def _in_first(part: Sellable, quantity: int, lists: list[PriceList]) -> FoundPrice | PriceGap:
    """Return the price in the first list that names the part: a list of the second choice may still hold it."""
    short: PriceGap | None = None
    ref = part.ref
    for one in lists:
        row = one.by_number.get(ref.number)
        if row is None:
            continue
        reached = row.price_at(quantity)
        if reached is not None:
            return FoundPrice(price_list=one, row=row, reached=reached)
        least = row.breaks[0].from_quantity
        short = short or PriceGap(part=ref, reason=GapReason.BELOW_LEAST_QUANTITY, detail=f"{one.id}, {least}")
    return short or PriceGap(part=ref, reason=GapReason.NOT_LISTED, detail=lists[0].id)
