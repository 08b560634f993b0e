"""From list price to the customer's price: exchange, buying discount, discount or mark-up or margin, rounding."""

from __future__ import annotations

from decimal import Decimal, localcontext

from spoutline.model.part_ref import PartRef
from spoutline.model.price_gap import GapReason
from spoutline.model.pricing import FoundPrice, PriceGap, UnitPrice
from spoutline.model.quotation_terms import Selling, SellingMethod, Terms
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.rounding import EXACT, rounded
from spoutline.planning.pricing.sellable import Sellable

_HUNDRED = Decimal(100)


class Pricer:
    """Prices parts under one set of terms; every answer is kept, so that asking again costs nothing."""

    def __init__(self, terms: Terms, book: PriceBook) -> None:
        self.terms = terms
        self.book = book
        self._rates = {terms.currency: Decimal(1), **{one.currency: one.rate for one in terms.exchange}}
        self._currencies = (terms.currency, *(one.currency for one in terms.exchange if one.currency != terms.currency))
        self._known: dict[tuple[PartRef, int], UnitPrice | PriceGap] = {}

    def unit_price(self, part: Sellable, quantity: int) -> UnitPrice | PriceGap:
        """Return the price of one piece where ``quantity`` pieces are ordered, or why there is none."""
        key = (part.ref, quantity)
        if key not in self._known:
            self._known[key] = self._found(part, quantity) if not part.is_included else self._included(part)
        return self._known[key]

    def _found(self, part: Sellable, quantity: int) -> UnitPrice | PriceGap:
        found = self.book.find(part, quantity, self._currencies)
        return found if isinstance(found, PriceGap) else self._made(part, found)

    def _included(self, part: Sellable) -> UnitPrice:
        """Return the price of a part that comes in an article, which carries the price of all."""
        nothing = Decimal(0)
        return UnitPrice(
            part=part.ref,
            list_id="",
            list_currency=self.terms.currency,
            list_price=nothing,
            from_quantity=1,
            discount_group="",
            exchange_rate=Decimal(1),
            buying_percent=nothing,
            cost=nothing,
            unit_price=nothing,
        )

    def steps(self, part: Sellable) -> tuple[int, ...]:
        """Return the quantities from which another price holds, rising; empty where there is no price at all."""
        if part.is_included:
            return ()
        found = self.book.find(part, _MANY, self._currencies)
        return () if isinstance(found, PriceGap) else tuple(step.from_quantity for step in found.row.breaks)

    def _made(self, part: Sellable, found: FoundPrice) -> UnitPrice | PriceGap:
        group, listed = found.row.discount_group, found.reached.unit_price
        rate = self._rates[found.price_list.currency]
        stated = self._buying_percent(found.price_list.maker, group)
        buying = stated or Decimal(0)
        percent = selling_percent(self.terms.selling, part, group)
        with localcontext(EXACT):
            at_list = listed * rate
            cost = at_list * (_HUNDRED - buying) / _HUNDRED
            asked = _asked(self.terms.selling.method, at_list, cost, percent)
        rounding = self.terms.rounding
        price = rounded(asked, rounding.unit_step, rounding.mode)
        if price == 0 < asked:
            detail = f"{asked.normalize():f}, {rounding.unit_step}"
            return PriceGap(part=part.ref, reason=GapReason.ROUNDS_TO_NOTHING, detail=detail)
        return UnitPrice(
            part=part.ref,
            list_id=found.price_list.id,
            list_currency=found.price_list.currency,
            list_price=listed,
            from_quantity=found.reached.from_quantity,
            discount_group=group,
            exchange_rate=rate,
            buying_percent=buying,
            cost=cost,
            unit_price=price,
            is_cost_stated=stated is not None or self.terms.selling.method is not SellingMethod.LIST_LESS_DISCOUNT,
        )

    def _buying_percent(self, maker: str, group: str) -> Decimal | None:
        """Return the discount that names most: maker and group, then maker, then group, then neither; None for none."""
        fitting = [one for one in self.terms.buying if one.maker in ("", maker) and one.group in ("", group)]
        best = max(fitting, key=lambda one: (bool(one.maker), bool(one.group)), default=None)
        return best.percent if best else None


_MANY = 10**9  # above any quantity that a station orders: every break is reached


def selling_percent(selling: Selling, part: Sellable, group: str) -> Decimal:
    """Return the percentage of the exception that names most (group and kind, group, kind), else the general one."""
    fitting = [one for one in selling.exceptions if one.kind in (None, part.kind) and one.group in ("", group)]
    best = max(fitting, key=lambda one: (bool(one.group), one.kind is not None), default=None)
    return best.percent if best else selling.percent


def _asked(method: SellingMethod, at_list: Decimal, cost: Decimal, percent: Decimal) -> Decimal:
    match method:
        case SellingMethod.LIST_LESS_DISCOUNT:
            return at_list * (_HUNDRED - percent) / _HUNDRED
        case SellingMethod.MARK_UP_ON_COST:
            return cost * (_HUNDRED + percent) / _HUNDRED
        case SellingMethod.MARGIN_ON_PRICE:
            return cost * _HUNDRED / (_HUNDRED - percent)
