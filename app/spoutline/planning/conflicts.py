"""Why no set exists, and the smallest changes that would free one."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from spoutline.model.finding import Severity
from spoutline.model.plan import Conflict, Exclusion, HangingSet, Relaxation
from spoutline.model.requirement import RequirementId
from spoutline.planning.assembly import ChainSearch, Wish
from spoutline.planning.loads import Load, SetLimit
from spoutline.planning.pool import JudgedPart
from spoutline.rules.registry import rule_of
from spoutline.search.conflicts import minimal_conflict

# What no answer of a person changes: it holds while the other lines are asked, unless it is itself in conflict.
_GIVEN = (
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
_CHANGEABLE = (
    RequirementId.NO_PRESSURE_DEVICE,
    RequirementId.RESISTANCE,
    RequirementId.SERVICE_LOAD,
    RequirementId.DRIVE_OFF,
    RequirementId.ENHANCED_CONVENTIONAL,
    RequirementId.LOW_PERMEATION,
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
_ALL = frozenset((*_GIVEN, *_CHANGEABLE))
_FIXED = (RequirementId.CHAIN, RequirementId.JOINTS)  # nothing to relax: ports are what they are
_NEAREST_SHOWN = 3
_NUMBERS_SAY_ALL = (RequirementId.HOSE_LENGTH,)  # its part rule follows from the sum


class ConflictFinder:
    """Explains an empty search; a conflict of ``k`` out of ``n`` lines costs about ``2 k log2(n / k)`` searches."""

    def __init__(self, search: ChainSearch) -> None:
        self.search = search
        self.limits = tuple(limit for limit in search.model.set_limits if limit.severity is Severity.MUST)
        self._known: dict[frozenset[RequirementId], HangingSet | None] = {}

    def _best(self, lines: frozenset[RequirementId]) -> HangingSet | None:
        if lines not in self._known:
            self._known[lines] = self.search.cheapest(Wish(lines, self.limits))
        return self._known[lines]

    def conflict(self) -> Conflict | None:
        """Return a minimal conflict with what it excludes and what would free a set; None where sets exist.

        The conflict is minimal beside what is given: no member can go without freeing a set, the given lines held. A
        conflict among the given lines themselves is told alone.
        """
        members = self._members(frozenset())
        if not members:
            return None
        return Conflict(
            requirements=members,
            exclusions=tuple(self._exclusions(members)),
            relaxations=tuple(self._relaxations(members)),
        )

    def _members(self, given_up: frozenset[RequirementId]) -> tuple[RequirementId, ...]:
        given = tuple(line for line in _GIVEN if line not in given_up)
        if self._best(frozenset(given)) is None:
            return minimal_conflict(given, lambda lines: self._best(lines) is not None)
        changeable = tuple(line for line in _CHANGEABLE if line not in given_up)
        return minimal_conflict(changeable, lambda lines: self._best(lines | frozenset(given)) is not None)

    def _exclusions(self, members: tuple[RequirementId, ...]) -> Iterator[Exclusion]:
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

    def _nearest(self, excluded: list[JudgedPart], line: RequirementId) -> tuple[str, ...]:
        """Return the parts that only this line excludes, cheapest first."""
        currency = self.search.requirement.site.currency
        only = [candidate.part for candidate in excluded if candidate.forbidden_by == {line}]
        only.sort(key=lambda part: (part.price_minor(currency) or 0, part.number))
        return tuple(part.number for part in only[:_NEAREST_SHOWN])

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
        best = self._best(lines)
        limit = next((one for one in self.limits if one.requirement is line and one.load is not Load.PINNED), None)
        if limit is None or (line not in _NUMBERS_SAY_ALL and self._uses_forbidden(best, line)):
            return _whole_line(line, best, also)
        nearest = self.search.cheapest(Wish(lines, self.limits, objective=limit.load))
        return self._numeric(limit, nearest, also) if nearest else _whole_line(line, best, also)

    def _uses_forbidden(self, hanging_set: HangingSet | None, line: RequirementId) -> bool:
        """Say whether a set holds a part that the line forbids by a rule: then no figure alone would free it."""
        chosen = {(link.slot, link.part.number) for link in hanging_set.links} if hanging_set else set()
        return any(
            line in candidate.forbidden_by and (candidate.slot, candidate.part.number) in chosen
            for judged in self.search.pool.slots.values()
            for candidate in judged
        )

    def _numeric(self, limit: SetLimit, nearest: HangingSet, also: tuple[RequirementId, ...]) -> Relaxation:
        return Relaxation(
            requirement=limit.requirement,
            from_value=limit.shown(limit.limit),
            to_value=limit.shown(self.search.model.load_of(nearest, limit.load)),
            dimension=limit.dimension,
            price_minor=nearest.price_minor,
            numbers=nearest.numbers,
            also=also,
        )


def _whole_line(line: RequirementId, best: HangingSet | None, also: tuple[RequirementId, ...]) -> Relaxation:
    return Relaxation(
        requirement=line,
        from_value=None,
        to_value=None,
        dimension=None,
        price_minor=best.price_minor if best else None,
        numbers=best.numbers if best else (),
        also=also,
    )


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
