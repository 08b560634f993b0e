"""The sections about a chosen set: parts, what goes with it, joints, checks, alternatives."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from spoutline.documents.content.annex_marks import AnnexMarks
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Emphasis,
    Heading,
    Link,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.references import References
from spoutline.documents.content.site_sections import named, price_cells, price_columns, total_row, unpriced_note
from spoutline.documents.content.totals import accessory_lines, position_lines, set_lines, total_of
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import CheckText
from spoutline.model.check import Check, Outcome
from spoutline.model.plan import HangingSet, Joint, JudgedSet, PositionPlan

# widths of a table in larger letters: check, value, limit, margin, outcome; number, place, part number, maker, name
_CHECK_SHARES: Final = (2.5, 2.65, 2.2, 1.6, 1.65)
_PART_SHARES: Final = (0.4, 1.15, 1.1, 1.3, 3.65)


def parts_blocks(plan: PositionPlan, currency: str, story: Story, *, close: bool = False) -> Iterator[Block]:
    """Return the parts from dispenser to vehicle, numbered as in the drawing, and what goes with them.

    ``close`` is for a table set in larger letters, as in a bill of many positions.
    """
    if plan.chosen is None:
        return
    yield Heading(story.word(Word.PARTS), 2)
    shares = _PART_SHARES if close else (0.5, 1.6, 1.15, 1.25, 3.1)
    columns = (
        Column(story.word(Word.NUMBER), shares[0]),
        Column(story.word(Word.PLACE), shares[1]),
        Column(story.word(Word.PART_NUMBER), shares[2]),
        Column(story.word(Word.MAKER), shares[3]),
        Column(story.word(Word.PART_NAME), shares[4]),
        *price_columns(currency, story),
    )
    links = plan.chosen.hanging_set.links
    rows = [
        Row(
            (
                str(number),
                story.word(link.slot),
                link.part.number,
                link.part.maker,
                named(line, story),
                *price_cells(line, currency, story),
            )
        )
        for number, (link, line) in enumerate(zip(links, set_lines(plan, currency), strict=True), start=1)
    ]
    for accessory, line in zip(plan.accessories, accessory_lines(plan, currency), strict=True):
        part = accessory.part
        name = story.writing.listed((story.part_name(part), story.accessory_reason(accessory.reason)))
        rows.append(
            Row(("", story.word(part.kind), part.number, part.maker, name, *price_cells(line, currency, story)))
        )
    total = total_of(position_lines(plan, currency))
    yield Table(columns, (*rows, total_row(total, currency, len(columns), story)), dense=True)
    yield from unpriced_note(total, story)


def joint_blocks(judged: JudgedSet, story: Story) -> Iterator[Block]:
    """Return how the parts are made up, dispenser first."""
    yield Heading(story.word(Word.JOINTS), 2)
    columns = (
        Column(story.word(Word.JOINT_BETWEEN), 2.2),
        Column(story.word(Word.PORTS), 3.4),
        Column(story.word(Word.SEAL), 1.8),
    )
    yield Table(columns, tuple(_joint_row(joint, story) for joint in judged.joints), dense=True, whole=True)


def _joint_row(joint: Joint, story: Story) -> Row:
    upstream = joint.upstream or story.phrases.text["outlet"]
    ports = f"{story.port(joint.upstream_port)} – {story.port(joint.downstream_port)}"
    return Row((f"{upstream} – {joint.downstream}", ports, story.word(joint.seal)))


def check_blocks(
    judged: JudgedSet, story: Story, references: References | None = None, marks: AnnexMarks | None = None
) -> Iterator[Block]:
    """Return the table of checks: value, limit, margin, outcome; with ``references`` the marks of the limits too.

    With ``marks`` each check names and leads to its calculation in the annex.
    """
    yield Heading(story.word(Word.CHECKS), 2)
    shares = (2.75, 2.8, 1.75, 1.15, 1.75) if marks is None else _CHECK_SHARES
    columns = (
        Column(story.word(Word.CHECK), shares[0]),
        Column(story.word(Word.WEIGHT), 0.7),
        Column(story.word(Word.VALUE), shares[1]),
        Column(story.word(Word.LIMIT), shares[2]),
        Column(story.word(Word.MARGIN), shares[3], Alignment.RIGHT),
        Column(story.word(Word.OUTCOME), shares[4]),
        *(() if references is None else (Column(story.word(Word.SOURCE), 0.95),)),
    )
    texts = [story.check(check) for check in judged.checks]
    rows = tuple(
        _check_row(check, text, story, references, marks) for check, text in zip(judged.checks, texts, strict=True)
    )
    yield Table(columns, rows, dense=True, whole=marks is not None)  # as long as half a page
    for text in texts:
        if text.remark:
            yield Paragraph(f"{text.title}{story.writing.colon} {text.remark}", Role.NOTE)


def _check_row(
    check: Check, text: CheckText, story: Story, references: References | None, marks: AnnexMarks | None
) -> Row:
    emphasis = Emphasis.FAULT if check.outcome in (Outcome.FAILS, Outcome.UNKNOWN) else Emphasis.NONE
    weight = "" if check.outcome is Outcome.INFORMATION else text.severity_word
    cells: tuple[str, ...] = (
        text.title,
        weight,
        text.value,
        text.limit,
        text.margin,
        story.marked_outcome(check),
    )
    if references is not None:
        bounds = references.of_bounds((check.lower, check.upper))
        mark = "" if marks is None or not check.lines else marks.calculation(check.id)
        if marks is not None and mark:
            links = (Link(0, len(mark), marks.calculation_anchor(check.id)),)
            return Row((*cells, ", ".join(filter(None, (mark, bounds)))), emphasis, len(cells), links)
        cells = (*cells, bounds)
    return Row(cells, emphasis)


def alternative_blocks(plan: PositionPlan, currency: str, story: Story) -> Iterator[Block]:
    """Return the other sets that fit, each with the way in which it differs."""
    if plan.chosen is None or not plan.alternatives:
        return
    chosen: HangingSet = plan.chosen.hanging_set
    yield Heading(story.word(Word.ALTERNATIVES), 2)
    columns = (
        Column(story.word(Word.DIFFERENCE), 2.9),
        Column(story.word(Word.OTHER_PARTS), 3.9),
        Column(story.word(Word.PRICE), 1.1, Alignment.RIGHT),
        Column(story.word(Word.PRICE_DIFFERENCE), 1.2, Alignment.RIGHT),
    )
    rows = tuple(
        Row(
            (
                story.title(alternative.kind),
                ", ".join(story.other_parts(alternative.judged, chosen)),
                story.money(alternative.judged.hanging_set.price_minor, currency),
                story.signed_money(alternative.price_difference_minor, currency),
            )
        )
        for alternative in plan.alternatives
    )
    yield Table(columns, rows, dense=True, whole=True)
    yield Paragraph(story.word(Word.ALTERNATIVES_NOTE), Role.NOTE)
