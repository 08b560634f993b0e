"""Annex B for few positions: their calculation sheets one after the other, a line told again referred to by number."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from spoutline.documents.content.blocks import (
    Block,
    Heading,
    NumberedLine,
    PageBreak,
    Paragraph,
    Role,
    ToldBefore,
    Worked,
)
from spoutline.documents.content.grouping import LikePositions
from spoutline.documents.content.position_section import flow_curve_blocks, heading_of
from spoutline.documents.content.references import References
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import WorkedText
from spoutline.explain.writing.numbering import number_ranges
from spoutline.model.check import Check, WorkedLine


def calculation_blocks(groups: Sequence[LikePositions], story: Story, references: References) -> Iterator[Block]:
    """Return the annex: for each group of positions the flow curve and the worked lines of every check."""
    sheets = [(like, like.plan.chosen) for like in groups if like.plan.chosen is not None]
    if not any(check.lines for _, chosen in sheets for check in chosen.checks):
        return
    yield PageBreak(unless_left=0.5)
    yield Heading(story.word(Word.ANNEX_CALCULATION), 1)
    yield Paragraph(story.word(Word.CALCULATION_NOTE), Role.NOTE)
    ledger = _Ledger(story, references)
    for like, chosen in sheets:
        yield Heading(heading_of(like.positions, story), 2)
        yield from flow_curve_blocks(like.plan, story)
        for check in chosen.checks:
            if check.lines:
                yield ledger.worked(check)


_SHORT_NOTE = 30  # characters; a note up to this is no longer than a reference to it


class _Ledger:
    """Numbers the lines of the annex as they are told."""

    def __init__(self, story: Story, references: References) -> None:
        self._story = story
        self._references = references
        self._numbers: dict[WorkedLine, int] = {}
        self._notes: dict[str, int] = {}

    def worked(self, check: Check) -> Worked:
        """Return the lines of a check; runs of lines that were told before shrink to a reference."""
        text = self._story.check(check)
        limit = f"{self._story.word(Word.LIMIT)}{self._story.writing.colon} {text.limit}"
        mark = self._references.of_bounds((check.lower, check.upper))
        return Worked(
            title=text.title,
            outcome=self._story.writing.listed((text.value, self._story.marked_outcome(check))),
            lines=tuple(self._lines(check)),
            limit=f"{limit} [{mark}]" if mark else limit,
            sources=(),
        )

    def _lines(self, check: Check) -> Iterator[NumberedLine | ToldBefore]:
        again: list[int] = []
        for line in check.lines:
            if line in self._numbers:
                again.append(self._numbers[line])
                continue
            yield from self._told_before(again)
            again.clear()
            number = self._numbers[line] = len(self._numbers) + 1
            mark = self._references.of_text(line.source)
            yield NumberedLine(str(number), self._noted(self._story.worked_line(line), number), mark)
        yield from self._told_before(again)

    def _noted(self, text: WorkedText, number: int) -> WorkedText:
        """Return ``text``, a long note that an earlier line carried replaced by that line's number."""
        if len(text.note) <= _SHORT_NOTE:
            return text
        first = self._notes.setdefault(text.note, number)
        return text if first == number else replace(text, note=self._story.phrases.fill("note_again", number=first))

    def _told_before(self, numbers: list[int]) -> Iterator[ToldBefore]:
        if numbers:
            key = "line_again" if len(set(numbers)) == 1 else "lines_again"
            yield ToldBefore(self._story.phrases.fill(key, numbers=number_ranges(numbers)))
