"""Why a set: in each place of its chain, how the catalogue comes down to the part that was chosen, cut by cut.

Each part is counted once, at the first cut that takes it out. What is left is held in its place while the chooser finds
the best set around it, so that every difference in price is that of an exact search whose sets passed the full checks.
"""

from __future__ import annotations

import itertools
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace

from spoutline.model.check import CheckId
from spoutline.model.cuts import Cut
from spoutline.model.faults import Cancelled, InputFault, InputProblem
from spoutline.model.finding import Severity
from spoutline.model.funnel import FunnelStep, PlaceFunnel, Rival, SetReasons
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import JudgedSet, PositionPlan, SetLink
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.model.substitute import Substitute
from spoutline.model.survey import Position
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.alternatives import lead_time_days, mass_kg
from spoutline.planning.sets.choice import ALL_LINES
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.held import HeldSearch
from spoutline.planning.sets.loads import CHECK_LINES
from spoutline.planning.sets.place import Place
from spoutline.planning.sets.pool import SlotParts, whole_pool
from spoutline.planning.sets.relabel import same_question
from spoutline.planning.sets.set_query import Held, SetQuery
from spoutline.planning.sets.staying import choosing_for
from spoutline.planning.sets.substitutes import broken_shoulds, substitute_of
from spoutline.search.effort import Exhausted

_FITTINGS = (Slot.ADAPTOR, Slot.SPLITTER)
_GROUPS = 16  # groups of shoulds to give up that bounds are asked for; with more, the exact search answers
_FLOWS = (CheckId.FLOW_COLD, CheckId.FLOW_HOT)


def set_reasons(plan: PositionPlan, context: PlanningContext, progress: Progress | None = None) -> SetReasons:
    """Return why each part of a chosen set hangs in its place.

    Parameters
    ----------
    plan
        A position with a chosen set.
    context
        Rule tables, catalogue and listener.
    progress
        Told after each place, and asked whether to go on.

    Raises
    ------
    InputFault
        The position has no set.
    Cancelled
        If a listener asks to stop.
    """
    if plan.chosen is None or plan.requirement is None:
        right = "this position has no set; ask why none fits instead"
        raise InputFault((InputProblem("", "position", repr(plan.position.label), right),))
    question = _Question(plan.requirement, plan.chosen, context)
    links = [link for link in plan.chosen.hanging_set.links if link.slot not in _FITTINGS]
    places = []
    for done, link in enumerate(links):
        if progress is not None:
            progress.on_progress(done, len(links))
            if progress.should_stop():
                raise Cancelled
        places.append(_PlaceFunnel(question, link).funnel())
    if progress is not None:
        progress.on_progress(len(links), len(links))
    return SetReasons(chosen=plan.chosen, places=tuple(places))


def station_reasons(
    plans: Iterable[PositionPlan], context: PlanningContext, progress: Progress | None = None
) -> dict[str, SetReasons]:
    """Return why the parts of each position with a set were chosen, by its label; equal questions are asked once.

    Raises
    ------
    Cancelled
        If a listener asks to stop.
    """
    found: dict[str, SetReasons] = {}
    asked: list[tuple[Position, PositionPlan]] = []
    for plan in plans:
        if plan.chosen is None:
            continue
        question = same_question(plan.position)
        alike = (
            one
            for known, one in asked
            if known == question and one.chosen is not None
            if one.chosen.hanging_set.identity == plan.chosen.hanging_set.identity
        )
        first = next(alike, None)
        found[plan.position.label] = (
            set_reasons(plan, context, progress) if first is None else found[first.position.label]
        )
        if first is None:
            asked.append((question, plan))
    return found


class _Question:
    """What all places of one set share: the judged catalogue, the searches, how often the set departs."""

    def __init__(self, requirement: Requirement, chosen: JudgedSet, context: PlanningContext) -> None:
        self.requirement, self.chosen = requirement, chosen
        self.whole = whole_pool(requirement, context.tables, context.parts)
        self.choosing = choosing_for(requirement, context)
        self.chooser = self.choosing.chooser
        self.search = self.chooser.search
        self.held = HeldSearch(self.choosing, context)
        self.departures = sum(broken_shoulds(chosen).values())
        self.own_query = self.chooser.query(_lines_given_up(chosen))
        self.unmatched = self.search.unmatched(self.own_query)

    def queries_as_good(self) -> Iterator[tuple[int, SetQuery]]:
        """Yield the ways to depart no more often than the chosen set: how often parts may, and what the chain keeps."""
        limits = self.search.model.set_limits
        soft = sorted({limit.requirement for limit in limits if limit.severity is Severity.SHOULD})
        sizes = range(min(self.departures, len(soft)) + 1)
        groups = [frozenset(one) for size in sizes for one in itertools.combinations(soft, size)]
        if len(groups) > _GROUPS:
            yield self.departures, self.chooser.query(ALL_LINES)
            return
        for group in groups:
            yield self.departures - len(group), self.chooser.query(group)

    def first_of(self, slot: Slot, refs: Sequence[PartRef], best: Rival | None) -> PartRef | None:
        """Return which of some parts to hold in a place next; None where no set with one of them may beat ``best``.

        One search asks for all of them, since hundreds of parts may promise a lower price than any set around them has.
        Where parts hang that may stay, the search counts work that the price of a set does not: there each is held in
        turn.
        """
        if self.choosing.staying is not None or not refs:
            return next(iter(refs), None)
        price = None if best is None else self.chosen.hanging_set.price_minor + best.price_difference_minor
        for most, query in self.queries_as_good():
            within = replace(query, most_cost=self.search.most_cost(query, most, price))
            found = self.search.part_of_the_cheapest(within, slot, refs, self.chooser.listener)
            if found is not None:
                return found
        return None

    def is_chosen(self, ref: PartRef, link: SetLink) -> bool:
        """Say whether a part of the search is the one of the chosen set, of those that hang there too."""
        unit = self.choosing.staying.unit_of(ref) if self.choosing.staying else None
        true = (unit.part.ref, True) if unit is not None and unit.part is not None else (ref, False)
        return true == (link.part.ref, link.kept)


@dataclass
class _Tally:
    """Parts by the cut that takes them out; those that a must of their own takes out, by requirement line."""

    lines: Counter[RequirementId] = field(default_factory=Counter)
    cuts: Counter[Cut] = field(default_factory=Counter)

    def steps(self) -> tuple[FunnelStep, ...]:
        """Return the steps that took anything out, in the order in which they are asked."""
        own = (FunnelStep(cut=Cut.LINE, line=line, removed=self.lines[line]) for line in RequirementId)
        others = (FunnelStep(cut=cut, removed=self.cuts[cut]) for cut in Cut if cut is not Cut.LINE)
        return tuple(step for step in (*own, *others) if step.removed)


class _PlaceFunnel:
    """The cuts of one place."""

    def __init__(self, question: _Question, link: SetLink) -> None:
        self._question, self._link = question, link
        self._place = Place(question.chosen, link.part, link.slot, question.requirement)
        self._tally = _Tally()
        self._promises = question.search.promises(question.own_query, link.slot)

    def funnel(self) -> PlaceFunnel:
        """Return the counts of the place, and what was left beside the chosen part."""
        question, slot = self._question, self._link.slot
        self._count_forbidden(question.whole.portions(slot))
        free = [ref for parts in question.search.pool.portions(slot) for ref in parts.refs(parts.free)]
        known = sum(question.is_chosen(ref, self._link) for ref in free)
        asked, outmatched, departing = self._cut_by_bounds(
            [ref for ref in free if not question.is_chosen(ref, self._link)]
        )
        rivals, more_departing = self._tried(asked)
        runner_up = self._runner_up(rivals, outmatched)
        cheaper = self._cheaper(departing, more_departing)
        return PlaceFunnel(
            slot=slot,
            chosen=self._link.part,
            there=sum(self._tally.lines.values()) + len(free),
            steps=self._tally.steps(),
            left=len(rivals) + known,
            rivals=rivals,
            runner_up=runner_up,
            cheaper=cheaper,
        )

    def _count_forbidden(self, kind: Iterable[SlotParts]) -> None:
        """Count each part that breaks a must of its own at the first line, in the order of the lines."""
        for parts in kind:
            for line, count in parts.first_lines():
                self._tally.lines[line] += count

    def _cut_by_bounds(self, refs: Iterable[PartRef]) -> tuple[list[PartRef], list[PartRef], list[PartRef]]:
        """Count what bounds alone take out; return the parts to try, the outmatched ones and those that depart more."""
        question, slot = self._question, self._link.slot
        possible = question.search.promises(question.chooser.query(ALL_LINES), slot)
        as_good: set[PartRef] = set()
        for most, query in question.queries_as_good():
            as_good.update(named for named, one in question.search.promises(query, slot).items() if one.regrets <= most)
        unmatched = question.unmatched.get(slot, set())
        asked: list[PartRef] = []
        outmatched: list[PartRef] = []
        departing: list[PartRef] = []
        for ref in refs:
            if ref not in possible:
                self._tally.cuts[Cut.NO_SET] += 1
            elif ref not in as_good:
                self._tally.cuts[Cut.DEPARTURES] += 1
                departing.append(ref)
            elif ref in self._promises and ref not in unmatched:
                self._tally.cuts[Cut.OUTMATCHED] += 1
                outmatched.append(ref)
            else:
                asked.append(ref)
        return asked, outmatched, departing

    def _with(self, ref: PartRef) -> Substitute | None:
        """Return the best set that holds a part in this place, and what it changes; None where there is none.

        Raise ``Exhausted`` where it takes too much work to say.
        """
        best = self._question.held.best_with(Held(self._link.slot, ref))
        part = best.hanging_set.part_in(self._link.slot) if best else None
        return substitute_of(self._place, part, best) if best and part else None

    def _with_if_decided(self, ref: PartRef, counted: Cut) -> Substitute | None:
        """Return the same of a part that was counted by bounds; one that takes too much work is counted as such."""
        try:
            return self._with(ref)
        except Exhausted:
            self._leave_open(1, counted)
            return None

    def _leave_open(self, count: int, counted: Cut) -> None:
        self._tally.cuts[counted] -= count
        self._tally.cuts[Cut.NOT_DECIDED] += count

    def _tried(self, refs: Iterable[PartRef]) -> tuple[tuple[Rival, ...], list[Substitute]]:
        """Hold each part in the place; return what is left, best first, and what departs more often."""
        rivals: list[Rival] = []
        departing: list[Substitute] = []
        for ref in refs:
            try:
                found = self._with(ref)
            except Exhausted:
                self._tally.cuts[Cut.NOT_DECIDED] += 1
                continue
            if found is None:
                self._tally.cuts[Cut.NO_SET] += 1
            elif _departs_more(found):
                self._tally.cuts[Cut.DEPARTURES] += 1
                departing.append(found)
            else:
                rivals.append(_rival(found, self._question.chosen))
        return tuple(sorted(rivals, key=_by_price)), departing

    def _runner_up(self, rivals: Sequence[Rival], outmatched: Iterable[PartRef]) -> Rival | None:
        """Return what would be taken next: a rival, or an outmatched part that promises a lower price."""
        best = rivals[0] if rivals else None
        price = self._question.chosen.hanging_set.price_minor
        untried = sorted(outmatched, key=lambda one: (self._promises[one], one))
        while untried:
            if best is not None:
                dearest = price + best.price_difference_minor
                untried = [ref for ref in untried if self._promises[ref].price_minor <= dearest]
            try:
                ref = self._question.first_of(self._link.slot, untried, best)
            except Exhausted:
                self._leave_open(len(untried), Cut.OUTMATCHED)
                break
            if ref is None:
                break
            untried.remove(ref)
            found = self._with_if_decided(ref, Cut.OUTMATCHED)
            if found is not None and not _departs_more(found):
                tried = _rival(found, self._question.chosen)
                best = tried if best is None else min(best, tried, key=_by_price)
        return best

    def _cheaper(self, refs: Iterable[PartRef], tried: Iterable[Substitute]) -> Substitute | None:
        """Return the cheapest set that saves money by departing more often; None where none does."""
        question = self._question
        promises = question.search.promises(question.chooser.query(ALL_LINES), self._link.slot)
        best = min((one for one in tried if one.price_difference_minor < 0), key=_by_price, default=None)
        price = question.chosen.hanging_set.price_minor
        for ref in sorted(refs, key=lambda one: (promises[one].price_minor, one)):
            promised = promises[ref].price_minor - price
            if promised >= (best.price_difference_minor if best else 0):
                break
            found = self._with_if_decided(ref, Cut.DEPARTURES)
            if found is not None and found.price_difference_minor < (best.price_difference_minor if best else 0):
                best = found
        return best


def _departs_more(found: Substitute) -> bool:
    return len(found.given_up) > len(found.kept)


def _by_price(found: Substitute | Rival) -> tuple[int, PartRef]:
    return found.price_difference_minor, found.part.ref


def _rival(found: Substitute, chosen: JudgedSet) -> Rival:
    """Return a part that was left with what its set costs or gains."""
    after, before = found.judged.hanging_set, chosen.hanging_set
    return Rival(
        substitute=found,
        mass_kg=mass_kg(after) - mass_kg(before),
        lead_time_days=lead_time_days(after) - lead_time_days(before),
        flow_m3_s=_difference(_delivered_m3_s(found.judged), _delivered_m3_s(chosen)),
    )


def _delivered_m3_s(judged: JudgedSet) -> float | None:
    """Return what a set delivers hot or cold, whichever is less; None where it cannot be worked out."""
    flows = [check.value for check in judged.checks if check.id in _FLOWS]
    known = [flow for flow in flows if flow is not None]
    return min(known) if known and len(known) == len(flows) else None


def _difference(after: float | None, before: float | None) -> float | None:
    return None if after is None or before is None else after - before


def _lines_given_up(chosen: JudgedSet) -> frozenset[RequirementId]:
    """Return the should-lines that a set does not keep, by the checks of the whole."""
    return frozenset(
        CHECK_LINES[check.id]
        for check in chosen.checks
        if check.severity is Severity.SHOULD and not check.passes and check.id in CHECK_LINES
    )
