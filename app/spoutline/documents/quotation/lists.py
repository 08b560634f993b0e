"""The book's lists as papers: its quotations with what each is worth and when to ask again, and its customers."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from decimal import Decimal
from typing import Final

from spoutline.book.quotation_records import QuotationEntry
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Document,
    Emphasis,
    Heading,
    PaperSize,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.paper import paper_bytes
from spoutline.documents.paper_form import PaperForm
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.customer import Customer
from spoutline.model.quotation_status import QuotationStatus
from spoutline.units.writing import currency_decimals

_RIGHT: Final = Alignment.RIGHT
_NONE: Final = "–"
_PERCENT_PLACES: Final = 1
_OVER: Final = frozenset({QuotationStatus.DECLINED, QuotationStatus.EXPIRED})


def quotation_list(
    entries: Sequence[QuotationEntry], story: Story, on: date, *, on_letter: bool, form: PaperForm = PaperForm.PDF
) -> bytes:
    """Return quotations in the order given; those to follow up by ``on`` stand out. Its margins make it internal.

    ``on_letter`` sets it on US letter paper, else on A4. Raise ``StoreFault`` for a missing font.
    """
    blocks: list[Block] = [Heading(story.word(Word.WORK_LIST), 1), Paragraph(story.word(Word.INTERNAL), Role.LEAD)]
    if entries:
        blocks.append(_quotations(entries, story, on))
        blocks.extend(_sums(entries, story))
    else:
        blocks.append(Paragraph(story.word(Word.NOTHING_LISTED)))
    foot = f"{story.word(Word.INTERNAL)} · {story.day(on)}"
    return _paper(story.word(Word.WORK_LIST), foot, blocks, story, on_letter=on_letter, form=form)


def customer_list(
    customers: Sequence[Customer], story: Story, on: date, *, on_letter: bool, form: PaperForm = PaperForm.PDF
) -> bytes:
    """Return customers in the order given, with what papers have of them; equal bytes for equal arguments.

    ``on_letter`` sets it on US letter paper, else on A4. Raise ``StoreFault`` for a missing font.
    """
    blocks: list[Block] = [Heading(story.word(Word.CUSTOMER_LIST), 1)]
    if customers:
        blocks.append(_customers(customers, story))
    else:
        blocks.append(Paragraph(story.word(Word.NOTHING_LISTED)))
    return _paper(story.word(Word.CUSTOMER_LIST), story.day(on), blocks, story, on_letter=on_letter, form=form)


def _paper(title: str, foot: str, blocks: Sequence[Block], story: Story, *, on_letter: bool, form: PaperForm) -> bytes:
    from spoutline import __version__

    document = Document(
        title=title,
        subject=title,
        author=f"Spoutline {__version__}",
        language=story.phrases.language,
        paper=PaperSize.LETTER if on_letter else PaperSize.A4,
        running_head=title,
        running_foot=foot,
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=tuple(blocks),
    )
    return paper_bytes(document, form)


def _quotations(entries: Sequence[QuotationEntry], story: Story, on: date) -> Table:
    columns = (
        Column(story.word(Word.NUMBER), 1.2),
        Column(story.word(Word.STATE), 1.0),
        Column(f"{story.word(Word.CUSTOMER)}, {story.word(Word.SITE)}", 2.6),
        Column(story.word(Word.TOTAL), 1.5, _RIGHT),
        Column(story.word(Word.MARGIN_PERCENT), 0.9, _RIGHT),
        Column(story.word(Word.DATED), 1.0),
        Column(story.word(Word.VALID_TO), 1.0),
        Column(story.word(Word.FOLLOW_UP), 1.0),
    )
    return Table(columns, tuple(_quotation(one, story, on) for one in entries), dense=True)


def _quotation(one: QuotationEntry, story: Story, on: date) -> Row:
    is_due = one.follow_up is not None and one.follow_up <= on
    total = _span(one.total_low, one.total_high, currency_decimals(one.currency) if one.currency else 2, story)
    return Row(
        (
            f"{one.number}, {story.word(Word.REVISION)} {one.revision}",
            story.title(one.status),
            f"{one.customer}\n{one.site}",
            total if total == _NONE else f"{total} {one.currency}",
            _span(one.margin_low, one.margin_high, _PERCENT_PLACES, story),
            _NONE if one.dated is None else story.day(one.dated),
            story.day(one.valid_to),
            _NONE if one.follow_up is None else story.day(one.follow_up),
        ),
        Emphasis.FAULT if is_due else Emphasis.NONE,
    )


def _sums(entries: Sequence[QuotationEntry], story: Story) -> Iterator[Block]:
    """Yield what the quotations of each status that may still come, or came, are worth together, at the least."""
    sums: dict[tuple[QuotationStatus, str], Decimal] = {}
    counts: dict[tuple[QuotationStatus, str], int] = {}
    for one in entries:
        key = (one.status, one.currency)
        if one.status not in _OVER and one.total_low is not None:
            sums[key] = sums.get(key, Decimal(0)) + one.total_low
            counts[key] = counts.get(key, 0) + 1
    if not sums:
        return
    columns = (
        Column(story.word(Word.STATE), 2.0),
        Column(story.word(Word.WORK_LIST), 1.0, _RIGHT),
        Column(story.word(Word.TOTAL_AT_LEAST), 2.0, _RIGHT),
    )
    order = list(QuotationStatus)
    rows = (
        Row((story.title(status), str(counts[status, currency]), _summed(sums[status, currency], currency, story)))
        for status, currency in sorted(sums, key=lambda key: (order.index(key[0]), key[1]))
    )
    yield Heading(story.word(Word.TOTAL_AT_LEAST), 2)
    yield Table(columns, tuple(rows), dense=True, whole=True)


def _summed(amount: Decimal, currency: str, story: Story) -> str:
    return f"{story.writing.decimal(amount, currency_decimals(currency))} {currency}"


def _customers(customers: Sequence[Customer], story: Story) -> Table:
    columns = (
        Column(story.word(Word.CUSTOMER), 2.4),
        Column(story.word(Word.CONTACT), 1.6),
        Column(f"{story.word(Word.TELEPHONE)}, {story.word(Word.EMAIL)}", 2.0),
        Column(story.word(Word.DELIVERY_ADDRESS), 2.0),
        Column(story.word(Word.PAYMENT_TERMS), 1.2),
        Column(story.word(Word.REGISTRATION), 1.2),
    )
    rows = (
        Row(
            (
                _lines(one.name, one.address),
                one.contact,
                _lines(one.telephone, one.email),
                one.delivery_address,
                one.payment_terms,
                one.registration,
            )
        )
        for one in customers
    )
    return Table(columns, tuple(rows), dense=True)


def _lines(*texts: str) -> str:
    return "\n".join(filter(None, texts))


def _span(low: Decimal | None, high: Decimal | None, places: int, story: Story) -> str:
    """Return an amount, or the least and the greatest where options differ."""
    if low is None or high is None:
        return _NONE
    return " – ".join(dict.fromkeys(story.writing.decimal(one, places) for one in (low, high)))
