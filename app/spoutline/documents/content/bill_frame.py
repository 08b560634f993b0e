"""What full and short bill have in common: title and running lines, and the sheet that they are printed on."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from spoutline.documents.content.blocks import Block, Document, PaperSize
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.plan import SitePlan

_LETTER_JURISDICTIONS = "us"  # profiles of the United States print on Letter paper
_FINGERPRINT_SHOWN = 12


def bill_document(
    site_plan: SitePlan, story: Story, title: str, blocks: Iterable[Block], *, dated: date | None
) -> Document:
    """Return ``blocks`` as a document about a planned site; ``dated`` is printed where given."""
    site, made_from = site_plan.survey.site, site_plan.provenance
    foot = f"{story.word(Word.FINGERPRINT)} {made_from.survey_fingerprint[:_FINGERPRINT_SHOWN]}"
    return Document(
        title=f"{title}{story.writing.colon} {site.name}",
        subject=story.word(Word.BILL_SUBJECT),
        author=f"Spoutline {made_from.program_version}",
        language=story.phrases.language,
        paper=paper_for(site_plan.jurisdiction.id),
        running_head=site.name,
        running_foot=f"{story.day(dated)} · {foot}" if dated else foot,
        page_phrase=story.word(Word.PAGE_OF),
        blocks=tuple(blocks),
        notice=story.phrases.text["demonstration_notice"] if site_plan.shows_invented_parts else "",
    )


def paper_for(jurisdiction_id: str) -> PaperSize:
    """Return the sheet on which the documents of a jurisdiction are printed."""
    return PaperSize.LETTER if jurisdiction_id.lower().startswith(_LETTER_JURISDICTIONS) else PaperSize.A4
