"""How a caller watches or stops a search, and how much a question may cost, without the search knowing who asks."""

from __future__ import annotations

MOST_WORK = 2_000_000_000
"""What one question may cost: pairs of a label with an item or with another label, and what a label costs by itself.

It is counted and never timed, so that the same question has the same answer on every machine; about ten seconds of one
processor. Questions of positions over ten thousand parts take a thousandth of it, near copies of a few parts by the
hundred thousand a tenth (`tests/bench`): what takes more than this mostly takes a hundred times as much, since it grows
with the number of chains.
"""


class Listener:
    """Does nothing; override what is of interest. Called once per portion of labels."""

    most_work: float = MOST_WORK

    def on_expand(self, expanded: int) -> None:
        """Tell that ``expanded`` labels have been taken from the queue so far."""

    def should_stop(self) -> bool:
        """Return True to end the walk with ``Cancelled``."""
        return False


class Sparing(Listener):
    """Hands on what it is told, and lets a question cost a share of what another listener does."""

    def __init__(self, inner: Listener, share: float) -> None:
        self._inner, self.most_work = inner, inner.most_work * share

    def on_expand(self, expanded: int) -> None:
        """Tell the other of it."""
        self._inner.on_expand(expanded)

    def should_stop(self) -> bool:
        """Ask the other."""
        return self._inner.should_stop()
