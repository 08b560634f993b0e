"""What the list of quotations shows of each, in columns of its own: written from a quotation, read as an entry."""

from __future__ import annotations

from datetime import UTC, datetime
from decimal import Decimal

from spoutline.book.quotation_amounts import amounts_of
from spoutline.book.quotation_records import (
    QuotationEntry,
)
from spoutline.book.quotation_tables import (
    QuotationRow,
)
from spoutline.model.plain_values import without_hidden_signs
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus


def describe(row: QuotationRow, quotation: Quotation, now: datetime) -> None:
    """Write into a row what the list shows of a quotation, last changed ``now``."""
    heading, site = quotation.terms.heading, quotation.pins.survey.site
    row.number, row.customer, row.site = heading.number, quotation.terms.customer.name, site.name
    row.search_text = f"{row.number}\n{row.customer}\n{row.site}".casefold()
    row.survey_id = quotation.pins.survey_id
    row.valid_to = quotation.valid_to
    list_amounts(row, quotation, "")
    row.changed_at = now


def list_amounts(row: QuotationRow, quotation: Quotation, ordered: str) -> None:
    """Write the amounts into a row, of the option titled ``ordered`` alone where one is named."""
    for name, value in amounts_of(quotation, ordered).columns.items():
        setattr(row, name, value)


def entry_of(row: QuotationRow) -> QuotationEntry:
    """Return a row as the list shows it."""
    return QuotationEntry(
        id=row.id,
        number=without_hidden_signs(row.number),
        customer=without_hidden_signs(row.customer),
        site=without_hidden_signs(row.site),
        status=QuotationStatus(row.status),
        revision=row.revision,
        valid_to=row.valid_to,
        changed_at=row.changed_at.replace(tzinfo=UTC),
        dated=row.dated,
        currency=row.currency or "",
        total_low=_amount(row.total_low),
        total_high=_amount(row.total_high),
        margin_low=_amount(row.margin_low),
        margin_high=_amount(row.margin_high),
        follow_up=row.follow_up,
    )


def _amount(text: str | None) -> Decimal | None:
    return None if text is None else Decimal(text)
