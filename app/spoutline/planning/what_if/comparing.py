"""One position today and under another answer: what becomes of its set, its parts and its checks."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.check import Check, CheckId
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.plan import HangingSet, JudgedSet, PlanStatus, PositionPlan, SetLink
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.model.what_if import CheckChange, PartChange, PartFate, WhatIfEffect, WhatIfPosition
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.substitutes import broken_shoulds
from spoutline.rules.parts.part_rules import judge_part

_FITTINGS = (Slot.ADAPTOR, Slot.SPLITTER)  # of which a chain may hold several


@frozen
class Comparing:
    """Compares positions; ``context`` plans by the other answer.

    ``other_edition`` says that the other answer is another edition of parts: today's parts are then taken from it.
    """

    context: PlanningContext
    other_edition: bool = False

    def position(self, before: PositionPlan, after: PositionPlan) -> WhatIfPosition:
        """Return what becomes of a position that was planned by both answers."""
        held = self._held(before, after)
        compared = after.chosen or (held.chosen if held else None)
        given_up, kept = _shoulds(before.chosen, after.chosen)
        return WhatIfPosition(
            before=before,
            after=after,
            held=held,
            effect=self._effect(before, after, held),
            parts=tuple(self._parts(before, after)),
            checks=tuple(_check_changes(before.chosen, compared)),
            given_up=given_up,
            kept=kept,
        )

    def _held(self, before: PositionPlan, after: PositionPlan) -> PositionPlan | None:
        """Return the set of today judged by the other answer; None where that is refused, or there is no set."""
        requirement = after.requirement
        if before.chosen is None or requirement is None:
            return None
        links = tuple(self._as_sold(link) for link in before.chosen.hanging_set.links)
        currency = requirement.site.currency
        price = sum(link.price_minor(currency) or 0 for link in links)
        today = HangingSet(links=links, price_minor=price, currency=currency)
        judge = SetJudge(requirement, self.context.tables, self.context.usual_prices)
        return replace(
            after,
            status=PlanStatus.FITS,
            chosen=judge.judged(today),
            alternatives=(),
            conflict=None,
            accessories=(),
            basis=before.basis,
        )

    def _as_sold(self, link: SetLink) -> SetLink:
        """Return a part of today as the other edition has it; as it is where that has none, or none is asked."""
        found = self.context.parts.part(link.part.ref) if self.other_edition else None
        return link if found is None else replace(link, part=found)

    def _is_sold(self, link: SetLink) -> bool:
        return link.kept or not self.other_edition or self.context.parts.part(link.part.ref) is not None

    def _effect(self, before: PositionPlan, after: PositionPlan, held: PositionPlan | None) -> WhatIfEffect:
        if before.chosen is None:
            return WhatIfEffect.NO_SET if after.chosen is None else WhatIfEffect.GETS_SET
        if after.chosen is None:
            return WhatIfEffect.LOSES_SET
        old, new = before.chosen.hanging_set, after.chosen.hanging_set
        if old.refs == new.refs:
            return WhatIfEffect.SAME if old.price_minor == new.price_minor else WhatIfEffect.PRICE_CHANGES
        may_stay = held is not None and held.keeps_every_must and all(map(self._is_sold, old.links))
        return WhatIfEffect.MAY_STAY if may_stay else WhatIfEffect.MUST_CHANGE

    def _parts(self, before: PositionPlan, after: PositionPlan) -> Iterator[PartChange]:
        """Yield the places of both chains, dispenser first; nothing where the other answer is refused."""
        requirement = after.requirement
        if requirement is None:
            return
        for slot, old, new in _paired(_links(before), _links(after)):
            if old is None:
                yield PartChange(slot=slot, before=None, after=new.part if new else None, fate=PartFate.COMES)
            elif new is not None and old.part.ref == new.part.ref:
                yield PartChange(slot=slot, before=old.part, after=new.part, fate=PartFate.STAYS)
            else:
                findings = self._musts_broken(old, requirement)
                yield PartChange(
                    slot=slot,
                    before=old.part,
                    after=new.part if new else None,
                    fate=self._fate(old, findings),
                    findings=findings,
                )

    def _fate(self, link: SetLink, findings: tuple[Finding, ...]) -> PartFate:
        if not self._is_sold(link):
            return PartFate.NOT_SOLD
        return PartFate.MUST_GO if findings else PartFate.ALLOWED

    def _musts_broken(self, link: SetLink, requirement: Requirement) -> tuple[Finding, ...]:
        found = judge_part(self._as_sold(link).part, link.slot, requirement, self.context.tables)
        return tuple(one for one in found if one.severity is Severity.MUST and one.verdict is Verdict.BROKEN)


def _links(plan: PositionPlan) -> tuple[SetLink, ...]:
    return plan.chosen.hanging_set.links if plan.chosen is not None else ()


def _paired(
    before: Sequence[SetLink], after: Sequence[SetLink]
) -> Iterator[tuple[Slot, SetLink | None, SetLink | None]]:
    """Yield the places of two chains: a slot at a time, fittings by what they are; what only today has comes last."""
    rest = list(before)
    for new in after:
        alike = (one for one in rest if one.slot is new.slot)
        old = next((one for one in alike if new.slot not in _FITTINGS or one.part.ref == new.part.ref), None)
        if old is not None:
            rest.remove(old)
        yield new.slot, old, new
    yield from ((one.slot, one, None) for one in rest)


def _check_changes(before: JudgedSet | None, after: JudgedSet | None) -> Iterator[CheckChange]:
    """Yield the checks that differ, in the order of the later set; equal checks of several hoses are told in turn."""
    old, new = (_numbered(one.checks if one is not None else ()) for one in (before, after))
    for key in dict.fromkeys((*new, *old)):
        one, other = old.get(key), new.get(key)
        if _told(one) != _told(other):
            yield CheckChange(before=one, after=other)


def _numbered(checks: Sequence[Check]) -> dict[tuple[CheckId, int], Check]:
    counts: Counter[CheckId] = Counter()
    found = {}
    for check in checks:
        found[check.id, counts[check.id]] = check
        counts[check.id] += 1
    return found


def _told(check: Check | None) -> tuple[object, ...]:
    """Return what a reader sees of a check: its worked lines may differ where that does not."""
    if check is None:
        return ()
    return check.outcome, check.severity, check.value, check.text, check.lower, check.upper


def _shoulds(
    before: JudgedSet | None, after: JudgedSet | None
) -> tuple[tuple[RequirementId, ...], tuple[RequirementId, ...]]:
    """Return the lines of good practice that only the later set breaks, and those that only the set of today does."""
    if before is None or after is None:
        return (), ()
    old, new = broken_shoulds(before), broken_shoulds(after)
    return tuple(sorted((new - old).elements())), tuple(sorted((old - new).elements()))
