"""The ways to convert one position, each by the exact search over new parts and those that may stay."""

from __future__ import annotations

from dataclasses import replace
from functools import cached_property

import numpy as np

from spoutline.model.check import Check, Outcome
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.finding import Severity, SubjectKind, Verdict
from spoutline.model.part import Part
from spoutline.model.plan import AccessoryLine, JudgedSet, PositionPlan
from spoutline.model.position_conversion import ConversionOption
from spoutline.model.requirement import Refusal, Requirement, RequirementId, Slot
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import ALL_LINES, Choice, Chooser
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.installed_units import InstalledUnit, UnitVerdict
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.left_open import not_decided, not_proven
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.pool import Pool, narrow_pool
from spoutline.planning.sets.set_query import SetQuery
from spoutline.planning.sets.staying import RefitChooser, StayingParts, WorkPrice
from spoutline.rules.chain.joints import joints_of

_EVERY_SHOULD = frozenset(RequirementId)


class PositionOptions:
    """The ways to convert one position. Searches are done when first asked for.

    ``counted`` leaves out what is only shown: what the rules find of the set of a way, and its checks.
    """

    def __init__(
        self,
        requirement: Requirement,
        verdicts: tuple[UnitVerdict, ...],
        work: WorkPrice,
        context: PlanningContext,
        *,
        counted: bool = False,
    ) -> None:
        self.requirement = requirement
        self.verdicts = verdicts
        self.work = work
        self.context = context
        self._counted = counted

    @cached_property
    def model(self) -> LoadModel:
        """The loads of parts at this position."""
        return LoadModel(self.requirement, self.context.tables)

    @cached_property
    def new_pool(self) -> Pool:
        """The new parts."""
        return narrow_pool(self.requirement, self.context.tables, self.context.parts)

    @cached_property
    def staying(self) -> StayingParts:
        """What may stay, beside the new parts."""
        return StayingParts(self.requirement, self.new_pool, self.verdicts, self.work)

    @property
    def pool(self) -> Pool:
        """The new parts at their price with the work that they make, and what may stay."""
        return self.staying.pool

    def way(self, kind: OptionKind) -> ConversionOption | None:
        """Return one way; None where it does not exist."""
        if kind is OptionKind.FULL_RENEWAL:
            renewed = self.renewal()
            return renewed and renewed[1]
        return self.least_cost() if kind is OptionKind.LEAST_COST else self.good_practice()

    def least_cost(self) -> ConversionOption | None:
        """Return the cheapest set that keeps every must, kept parts costing nothing; should-rules do not steer it."""
        judged = self.cheapest_in(self.pool)
        return None if judged is None else self._option(OptionKind.LEAST_COST, judged)

    def good_practice(self) -> ConversionOption | None:
        """Return the set that every paper of the survey plans: fewest departures from good practice, then least price.

        Parts that stay cost nothing. Where nothing is recorded, the position is chosen for as a new one.
        """
        chooser = self._chooser if self.requirement.position.installed else self._new_chooser
        choice = chooser.choose()
        return None if choice is None else self._chosen(OptionKind.GOOD_PRACTICE, chooser, choice)

    def renewal(self) -> tuple[Choice, ConversionOption] | None:
        """Return the set of new parts only, chosen as for a new position."""
        choice = self._new_chooser.choose()
        return None if choice is None else (choice, self._chosen(OptionKind.FULL_RENEWAL, self._new_chooser, choice))

    def not_decided(self) -> Refusal:
        """Return that it takes too much work to say what the position is converted to."""
        return not_decided(self._new_chooser)

    def of_plan(self, plan: PositionPlan) -> ConversionOption | None:
        """Return the set of a plan as a way of its own; None where it has none."""
        if plan.chosen is None:
            return None
        currency, links = self.requirement.site.currency, plan.chosen.hanging_set.links
        kept = tuple(place for place, link in enumerate(links) if link.kept)
        broken = sum(
            finding.severity is Severity.SHOULD and finding.verdict is Verdict.BROKEN
            for finding in plan.chosen.findings
        )
        return ConversionOption(
            kind=None,
            judged=plan.chosen,
            kept=kept,
            accessories=plan.accessories,
            parts_minor=plan.chosen.hanging_set.price_minor,
            accessories_minor=_sum_of(plan.accessories, currency),
            kept_minor=_new_price([links[place].part for place in kept], currency),
            departures=broken + sum(map(_is_missed_should, plan.chosen.checks)),
        )

    def cost_minor(self, judged: JudgedSet) -> int:
        """Return what the search adds up for a set: new parts with their work; kept ones are free."""
        return judged.hanging_set.price_minor

    def cheapest_in(self, pool: Pool) -> JudgedSet | None:
        """Return the cheapest set of a pool that keeps every must, as the search knows it (with stand-ins)."""
        musts = tuple(limit for limit in self.model.set_limits if limit.severity is Severity.MUST)
        query = SetQuery(ALL_LINES, musts, regrets_weigh=False)
        chooser = self._chooser if pool is self.pool else self._chooser_over(pool)
        return chooser.first(query, _EVERY_SHOULD)

    def forced(self, unit: InstalledUnit) -> Pool | None:
        """Return the pool in which the slot of an installed part holds nothing else; None for a loose fitting."""
        for slot, portions in self.pool.slots.items():
            for parts in portions:
                rows = [row for row, ref in enumerate(parts.refs(parts.inside)) if self.staying.unit_of(ref) is unit]
                if rows and slot not in (Slot.ADAPTOR, Slot.SPLITTER):
                    own = np.zeros(len(parts.columns), np.bool_)
                    own[np.flatnonzero(parts.inside)[rows]] = True
                    return replace(self.pool, slots={**self.pool.slots, slot: (parts.only(own),)})
        return None

    def search_over(self, pool: Pool) -> ChainSearch:
        """Return the search over a pool with the figures of this position."""
        return ChainSearch(self.requirement, pool, self.model)

    @cached_property
    def _chooser(self) -> RefitChooser:
        return self._chooser_over(self.pool)

    def _chooser_over(self, pool: Pool) -> RefitChooser:
        return self.staying.chooser(pool, self.model, self._judge, self.context)

    @cached_property
    def _judge(self) -> SetJudge:
        """Judges sets at the prices of ``pool``."""
        return self._new_judge()

    @cached_property
    def _true_judge(self) -> SetJudge:
        """Judges sets at what is paid for them: the same parts cost otherwise in the search."""
        return self._new_judge()

    def _new_judge(self) -> SetJudge:
        return SetJudge(self.requirement, self.context.tables, self.context.usual_prices)

    @cached_property
    def _new_chooser(self) -> Chooser:
        """Chooses among new parts at their list price; ``pool`` holds the same parts dearer by their work."""
        search = ChainSearch(self.requirement, self.new_pool, self.model)
        return Chooser(search, self._new_judge(), self.context.listener)

    def _chosen(self, kind: OptionKind, chooser: Chooser, choice: Choice) -> ConversionOption:
        """Return a chosen set as a way, with what is told where it is not proven that none comes before it."""
        option = self._option(kind, choice.judged)
        doubts = not_proven(chooser, choice, with_work=chooser is not self._new_chooser)
        if not doubts:
            return option
        return replace(option, judged=replace(option.judged, findings=(*option.judged.findings, *doubts)))

    def _option(self, kind: OptionKind, found: JudgedSet) -> ConversionOption:
        """Put the true parts in the place of the stand-ins, and count what is bought and what stays."""
        currency = self.requirement.site.currency
        judged = found if kind is OptionKind.FULL_RENEWAL else self._true(found)
        links = judged.hanging_set.links
        kept = tuple(place for place, link in enumerate(links) if link.kept)
        parts_minor = judged.hanging_set.price_minor
        accessories = accessory_lines(judged, self.requirement, self.context)
        return ConversionOption(
            kind=kind,
            judged=judged,
            kept=kept,
            accessories=accessories,
            parts_minor=parts_minor,
            accessories_minor=_sum_of(accessories, currency),
            kept_minor=_new_price([links[place].part for place in kept], currency),
            departures=self._departures(found),
        )

    def _true(self, found: JudgedSet) -> JudgedSet:
        """Return what the search found as it is: true parts, those that stay at no price."""
        whole = self.staying.true_set(found.hanging_set)
        if self._counted:
            return JudgedSet(
                hanging_set=whole, joints=joints_of(whole.links, self.requirement.outlet), findings=(), checks=()
            )
        return self._true_judge.judged(whole)

    def _departures(self, found: JudgedSet) -> int:
        """Count broken shoulds once each: the pool counts those of parts, and counts a worn part as one more."""
        places = (self.pool.found(link.slot, link.part.ref) for link in found.hanging_set.links)
        regrets = sum(int(parts.regrets[row]) for parts, row in filter(None, places))
        findings = sum(
            finding.severity is Severity.SHOULD
            and finding.verdict is Verdict.BROKEN
            and finding.subject_kind is not SubjectKind.PART
            for finding in found.findings
        )
        return regrets + findings + sum(map(_is_missed_should, found.checks))


def _sum_of(accessories: tuple[AccessoryLine, ...], currency: str) -> int:
    return sum((line.part.price_minor(currency) or 0) * line.quantity for line in accessories)


def _new_price(parts: list[Part], currency: str) -> int | None:
    prices = [part.price_minor(currency) for part in parts]
    return None if None in prices else sum(price or 0 for price in prices)


def _is_missed_should(check: Check) -> bool:
    return check.severity is Severity.SHOULD and check.outcome in (Outcome.FAILS, Outcome.UNKNOWN)
