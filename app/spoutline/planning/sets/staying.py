"""Parts that hang at a position and may stay, offered to the search at no price beside the new ones.

The search knows an installed part by a number of its own, and a new part at its price with the work that it makes; what
the search finds is put back into true parts before anybody sees it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from decimal import ROUND_HALF_UP, Decimal

import numpy as np

from spoutline.explain.writing.money import decimals
from spoutline.frozen import frozen
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.conversion_step import StepScope, StepTable
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet, SetLink
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.part_names import installed_parts
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import Chooser
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.installed_units import InstalledUnit, UnitVerdict, installed_units, unit_verdict
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.pool import SLOT_KINDS, JudgedPart, Pool, SlotParts, narrow_pool, stand_ins


@frozen
class WorkPrice:
    """What work adds to the price of a new part, in minor units; 0 where the owner gave no rate."""

    fit_minor: int
    remove_minor: int

    @staticmethod
    def of(answers: ConversionAnswers, steps: StepTable | None, currency: str) -> WorkPrice:
        """Return the work of fitting and removing one part at the owner's rate."""
        rate = answers.money.labour_rate_per_hour
        if rate is None or steps is None:
            return WorkPrice(0, 0)
        hourly, table = rate, steps

        def minor(scope: StepScope) -> int:
            amount = hourly * table.minutes_per(scope) / 60
            return int(amount.scaleb(decimals(currency)).quantize(Decimal(1), rounding=ROUND_HALF_UP))

        return WorkPrice(minor(StepScope.PART_FITTED), minor(StepScope.PART_REMOVED))


class RefitChooser(Chooser):
    """A chooser that never uses one installed part at two places."""

    def _accepted_or_none(self, hanging_set: HangingSet, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        kept = [part for part in hanging_set.refs if part in self.installed_keys]
        if len(kept) > len(set(kept)):
            return None
        return super()._accepted_or_none(hanging_set, dropped)


class StayingParts:
    """The pool of a position with what may stay there, and the way back from what the search finds to true parts."""

    def __init__(
        self, requirement: Requirement, new_pool: Pool, verdicts: tuple[UnitVerdict, ...], work: WorkPrice
    ) -> None:
        self.requirement = requirement
        self.new_pool = new_pool
        self._units: dict[PartRef, InstalledUnit] = {}
        self.pool = self._pool(verdicts, work)

    @property
    def keys(self) -> frozenset[PartRef]:
        """The names under which the search knows installed parts."""
        return frozenset(self._units)

    def unit_of(self, key: PartRef) -> InstalledUnit | None:
        """Return the installed part behind a name of the search; None for a new part."""
        return self._units.get(key)

    def true_set(self, found: HangingSet) -> HangingSet:
        """Return what the search found with true parts in the place of the stand-ins, those that stay at no price."""
        links = tuple(self._true_link(link) for link in found.links)
        price_minor = sum(link.price_minor(found.currency) or 0 for link in links)
        return HangingSet(links=links, price_minor=price_minor, currency=found.currency)

    def true_judged(self, found: JudgedSet, context: PlanningContext) -> JudgedSet:
        """Return the true set of what the search found, judged as it is."""
        return SetJudge(self.requirement, context.tables, context.usual_prices).judged(self.true_set(found.hanging_set))

    def chooser(self, pool: Pool, model: LoadModel, judge: SetJudge, context: PlanningContext) -> RefitChooser:
        """Return a chooser over a pool of this position's parts."""
        chooser = RefitChooser(ChainSearch(self.requirement, pool, model), judge, context.listener)
        chooser.installed_keys = self.keys
        return chooser

    def _true_link(self, link: SetLink) -> SetLink:
        unit = self._units.get(link.part.ref)
        if unit is not None and unit.part is not None:
            return SetLink(slot=link.slot, part=unit.part, kept=True)
        return SetLink(slot=link.slot, part=self._true_part(link))

    def _pool(self, verdicts: tuple[UnitVerdict, ...], work: WorkPrice) -> Pool:
        staying: dict[Slot, list[JudgedPart]] = {}
        for verdict in verdicts:
            for candidate in verdict.candidates:
                staying.setdefault(candidate.slot, []).append(candidate)
                self._units[candidate.part.ref] = verdict.unit
        replaced = {verdict.unit.installed.kind for verdict in verdicts}
        slots: dict[Slot, tuple[SlotParts, ...]] = {}
        for slot, portions in self.new_pool.slots.items():
            extra = work.fit_minor + (work.remove_minor if SLOT_KINDS[slot] in replaced else 0)
            mine = stand_ins(staying.get(slot, []))
            dearer = (replace(_without(one, mine), extra_minor=extra) for one in portions)
            slots[slot] = (*((mine,) if mine else ()), *dearer)
        return replace(self.new_pool, slots=slots)

    def _true_part(self, link: SetLink) -> Part:
        """Return a new part at its own price."""
        found = self.new_pool.found(link.slot, link.part.ref)
        return link.part if found is None else found[0].source((link.part.ref,))[link.part.ref]


def _without(parts: SlotParts, taken: SlotParts | None) -> SlotParts:
    """Return a portion without the parts that are in another."""
    if taken is None:
        return parts
    rows = [row for ref in taken.refs(taken.inside) if (row := parts.columns.row_of(ref)) is not None]
    others = np.ones(len(parts.columns), np.bool_)
    others[rows] = False
    return parts.only(others)


@frozen
class Choosing:
    """What chooses the set of one position: new parts, and those that hang there and may stay."""

    chooser: Chooser
    new_pool: Pool
    staying: StayingParts | None

    def true_judged(self, found: JudgedSet, context: PlanningContext) -> JudgedSet:
        """Return what the chooser found as it is: true parts, those that stay at no price."""
        return found if self.staying is None else self.staying.true_judged(found, context)

    def is_installed(self, key: PartRef) -> bool:
        """Say whether a part of the pool stands for an installed part."""
        return self.staying is not None and key in self.staying.keys


def choosing_for(requirement: Requirement, context: PlanningContext) -> Choosing:
    """Return the chooser of a position; a survey that records nothing there is chosen for as a new position."""
    new_pool = narrow_pool(requirement, context.tables, context.parts)
    model = LoadModel(requirement, context.tables)
    if not requirement.position.installed:
        judge = SetJudge(requirement, context.tables, context.usual_prices, new_pool)
        return Choosing(Chooser(ChainSearch(requirement, new_pool, model), judge, context.listener), new_pool, None)
    judge = SetJudge(requirement, context.tables, context.usual_prices)
    verdicts = verdicts_for(requirement, known_parts(requirement, context), context)
    work = WorkPrice.of(context.answers, context.steps, requirement.site.currency)
    staying = StayingParts(requirement, new_pool, verdicts, work)
    return Choosing(staying.chooser(staying.pool, model, judge, context), new_pool, staying)


def known_parts(requirement: Requirement, context: PlanningContext) -> dict[PartRef, Part]:
    """Return the catalogue parts that the survey records at a position, by what names them there."""
    installed = {item.ref for item in requirement.position.installed if item.ref}
    return installed_parts(installed, context.parts)


def verdicts_for(
    requirement: Requirement, known: Mapping[PartRef, Part], context: PlanningContext
) -> tuple[UnitVerdict, ...]:
    """Return of every part that hangs at a position whether it may stay; ``known`` are the parts by what names them."""
    units = installed_units(requirement.position, known)
    return tuple(unit_verdict(unit, requirement, context.tables, context.answers) for unit in units)
