"""Where a quotation stands."""

from __future__ import annotations

from enum import StrEnum


class QuotationStatus(StrEnum):
    """Where a quotation stands."""

    DRAFT = "draft"
    ISSUED = "issued"
    ACCEPTED = "accepted"
    DECLINED = "declined"
    EXPIRED = "expired"
