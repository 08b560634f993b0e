"""How many of the hoses each option covers, and what that does to a comparison."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.quotation.figures import money, signed
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import CommonAmounts, QuotedOption


def covers_text(option: QuotedOption, story: Story) -> str:
    """Return how many of the hoses an option covers."""
    return story.phrases.fill("covers_hoses", count=option.covered, all=len(option.positions))


def common_text(common: CommonAmounts, currency: str, story: Story) -> str:
    """Return the difference in price to the first option for the hoses that both cover."""
    if not common.labels:
        return story.phrases.text["common_none"]
    return story.phrases.fill(
        "common_difference",
        difference=f"{signed(common.difference, currency, story.writing)} {currency}",
        count=len(common.labels),
        own=money(common.own_total, currency, story.writing),
        first=money(common.first_total, currency, story.writing),
    )


def coverage_rows(quotation: Quotation, story: Story) -> Iterator[Named]:
    """Return what page one says: how many hoses each option covers, which it leaves out and who answers for that."""
    several = len(quotation.options) > 1
    for number, option in enumerate(quotation.options, start=1):
        title = f"{story.word(Word.OPTION)} {number}, {option.title}" if several else story.word(Word.HOSES_COVERED)
        text = [covers_text(option, story)]
        if not option.is_complete:
            labels = ", ".join(one.label for one in option.without_set)
            text.append(story.phrases.fill("leaves_out", positions=labels))
        text += [
            story.phrases.fill("incomplete_word", by=one.by, reason=one.reason)
            for one in quotation.incomplete_words
            if one.option == option.title
        ]
        if option.on_common is not None:
            text.append(common_text(option.on_common, quotation.terms.currency, story))
        yield Named(title, "; ".join(text))
