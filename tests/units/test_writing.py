"""Numbers, amounts and days in each language, against CLDR's charts and the rules that national standards print."""

from __future__ import annotations

from datetime import UTC, date, datetime
from decimal import Decimal

import pytest

from spoutline.model.language import Language, language_of
from spoutline.model.quantity import Dimension
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display
from spoutline.units.writing import Writing, currency_decimals

ENGLISH, SPANISH, GERMAN, FRENCH = map(Writing, Language)


@pytest.mark.parametrize(
    ("writing", "shown"),
    [
        (ENGLISH, "1,234,567.50"),
        (SPANISH, "1,234,567.50"),  # as in Mexico and the United States: point, grouping comma (CLDR, es_US)
        (GERMAN, "1.234.567,50"),  # DIN 5008
        (FRENCH, "1\u202f234\u202f567,50"),  # CLDR, fr: narrow no-break space
    ],
)
def test_an_amount_is_grouped_and_signed_as_the_language_does(writing: Writing, shown: str) -> None:
    assert writing.decimal(Decimal("1234567.5"), 2) == shown
    assert writing.money(Decimal("1234567.5"), "USD") == f"{shown} USD"
    assert writing.money(Decimal("1234567.5"), "USD", with_currency=False) == shown


@pytest.mark.parametrize(
    ("writing", "day", "moment"),
    [
        (ENGLISH, "Nov 28, 2026", "Nov 28, 2026, 3:04\u202fPM"),  # CLDR, en: medium
        (SPANISH, "28 nov 2026", None),  # CLDR, es_US, medium
        (GERMAN, "28.11.2026", "28.11.2026, 15:04"),  # DIN 5008
        (FRENCH, "28 nov. 2026", "28 nov. 2026, 15:04"),  # CLDR, fr, medium
    ],
)
def test_a_day_is_written_as_the_language_does(writing: Writing, day: str, moment: str | None) -> None:
    assert writing.day(date(2026, 11, 28)) == day
    if moment:
        assert writing.moment(datetime(2026, 11, 28, 15, 4, tzinfo=UTC)) == moment


@pytest.mark.parametrize(
    ("value", "places", "shown"),
    [(0.15, 1, "0.1"), (2.5, 0, "2"), (1234.0, 0, "1,234"), (-0.5, 1, "-0.5")],  # round half to even of the exact float
)
def test_a_float_is_rounded_as_the_number_it_is(value: float, places: int, shown: str) -> None:
    assert ENGLISH.decimal(value, places) == shown


def test_a_sign_is_written_where_asked() -> None:
    assert [ENGLISH.decimal(one, 1, signed=True) for one in (1.0, -1.0, 0.0)] == ["+1.0", "-1.0", "+0.0"]


def test_an_amount_keeps_the_decimals_it_carries() -> None:
    assert [GERMAN.amount(Decimal(text)) for text in ("120000", "1234.5", "1E+3")] == ["120.000", "1.234,5", "1.000"]


# ISO 4217, list one: minor units 2, 2, 0, 0, 3
@pytest.mark.parametrize(("code", "places"), [("USD", 2), ("EUR", 2), ("JPY", 0), ("KRW", 0), ("KWD", 3)])
def test_a_currency_has_the_decimals_of_its_smallest_coin(code: str, places: int) -> None:
    assert currency_decimals(code) == places


# French typography: a no-break space stands before colon and semicolon (rules of the Imprimerie nationale, from memory)
@pytest.mark.parametrize(("language", "space"), [(Language.FRENCH, "\N{NO-BREAK SPACE}"), (Language.GERMAN, "")])
def test_a_sign_takes_the_space_that_its_language_sets_before_it(language: Language, space: str) -> None:
    writing = Writing(language)
    assert (writing.colon, writing.listed(("a", "b"))) == (f"{space}:", f"a{space}; b")


@pytest.mark.parametrize(
    ("language", "shown"),
    [
        (Language.ENGLISH, "1.25 m"),
        (Language.SPANISH, "1.25 m"),
        (Language.GERMAN, "1,25 m"),
        (Language.FRENCH, "1,25 m"),
    ],
)
def test_a_quantity_takes_the_decimal_sign(language: Language, shown: str) -> None:
    assert Display(UnitSystem.SI).written(language).show(1.25, Dimension.LENGTH) == shown


@pytest.mark.parametrize(
    ("tag", "language"),
    [("de", "de"), ("de_AT.UTF-8", "de"), ("fr-CA", "fr"), ("ES", "es"), ("C", None), ("C.UTF-8", None), ("", None)],
)
def test_a_tag_names_its_language(tag: str, language: str | None) -> None:
    assert language_of(tag) == language
