"""The whole bill of a site as a content tree."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from datetime import date
from itertools import islice
from types import MappingProxyType

from spoutline.documents.content.annex_marks import GroupMark, annex_marks
from spoutline.documents.content.bill_frame import bill_document
from spoutline.documents.content.blocks import Block, Document, Table
from spoutline.documents.content.calculation_annex import calculation_blocks
from spoutline.documents.content.calculation_tables import calculation_table_blocks
from spoutline.documents.content.closing_sections import caution_blocks, reference_blocks
from spoutline.documents.content.grouping import like_positions
from spoutline.documents.content.no_set_annex import no_set_blocks
from spoutline.documents.content.position_section import position_blocks
from spoutline.documents.content.references import References
from spoutline.documents.content.requirement_annex import requirement_blocks
from spoutline.documents.content.site_sections import bill_title, found_blocks, found_in, site_blocks
from spoutline.documents.content.told_before import ToldBefore
from spoutline.documents.content.why_annex import why_blocks
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.funnel import SetReasons
from spoutline.model.no_set import NoSetReasons
from spoutline.model.plan import SitePlan
from spoutline.model.record import CommissioningRecord
from spoutline.planning.protocols import Progress
from spoutline.planning.watched import watched
from spoutline.ruletables.cautions import Caution

_MOST_ROWS_WHOLE = 10


def bill_content(
    site_plan: SitePlan,
    story: Story,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None = None,
    calculations: bool = True,
    records: tuple[CommissioningRecord, ...] = (),
    reasons: Mapping[str, SetReasons | NoSetReasons] = MappingProxyType({}),
    progress: Progress | None = None,
) -> Document:
    """Return the bill: site, positions, annexes, limits and sources, and at the very end the caution sheet.

    ``dated`` is printed where given; no clock is read, so that the same inputs give the same document. Without
    ``calculations`` annex B is left out, and the first page says so. With ``records`` the plan is one as built: title
    and first page say so, with the day and the name that each record states. With ``reasons``, by the label of a
    position, annexes say why these parts were chosen, or why no set fits. ``progress`` hears how many groups of
    positions are written; raise ``Cancelled`` where it asks to stop.
    """
    site = site_plan.survey.site
    groups = like_positions(site_plan.positions)
    references = References(site_plan.jurisdiction.limits, story)
    left_out = () if calculations else (story.word(Word.CALCULATION_LEFT_OUT),)
    blocks: list[Block] = list(
        site_blocks(site_plan, story, references, dated=dated, left_out=left_out, records=records)
    )
    marks = annex_marks(groups) if calculations else None
    before = ToldBefore(story)
    for number, like in enumerate(watched(groups, progress)):
        mark = None if marks is None else GroupMark(marks, number)
        sheet = position_blocks(
            like, site.currency, story, references, mark, before=before, with_flow_curve=not calculations
        )
        told = (*islice(sheet, 2), *found_blocks(like.positions, found_in(records), story), *sheet)
        blocks.extend(told if marks is None else _closer(told))
    asked = requirement_blocks(groups, story, references, marks)
    blocks.extend(asked if marks is None else _closer(asked))
    blocks.extend(why_blocks(groups, reasons, story))
    blocks.extend(no_set_blocks(groups, reasons, story))
    if marks is not None:
        blocks.extend(calculation_table_blocks(marks, story, references))
    elif calculations:
        blocks.extend(calculation_blocks(groups, story, references))
    blocks.extend(_closer(reference_blocks(references, story)) if marks else reference_blocks(references, story))
    blocks.extend(caution_blocks(site_plan, story, cautions))
    return bill_document(site_plan, story, bill_title(records, story), blocks, dated=dated)


def _closer(content: Iterable[Block]) -> Iterator[Block]:
    """Yield blocks, their tables set closer, and the long ones free to go on on the next page: for many positions."""
    for block in content:
        if isinstance(block, Table):
            yield replace(block, close=True, whole=block.whole and len(block.rows) <= _MOST_ROWS_WHOLE)
        else:
            yield block
