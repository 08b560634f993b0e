"""Pages that can be made part by part, so that the window answers in between; asked for sooner, one is made whole."""

from __future__ import annotations

from collections.abc import Iterator


class InParts:
    """Makes a page by an iterator that comes to an end when all of it is there.

    Until then nobody has the page: whoever begins it part by part keeps it to itself.
    """

    def begin(self, parts: Iterator[None], *, whole: bool) -> None:
        """Make all parts now, or none yet."""
        self._parts = parts
        if whole:
            self.make_rest()

    def make_part(self) -> bool:
        """Make one part more; return whether there may be another."""
        return next(self._parts, self) is not self

    def make_rest(self) -> None:
        """Make all parts that are not there yet."""
        for _ in self._parts:
            pass
