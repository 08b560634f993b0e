"""The quotation in hand: just made, looked at in the book, or an older revision of it; and which steps it can take."""

from __future__ import annotations

from datetime import date

from spoutline.book.quotation_records import QuotationEntry, QuotationEvent, StoredQuotation
from spoutline.frozen import frozen
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_life import may_become, standing_order
from spoutline.model.quotation_status import QuotationStatus


@frozen(kw_only=True)
class InHand:
    """What the page shows.

    ``stored`` is the newest revision in the book of what is shown; None where the book has none. ``events`` are its
    steps. ``older`` is the revision shown where that is not the newest one. ``sent_before`` is another quotation that
    was sent under the same number: no paper of this one may go out then.
    """

    quotation: Quotation | None = None
    stored: StoredQuotation | None = None
    events: tuple[QuotationEvent, ...] = ()
    older: int | None = None
    sent_before: QuotationEntry | None = None

    @property
    def is_older(self) -> bool:
        """Whether an older revision is shown: to be read, no more."""
        return self.older is not None

    @property
    def is_kept(self) -> bool:
        """Whether the book holds exactly what is shown."""
        return self.is_older or (self.stored is not None and self.stored.quotation == self.quotation)

    @property
    def status(self) -> QuotationStatus | None:
        """Where the newest revision stands; None where the book has none."""
        return self.stored.status if self.stored is not None else None

    @property
    def revision(self) -> int:
        """Revision that what is shown has, or will have once it is kept."""
        if self.older is not None:
            return self.older
        stored = self.stored
        if stored is None or (stored.status is QuotationStatus.ACCEPTED and not self.is_kept):
            return 1
        becomes_new = not self.is_kept and stored.status is not QuotationStatus.DRAFT
        return stored.revision + 1 if becomes_new else stored.revision

    @property
    def was_issued(self) -> bool:
        """Whether what is shown was sent, so that its papers are in the book."""
        if self.is_older:
            sent = {one.revision for one in self.events if one.status is QuotationStatus.ISSUED}
            return self.older in sent
        return self.is_kept and self.status is not None and self.status is not QuotationStatus.DRAFT

    @property
    def may_be_kept(self) -> bool:
        """Whether there is something that the book does not hold yet."""
        return self.quotation is not None and not self.is_kept

    @property
    def may_be_issued(self) -> bool:
        """Whether a kept draft has all its prices."""
        is_draft = self.is_kept and not self.is_older and self.status is QuotationStatus.DRAFT
        return is_draft and self.quotation is not None and not self.quotation.open_lines

    @property
    def may_be_answered(self) -> bool:
        """Whether the customer's answer can be noted."""
        status = self.status
        return (
            self.is_kept and not self.is_older and status is not None and may_become(status, QuotationStatus.ACCEPTED)
        )

    @property
    def ordered(self) -> str:
        """Title of the option that the customer ordered out of several; empty where nothing is known of one."""
        if self.status is not QuotationStatus.ACCEPTED or not self.is_kept or self.is_older:
            return ""
        return next((one.option for one in reversed(self.events) if one.option), "")

    @property
    def order(self) -> int | None:
        """Revision that was ordered, where a later one stands beside it; None where the newest is the order."""
        ordered = standing_order((one.revision, one.status) for one in self.events)
        newest = self.stored.revision if self.stored is not None else None
        return None if ordered == newest else ordered

    @property
    def may_be_revised(self) -> bool:
        """Whether it can be quoted again under its number."""
        status = self.status
        return not self.is_older and status is not None and may_become(status, QuotationStatus.DRAFT)

    def is_over(self, today: date) -> bool:
        """Say whether the last day of the offer lies before ``today``, while nobody has answered it."""
        if self.quotation is None or self.status in (QuotationStatus.ACCEPTED, QuotationStatus.DECLINED):
            return False
        return not self.is_older and self.quotation.valid_to < today
