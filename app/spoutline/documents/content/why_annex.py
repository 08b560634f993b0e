"""Annex on request: why these parts. One table for each position: the cuts below each other, the places beside."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Emphasis,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.grouping import LikePositions
from spoutline.documents.content.position_section import short_labels
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.why_set import Count, PlaceReasons
from spoutline.model.funnel import SetReasons
from spoutline.model.no_set import NoSetReasons

_MINUS = "\N{MINUS SIGN}"


def why_blocks(
    groups: Sequence[LikePositions], reasons: Mapping[str, SetReasons | NoSetReasons], story: Story
) -> Iterator[Block]:
    """Return the annex; ``reasons`` are by the label of a position, and one without any for a set has no table."""
    found_of = ((like, reasons.get(like.plan.position.label)) for like in groups)
    told = [(like, found) for like, found in found_of if isinstance(found, SetReasons)]
    if not told:
        return
    yield PageBreak(unless_left=0.5)
    yield Heading(story.word(Word.ANNEX_WHY), 1)
    yield Paragraph(story.phrases.text["why_note"], Role.NOTE)
    for like, found in told:
        yield Heading(short_labels(like.positions, story), 2)
        yield from reasons_for(found, story)


def reasons_for(found: SetReasons, story: Story) -> Iterator[Block]:
    """Yield how the catalogue comes down to the parts of one set."""
    places = [story.place_reasons(place, found.hanging_set.currency) for place in found.places]
    yield Table(_columns(found, story), tuple(_rows(places)), dense=True, whole=True)
    for place in places:
        yield Bullets((f"{place.title}{story.writing.colon} {' '.join(place.sentences)}",))


def _columns(found: SetReasons, story: Story) -> tuple[Column, ...]:
    places = (Column(f"{story.title(one.slot)} {one.chosen.number}", 1.0, Alignment.RIGHT) for one in found.places)
    return (Column(story.word(Word.WHY_PARTS), 3.4), *places)


def _rows(places: Sequence[PlaceReasons]) -> Iterator[Row]:
    """Yield a row for each cut that any place has, in the one order in which all places ask them."""
    by_rank = [{one.rank: one for one in place.counts} for place in places]
    texts = {one.rank: one.text for place in places for one in place.counts}
    for rank in sorted(texts):
        found = [place.get(rank) for place in by_rank]
        ends = any(one is not None and not one.taken for one in found)
        yield Row((texts[rank], *map(_cell, found)), Emphasis.TOTAL if ends else Emphasis.NONE)


def _cell(count: Count | None) -> str:
    if count is None:
        return ""
    return f"{_MINUS}{count.count}" if count.taken else str(count.count)
