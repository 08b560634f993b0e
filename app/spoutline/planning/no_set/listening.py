"""Who is told while reasons are looked for, and where the search ends."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.frozen import frozen
from spoutline.model.no_set import ConflictReasons, Demand, Trial


@frozen
class NoSetListening:
    """Bounds of the search for reasons, and who is told of each conflict and each trial as soon as it is known.

    ``on_obstacle`` is told of the demands of a conflict before its reasons are worked out. ``most`` bounds conflicts,
    and likewise ways out; ``questions`` bounds what is asked of the search. ``out_of_time`` ends it.
    """

    most: int = 24
    questions: int | None = 4_000
    out_of_time: Callable[[], bool] | None = None
    on_obstacle: Callable[[tuple[Demand, ...]], None] | None = None
    on_conflict: Callable[[ConflictReasons], None] | None = None
    on_trial: Callable[[Trial], None] | None = None
