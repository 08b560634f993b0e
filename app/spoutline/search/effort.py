"""How much a search has done, who is told of it, and how much it may do."""

from __future__ import annotations

from dataclasses import dataclass, field

from spoutline.model.faults import Cancelled
from spoutline.search.listener import Listener


class Exhausted(Exception):
    """As many labels were looked at as the search may look at: no fault, what was found until then may serve."""


@dataclass
class Effort:
    """Counts labels, which are chains filled up to some layer.

    Parameters
    ----------
    listener
        Told of every portion of labels; may stop the search.
    most
        Labels that may be looked at; None for as many as it takes.
    """

    listener: Listener = field(default_factory=Listener)
    most: float | None = None
    labels: int = 0

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
        self.listener.on_expand(self.labels)
        if self.listener.should_stop():
            raise Cancelled
        if self.most is not None and self.labels > self.most:
            raise Exhausted

    def portion(self, labels: float) -> Effort:
        """Return an effort that goes on from here and ends after so many labels, or where this one does."""
        most = self.labels + labels
        return Effort(self.listener, most if self.most is None else min(self.most, most), self.labels)
