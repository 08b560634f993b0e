"""Terms that a person's quotations share: any part of the terms of one, kept once."""

from __future__ import annotations

from datetime import date
from typing import Annotated, Literal

from pydantic import ConfigDict, Field

from spoutline.model.plain_values import PlainValues
from spoutline.model.quotation_terms import (
    AlternateTerms,
    Amount,
    BuyingDiscount,
    Consumables,
    Currency,
    DriveOffs,
    ExchangeRate,
    Freight,
    Label,
    Labour,
    LongText,
    OptionTerms,
    PriceOverride,
    Recipient,
    Rounding,
    Seller,
    Selling,
    ServiceYears,
    SparesRule,
    Tax,
    Text,
    YearlyFigures,
)


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class UsualHeading(_Document):
    """What a heading says in every quotation; None where each says it itself."""

    number: Label | None = None
    title: Label | None = None
    dated: date | None = None
    valid_days: Annotated[int, Field(ge=1, le=730)] | None = None
    prepared_by: Text | None = None
    scope: LongText | None = None
    exclusions: Annotated[tuple[Text, ...], Field(max_length=40)] | None = None
    conditions: LongText | None = None


class UsualTerms(_Document):
    """Usual terms; a table that is not there is as in a quotation that says nothing of it."""

    format: Literal["spoutline-terms"] = "spoutline-terms"
    version: Literal[1] = 1
    seller: Seller | None = None
    customer: Recipient | None = None
    heading: UsualHeading = UsualHeading()
    currency: Currency = "USD"
    rounding: Rounding = Rounding()
    exchange: tuple[ExchangeRate, ...] = Field((), max_length=40)
    buying: tuple[BuyingDiscount, ...] = Field((), max_length=200)
    selling: Selling = Selling()
    freight: Freight = Freight()
    labour: Labour = Labour()
    taxes: tuple[Tax, ...] = Field((), max_length=12)
    spares: tuple[SparesRule, ...] = Field((), max_length=20)
    consumables: Consumables = Consumables()
    stock_price: Amount | None = None
    drive_offs: DriveOffs | None = None
    service_lives: tuple[ServiceYears, ...] = Field((), max_length=20)
    yearly: YearlyFigures = YearlyFigures()
    options: tuple[OptionTerms, ...] = Field((), max_length=4)
    overrides: tuple[PriceOverride, ...] = Field((), max_length=500)
    alternates: tuple[AlternateTerms, ...] = Field((), max_length=40)
