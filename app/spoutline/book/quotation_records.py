"""What the book hands out about quotations, and the refusals of a stale or impossible step."""

from __future__ import annotations

from datetime import date, datetime
from decimal import Decimal

from spoutline.frozen import frozen
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.worded import Worded


@frozen(kw_only=True)
class QuotationEntry:
    """One line of the list of quotations; ``changed_at`` is in UTC.

    Totals and margins (percent of the materials) are the lowest and highest of the options, or those of the option
    ordered; None where they are not known. ``follow_up`` is the day on which to ask the customer again, None for none.
    """

    id: int
    number: str
    customer: str
    site: str
    status: QuotationStatus
    revision: int
    valid_to: date
    changed_at: datetime
    dated: date | None = None
    currency: str = ""
    total_low: Decimal | None = None
    total_high: Decimal | None = None
    margin_low: Decimal | None = None
    margin_high: Decimal | None = None
    follow_up: date | None = None


@frozen(kw_only=True)
class StoredQuotation:
    """A quotation as the book holds it; ``version`` counts every change of it from 1.

    ``follow_up`` is the day on which to ask the customer again, None for none; it is no part of the quotation.
    """

    id: int
    revision: int
    version: int
    status: QuotationStatus
    quotation: Quotation
    follow_up: date | None = None


@frozen(kw_only=True)
class QuotationEvent:
    """One step in the life of a quotation; ``at`` is in UTC, ``option`` the title of the one ordered out of several."""

    revision: int
    status: QuotationStatus
    at: datetime
    by: str
    note: str
    option: str = ""


@frozen(kw_only=True)
class IssuedPapers:
    """The papers of an issued revision, byte for byte as they were sent.

    ``html`` is the paper for screen readers and mails; empty where a version that did not keep it issued the revision.
    """

    pdf: bytes
    workbook: bytes
    html: bytes = b""


class StaleQuotation(Exception):
    """Somebody changed the quotation in the meantime; ``stored`` is what the book holds now. Nothing was written."""

    def __init__(self, stored: StoredQuotation) -> None:
        self.stored = stored
        super().__init__(
            Worded(
                "The quotation {heading_number} was changed by somebody else in the meantime (it is "
                "now {status}, revision {revision}). Nothing was overwritten.",
                heading_number=stored.quotation.terms.heading.number,
                status=stored.status,
                revision=stored.revision,
            )
        )
