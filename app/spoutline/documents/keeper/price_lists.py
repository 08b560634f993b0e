"""The price lists of an edition as a document: whose they are, how long they hold, every price with its quantity."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date

import spoutline
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Document,
    Heading,
    KeyValues,
    PaperSize,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.explain.phrases.keeper_words import KeeperWord as Word
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.catalogue_edition import DEMONSTRATION, CatalogueEdition
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceList

_AMERICAN = "USD"


def price_lists_content(
    edition: CatalogueEdition,
    lists: Sequence[PriceList],
    names: Mapping[PartRef, str],
    story: Story,
    dated: date | None = None,
) -> Document:
    """Return price lists by id; ``names`` are those of the edition's parts, and ``dated`` is printed where given.

    The paper is that of American offices where one of the lists is in dollars.
    """
    title = f"{story.word(Word.PRICE_LISTS)}{story.writing.colon} {edition.title}"
    return Document(
        title=title,
        subject=story.word(Word.PRICE_LISTS_SUBJECT),
        author=f"Spoutline {spoutline.__version__}",
        language=story.phrases.language,
        paper=PaperSize.LETTER if any(one.currency == _AMERICAN for one in lists) else PaperSize.A4,
        running_head=f"{story.word(Word.PRICE_LISTS)} · {edition.ref}",
        running_foot=story.day(dated) if dated else edition.title,
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=(Heading(title, 1), *_blocks(lists, names, story)),
        notice=story.phrases.text["demonstration_notice"] if edition.catalogue == DEMONSTRATION else "",
    )


def _blocks(lists: Sequence[PriceList], names: Mapping[PartRef, str], story: Story) -> Iterator[Block]:
    if not lists:
        yield Paragraph(story.word(Word.NO_LISTS), Role.LEAD)
    for one in sorted(lists, key=lambda one: one.id):
        yield Heading(one.id, 2)
        facts = [Named(story.word(PaperWord.MAKER), one.maker)]
        if one.supplier:
            facts.append(Named(story.word(Word.SUPPLIER), one.supplier))
        facts.append(Named(story.word(PaperWord.CURRENCY), one.currency))
        facts.append(Named(story.word(Word.VALID), _validity(one, story)))
        yield KeyValues(tuple(facts))
        columns = (
            Column(story.word(PaperWord.PART_NUMBER), 1.8),
            Column(story.word(PaperWord.PART_NAME), 3.6),
            Column(story.word(Word.GROUP), 1),
            Column(story.word(Word.FROM_QUANTITY), 1, Alignment.RIGHT),
            Column(story.word(PaperWord.UNIT_PRICE), 1.2, Alignment.RIGHT),
        )
        yield Table(columns, tuple(_rows(one, names, story)), dense=True)


def _validity(one: PriceList, story: Story) -> str:
    first = story.day(one.valid_from)
    if one.valid_to is None:
        return story.word(Word.VALID_OPEN).format(first=first)
    return story.word(Word.VALID_SPAN).format(first=first, last=story.day(one.valid_to))


def _rows(one: PriceList, names: Mapping[PartRef, str], story: Story) -> Iterator[Row]:
    for row in sorted(one.rows, key=lambda row: row.part_number):
        name = names.get(PartRef(row.part_number, one.maker), "")
        for place, step in enumerate(row.breaks):
            price = story.writing.money(step.unit_price, one.currency, with_currency=False)
            head = (row.part_number, name, row.discount_group) if place == 0 else ("", "", "")
            yield Row((*head, str(step.from_quantity), price))
