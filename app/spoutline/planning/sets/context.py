"""What planning works with: the rule tables, the parts, and who listens."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.model.limit import RuleTables
from spoutline.planning.protocols import PartStore, Progress
from spoutline.search.listener import Listener


@dataclass(frozen=True, slots=True)
class PlanningContext:
    """Handed from use case to use case; ``listener`` watches and may stop the searches."""

    tables: RuleTables
    parts: PartStore
    listener: Listener | None = None


class _StopWith(Listener):
    """Lets a search end when whoever waits for it asks to stop."""

    def __init__(self, progress: Progress) -> None:
        self._progress = progress

    def should_stop(self) -> bool:
        """Pass the question on."""
        return self._progress.should_stop()


def stop_listener(progress: Progress | None) -> Listener | None:
    """Return a listener that ends a search when ``progress`` asks to stop; None where nobody can ask."""
    return _StopWith(progress) if progress is not None else None
