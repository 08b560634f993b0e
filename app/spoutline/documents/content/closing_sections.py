"""The closing sections: the limits used with their sources, and the installer's caution sheet, always last."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import (
    Block,
    CautionNote,
    Column,
    Emphasis,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Signal,
    Table,
)
from spoutline.documents.content.position_section import all_findings, requirement_lines
from spoutline.documents.job_conditions import job_conditions
from spoutline.explain.paper_words import PaperWord as Word
from spoutline.explain.story import Story
from spoutline.model.limit import Limit, LimitId, LimitStatus
from spoutline.model.plan import SitePlan
from spoutline.ruletables.cautions import Caution

_SIGNALS = tuple(Signal)


def limit_blocks(site_plan: SitePlan, story: Story) -> Iterator[Block]:
    """Return every limit row that a requirement line or finding of the site used, with source and status."""
    used = _limits_used(site_plan)
    if not used:
        return
    yield PageBreak()
    yield Heading(story.word(Word.LIMITS_USED), 1)
    yield Paragraph(story.word(Word.LIMITS_NOTE), Role.LEAD)
    columns = (
        Column(story.word(Word.LIMIT), 2.8),
        Column(story.word(Word.VALUE), 1.5),
        Column(story.word(Word.SOURCE), 3.0),
        Column(story.word(Word.LIMIT_STATUS), 1.7),
    )
    yield Table(columns, tuple(_limit_row(limit, story) for limit in used))


def caution_blocks(site_plan: SitePlan, story: Story, cautions: tuple[Caution, ...]) -> Iterator[Block]:
    """Return the installer's caution sheet for everything present on the site, gravest cautions first."""
    conditions = job_conditions(site_plan)
    fitting = (caution for caution in cautions if caution.applies_to(conditions))
    chosen = sorted(fitting, key=lambda caution: _SIGNALS.index(Signal(caution.severity.value)))
    yield PageBreak()
    yield Heading(story.word(Word.CAUTION_SHEET), 1)
    yield Paragraph(story.word(Word.DEFERENCE), Role.LEAD)
    yield Paragraph(f"{story.word(Word.CAUTION_NOTE)} {site_plan.survey.site.name}.", Role.NOTE)
    for caution in chosen:
        signal = Signal(caution.severity.value)
        yield CautionNote(
            signal=signal,
            signal_word=story.word(Word(signal.value)),
            hazard=caution.hazard,
            why=caution.why,
            what_to_do=caution.what_to_do,
            source=story.sourced(caution.source, caution.status),
        )


def _limits_used(site_plan: SitePlan) -> tuple[Limit, ...]:
    ids: set[LimitId] = set()
    for plan in site_plan.positions:
        for line in requirement_lines(plan):
            ids.update(line.limit_ids)
        for finding in all_findings(plan):
            ids.update(finding.limit_ids)
    return tuple(limit for limit in site_plan.jurisdiction.limits if limit.id in ids)


def _limit_row(limit: Limit, story: Story) -> Row:
    cells = (limit.title, story.limit_value(limit), story.limit_source(limit), story.limit_status(limit.status))
    unsure = limit.status in (LimitStatus.MEMORY, LimitStatus.COMMON_PRACTICE, LimitStatus.JUDGEMENT)
    return Row(cells, Emphasis.FAULT if unsure else Emphasis.NONE)
