"""The coverage map as a document: a table for each climate band, what to stock, and why nothing fits."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from datetime import date

import spoutline
from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Document,
    Heading,
    KeyValues,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.explain.phrases.coverage_words import CoverageWord as Word
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.coverage_text import (
    cell_text,
    climate_text,
    gap_text,
    liquid_text,
    reason_text,
    summary_text,
)
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.coverage_kinds import ClimateBand
from spoutline.model.coverage_map import CellState, Combination, CoverageCell, CoverageMap, stock_gaps
from spoutline.planning.keeping.coverage_map import climate_of


def coverage_content(found: CoverageMap, story: Story, dated: date | None) -> Document:
    """Return the map; ``dated`` is printed where given, and no clock is read."""
    edition = found.edition
    return Document(
        title=f"{story.word(Word.TITLE)}{story.writing.colon} {edition.title}",
        subject=story.word(Word.SUBJECT),
        author=f"Spoutline {spoutline.__version__}",
        language=story.phrases.language,
        paper=paper_for(found.jurisdiction.id),
        running_head=f"{story.word(Word.TITLE)} · {edition.ref}",
        running_foot=story.day(dated) if dated else edition.title,
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=tuple(_blocks(found, story, dated)),
        notice=story.phrases.text["demonstration_notice"] if edition.catalogue == DEMONSTRATION else "",
    )


def _blocks(found: CoverageMap, story: Story, dated: date | None) -> Iterator[Block]:
    yield Heading(f"{story.word(Word.TITLE)}{story.writing.colon} {found.edition.title}", 1)
    rows = [
        Named(story.word(PaperWord.CATALOGUE), f"{found.edition.title} ({found.edition.ref})"),
        Named(story.word(PaperWord.JURISDICTION), story.phrases.tell(found.jurisdiction.title)),
        Named(story.word(PaperWord.RULES), found.rules_edition),
        Named(story.word(PaperWord.CURRENCY), found.currency),
    ]
    if dated is not None:
        rows.append(Named(story.word(PaperWord.DATE), story.day(dated)))
    yield KeyValues(tuple(rows))
    yield Paragraph(summary_text(found, story), Role.LEAD)
    yield Paragraph(story.word(Word.LEGEND).format(most=found.scope.most_counted))
    yield Paragraph(story.word(Word.ASKED_AS), Role.NOTE)
    yield from _to_stock(found, story)
    for band in found.scope.climates:
        yield from _band(found, band, story)
    yield from _why_nothing(found, story)
    yield Paragraph(story.phrases.text["advice"], Role.NOTE)


def _to_stock(found: CoverageMap, story: Story) -> Iterator[Block]:
    gaps = stock_gaps(found.cells)
    if not gaps:
        return
    yield Heading(story.word(Word.TO_STOCK), 2)
    yield Paragraph(story.word(Word.TO_STOCK_NOTE))
    columns = (
        Column(story.word(PaperWord.PART_NAME), 3),
        Column(story.word(Word.COMBINATIONS), 1, Alignment.RIGHT),
        Column(story.word(Word.ALONE), 1.4, Alignment.RIGHT),
    )
    rows = tuple(Row((gap_text(gap, story), str(gap.combinations), str(gap.alone))) for gap in gaps)
    yield Table(columns, rows, whole=True)


def _band(found: CoverageMap, band: ClimateBand, story: Story) -> Iterator[Block]:
    scope = found.scope
    known = {cell.combination: cell for cell in found.cells}
    columns = (
        Column(story.word(PaperWord.LIQUID), 1.1),
        Column(story.word(PaperWord.DUTY), 0.9),
        Column(story.word(PaperWord.VAPOUR), 1.3),
        *(Column(story.word(outlet), 1.2) for outlet in scope.outlets),
    )
    rows = []
    for liquid in scope.liquids:
        for duty in scope.duties:
            for vapour in scope.vapours:
                cells = [known[Combination(liquid, duty, vapour, outlet, band)] for outlet in scope.outlets]
                if any(cell.state is not CellState.NOT_ASKED for cell in cells):
                    names = (liquid_text(liquid, story), story.word(duty), story.word(vapour))
                    rows.append(Row((*names, *(cell_text(cell, story) for cell in cells))))
    if rows:
        yield Heading(climate_text(band, climate_of(band), story), 2)
        yield Table(columns, tuple(rows), dense=True)


def _why_nothing(found: CoverageMap, story: Story) -> Iterator[Block]:
    by_reason: dict[str, list[CoverageCell]] = defaultdict(list)
    for cell in found.cells:
        if cell.state in (CellState.NOTHING_FITS, CellState.NOT_DECIDED):
            by_reason[reason_text(cell, story)].append(cell)
    if not by_reason:
        return
    yield Heading(story.word(Word.WHY_NOTHING), 2)
    columns = (
        Column(story.word(PaperWord.REASON), 3),
        Column(story.word(Word.COMBINATIONS), 1, Alignment.RIGHT),
        Column(story.word(PaperWord.LIQUID), 1.6),
        Column(story.word(PaperWord.OUTLET), 1.8),
    )
    yield Table(columns, tuple(_reason_row(reason, cells, story) for reason, cells in by_reason.items()), dense=True)


def _reason_row(reason: str, cells: list[CoverageCell], story: Story) -> Row:
    liquids = dict.fromkeys(liquid_text(cell.combination.liquid, story) for cell in cells)
    outlets = dict.fromkeys(story.word(cell.combination.outlet) for cell in cells)
    return Row((reason, str(len(cells)), ", ".join(liquids), ", ".join(outlets)))
