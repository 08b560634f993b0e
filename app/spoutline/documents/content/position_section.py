"""The section of one position: its head, set, drawing, checks, joints, findings and alternatives."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.annex_marks import GroupMark
from spoutline.documents.content.blocks import (
    Block,
    Bullets,
    Column,
    Columns,
    Emphasis,
    Figure,
    Heading,
    KeyValues,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.grouping import LikePositions
from spoutline.documents.content.references import References
from spoutline.documents.content.set_sections import alternative_blocks, check_blocks, joint_blocks, parts_blocks
from spoutline.documents.content.site_sections import position_liquid
from spoutline.documents.content.told_before import Section, ToldBefore
from spoutline.documents.drawing.flow_chart import flow_chart
from spoutline.documents.drawing.position import position_drawing
from spoutline.documents.drawing.shapes import Drawing
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.assumed import assumed_sentence, inherited_sentence, own_findings
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.finding import Finding, Severity, SubjectKind
from spoutline.model.plan import PositionPlan
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementLine
from spoutline.model.survey import Position

_LABELS_IN_HEADING = 6
_LABELS_BESIDE_MARK = 2
_SIGNS_BESIDE_DRAWING = 800  # of the head of a position; a longer one stands above its drawing
_HEAD_SHARE = 0.44  # of the width, beside a drawing
_HEIGHT_BESIDE_HEAD_MM = 74.0
_LABELS_IN_CELL = 2


def position_blocks(
    like: LikePositions,
    currency: str,
    story: Story,
    references: References,
    mark: GroupMark | None = None,
    *,
    before: ToldBefore | None = None,
    with_flow_curve: bool = False,
) -> Iterator[Block]:
    """Return what is done at a position, and at all that are like it; what it is and its parts on one page.

    Among many positions a section begins wherever enough of a page is left.
    What the positions ask for and how the figures were worked out follow in the annexes. The flow curve stands there
    too; ``with_flow_curve`` shows it here, for a copy without that annex. ``mark`` is what the annex calls the group,
    and ``before`` what was told of other groups: equal joints, findings and alternatives are not told again.
    """
    plan = like.plan
    parts = (*_no_set_blocks(plan, currency, story), *parts_blocks(plan, currency, story, close=mark is not None))
    if mark is None:
        yield PageBreak(opening=2 + len(parts))
        yield Heading(heading_of(like.positions, story), 1)
    else:
        yield PageBreak(opening=2)
        heading = heading_of(like.positions, story, _LABELS_BESIDE_MARK)
        yield Heading(f"{mark.text}{story.writing.colon} {heading}", 1, mark.anchor)
    head, drawing = KeyValues(tuple(_head_rows(like, story))), position_drawing(plan, story)
    beside = mark is not None and sum(len(row.text) for row in head.rows) <= _SIGNS_BESIDE_DRAWING
    if beside:
        figure = Figure(drawing, drawing.description, story.word(Word.SCALE), most_height_mm=_HEIGHT_BESIDE_HEAD_MM)
        yield Columns((head,), (figure,), _HEAD_SHARE)
        yield from _drawing_notes(drawing)
    else:
        yield head
    yield from parts
    if not beside:
        yield Heading(story.word(Word.DRAWING), 2)
        yield Figure(drawing, drawing.description, story.word(Word.SCALE))
        yield from _drawing_notes(drawing)
    if plan.chosen is not None:
        yield from check_blocks(plan.chosen, story, references, None if mark is None else mark.marks)
        if with_flow_curve:
            yield from flow_curve_blocks(plan, story)
    sections = tuple(_closing_sections(plan, currency, story, references))
    if mark is None or before is None:
        yield from (block for section in sections for block in section.blocks)
    else:
        yield from before.blocks(sections, mark)


def _closing_sections(plan: PositionPlan, currency: str, story: Story, references: References) -> Iterator[Section]:
    """Yield what many positions have in common, however they differ: joints, findings and alternatives."""
    if plan.chosen is not None:
        yield Section(story.word(Word.JOINTS), tuple(joint_blocks(plan.chosen, story)))
    if plan.refusal is None:  # the findings of a refusal are its reasons, told above
        found = own_findings(all_findings(plan))
        blocks = tuple(_finding_blocks(found, plan.position, story, references))
        yield Section(story.word(Word.FINDINGS), blocks, "" if found else story.word(Word.NO_FINDINGS))
    yield Section(story.word(Word.ALTERNATIVES), tuple(alternative_blocks(plan, currency, story)))


def flow_curve_blocks(plan: PositionPlan, story: Story) -> Iterator[Figure]:
    """Return the pressure that the set needs against the flow; nothing where no flow was worked out."""
    chart = flow_chart(plan, story)
    if chart is not None:
        yield Figure(chart, f"{story.word(Word.FLOW_CURVE)}. {chart.description}")


def heading_of(positions: tuple[Position, ...], story: Story, shown: int = _LABELS_IN_HEADING) -> str:
    """Return the heading of a group of like positions, which names the first ``shown`` of them."""
    word = story.word(Word.POSITION if len(positions) == 1 else Word.POSITIONS)
    return f"{word} {_labels(positions, shown, story)}"


def short_labels(positions: tuple[Position, ...], story: Story) -> str:
    """Return the labels of a group of like positions, short enough for a narrow column."""
    return _labels(positions, _LABELS_IN_CELL, story)


def requirement_lines(plan: PositionPlan) -> tuple[RequirementLine, ...]:
    """Return the derived lines of a position, of a refusal too."""
    if plan.requirement is not None:
        return plan.requirement.lines
    return plan.refusal.lines if plan.refusal is not None else ()


def all_findings(plan: PositionPlan) -> tuple[Finding, ...]:
    """Return what was found about the position, then about the chosen set, then what was left open."""
    about_position = plan.requirement.findings if plan.requirement is not None else ()
    about_set = plan.chosen.findings if plan.chosen is not None else ()
    return tuple(dict.fromkeys((*about_position, *about_set, *plan.left_open)))


def _labels(positions: tuple[Position, ...], shown: int, story: Story) -> str:
    labels = [position.label for position in positions[:shown]]
    more = len(positions) - len(labels)
    text = ", ".join(labels)
    return story.phrases.fill("and_more", text=text, count=more) if more else text


def _head_rows(like: LikePositions, story: Story) -> Iterator[Named]:
    plan, position = like.plan, like.plan.position
    yield Named(story.word(Word.STATUS), story.marked_verdict(plan))
    if len(like.positions) == 1:
        yield Named(story.word(Word.DISPENSER), position.dispenser)
    else:
        places = (f"{one.label} ({story.inside(story.word(Word.DISPENSER))} {one.dispenser})" for one in like.positions)
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
        height = story.height(filler.height_m)
        text = story.phrases.fill("filler_data", label=filler.label, distance=distance, height=height)
        yield Named(story.word(Word.FILLER), text)
    if plan.requirement is not None:
        yield Named(story.word(Word.FOOTING), story.footing(plan.requirement))
    inherited = {one.label: inherited_sentence(one, story) for one in like.positions}
    assumed = {one.label: assumed_sentence(one, story) for one in like.positions}
    for word, found in ((Word.DISPENSER_TYPE, inherited), (Word.ASSUMED, assumed)):
        for text in dict.fromkeys(text for text in found.values() if text):
            labels = [label for label, own in found.items() if own == text]
            of = "" if len(labels) == len(found) else f"{', '.join(labels)}{story.writing.colon} "
            yield Named(story.word(word), f"{of}{text}")
    for one in like.positions:
        if one.notes.strip():
            text = (
                one.notes.strip()
                if len(like.positions) == 1
                else f"{one.label}{story.writing.colon} {one.notes.strip()}"
            )
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


def _drawing_notes(drawing: Drawing) -> Iterator[Block]:
    if drawing.notes:
        yield Paragraph(" ".join(drawing.notes), Role.NOTE)


def _finding_blocks(
    found: tuple[Finding, ...], position: Position, story: Story, references: References
) -> Iterator[Block]:
    yield Heading(story.word(Word.FINDINGS), 2)
    findings = story.gravest_first(found)
    if not findings:
        yield Paragraph(story.word(Word.NO_FINDINGS))
        return
    columns = (
        Column(story.word(Word.WEIGHT), 1.7),
        Column(story.word(Word.SUBJECT), 0.9),
        Column(story.word(Word.FINDING), 6.0),
        Column(story.word(Word.SOURCE), 0.9),
    )
    yield Table(columns, tuple(_finding_row(one, position, story, references) for one in findings), dense=True)
    present = {finding.severity for finding in findings}
    notes = (
        f"{story.title(item)}{story.writing.colon} {story.severity_note(item)}" for item in Severity if item in present
    )
    yield Paragraph(" ".join(notes), Role.NOTE)


def _finding_row(finding: Finding, position: Position, story: Story, references: References) -> Row:
    text = story.finding(finding)
    cells = (
        f"{text.severity_word} ({text.verdict_word})",
        story.word(SubjectKind.POSITION) if text.subject == position.label else text.subject,
        text.sentence,
        references.of_asked(finding),
    )
    return Row(cells, Emphasis.FAULT if text.severity is Severity.MUST else Emphasis.NONE)
