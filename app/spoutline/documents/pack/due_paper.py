"""The work due at all stations as a paper: overdue first, work of one day at a station told once with its positions."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from spoutline.documents.content.blocks import (
    Block,
    Bullets,
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
from spoutline.documents.pack.inspection_sheet import item_text, positions_text
from spoutline.documents.pack.setting_words import sourced
from spoutline.documents.paper import paper_bytes
from spoutline.documents.paper_form import PaperForm
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.due_work import DueWork, StationDue, Uncounted, UncountedReason

_REASONS = {UncountedReason.NO_RECORD: Word.NO_RECORD, UncountedReason.NO_SET: Word.NO_SET_HERE}


def due_paper(work: DueWork, story: Story, *, on_letter: bool, form: PaperForm = PaperForm.PDF) -> bytes:
    """Return the list as PDF, or in another ``form``; the same bytes for the same arguments.

    ``on_letter`` sets it on US letter paper, else on A4. Raise ``StoreFault`` for a missing font.
    """
    from spoutline import __version__

    title = story.word(Word.DUE_WORK)
    document = Document(
        title=title,
        subject=story.word(Word.DUE_WORK_LEAD),
        author=f"Spoutline {__version__}",
        language=story.phrases.language,
        paper=PaperSize.LETTER if on_letter else PaperSize.A4,
        running_head=title,
        running_foot=story.day(work.on),
        page_phrase=story.word(Word.PAGE_OF),
        blocks=tuple(_blocks(work, story)),
    )
    return paper_bytes(document, form)


def _blocks(work: DueWork, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.DUE_WORK), 1)
    yield Paragraph(story.word(Word.DUE_WORK_LEAD), Role.LEAD)
    if work.rows:
        told = story.phrases.fill("due_on", count=len(work.rows), overdue=work.overdue, day=story.day(work.on))
        yield Paragraph(told)
    else:
        yield Paragraph(story.word(Word.DUE_NONE))
    late = [row for row in work.rows if row.overdue_days(work.on)]
    later = [row for row in work.rows if not row.overdue_days(work.on)]
    for rows, title in ((late, Word.OVERDUE), (later, Word.DUE_LATER)):
        if rows:
            yield Heading(story.word(title), 2)
            yield _table(rows, work, story)
    if work.uncounted:
        yield Heading(story.word(Word.NOT_COUNTED), 2)
        yield Bullets(tuple(_left_out(one, story) for one in work.uncounted))


def due_lines(rows: Iterable[StationDue]) -> tuple[tuple[StationDue, ...], ...]:
    """Return the work of one item, day and station together, in the order of the rows."""

    def line(row: StationDue) -> tuple[str, str, str, str]:
        last = row.due.last_done
        return (row.due.next_due.isoformat(), row.site.name, row.due.item.id.value, last.isoformat() if last else "")

    return tuple(tuple(group) for _, group in groupby(sorted(rows, key=line), key=line))


def _table(rows: Iterable[StationDue], work: DueWork, story: Story) -> Table:
    columns = (
        Column(story.word(Word.NEXT_DUE), 1.2),
        Column(story.word(Word.SITE), 1.8),
        Column(story.word(Word.POSITIONS), 1.2),
        Column(story.word(Word.WHAT), 3.2),
        Column(story.word(Word.LAST_DONE), 1.0),
        Column(story.word(Word.SOURCE), 1.9),
    )
    return Table(columns, tuple(_row(line, work, story) for line in due_lines(rows)), dense=True)


def _row(line: tuple[StationDue, ...], work: DueWork, story: Story) -> Row:
    first = line[0]
    due, late = first.due, first.overdue_days(work.on)
    day = story.day(due.next_due)
    site, address = first.site.name, first.site.address.strip().replace("\n", ", ")
    return Row(
        (
            f"{day}\n{story.phrases.fill('overdue_days', days=late)}" if late else day,
            f"{site}\n{address}" if address else site,
            positions_text(tuple(row.due for row in line)),
            item_text(due, story),
            story.day(due.last_done) if due.last_done else "–",
            sourced(due.item.source, due.item.status, story),
        ),
        Emphasis.FAULT if late else Emphasis.NONE,
    )


def _left_out(one: Uncounted, story: Story) -> str:
    where = f"{one.site}, {', '.join(one.positions)}" if one.positions else one.site
    why = one.told if one.reason is UncountedReason.FAULT else story.word(_REASONS[one.reason])
    return f"{where}{story.writing.colon} {' '.join(why.split())}"
