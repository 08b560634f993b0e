"""One question to the search for sets: which lines are in force, what is minimised, and what a set must hold."""

from __future__ import annotations

from dataclasses import replace
from enum import Enum, auto
from typing import NamedTuple

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembled import Keep, everything
from spoutline.planning.sets.loads import Load, SetLimit
from spoutline.search.answer import Decision
from spoutline.search.graph import MAJOR

REGRET = MAJOR
"""Outweighs any objective, so that fewer broken should-rules always come first."""


class Objective(Enum):
    """What the walk minimises, after the number of broken should-rules; price always breaks a tie."""

    PRICE = auto()
    MASS = auto()
    PRESSURE_LOSS = auto()


@frozen
class Held:
    """A part that every set must hold in a slot; an adaptor or splitter in any of the places it may take."""

    slot: Slot
    part: PartRef


@frozen
class SetQuery:
    """One question to the search.

    ``lines`` are the requirement lines in force: a part that breaks one of them is left out, a set limit that serves
    one of them holds. ``keep`` narrows the parts further. An objective may be any load sum. Broken should-rules of
    parts outweigh every objective unless ``regrets_weigh`` is False. ``outlet_bears_all`` asks what a stronger
    dispenser outlet would allow. ``holds`` names a part that must be in the set, ``at_most`` bounds sums beside the
    limits, whatever lines are in force. Sets that cost more than ``most_cost``, as the walk counts (see
    ``ChainSearch.most_cost``), are left out where the cheapest is asked for; of ``fewest_regrets`` it is known that no
    set breaks fewer should-rules of its parts. ``common`` are those of the lines that further questions keep as well:
    items are made for these once, and narrowed for each question; None for all. It is for queries that hold no part.
    """

    lines: frozenset[RequirementId]
    limits: tuple[SetLimit, ...]
    keep: Keep = everything
    objective: Objective | Load = Objective.PRICE
    regrets_weigh: bool = True
    outlet_bears_all: bool = False
    holds: Held | None = None
    at_most: tuple[tuple[Load, float], ...] = ()
    most_cost: int | None = None
    fewest_regrets: int = 0
    common: frozenset[RequirementId] | None = None

    def __hash__(self) -> int:
        """Return a hash of what mostly differs; limits, of many figures each, are looked at where it is the same."""
        return hash((self.lines, len(self.limits), self.holds, self.most_cost))

    @property
    def shared(self) -> SetQuery:
        """The question that the items are made for; what is common to several may bear any pull."""
        asked = replace(self, limits=(), keep=everything, at_most=(), most_cost=None, fewest_regrets=0)
        return asked if self.common is None else replace(asked, lines=self.common, outlet_bears_all=True)

    @property
    def is_whole(self) -> bool:
        """Whether it asks for all parts that items are made for."""
        return self.keep is everything and self.common is None

    @property
    def without_bounds(self) -> SetQuery:
        """The question without what is known or asked of the cost beside."""
        return replace(self, most_cost=None, fewest_regrets=0)

    @property
    def has_strengths(self) -> bool:
        """Whether its items bear and ask what they do: strengths that only some questions look at are known as well."""
        return self.common is not None or RequirementId.DRIVE_OFF in self.lines


class Promise(NamedTuple):
    """What no set goes below: broken should-rules of its parts, then price in minor units."""

    regrets: int
    price_minor: int


@frozen
class SetAnswer:
    """The best set for a query, or None where there is none; undecided, the best one found or None where none was.

    No set goes below ``floor``, counted as the search does; None where there is no set, or where nothing is known.
    """

    hanging_set: HangingSet | None
    decision: Decision
    floor: int | None

    @property
    def promise(self) -> Promise:
        """What no set goes below, the objective being the price; nothing where that is not known."""
        return Promise(0, 0) if self.floor is None else Promise(*divmod(max(0, self.floor), REGRET))
