"""Which set is chosen among those that a search offers: fewest broken shoulds, of sets and parts alike, then price.

The search is a table written by hand, so each expectation can be read off it.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from types import SimpleNamespace
from typing import Any, cast

import pytest

from spoutline.model.finding import Severity
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembly import Held, Promise, SetQuery
from spoutline.planning.sets.choice import Chooser
from spoutline.planning.sets.loads import Load, SetLimit

REACH = SetLimit(Load.REACH, RequirementId.REACH, Severity.SHOULD, 1.0, Dimension.LENGTH)
HELD = Held(Slot.NOZZLE, PartRef("any"))


@dataclass(frozen=True)
class Offer:
    """A set of one nozzle that breaks so many should-rules."""

    number: str
    regrets: int
    price_minor: int

    @property
    def hanging_set(self) -> HangingSet:
        part = SimpleNamespace(number=self.number, ref=PartRef(self.number))
        link = cast("Any", SimpleNamespace(slot=Slot.NOZZLE, part=part))
        return HangingSet(links=(link,), price_minor=self.price_minor, currency="USD")


@dataclass
class Table:
    """Offers the best set that keeps the should-limit on reach, and the best one that does not have to."""

    keeping: Offer | None
    giving_up: Offer | None
    model: SimpleNamespace = field(default_factory=lambda: SimpleNamespace(set_limits=(REACH,)))

    def offer(self, query: SetQuery) -> Offer | None:
        return self.keeping if query.limits else self.giving_up

    def cheapest(self, query: SetQuery, _listener: object) -> HangingSet | None:
        offer = self.offer(query)
        return offer.hanging_set if offer else None

    def may_have_sets(self, query: SetQuery) -> bool:
        return self.offer(query) is not None

    def has_set_within(self, query: SetQuery, most_regrets: int, _listener: object) -> bool:
        offer = self.offer(query)
        return offer is not None and offer.regrets <= most_regrets

    def promise(self, query: SetQuery) -> Promise | None:
        offer = self.offer(query)
        return Promise(offer.regrets, offer.price_minor) if offer else None

    @property
    def pool(self) -> SimpleNamespace:
        offers = [one for one in (self.keeping, self.giving_up) if one]
        broken = {PartRef(one.number): one.regrets for one in offers}
        return SimpleNamespace(regrets_of=lambda _slot, ref: broken[ref])


def chosen(table: Table, holds: Held | None) -> str | None:
    judge = SimpleNamespace(judged=lambda found: SimpleNamespace(hanging_set=found, checks=()))
    choice = Chooser(cast("Any", table), cast("Any", judge)).choose(holds)
    return choice.judged.hanging_set.numbers[0] if choice else None


@pytest.mark.parametrize("holds", [None, HELD], ids=["any set", "sets that hold a part"])
@pytest.mark.parametrize(
    ("keeping", "giving_up", "best"),
    [
        (Offer("K", 0, 900), Offer("G", 0, 100), "K"),  # none broken comes before one broken, whatever the price
        (Offer("K", 1, 900), Offer("G", 0, 100), "G"),  # one broken each: the price decides
        (Offer("K", 1, 100), Offer("G", 0, 900), "K"),
        (Offer("K", 2, 100), Offer("G", 0, 900), "G"),  # two rules of parts weigh more than one line of the set
        (Offer("K", 1, 500), Offer("G", 0, 500), "G"),  # all alike: the part number decides
        (Offer("K", 1, 500), Offer("L", 0, 500), "K"),
        (None, Offer("G", 3, 500), "G"),
        (None, None, None),
    ],
)
def test_shoulds_of_set_and_parts_weigh_alike_then_price_then_number(
    keeping: Offer | None, giving_up: Offer | None, best: str | None, holds: Held | None
) -> None:
    assert chosen(Table(keeping, giving_up), holds) == best
