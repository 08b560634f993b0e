"""The terms in hand as values: whose word counts, and which day they bear."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import Decimal

import pytest

from planning.quoting_terms import DAY, terms_of
from spoutline.gui.pages.quotation.terms import TermsInHand, dated_today
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import PriceOverride

ONE, TWO = PartRef("X-1"), PartRef("X-2")


def word(part: str, price: str) -> PriceOverride:
    return PriceOverride(part=part, unit_price=Decimal(price), by="Odile", reason="agreed")


def test_the_last_word_about_a_part_counts_and_can_be_taken_back() -> None:
    written = terms_of(overrides=[{"part": "X-1", "unit_price": "5", "by": "Ruben", "reason": "old list"}])
    hand = TermsInHand(title="", base=written).answered(ONE, word("X-1", "6")).answered(TWO, word("X-2", "7"))
    again = hand.answered(ONE, word("X-1", "8"))
    assert {one.part: one.unit_price for one in again.overrides} == {ONE: Decimal(8), TWO: Decimal(7)}
    assert len(again.answers) == 2
    assert [one.part for one in again.answered(ONE, None).overrides] == [TWO]


@pytest.mark.parametrize(("days", "dated"), [(1, DAY + timedelta(days=1)), (0, DAY), (-1, DAY)])
def test_older_terms_are_dated_today_and_later_ones_keep_their_day(days: int, dated: date) -> None:
    found = dated_today(TermsInHand(title="", base=terms_of()), DAY + timedelta(days=days))
    assert found.terms is not None
    assert found.terms.heading.dated == dated
    unread = TermsInHand(title="", base=None)
    assert dated_today(unread, DAY) is unread
