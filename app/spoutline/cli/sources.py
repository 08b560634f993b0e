"""Sources as numbered notes: a source used many times is told once, at the end."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator


class SourceNotes:
    """Gives each source a number when it is first named, and lists them all at the end."""

    def __init__(self) -> None:
        self._numbers: dict[str, int] = {}

    def mark(self, source: str) -> str:
        """Return the note of ``source``, such as ``[3]``; empty for an empty source."""
        if not source:
            return ""
        return f"[{self._numbers.setdefault(source, len(self._numbers) + 1)}]"

    def lines(self, width: int) -> Iterator[str]:
        """Yield every source with its number, in the order of the numbers, no line longer than ``width``."""
        room = len(f"[{len(self._numbers)}]")
        for source, number in self._numbers.items():
            lead = f"  {f'[{number}]':>{room}} "
            yield from textwrap.wrap(
                source, width, initial_indent=lead, subsequent_indent=" " * len(lead), break_on_hyphens=False
            )
