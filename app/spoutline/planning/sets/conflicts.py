"""Why no set exists, and the smallest changes that would free one."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.finding import Finding, Severity
from spoutline.model.part_columns import LEAD_TIME, Floats
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Conflict, Exclusion, HangingSet, JudgedSet, Relaxation
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembled import Keep
from spoutline.planning.sets.assembly import ChainSearch, Held, SetQuery
from spoutline.planning.sets.loads import MUST_CHECK_LINES, Load
from spoutline.planning.sets.pool import SlotParts, bits_of
from spoutline.rules.chain.joints import OUTLET, JointPair, pair_findings
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.parts.sums import pull_demand_n
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
_GIVEN = frozenset(GIVEN)
_OF_ITEMS = frozenset((RequirementId.DRIVE_OFF,))  # decides what items bear and demand, not only which there are
_FIXED = (RequirementId.CHAIN, RequirementId.JOINTS)  # nothing to relax: ports are what they are
_NEAREST_SHOWN = 3
_NUMBERS_SAY_ALL = (RequirementId.HOSE_LENGTH,)  # its part rule follows from the sum
_SAME_SUM = 1e-9  # of a sum of loads: parts added in another order may differ by less


@frozen
class LineFigure:
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
        self._possible: dict[tuple[frozenset[RequirementId], Held | None], bool] = {}

    def _best(self, lines: frozenset[RequirementId], holds: Held | None = None) -> HangingSet | None:
        if (lines, holds) not in self._known:
            self._known[lines, holds] = self.search.cheapest(self._query(lines, holds), self.listener)
        return self._known[lines, holds]

    def _has_set(self, lines: frozenset[RequirementId], holds: Held | None = None) -> bool:
        if (lines, holds) not in self._possible:
            self._possible[lines, holds] = self.search.has_set(self._query(lines, holds), self.listener)
        return self._possible[lines, holds]

    def _query(self, lines: frozenset[RequirementId], holds: Held | None) -> SetQuery:
        common = _GIVEN | (lines & _OF_ITEMS) if lines >= _GIVEN else None
        return SetQuery(lines, self.limits, holds=holds, common=common)

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
        if not self._has_set(frozenset(given), holds):
            return minimal_conflict(given, lambda lines: self._has_set(lines, holds))
        changeable = tuple(line for line in CHANGEABLE if line not in given_up)
        return minimal_conflict(changeable, lambda lines: self._has_set(lines | frozenset(given), holds))

    def _exclusions(self, members: tuple[RequirementId, ...]) -> Iterator[Exclusion]:
        if RequirementId.JOINTS in members:
            yield from self.unmet_outlet()
        for slot in self.search.pool.slots:
            portions = self.search.pool.portions(slot)
            for line in members:
                excluded = sum(int(np.count_nonzero(parts.broken(line))) for parts in portions)
                if excluded:
                    yield Exclusion(
                        slot=slot,
                        requirement=line,
                        rule_id=_usual_rule(portions, line),
                        excluded=excluded,
                        nearest=self._nearest(portions, line),
                    )

    def unmet_outlet(self) -> Iterator[Exclusion]:
        """Tell of an outlet that nothing screws onto, naming the parts whose ports come nearest to it."""
        outlet = self.search.requirement.outlet
        first = self.search.requirement.chain[0]
        facing = [parts for slot in (first, Slot.ADAPTOR, Slot.SPLITTER) for parts in self.search.pool.portions(slot)]
        unmet: dict[Port, tuple[Finding, ...]] = {}
        parts_at: dict[Port, list[PartRef]] = defaultdict(list)
        for parts in facing:
            for port, refs in _by_inlet(parts):
                if port not in unmet:
                    pair = JointPair(OUTLET, str(refs[0]), outlet, port)
                    unmet[port] = pair_findings(pair, self.search.model.tables)
                parts_at[port].extend(refs)
        if not unmet or not all(unmet.values()):
            return
        fewest = min(len(found) for found in unmet.values())
        nearest = sorted(
            {(ref, port) for port, found in unmet.items() if len(found) == fewest for ref in parts_at[port]}
        )
        yield Exclusion(
            slot=first,
            requirement=RequirementId.JOINTS,
            rule_id=unmet[nearest[0][1]][0].rule_id,
            excluded=len({ref for refs in parts_at.values() for ref in refs}),
            nearest=tuple(ref for ref, _ in nearest[:_NEAREST_SHOWN]),
        )

    def _nearest(self, portions: Iterable[SlotParts], line: RequirementId) -> tuple[PartRef, ...]:
        """Return the parts that only this line excludes, cheapest first."""
        currency = self.search.requirement.site.currency
        found = []
        for parts in portions:
            rows = np.flatnonzero(parts.inside & (parts.forbidden == bits_of((line,))))
            prices = parts.prices(currency)[rows]
            cheapest = np.argsort(prices, kind="stable")[:_NEAREST_SHOWN]  # rows are in the order of references
            found += [(int(prices[at]), parts.columns.ref_at(int(rows[at]))) for at in cheapest]
        return tuple(ref for _, ref in sorted(found)[:_NEAREST_SHOWN])

    def _relaxations(self, members: tuple[RequirementId, ...]) -> Iterator[Relaxation]:
        freed = False
        for line in members:
            if line in _FIXED:
                continue
            if self._has_set(_ALL - {line}):
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
            while not self._has_set(_ALL - frozenset(given_up)):
                softest = [one for one in self._members(frozenset(given_up)) if one not in _FIXED]
                if not softest:
                    break
                given_up.append(softest[-1])
            else:
                yield self._relaxation(line, _ALL - frozenset(given_up), tuple(given_up[1:]))

    def _relaxation(
        self, line: RequirementId, lines: frozenset[RequirementId], also: tuple[RequirementId, ...]
    ) -> Relaxation:
        figure = self.figure(line, lines)
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

    def figure(self, line: RequirementId, lines: frozenset[RequirementId]) -> LineFigure | None:
        """Return the least change of a line that is a figure; None where the line as a whole would have to go."""
        requirement = self.search.requirement
        longest = requirement.position.decisions.longest_lead_time_days
        if line is RequirementId.LEAD_TIME and longest is not None:
            days = self._least(SetQuery(lines, self.limits), lambda parts: parts.columns.number(LEAD_TIME) * 1.0)
            return days and LineFigure(days[0], float(longest), days[1], Dimension.DAYS)
        if line is RequirementId.DRIVE_OFF:
            stronger = SetQuery(lines | {line}, self.limits, outlet_bears_all=True)
            pull = self._least(stronger, self._demands)
            return pull and LineFigure(pull[0], requirement.outlet_pull_strength_n, pull[1], Dimension.FORCE)
        limit = next((one for one in self.limits if one.requirement is line and one.load is not Load.PINNED), None)
        if limit is None or (line not in _NUMBERS_SAY_ALL and self._uses_forbidden(self._best(lines), line)):
            return None
        nearest = self.search.cheapest(SetQuery(lines, self.limits, objective=limit.load))
        if nearest is None:
            return None
        least = self.search.model.load_of(nearest, limit.load)
        within = ((limit.load, least + _SAME_SUM * max(abs(least), 1.0)),)
        # of the many sets that come equally near, the one that a person would buy
        freed = self.search.cheapest(SetQuery(lines, self.limits, at_most=within)) or nearest
        needed = max(least, self.search.model.load_of(freed, limit.load))
        return LineFigure(freed, limit.shown(limit.limit), limit.shown(needed), limit.dimension)

    def _uses_forbidden(self, hanging_set: HangingSet | None, line: RequirementId) -> bool:
        """Say whether a set holds a part that the line forbids by a rule: then no figure alone would free it."""
        pool = self.search.pool
        found = (pool.found(link.slot, link.part.ref) for link in (hanging_set.links if hanging_set else ()))
        return any(bool(one[0].broken(line)[one[1]]) for one in found if one is not None)

    def _demands(self, parts: SlotParts) -> Floats:
        """Return the pull that breakaways ask of all other parts and the outlet; 0 for other parts."""
        return pull_demand_n(parts.columns, parts.slot, self.search.requirement, self.search.model.tables)

    def _least(self, query: SetQuery, figure: Callable[[SlotParts], Floats]) -> tuple[HangingSet, float] | None:
        """Halve the figures met down to the least that, as the greatest allowed, still gives a set."""
        met = [figure(parts)[parts.inside] for parts in self.search.pool.all_portions()]
        figures: list[float] = np.unique(np.concatenate(met)).tolist()
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


def _at_most(figure: Callable[[SlotParts], Floats], most: float) -> Keep:
    return lambda parts: figure(parts) <= most


def _by_inlet(parts: SlotParts) -> Iterator[tuple[Port, list[PartRef]]]:
    """Yield the ports that face the dispenser, each with the parts that have it."""
    codes = parts.columns.arrays["inlet"]
    for code, port in enumerate(parts.columns.ports):
        refs = list(parts.refs(parts.inside & (codes == code)))
        if refs:
            yield port, refs


def _usual_rule(portions: Iterable[SlotParts], line: RequirementId) -> str:
    """Return the rule that excludes most of these parts on behalf of the line."""
    counts: Counter[str] = Counter()
    for parts in portions:
        excluded = parts.broken(line)
        for breach in parts.breaches:
            if rule_of(breach.rule_id).requirement is line:
                counts[breach.rule_id] += int(np.count_nonzero(breach.where & excluded))
    counts = +counts
    if not counts:  # excluded by a pinned part, which is a decision and no rule of the part
        return "pinned_part_missing"
    return min(counts, key=lambda rule_id: (-counts[rule_id], rule_id))
