"""The short bill: positions with verdict, set and sum, and the parts of the site; the caution sheet follows."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from datetime import date

from spoutline.documents.content.bill_frame import bill_document
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Document,
    Emphasis,
    Heading,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.closing_sections import caution_blocks
from spoutline.documents.content.site_sections import (
    bill_title,
    built_rows,
    consolidated_blocks,
    found_blocks,
    found_in,
    position_liquid,
    short_site_rows,
)
from spoutline.documents.content.totals import BillLine, position_lines, total_of
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.assumed import station_lines
from spoutline.explain.plan.story import Story, mark_of
from spoutline.frozen import frozen
from spoutline.model.answered import AssumedTopic, assumed_topics
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.record import CommissioningRecord
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.ruletables.cautions import Caution


def short_bill_content(
    site_plan: SitePlan,
    story: Story,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None = None,
    records: tuple[CommissioningRecord, ...] = (),
) -> Document:
    """Return the bill without drawings, checks and annexes: at most a page for every ten hoses, cautions apart.

    Positions with the same liquid, duty, verdict and parts stand in one row. Arguments as ``bill_content``.
    """
    found = found_in(records)
    title = f"{bill_title(records, story)} ({story.word(Word.SHORT_FORM)})"
    head = (*short_site_rows(site_plan, story, dated), *built_rows(site_plan, records, story))
    blocks: list[Block] = [
        Heading(title, 1),
        Paragraph(story.phrases.text["advice"], Role.NOTE),
        Paragraph("  ·  ".join(f"{row.label}{story.writing.colon} {row.text}" for row in head)),
        *(block for plan in site_plan.positions for block in found_blocks((plan.position,), found, story)),
        Heading(story.word(Word.POSITIONS), 2),
        _positions_table(site_plan, story, closed=found.keys()),
        *_unproven_blocks(site_plan, story),
        *_no_set_blocks(site_plan, story),
        *_assumed_blocks(site_plan, story),
        Heading(story.word(Word.WHOLE_SITE), 2),
        *consolidated_blocks(site_plan, story, close=True),
        Paragraph(f"{story.word(Word.TOTAL_NOTE)} {story.word(Word.SHORT_NOTE)}", Role.NOTE),
        *caution_blocks(site_plan, story, cautions),
    ]
    return bill_document(site_plan, story, title, blocks, dated=dated)


@frozen
class _Told:
    """What the table tells of a position beside its label."""

    liquid: str
    verdict: str
    parts: str
    price: str
    is_sound: bool


def _positions_table(site_plan: SitePlan, story: Story, closed: Collection[str]) -> Table:
    currency = site_plan.survey.site.currency
    refs = sorted({line.part.ref for plan in site_plan.positions for line in position_lines(plan, currency)})
    names = dict(zip(refs, told_apart(refs), strict=True))
    shared: dict[_Told, list[str]] = {}
    for plan in site_plan.positions:
        label = plan.position.label
        told = _told(plan, names, currency, story, is_closed=label in closed)
        shared.setdefault(told, []).append(label)
    rows = [
        Row(
            (", ".join(labels), told.liquid, told.verdict, told.parts, told.price),
            Emphasis.NONE if told.is_sound else Emphasis.FAULT,
        )
        for told, labels in shared.items()
    ]
    total = total_of(line for plan in site_plan.positions for line in position_lines(plan, currency))
    rows.append(Row((story.word(Word.TOTAL), "", "", "", story.bare_money(total.minor, currency)), Emphasis.TOTAL))
    columns = (
        Column(story.word(Word.POSITION), 2.0),
        Column(f"{story.word(Word.LIQUID)}, {story.inside(story.word(Word.DUTY))}", 2.0),
        Column(story.word(Word.STATUS), 2.2),
        Column(story.word(Word.PARTS), 4.4),
        Column(f"{story.word(Word.UNIT_PRICE)}, {currency}", 0.9, Alignment.RIGHT),
    )
    return Table(columns, tuple(rows), tight=True)


def _told(plan: PositionPlan, names: Mapping[PartRef, str], currency: str, story: Story, *, is_closed: bool) -> _Told:
    lines = position_lines(plan, currency)
    return _Told(
        liquid=f"{position_liquid(plan.position, story)}, {story.word(plan.position.duty)}",
        verdict=f"✗ {story.word(Word.CLOSED)}" if is_closed else story.marked_verdict(plan),
        parts=", ".join(_piece(line, names, story) for line in lines),
        price=story.bare_money(total_of(lines).minor, currency) if lines else "–",
        is_sound=plan.keeps_every_must and not is_closed,
    )


def _piece(line: BillLine, names: Mapping[PartRef, str], story: Story) -> str:
    counted = f"{line.quantity} × " if line.quantity > 1 else ""
    return f"{counted}{names[line.part.ref]}{f' ({story.word(Word.STAYS)})' if line.kept else ''}"


def _unproven_blocks(site_plan: SitePlan, story: Story) -> Iterator[Block]:
    """Return which sets are not proven to be the best, and what may settle it; equal lines once."""
    lines: dict[str, list[str]] = {}
    for plan in site_plan.positions:
        for finding in plan.findings_of((RuleId.SET_NOT_PROVEN_BEST,)):
            lines.setdefault(story.finding(finding).sentence, []).append(plan.position.label)
    for text, labels in lines.items():
        yield Paragraph(f"{', '.join(labels)}{story.writing.colon} {text}", Role.NOTE)


def _no_set_blocks(site_plan: SitePlan, story: Story) -> Iterator[Block]:
    """Return why positions have no set, as far as that is known; equal reasons once."""
    reasons: dict[tuple[str, str], list[str]] = {}
    for plan in site_plan.positions:
        told: tuple[str, ...] = ()
        if plan.refusal is not None:
            told = (*story.refusal(plan.refusal), *(story.way_out(way) for way in plan.refusal.ways_out))
        if plan.conflict is not None:
            told = (*told, *story.conflict(plan.conflict))
        told = (*told, *(story.finding(one).sentence for one in plan.findings_of((RuleId.REASONS_NOT_DECIDED,))))
        if told:
            reasons.setdefault((mark_of(plan), " ".join(told)), []).append(plan.position.label)
    if reasons:
        yield Heading(story.word(Word.NO_SET), 2)
        for (mark, text), labels in reasons.items():
            yield Paragraph(f"{mark} {', '.join(labels)}{story.writing.colon} {text}", Role.NOTE)


def _assumed_blocks(site_plan: SitePlan, story: Story) -> Iterator[Block]:
    """Return what nobody answered, each thing once with the positions that it holds for."""
    found: dict[AssumedTopic, list[str]] = {}
    for plan in site_plan.positions:
        for topic in assumed_topics(plan.position):
            found.setdefault(topic, []).append(plan.position.label)
    holding: dict[tuple[str, ...], list[str]] = {}
    for topic in sorted(found, key=list(AssumedTopic).index):
        holding.setdefault(tuple(found[topic]), []).append(story.word(topic))
    every = len(site_plan.positions)
    told = [
        f"{', '.join(topics)} ({story.word(Word.ALL_POSITIONS) if len(labels) == every else ', '.join(labels)})"
        for labels, topics in holding.items()
    ]
    topics = (story.phrases.fill("assumed", topics=story.writing.listed(told)),) if told else ()
    lines = (*topics, *(line.text for line in station_lines(site_plan.positions, story)))
    if lines:
        yield Paragraph(" ".join(lines), Role.NOTE)
