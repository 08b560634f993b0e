"""The section of one position: its head, set, drawing, checks, findings, requirement and calculation sheet."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import (
    Block,
    Bullets,
    Column,
    Emphasis,
    Figure,
    Heading,
    KeyValues,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
    Worked,
)
from spoutline.documents.content.set_sections import alternative_blocks, check_blocks, joint_blocks, parts_blocks
from spoutline.documents.content.site_sections import position_liquid
from spoutline.documents.drawing import position_drawing
from spoutline.documents.flow_chart import flow_chart
from spoutline.documents.grouping import LikePositions
from spoutline.explain.paper_words import PaperWord as Word
from spoutline.explain.story import Story
from spoutline.explain.texts import Named
from spoutline.model.finding import Finding, Severity, SubjectKind
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementLine
from spoutline.model.survey import Position

_LABELS_IN_HEADING = 6


def position_blocks(like: LikePositions, currency: str, story: Story) -> Iterator[Block]:
    """Return everything the bill says about a position, and about all that are like it; on a page of its own."""
    plan = like.plan
    yield PageBreak()
    yield Heading(_heading(like.positions, story), 1)
    yield KeyValues(tuple(_head_rows(like, story)))
    yield from _no_set_blocks(plan, currency, story)
    yield from parts_blocks(plan, currency, story)
    yield from _drawing_blocks(plan, story)
    if plan.chosen is not None:
        yield from check_blocks(plan.chosen, story)
        yield from joint_blocks(plan.chosen, story)
    if plan.refusal is None:  # the findings of a refusal are its reasons, told above
        yield from _finding_blocks(plan, story)
    yield from _requirement_blocks(plan, story)
    yield from alternative_blocks(plan, currency, story)
    if plan.chosen is not None:
        yield from _calculation_blocks(plan.chosen, story)


def requirement_lines(plan: PositionPlan) -> tuple[RequirementLine, ...]:
    """Return the derived lines of a position, of a refusal too."""
    if plan.requirement is not None:
        return plan.requirement.lines
    return plan.refusal.lines if plan.refusal is not None else ()


def all_findings(plan: PositionPlan) -> tuple[Finding, ...]:
    """Return what was found about the position, then about the chosen set."""
    about_position = plan.requirement.findings if plan.requirement is not None else ()
    about_set = plan.chosen.findings if plan.chosen is not None else ()
    return tuple(dict.fromkeys((*about_position, *about_set)))


def _heading(positions: tuple[Position, ...], story: Story) -> str:
    labels = [position.label for position in positions[:_LABELS_IN_HEADING]]
    more = len(positions) - len(labels)
    word = story.word(Word.POSITION if len(positions) == 1 else Word.POSITIONS)
    text = f"{word} {', '.join(labels)}"
    return story.phrases.fill("and_more", text=text, count=more) if more else text


def _head_rows(like: LikePositions, story: Story) -> Iterator[Named]:
    plan, position = like.plan, like.plan.position
    yield Named(story.word(Word.STATUS), story.marked_status(plan.status))
    if len(like.positions) == 1:
        yield Named(story.word(Word.DISPENSER), position.dispenser)
    else:
        places = (f"{one.label} ({story.word(Word.DISPENSER).lower()} {one.dispenser})" for one in like.positions)
        yield Named(f"{story.word(Word.POSITIONS)} ({len(like.positions)})", ", ".join(places))
    yield Named(story.word(Word.LIQUID), position_liquid(position, story))
    yield Named(story.word(Word.DUTY), f"{story.word(position.duty)}, {story.word(position.retrieval)}")
    today, wanted = story.word(position.vapour_today), story.word(position.vapour_wanted)
    yield Named(story.word(Word.VAPOUR), today if today == wanted else f"{today} → {wanted}")
    outlet = position.outlet
    port = story.port(Port(outlet.thread, outlet.size, outlet.gender, outlet.path))
    height = story.show(outlet.height_m, Dimension.LENGTH)
    yield Named(story.word(Word.OUTLET), story.phrases.fill("outlet_data", port=port, height=height))
    for filler in position.fillers:
        distance = story.show(filler.distance_m, Dimension.LENGTH)
        height = story.show(filler.height_m, Dimension.LENGTH)
        text = story.phrases.fill("filler_data", label=filler.label, distance=distance, height=height)
        yield Named(story.word(Word.FILLER), text)
    for one in like.positions:
        if one.notes.strip():
            text = one.notes.strip() if len(like.positions) == 1 else f"{one.label}: {one.notes.strip()}"
            yield Named(story.word(Word.NOTES), text)


def _no_set_blocks(plan: PositionPlan, currency: str, story: Story) -> Iterator[Block]:
    """Return why there is no set and what can be done; nothing where there is one."""
    if plan.refusal is not None:
        yield Heading(story.word(Word.NO_SET), 2)
        yield Bullets(story.refusal(plan.refusal))
        if plan.refusal.ways_out:
            yield Heading(story.word(Word.WAYS_OUT), 2)
            yield Bullets(tuple(story.way_out(way) for way in plan.refusal.ways_out))
    if plan.conflict is not None:
        yield Heading(story.word(Word.NO_SET), 2)
        yield Bullets(story.conflict(plan.conflict))
        if plan.conflict.relaxations:
            yield Heading(story.word(Word.CHANGES), 2)
            yield Bullets(tuple(story.relaxation(change, currency) for change in plan.conflict.relaxations))


def _drawing_blocks(plan: PositionPlan, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.DRAWING), 2)
    drawing = position_drawing(plan, story)
    yield Figure(drawing, drawing.description, story.word(Word.SCALE))
    for note in drawing.notes:
        yield Paragraph(note, Role.NOTE)
    chart = flow_chart(plan, story)
    if chart is not None:
        yield Heading(story.word(Word.FLOW_CURVE), 2)
        yield Figure(chart, chart.description)


def _finding_blocks(plan: PositionPlan, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.FINDINGS), 2)
    texts = story.by_severity(all_findings(plan))
    if not texts:
        yield Paragraph(story.word(Word.NO_FINDINGS))
        return
    columns = (
        Column(story.word(Word.WEIGHT), 1.2),
        Column(story.word(Word.SUBJECT), 1.2),
        Column(story.word(Word.FINDING), 4.0),
        Column(story.word(Word.SOURCE), 2.2),
    )
    position = story.word(SubjectKind.POSITION)
    rows = tuple(
        Row(
            (
                f"{text.severity_word} ({text.verdict_word})",
                position if text.subject == plan.position.label else text.subject,
                text.sentence,
                text.source,
            ),
            Emphasis.FAULT if text.severity is Severity.MUST else Emphasis.NONE,
        )
        for text in texts
    )
    yield Table(columns, rows)
    present = {text.severity for text in texts}
    notes = (f"{story.title(item)}: {story.severity_note(item)}" for item in Severity if item in present)
    yield Paragraph(" ".join(notes), Role.NOTE)


def _requirement_blocks(plan: PositionPlan, story: Story) -> Iterator[Block]:
    lines = requirement_lines(plan)
    if not lines:
        return
    yield Heading(story.word(Word.REQUIREMENT), 2)
    columns = (
        Column(story.word(Word.REQUIREMENT_LINE), 1.8),
        Column(story.word(Word.WEIGHT), 0.8),
        Column(story.word(Word.ANSWER), 3.4),
        Column(story.word(Word.SOURCE), 2.6),
    )
    texts = (story.requirement_line(line) for line in lines)
    yield Table(columns, tuple(Row((text.title, text.severity_word, text.answer, text.source)) for text in texts))


def _calculation_blocks(judged: JudgedSet, story: Story) -> Iterator[Block]:
    """Return the calculation sheet: for each check its worked lines, limit and sources."""
    checks = [check for check in judged.checks if check.lines]
    if not checks:
        return
    yield Heading(story.word(Word.CALCULATION), 2)
    yield Paragraph(story.word(Word.CALCULATION_NOTE), Role.NOTE)
    for check in checks:
        text = story.check(check)
        yield Worked(
            title=text.title,
            outcome=f"{text.value}; {story.marked_outcome(check.outcome)}",
            lines=tuple(story.worked_line(line) for line in check.lines),
            limit=f"{story.word(Word.LIMIT)}: {text.limit}",
            sources=text.sources,
        )
