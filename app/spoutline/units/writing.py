"""The one place where numbers, amounts and days take the form of a language, after Unicode's CLDR (through Babel)."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, datetime
from decimal import Decimal
from functools import cache, lru_cache
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.language import Language

# Spanish as it is written in the United States: decimal point and grouping comma, as on the drawings beside it.
_LOCALES: Final = {
    Language.ENGLISH: "en_US",
    Language.SPANISH: "es_US",
    Language.GERMAN: "de_DE",
    Language.FRENCH: "fr_FR",
}


@frozen
class Writing:
    """How one language writes numbers, amounts and days, whatever locale the machine is set to."""

    language: Language = Language.ENGLISH

    def figure(self, plain: str) -> str:
        """Return a number of plain digits and point with the decimal sign of the language."""
        sign = _decimal_sign(self.language)
        return plain if sign == "." else plain.replace(".", sign)

    def decimal(self, value: Decimal | float, places: int, *, signed: bool = False) -> str:
        """Return a number rounded to ``places``, digits grouped; ``signed`` writes a plus too."""
        # rounded here: Babel would round the shortest decimal form of a float, which is another number
        return _grouped(f"{value:.{places}f}", places, signed, self.language)

    def amount(self, amount: Decimal) -> str:
        """Return an amount with the decimals that it carries, digits grouped."""
        exponent = amount.as_tuple().exponent
        return self.decimal(amount, max(0, -exponent) if isinstance(exponent, int) else 0)

    def money(self, amount: Decimal, currency: str, *, with_currency: bool = True) -> str:
        """Return an amount of the major unit, such as ``1,234.50 USD``; the code stands behind in every language."""
        text = self.decimal(amount, currency_decimals(currency))
        return f"{text} {currency}" if with_currency else text

    def day(self, day: date) -> str:
        """Return a day of the calendar; English has the month as a word, so that none is taken for a day."""
        from babel.dates import format_date

        return format_date(day, format="medium", locale=_LOCALES[self.language])

    def moment(self, moment: datetime) -> str:
        """Return a day with its time, to the minute, in the zone that ``moment`` carries."""
        from babel.dates import format_time

        clock = format_time(moment, format="short", tzinfo=moment.tzinfo, locale=_LOCALES[self.language])
        return f"{self.day(moment.date())}, {clock}"

    @property
    def colon(self) -> str:
        """The colon behind a label, with the space that French sets before it."""
        return f"{self._before_signs}:"

    def listed(self, texts: Iterable[str]) -> str:
        """Return texts as one, parted by semicolons."""
        return f"{self._before_signs}; ".join(texts)

    @property
    def _before_signs(self) -> str:
        return "\N{NO-BREAK SPACE}" if self.language is Language.FRENCH else ""


@lru_cache(maxsize=8192)  # a bill of many positions says the same prices over and over; by text, since -0.0 equals 0.0
def _grouped(rounded: str, places: int, signed: bool, language: Language) -> str:
    from babel.numbers import format_decimal

    pattern = "#,##0" + (f".{'0' * places}" if places else "")
    form = f"+{pattern};-{pattern}" if signed else pattern
    return str(format_decimal(Decimal(rounded), format=form, locale=_LOCALES[language]))


@cache
def currency_decimals(currency: str) -> int:
    """Return how many decimals amounts of ``currency`` carry, after CLDR's supplement; 2 for a code it lacks."""
    from babel.numbers import get_currency_precision

    return get_currency_precision(currency)


@cache
def _decimal_sign(language: Language) -> str:
    if language is Language.ENGLISH:  # every page of the window asks; no locale data are needed for it
        return "."
    from babel.numbers import get_decimal_symbol

    return get_decimal_symbol(_LOCALES[language])
