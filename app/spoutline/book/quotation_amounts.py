"""Day, totals and margins of a quotation for the list of quotations: lowest and highest of its options.

Options are alternatives, so the list tells a range; once one is ordered it tells that one.
"""

from __future__ import annotations

from dataclasses import asdict
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from pydantic import ValidationError

from spoutline.frozen import frozen
from spoutline.model.margin import percent_of
from spoutline.model.quotation import Quotation

if TYPE_CHECKING:
    from collections.abc import Iterable


@frozen(kw_only=True)
class ListedAmounts:
    """What the list tells; margins in percent of the materials, None where no cost is known."""

    dated: date
    currency: str
    total_low: Decimal
    total_high: Decimal
    margin_low: Decimal | None
    margin_high: Decimal | None

    @property
    def columns(self) -> dict[str, Any]:
        """The values of the row's columns; amounts as exact texts."""
        return {name: f"{one:f}" if isinstance(one, Decimal) else one for name, one in asdict(self).items()}


def amounts_of(quotation: Quotation, ordered: str = "") -> ListedAmounts:
    """Return the amounts of a quotation, of the option titled ``ordered`` alone where one is named."""
    options = [one for one in quotation.options if one.title == ordered] or list(quotation.options)
    totals = [one.total for one in options]
    margins = list(_known(percent_of(one.margin) for one in options if len(one.uncosted_lines) < len(one.lines)))
    return ListedAmounts(
        dated=quotation.terms.heading.dated,
        currency=quotation.terms.currency,
        total_low=min(totals),
        total_high=max(totals),
        margin_low=min(margins, default=None),
        margin_high=max(margins, default=None),
    )


def amounts_in_document(document: str, ordered: str) -> ListedAmounts | None:
    """Return the amounts of a kept document; None where it cannot be read as it stands."""
    try:
        return amounts_of(Quotation.model_validate_json(document), ordered)
    except ValidationError:
        return None


def _known(percents: Iterable[Decimal | None]) -> Iterable[Decimal]:
    return (one for one in percents if one is not None)
