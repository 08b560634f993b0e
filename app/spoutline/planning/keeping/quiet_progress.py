"""A listener that is asked whether to go on and told nothing: a step of a longer work, which counts for itself."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.planning.protocols import Progress


@frozen
class QuietProgress:
    """Stops when the listener of the longer work asks to stop."""

    outer: Progress

    def on_progress(self, done: int, total: int) -> None:
        """Pass over what a step has done."""

    def should_stop(self) -> bool:
        """Return what the listener of the longer work says."""
        return self.outer.should_stop()
