"""Why no set exists, and the smallest changes that would free one."""

from __future__ import annotations

from bisect import bisect_left
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
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.line_order import CHANGEABLE, GIVEN
from spoutline.planning.sets.line_questions import LineQuestions
from spoutline.planning.sets.loads import MUST_CHECK_LINES
from spoutline.planning.sets.pool import SlotParts, bits_of
from spoutline.planning.sets.port_reach import PortReach
from spoutline.planning.sets.set_query import Held, SetQuery
from spoutline.rules.chain.joints import OUTLET, JointPair, pair_findings
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.parts.sums import pull_demand_n
from spoutline.search.conflicts import minimal_conflict
from spoutline.search.listener import Listener

_ALL = frozenset((*GIVEN, *CHANGEABLE))
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

    def __init__(self, search: ChainSearch, listener: Listener | None = None, reach: PortReach | None = None) -> None:
        self.search = search
        self.listener = listener
        self.limits = tuple(limit for limit in search.model.set_limits if limit.severity is Severity.MUST)
        self.questions = LineQuestions(search, self.limits, listener, reach)
        self._figures: dict[tuple[RequirementId, frozenset[RequirementId]], LineFigure | None] = {}

    def _has_set(self, lines: frozenset[RequirementId], holds: Held | None) -> bool:
        if holds is None:
            return self.questions.has_set(lines)
        return self.search.has_set(SetQuery(lines, self.limits, holds=holds), self.listener)

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
            relaxations=tuple(self.relaxations(members)) if with_relaxations else (),
        )

    def _members(self, given_up: frozenset[RequirementId], holds: Held | None = None) -> tuple[RequirementId, ...]:
        given = tuple(line for line in GIVEN if line not in given_up)
        changeable = tuple(line for line in CHANGEABLE if line not in given_up)
        if holds is None:
            self.questions.look_ahead(frozenset((*given, *changeable)), changeable)
        if not self._has_set(frozenset(given), holds):
            return minimal_conflict(given, lambda lines: self._has_set(lines, holds))
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

    def relaxations(self, members: tuple[RequirementId, ...]) -> Iterator[Relaxation]:
        """Yield what would free a set, one after another, for the lines of a conflict.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        freed = False
        for line in members:
            if line in _FIXED:
                continue
            if self.questions.has_set(_ALL - {line}):
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
            while not self.questions.has_set(_ALL - frozenset(given_up)):
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
        best = figure.frees if figure else self.questions.best(lines)
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
        if (line, lines) not in self._figures:
            self._figures[line, lines] = self._figure(line, lines)
        return self._figures[line, lines]

    def _figure(self, line: RequirementId, lines: frozenset[RequirementId]) -> LineFigure | None:
        requirement = self.search.requirement
        longest = requirement.position.decisions.longest_lead_time_days
        if line is RequirementId.LEAD_TIME and longest is not None:
            days = self._least(self.questions.query(lines), lambda parts: parts.columns.number(LEAD_TIME) * 1.0)
            return days and LineFigure(days[0], float(longest), days[1], Dimension.DAYS)
        if line is RequirementId.DRIVE_OFF:
            stronger = replace(self.questions.query(lines | {line}), outlet_bears_all=True)
            pull = self._least(stronger, self._demands)
            return pull and LineFigure(pull[0], requirement.outlet_pull_strength_n, pull[1], Dimension.FORCE)
        limit = self.questions.limit_of(line)
        if limit is None or (line not in _NUMBERS_SAY_ALL and self._uses_forbidden(line, lines)):
            return None
        query = self.questions.query(lines)
        nearest = self.search.one_of_the_cheapest(replace(query, objective=limit.load), self.listener)
        if nearest is None:
            return None
        least = self.search.paths.load_of(nearest, limit.load)
        within = ((limit.load, least + _SAME_SUM * max(abs(least), 1.0)),)
        # of the many sets that come equally near, the one that a person would buy
        freed = self.search.cheapest_path(replace(query, at_most=within), self.listener) or nearest
        needed = limit.shown(self.search.paths.load_of(freed, limit.load))
        return LineFigure(self.search.paths.hanging_set(freed), limit.shown(limit.limit), needed, limit.dimension)

    def _uses_forbidden(self, line: RequirementId, lines: frozenset[RequirementId]) -> bool:
        """Say whether the cheapest set for ``lines`` holds a part that ``line`` forbids by a rule.

        Then no figure alone would free it.
        """
        pool = self.search.pool
        if not any(np.any(parts.broken(line)) for parts in pool.all_portions()):
            return False
        hanging_set = self.questions.best(lines)
        found = (pool.found(link.slot, link.part.ref) for link in (hanging_set.links if hanging_set else ()))
        return any(bool(one[0].broken(line)[one[1]]) for one in found if one is not None)

    def _demands(self, parts: SlotParts) -> Floats:
        """Return the pull that breakaways ask of all other parts and the outlet; 0 for other parts."""
        return pull_demand_n(parts.columns, parts.slot, self.search.requirement, self.search.model.tables)

    def _least(self, query: SetQuery, figure: Callable[[SlotParts], Floats]) -> tuple[HangingSet, float] | None:
        """Return the least figure met that, as the greatest allowed, still gives a set, with the cheapest such set.

        It is looked for from below, where the fewest parts are: no slot goes below the least of its own.
        """
        by_slot = {slot: self._met(slot, query, figure) for slot in self.search.pool.slots}
        figures: list[float] = np.unique(np.concatenate([*by_slot.values()])).tolist()
        least = max(float(by_slot[slot].min(initial=np.inf)) for slot in self.search.requirement.chain)
        low, high, step = bisect_left(figures, least), len(figures), 0
        while low < high:
            middle = min(low + step, (low + high) // 2)
            path = self.search.any_path(replace(query, keep=_at_most(figure, figures[middle])), self.listener)
            if path is None:
                low, step = middle + 1, 2 * step + 1
            else:
                greatest = max(float(figure(parts)[row]) for parts, row in self.search.paths.places_of(path))
                high = min(middle, bisect_left(figures, greatest))
        if high == len(figures):
            return None
        best = self.search.cheapest(replace(query, keep=_at_most(figure, figures[high])), self.listener)
        return None if best is None else (best, figures[high])

    def _met(self, slot: Slot, query: SetQuery, figure: Callable[[SlotParts], Floats]) -> Floats:
        """Return the figures of the parts that a query allows in a slot, those alone that are known."""
        found = (figure(parts)[parts.allowed(query.lines)] for parts in self.search.pool.portions(slot))
        met = np.concatenate([np.zeros(0), *found])
        return np.asarray(met[~np.isnan(met)])


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
