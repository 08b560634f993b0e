"""The whole pack, and the caution sheet by itself, as content trees."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from types import MappingProxyType

from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Block,
    CautionNote,
    CautionSheet,
    Document,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Signal,
    SignedCaution,
)
from spoutline.documents.pack.cover import cover_blocks
from spoutline.documents.pack.loading_list import loading_blocks
from spoutline.documents.pack.part_files import file_blocks
from spoutline.documents.pack.position_sheet import position_blocks
from spoutline.documents.pack.setting_words import sourced
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.pack import PackJob
from spoutline.model.plan import SitePlan
from spoutline.model.shown_files import FilesOfParts
from spoutline.planning.protocols import Progress
from spoutline.planning.watched import watched
from spoutline.rules.work.job_conditions import job_conditions
from spoutline.ruletables.caution_signs import CautionSign
from spoutline.ruletables.cautions import Caution

_MOST_CAUTION_PAGES = 2
_SIGNALS = tuple(Signal)


@frozen
class PackWords:
    """The words of one language: story, reviewed cautions, and the sign of each caution."""

    story: Story
    cautions: tuple[Caution, ...]
    signs: Mapping[str, CautionSign]


def pack_content(
    site_plan: SitePlan,
    words: PackWords,
    job: PackJob,
    *,
    dated: date | None = None,
    files: FilesOfParts = MappingProxyType({}),
    progress: Progress | None = None,
) -> Document:
    """Return the pack: cover, loading list, a sheet for each position, pictures of parts, the caution sheet last.

    ``progress`` hears how many sheets are written; raise ``Cancelled`` where it asks to stop.
    """
    story = words.story
    blocks: list[Block] = [*cover_blocks(site_plan, job, story, dated), *loading_blocks(site_plan, story)]
    for plan in watched(site_plan.positions, progress):
        blocks.extend(position_blocks(plan, site_plan, story))
    blocks.extend(file_blocks(site_plan, files, story))
    blocks.append(PageBreak())
    blocks.extend(caution_blocks(site_plan, words))
    return paper(story.word(Word.PACK), story.word(Word.PACK_SUBJECT), site_plan, story, blocks, dated=dated)


def caution_content(site_plan: SitePlan, words: PackWords, *, dated: date | None = None) -> Document:
    """Return the caution sheet by itself."""
    story, blocks = words.story, list(caution_blocks(site_plan, words))
    title = story.word(Word.CAUTION_SHEET)
    return paper(title, story.word(Word.PACK_SUBJECT), site_plan, story, blocks, dated=dated)


def caution_blocks(site_plan: SitePlan, words: PackWords) -> Iterator[Block]:
    """Return the cautions for everything present on the site, gravest first, each with its sign."""
    story = words.story
    conditions = job_conditions(site_plan)
    fitting = [caution for caution in words.cautions if caution.applies_to(conditions)]
    fitting.sort(key=lambda caution: _SIGNALS.index(Signal(caution.severity.value)))
    yield Heading(story.word(Word.CAUTION_SHEET), 1)
    yield Paragraph(story.word(Word.CAUTION_LEAD), Role.LEAD)
    signed_by = (story.word(Word.UNDERSTOOD), story.word(Word.SIGNATURE), story.word(Word.DATE))
    yield CautionSheet(tuple(_signed(caution, words) for caution in fitting), _MOST_CAUTION_PAGES, signed_by)


def paper(
    title: str, subject: str, site_plan: SitePlan, story: Story, blocks: list[Block], *, dated: date | None
) -> Document:
    """Return a document of the installer's papers around ``blocks``."""
    site, made_from = site_plan.survey.site, site_plan.provenance
    foot = f"{story.word(Word.REVISION)} {made_from.survey_fingerprint}"
    return Document(
        title=f"{title}{story.writing.colon} {site.name}",
        subject=subject,
        author=f"Spoutline {made_from.program_version}",
        language=story.phrases.language,
        paper=paper_for(site_plan.jurisdiction.id),
        running_head=f"{title} · {site.name}",
        running_foot=f"{story.day(dated)} · {foot}" if dated else foot,
        page_phrase=story.word(Word.PAGE_OF),
        blocks=tuple(blocks),
        notice=story.phrases.text["demonstration_notice"] if site_plan.shows_invented_parts else "",
    )


def _signed(caution: Caution, words: PackWords) -> SignedCaution:
    signal = Signal(caution.severity.value)
    note = CautionNote(
        signal=signal,
        signal_word=words.story.word(Word(signal.value)),
        hazard=caution.hazard,
        why=caution.why,
        what_to_do=caution.what_to_do,
        source=sourced(caution.source, caution.status, words.story),
    )
    return SignedCaution(note, words.signs[caution.id])
