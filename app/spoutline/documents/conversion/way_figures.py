"""What a way costs and keeps over all positions: the sums that the decision table and the one page both show."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.position_conversion import PositionOutcome


@frozen(kw_only=True)
class WayFigures:
    """Sums over the positions that are worked on; amounts in minor units, without work.

    ``kept`` counts the parts that stay, ``kept_minor`` is what they would cost new, ``without_set`` counts positions.
    """

    bought_minor: int
    kept: int
    kept_minor: int
    departures: int
    without_set: int


def followed_way(conversion: SiteConversion) -> OptionKind | None:
    """Return the way that the papers follow; None where they show sets that were handed in, such as agreed ones."""
    return None if conversion.shows_sets else conversion.survey.conversion.follow


def way_figures(kind: OptionKind | None, conversion: SiteConversion) -> WayFigures:
    """Return the sums of a way, or with None of the sets that were handed in."""
    worked_on = [one for one in conversion.positions if one.outcome is not PositionOutcome.NOTHING_TO_DO]
    options = [one.way(kind) if kind is not None else one.shown for one in worked_on]
    found = [option for option in options if option is not None]
    return WayFigures(
        bought_minor=sum(option.bought_minor for option in found),
        kept=sum(len(option.kept) for option in found),
        kept_minor=sum(option.kept_minor or 0 for option in found),
        departures=sum(option.departures for option in found),
        without_set=len(options) - len(found),
    )
