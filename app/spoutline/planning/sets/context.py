"""What planning works with: the rule tables, the parts, and who listens."""

from __future__ import annotations

from dataclasses import field

from spoutline.frozen import frozen
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.conversion_step import StepTable
from spoutline.model.limit import RuleTables
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.sets.usual_prices import UsualPrices
from spoutline.search.listener import Listener


@frozen
class PlanningContext:
    """Handed from use case to use case; ``listener`` watches and may stop the searches.

    ``answers`` are the survey's on its conversion: they say which installed parts may stay and what an hour of work
    costs; ``steps`` are the table of that work, without which work has no price.
    """

    tables: RuleTables
    parts: PartStore
    listener: Listener | None = None
    answers: ConversionAnswers = field(default_factory=ConversionAnswers)
    steps: StepTable | None = None
    usual_prices: UsualPrices = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Keep what the prices of this catalogue usually are beside it."""
        object.__setattr__(self, "usual_prices", UsualPrices(self.parts))


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
