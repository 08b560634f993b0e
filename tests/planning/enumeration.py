"""Every chain of a small catalogue, judged by the rules and checks alone: the oracle of the exact searches.

It knows nothing of ports numbered, loads, bounds or groups of nozzles.
"""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

from planning.stores import ListStore
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.check import Check
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.protocols import CandidateFilter
from spoutline.planning.sets.loads import CHECK_LINES
from spoutline.planning.sets.pool import SLOT_KINDS, narrow_pool
from spoutline.rules.chain.joints import mates
from spoutline.rules.checks.run import checks_for
from spoutline.rules.parts.part_rules import judge_part


def small_catalogue(store: CatalogueStore, requirement: Requirement, tables: RuleTables, seed: int) -> ListStore:
    """Draw a few parts per slot, most of them able to serve, some not, and two adaptors."""
    random = Random(seed)
    drawn: dict[str, Part] = {}
    pool = narrow_pool(requirement, tables, store)
    for slot in (*requirement.chain, Slot.ADAPTOR):
        able = [one.part for one in pool.of(slot) if not one.forbidden_by]
        some = store.candidates(CandidateFilter(kind=SLOT_KINDS[slot]))
        size = 2 if slot is Slot.ADAPTOR else 4
        for part in (*random.sample(able, min(size, len(able))), random.choice(some)):
            drawn[part.number] = part
    return ListStore(drawn.values())


def linked(requirement: Requirement, store: ListStore) -> Iterator[tuple[SetLink, ...]]:
    """Yield every chain whose ports meet, at most one adaptor at each joint, priced or not."""
    adaptors = store.candidates(CandidateFilter(kind=PartKind.ADAPTOR))

    def grown(links: tuple[SetLink, ...], rest: tuple[Slot, ...]) -> Iterator[tuple[SetLink, ...]]:
        if not rest:
            yield links
            return
        port = links[-1].part.outlet if links else requirement.outlet
        for part in store.candidates(CandidateFilter(kind=SLOT_KINDS[rest[0]])):
            if port is None or part.inlet is None:
                continue
            if mates(port, part.inlet):
                yield from grown((*links, SetLink(slot=rest[0], part=part)), rest[1:])
            for adaptor in adaptors:
                if (
                    adaptor.inlet
                    and adaptor.outlet
                    and mates(port, adaptor.inlet)
                    and mates(adaptor.outlet, part.inlet)
                ):
                    between = SetLink(slot=Slot.ADAPTOR, part=adaptor)
                    yield from grown((*links, between, SetLink(slot=rest[0], part=part)), rest[1:])

    yield from grown((), requirement.chain)


def chains(requirement: Requirement, store: ListStore) -> Iterator[HangingSet]:
    """Yield every chain whose ports meet and whose parts all have a price."""
    currency = requirement.site.currency
    for links in linked(requirement, store):
        prices = [link.part.price_minor(currency) for link in links]
        if None not in prices:
            yield HangingSet(links=links, price_minor=sum(filter(None, prices)), currency=currency)


def forbids(found: Finding | Check) -> bool:
    if isinstance(found, Finding):
        return found.severity is Severity.MUST and found.verdict is Verdict.BROKEN
    return found.severity is Severity.MUST and not found.passes


def should_lines_broken(checks: tuple[Check, ...]) -> frozenset[str]:
    return frozenset(
        CHECK_LINES[check.id]
        for check in checks
        if check.severity is Severity.SHOULD and not check.passes and check.id in CHECK_LINES
    )


class Weighing:
    """Weighs chains for one requirement: shoulds broken, then price; parts are judged once per slot."""

    def __init__(self, requirement: Requirement, tables: RuleTables) -> None:
        self._requirement, self._tables = requirement, tables
        self._judged: dict[tuple[Slot, str], tuple[Finding, ...]] = {}

    def by_parts(self, hanging_set: HangingSet) -> tuple[int, int] | None:
        """Return (shoulds broken by the parts, price); None where a part breaks a must."""
        findings: list[Finding] = []
        for link in hanging_set.links:
            key = (link.slot, link.part.number)
            if key not in self._judged:
                self._judged[key] = judge_part(link.part, link.slot, self._requirement, self._tables)
            findings.extend(self._judged[key])
        if any(map(forbids, findings)):
            return None
        regrets = sum(one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN for one in findings)
        return regrets, hanging_set.price_minor

    def by_checks(self, hanging_set: HangingSet) -> int | None:
        """Return how many should-lines the checks of the whole set break; None where it breaks a must."""
        checks = checks_for(hanging_set, self._requirement, self._tables)
        return None if any(map(forbids, checks)) else len(should_lines_broken(checks))
