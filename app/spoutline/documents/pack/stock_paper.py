"""The stock as a paper: what lies where, what a job takes of it, what is short and what to order, to be ticked off."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date

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
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.part_name import part_name
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import StockLine

_TICK = "☐"


@frozen(kw_only=True)
class StockSheet:
    """What is put on paper: lines with the parts they name; ``job`` is the site of the job, empty without one."""

    lines: Sequence[StockLine]
    parts: Mapping[PartRef, Part]
    job: str = ""
    dated: date | None = None


def stock_paper(sheet: StockSheet, story: Story, *, on_letter: bool, form: PaperForm = PaperForm.PDF) -> bytes:
    """Return the list as PDF, or in another ``form``; the same bytes for the same arguments.

    With a job what it takes comes first, then what is to be ordered; without one what lies there, then that.
    ``on_letter`` sets it on US letter paper, else on A4. Raise ``StoreFault`` for a missing font.
    """
    from spoutline import __version__

    title = story.word(Word.STOCK)
    head = f"{title}{story.writing.colon} {sheet.job}" if sheet.job else title
    document = Document(
        title=head,
        subject=story.word(Word.STOCK_LEAD),
        author=f"Spoutline {__version__}",
        language=story.phrases.language,
        paper=PaperSize.LETTER if on_letter else PaperSize.A4,
        running_head=head,
        running_foot=story.day(sheet.dated) if sheet.dated else story.word(Word.STOCK_LEAD),
        page_phrase=story.word(Word.PAGE_OF),
        blocks=tuple(_blocks(head, sheet, story)),
    )
    return paper_bytes(document, form)


def _blocks(head: str, sheet: StockSheet, story: Story) -> Iterator[Block]:
    yield Heading(head, 1)
    yield Paragraph(story.word(Word.STOCK_LEAD), Role.LEAD)
    if sheet.job:
        to_take = [line for line in sheet.lines if line.takes or line.short]
        yield Heading(story.word(Word.TO_TAKE), 2)
        yield _taken_table(to_take, sheet, story) if to_take else Paragraph(story.phrases.text["nothing"])
        before = list({line.balance.part: line for line in sheet.lines if line.taken}.values())
        if before:
            yield Heading(story.word(Word.TAKEN_BEFORE), 2)
            yield _before_table(before, sheet, story)
    else:
        yield Heading(story.word(Word.AT_HAND), 2)
        yield _held_table(sheet, story) if sheet.lines else Paragraph(story.phrases.text["nothing"])
    ordered = [line for line in sheet.lines if line.order]
    yield Heading(story.word(Word.TO_ORDER), 2)
    yield _order_table(ordered, sheet, story) if ordered else Paragraph(story.phrases.text["nothing"])


def _taken_table(lines: Sequence[StockLine], sheet: StockSheet, story: Story) -> Table:
    columns = (
        *_part_columns(story),
        _number(story.word(Word.AT_HAND)),
        _number(story.word(Word.TO_TAKE)),
        _number(story.word(Word.SHORT)),
        _number(story.word(Word.LOADED)),
    )
    rows = tuple(
        Row(
            (
                *_part_cells(line, sheet, story),
                str(line.balance.quantity),
                str(line.takes),
                _or_none(line.short),
                _TICK,
            ),
            Emphasis.FAULT if line.short else Emphasis.NONE,
        )
        for line in lines
    )
    return Table(columns, rows, dense=True)


def _before_table(lines: Sequence[StockLine], sheet: StockSheet, story: Story) -> Table:
    columns = (
        *_part_columns(story)[1:],
        _number(story.word(Word.NEEDED)),
        _number(story.word(Word.TAKEN_BEFORE)),
        _number(story.word(Word.BRING_BACK)),
    )
    rows = tuple(
        Row(
            (*_part_cells(line, sheet, story)[1:], str(line.needed), str(line.taken), _or_none(line.too_many)),
            Emphasis.FAULT if line.too_many else Emphasis.NONE,
        )
        for line in lines
    )
    return Table(columns, rows, dense=True)


def _held_table(sheet: StockSheet, story: Story) -> Table:
    columns = (
        *_part_columns(story),
        _number(story.word(Word.AT_HAND)),
        _number(story.word(Word.LEAST)),
        Column(story.word(Word.COUNTED_IN), 1.1),
    )
    rows = tuple(
        Row(
            (
                *_part_cells(line, sheet, story),
                str(line.balance.quantity),
                str(line.balance.level.least) if line.balance.level is not None else "–",
                line.balance.count or "–",
            ),
            Emphasis.FAULT if line.order or line.balance.quantity < 0 else Emphasis.NONE,
        )
        for line in sheet.lines
    )
    return Table(columns, rows, dense=True)


def _order_table(lines: Sequence[StockLine], sheet: StockSheet, story: Story) -> Table:
    columns = (*_part_columns(story), _number(story.word(Word.LOT)), _number(story.word(Word.TO_ORDER)))
    rows = tuple(
        Row(
            (
                *_part_cells(line, sheet, story),
                str(line.balance.level.lot) if line.balance.level is not None else "1",
                str(line.order),
            )
        )
        for line in lines
    )
    return Table(columns, rows, dense=True)


def _part_columns(story: Story) -> tuple[Column, ...]:
    return (
        Column(story.word(Word.STOCK_PLACE), 1.1),
        Column(story.word(Word.PART_NUMBER), 1.3),
        Column(story.word(Word.PART_NAME), 3.0),
    )


def _part_cells(line: StockLine, sheet: StockSheet, story: Story) -> tuple[str, str, str]:
    ref = line.balance.part
    part = sheet.parts.get(ref)
    named = (part_name(part, story), ref.maker) if part is not None else (ref.maker,)
    return line.balance.place, ref.number, story.writing.listed(tuple(text for text in named if text))


def _number(title: str) -> Column:
    return Column(title, 0.8, Alignment.RIGHT)


def _or_none(pieces: int) -> str:
    return str(pieces) if pieces else "–"
