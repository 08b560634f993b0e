"""Every catalogue part that could hang in a place, each with the best set that holds it; and why the others could not.

Bounds over the whole chain say which parts are in no set at all and which promise the cheapest; each of the rest is
then held in its place while the chooser finds the best set around it, so that every figure is that of an exact search
whose sets passed the full checks.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from functools import cached_property

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Severity, Verdict
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.substitute import Misfit, SlotChange, Substitute, Substitutes
from spoutline.planning.protocols import CandidateFilter, Progress
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import ALL_LINES, Chooser
from spoutline.planning.sets.conflicts import ConflictFinder, conflict_of_checks
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.held import HeldSearch
from spoutline.planning.sets.loads import CHECK_LINES, LoadModel
from spoutline.planning.sets.place import Place, place_of
from spoutline.planning.sets.pool import SLOT_KINDS, whole_pool
from spoutline.planning.sets.staying import choosing_for
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.parts.part_rules import first_forbidding
from spoutline.search.effort import Exhausted

_FITTINGS = (Slot.ADAPTOR, Slot.SPLITTER)
_MOST_OPEN = 8  # parts of which it was not decided whether a set holds them, after which no other is tried


@frozen
class Listening:
    """Who is told of a long search: how far it is, and each result as soon as it is known."""

    progress: Progress | None = None
    on_fitting: Callable[[Substitute], None] | None = None
    on_misfit: Callable[[Misfit], None] | None = None


def substitutes(
    plan: PositionPlan,
    wanted: PartRef,
    context: PlanningContext,
    listening: Listening | None = None,
    *,
    with_misfits: bool = False,
) -> Substitutes:
    """Return every catalogue part that could hang in place of a part in some set that keeps every must.

    Parameters
    ----------
    plan
        A position with a chosen set.
    wanted
        Part number of that set. A query to keep it is left aside; all other decisions stand.
    context
        Rule tables, catalogue and listener.
    listening
        Told of progress and of results as they come, those that promise the cheapest set first.
    with_misfits
        Whether to say of every other catalogue part of the kind why it could not.

    Raises
    ------
    InputFault
        The position has no set, or its set does not hold ``wanted``.
    Cancelled
        If a listener asks to stop.
    """
    search = _PlaceSearch(place_of(plan, wanted, context), context, listening or Listening())
    fitting = tuple(sorted(search.fitting(), key=_rank))
    misfits = tuple(search.misfits(fitting)) if with_misfits else None
    place = search.place
    return Substitutes(
        slot=place.slot,
        part=place.part,
        chosen=place.chosen.hanging_set,
        fitting=fitting,
        misfits=misfits,
        not_decided=tuple(sorted(search.not_decided.values(), key=lambda part: part.ref)),
    )


def _rank(substitute: Substitute) -> tuple[int, int, PartRef]:
    departures = len(substitute.given_up) - len(substitute.kept)
    return departures, substitute.price_difference_minor, substitute.part.ref


class _PlaceSearch:
    """The searches for one place; all of them draw on the same judged pool and the same figures."""

    def __init__(self, place: Place, context: PlanningContext, listening: Listening) -> None:
        self.place, self._context, self._listening = place, context, listening
        self._choosing = choosing_for(place.requirement, context)
        self._chooser: Chooser = self._choosing.chooser
        self._held = HeldSearch(self._choosing, context)
        self._currency = place.requirement.site.currency
        self.not_decided: dict[PartRef, Part] = {}  # of which it takes too much work to say whether they could hang

    def fitting(self) -> Iterator[Substitute]:
        """Yield the parts that could hang in the place, the lowest promise first."""
        query = self._chooser.query(ALL_LINES)
        promises = self._chooser.search.least_costs(query, self.place.slot)
        parts = [
            part
            for portion in self._chooser.search.pool.portions(self.place.slot)
            for part in portion.parts(portion.inside & portion.columns.is_one_of(promises), self._currency)
            if not self._hangs_already(part) and not self._choosing.is_installed(part.ref)
        ]
        parts.sort(key=lambda part: (promises[part.ref], part.ref))
        for part in self._counted(parts):
            best = self._best_with(part)
            if best is not None:
                found = substitute_of(self.place, self._as_sold(part, best), best)
                if self._listening.on_fitting is not None:
                    self._listening.on_fitting(found)
                yield found

    def misfits(self, fitting: tuple[Substitute, ...]) -> Iterator[Misfit]:
        """Yield every other catalogue part of the kind, by number, with what speaks against it."""
        known = {*(substitute.part.ref for substitute in fitting), *self.not_decided}
        kind = CandidateFilter(kind=SLOT_KINDS[self.place.slot])
        parts = [part for part in self._context.parts.candidates(kind) if part.ref not in known]
        for part in self._counted([part for part in parts if not self._hangs_already(part)]):
            try:
                found = self._misfit(part)
            except Exhausted:
                self.not_decided[part.ref] = part
                continue
            if self._listening.on_misfit is not None:
                self._listening.on_misfit(found)
            yield found

    def _best_with(self, part: Part) -> JudgedSet | None:
        """Return the best set with a part in the place; a part that takes too much work is remembered as such."""
        if len(self.not_decided) < _MOST_OPEN:
            try:
                return self._held.best_with(self.place.holding(part))
            except Exhausted:
                pass
        self.not_decided[part.ref] = part
        return None

    def _hangs_already(self, part: Part) -> bool:
        return part.ref in self.place.chosen.hanging_set.refs

    def _counted(self, parts: list[Part]) -> Iterator[Part]:
        """Yield the parts, telling before each how far the work is and whether it goes on."""
        progress = self._listening.progress
        for done, part in enumerate(parts):
            if progress is not None:
                progress.on_progress(done, len(parts))
                if progress.should_stop():
                    raise Cancelled
            yield part
        if progress is not None:
            progress.on_progress(len(parts), len(parts))

    def _as_sold(self, part: Part, best: JudgedSet) -> Part:
        """Return the part at its own price; in the search, work may have been added to it."""
        return next((link.part for link in best.hanging_set.links if link.part.ref == part.ref), part)

    def _misfit(self, part: Part) -> Misfit:
        finding = first_forbidding(part, self.place.slot, self.place.requirement, self._context.tables)
        if finding is not None:
            return Misfit(part=part, finding=finding, lines=())
        lines = self._conflicts.lines(self.place.holding(part))
        if not lines:
            conflict = conflict_of_checks(self._held.turned_down.get(part.ref))
            lines = conflict.requirements if conflict else ()
        return Misfit(part=part, finding=None, lines=lines)

    @cached_property
    def _conflicts(self) -> ConflictFinder:
        """The finder over the whole catalogue, made when a part that breaks no rule of its own is asked about."""
        requirement, tables = self.place.requirement, self._context.tables
        pool = whole_pool(requirement, tables, self._context.parts)
        return ConflictFinder(ChainSearch(requirement, pool, LoadModel(requirement, tables)), self._context.listener)


def substitute_of(place: Place, part: Part, best: JudgedSet) -> Substitute:
    """Return what changes where ``part`` takes a place, ``best`` being the best set that holds it."""
    chosen = place.chosen
    before, after = broken_shoulds(chosen), broken_shoulds(best)
    return Substitute(
        part=part,
        judged=best,
        price_difference_minor=best.hanging_set.price_minor - chosen.hanging_set.price_minor,
        changes=tuple(_changes(chosen.hanging_set, best.hanging_set, taken_out=place.part, put_in=part)),
        given_up=tuple(sorted((after - before).elements())),
        kept=tuple(sorted((before - after).elements())),
    )


def broken_shoulds(found: JudgedSet) -> Counter[RequirementId]:
    """Return how often a set breaks each should-line, by the rules of its parts and the checks of the whole."""
    parts = found.hanging_set.refs
    return Counter(
        [
            *(
                rule_of(finding.rule_id).requirement
                for finding in found.findings
                if finding.severity is Severity.SHOULD and finding.verdict is Verdict.BROKEN and finding.part in parts
            ),
            *{
                CHECK_LINES[check.id]
                for check in found.checks
                if check.severity is Severity.SHOULD and not check.passes and check.id in CHECK_LINES
            },
        ]
    )


def _changes(before: HangingSet, after: HangingSet, *, taken_out: Part, put_in: Part) -> Iterator[SlotChange]:
    """Yield what changes besides the part in hand: a slot at a time, fittings one by one."""
    gone = [link for link in before.links if link.part.ref not in (*after.refs, taken_out.ref)]
    come = [link for link in after.links if link.part.ref not in (*before.refs, put_in.ref)]
    for link in gone:
        taker = None if link.slot in _FITTINGS else after.part_in(link.slot)
        yield SlotChange(slot=link.slot, taken_out=link.part, put_in=taker)
    places = {link.slot for link in gone} - set(_FITTINGS)
    for link in come:
        if link.slot not in places:
            yield SlotChange(slot=link.slot, taken_out=None, put_in=link.part)
