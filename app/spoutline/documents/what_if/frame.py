"""What the papers of other answers have in common: title, running lines, and the notice of invented parts."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import Block, Document
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.plan import SitePlan
from spoutline.model.what_if import WhatIfResult

_FINGERPRINT_SHOWN = 12


def what_if_document(
    before: SitePlan, answers: Sequence[WhatIfResult], story: Story, blocks: Iterable[Block], dated: date | None
) -> Document:
    """Return ``blocks`` as a document about a station and other answers; ``dated`` is printed where given."""
    site, made_from = before.survey.site, before.provenance
    foot = f"{story.word(PaperWord.FINGERPRINT)} {made_from.survey_fingerprint[:_FINGERPRINT_SHOWN]}"
    is_invented = before.shows_invented_parts or any(one.made_from.is_demonstration for one in answers)
    return Document(
        title=f"{story.word(Word.TITLE)}{story.writing.colon} {site.name}",
        subject=story.word(Word.SUBJECT),
        author=f"Spoutline {made_from.program_version}",
        language=story.phrases.language,
        paper=paper_for(before.jurisdiction.id),
        running_head=site.name,
        running_foot=f"{story.day(dated)} · {foot}" if dated else foot,
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=tuple(blocks),
        notice=story.phrases.text["demonstration_notice"] if is_invented else "",
    )
