"""Why a slot is left without a part: how many break which line, which came nearest, and by how much."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import numpy as np

from spoutline.model.finding import Finding, Severity
from spoutline.model.no_set import NearPart, SlotReason
from spoutline.model.part import Part
from spoutline.model.part_columns import Floats
from spoutline.model.part_ref import PartRef
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.part_here import forbids, places_for
from spoutline.planning.sets.pool import SlotParts, bits_of
from spoutline.rules.chain.joints import OUTLET, JointPair, pair_findings
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.parts.look import Breach, Shown
from spoutline.rules.parts.part_rules import judge_part

_SHOWN = 3


def slot_reasons(search: ChainSearch, lines: frozenset[RequirementId]) -> tuple[SlotReason, ...]:
    """Return the slots that lines leave empty; where none is, all slots of which they exclude a part."""
    found = [
        _reason(search, slot, lines) for slot in search.requirement.chain if _breaks_any(search, slot, bits_of(lines))
    ]
    empty = tuple(one for one in found if not one.left)
    return empty or tuple(found)


def gap_reason(search: ChainSearch, slot: Slot, refs: Iterable[PartRef]) -> SlotReason:
    """Return that no part can be joined on in a slot, naming those whose ports come nearest to the outlet."""
    there = sum(len(portion) for portion in search.pool.portions(slot))
    near = tuple(one for ref in refs if (one := _near_outlet(search, slot, ref)) is not None)
    return SlotReason(slot=slot, there=there, broken=((RequirementId.JOINTS, there),), left=0, nearest=near)


def miss_of(finding: Finding) -> Quantity | None:
    """Return how far a figure of a part lies from what is asked of it, named by the rule; None for no such figure.

    A finding shows the figure of the part first, then one bound or both.
    """
    figures = [fact for fact in finding.facts if isinstance(fact, Quantity)]
    own, bounds = figures[:1], figures[1:]
    if not own or not 1 <= len(bounds) <= 2 or any(one.dimension is not own[0].dimension for one in bounds):
        return None
    value, ends = own[0].value, sorted(one.value for one in bounds)
    if len(ends) == 2 and ends[0] <= value <= ends[1]:
        return None
    dimension = own[0].dimension
    if dimension is Dimension.TEMPERATURE:
        dimension = Dimension.TEMPERATURE_DIFFERENCE
    return Quantity(finding.rule_id, min(abs(value - end) for end in ends), dimension)


def _breaks_any(search: ChainSearch, slot: Slot, bits: np.uint64) -> bool:
    return any(bool(np.any(parts.inside & (parts.forbidden & bits != 0))) for parts in search.pool.portions(slot))


def _reason(search: ChainSearch, slot: Slot, lines: frozenset[RequirementId]) -> SlotReason:
    portions = search.pool.portions(slot)
    counts = {line: sum(int(np.count_nonzero(parts.broken(line))) for parts in portions) for line in RequirementId}
    return SlotReason(
        slot=slot,
        there=sum(map(len, portions)),
        broken=tuple((line, counts[line]) for line in RequirementId if line in lines and counts[line]),
        left=sum(int(np.count_nonzero(parts.allowed(lines))) for parts in portions),
        nearest=tuple(_nearest(search, slot, portions, bits_of(lines))),
    )


def _nearest(search: ChainSearch, slot: Slot, portions: Iterable[SlotParts], bits: np.uint64) -> Iterator[NearPart]:
    """Yield the parts that miss least in all, then the cheapest."""
    currency = search.requirement.site.currency
    ranked: list[tuple[float, int, PartRef, SlotParts]] = []
    for parts in portions:
        rows = np.flatnonzero(parts.inside & (parts.forbidden & bits != 0))
        missed, prices = _missed(parts)[rows], parts.prices(currency)[rows]
        for at in np.lexsort((prices, missed))[:_SHOWN].tolist():
            ranked.append((float(missed[at]), int(prices[at]), parts.columns.ref_at(int(rows[at])), parts))
    for _, _, ref, parts in sorted(ranked, key=lambda one: one[:3])[:_SHOWN]:
        yield near_part(search, slot, parts.source((ref,))[ref], bits)


def near_part(search: ChainSearch, slot: Slot, part: Part, bits: np.uint64) -> NearPart:
    """Return what a part breaks in a slot of the lines of a conflict, and how much else."""
    broken = tuple(filter(forbids, judge_part(part, slot, search.requirement, search.model.tables)))
    own = tuple(one for one in broken if bits_of((rule_of(one.rule_id).requirement,)) & bits)
    misses = tuple(miss for miss in map(miss_of, own) if miss is not None)
    return NearPart(slot=slot, part=part, findings=own, misses=misses, others=len(broken) - len(own))


def asked_for(search: ChainSearch, parts: Iterable[Part], lines: frozenset[RequirementId]) -> tuple[NearPart, ...]:
    """Return the parts asked for that break some of the lines in every slot that they could take, where least."""
    found = []
    for part in parts:
        slots = places_for(part, search.requirement)
        tried = [near_part(search, slot, part, bits_of(lines)) for slot in slots]
        if tried and all(one.findings for one in tried):
            found.append(min(tried, key=lambda one: len(one.findings)))
    return tuple(found)


def _missed(parts: SlotParts) -> Floats:
    """Return by how much each part misses what is asked: the shares of the bounds for figures, 1 for anything else."""
    total = np.zeros(len(parts.columns))
    for breach in parts.breaches:
        if breach.severity is Severity.MUST:
            total += np.where(breach.where, _share(breach, parts), 0.0)
    return total


def _share(breach: Breach, parts: SlotParts) -> Floats:
    """Return how far the figure of a breach lies from its nearer bound: shares of that bound, at most 1.

    Where the bound is 0, shares of the greatest miss.
    """
    figures = [one for one in breach.shown if one.dimension is not None]
    if not 2 <= len(figures) <= 3 or any(one.dimension is not figures[0].dimension for one in figures):
        return np.ones(len(parts.columns))
    own, *bounds = (_values(one, parts) for one in figures)
    missed = np.minimum.reduce([np.abs(own - bound) for bound in bounds])
    greatest = float(np.max(missed, initial=0.0, where=breach.where & np.isfinite(missed)))
    scale = np.minimum.reduce([np.where(bound == 0.0, greatest or 1.0, np.abs(bound)) for bound in bounds])
    shares: Floats = np.nan_to_num(np.minimum(missed / scale, 1.0), nan=1.0)
    return shares


def _values(shown: Shown, parts: SlotParts) -> Floats:
    values = parts.columns.number(shown.path) if shown.path else np.asarray(shown.value, np.float64)
    return np.broadcast_to(values, (len(parts.columns),)).astype(np.float64)


def _near_outlet(search: ChainSearch, first: Slot, ref: PartRef) -> NearPart | None:
    """Return what keeps a part, or an adaptor before it, from the dispenser's outlet; None where it has no inlet."""
    for slot in (first, Slot.ADAPTOR, Slot.SPLITTER):
        found = search.pool.found(slot, ref)
        if found is None:
            continue
        parts, row = found
        code = int(parts.columns.arrays["inlet"][row])
        if code < 0:
            return None
        pair = JointPair(OUTLET, str(ref), search.requirement.outlet, parts.columns.ports[code])
        findings = pair_findings(pair, search.model.tables)
        return NearPart(slot=slot, part=parts.source((ref,))[ref], findings=findings, misses=())
    return None
