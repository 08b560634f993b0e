"""On what terms a station is quoted: who to whom, how prices are made, what labour, freight, tax and spares add."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Literal, Self

from pydantic import ConfigDict, Field, StringConstraints, model_validator

from spoutline.model.charge import Charge, Per
from spoutline.model.field_faults import fault_in
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues
from spoutline.model.yearly_cost import LiquidUnit

Text = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
Label = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=80)]
LongText = Annotated[str, StringConstraints(max_length=8000)]
Percent = Annotated[Decimal, Field(ge=0, le=100, max_digits=8)]
Amount = Annotated[Decimal, Field(ge=0, le=Decimal("1e9"), max_digits=18)]
Currency = Annotated[str, StringConstraints(pattern=r"^[A-Z]{3}$")]


class RoundingMode(StrEnum):
    """Which way a half, or any rest, goes."""

    HALF_UP = "half_up"
    HALF_EVEN = "half_even"
    UP = "up"
    DOWN = "down"


class SellingMethod(StrEnum):
    """How the customer's price is made."""

    LIST_LESS_DISCOUNT = "list_less_discount"
    MARK_UP_ON_COST = "mark_up_on_cost"
    MARGIN_ON_PRICE = "margin_on_price"


class FreightMethod(StrEnum):
    """What the freight is reckoned from."""

    FIXED = "fixed"
    PERCENT_OF_GOODS = "percent_of_goods"
    PER_KILOGRAM = "per_kilogram"


class TaxRounding(StrEnum):
    """Where tax is rounded: once for the whole quotation, or for each line before adding up."""

    WHOLE = "whole"
    LINE = "line"


class BreakawayWish(StrEnum):
    """Which breakaways an option draws on."""

    ANY = "any"
    SINGLE_USE = "single_use"
    RECONNECTABLE = "reconnectable"


class HoseWish(StrEnum):
    """Which hoses an option draws on."""

    ANY = "any"
    LOW_PERMEATION = "low_permeation"


class Singles(StrEnum):
    """What parts of which only one is fitted have of the spares: none, or a share like all others."""

    NONE = "none"
    SHARE = "share"


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class Party(_Document):
    """Somebody on paper."""

    name: Label = Field(description="Name of firm or person.")
    address: LongText = ""
    contact: Text = ""
    telephone: Text = ""
    email: Text = ""
    registration: Text = Field("", description="Registration or tax number, printed as written.")


class Seller(Party):
    """Who quotes; ``logo`` is a PNG or JPEG file beside the terms file."""

    logo: Text = Field("", description="Picture file for the letterhead, beside the terms file.")


class Recipient(Party):
    """Who is quoted to."""

    delivery_address: LongText = Field("", description="Where it goes; empty where it is the site or the address.")
    payment_terms: Text = Field("", description="Terms of payment, printed as written.")


class Heading(_Document):
    """What stands at the head and foot of the quotation."""

    number: Label = Field(
        description="The distributor's own quotation number, or a pattern for the book: {year}-{serial:04}."
    )
    title: Label = "Hanging hardware"
    dated: date = Field(description="Day of the quotation; prices valid on this day are used.")
    valid_days: int = Field(30, ge=1, le=730, description="Days for which the offer stands.")
    prepared_by: Text = ""
    scope: LongText = ""
    exclusions: tuple[Text, ...] = Field((), max_length=40, description="What is not included, one sentence each.")
    conditions: LongText = Field("", description="Terms of sale, printed in full.")


class Rounding(_Document):
    """How money is rounded; a step of 0.05 rounds to the next multiple of five cents."""

    mode: RoundingMode = RoundingMode.HALF_UP
    unit_step: Amount = Field(Decimal("0.01"), gt=0, description="Step of unit prices.")
    total_step: Amount = Field(Decimal("0.01"), gt=0, description="Step of the amount payable.")
    tax: TaxRounding = TaxRounding.WHOLE


class ExchangeRate(_Document):
    """One unit of the list's currency in units of the quotation's."""

    currency: Currency
    rate: Annotated[Decimal, Field(gt=0, le=Decimal("1e6"), max_digits=18)]
    dated: date
    source: Label = Field(description="Where the rate was read.")


class BuyingDiscount(_Document):
    """What a maker takes off its list for a class of goods; an empty maker or group means every one."""

    maker: Text = ""
    group: Text = ""
    percent: Percent


class SellingException(_Document):
    """Another percentage for one kind of part or one discount group."""

    kind: PartKind | None = None
    group: Text = ""
    percent: Percent

    @model_validator(mode="after")
    def _names_something(self) -> Self:
        if self.kind is None and not self.group:
            raise fault_in("kind", "nothing", "an exception names a kind of part or a discount group")
        return self


class Selling(_Document):
    """How selling prices are made for this customer."""

    method: SellingMethod = SellingMethod.LIST_LESS_DISCOUNT
    percent: Percent = Decimal(0)
    exceptions: tuple[SellingException, ...] = Field((), max_length=100)
    least_margin_percent: Percent | None = Field(
        None,
        description="Least margin of a line, percent of its price: 100 (price - cost) / price. Lines below it are "
        "asked about before the quotation is issued; empty asks about those below cost only.",
    )

    @model_validator(mode="after")
    def _margin_leaves_a_price(self) -> Self:
        if self.method is SellingMethod.MARGIN_ON_PRICE:
            wanted = "a margin is a share of the selling price and stays below 100 percent"
            if self.percent >= 100:
                raise fault_in("percent", str(self.percent), wanted)
            for at, one in enumerate(self.exceptions):
                if one.percent >= 100:
                    raise fault_in(f"exceptions[{at}].percent", str(one.percent), wanted)
        return self


class Freight(_Document):
    """Freight: an amount, a percentage of the goods, or an amount per kilogram."""

    method: FreightMethod = FreightMethod.FIXED
    amount: Amount = Decimal(0)


class LabourTask(_Document):
    """One row of the labour table; ``kinds`` limits it to positions whose set holds a part of one of these kinds."""

    title: Label
    per: Per = Per.POSITION
    hours: Annotated[Decimal, Field(ge=0, le=1000, max_digits=8)]
    kinds: tuple[PartKind, ...] = ()


class Labour(_Document):
    """Hours at one rate."""

    hourly_rate: Amount = Decimal(0)
    tasks: tuple[LabourTask, ...] = Field((), max_length=60)


class Tax(_Document):
    """One tax and what it lies on."""

    name: Label
    percent: Percent
    on: tuple[Charge, ...] = (Charge.GOODS, Charge.LABOUR, Charge.FREIGHT)


class SparesRule(_Document):
    """Spares of one kind of part, as a percentage of all that is fitted at the station, rounded up once."""

    kind: PartKind
    percent: Percent
    singles: Singles = Field(
        Singles.NONE, description="Whether a part of which only one is fitted shares in the spares too."
    )


class Consumables(_Document):
    """How far a container of sealant goes; empty orders one for each set."""

    sealant_joints: int | None = Field(None, ge=1, le=10000, description="Joints that one container seals.")


class DriveOffs(_Document):
    """The customer's own expectation of separations, for comparing breakaways; an estimate, not a price."""

    per_position_year: Annotated[Decimal, Field(ge=0, le=100, max_digits=8)]
    years: int = Field(5, ge=1, le=30)
    single_use_hours: Annotated[Decimal, Field(ge=0, le=100, max_digits=8)] = Decimal("1.0")
    reconnectable_hours: Annotated[Decimal, Field(ge=0, le=100, max_digits=8)] = Decimal("0.5")
    reconnectable_replaced_percent: Percent = Field(
        Decimal(0), description="Share of separations after which a reconnectable breakaway is replaced all the same."
    )


class ServiceYears(_Document):
    """After how many years the station replaces a kind of part; goes before what is common practice."""

    kind: PartKind
    years: Annotated[Decimal, Field(gt=0, le=100, max_digits=8)]


class YearlyFigures(_Document):
    """What a year's cost of a set is reckoned from, beside prices, service lives, spares and drive-offs."""

    liquid_price: Annotated[Decimal, Field(ge=0, le=10000, max_digits=12)] | None = Field(
        None, description="Price of the liquid that is lost through hoses; empty leaves it out."
    )
    liquid_unit: LiquidUnit = LiquidUnit.GALLON
    interest_percent: Percent | None = Field(
        None, description="Interest in a year on what lies in spares; empty leaves it out."
    )


class OptionTerms(_Document):
    """One of the alternatives side by side."""

    title: Label
    breakaway: BreakawayWish = BreakawayWish.ANY
    hose: HoseWish = HoseWish.ANY


class PriceOverride(_Document):
    """A price set by a person in place of the lists; without a price the line says that it follows."""

    part: PartRef
    unit_price: Amount | None = None
    by: Label = Field(description="Name of the person who answers for it.")
    reason: Text = ""


class AlternateTerms(_Document):
    """A part offered beside a line in place of its part, at a difference in price; it is in no total."""

    part: PartRef = Field(description="Part of a line.")
    by: PartRef = Field(description="Part offered in its place.")
    note: Text = Field("", description="What speaks for it, printed as written.")


class Terms(_Document):
    """All terms of one quotation."""

    format: Literal["spoutline-terms"] = "spoutline-terms"
    version: Literal[1] = 1
    seller: Seller
    customer: Recipient
    heading: Heading
    currency: Currency = Field("USD", description="ISO 4217 code of every amount in the quotation.")
    rounding: Rounding = Rounding()
    exchange: tuple[ExchangeRate, ...] = Field((), max_length=40)
    buying: tuple[BuyingDiscount, ...] = Field((), max_length=200)
    selling: Selling = Selling()
    freight: Freight = Freight()
    labour: Labour = Labour()
    taxes: tuple[Tax, ...] = Field((), max_length=12)
    spares: tuple[SparesRule, ...] = Field((), max_length=20)
    consumables: Consumables = Consumables()
    stock_price: Amount | None = Field(
        None, description="What stocking one more part number is worth, for commonality; empty leaves it out."
    )
    drive_offs: DriveOffs | None = None
    service_lives: tuple[ServiceYears, ...] = Field((), max_length=20)
    yearly: YearlyFigures = YearlyFigures()
    options: tuple[OptionTerms, ...] = Field((OptionTerms(title="Offer"),), min_length=1, max_length=4)
    overrides: tuple[PriceOverride, ...] = Field((), max_length=500)
    alternates: tuple[AlternateTerms, ...] = Field(
        (), max_length=40, description="Parts offered in place of those of lines, at a difference in price."
    )

    @model_validator(mode="after")
    def _names_are_unique(self) -> Self:
        groups = (
            ("options", "title", [one.title for one in self.options]),
            ("overrides", "part", [str(one.part) for one in self.overrides]),
            ("alternates", "by", [f"{one.by} for {one.part}" for one in self.alternates]),
            ("spares", "kind", [str(one.kind) for one in self.spares]),
            ("service_lives", "kind", [str(one.kind) for one in self.service_lives]),
            ("exchange", "currency", [one.currency for one in self.exchange]),
        )
        for table, field, words in groups:
            for at, word in enumerate(words):
                if word in words[:at]:
                    raise fault_in(f"{table}[{at}].{field}", repr(word), "it occurs twice; each may stand once")
        return self

    def override(self, part: PartRef) -> PriceOverride | None:
        """Return the override for a part; None where there is none."""
        return next((one for one in self.overrides if one.part.names(part)), None)
