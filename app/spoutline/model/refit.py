"""Results of planning a whole station for a refit: commonality, supersessions, and the plan that came of them."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import SitePlan


@frozen(kw_only=True)
class Supersession:
    """A part named in the survey that its maker replaced; ``now`` took its place at these positions."""

    before: PartRef
    now: PartRef
    positions: tuple[str, ...]


@frozen(kw_only=True)
class StockFigures:
    """What the sets of a station cost in minor units, and how many distinct part numbers they use."""

    sets_minor: int
    part_numbers: int

    def objective_minor(self, stock_price_minor: int) -> int:
        """Return sets plus the price of every distinct part number."""
        return self.sets_minor + stock_price_minor * self.part_numbers


@frozen(kw_only=True)
class ChangedSet:
    """A position whose set commonality changed; the price difference is for one piece of each part."""

    label: str
    before: tuple[PartRef, ...]
    after: tuple[PartRef, ...]
    price_difference_minor: int


@frozen(kw_only=True)
class Commonality:
    """Sets chosen one by one against sets chosen together. ``rounds`` counts the mixed-integer models solved.

    ``floor_minor`` is None where the choice is proved best; where the work allowed ran out it is what no choice
    can cost less than, part numbers included.
    """

    stock_price_minor: int
    alone: StockFigures
    together: StockFigures
    changed: tuple[ChangedSet, ...]
    rounds: int
    floor_minor: int | None = None

    @property
    def open_minor(self) -> int:
        """How much a better choice could at most still save; nothing where this one is proved best."""
        if self.floor_minor is None:
            return 0
        return self.together.objective_minor(self.stock_price_minor) - self.floor_minor

    @property
    def costs_minor(self) -> int:
        """What the common sets cost more; below 0 where the quantities make them cheaper."""
        return self.together.sets_minor - self.alone.sets_minor

    @property
    def saves_minor(self) -> int:
        """What the part numbers no longer stocked are worth."""
        return self.stock_price_minor * (self.alone.part_numbers - self.together.part_numbers)


@frozen(kw_only=True)
class RefitPlan:
    """The plan of a station with what was done to it; ``commonality`` is None where it was not asked for."""

    site_plan: SitePlan
    supersessions: tuple[Supersession, ...]
    commonality: Commonality | None
