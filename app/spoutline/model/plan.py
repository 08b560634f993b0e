"""Results: the set of a position, its alternatives, a conflict, and the plan of a whole site."""

from __future__ import annotations

from collections.abc import Container, Iterator
from dataclasses import field
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.agreed_sets import SetBasis, SetsFrom
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.check import Check, Outcome
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import Jurisdiction
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.port import Port, Seal
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Refusal, Requirement, RequirementId, Slot
from spoutline.model.survey import Position, Survey


@frozen(kw_only=True)
class SetLink:
    """One part in its place in the chain; ``kept`` where it hangs there already and stays, so that nobody buys it."""

    slot: Slot
    part: Part
    kept: bool = False

    def price_minor(self, currency: str) -> int | None:
        """Return what the part costs here in minor units: nothing where it stays, else its list price or None."""
        return 0 if self.kept else self.part.price_minor(currency)


@frozen(kw_only=True)
class Joint:
    """Two ports made up; ``upstream`` names the part (or the dispenser outlet, empty) nearer the dispenser."""

    upstream: str
    downstream: str
    upstream_port: Port
    downstream_port: Port
    seal: Seal


@frozen(kw_only=True)
class HangingSet:
    """The ordered chain of one position, dispenser first, adaptors included.

    ``price_minor`` is the list price in minor units of what is bought: a part that stays costs nothing.
    """

    links: tuple[SetLink, ...]
    price_minor: int
    currency: str

    def part_in(self, slot: Slot) -> Part | None:
        """Return the part in ``slot``; None where the chain has no such slot."""
        return next((link.part for link in self.links if link.slot is slot), None)

    @property
    def numbers(self) -> tuple[str, ...]:
        """Part numbers in chain order, to be shown: ``refs`` says which parts they are."""
        return tuple(link.part.number for link in self.links)

    @property
    def refs(self) -> tuple[PartRef, ...]:
        """The parts in chain order."""
        return tuple(link.part.ref for link in self.links)

    @property
    def identity(self) -> tuple[tuple[PartRef, bool], ...]:
        """What tells one set of a position from another: parts in chain order, and which of them stay."""
        return tuple((link.part.ref, link.kept) for link in self.links)

    @property
    def bought(self) -> tuple[Part, ...]:
        """The parts that are bought, in chain order: all but those that hang there already and stay."""
        return tuple(link.part for link in self.links if not link.kept)


class AlternativeKind(StrEnum):
    """How an alternative differs from the chosen set."""

    LOWEST_PRICE = "lowest_price"  # keeps every must, gives up shoulds
    NEXT_CHEAPEST = "next_cheapest"
    RECONNECTABLE = "reconnectable"
    SINGLE_USE = "single_use"
    LIGHTER = "lighter"
    SHORTER_LEAD_TIME = "shorter_lead_time"
    LOWER_PRESSURE_LOSS = "lower_pressure_loss"
    LOW_PERMEATION = "low_permeation"
    WITHOUT_ADAPTOR = "without_adaptor"
    ONE_MAKER = "one_maker"


@frozen(kw_only=True)
class JudgedSet:
    """A set with everything that was found about it."""

    hanging_set: HangingSet
    joints: tuple[Joint, ...]
    findings: tuple[Finding, ...]
    checks: tuple[Check, ...]


@frozen(kw_only=True)
class Alternative:
    """Another set and in what way it differs."""

    kind: AlternativeKind
    judged: JudgedSet
    price_difference_minor: int


@frozen(kw_only=True)
class Succession:
    """A part that its maker replaced, and the one that took its place."""

    before: PartRef
    now: PartRef


@frozen(kw_only=True)
class Relaxation:
    """The smallest change of one requirement line that would free a set.

    For a numeric line ``from_value`` / ``to_value`` are SI in ``dimension``; for the others they are None and the
    line as a whole would have to go, except where ``successions`` says which kept parts would give way to which.
    ``price_minor`` is the cheapest set that it frees.
    """

    requirement: RequirementId
    from_value: float | None
    to_value: float | None
    dimension: Dimension | None
    price_minor: int | None
    parts: tuple[PartRef, ...]
    also: tuple[RequirementId, ...] = ()  # lines that must change together with this one
    successions: tuple[Succession, ...] = ()


@frozen(kw_only=True)
class Exclusion:
    """How many parts of a slot a requirement line excludes, and which were the last to go."""

    slot: Slot
    requirement: RequirementId
    rule_id: str
    excluded: int
    nearest: tuple[PartRef, ...]


@frozen(kw_only=True)
class PinnedPart:
    """A part that a person asked for and that leaves no set.

    ``findings`` are the must-rules that it breaks by itself; without any, ``lines`` are those that no set with it
    keeps together; without either it could serve alone. No ``slots``: the chain has no place for its kind.
    """

    part: Part
    slots: tuple[Slot, ...]
    findings: tuple[Finding, ...]
    lines: tuple[RequirementId, ...]


@frozen(kw_only=True)
class Conflict:
    """Why no set exists: a minimal group of requirement lines that cannot hold together, and what would free one.

    ``pinned`` names the parts that a person asked for where that is in the way.
    """

    requirements: tuple[RequirementId, ...]
    exclusions: tuple[Exclusion, ...]
    relaxations: tuple[Relaxation, ...]
    pinned: tuple[PinnedPart, ...] = ()


class PlanStatus(StrEnum):
    """The outcome for a position."""

    FITS = "fits"
    DOES_NOT_FIT = "does_not_fit"
    NO_LISTING_CLASS = "no_listing_class"
    CONTRADICTION = "contradiction"
    NOT_ALLOWED = "not_allowed"
    NO_SET = "no_set"
    OUT_OF_RANGE = "out_of_range"
    NOT_ORDERED = "not_ordered"  # left out of the agreed sets
    NOT_DECIDED = "not_decided"  # no set was found, nor is it shown that none fits


@frozen(kw_only=True)
class SlotCount:
    """How far a slot is narrowed: parts of its kinds in the catalogue, and those no part rule excludes."""

    slot: Slot
    in_catalogue: int
    remaining: int


@frozen(kw_only=True)
class AccessoryLine:
    """A consumable or fitting that goes with the set: cap, clamp, sealant, label."""

    part: Part
    quantity: int
    reason: str  # id of a phrase


@frozen(kw_only=True)
class Provenance:
    """What a result was made from."""

    catalogue_edition: str
    rules_edition: str
    jurisdiction_id: str
    survey_fingerprint: str
    program_version: str
    catalogue: str = DEMONSTRATION
    edition: int | None = None  # None: a draft

    @property
    def is_demonstration(self) -> bool:
        """Whether the parts and prices are invented."""
        return self.catalogue == DEMONSTRATION


@frozen(kw_only=True)
class PositionPlan:
    """Everything known about one position. ``chosen`` is None unless ``status`` is fits."""

    position: Position
    status: PlanStatus
    requirement: Requirement | None
    refusal: Refusal | None
    chosen: JudgedSet | None
    alternatives: tuple[Alternative, ...]
    conflict: Conflict | None
    counts: tuple[SlotCount, ...]
    accessories: tuple[AccessoryLine, ...]
    basis: SetBasis = SetBasis.PLANNED
    asks_otherwise: bool = False  # the survey of today asks something else than when the set was agreed
    left_open: tuple[Finding, ...] = ()  # what the search could not decide beside the set itself

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What was found about the position itself, then about its set; each finding once."""
        return tuple(dict.fromkeys(self._found()))

    def findings_of(self, rules: Container[str]) -> tuple[Finding, ...]:
        """Return what some rules found, in the same order: soon, since the other findings are not compared."""
        return tuple(dict.fromkeys(finding for finding in self._found() if finding.rule_id in rules))

    def _found(self) -> Iterator[Finding]:
        for source in (self.refusal, self.requirement, self.chosen):
            if source:
                yield from source.findings
        yield from self.left_open

    @property
    def is_without_set(self) -> bool:
        """Whether a set was asked for and none is there: refused, in conflict, or none for reasons not found out."""
        if self.chosen is not None:
            return False
        return self.refusal is not None or self.conflict is not None or bool(self.left_open)

    @property
    def keeps_every_must(self) -> bool:
        """True where a set is chosen and no must is broken, by a rule or by a check; an unproved must is broken."""
        if self.chosen is None:
            return False
        broken = any(one.severity is Severity.MUST and one.verdict is Verdict.BROKEN for one in self.findings)
        return not broken and all(check.passes or check.severity is not Severity.MUST for check in self.chosen.checks)

    @property
    def shoulds_not_met(self) -> int:
        """How many lines of good practice the chosen set breaks, by a rule or by a check; 0 without a set."""
        if self.chosen is None:
            return 0
        broken = sum(one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN for one in self.findings)
        return broken + self._shoulds(Outcome.FAILS)

    @property
    def shoulds_not_shown(self) -> int:
        """How many checks of good practice cannot be shown for the chosen set, for want of data; 0 without a set."""
        return self._shoulds(Outcome.UNKNOWN)

    def _shoulds(self, outcome: Outcome) -> int:
        checks = self.chosen.checks if self.chosen else ()
        return sum(check.severity is Severity.SHOULD and check.outcome is outcome for check in checks)


@frozen(kw_only=True)
class SitePlan:
    """All positions of a survey in survey order.

    ``still_to_save_minor`` is what a better choice of sets chosen together could at most still save, part numbers
    included; 0 where this one is proved best, or each set was chosen by itself.
    """

    survey: Survey
    jurisdiction: Jurisdiction
    positions: tuple[PositionPlan, ...]
    provenance: Provenance
    sets_from: SetsFrom = field(default_factory=SetsFrom)
    still_to_save_minor: int = 0

    @property
    def shows_invented_parts(self) -> bool:
        """Whether a part or price that it shows is of the invented catalogue."""
        agreed = self.sets_from.catalogue
        others = any(plan.basis in (SetBasis.PLANNED, SetBasis.NOT_AGREED) for plan in self.positions)
        return agreed == DEMONSTRATION or ((others or not agreed) and self.provenance.is_demonstration)

    @property
    def refs(self) -> tuple[PartRef, ...]:
        """Every part that the plan names: of the sets, of what goes with them, of their alternatives; each once."""
        named: dict[PartRef, None] = {}
        for plan in self.positions:
            judged = (*((plan.chosen,) if plan.chosen else ()), *(one.judged for one in plan.alternatives))
            named.update(dict.fromkeys(ref for one in judged for ref in one.hanging_set.refs))
            named.update(dict.fromkeys(line.part.ref for line in plan.accessories))
        return tuple(named)


@frozen(kw_only=True)
class PartVerdict:
    """Answer to *why not?*: every rule that a part breaks at a position, or how it could serve."""

    part: Part
    position: Position
    slots: tuple[Slot, ...]  # the slots it could take by kind; empty: the chain has no place for it
    findings: tuple[Finding, ...]
    in_chosen_set: bool
    best_set_with_it: HangingSet | None
    conflict: Conflict | None = None  # why no set holds it although no rule forbids the part itself
    left_open: tuple[Finding, ...] = ()  # that it was not decided whether a set holds it, or whether that is the best
