"""Annex A: what the positions ask for; a line that several positions share is told once."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from spoutline.documents.content.annex_marks import AnnexMarks
from spoutline.documents.content.blocks import Block, Column, Heading, PageBreak, Paragraph, Role, Row, Table
from spoutline.documents.content.grouping import LikePositions
from spoutline.documents.content.position_section import requirement_lines, short_labels
from spoutline.documents.content.references import References
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.requirement import RequirementId, RequirementLine

_ORDER = tuple(RequirementId)


@dataclass(slots=True)
class _SharedLine:
    """A line and the numbers of the groups that it holds for."""

    line: RequirementLine
    groups: list[int] = field(default_factory=list)


def requirement_blocks(
    groups: Sequence[LikePositions], story: Story, references: References, marks: AnnexMarks | None = None
) -> Iterator[Block]:
    """Return the annex: every derived line with its weight, the positions it holds for, and its sources.

    With ``marks`` the groups of positions are named and linked by these.
    """
    shared = _shared_lines(groups, story)
    if not shared:
        return
    yield PageBreak(unless_left=0.5)
    yield Heading(story.word(Word.ANNEX_REQUIREMENT), 1)
    yield Paragraph(story.word(Word.ANNEX_REQUIREMENT_NOTE), Role.NOTE)
    several = len(groups) > 1
    columns = (
        Column(story.word(Word.REQUIREMENT_LINE), 1.9),
        Column(story.word(Word.WEIGHT), 0.85),
        Column(story.word(Word.ANSWER), 4.8),
        *((Column(story.word(Word.HOLDS_FOR), 2.2 if marks is None else 1.4),) if several else ()),
        Column(story.word(Word.SOURCE), 1.0),
    )
    yield Table(columns, tuple(_row(one, groups, marks, story, references) for one in shared), dense=True)


def _shared_lines(groups: Sequence[LikePositions], story: Story) -> list[_SharedLine]:
    found: dict[tuple[object, ...], _SharedLine] = {}
    for number, like in enumerate(groups):
        for line in requirement_lines(like.plan):
            answer = story.requirement_line(line).answer
            key = (line.id, answer, line.severity, line.limit_ids, line.source)
            found.setdefault(key, _SharedLine(line)).groups.append(number)
    return sorted(found.values(), key=lambda one: (_ORDER.index(one.line.id), one.groups))


def _row(
    one: _SharedLine, groups: Sequence[LikePositions], marks: AnnexMarks | None, story: Story, references: References
) -> Row:
    text = story.requirement_line(one.line)
    told, source = (text.title, text.severity_word, text.answer), references.of_asked(one.line)
    if len(groups) == 1:
        return Row((*told, source))
    if marks is None or len(one.groups) == len(groups):
        return Row((*told, _holds_for(one.groups, groups, story), source))
    holds, links = marks.groups_told(one.groups)
    return Row((*told, holds, source), linked=len(told), links=links)


def _holds_for(holding: list[int], groups: Sequence[LikePositions], story: Story) -> str:
    """Return which positions a line holds for, or all but which, whichever is shorter."""
    others = [number for number in range(len(groups)) if number not in holding]
    if not others:
        return story.word(Word.ALL_POSITIONS)
    told = others if len(others) < len(holding) else holding
    text = story.writing.listed(short_labels(groups[number].positions, story) for number in told)
    return story.phrases.fill("all_but", positions=text) if told is others else text
