"""The catalogue seen through an offer: parts at the prices of the terms, and only those that an option draws on."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace

from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import Part, PartKind, Price
from spoutline.model.part_columns import PartColumns, columns_of
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceGap
from spoutline.model.quotation_terms import BreakawayWish, HoseWish, OptionTerms
from spoutline.planning.pricing.rounding import minor_units
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.protocols import CandidateFilter, PartStore


class OfferedParts:
    """A part store over another: ``keep`` narrows the candidates, ``priced`` puts prices on them.

    A part that cannot be priced keeps its catalogue price for choosing; the quotation then shows the gap.
    """

    def __init__(self, store: PartStore, keep: Callable[[Part], bool], priced: Callable[[Part], Part]) -> None:
        self._store = store
        self._keep = keep
        self._priced = priced
        self._known: dict[PartRef, Part] = {}
        self._columns: dict[PartKind, PartColumns] = {}

    def edition(self) -> CatalogueEdition:
        """Return the edition of the catalogue that the parts are of."""
        return self._store.edition()

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        """Return the parts that pass the filter and belong to the offer."""
        return self._all(part for part in self._store.candidates(wanted) if self._keep(part))

    def columns(self, kind: PartKind) -> PartColumns:
        """Return the figures of the parts of a kind that belong to the offer, at its prices."""
        if kind not in self._columns:
            self._columns[kind] = columns_of(kind, self.candidates(CandidateFilter(kind=kind)))
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

    def _all(self, parts: Iterable[Part]) -> tuple[Part, ...]:
        found = []
        for part in parts:
            ref = part.ref
            if ref not in self._known:
                self._known[ref] = self._priced(part)
            found.append(self._known[ref])
        return tuple(found)


def keeps(option: OptionTerms, family: LiquidFamily) -> Callable[[Part], bool]:
    """Return whether a part belongs to an option where ``family`` flows; neither hose nor breakaway: it always does.

    Low-permeation hose is a matter of gasoline: other liquids keep every hose.
    """
    low_permeation = option.hose is HoseWish.LOW_PERMEATION and family is LiquidFamily.GASOLINE

    def keep(part: Part) -> bool:
        if part.breakaway is not None and option.breakaway is not BreakawayWish.ANY:
            return part.breakaway.reconnectable is (option.breakaway is BreakawayWish.RECONNECTABLE)
        if part.hose is not None and low_permeation:
            return part.hose.low_permeation
        return True

    return keep


def at_terms(pricer: Pricer) -> Callable[[Part], Part]:
    """Return a function that gives a part the customer's price for one piece in the quotation's currency."""
    currency = pricer.terms.currency

    def priced(part: Part) -> Part:
        override = pricer.terms.override(part.ref)
        if override is not None and override.unit_price is not None:
            price = override.unit_price
        else:
            found = pricer.unit_price(part, 1)
            if isinstance(found, PriceGap):
                return part
            price = found.unit_price
        return replace(part, prices=(Price(currency=currency, minor=minor_units(price, currency)),))

    return priced
