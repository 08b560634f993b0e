"""What an owner answers about a conversion: agency, emissions, sequence, money. Every answer has a stated default."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Self

from pydantic import ConfigDict, Field, StringConstraints, model_validator

from spoutline.model.conversion_case import ConversionCase
from spoutline.model.plain_values import PlainValues

_Text = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
_Amount = Annotated[Decimal, Field(ge=0, max_digits=14, decimal_places=3)]


class StationKind(StrEnum):
    """How a throughput threshold looks at the station."""

    EXISTING = "existing"
    NEW_OR_REFURBISHED = "new_or_refurbished"


class OptionKind(StrEnum):
    """The ways to convert a position, cheapest first."""

    LEAST_COST = "least_cost"
    GOOD_PRACTICE = "good_practice"
    FULL_RENEWAL = "full_renewal"


class EmissionBasis(StrEnum):
    """Where the emission factors of a balance come from; one balance never mixes two."""

    EPA_MODEL = "epa_model"
    AP42 = "ap42"
    CARB = "carb"


class AfterTable(StrEnum):
    """What stands for years beyond the table of onboard shares that the survey does not give."""

    STOP = "stop"
    HOLD_LAST = "hold_last"


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class YearShare(_Document):
    """Share of gasoline into vehicles with onboard recovery, from the owner's own source."""

    year: int = Field(ge=1990, le=2200, description="Year.")
    share: float = Field(ge=0, le=1, description="Share of gasoline at the end of the year, 0 to 1.")


class EmissionAnswers(_Document):
    """What the emissions are computed from."""

    gasoline_throughput_m3: float | None = Field(
        None, gt=0, le=1e6, description="Gasoline sold in a year, m3; empty where unknown."
    )
    basis: EmissionBasis = Field(EmissionBasis.EPA_MODEL, description="Source of the emission factors.")
    in_use_efficiency: float | None = Field(
        None, gt=0, le=1, description="Efficiency of recovery at the nozzle; empty takes the table's figure."
    )
    assist_works_with_onboard: bool = Field(
        False, description="The vacuum-assist system stops drawing at vehicles with onboard recovery."
    )
    assist_share: float | None = Field(
        None, ge=0, le=1, description="Share pumped through vacuum assist; empty counts gasoline positions alike."
    )
    reid_vapour_pressure_kpa: float | None = Field(None, ge=20, le=110, description="Reid vapor pressure, kPa.")
    mean_ambient_c: float | None = Field(None, ge=-40, le=50, description="Mean temperature of the air, Celsius.")
    national_shares: bool = Field(True, description="Use the table of the United States fleet (it ends in 2020).")
    own_shares: tuple[YearShare, ...] = Field((), max_length=100, description="Own shares; they go before the table.")
    own_shares_source: _Text = Field("", description="Where the own shares come from.")
    after_table: AfterTable = Field(
        AfterTable.STOP, description="Beyond the known years: stop, or hold the last share and say so."
    )
    mean_fill_l: float | None = Field(None, gt=0, le=1e5, description="Mean volume of a fill of boats, L.")
    ullage_m3: float | None = Field(None, gt=0, le=1e4, description="Vapor space of the tanks at the test, m3.")

    @model_validator(mode="after")
    def _years_once(self) -> Self:
        years = [item.year for item in self.own_shares]
        if years != sorted(set(years)):
            raise ValueError(f"own_shares: write each year once, rising, not {years}")
        return self


class SequenceAnswers(_Document):
    """How the work may be laid out."""

    start_date: date | None = Field(None, description="First day of the plan (the notice); empty plans in days.")
    most_out_of_service: float = Field(
        0.5, gt=0, le=1, description="Greatest share of the positions of one grade out of service at a time."
    )
    crews: int = Field(1, ge=1, le=50, description="Crews that work side by side.")
    hours_per_day: float = Field(8.0, ge=1, le=24, description="Working hours of a day.")
    weekend_work: bool = Field(False, description="Work goes on at weekends.")
    notice_days: int | None = Field(
        None, ge=0, le=3650, description="Days between notice and work; empty takes the agency's figure."
    )
    permission_days: int | None = Field(
        None, ge=0, le=3650, description="Days until the agency's permission is expected; empty: not known."
    )
    tanks_underground: bool | None = Field(None, description="The tanks lie underground; empty where unknown.")
    dual_vapour_pipes: bool | None = Field(None, description="Each grade has its own vapor pipe; empty if unknown.")
    vapour_pipe_links_tanks: bool | None = Field(
        None, description="The vapor pipe is the only link between the tanks; empty where unknown."
    )
    tank_end_reachable: bool | None = Field(
        None, description="The vapor pipe's end at the tank can be reached without breaking ground."
    )
    central_vacuum: bool = Field(False, description="One central vacuum unit instead of a pump at each position.")
    condensate_traps: int = Field(0, ge=0, le=100, description="Condensate traps in the vapor pipes.")


class OwnCost(_Document):
    """A cost that the owner knows."""

    label: Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=120)] = Field(
        description="What it pays for."
    )
    amount: _Amount = Field(description="Amount in the site's currency.")
    eligible: bool = Field(False, description="Counts towards a grant.")


class MoneyAnswers(_Document):
    """What the money is computed from; amounts in the site's currency."""

    labour_rate_per_hour: _Amount | None = Field(
        None, description="Price of an hour of work; empty leaves it unpriced."
    )
    upkeep_today_per_year: _Amount | None = Field(None, description="Yearly upkeep of today's hardware.")
    upkeep_after_per_year: _Amount | None = Field(None, description="Yearly upkeep of the converted hardware.")
    margin_lost_per_hour: _Amount | None = Field(
        None, description="Margin lost per position and hour out of service; empty leaves it out."
    )
    own_costs: tuple[OwnCost, ...] = Field((), max_length=100, description="Further costs: tests, permits, closing.")
    grant: _Amount | None = Field(None, description="A grant that was promised; empty where none.")
    discount_percent: Annotated[Decimal, Field(ge=0, le=50, max_digits=6, decimal_places=3)] = Field(
        Decimal(6), description="Discount rate, percent a year."
    )
    years: int = Field(10, ge=1, le=50, description="Years that the comparison looks at.")


class ConversionAnswers(_Document):
    """Everything that a conversion asks beyond the positions."""

    agency: Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=60)] = Field(
        "unknown", description="Agency whose rule on removal applies: a row of the table of agencies."
    )
    station: StationKind = Field(StationKind.EXISTING, description="How a throughput threshold sees the station.")
    under_living_quarters: bool = Field(False, description="The station stands under living or working quarters.")
    follow: OptionKind = Field(OptionKind.GOOD_PRACTICE, description="Which way lists, sequence and money follow.")
    keep_parts: bool = Field(True, description="Parts that still fit may stay.")
    longest_age_years: float | None = Field(None, gt=0, le=100, description="Oldest age at which a part may stay.")
    retire_superseded: bool = Field(False, description="Superseded and discontinued parts go.")
    deadline_year: int | None = Field(
        None, ge=2000, le=2200, description="Year by whose end the agency wants the work done; empty: none is known."
    )
    cases: tuple[ConversionCase, ...] = Field((), max_length=12, description="Named cases to be worked out beside it.")
    emissions: EmissionAnswers = Field(default_factory=EmissionAnswers)
    sequence: SequenceAnswers = Field(default_factory=SequenceAnswers)
    money: MoneyAnswers = Field(default_factory=MoneyAnswers)

    @model_validator(mode="after")
    def _cases_once(self) -> Self:
        names = [one.name for one in self.cases]
        if len(set(names)) < len(names):
            raise ValueError(f"cases: give each a name of its own, not {names}")
        return self
