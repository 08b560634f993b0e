"""How a caller watches or stops a walk without the walk knowing who listens."""

from __future__ import annotations


class Listener:
    """Does nothing; override what is of interest. Called once per portion of labels."""

    def on_expand(self, expanded: int) -> None:
        """Tell that ``expanded`` labels have been taken from the queue so far."""

    def should_stop(self) -> bool:
        """Return True to end the walk with ``Cancelled``."""
        return False
