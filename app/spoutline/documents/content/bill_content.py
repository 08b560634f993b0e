"""The whole bill of a site as a content tree."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from itertools import islice
from types import MappingProxyType

from spoutline.documents.content.bill_frame import bill_document
from spoutline.documents.content.blocks import Block, Document
from spoutline.documents.content.calculation_annex import calculation_blocks
from spoutline.documents.content.closing_sections import caution_blocks, reference_blocks
from spoutline.documents.content.grouping import like_positions
from spoutline.documents.content.position_section import position_blocks
from spoutline.documents.content.references import References
from spoutline.documents.content.requirement_annex import requirement_blocks
from spoutline.documents.content.site_sections import bill_title, found_blocks, found_in, site_blocks
from spoutline.documents.content.why_annex import why_blocks
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.funnel import SetReasons
from spoutline.model.plan import SitePlan
from spoutline.model.record import CommissioningRecord
from spoutline.ruletables.cautions import Caution


def bill_content(
    site_plan: SitePlan,
    story: Story,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None = None,
    calculations: bool = True,
    records: tuple[CommissioningRecord, ...] = (),
    reasons: Mapping[str, SetReasons] = MappingProxyType({}),
) -> Document:
    """Return the bill: site, positions, annexes, limits and sources, and at the very end the caution sheet.

    ``dated`` is printed where given; no clock is read, so that the same inputs give the same document. Without
    ``calculations`` annex B is left out, and the first page says so. With ``records`` the plan is one as built: title
    and first page say so, with the day and the name that each record states. With ``reasons``, by the label of a
    position, an annex says why these parts were chosen.
    """
    site = site_plan.survey.site
    groups = like_positions(site_plan.positions)
    references = References(site_plan.jurisdiction.limits, story)
    left_out = () if calculations else (story.word(Word.CALCULATION_LEFT_OUT),)
    blocks: list[Block] = list(
        site_blocks(site_plan, story, references, dated=dated, left_out=left_out, records=records)
    )
    for like in groups:
        sheet = position_blocks(like, site.currency, story, references, with_flow_curve=not calculations)
        blocks.extend((*islice(sheet, 2), *found_blocks(like.positions, found_in(records), story), *sheet))
    blocks.extend(requirement_blocks(groups, story, references))
    blocks.extend(why_blocks(groups, reasons, story))
    if calculations:
        blocks.extend(calculation_blocks(groups, story, references))
    blocks.extend(reference_blocks(references, story))
    blocks.extend(caution_blocks(site_plan, story, cautions))
    return bill_document(site_plan, story, bill_title(records, story), blocks, dated=dated)
