"""Terms, price lists and parts for the tests of prices and quotations."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.model.quotation_terms import Terms

DAY = date(2026, 11, 25)


def terms_of(**changes: object) -> Terms:
    """Return plain terms with the given tables in place of the usual ones."""
    return Terms.model_validate(
        {
            "seller": {"name": "Hedgerow Supply"},
            "customer": {"name": "Hollow Ford Fuels"},
            "heading": {"number": "HS-1", "dated": DAY},
            **changes,
        }
    )


def list_of(
    prices: dict[str, dict[int, str]],
    *,
    list_id: str = "list-a",
    maker: str = "Larkspindle Couplings",
    currency: str = "USD",
    valid_from: date = date(2026, 1, 1),
    valid_to: date | None = date(2026, 12, 31),
    group: str = "couplings",
) -> PriceList:
    """Return a price list: part number to quantity to price."""
    return PriceList(
        id=list_id,
        maker=maker,
        currency=currency,
        valid_from=valid_from,
        valid_to=valid_to,
        rows=tuple(
            PriceRow(
                part_number=number,
                discount_group=group,
                breaks=tuple(PriceBreak(quantity, Decimal(price)) for quantity, price in sorted(breaks.items())),
            )
            for number, breaks in prices.items()
        ),
    )
