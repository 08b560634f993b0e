"""What parts of each kind usually cost in the catalogue in hand, worked out once per kind and currency."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.frozen import frozen
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.finding import Finding
from spoutline.model.limit import RuleTables
from spoutline.model.part import HANGING_KINDS, Part, PartKind
from spoutline.model.plan import HangingSet
from spoutline.planning.protocols import PartStore
from spoutline.rules.parts.prices import middle_price, middle_price_of, price_question


@frozen(kw_only=True)
class PriceQuestion:
    """A catalogue part whose list price in a currency is asked about."""

    part: Part
    currency: str
    finding: Finding


class UsualPrices:
    """The middle price of each kind, from every part of the catalogue that is priced."""

    def __init__(self, parts: PartStore) -> None:
        self._parts = parts
        self._known: dict[tuple[PartKind, str], float | None] = {}

    def middle(self, kind: PartKind, currency: str) -> float | None:
        """Return the middle price of a kind in a currency; None where too few parts have one."""
        if (kind, currency) not in self._known:
            self._known[kind, currency] = self._middle(kind, currency)
        return self._known[kind, currency]

    def _middle(self, kind: PartKind, currency: str) -> float | None:
        if kind in HANGING_KINDS:
            return middle_price_of(self._parts.columns(kind), currency)
        return middle_price(self._parts.candidates(CandidateFilter(kind=kind)), currency)

    def question(self, part: Part, currency: str, tables: RuleTables) -> Finding | None:
        """Return the question that the price of a part puts; None where it is usual."""
        return price_question(part, currency, self.middle(part.kind, currency), tables)

    def of_set(self, hanging_set: HangingSet, tables: RuleTables) -> Iterator[Finding]:
        """Yield the questions about what a set buys; a part that stays costs nothing and is not asked about."""
        for part in hanging_set.bought:
            found = self.question(part, hanging_set.currency, tables)
            if found is not None:
                yield found

    def all_questions(self, tables: RuleTables) -> Iterator[PriceQuestion]:
        """Yield the questions about every price of the catalogue, kind by kind, by number and by currency."""
        currencies = self._parts.currencies()
        for kind in PartKind:
            for part in self._parts.candidates(CandidateFilter(kind=kind)):
                for currency in currencies:
                    found = self.question(part, currency, tables)
                    if found is not None:
                        yield PriceQuestion(part=part, currency=currency, finding=found)
