"""The conversion of one position: the ways to do it, and what stays, goes, comes and is closed."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.finding import Finding
from spoutline.model.installed import InstalledPart
from spoutline.model.limit import LimitStatus
from spoutline.model.part import Part
from spoutline.model.plan import AccessoryLine, JudgedSet, PositionPlan
from spoutline.model.requirement import RequirementId, RequirementLine, Slot
from spoutline.model.survey import Position, VapourStatus


class ConversionKind(StrEnum):
    """In what way a position is converted; one position may be converted in several ways at once."""

    DECOMMISSION = "decommission"
    ADD_RECOVERY = "add_recovery"
    CHANGE_RECOVERY = "change_recovery"
    CHANGE_LIQUID = "change_liquid"
    RECONNECTABLE = "reconnectable"
    RETIREMENT = "retirement"
    NEW_POSITION = "new_position"


class DifferenceAction(StrEnum):
    """What happens with a part."""

    KEEP = "keep"
    REMOVE = "remove"
    ADD = "add"
    CAP = "cap"


class VapourOpening(StrEnum):
    """Where a vapour path is closed."""

    OUTLET = "outlet"
    CABINET_PIPE = "cabinet_pipe"
    CABINET_BRANCH = "cabinet_branch"  # of one hose, up to the joint with a pipe that goes on serving others
    PUMP_INLET = "pump_inlet"
    PUMP_OUTLET = "pump_outlet"
    RISER = "riser"
    CENTRAL_UNIT = "central_unit"
    CONDENSATE_TRAP = "condensate_trap"
    TANK_END = "tank_end"


@frozen(kw_only=True)
class Closing:
    """One kind of opening to close; ``position`` is empty for a whole dispenser, both are empty for the site."""

    opening: VapourOpening
    dispenser: str
    position: str
    quantity: int
    source: str
    status: LimitStatus


class LiveReason(StrEnum):
    """Why a vapour path that serves hoses without recovery is not closed."""

    SERVES_KEPT = "serves_kept"
    NOT_CONVERTED = "not_converted"
    PIPES_UNKNOWN = "pipes_unknown"
    TRAPS_UNKNOWN = "traps_unknown"


@frozen(kw_only=True)
class StaysLive:
    """A vapour path that is left open and in use; ``dispenser`` is empty for the site.

    ``needed_by`` are the positions that go on recovering through it.
    """

    opening: VapourOpening
    dispenser: str
    quantity: int
    needed_by: tuple[str, ...]
    reason: LiveReason
    source: str
    status: LimitStatus


@frozen(kw_only=True)
class ClosingPlan:
    """What is closed at each position, by its label, what once for a dispenser or the site, and what stays live."""

    of_position: Mapping[str, tuple[Closing, ...]]
    shared: tuple[Closing, ...]
    live: tuple[StaysLive, ...]


@frozen(kw_only=True)
class DifferenceLine:
    """One part of a position, today or afterwards, with the reason for what happens to it.

    ``findings`` are the broken rules; ``asked_by`` the requirement line that asks for an added part; ``missing`` names
    figures without which an installed part cannot be re-checked. ``amount_minor`` is what a new part costs, or what a
    kept part would cost new; ``extra_minor`` is what keeping the part would add to the set. ``conflict`` are the lines
    that exclude every set with the part.
    """

    action: DifferenceAction
    reason: DifferenceReason
    slot: Slot | None
    part: Part | None
    installed: InstalledPart | None = None
    quantity: int = 1
    findings: tuple[Finding, ...] = ()
    asked_by: RequirementLine | None = None
    missing: tuple[str, ...] = ()
    amount_minor: int | None = None
    extra_minor: int | None = None
    conflict: tuple[RequirementId, ...] = ()
    accessory_reason: str = ""


@frozen(kw_only=True)
class ConversionOption:
    """One way to convert a position.

    ``kept`` are places in the chain, from 0, whose part stays. ``parts_minor`` is the list price of what is bought for
    the chain, ``accessories_minor`` of what goes with it, ``kept_minor`` what the kept parts would cost new (None where
    one of them has no price). ``departures`` counts broken should-rules and should-checks. ``kind`` is None for sets
    that were handed in, such as agreed ones.
    """

    kind: OptionKind | None
    judged: JudgedSet
    kept: tuple[int, ...]
    accessories: tuple[AccessoryLine, ...]
    parts_minor: int
    accessories_minor: int
    kept_minor: int | None
    departures: int

    @property
    def bought_minor(self) -> int:
        """List price of everything that is bought."""
        return self.parts_minor + self.accessories_minor


class PositionOutcome(StrEnum):
    """How the conversion of a position ends."""

    CONVERTS = "converts"
    NOTHING_TO_DO = "nothing_to_do"
    NOT_ALLOWED = "not_allowed"
    NOT_DECIDED = "not_decided"  # no set was found, nor is it shown that none fits
    NO_SET = "no_set"
    REFUSED = "refused"


@frozen(kw_only=True)
class PositionConversion:
    """Everything about one position's conversion. Without a set, ``renewal`` tells why.

    ``shown`` is the set that was handed in, of the plan ``shown_plan``; it is followed whatever the ways are.
    """

    position: Position
    kinds: tuple[ConversionKind, ...]
    outcome: PositionOutcome
    least_cost: ConversionOption | None
    good_practice: ConversionOption | None
    renewal: PositionPlan
    renewal_option: ConversionOption | None
    differences: tuple[DifferenceLine, ...]
    closings: tuple[Closing, ...] = ()
    shown: ConversionOption | None = None
    shown_plan: PositionPlan | None = None

    @property
    def loses_recovery(self) -> bool:
        """True where this conversion takes recovery away; wanting it is not enough."""
        return self.outcome is PositionOutcome.CONVERTS and ConversionKind.DECOMMISSION in self.kinds

    @property
    def vapour_afterwards(self) -> VapourStatus:
        """How vapour is recovered when the work is done: as wanted where it is done, else as today."""
        if self.outcome in (PositionOutcome.CONVERTS, PositionOutcome.NOTHING_TO_DO):
            return self.position.vapour_wanted
        return self.position.vapour_today if self.position.exists_today else VapourStatus.NONE

    @property
    def options(self) -> tuple[ConversionOption, ...]:
        """The ways that exist, cheapest kind first."""
        found = (self.least_cost, self.good_practice, self.renewal_option)
        return tuple(option for option in found if option is not None)

    def followed(self, wanted: OptionKind) -> ConversionOption | None:
        """Return what is done: the set that was handed in, else the way that is wanted; None without a set."""
        if self.shown_plan is not None:
            return self.shown
        return self.way(wanted)

    def way(self, wanted: OptionKind) -> ConversionOption | None:
        """Return the wanted way, else the nearest cheaper one; None without a set."""
        by_kind = {option.kind: option for option in self.options}
        order = list(OptionKind)
        for kind in reversed(order[: order.index(wanted) + 1]):
            if kind in by_kind:
                return by_kind[kind]
        return None
