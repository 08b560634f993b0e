"""What if one answer were another: the question, and what becomes of every position that it touches."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from enum import StrEnum
from types import UnionType

from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.check import Check
from spoutline.model.coverage_kinds import OutletKind
from spoutline.model.finding import Finding
from spoutline.model.limit import Jurisdiction
from spoutline.model.part import Part
from spoutline.model.plan import PositionPlan, Provenance, SitePlan
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.survey import Duty, Outlet, Survey, SurveyLiquid, VapourStatus


class WhatIfQuestion(StrEnum):
    """The answers of which one may be changed on trial."""

    BLEND = "blend"
    DUTY = "duty"
    OUTLET = "outlet"
    VAPOUR = "vapour"
    JURISDICTION = "jurisdiction"
    CATALOGUE = "catalogue"


OF_THE_STATION = frozenset({WhatIfQuestion.JURISDICTION, WhatIfQuestion.CATALOGUE})  # asked once for all positions
WhatIfValue = SurveyLiquid | Duty | OutletKind | Outlet | VapourStatus | EditionRef | str
_KINDS: dict[WhatIfQuestion, type | UnionType] = {
    WhatIfQuestion.BLEND: SurveyLiquid,
    WhatIfQuestion.DUTY: Duty,
    WhatIfQuestion.OUTLET: OutletKind | Outlet,
    WhatIfQuestion.VAPOUR: VapourStatus,
    WhatIfQuestion.JURISDICTION: str,
    WhatIfQuestion.CATALOGUE: EditionRef,
}


@frozen
class WhatIf:
    """One answer changed on trial.

    ``value`` is of the kind that the question asks for: a liquid with its blend, a duty, a usual outlet or another by
    its thread, a status, the id of a jurisdiction, an edition. ``lasting`` asks for sets of today's
    answers that keep every must of this blend too. ``labels`` name the positions looked at; empty is the whole station.
    """

    question: WhatIfQuestion
    value: WhatIfValue
    labels: tuple[str, ...] = ()
    lasting: bool = False

    def __post_init__(self) -> None:
        """Refuse a value of another kind than the question asks for."""
        if not isinstance(self.value, _KINDS[self.question]):
            raise TypeError(f"{self.question} is not answered by {self.value!r}")
        if self.lasting and self.question is not WhatIfQuestion.BLEND:
            raise TypeError("sets last for a later liquid")


class WhatIfEffect(StrEnum):
    """What becomes of a position, the gravest first."""

    LOSES_SET = "loses_set"  # a set today, none under the other answer
    MUST_CHANGE = "must_change"  # today's set breaks a must under the other answer
    MAY_STAY = "may_stay"  # today's set keeps every must; a plan made anew would take another
    PRICE_CHANGES = "price_changes"  # the same parts at another price
    GETS_SET = "gets_set"
    NO_SET = "no_set"  # neither today nor then
    SAME = "same"
    NONE_LASTS = "none_lasts"  # of sets that are to last: none keeps every must of both liquids
    OTHER_LASTS = "other_lasts"  # the plain set does not last, another does
    LASTS = "lasts"  # the plain set lasts


class PartFate(StrEnum):
    """What becomes of a part."""

    STAYS = "stays"
    MUST_GO = "must_go"  # it breaks a must of its own
    NOT_SOLD = "not_sold"  # the other edition has no such part
    ALLOWED = "allowed"  # it breaks none itself: another set was chosen, or none is there
    COMES = "comes"


@frozen(kw_only=True)
class PartChange:
    """One place of a chain before and after; a side is None where that set has no part there.

    ``findings`` are the musts that the part of today breaks by itself under the other answer.
    """

    slot: Slot
    before: Part | None
    after: Part | None
    fate: PartFate
    findings: tuple[Finding, ...] = ()


@frozen(kw_only=True)
class CheckChange:
    """A check whose outcome, value or limit differs; a side is None where that set has no such check."""

    before: Check | None
    after: Check | None

    @property
    def changes_outcome(self) -> bool:
        """Whether the verdict itself differs."""
        return (self.before and self.before.outcome) != (self.after and self.after.outcome)


@frozen(kw_only=True)
class WhatIfPosition:
    """One position today and under the other answer.

    ``held`` is the set of today judged by the other answer, None where there is none today or the other answer is
    refused. ``given_up`` are lines of good practice that the set of today keeps and the other does not, ``kept`` the
    reverse.
    """

    before: PositionPlan
    after: PositionPlan
    held: PositionPlan | None
    effect: WhatIfEffect
    parts: tuple[PartChange, ...]
    checks: tuple[CheckChange, ...]
    given_up: tuple[RequirementId, ...]
    kept: tuple[RequirementId, ...]

    @property
    def label(self) -> str:
        """The label of the position."""
        return self.after.position.label

    @property
    def price_before_minor(self) -> int | None:
        """Price of the set of today in minor units; None without a set."""
        return _price(self.before)

    @property
    def price_after_minor(self) -> int | None:
        """Price of the set under the other answer in minor units; None without a set."""
        return _price(self.after)

    @property
    def difference_minor(self) -> int | None:
        """What the set under the other answer costs more; None where a set is missing."""
        if self.price_before_minor is None or self.price_after_minor is None:
            return None
        return self.price_after_minor - self.price_before_minor

    @property
    def telling(self) -> tuple[object, ...]:
        """What is told of the position apart from its label: equal positions are told once."""
        sets = (one.chosen and one.chosen.hanging_set.identity for one in (self.before, self.after))
        ways = (self.after.status, self.after.conflict, self.after.requirement and self.after.requirement.liquid)
        return (self.effect, *sets, *ways, self.parts, self.checks, self.given_up, self.kept)


@frozen(kw_only=True)
class WhatIfTotals:
    """Sums over positions in minor units: ``before`` + ``gained`` − ``lost`` + ``difference`` is ``after``.

    ``difference`` is of the positions that have a set both times; ``gained`` and ``lost`` are sets of the others.
    """

    before_minor: int
    after_minor: int
    difference_minor: int
    gained_minor: int
    lost_minor: int


@frozen(kw_only=True)
class PartCount:
    """A part with the number of places that it leaves or takes, all positions together."""

    part: Part
    quantity: int


@frozen(kw_only=True)
class WhatIfResult:
    """What one other answer does to a station.

    ``before`` are the sets of today; ``changed`` is the survey with the other answer, planned under ``jurisdiction``.
    ``positions`` are those that the answer touches, and any whose set changes with them, in survey order;
    ``untouched`` counts the others.
    """

    asked: WhatIf
    before: SitePlan
    changed: Survey
    positions: tuple[WhatIfPosition, ...]
    untouched: int
    jurisdiction: Jurisdiction
    made_from: Provenance

    @property
    def currency(self) -> str:
        """The currency of every price."""
        return self.changed.site.currency

    def count(self, *effects: WhatIfEffect) -> int:
        """Return how many positions come to one of these."""
        return sum(one.effect in effects for one in self.positions)

    @property
    def totals(self) -> WhatIfTotals:
        """The sums over all positions shown."""
        both = [one.difference_minor for one in self.positions]
        alone = [one for one in self.positions if one.difference_minor is None]
        return WhatIfTotals(
            before_minor=sum(one.price_before_minor or 0 for one in self.positions),
            after_minor=sum(one.price_after_minor or 0 for one in self.positions),
            difference_minor=sum(one for one in both if one is not None),
            gained_minor=sum(one.price_after_minor or 0 for one in alone),
            lost_minor=sum(one.price_before_minor or 0 for one in alone),
        )

    @property
    def leaving(self) -> tuple[PartCount, ...]:
        """The parts that leave sets, by number and maker."""
        return _counted(part.before for one in self.positions for part in one.parts if part.fate is not PartFate.STAYS)

    @property
    def coming(self) -> tuple[PartCount, ...]:
        """The parts that come into sets, by number and maker."""
        return _counted(part.after for one in self.positions for part in one.parts if part.fate is not PartFate.STAYS)

    @property
    def grouped(self) -> tuple[tuple[WhatIfPosition, ...], ...]:
        """The positions in groups of which the same is to be told, the first of each in survey order."""
        groups: dict[tuple[object, ...], list[WhatIfPosition]] = {}
        for one in self.positions:
            groups.setdefault(one.telling, []).append(one)
        return tuple(map(tuple, groups.values()))


def _price(plan: PositionPlan) -> int | None:
    return plan.chosen.hanging_set.price_minor if plan.chosen is not None else None


def _counted(parts: Iterable[Part | None]) -> tuple[PartCount, ...]:
    known: dict[object, Part] = {}
    counts: Counter[object] = Counter()
    for part in parts:
        if part is not None:
            known.setdefault(part.ref, part)
            counts[part.ref] += 1
    ordered = sorted(known.values(), key=lambda part: part.ref)
    return tuple(PartCount(part=part, quantity=counts[part.ref]) for part in ordered)
