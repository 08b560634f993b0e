"""The closing sections: the numbered limits and sources, and the installer's caution sheet, always last."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import (
    Block,
    CautionNote,
    CautionSheet,
    Column,
    Emphasis,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Signal,
    SignedCaution,
    Table,
)
from spoutline.documents.content.references import References
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.limit import Limit, LimitStatus
from spoutline.model.plan import SitePlan
from spoutline.rules.work.job_conditions import job_conditions
from spoutline.ruletables.cautions import Caution

_SIGNALS = tuple(Signal)
_MOST_CAUTION_PAGES = 3  # set larger than in the pack, which is carried


def reference_blocks(references: References, story: Story) -> Iterator[Block]:
    """Return every limit row and source that the document referred to so far, by number."""
    limits, sources = references.limits(), references.sources()
    if not limits and not sources:
        return
    yield PageBreak(unless_left=0.5)
    yield Heading(story.word(Word.REFERENCES), 1)
    yield Paragraph(story.word(Word.LIMITS_NOTE), Role.NOTE)
    number = Column(story.word(Word.NUMBER), 0.5)
    if limits:
        columns = (
            number,
            Column(story.word(Word.LIMIT), 3.2),
            Column(story.word(Word.SOURCE), 4.2),
            Column(story.word(Word.LIMIT_STATUS), 1.9),
        )
        yield Heading(story.word(Word.LIMITS_USED), 2)
        yield Table(columns, tuple(_limit_row(mark, limit, story) for mark, limit in limits), dense=True)
    if sources:
        yield Heading(story.word(Word.OTHER_SOURCES), 2)
        yield Table((number, Column(story.word(Word.SOURCE), 9.3)), tuple(map(Row, sources)), dense=True)


def caution_blocks(site_plan: SitePlan, story: Story, cautions: tuple[Caution, ...]) -> Iterator[Block]:
    """Return the installer's caution sheet for everything present on the site, gravest cautions first."""
    conditions = job_conditions(site_plan)
    fitting = (caution for caution in cautions if caution.applies_to(conditions))
    chosen = sorted(fitting, key=lambda caution: _SIGNALS.index(Signal(caution.severity.value)))
    yield PageBreak()
    yield Heading(story.word(Word.CAUTION_SHEET), 1)
    yield Paragraph(story.word(Word.DEFERENCE), Role.LEAD)
    yield Paragraph(f"{story.word(Word.CAUTION_NOTE)} {site_plan.survey.site.name}.", Role.NOTE)
    notes = tuple(SignedCaution(_note(caution, story), caution.sign) for caution in chosen if caution.sign is not None)
    if len(notes) == len(chosen):
        yield CautionSheet(notes, _MOST_CAUTION_PAGES, leads=2)
    else:  # cautions of a table of one's own need no signs
        yield from (_note(caution, story) for caution in chosen)


def _note(caution: Caution, story: Story) -> CautionNote:
    signal = Signal(caution.severity.value)
    return CautionNote(
        signal=signal,
        signal_word=story.word(Word(signal.value)),
        hazard=caution.hazard,
        why=caution.why,
        what_to_do=caution.what_to_do,
        source=story.sourced(caution.source, caution.status),
    )


def _limit_row(mark: str, limit: Limit, story: Story) -> Row:
    what = f"{story.limit_title(limit)}{story.writing.colon} {story.limit_value(limit)}"
    unsure = limit.status in (LimitStatus.MEMORY, LimitStatus.COMMON_PRACTICE, LimitStatus.JUDGEMENT)
    cells = (mark, what, story.limit_source(limit), story.limit_status(limit.status))
    return Row(cells, Emphasis.FAULT if unsure else Emphasis.NONE)
