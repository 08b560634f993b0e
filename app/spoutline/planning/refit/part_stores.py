"""The catalogue seen through an offer: parts at the prices of the terms, and only those that an option draws on."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from typing import Final

import numpy as np

from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import Part, PartKind, Price
from spoutline.model.part_columns import NO_PRICE, Mask, OnePart, PartColumns, PartView, figures_by_path
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceGap
from spoutline.model.quotation_terms import BreakawayWish, HoseWish, OptionTerms
from spoutline.planning.pricing.rounding import minor_units
from spoutline.planning.pricing.sellable import PartRow, Sellable
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.protocols import CandidateFilter, PartStore

Keep = Callable[[PartView], Mask | None]  # says which parts belong to an offer; None where all do
_RECONNECTABLE: Final = "breakaway.reconnectable"
_LOW_PERMEATION: Final = "hose.low_permeation"


def every_part(view: PartView) -> Mask | None:
    """Say that every part belongs to the offer."""
    return None


class OfferedPrices:
    """The prices of one piece under some terms, in the quotation's currency; each is worked out once for all options.

    A part that cannot be priced keeps its catalogue price for choosing; the quotation then shows the gap.
    """

    def __init__(self, pricer: Pricer) -> None:
        self.pricer = pricer
        self._parts: dict[PartRef, Part] = {}
        self._columns: dict[int, tuple[PartColumns, PartColumns]] = {}  # by the first of them, which is kept alive

    def part(self, part: Part) -> Part:
        """Return a part at its price."""
        if part.ref not in self._parts:
            minor = self._minor(part)
            prices = part.prices if minor is None else (Price(currency=self._currency, minor=minor),)
            self._parts[part.ref] = replace(part, prices=prices)
        return self._parts[part.ref]

    def columns(self, columns: PartColumns) -> PartColumns:
        """Return parts at their prices, none of them made."""
        if id(columns) not in self._columns:
            own = columns.price_minor(self._currency)
            minor = np.where(np.isnan(own), NO_PRICE, own).astype(np.int64)
            for row in range(len(columns)):
                price = self._minor(PartRow(columns, row))
                if price is not None:
                    minor[row] = price
            self._columns[id(columns)] = columns, columns.at_prices(self._currency, minor)
        return self._columns[id(columns)][1]

    @property
    def _currency(self) -> str:
        return self.pricer.terms.currency

    def _minor(self, part: Sellable) -> int | None:
        override = self.pricer.terms.override(part.ref)
        if override is not None and override.unit_price is not None:
            return minor_units(override.unit_price, self._currency)
        found = self.pricer.unit_price(part, 1)
        return None if isinstance(found, PriceGap) else minor_units(found.unit_price, self._currency)


class OfferedParts:
    """A part store over another: ``keep`` narrows the candidates, ``prices`` are put on them."""

    def __init__(self, store: PartStore, keep: Keep, prices: OfferedPrices) -> None:
        self._store = store
        self._keep = keep
        self._prices = prices
        self._columns: dict[PartKind, PartColumns] = {}

    def edition(self) -> CatalogueEdition:
        """Return the edition of the catalogue that the parts are of."""
        return self._store.edition()

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        """Return the parts that pass the filter and belong to the offer."""
        return self._all(part for part in self._store.candidates(wanted) if self._belongs(part))

    def columns(self, kind: PartKind) -> PartColumns:
        """Return the figures of the parts of a kind that belong to the offer, at its prices."""
        if kind not in self._columns:
            priced = self._prices.columns(self._store.columns(kind))
            kept = self._keep(priced)
            self._columns[kind] = priced if kept is None else priced.take(kept)
        return self._columns[kind]

    def count(self, kind: PartKind) -> int:
        """Return how many parts of this kind the catalogue holds."""
        return self._store.count(kind)

    def part(self, ref: PartRef) -> Part | None:
        """Return the part that ``ref`` names, of the offer or not."""
        part = self._store.part(ref)
        return None if part is None else self._all((part,))[0]

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        """Return every part that one of ``refs`` names, of the offer or not."""
        return self._all(self._store.parts(refs))

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        """Return the parts that have other numbers, of the offer or not."""
        found = self._store.under_other_numbers(refs)
        return {ref: self._all((part,))[0] for ref, part in found.items()}

    def currencies(self) -> tuple[str, ...]:
        """Return the currencies in which the catalogue has prices, sorted."""
        return self._store.currencies()

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        """Return up to three known numbers close to a mistyped one."""
        return self._store.nearest_numbers(number)

    def _belongs(self, part: Part) -> bool:
        kept = self._keep(OnePart(part))
        return kept is None or bool(kept)

    def _all(self, parts: Iterable[Part]) -> tuple[Part, ...]:
        return tuple(map(self._prices.part, parts))


def keeps(option: OptionTerms, family: LiquidFamily, asked_for: tuple[PartRef, ...] = ()) -> Keep:
    """Return which parts belong to an option where ``family`` flows; neither hose nor breakaway: it always does.

    Low-permeation hose is a matter of gasoline: other liquids keep every hose. A part that is asked for by its number,
    as an alternate that the customer took is, stands before the wishes of the option.
    """
    low_permeation = option.hose is HoseWish.LOW_PERMEATION and family is LiquidFamily.GASOLINE

    def wished(view: PartView) -> Mask | None:
        figures = figures_by_path(view.kind)
        if _RECONNECTABLE in figures and option.breakaway is not BreakawayWish.ANY:
            found = view.flag(_RECONNECTABLE)
            return found if option.breakaway is BreakawayWish.RECONNECTABLE else ~found
        if _LOW_PERMEATION in figures and low_permeation:
            return view.flag(_LOW_PERMEATION)
        return None

    def keep(view: PartView) -> Mask | None:
        found = wished(view)
        return found if found is None or not asked_for else found | view.named(asked_for)

    return keep
