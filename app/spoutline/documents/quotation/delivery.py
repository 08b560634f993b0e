"""The longest lead time of an option and the earliest day on which all of it can be there, in words."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.delivery import Delivery, delivery_of
from spoutline.model.part_ref import told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedOption

_MOST_NAMED = 3  # parts that take longest; more of them are counted


def delivery_in(option: QuotedOption, quotation: Quotation) -> Delivery | None:
    """Return when an option can be there, ordered on the day of the quotation."""
    return delivery_of(option.lines, quotation.terms.heading.dated)


def delivery_text(option: QuotedOption, quotation: Quotation, story: Story) -> str:
    """Return longest lead time, the parts that take so long, and the earliest day; empty where nothing is ordered."""
    found = delivery_in(option, quotation)
    if found is None:
        return ""
    return story.phrases.fill(
        "delivery_told", lead=story.days(found.lead_days), parts=_waited_for(found), day=story.day(found.earliest)
    )


def delivery_rows(option: QuotedOption, quotation: Quotation, story: Story) -> Iterator[Named]:
    """Return longest lead time and earliest day as rows of a head."""
    found = delivery_in(option, quotation)
    if found is not None:
        yield Named(story.word(Word.LONGEST_LEAD), f"{story.days(found.lead_days)} ({_waited_for(found)})")
        day = story.phrases.fill("delivery_day", day=story.day(found.earliest))
        yield Named(story.word(Word.EARLIEST_DELIVERY), day)


def _waited_for(found: Delivery) -> str:
    names = told_apart(found.waits_for)
    more = len(names) - _MOST_NAMED
    return ", ".join(names[:_MOST_NAMED]) + (f" +{more}" if more > 0 else "")
