"""What a quotation was made from, word for word."""

from __future__ import annotations

import json
from datetime import date
from decimal import Decimal
from typing import Any

from pydantic import field_serializer

from spoutline.model.answered import answered_document
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.kept_record import KeptRecord
from spoutline.model.limit import LimitStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Survey


class PinnedPart(KeptRecord):
    """A catalogue part as it was when it was quoted, written out in full as JSON."""

    number: str
    text: str
    maker: str = ""

    @property
    def ref(self) -> PartRef:
        """The part; earlier programs wrote its maker into the text only."""
        return PartRef(self.number, self.maker or json.loads(self.text).get("maker", ""))


class PinnedPrice(KeptRecord):
    """A row of a price list as it was used."""

    list_id: str
    maker: str
    currency: str
    valid_from: date
    valid_to: date | None
    part_number: str
    discount_group: str
    breaks: tuple[tuple[int, Decimal], ...]


class PinnedLimit(KeptRecord):
    """A row of the rule tables as it was used; ``value`` is the SI value written as JSON."""

    id: str
    value: str
    printed: str
    printed_unit: str
    source: str
    clause: str
    edition: str
    status: LimitStatus


class Pins(KeptRecord):
    """What a quotation was made from, word for word, so that nothing that changes later can change it."""

    survey: Survey
    survey_id: int | None
    survey_revision: int | None
    survey_fingerprint: str
    catalogue_edition: str
    catalogue: str = DEMONSTRATION  # documents of old know no other
    edition: int | None = None
    rules_edition: str
    jurisdiction_id: str
    jurisdiction_title: str
    program_version: str
    parts: tuple[PinnedPart, ...]
    prices: tuple[PinnedPrice, ...]
    limits: tuple[PinnedLimit, ...]

    @field_serializer("survey", when_used="json")
    def _survey_as_answered(self, survey: Survey) -> dict[str, Any]:
        """Write what was answered alone: written out in full, what was assumed would be read again as answered."""
        return answered_document(survey)
