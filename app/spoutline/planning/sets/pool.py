"""The parts of every slot with what the part rules say about each: what the search may draw from."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.protocols import CandidateFilter, PartStore
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.parts.part_rules import judge_part

SLOT_KINDS: dict[Slot, PartKind] = {
    Slot.WHIP_HOSE: PartKind.WHIP_HOSE,
    Slot.BREAKAWAY: PartKind.BREAKAWAY,
    Slot.CURB_HOSE: PartKind.CURB_HOSE,
    Slot.SWIVEL: PartKind.SWIVEL,
    Slot.SWIVEL_BREAKAWAY: PartKind.SWIVEL_BREAKAWAY,
    Slot.NOZZLE: PartKind.NOZZLE,
    Slot.ADAPTOR: PartKind.ADAPTOR,
    Slot.SPLITTER: PartKind.SPLITTER,
}


@dataclass(frozen=True, slots=True)
class JudgedPart:
    """A part in a slot and the rules it breaks there.

    ``forbidden_by`` are the requirement lines whose *must* rules it breaks; ``regrets`` counts broken *should* rules.
    """

    part: Part
    slot: Slot
    findings: tuple[Finding, ...]
    forbidden_by: frozenset[RequirementId]
    regrets: int


@dataclass(frozen=True, slots=True)
class Pool:
    """Judged parts per slot; the slots of the chain first, then adaptor and splitter."""

    slots: dict[Slot, tuple[JudgedPart, ...]]

    def of(self, slot: Slot) -> tuple[JudgedPart, ...]:
        """Return the judged parts of ``slot``, sorted by part number."""
        return self.slots.get(slot, ())

    def only(self, keep: Callable[[JudgedPart], bool]) -> Pool:
        """Return the pool without the parts for which ``keep`` is false."""
        return Pool({slot: tuple(filter(keep, judged)) for slot, judged in self.slots.items()})


def slots_of(requirement: Requirement) -> tuple[Slot, ...]:
    """Return every slot that a part may take at this position: the chain, and what may come between."""
    return (*requirement.chain, Slot.ADAPTOR, Slot.SPLITTER)


def judged(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> JudgedPart:
    """Apply every part rule to ``part`` in ``slot``."""
    findings = judge_part(part, slot, requirement, tables)
    broken = [finding for finding in findings if finding.verdict is Verdict.BROKEN]
    return JudgedPart(
        part,
        slot,
        findings,
        frozenset(rule_of(finding.rule_id).requirement for finding in broken if finding.severity is Severity.MUST),
        sum(finding.severity is Severity.SHOULD for finding in broken),
    )


def _filter_for(slot: Slot, requirement: Requirement) -> CandidateFilter:
    """Return the indexed bounds of a slot; adaptors and splitters change path and may be unlisted, so stay open."""
    kind = SLOT_KINDS[slot]
    if slot in (Slot.ADAPTOR, Slot.SPLITTER):
        return CandidateFilter(kind=kind, active_only=True)
    return CandidateFilter(
        kind=kind,
        path=requirement.path,
        listing_class=requirement.listing_class,
        scheme=requirement.scheme if requirement.listing_class is not None else None,
        active_only=True,
    )


def narrow_pool(requirement: Requirement, tables: RuleTables, store: PartStore) -> Pool:
    """Return the parts that the catalogue's indexed filter lets through, judged."""
    return _pool(requirement, tables, store, {slot: _filter_for(slot, requirement) for slot in slots_of(requirement)})


def whole_pool(requirement: Requirement, tables: RuleTables, store: PartStore) -> Pool:
    """Return all parts of the slots' kinds, judged: what a conflict is explained from."""
    filters = {slot: CandidateFilter(kind=SLOT_KINDS[slot]) for slot in slots_of(requirement)}
    return _pool(requirement, tables, store, filters)


def _pool(requirement: Requirement, tables: RuleTables, store: PartStore, filters: dict[Slot, CandidateFilter]) -> Pool:
    return Pool(
        {
            slot: tuple(judged(part, slot, requirement, tables) for part in store.candidates(wanted))
            for slot, wanted in filters.items()
        }
    )
