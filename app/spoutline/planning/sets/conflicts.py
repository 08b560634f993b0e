"""Why no set exists, and the smallest changes that would free one."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from spoutline.model.finding import Severity
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Conflict, Exclusion, HangingSet, JudgedSet, Relaxation
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembly import ChainSearch, Held, SetQuery
from spoutline.planning.sets.loads import MUST_CHECK_LINES, Load
from spoutline.planning.sets.pool import JudgedPart
from spoutline.rules.chain.joints import OUTLET, JointPair, pair_findings
from spoutline.rules.declared.registry import rule_of
from spoutline.search.conflicts import minimal_conflict
from spoutline.search.listener import Listener

# What no answer of a person changes: it holds while the other lines are asked, unless it is itself in conflict.
GIVEN = (
    RequirementId.CHAIN,
    RequirementId.JOINTS,
    RequirementId.LISTING_CLASS,
    RequirementId.LISTING_SCHEME,
    RequirementId.DEF_ZONE,
    RequirementId.MATERIALS,
    RequirementId.LIQUID_SERVICE,
    RequirementId.SPOUT,
    RequirementId.FILLER,
    RequirementId.PATH,
    RequirementId.VAPOUR_PARTS,
    RequirementId.OPERATION,
    RequirementId.CONTINUITY,
    RequirementId.SEPARATION_FORCE,
    RequirementId.BREAKAWAY_PLACE,
    RequirementId.PRESSURE,
    RequirementId.TEMPERATURE,
)
# What a person, a site or a jurisdiction can change, the hardest first.
CHANGEABLE = (
    RequirementId.NO_PRESSURE_DEVICE,
    RequirementId.RESISTANCE,
    RequirementId.SERVICE_LOAD,
    RequirementId.DRIVE_OFF,
    RequirementId.ENHANCED_CONVENTIONAL,
    RequirementId.LOW_PERMEATION,
    RequirementId.RECONNECTABLE,
    RequirementId.STATUS,
    RequirementId.HOSE_LENGTH,
    RequirementId.REACH,
    RequirementId.WHIP_LENGTH,
    RequirementId.HOSE_CONSTRUCTION,
    RequirementId.SWIVEL,
    RequirementId.GROUND_CLEARANCE,
    RequirementId.NOZZLE_FLOW,
    RequirementId.FLOW,
    RequirementId.VELOCITY,
    RequirementId.HOLD_OPEN,
    RequirementId.PRICE,
    RequirementId.LEAD_TIME,
    RequirementId.DECISION,
)
_ALL = frozenset((*GIVEN, *CHANGEABLE))
_FIXED = (RequirementId.CHAIN, RequirementId.JOINTS)  # nothing to relax: ports are what they are
_NEAREST_SHOWN = 3
_NUMBERS_SAY_ALL = (RequirementId.HOSE_LENGTH,)  # its part rule follows from the sum


@dataclass(frozen=True, slots=True)
class _Figure:
    """A figure of a requirement line as asked, the nearest one that frees a set, and that set."""

    frees: HangingSet
    asked: float
    needed: float
    dimension: Dimension


class ConflictFinder:
    """Explains an empty search; a conflict of ``k`` out of ``n`` lines costs about ``2 k log2(n / k)`` searches."""

    def __init__(self, search: ChainSearch, listener: Listener | None = None) -> None:
        self.search = search
        self.listener = listener
        self.limits = tuple(limit for limit in search.model.set_limits if limit.severity is Severity.MUST)
        self._known: dict[tuple[frozenset[RequirementId], Held | None], HangingSet | None] = {}

    def _best(self, lines: frozenset[RequirementId], holds: Held | None = None) -> HangingSet | None:
        if (lines, holds) not in self._known:
            self._known[lines, holds] = self.search.cheapest(SetQuery(lines, self.limits, holds=holds), self.listener)
        return self._known[lines, holds]

    def lines(self, holds: Held) -> tuple[RequirementId, ...]:
        """Return a minimal group of lines that no set with this part keeps together; empty where such sets exist.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        return self._members(frozenset(), holds)

    def conflict(self, *, with_relaxations: bool = True) -> Conflict | None:
        """Return a minimal conflict with what it excludes and what would free a set; None where sets exist.

        What would free a set costs most of the searches; without ``with_relaxations`` it is left out.

        The conflict is minimal beside what is given: no member can go without freeing a set, the given lines held. A
        conflict among the given lines themselves is told alone.
        """
        members = self._members(frozenset())
        if not members:
            return None
        return Conflict(
            requirements=members,
            exclusions=tuple(self._exclusions(members)),
            relaxations=tuple(self._relaxations(members)) if with_relaxations else (),
        )

    def _members(self, given_up: frozenset[RequirementId], holds: Held | None = None) -> tuple[RequirementId, ...]:
        given = tuple(line for line in GIVEN if line not in given_up)
        if self._best(frozenset(given), holds) is None:
            return minimal_conflict(given, lambda lines: self._best(lines, holds) is not None)
        changeable = tuple(line for line in CHANGEABLE if line not in given_up)
        return minimal_conflict(changeable, lambda lines: self._best(lines | frozenset(given), holds) is not None)

    def _exclusions(self, members: tuple[RequirementId, ...]) -> Iterator[Exclusion]:
        if RequirementId.JOINTS in members:
            yield from self._unmet_outlet()
        for slot, judged in self.search.pool.slots.items():
            for line in members:
                excluded = [candidate for candidate in judged if line in candidate.forbidden_by]
                if excluded:
                    yield Exclusion(
                        slot=slot,
                        requirement=line,
                        rule_id=_usual_rule(excluded, line),
                        excluded=len(excluded),
                        nearest=self._nearest(excluded, line),
                    )

    def _unmet_outlet(self) -> Iterator[Exclusion]:
        """Tell of an outlet that nothing screws onto, naming the parts whose ports come nearest to it."""
        outlet = self.search.requirement.outlet
        first = self.search.requirement.chain[0]
        facing = [one.part for slot in (first, Slot.ADAPTOR, Slot.SPLITTER) for one in self.search.pool.of(slot)]
        unmet = {
            part.ref: pair_findings(JointPair(OUTLET, part.number, outlet, part.inlet), self.search.model.tables)
            for part in facing
            if part.inlet is not None
        }
        if not unmet or not all(unmet.values()):
            return
        fewest = min(len(found) for found in unmet.values())
        nearest = sorted(part for part, found in unmet.items() if len(found) == fewest)
        yield Exclusion(
            slot=first,
            requirement=RequirementId.JOINTS,
            rule_id=unmet[nearest[0]][0].rule_id,
            excluded=len(unmet),
            nearest=tuple(nearest[:_NEAREST_SHOWN]),
        )

    def _nearest(self, excluded: list[JudgedPart], line: RequirementId) -> tuple[PartRef, ...]:
        """Return the parts that only this line excludes, cheapest first."""
        currency = self.search.requirement.site.currency
        only = [candidate.part for candidate in excluded if candidate.forbidden_by == {line}]
        only.sort(key=lambda part: (part.price_minor(currency) or 0, part.ref))
        return tuple(part.ref for part in only[:_NEAREST_SHOWN])

    def _relaxations(self, members: tuple[RequirementId, ...]) -> Iterator[Relaxation]:
        freed = False
        for line in members:
            if line in _FIXED:
                continue
            if self._best(_ALL - {line}) is not None:
                freed = True
                yield self._relaxation(line, _ALL - {line}, ())
        if not freed:
            yield from self._joint_relaxations(members)

    def _joint_relaxations(self, members: tuple[RequirementId, ...]) -> Iterator[Relaxation]:
        """Go on from each member to the conflict that stands behind it, until the lines given up free a set."""
        for line in members:
            if line in _FIXED:
                continue
            given_up = [line]
            while self._best(_ALL - frozenset(given_up)) is None:
                softest = [one for one in self._members(frozenset(given_up)) if one not in _FIXED]
                if not softest:
                    break
                given_up.append(softest[-1])
            else:
                yield self._relaxation(line, _ALL - frozenset(given_up), tuple(given_up[1:]))

    def _relaxation(
        self, line: RequirementId, lines: frozenset[RequirementId], also: tuple[RequirementId, ...]
    ) -> Relaxation:
        figure = self._figure(line, lines)
        best = figure.frees if figure else self._best(lines)
        return Relaxation(
            requirement=line,
            from_value=figure.asked if figure else None,
            to_value=figure.needed if figure else None,
            dimension=figure.dimension if figure else None,
            price_minor=best.price_minor if best else None,
            parts=best.refs if best else (),
            also=also,
        )

    def _figure(self, line: RequirementId, lines: frozenset[RequirementId]) -> _Figure | None:
        """Return the least change of a line that is a figure; None where the line as a whole would have to go."""
        requirement = self.search.requirement
        longest = requirement.position.decisions.longest_lead_time_days
        if line is RequirementId.LEAD_TIME and longest is not None:
            days = self._least(SetQuery(lines, self.limits), lambda part: float(part.lead_time_days))
            return days and _Figure(days[0], float(longest), days[1], Dimension.DAYS)
        if line is RequirementId.DRIVE_OFF:
            stronger = SetQuery(lines | {line}, self.limits, outlet_bears_all=True)
            pull = self._least(stronger, self.search.model.pull_demand_n)
            return pull and _Figure(pull[0], requirement.outlet_pull_strength_n, pull[1], Dimension.FORCE)
        limit = next((one for one in self.limits if one.requirement is line and one.load is not Load.PINNED), None)
        if limit is None or (line not in _NUMBERS_SAY_ALL and self._uses_forbidden(self._best(lines), line)):
            return None
        nearest = self.search.cheapest(SetQuery(lines, self.limits, objective=limit.load))
        if nearest is None:
            return None
        needed = limit.shown(self.search.model.load_of(nearest, limit.load))
        return _Figure(nearest, limit.shown(limit.limit), needed, limit.dimension)

    def _uses_forbidden(self, hanging_set: HangingSet | None, line: RequirementId) -> bool:
        """Say whether a set holds a part that the line forbids by a rule: then no figure alone would free it."""
        chosen = {(link.slot, link.part.ref) for link in hanging_set.links} if hanging_set else set()
        return any(
            line in candidate.forbidden_by and (candidate.slot, candidate.part.ref) in chosen
            for judged in self.search.pool.slots.values()
            for candidate in judged
        )

    def _least(self, query: SetQuery, figure: Callable[[Part], float]) -> tuple[HangingSet, float] | None:
        """Halve the figures met down to the least that, as the greatest allowed, still gives a set."""
        parts = (one.part for judged in self.search.pool.slots.values() for one in judged)
        figures = sorted({figure(part) for part in parts})
        best: tuple[HangingSet, float] | None = None
        low, high = 0, len(figures)
        while low < high:
            middle = (low + high) // 2
            most = figures[middle]
            found = self.search.cheapest(replace(query, keep=_at_most(figure, most)))
            if found is None:
                low = middle + 1
            else:
                best, high = (found, most), middle
        return best


def conflict_of_checks(refused: JudgedSet | None) -> Conflict | None:
    """Return the lines of the must-checks that a set failed although the search could not foresee it."""
    failed = [check for check in (refused.checks if refused else ()) if check.severity is Severity.MUST]
    lines = [MUST_CHECK_LINES[check.id] for check in failed if not check.passes and check.id in MUST_CHECK_LINES]
    if not lines:
        return None
    return Conflict(requirements=tuple(dict.fromkeys(lines)), exclusions=(), relaxations=())


def _at_most(figure: Callable[[Part], float], most: float) -> Callable[[JudgedPart], bool]:
    return lambda one: figure(one.part) <= most


def _usual_rule(excluded: list[JudgedPart], line: RequirementId) -> str:
    """Return the rule that excludes most of these parts on behalf of the line."""
    counts = Counter(
        finding.rule_id
        for candidate in excluded
        for finding in candidate.findings
        if rule_of(finding.rule_id).requirement is line
    )
    if not counts:  # excluded by a pinned part, which is a decision and no rule of the part
        return "pinned_part_missing"
    return min(counts, key=lambda rule_id: (-counts[rule_id], rule_id))
