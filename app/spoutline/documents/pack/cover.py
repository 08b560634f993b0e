"""The first pages of the pack: cover, people, local code and positions."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Emphasis,
    Heading,
    KeyValues,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.demands import Demand, demands_of
from spoutline.documents.pack.setting_words import liquid_text, written
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.pack import PackJob
from spoutline.model.plan import PlanStatus, SitePlan
from spoutline.model.requirement import RequirementId

_TO_WRITE = "______________________________"
_TICK = "☐"


def cover_blocks(site_plan: SitePlan, job: PackJob, story: Story, dated: date | None) -> Iterator[Block]:
    """Return the cover: site, days, people to call, the box for the local code, positions to do."""
    yield Heading(story.word(Word.PACK), 1)
    yield Paragraph(story.word(Word.ADVICE), Role.LEAD)
    yield KeyValues(tuple(_site_rows(site_plan, job, story, dated)))
    yield Heading(story.word(Word.CONTACTS), 2)
    yield _contacts(job, story)
    yield Heading(story.word(Word.LOCAL_CODE), 2)
    yield Paragraph(story.word(Word.LOCAL_CODE_NOTE), Role.LEAD)
    yield KeyValues(tuple(_code_rows(job, story)))
    yield Heading(story.word(Word.POSITIONS), 2)
    yield _positions(site_plan, story)
    if job.notes:
        yield Heading(story.word(Word.NOTES), 2)
        yield Paragraph(job.notes)


def sets_note(site_plan: SitePlan, story: Story) -> Block:
    """Return the line that says which sets a paper shows."""
    return Paragraph(sets_text(site_plan, story), Role.NOTE)


def sets_text(site_plan: SitePlan, story: Story) -> str:
    """Return which sets a paper shows, as one line of text."""
    return f"{story.phrases.text['sets_title']}{story.writing.colon} {sets_head(site_plan, story)}"


def _site_rows(site_plan: SitePlan, job: PackJob, story: Story, dated: date | None) -> Iterator[Named]:
    site = site_plan.survey.site
    yield Named(story.word(Word.SITE), site.name)
    if site.address.strip():
        yield Named(story.word(Word.ADDRESS), site.address.strip())
    if site.customer:
        yield Named(story.word(Word.CUSTOMER), site.customer)
    yield Named(story.word(Word.FIRST_DAY), story.day(job.first_day) if job.first_day else _TO_WRITE)
    yield Named(story.word(Word.LAST_DAY), story.day(job.last_day) if job.last_day else _TO_WRITE)
    yield Named(story.word(Word.SERVICE), story.word(site.service))
    yield Named(story.word(Word.JURISDICTION), f"{site_plan.jurisdiction.title}, {site_plan.jurisdiction.edition}")
    yield Named(story.phrases.text["sets_title"], sets_head(site_plan, story))
    demands = demands_of(site_plan)
    if demands:
        yield Named(story.word(Word.ASKED_HERE), "\n".join(_demand(one, site_plan, story) for one in demands))
    yield Named(story.word(Word.REVISION), site_plan.provenance.survey_fingerprint)
    if dated is not None:
        yield Named(story.word(Word.PRINTED), story.day(dated))


_DEMAND_WORDS = {
    RequirementId.LOW_PERMEATION: Word.ASKED_LOW_PERMEATION,
    RequirementId.ENHANCED_CONVENTIONAL: Word.ASKED_ENHANCED,
    RequirementId.RECONNECTABLE: Word.ASKED_RECONNECTABLE,
}


def _demand(demand: Demand, site_plan: SitePlan, story: Story) -> str:
    """Return what is asked, of which positions where it is not of all, and by whom."""
    some = len(demand.labels) < len(site_plan.positions)
    places = f": {', '.join(demand.labels)}" if some else ""
    return f"{story.word(_DEMAND_WORDS[demand.id])}{places} ({written(demand.source, story)})"


def _contacts(job: PackJob, story: Story) -> Table:
    columns = (
        Column(story.word(Word.ROLE), 1.4),
        Column(story.word(Word.NAME), 1.6),
        Column(story.word(Word.TELEPHONE), 1.2),
    )
    rows = [Row((one.role, one.name, one.telephone or _TO_WRITE)) for one in job.contacts]
    rows.append(Row((story.word(Word.EMERGENCY), "", _TO_WRITE)))
    if not job.contacts:
        rows.append(Row((story.word(Word.CUSTOMER), "", _TO_WRITE)))
    return Table(columns, tuple(rows))


def _code_rows(job: PackJob, story: Story) -> Iterator[Named]:
    yield Named(story.word(Word.AUTHORITY), job.authority or _TO_WRITE)
    yield Named(story.word(Word.ADOPTED_CODES), job.adopted_codes or _TO_WRITE)
    yield Named(story.word(Word.PERMIT), job.permit_number or _TO_WRITE)
    yield Named(story.word(Word.ASKED_OF), f"{_TO_WRITE}  {story.word(Word.ASKED_ON)} ________________")
    yield Named(story.word(Word.LICENCE), _TO_WRITE)


def _positions(site_plan: SitePlan, story: Story) -> Table:
    columns = (
        Column(story.word(Word.POSITION), 1.4),
        Column(story.word(Word.DISPENSER), 0.75),
        Column(story.word(Word.LIQUID), 1.8),
        Column(story.word(Word.DUTY), 0.6),
        Column(story.word(Word.STATUS), 2.9),
        Column(story.word(Word.DONE), 0.6, Alignment.RIGHT),
    )
    rows = []
    for plan in site_plan.positions:
        position = plan.position
        sound = plan.status is PlanStatus.FITS and plan.keeps_every_must
        cells = (
            position.label,
            position.dispenser,
            liquid_text(position, story),
            story.word(position.duty),
            story.marked_verdict(plan),
            _TICK if plan.chosen is not None else "–",
        )
        rows.append(Row(cells, Emphasis.NONE if sound else Emphasis.FAULT))
    return Table(columns, tuple(rows), dense=True)
