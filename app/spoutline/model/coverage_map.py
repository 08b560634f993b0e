"""The coverage map of an edition: which combinations of liquid, duty, vapour, outlet and climate it has sets for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.coverage_kinds import ClimateBand, OutletKind
from spoutline.model.limit import Jurisdiction
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Conflict
from spoutline.model.requirement import Refusal, Slot
from spoutline.model.survey import Duty, VapourStatus


class LiquidClass(StrEnum):
    """Liquids that ask for different hardware: the listing classes at their greatest blend, and what has none."""

    E10 = "e10"
    E25 = "e25"
    E85 = "e85"
    B5 = "b5"
    B20 = "b20"
    B100 = "b100"
    KEROSENE = "kerosene"
    FUEL_OIL = "fuel_oil"
    DEF = "def"


@dataclass(frozen=True, slots=True, order=True)
class Combination:
    """One question of the map."""

    liquid: LiquidClass
    duty: Duty
    vapour: VapourStatus
    outlet: OutletKind
    climate: ClimateBand


@frozen(kw_only=True)
class CoverageScope:
    """The members of each axis that are asked, in their own order, and how many sets are counted at most."""

    liquids: tuple[LiquidClass, ...] = tuple(LiquidClass)
    duties: tuple[Duty, ...] = tuple(Duty)
    vapours: tuple[VapourStatus, ...] = tuple(VapourStatus)
    outlets: tuple[OutletKind, ...] = tuple(OutletKind)
    climates: tuple[ClimateBand, ...] = tuple(ClimateBand)
    most_counted: int = 100

    def combinations(self) -> tuple[Combination, ...]:
        """Return every question, band by band, liquid by liquid."""
        return tuple(
            Combination(liquid, duty, vapour, outlet, climate)
            for climate in self.climates
            for liquid in self.liquids
            for duty in self.duties
            for vapour in self.vapours
            for outlet in self.outlets
        )


class CellState(StrEnum):
    """What the map says of a combination."""

    FITS = "fits"
    NOTHING_FITS = "nothing_fits"
    NOT_DECIDED = "not_decided"  # it takes too much work to say
    NOT_ASKED = "not_asked"  # the rules refuse the question itself, such as vapour recovery for diesel


@frozen(kw_only=True)
class SlotStock:
    """A place of the chain: parts of its kind in the edition, those that no must forbids, and who makes these."""

    slot: Slot
    in_catalogue: int
    remaining: int
    makers: tuple[str, ...]


@frozen(kw_only=True)
class CoverageCell:
    """The answer to one combination.

    ``sets_count`` counts the distinct chains that keep every must which the search knows; ``counted_all`` is False
    where counting ended at the stated bound. Where ``is_open``, it takes too much work to count all sets or to find all
    makers: there are at least so many. ``makers`` are those with a part in at least one such chain. ``parts`` and
    ``price_minor`` are the set that a plan would choose. ``missing`` are the places of the chain for which the edition
    has no part at all that a must allows: what to stock. Where each has one but nothing joins them, ``unjoined`` is
    the first place that no part allowed reaches, through an adaptor or without: what to stock is one. Neither: a figure
    of the whole set is in the way.
    """

    combination: Combination
    state: CellState
    currency: str
    sets_count: int = 0
    counted_all: bool = True
    makers: tuple[str, ...] = ()
    price_minor: int | None = None
    parts: tuple[PartRef, ...] = ()
    slots: tuple[SlotStock, ...] = ()
    missing: tuple[Slot, ...] = ()
    unjoined: Slot | None = None
    conflict: Conflict | None = None
    refusal: Refusal | None = None
    is_open: bool = False


@frozen(kw_only=True)
class CoverageMap:
    """What an edition covers under the rules of a jurisdiction, in the order of ``scope.combinations``."""

    edition: CatalogueEdition
    jurisdiction: Jurisdiction
    rules_edition: str
    scope: CoverageScope
    currency: str
    cells: tuple[CoverageCell, ...]

    def count(self, state: CellState) -> int:
        """Return how many combinations have this answer."""
        return sum(cell.state is state for cell in self.cells)


@frozen(kw_only=True)
class StockGap:
    """What to stock: a kind of part, or with ``joins`` an adaptor up to it, and the combinations that lack it.

    ``alone`` counts those that lack nothing else.
    """

    slot: Slot
    joins: bool
    combinations: int
    alone: int


def stock_gaps(cells: Sequence[CoverageCell]) -> tuple[StockGap, ...]:
    """Return what to stock, what would free most combinations by itself first."""
    found = []
    for slot in Slot:
        mine = [cell for cell in cells if slot in cell.missing]
        if mine:
            alone = sum(cell.missing == (slot,) for cell in mine)
            found.append(StockGap(slot=slot, joins=False, combinations=len(mine), alone=alone))
        unjoined = sum(cell.unjoined is slot for cell in cells)
        if unjoined:
            found.append(StockGap(slot=slot, joins=True, combinations=unjoined, alone=unjoined))
    return tuple(sorted(found, key=lambda gap: (-gap.alone, -gap.combinations, gap.slot.value)))
