"""What stands above the titles of a table."""

from __future__ import annotations

from collections.abc import Sequence


def heads_over(titles: Sequence[str], above: Sequence[str]) -> tuple[str, ...]:
    """Return what the row above says over each title; a cell over several titles fills only the first of them."""
    found, head = [], ""
    for column in range(len(titles)):
        head = (above[column] if column < len(above) else "") or head
        found.append(head)
    return tuple(found)
