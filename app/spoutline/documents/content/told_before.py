"""Sections of positions that say the same as those of an earlier position, told by a reference to that one."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from spoutline.documents.content.annex_marks import GroupMark
from spoutline.documents.content.blocks import Block, Link, Paragraph
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen


@frozen
class Section:
    """Blocks under a title; ``sentence`` says them all where it is enough."""

    title: str
    blocks: tuple[Block, ...]
    sentence: str = ""


class ToldBefore:
    """Remembers what was told of which group, so that many unlike positions do not tell the same joints each."""

    def __init__(self, story: Story) -> None:
        self._story = story
        self._first: dict[tuple[Block, ...], GroupMark] = {}

    def blocks(self, sections: Iterable[Section], mark: GroupMark) -> Iterator[Block]:
        """Yield the sections that are new, then a line for each of the others: what it says, or where it stands."""
        told: list[Paragraph] = []
        again: dict[int, list[str]] = {}
        for section in sections:
            if section.sentence:
                told.append(Paragraph(f"{section.title}{self._story.writing.colon} {section.sentence}"))
            elif section.blocks and (first := self._first.setdefault(section.blocks, mark)) is not mark:
                again.setdefault(first.number, []).append(section.title)
            else:
                yield from section.blocks
        yield from told
        for number, titles in again.items():
            yield self._reference(titles, GroupMark(mark.marks, number))

    def _reference(self, titles: Iterable[str], first: GroupMark) -> Paragraph:
        text = self._story.phrases.fill("same_as_at", sections=", ".join(titles), group=first.text)
        start = text.rindex(first.text)
        return Paragraph(text, links=(Link(start, start + len(first.text), first.anchor),))
