"""How much a search has done, who is told of it, and how much it may do."""

from __future__ import annotations

from dataclasses import dataclass, field

from spoutline.model.faults import Cancelled, Undecided
from spoutline.search.listener import Listener

_PER_LABEL, _PER_PORTION = 64, 16_384  # pairs that take as long as a label, and as handing over some labels, do


class Exhausted(Undecided):
    """As much was looked at as the search may look at: no fault, what was found until then may serve."""


@dataclass
class Effort:
    """Counts labels, which are chains filled up to some layer, and the work that is done for them.

    No effort is without an end: ``most_work`` is that of the listener unless another is given.

    Parameters
    ----------
    listener
        Told of every portion of labels; may stop the search.
    most
        Labels that may be looked at; None for as many as the work allows.
    most_work
        Work that may be done, as of ``listener.MOST_WORK``.
    """

    listener: Listener = field(default_factory=Listener)
    most: float | None = None
    labels: int = 0
    most_work: float | None = None
    work: float = 0.0

    def __post_init__(self) -> None:
        """Take the work that the listener allows."""
        if self.most_work is None:
            self.most_work = self.listener.most_work

    @property
    def is_used_up(self) -> bool:
        """Whether nothing more may be looked at."""
        return (self.most is not None and self.labels > self.most) or self.work > (self.most_work or 0.0)

    def spend(self, labels: int) -> None:
        """Count labels.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If there were more than the search may look at.
        """
        self.labels += labels
        self.work += _PER_PORTION + _PER_LABEL * labels
        self.listener.on_expand(self.labels)
        if self.listener.should_stop():
            raise Cancelled
        if self.is_used_up:
            raise Exhausted

    def look(self, pairs: float) -> None:
        """Count what labels are held against.

        Raises
        ------
        Exhausted
            If it was more than the search may look at.
        """
        self.work += pairs
        if self.is_used_up:
            raise Exhausted

    def portion(self, labels: float) -> Effort:
        """Return an effort that goes on from here and ends after so many labels, or where this one does.

        It may do a quarter of the work at most, so that no single try takes all.
        """
        most, whole = self.labels + labels, self.most_work or 0.0
        least = most if self.most is None else min(self.most, most)
        return Effort(self.listener, least, self.labels, min(whole, self.work + whole / 4), self.work)

    def go_on_from(self, portion: Effort) -> None:
        """Count what a portion of this effort has done."""
        self.labels, self.work = portion.labels, portion.work
