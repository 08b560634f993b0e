"""What a labour table comes to at a station before its sets are chosen."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from spoutline.frozen import frozen
from spoutline.model.charge import Per
from spoutline.model.quotation_terms import LabourTask
from spoutline.model.survey import Position
from spoutline.planning.pricing.rounding import exact_sum


@frozen(kw_only=True)
class LabourForecast:
    """Hours of a labour table; ``is_most`` where tasks for sets with certain parts are counted at every set."""

    positions: int
    dispensers: int
    hours: Decimal
    is_most: bool


def labour_forecast(tasks: Sequence[LabourTask], positions: Sequence[Position]) -> LabourForecast:
    """Return the hours if every position gets a set and every set holds what the tasks name.

    Parameters
    ----------
    tasks
        The labour table, hours each.
    positions
        The positions of the survey; a dispenser counts by its name.
    """
    dispensers = len({position.dispenser for position in positions})
    counts = {Per.POSITION: len(positions), Per.DISPENSER: dispensers, Per.SITE: 1 if positions else 0}
    return LabourForecast(
        positions=len(positions),
        dispensers=dispensers,
        hours=exact_sum(task.hours * counts[task.per] for task in tasks),
        is_most=any(task.kinds for task in tasks),
    )
