"""Parts offered in place of those of lines: a table of an option with the differences, and each in words."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import Alignment, Block, Column, Paragraph, Role, Row, Table
from spoutline.documents.quotation.figures import signed
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.part_ref import told_apart
from spoutline.model.quoted_option import QuotedAlternate, QuotedOption

_RIGHT = Alignment.RIGHT


def alternate_blocks(option: QuotedOption, currency: str, story: Story) -> Iterator[Block]:
    """Return the alternates of an option, with the mark that they are in no total; nothing where it has none."""
    offered = option.offered_alternates
    if not offered:
        return
    yield Paragraph(story.word(Word.ALTERNATES), Role.LEAD)
    columns = (
        Column(story.word(Word.PART_NUMBER), 1.1),
        Column(story.word(Word.PART_NAME), 3.6),
        Column(story.word(Word.INSTEAD_OF), 1.1),
        Column(story.word(Word.ORDERED), 0.82, _RIGHT),
        Column(story.word(Word.LEAD_DAYS), 0.9, _RIGHT),
        Column(f"{story.word(Word.DIFFERENCE)}, {currency}", 1.3, _RIGHT),
    )
    rows = tuple(
        Row(
            (
                one.part_number,
                "; ".join(text for text in (one.name_in(story.phrases.language), one.maker, one.note) if text),
                one.line_number,
                str(one.ordered),
                str(one.lead_time_days),
                difference_of(one, currency, story),
            )
        )
        for one in offered
    )
    yield Table(columns, rows)
    yield Paragraph(story.word(Word.ALTERNATES_NOTE), Role.NOTE)


def alternate_texts(option: QuotedOption, currency: str, story: Story) -> Iterator[str]:
    """Yield each alternate in words: its difference, or the positions at which it does not fit."""
    for one in option.alternates:
        part, line = told_apart((one.part, one.line))
        if one.misfits:
            where = ", ".join(one.misfits)
            yield story.phrases.fill("alternate_misfit", part=part, line=line, positions=where)
        else:
            told = difference_of(one, currency, story)
            yield story.phrases.fill("alternate_told", part=part, line=line, difference=told)


def difference_of(alternate: QuotedAlternate, currency: str, story: Story) -> str:
    """Return what the line would cost more, with its sign; that a price is missing where one is."""
    if alternate.difference is None:
        return story.word(Word.NO_PRICE)
    return signed(alternate.difference, currency, story.writing)
