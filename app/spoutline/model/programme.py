"""A programme: the conversions of many sites ranked over years under a yearly budget. A document of the book."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Literal

from pydantic import Field

from spoutline.model.kept_record import KeptRecord
from spoutline.model.position_conversion import ConversionKind
from spoutline.model.removal_standing import Standing

_Percent = Annotated[Decimal, Field(ge=0, le=50)]


class SiteOutcome(StrEnum):
    """How a site stands in a programme."""

    READY = "ready"
    NOTHING_TO_DO = "nothing_to_do"
    NOT_ALLOWED = "not_allowed"
    OPEN = "open"  # some position has no set
    FAULT = "fault"  # the survey cannot be read or used


class LeftOut(StrEnum):
    """Why a ready site is in no year."""

    DEARER_THAN_A_YEAR = "dearer_than_a_year"  # and it cannot be split
    PART_DEARER = "part_dearer"  # it can, but one of its parts alone is dearer than a year
    BEYOND_THE_YEARS = "beyond_the_years"
    COST_UNKNOWN = "cost_unknown"


class SplitHindrance(StrEnum):
    """Why all dispensers of a site are converted in one visit."""

    ONE_DISPENSER = "one_dispenser"
    ONE_TANK = "one_tank"  # its liquid changes for all its dispensers at once: the new sets do not serve the old one
    TANK_UNKNOWN = "tank_unknown"  # which tank feeds the dispensers whose liquid changes is not known
    AGENCY_FINISH = "agency_finish"  # the agency wants the work finished so many days after its start


class RankReason(StrEnum):
    """Why a site ranks where it does."""

    DEADLINE = "deadline"
    MUST_GO = "must_go"
    RETURN = "return"
    CHEAPEST = "cheapest"  # what it saves is not known


class YearReason(StrEnum):
    """Why a site is done in its year."""

    NO_LIMIT = "no_limit"
    FIRST = "first"
    LATER = "later"
    IN_PARTS = "in_parts"
    SAVED_UP = "saved_up"


class YearlyChange(KeptRecord):
    """Change of emissions in one year once a site is converted, kg; positive is more."""

    year: int
    kg: float


class SiteUnit(KeptRecord):
    """Dispensers that are converted in one visit, never one of them by half; what concerns the whole site left out."""

    dispensers: tuple[str, ...]
    tanks: tuple[str, ...] = Field((), description="Tanks whose change of liquid ties them together.")
    cash: Decimal
    lost_margin: Decimal | None = None
    own_minutes: int = 0


class SiteWork(KeptRecord):
    """What a conversion costs, by its parts; prices of the first year.

    Every visit takes ``visit_cash`` for what concerns the whole site, the first one ``once_cash``, the owner's further
    costs, too; the ``grant`` comes with the last. With one visit the cash of the units, of the visit and of once is the
    cost of the site without lost margin. Lost margin is None where its price is not known.
    """

    units: tuple[SiteUnit, ...]
    visit_cash: Decimal
    once_cash: Decimal
    grant: Decimal
    visit_lost_margin: Decimal | None
    visit_own_minutes: int
    days: int = Field(description="Days from the notice to the end of the work.")
    hindrance: SplitHindrance | None = None

    @property
    def cash(self) -> Decimal:
        """Everything paid where all is done in one visit, before the grant."""
        return sum((one.cash for one in self.units), self.visit_cash + self.once_cash)

    @property
    def lost_margin(self) -> Decimal | None:
        """Margin lost in one visit; None where its price is not known."""
        if self.visit_lost_margin is None:
            return None
        return sum((one.lost_margin or Decimal(0) for one in self.units), self.visit_lost_margin)

    @property
    def own_minutes(self) -> int:
        """The owner's own minutes in one visit."""
        return self.visit_own_minutes + sum(one.own_minutes for one in self.units)


class SiteResult(KeptRecord):
    """What the conversion of one site came to; amounts in ``currency``. ``work`` is None where something is open."""

    place: str = Field(description="File that the survey came from.")
    name: str
    outcome: SiteOutcome
    standing: Standing | None = None
    kinds: tuple[ConversionKind, ...] = ()
    positions: int = 0
    converted: int = 0
    currency: str = ""
    cost: Decimal | None = Field(None, description="Total cost; null where something is not priced.")
    known_cost: Decimal = Decimal(0)
    yearly_saving: Decimal | None = None
    net_present_value: Decimal | None = None
    payback_years: Decimal | None = None
    change_kg: float | None = Field(None, description="Change of emissions in the reference year; positive is more.")
    yearly: tuple[YearlyChange, ...] = Field((), description="The change year by year, as far as it is known.")
    work_minutes: int = 0
    work: SiteWork | None = None
    deadline_year: int | None = Field(None, description="Year by whose end the agency wants the work done.")
    invented_prices: bool = Field(False, description="Some part or price is of the invented catalog.")
    message: str = ""

    def change_in(self, year: int | None) -> float | None:
        """Return the change in a year, kg; that of the reference year where the year is not known by itself."""
        return next((one.kg for one in self.yearly if one.year == year), self.change_kg)


class Visit(KeptRecord):
    """One visit: its year, from 1; its dispensers, none for the whole site; what it takes at the prices of its year."""

    year: int
    dispensers: tuple[str, ...] = ()
    cash: Decimal
    lost_margin: Decimal | None = None
    own_minutes: int = 0


class Waiting(KeptRecord):
    """What it costs to do a site a year later than ``year``, in money of the first day of that year.

    ``upkeep`` is the saving that is missed, ``interest`` what the kept money earns. None: not known. ``kg`` is what is
    emitted more in the year waited through; less where it is negative.
    """

    year: int
    price: Decimal
    interest: Decimal
    upkeep: Decimal | None
    kg: float | None

    @property
    def money(self) -> Decimal | None:
        """The sum; None where the upkeep is not known."""
        return None if self.upkeep is None else self.price + self.upkeep - self.interest


class Shortage(KeptRecord):
    """A year that had too little left for a site."""

    year: int
    left: Decimal
    asked: Decimal


class RankedSite(KeptRecord):
    """A ready site with its rank, from 1, and the year in which it is done, from 1; null where it is left out.

    A site that is done in several visits is done in the year of the last. ``deadline`` is a calendar year.
    """

    rank: int
    site: SiteResult
    year: int | None = None
    left_out: LeftOut | None = None
    visits: tuple[Visit, ...] = ()
    rank_reason: RankReason = RankReason.RETURN
    year_reason: YearReason | None = None
    short: Shortage | None = Field(None, description="The last year before that lacked money for it.")
    dear_part: SiteUnit | None = Field(None, description="The part that is dearer than a year.")
    deadline: int | None = None
    in_time: bool | None = Field(None, description="Whether the deadline is kept; null where there is none.")
    waiting: Waiting | None = None

    @property
    def cash(self) -> Decimal:
        """What its visits take."""
        return sum((one.cash for one in self.visits), Decimal(0))


class ProgrammeYear(KeptRecord):
    """One year of the programme.

    ``spent`` is cash; lost margin and own minutes stand beside it. ``change_kg`` is what its sites change in a year,
    ``after_kg`` what all sites done by its end change in that year, taken as done the whole year long.
    """

    year: int
    spent: Decimal
    sites: int
    change_kg: float
    available: Decimal | None = None
    left: Decimal | None = None
    lost_margin: Decimal | None = Field(None, description="Of the visits whose lost margin is known.")
    own_minutes: int = 0
    present_value: Decimal | None = Field(None, description="What is spent, on the first day of the first year.")
    after_kg: float = 0.0


class Programme(KeptRecord):
    """A whole programme. ``budget`` None sets no limit: everything is done in year 1.

    ``first_year`` is the calendar year of year 1; null where years are only counted. Price rise and interest in percent
    a year; null: none stated.
    """

    format: Literal["spoutline-programme"] = "spoutline-programme"
    version: Literal[1] = 1
    name: str
    currency: str
    budget: Annotated[Decimal, Field(gt=0)] | None
    first_year: int | None = None
    carry_over: bool = False
    price_rise_percent: _Percent | None = None
    interest_percent: _Percent | None = None
    ranked: tuple[RankedSite, ...]
    others: tuple[SiteResult, ...]
    years: tuple[ProgrammeYear, ...]
    stopped: bool = False

    def calendar_year(self, year: int) -> int:
        """Return the calendar year of a year counted from 1; the count itself where no first year was named."""
        return year if self.first_year is None else self.first_year + year - 1
