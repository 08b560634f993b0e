"""What choosing sets together did, in words for a terminal."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence
from decimal import Decimal

from spoutline.explain.plan.story import Story

_WIDTH = 110


def wrapped(text: str) -> list[str]:
    """Return the lines of a text for a terminal; part numbers are not broken."""
    return textwrap.wrap(text, _WIDTH, subsequent_indent="    ", break_on_hyphens=False)


def commonality_lines(
    part_numbers: tuple[int, int],
    amounts: tuple[Decimal, Decimal, Decimal],
    best: Decimal,
    changed: Sequence[str],
    story: Story,
) -> Iterator[str]:
    """Return what choosing sets together did, by lines.

    Parameters
    ----------
    part_numbers
        Distinct numbers in sets, chosen alone and chosen together.
    amounts
        In one currency: what the sets cost more, what stocking them costs less, below 0 the other way round; and what a
        better choice could at most still save, 0 where this was proved best.
    best
        What the sets chosen together cost, with the price of their part numbers.
    changed
        Labels of the positions whose set is another one than alone.
    """
    alone, together = part_numbers
    costs, saves, left_open = amounts
    told = story.phrases.fill(
        "terminal_together",
        together=together,
        alone=alone,
        costs=_more_or_less(costs, story),
        stocking=_more_or_less(-saves, story),
    )
    yield from wrapped(told)
    if left_open:
        yield story.phrases.fill("terminal_left_open", amount=_amount(left_open, story))
        figures = {"best": _amount(best, story), "floor": _amount(best - left_open, story)}
        yield from wrapped(story.phrases.fill("terminal_floor", **figures))
    if changed:
        yield from wrapped(story.phrases.fill("terminal_changed", positions=", ".join(changed)))


def _more_or_less(difference: Decimal, story: Story) -> str:
    key = "terminal_less" if difference < 0 else "terminal_more"
    return story.phrases.fill(key, amount=_amount(abs(difference), story))


def _amount(amount: Decimal, story: Story) -> str:
    return story.writing.figure(f"{amount:f}")
