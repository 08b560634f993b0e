"""The yearly cost of sets in words: what it adds up, by which figures, and the sum of one set."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from spoutline.explain.phrases.front_words import FrontWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.front import FrontPoint
from spoutline.model.limit import LimitStatus
from spoutline.model.yearly_cost import ServiceLife, YearlyBasis, YearlyPart


def yearly_notes(basis: YearlyBasis, currency: str, story: Story) -> Iterator[str]:
    """Yield what the yearly cost adds up, by which figures each part of it, and what is left out."""
    yield _told(story, Word.YEARLY_NOTE, parts=_parts(basis.parts, story))
    texts = {
        YearlyPart.WEAR: lambda: _told(story, Word.YEARLY_WEAR, lives=_lives(basis.lives, story)),
        YearlyPart.DRIVE_OFFS: lambda: _told(
            story, Word.YEARLY_DRIVE_OFFS, count=_number(basis.drive_offs_per_position, story)
        ),
        YearlyPart.PERMEATION: lambda: _told(
            story,
            Word.YEARLY_PERMEATION,
            price=f"{_number(basis.liquid_price, story)} {currency}",
            unit=story.word(basis.liquid_unit),
        ),
        YearlyPart.SPARES: lambda: _told(
            story,
            Word.YEARLY_SPARES,
            shares=", ".join(f"{story.word(kind)} {_number(share, story)} %" for kind, share in basis.spares),
            interest=_number(basis.interest_percent, story),
        ),
    }
    yield from (texts[part]() for part in basis.parts)
    if basis.left_out:
        yield _told(story, Word.YEARLY_LEFT_OUT, parts=_parts(basis.left_out, story))


def yearly_sum(point: FrontPoint, currency: str, story: Story) -> str:
    """Return the yearly cost of a set as a sum of its parts; empty where it has none."""
    if not point.yearly:
        return ""
    parts = (f"{story.word(part)} {story.money(minor, currency)}" for part, minor in point.yearly.items())
    return _told(
        story, Word.YEARLY_SUM, total=story.money(sum(point.yearly.values()), currency), parts=" + ".join(parts)
    )


def _told(story: Story, word: Word, **figures: str) -> str:
    return story.word(word).format(**figures)


def _parts(parts: tuple[YearlyPart, ...], story: Story) -> str:
    return ", ".join(map(story.word, parts))


def _lives(lives: tuple[ServiceLife, ...], story: Story) -> str:
    """Return service lives, those of one footing together and that behind them."""
    groups: dict[tuple[str, LimitStatus | None], list[str]] = {}
    for one in lives:
        life = _told(story, Word.YEARLY_LIFE, kind=story.word(one.kind), years=_number(one.years, story))
        groups.setdefault((one.source, one.status), []).append(life)
    stated = story.word(Word.YEARLY_STATED)
    return "; ".join(
        f"{', '.join(told)} ({stated if status is None else story.sourced(source, status)})"
        for (source, status), told in groups.items()
    )


def _number(value: Decimal | None, story: Story) -> str:
    return story.writing.figure(f"{value.normalize():f}") if value is not None else ""
