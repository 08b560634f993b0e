"""Prices before they are quoted: maker's price lists with quantity breaks, and why a price may be missing."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from functools import cached_property

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.price_gap import GapReason


@dataclass(frozen=True, slots=True, order=True)
class PriceBreak:
    """From this quantity on, one piece costs ``unit_price`` in the list's currency."""

    from_quantity: int
    unit_price: Decimal


@frozen(kw_only=True)
class PriceRow:
    """One part in a price list; ``breaks`` rise by quantity, ``discount_group`` is the maker's class of goods."""

    part_number: str
    discount_group: str
    breaks: tuple[PriceBreak, ...]

    def price_at(self, quantity: int) -> PriceBreak | None:
        """Return the break that holds for ``quantity`` pieces; None below the least quantity sold."""
        reached = [step for step in self.breaks if step.from_quantity <= quantity]
        return reached[-1] if reached else None


@dataclass(frozen=True)
class PriceList:
    """One maker's prices in one currency, valid from and to a day, both included; ``valid_to`` None is open."""

    id: str
    maker: str
    currency: str
    valid_from: date
    valid_to: date | None
    rows: tuple[PriceRow, ...]
    supplier: str = ""  # who sells at these prices; empty: whoever sells for the maker

    @cached_property
    def by_number(self) -> dict[str, PriceRow]:
        """The rows by part number."""
        return {row.part_number: row for row in self.rows}

    def holds_on(self, day: date) -> bool:
        """Say whether the list is valid on ``day``."""
        return self.valid_from <= day and (self.valid_to is None or day <= self.valid_to)


@frozen(kw_only=True)
class FoundPrice:
    """A list price with the list it stands in and the break that was reached."""

    price_list: PriceList
    row: PriceRow
    reached: PriceBreak


@frozen(kw_only=True)
class PriceGap:
    """No price for this part, and why; ``detail`` names the list or currency in question."""

    part: PartRef
    reason: GapReason
    detail: str = ""


@frozen(kw_only=True)
class UnitPrice:
    """How a selling price was made, step by step; all amounts exact except the last, which is rounded as agreed.

    ``list_price`` is in the list's currency, everything after it in the quotation's. ``cost`` is what the distributor
    pays; ``unit_price`` what the customer pays for one piece. ``is_cost_stated`` is False where no buying discount of
    the terms fits the part and the price does not rest on its cost: the list price is no cost that anybody stated then.
    """

    part: PartRef
    list_id: str
    list_currency: str
    list_price: Decimal
    from_quantity: int
    discount_group: str
    exchange_rate: Decimal
    buying_percent: Decimal
    cost: Decimal
    unit_price: Decimal
    is_cost_stated: bool = True
