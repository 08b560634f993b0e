"""The owner's conversion report as a content tree: standing and decision first, then every detail, then the sheets."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import Block, Document, Paragraph, Role
from spoutline.documents.content.closing_sections import caution_blocks
from spoutline.documents.conversion.case_section import case_blocks
from spoutline.documents.conversion.emission_section import emission_blocks
from spoutline.documents.conversion.followed import followed_plan
from spoutline.documents.conversion.money_section import money_blocks
from spoutline.documents.conversion.position_sheets import position_sheets
from spoutline.documents.conversion.sequence_section import sequence_blocks
from spoutline.documents.conversion.summary import assumed_blocks, summary_blocks
from spoutline.explain.conversion.case_words import case_note, titled
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import Cancelled
from spoutline.planning.conversion.cases import CaseResult
from spoutline.planning.protocols import Progress
from spoutline.ruletables.cautions import Caution


def conversion_content(
    conversion: SiteConversion,
    words: ConversionStory,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None = None,
    cases: Sequence[CaseResult] = (),
    progress: Progress | None = None,
) -> Document:
    """Return the report: summary, money, emissions, sequence for the owner; sheets and cautions for the installer.

    The running foot of every page says that this is no permission and who decides.

    Parameters
    ----------
    conversion
        The conversion of a site.
    words
        Sentences and unit system.
    cautions
        The reviewed cautions.
    dated
        Printed where given; no clock is read.
    cases
        Cases to be shown beside it; where the conversion is that of one, the head of every page says so.
    progress
        Hears how many sheets are written, and is asked after every block whether to go on.

    Raises
    ------
    Cancelled
        Where ``progress`` asks to stop.
    """
    told = _blocks(conversion, words, cautions, dated=dated, cases=cases, progress=progress)
    blocks = tuple(_until_stopped(told, progress))
    title = titled(words.say("report_title", site=conversion.survey.site.name), conversion, words)
    made_from = conversion.provenance
    foot = f"{words.say('foot')} · {made_from.survey_fingerprint[:8]}"
    return Document(
        title=title,
        subject=words.say("report_subject"),
        author=f"Spoutline {made_from.program_version}",
        language=words.story.phrases.language,
        paper=paper_for(conversion.jurisdiction.id),
        running_head=title,
        running_foot=f"{words.story.day(dated)} · {foot}" if dated else foot,
        page_phrase=words.story.word(PaperWord.PAGE_OF),
        blocks=blocks,
        notice=words.story.phrases.text["demonstration_notice"] if conversion.shows_invented_parts else "",
    )


def _until_stopped(blocks: Iterator[Block], progress: Progress | None) -> Iterator[Block]:
    """Yield blocks until ``progress`` asks to stop: what stands before the sheets takes seconds at a big station."""
    for block in blocks:
        if progress is not None and progress.should_stop():
            raise Cancelled
        yield block


def _blocks(
    conversion: SiteConversion,
    words: ConversionStory,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None,
    cases: Sequence[CaseResult],
    progress: Progress | None,
) -> Iterator[Block]:
    note = case_note(conversion, words)
    if note:
        yield Paragraph(note, Role.LEAD)
    yield from summary_blocks(conversion, words, dated)
    yield from case_blocks(cases, conversion, words)
    yield from money_blocks(conversion, words)
    yield from assumed_blocks(conversion, words)
    yield from emission_blocks(conversion, words)
    yield from sequence_blocks(conversion, words)
    yield from position_sheets(conversion, words, progress)
    yield from caution_blocks(followed_plan(conversion), words.story, cautions)
