"""A programme: the conversions of many sites ranked over years under a yearly budget. A document of the book."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from spoutline.model.position_conversion import ConversionKind
from spoutline.model.removal_standing import Standing

PROGRAMME_VERSION = 1


class SiteOutcome(StrEnum):
    """How a site stands in a programme."""

    READY = "ready"
    NOTHING_TO_DO = "nothing_to_do"
    NOT_ALLOWED = "not_allowed"
    OPEN = "open"  # some position has no set
    FAULT = "fault"  # the survey cannot be read or used


class LeftOut(StrEnum):
    """Why a ready site is in no year."""

    DEARER_THAN_A_YEAR = "dearer_than_a_year"
    BEYOND_THE_YEARS = "beyond_the_years"
    COST_UNKNOWN = "cost_unknown"


class _Record(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class SiteResult(_Record):
    """What the conversion of one site came to; amounts in ``currency``."""

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
    work_minutes: int = 0
    message: str = ""


class RankedSite(_Record):
    """A ready site with its rank, from 1, and the year in which it is done, from 1; null where it is left out."""

    rank: int
    site: SiteResult
    year: int | None = None
    left_out: LeftOut | None = None


class ProgrammeYear(_Record):
    """One year of the programme."""

    year: int
    spent: Decimal
    sites: int
    change_kg: float


class Programme(_Record):
    """A whole programme. ``budget`` None sets no limit: everything is done in year 1."""

    format: Literal["spoutline-programme"] = "spoutline-programme"
    version: Literal[1] = 1
    name: str
    currency: str
    budget: Annotated[Decimal, Field(gt=0)] | None
    ranked: tuple[RankedSite, ...]
    others: tuple[SiteResult, ...]
    years: tuple[ProgrammeYear, ...]
    stopped: bool = False
