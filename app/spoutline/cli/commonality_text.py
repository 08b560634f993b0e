"""What choosing sets together did, in words for a terminal."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence
from decimal import Decimal

_WIDTH = 110


def wrapped(text: str) -> list[str]:
    """Return the lines of a text for a terminal; part numbers are not broken."""
    return textwrap.wrap(text, _WIDTH, subsequent_indent="    ", break_on_hyphens=False)


def commonality_lines(
    part_numbers: tuple[int, int], costs: Decimal, saves: Decimal, left_open: Decimal, changed: Sequence[str]
) -> Iterator[str]:
    """Return what choosing sets together did, by lines.

    Parameters
    ----------
    part_numbers
        Distinct numbers in sets, chosen alone and chosen together.
    costs, saves
        What the sets cost more, and what stocking them costs less, in one currency; below 0 the other way round.
    left_open
        What a better choice could at most still save; 0 where this was proved best.
    changed
        Labels of the positions whose set is another one than alone.
    """
    alone, together = part_numbers
    yield from wrapped(
        f"Chosen together: {together} part numbers in sets instead of {alone}; "
        f"the sets cost {_more_or_less(costs)}, stocking them {_more_or_less(-saves)}."
    )
    if left_open:
        yield f"The work allowed ran out before this was proved best: at most {left_open} could still be saved."
    if changed:
        yield from wrapped(f"Changed: {', '.join(changed)}")


def _more_or_less(difference: Decimal) -> str:
    return f"{abs(difference)} {'less' if difference < 0 else 'more'}"
