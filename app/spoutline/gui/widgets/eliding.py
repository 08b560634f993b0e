"""Texts that have no room: what they share with their neighbours goes first, what tells them apart stays."""

from __future__ import annotations

from collections.abc import Callable, Iterable

_GAP = " … "


def elided_where_equal(text: str, neighbours: Iterable[str], fits: Callable[[str], bool]) -> str:
    """Return a text without the words that it begins with like a neighbour, where the whole does not fit.

    Its first word stays, so that it can still be found by it. What still does not fit is left to who paints it.
    """
    if fits(text):
        return text
    shared = max((_shared(text, other) for other in neighbours if other != text), default=0)
    first = text.partition(" ")[0]
    rest = text[shared:].lstrip(" ,;")
    if shared <= len(first) + 1 or not rest:
        return text
    return f"{first}{_GAP}{rest}"


def _shared(text: str, other: str) -> int:
    """Return how many signs two texts have in common from the first on, whole words alone."""
    count = next((at for at, (one, two) in enumerate(zip(text, other, strict=False)) if one != two), None)
    if count is None:
        count = min(len(text), len(other))
        if count == len(text):
            return 0
    return text.rfind(" ", 0, count + 1) + 1


def widths_by_need(wanted: list[int], needed: list[int]) -> list[int]:
    """Return widths with the same sum, where what a column needs less than ``wanted`` goes to those that need more.

    Each lacking column gets its part of what is over, the more the more it lacks, and never more than it needs.
    """
    lacks = [max(0, need - one) for one, need in zip(wanted, needed, strict=True)]
    spares = [max(0, one - need) for one, need in zip(wanted, needed, strict=True)]
    moved = min(sum(lacks), sum(spares))
    if not moved:
        return wanted
    gains = [moved * lack // sum(lacks) for lack in lacks]
    losses = [-(-moved * spare // sum(spares)) for spare in spares]
    return [one + gain - loss for one, gain, loss in zip(wanted, gains, losses, strict=True)]


def widths_with_room(wanted: list[int], least: list[int], room: int) -> list[int]:
    """Return widths of columns that hold their headers: ``wanted``, and what one lacks taken from those with most.

    Where ``room`` does not hold all that is least, each keeps its part of it.
    """
    if sum(least) >= room > 0:
        return [one * room // sum(least) for one in least]
    widths = [max(one, low) for one, low in zip(wanted, least, strict=True)]
    over = sum(widths) - room
    while over > 0:
        spare = [one - low for one, low in zip(widths, least, strict=True)]
        place = max(range(len(widths)), key=spare.__getitem__)
        if spare[place] <= 0:
            break
        taken = min(over, max(1, spare[place] // 2))
        widths[place] -= taken
        over -= taken
    return widths
