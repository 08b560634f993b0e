"""The ways to convert one position, each by the exact search over new parts and those that may stay."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from decimal import ROUND_HALF_UP, Decimal

from spoutline.explain.writing.money import decimals
from spoutline.model.check import Check, Outcome
from spoutline.model.conversion_answers import ConversionAnswers, OptionKind
from spoutline.model.conversion_step import StepScope, StepTable
from spoutline.model.finding import Severity, SubjectKind, Verdict
from spoutline.model.part import Part, Price
from spoutline.model.plan import HangingSet, JudgedSet, SetLink
from spoutline.model.position_conversion import ConversionOption
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.conversion.installed_units import InstalledUnit, UnitVerdict
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.assembly import ChainSearch, SetQuery
from spoutline.planning.sets.choice import ALL_LINES, Choice, Chooser
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.pool import SLOT_KINDS, JudgedPart, Pool, narrow_pool

_EVERY_SHOULD = frozenset(RequirementId)


class RefitChooser(Chooser):
    """A chooser that never uses one installed part at two places."""

    installed_keys: frozenset[str] = frozenset()

    def _accepted_or_none(self, hanging_set: HangingSet, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        kept = [number for number in hanging_set.numbers if number in self.installed_keys]
        if len(kept) > len(set(kept)):
            return None
        return super()._accepted_or_none(hanging_set, dropped)


@dataclass(frozen=True, slots=True)
class WorkPrice:
    """What work adds to the price of a new part, in minor units; 0 where the owner gave no rate."""

    fit_minor: int
    remove_minor: int

    @staticmethod
    def of(answers: ConversionAnswers, steps: StepTable, currency: str) -> WorkPrice:
        """Return the work of fitting and removing one part at the owner's rate."""
        rate = answers.money.labour_rate_per_hour or Decimal(0)

        def minor(scope: StepScope) -> int:
            amount = rate * steps.minutes_per(scope) / 60
            return int(amount.scaleb(decimals(currency)).quantize(Decimal(1), rounding=ROUND_HALF_UP))

        return WorkPrice(minor(StepScope.PART_FITTED), minor(StepScope.PART_REMOVED))


class PositionOptions:
    """The ways to convert one position. Searches are done when first asked for."""

    def __init__(
        self, requirement: Requirement, verdicts: tuple[UnitVerdict, ...], work: WorkPrice, context: PlanningContext
    ) -> None:
        self.requirement = requirement
        self.verdicts = verdicts
        self.work = work
        self.context = context
        self.judge = SetJudge(requirement, context.tables)
        self.model = LoadModel(requirement, context.tables)
        self.new_pool = _wanted_only(narrow_pool(requirement, context.tables, context.parts), requirement)
        self._originals: dict[str, Part] = {}
        self._units: dict[str, InstalledUnit] = {}
        self.pool = self._with_installed()

    def least_cost(self) -> ConversionOption | None:
        """Return the cheapest set that keeps every must, kept parts costing nothing; should-rules do not steer it."""
        judged = self.cheapest_in(self.pool)
        return None if judged is None else self._option(OptionKind.LEAST_COST, judged)

    def good_practice(self) -> ConversionOption | None:
        """Return the set with the fewest departures from good practice, the cheapest of those, kept parts counted."""
        choice = self._chooser(self.pool).choose()
        return None if choice is None else self._option(OptionKind.GOOD_PRACTICE, choice.judged)

    def renewal(self) -> tuple[Choice, ConversionOption] | None:
        """Return the set of new parts only, chosen as for a new position."""
        choice = self._chooser(self.new_pool).choose()
        return None if choice is None else (choice, self._option(OptionKind.FULL_RENEWAL, choice.judged))

    def cost_minor(self, judged: JudgedSet) -> int:
        """Return what the search adds up for a set: new parts with their work; kept ones are free."""
        return judged.hanging_set.price_minor

    def cheapest_in(self, pool: Pool) -> JudgedSet | None:
        """Return the cheapest set of a pool that keeps every must, as the search knows it (with stand-ins)."""
        musts = tuple(limit for limit in self.model.set_limits if limit.severity is Severity.MUST)
        query = SetQuery(ALL_LINES, musts, regrets_weigh=False)
        return self._chooser(pool).first(query, _EVERY_SHOULD)

    def forced(self, unit: InstalledUnit) -> Pool | None:
        """Return the pool in which the slot of an installed part holds nothing else; None for a loose fitting."""
        for slot, candidates in self.pool.slots.items():
            own = tuple(one for one in candidates if self._units.get(one.part.number) is unit)
            if own and slot not in (Slot.ADAPTOR, Slot.SPLITTER):
                return Pool({**self.pool.slots, slot: own})
        return None

    def search_over(self, pool: Pool) -> ChainSearch:
        """Return the search over a pool with the figures of this position."""
        return ChainSearch(self.requirement, pool, self.model)

    def unit_of(self, key: str) -> InstalledUnit | None:
        """Return the installed part behind a number of the search; None for a new part."""
        return self._units.get(key)

    def _with_installed(self) -> Pool:
        currency = self.requirement.site.currency
        staying: dict[Slot, list[JudgedPart]] = {}
        for verdict in self.verdicts:
            for candidate in verdict.candidates:
                staying.setdefault(candidate.slot, []).append(candidate)
                self._units[candidate.part.number] = verdict.unit
        replaced = {verdict.unit.installed.kind for verdict in self.verdicts}
        slots: dict[Slot, tuple[JudgedPart, ...]] = {}
        for slot, candidates in self.new_pool.slots.items():
            removal = self.work.remove_minor if SLOT_KINDS[slot] in replaced else 0
            extra = self.work.fit_minor + removal
            mine = staying.get(slot, [])
            taken = {one.part.number for one in mine}
            dearer = (self._dearer(one, extra, currency) for one in candidates if one.part.number not in taken)
            slots[slot] = (*mine, *dearer)
        return Pool(slots)

    def _dearer(self, candidate: JudgedPart, extra_minor: int, currency: str) -> JudgedPart:
        part = candidate.part
        price = part.price_minor(currency)
        if price is None:
            return candidate
        self._originals[part.number] = part
        return replace(candidate, part=replace(part, prices=(Price(currency=currency, minor=price + extra_minor),)))

    def _chooser(self, pool: Pool) -> RefitChooser:
        chooser = RefitChooser(self.search_over(pool), self.judge, self.context.listener)
        chooser.installed_keys = frozenset(self._units)
        return chooser

    def _option(self, kind: OptionKind, found: JudgedSet) -> ConversionOption:
        """Put the true parts in the place of the stand-ins, and count what is bought and what stays."""
        currency = self.requirement.site.currency
        links, kept = [], []
        for place, link in enumerate(found.hanging_set.links):
            unit = self._units.get(link.part.number)
            if unit is not None and unit.part is not None and kind is not OptionKind.FULL_RENEWAL:
                kept.append(place)
                links.append(SetLink(slot=link.slot, part=unit.part))
            else:
                links.append(SetLink(slot=link.slot, part=self._originals.get(link.part.number, link.part)))
        bought = [link.part for place, link in enumerate(links) if place not in kept]
        parts_minor = sum(part.price_minor(currency) or 0 for part in bought)
        true_set = HangingSet(links=tuple(links), price_minor=parts_minor, currency=currency)
        judged = replace(self._judged_afresh(true_set), hanging_set=true_set)
        accessories = accessory_lines(judged, self.requirement, self.context)
        return ConversionOption(
            kind=kind,
            judged=judged,
            kept=tuple(kept),
            accessories=accessories,
            parts_minor=parts_minor,
            accessories_minor=sum((line.part.price_minor(currency) or 0) * line.quantity for line in accessories),
            kept_minor=_new_price([links[place].part for place in kept], currency),
            departures=self._departures(found),
        )

    def _judged_afresh(self, true_set: HangingSet) -> JudgedSet:
        return SetJudge(self.requirement, self.context.tables).judged(true_set)

    def _departures(self, found: JudgedSet) -> int:
        """Count broken shoulds once each: the pool counts those of parts, and counts a worn part as one more."""
        by_place: Mapping[tuple[Slot, str], int] = {
            (one.slot, one.part.number): one.regrets for slot in self.pool.slots.values() for one in slot
        }
        regrets = sum(by_place.get((link.slot, link.part.number), 0) for link in found.hanging_set.links)
        findings = sum(
            finding.severity is Severity.SHOULD
            and finding.verdict is Verdict.BROKEN
            and finding.subject_kind is not SubjectKind.PART
            for finding in found.findings
        )
        return regrets + findings + sum(map(_is_missed_should, found.checks))


def _wanted_only(pool: Pool, requirement: Requirement) -> Pool:
    """Leave out single-use breakaways where a reconnectable one is wanted."""
    if not requirement.position.reconnectable_wanted:
        return pool
    return pool.only(lambda one: one.part.breakaway is None or one.part.breakaway.reconnectable)


def _new_price(parts: list[Part], currency: str) -> int | None:
    prices = [part.price_minor(currency) for part in parts]
    return None if None in prices else sum(price or 0 for price in prices)


def _is_missed_should(check: Check) -> bool:
    return check.severity is Severity.SHOULD and check.outcome in (Outcome.FAILS, Outcome.UNKNOWN)
