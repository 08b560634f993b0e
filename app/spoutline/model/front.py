"""Sets weighed against each other: those that no other outdoes on the axes that a person chose."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import JudgedSet, PositionPlan, Provenance
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.survey import Survey
from spoutline.model.yearly_cost import YearlyBasis, YearlyPart


class FrontAxis(StrEnum):
    """What sets are compared by; less is better on each."""

    PRICE = "price"  # of what is bought, with the work of fitting where the owner gave a rate
    LEAD = "lead"  # days until the slowest part that is bought
    FLOW = "flow"  # pressure lost at the wanted flow, the liquid hot: what is lost there is missing as flow
    MASS = "mass"  # dry
    PERMEATION = "permeation"  # gasoline lost through the walls of the hoses in a year
    YEARLY = "yearly"  # the sum of ``model.yearly_cost``
    PRACTICE = "practice"  # broken shoulds: of parts one each, of the whole set one for each line


ADDS = frozenset(FrontAxis) - {FrontAxis.LEAD}  # along a chain; of lead times the greatest counts
MONEY = frozenset({FrontAxis.PRICE, FrontAxis.YEARLY})  # in minor units of the site's currency
UNIT_OF: dict[FrontAxis, tuple[Dimension, float]] = {  # dimension, and what 1 stands for in SI
    FrontAxis.LEAD: (Dimension.DAYS, 1.0),
    FrontAxis.FLOW: (Dimension.PRESSURE, 1.0),
    FrontAxis.MASS: (Dimension.MASS, 1e-4),
    FrontAxis.PERMEATION: (Dimension.MASS, 1e-6),
    FrontAxis.PRACTICE: (Dimension.COUNT, 1.0),
}
# whose worst hose speaks for a station; figures of the others are added up
WORST_COUNTS = frozenset({FrontAxis.LEAD, FrontAxis.FLOW})
MOST_AXES = 3


def shown_figure(axis: FrontAxis, figure: int) -> float:
    """Return a figure of an axis that is no money in SI units, or as a count or days."""
    return figure * UNIT_OF[axis][1]


@frozen(kw_only=True)
class Alike:
    """Another maker's part that differs in nothing else: it may stand in its slot of the same point."""

    slot: Slot
    part: PartRef
    other: PartRef


@frozen(kw_only=True)
class FrontPoint:
    """A set that no other outdoes.

    ``figures`` are whole numbers by chosen axis: minor units, days, pascal, tenths of a gram, milligrams, counts.
    ``all_figures`` holds those of every axis that this position has, None where a part states none. ``given_up`` are
    the should-lines of the whole set that it need not keep. ``flow_m3_s`` is what is delivered, hot, where known.
    ``yearly`` are the parts of the yearly cost, minor units; none where it is not weighed.
    """

    figures: tuple[int, ...]
    judged: JudgedSet
    all_figures: Mapping[FrontAxis, int | None]
    given_up: tuple[RequirementId, ...]
    flow_m3_s: float | None
    yearly: Mapping[YearlyPart, int] = field(default_factory=dict)
    alike: tuple[Alike, ...] = ()

    @property
    def price_minor(self) -> int:
        """What is bought, minor units."""
        return self.judged.hanging_set.price_minor


@frozen(kw_only=True)
class LeftOut:
    """Parts that state no figure for an axis, so that no set with them can be placed on it."""

    axis: FrontAxis
    slot: Slot
    count: int


@frozen(kw_only=True)
class PositionFront:
    """The sets of one position that no other outdoes, in the order of their figures.

    ``gap`` says by chosen axis how far beyond the points a set that is not shown may lie: 0 on all of them where the
    front is exact. ``turned_down`` counts sets that full checks alone forbade; ``open_figures`` are the figures of
    those in whose place none was looked for any more. ``unchecked`` counts sets whose full checks are still to come
    while the work goes on, None while sets are still searched. ``least`` is what no set goes below on each axis.
    ``planned`` is the place of the plan's own set among the points; None where one of them outdoes it, or the plan has
    none. ``most_departures`` is how far sets may depart from good practice where that is no
    axis. ``yearly`` is what a yearly cost rests on.
    """

    plan: PositionPlan
    axes: tuple[FrontAxis, ...]
    currency: str
    points: tuple[FrontPoint, ...]
    planned: int | None
    planned_figures: tuple[int, ...] | None
    most_departures: int | None
    least: tuple[int, ...] | None
    left_out: tuple[LeftOut, ...] = ()
    gap: tuple[int, ...] = ()
    turned_down: int = 0
    open_figures: tuple[tuple[int, ...], ...] = ()
    unchecked: int | None = 0
    pins_left_out: int = 0
    yearly: YearlyBasis | None = None

    @property
    def label(self) -> str:
        """The position."""
        return self.plan.position.label

    @property
    def is_exact(self) -> bool:
        """Whether every set that no other outdoes is among the points."""
        return not any(self.gap) and not self.open_figures and self.unchecked == 0


@frozen(kw_only=True)
class StationPoint:
    """Sets of all positions together: price in minor units and the other axis, and which point each group takes."""

    price: int
    other: int
    choices: tuple[int, ...]


@frozen(kw_only=True)
class FrontGroup:
    """Positions that ask the same and get the same set, with their front."""

    labels: tuple[str, ...]
    front: PositionFront


@frozen(kw_only=True)
class StationFront:
    """The price of a station against one other axis.

    ``gap_minor`` says by how much a combination with the same other figure could at most be cheaper than a point shown:
    0 where every combination was compared. ``without_set`` are positions that have none and count in nothing.
    """

    survey: Survey
    axis: FrontAxis
    groups: tuple[FrontGroup, ...]
    points: tuple[StationPoint, ...]
    planned: tuple[int, int] | None
    gap_minor: int
    without_set: tuple[str, ...]
    made_from: Provenance

    @property
    def yearly(self) -> YearlyBasis | None:
        """What a yearly cost rests on, liquid lost through hoses where it is worked out at any position."""
        known = [one.front.yearly for one in self.groups if one.front.yearly is not None]
        return next((one for one in known if one.permeates), known[0] if known else None)

    @property
    def currency(self) -> str:
        """The currency of every price."""
        return self.survey.site.currency

    @property
    def is_exact(self) -> bool:
        """Whether every combination that no other outdoes is among the points."""
        return self.gap_minor == 0 and all(one.front.is_exact for one in self.groups)
