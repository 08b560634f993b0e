"""The bill as a workbook: parts, positions, checks. Texts are written as texts, never as formulas or links."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.documents.tabular.rows import bill_sheet, check_sheet, position_sheet
from spoutline.documents.tabular.workbook import workbook_bytes
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.plan import SitePlan
from spoutline.model.record import CommissioningRecord


def xlsx_bytes(site_plan: SitePlan, story: Story, records: Sequence[CommissioningRecord] = ()) -> bytes:
    """Return the workbook; the same bytes for the same plan."""
    return workbook_bytes(
        (bill_sheet(site_plan, story, records), position_sheet(site_plan, story), check_sheet(site_plan, story)),
        title=f"{story.word(Word.BILL)}{story.writing.colon} {site_plan.survey.site.name}",
        author=f"Spoutline {site_plan.provenance.program_version}",
        comments=story.phrases.text["advice"],
        currency=site_plan.survey.site.currency,
        notice=story.phrases.text["demonstration_notice"] if site_plan.shows_invented_parts else "",
    )
