"""The parts of every slot with what the part rules say of them, as columns: what the search may draw from."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property, lru_cache
from typing import Final, Protocol

import numpy as np
from numpy.typing import NDArray

from spoutline.frozen import frozen
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind, PartStatus, Price
from spoutline.model.part_columns import STATUS, Ints, Mask, PartColumns, columns_of
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.protocols import PartStore
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.parts.look import Breach
from spoutline.rules.parts.part_rules import KIND_OF_SLOT, breaches, judge_part

SLOT_KINDS: Final[dict[Slot, PartKind]] = KIND_OF_SLOT
Lines = NDArray[np.uint64]  # requirement lines as bits, by their place in ``RequirementId``
_COUNTED: Final = (Severity.MUST, Severity.SHOULD)
_BITS: Final = {line: np.uint64(1 << place) for place, line in enumerate(RequirementId)}


def bits_of(lines: Iterable[RequirementId]) -> np.uint64:
    """Return requirement lines as bits."""
    return _bits_of(frozenset(lines))


@lru_cache(maxsize=1_024)  # groups of lines that are asked about: each of them many times over
def _bits_of(lines: frozenset[RequirementId]) -> np.uint64:
    found = np.uint64(0)
    for line in lines:
        found |= _BITS[line]
    return found


@frozen
class JudgedPart:
    """A part in a slot and the rules it breaks there.

    ``forbidden_by`` are the requirement lines whose *must* rules it breaks; ``regrets`` counts broken *should* rules.
    """

    part: Part
    slot: Slot
    findings: tuple[Finding, ...]
    forbidden_by: frozenset[RequirementId]
    regrets: int


class PartSource(Protocol):
    """Hands out the parts that are shown."""

    def __call__(self, refs: Iterable[PartRef]) -> Mapping[PartRef, Part]:
        """Return the parts of these very references."""
        ...


@dataclass(frozen=True, eq=False)
class SlotParts:
    """Parts that may take a slot, a row each, and what the part rules say of them there.

    Parameters
    ----------
    slot
        The place in the chain.
    columns
        Their figures, of the whole kind.
    inside
        Which rows count: the others are not of the pool.
    forbidden
        The requirement lines whose *must* rules each breaks, as bits.
    regrets
        How many *should* rules each breaks.
    breaches
        What the rules say, in their order; none for parts that hang there already.
    source
        Hands out the parts themselves.
    extra_minor
        What each costs beside its price, as work.
    """

    slot: Slot
    columns: PartColumns
    inside: Mask
    forbidden: Lines
    regrets: Ints
    breaches: tuple[Breach, ...]
    source: PartSource
    extra_minor: int = 0
    _prices: dict[str, Ints] = field(init=False, default_factory=dict)  # by currency, once they were asked for

    def __len__(self) -> int:
        return int(np.count_nonzero(self.inside))

    def allowed(self, lines: Iterable[RequirementId]) -> Mask:
        """Say which parts of the pool break no *must* of these lines."""
        breaks = np.asarray(self.forbidden & bits_of(lines), np.bool_)
        return self.inside & ~breaks

    @cached_property
    def free(self) -> Mask:
        """Which parts of the pool break no *must* at all."""
        return self.inside & ~np.asarray(self.forbidden, np.bool_)

    def broken(self, line: RequirementId) -> Mask:
        """Say which parts of the pool break a *must* of this line."""
        return self.inside & np.asarray(self.forbidden & _BITS[line], np.bool_)

    def first_lines(self) -> Iterator[tuple[RequirementId, int]]:
        """Yield how many parts break a *must* of each line that comes first among those they break."""
        broken = self.forbidden[self.inside & (self.forbidden != 0)]
        lowest, counts = np.unique(broken & (~broken + np.uint64(1)), return_counts=True)
        found = dict(zip(lowest.tolist(), counts.tolist(), strict=True))
        yield from ((line, found[int(bit)]) for line, bit in _BITS.items() if int(bit) in found)

    def prices(self, currency: str) -> Ints:
        """Return prices with what they cost beside, minor units; 0 where there is none."""
        if currency not in self._prices:
            price = self.columns.price_minor(currency)
            self._prices[currency] = np.where(np.isnan(price), 0, price + self.extra_minor).astype(np.int64)
        return self._prices[currency]

    def lines_of(self, row: int) -> frozenset[RequirementId]:
        """Return the lines whose *must* rules the part of a row breaks."""
        bits = self.forbidden[row]
        return frozenset(line for line, bit in _BITS.items() if bits & bit)

    def row_of(self, ref: PartRef) -> int | None:
        """Return the row of a part; None where the pool has it not."""
        row = self.columns.row_of(ref)
        return row if row is not None and self.inside[row] else None

    def refs(self, rows: Mask) -> Iterator[PartRef]:
        """Yield the references of some rows, in their order."""
        yield from map(self.columns.ref_at, np.flatnonzero(rows).tolist())

    def parts(self, rows: Mask, currency: str) -> Iterator[Part]:
        """Yield the parts of some rows, in their order, at what they cost here."""
        refs = tuple(self.refs(rows))
        found = self.source(refs)
        yield from (self.at_cost(found[ref], currency) for ref in refs)

    def at_cost(self, part: Part, currency: str) -> Part:
        """Return a part at its price with what it costs beside."""
        price = part.price_minor(currency)
        if price is None or not self.extra_minor:
            return part
        return replace(part, prices=(Price(currency=currency, minor=price + self.extra_minor),))

    def whole(self) -> SlotParts:
        """Return the same with all parts of the kind."""
        return replace(self, inside=np.ones(len(self.columns), np.bool_))

    def only(self, rows: Mask) -> SlotParts:
        """Return the same with fewer parts."""
        return replace(self, inside=self.inside & rows)


@dataclass(frozen=True, eq=False)
class Pool:
    """What may take each slot, in one or several portions; the slots of the chain first, then adaptor and splitter."""

    requirement: Requirement
    tables: RuleTables
    slots: Mapping[Slot, tuple[SlotParts, ...]]
    _places: dict[tuple[Slot, PartRef], tuple[SlotParts, int] | None] = field(init=False, default_factory=dict)

    def portions(self, slot: Slot) -> tuple[SlotParts, ...]:
        """Return what may take ``slot``."""
        return self.slots.get(slot, ())

    def all_portions(self) -> Iterator[SlotParts]:
        """Yield what may take any slot."""
        for portions in self.slots.values():
            yield from portions

    def of(self, slot: Slot) -> tuple[JudgedPart, ...]:
        """Return the judged parts of ``slot`` one by one, each by its own: for lists, never for a choice."""
        currency = self.requirement.site.currency
        return tuple(
            judged(part, slot, self.requirement, self.tables)
            for portion in self.portions(slot)
            for part in portion.parts(portion.inside, currency)
        )

    def remaining(self, slot: Slot) -> int:
        """Return how many parts of ``slot`` break no *must*."""
        return sum(int(np.count_nonzero(portion.free)) for portion in self.portions(slot))

    def found(self, slot: Slot, ref: PartRef) -> tuple[SlotParts, int] | None:
        """Return where a part of ``slot`` is: its portion and row; None where the pool has it not."""
        if (slot, ref) not in self._places:
            self._places[slot, ref] = self._place(slot, ref)
        return self._places[slot, ref]

    def _place(self, slot: Slot, ref: PartRef) -> tuple[SlotParts, int] | None:
        for portion in self.portions(slot):
            row = portion.row_of(ref)
            if row is not None:
                return portion, row
        return None

    def regrets_of(self, slot: Slot, ref: PartRef) -> int:
        """Return how many *should* rules a part breaks in ``slot``; raise ``KeyError`` where the pool has it not."""
        found = self.found(slot, ref)
        if found is None:
            raise KeyError((slot, ref))
        portion, row = found
        return int(portion.regrets[row])

    def breaks_nothing(self, slot: Slot, ref: PartRef) -> bool:
        """Say whether a part is known to break no part rule in ``slot``, whatever its severity."""
        found = self.found(slot, ref)
        if found is None or not found[0].breaches:
            return False
        portion, row = found
        return not any(breach.where if breach.where.ndim == 0 else breach.where[row] for breach in portion.breaches)

    @cached_property
    def coming_with(self) -> frozenset[PartRef]:
        """The parts that come in an article under another number."""
        return frozenset(
            ref for one in self.all_portions() for ref in one.refs(one.inside & one.columns.inside_article("inlet"))
        )

    def whole(self) -> Pool:
        """Return the pool with all parts of the kinds that it has parts of."""
        slots = {slot: tuple(one.whole() for one in portions) for slot, portions in self.slots.items()}
        return replace(self, slots=slots)

    def only(self, keep: Callable[[SlotParts], Mask]) -> Pool:
        """Return the pool without the parts for which ``keep`` is false."""
        kept = {slot: tuple(one.only(keep(one)) for one in portions) for slot, portions in self.slots.items()}
        return replace(self, slots=kept)


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


def narrow_pool(requirement: Requirement, tables: RuleTables, store: PartStore) -> Pool:
    """Return the parts of the path, listing and scheme that the position asks for and that are still sold.

    Adaptors and splitters change path and may be unlisted, so that only those no longer sold are left out.
    """
    source = _Source(store)
    slots = {}
    for slot in slots_of(requirement):
        columns = store.columns(SLOT_KINDS[slot])
        found = breaches(columns, slot, requirement, tables)
        forbidden, regrets = _counted(found, len(columns))
        rows = _asked_for(columns, requirement)
        slots[slot] = (SlotParts(slot, columns, rows, forbidden, regrets, found, source),)
    return Pool(requirement, tables, slots)


def whole_pool(requirement: Requirement, tables: RuleTables, store: PartStore) -> Pool:
    """Return all parts of the slots' kinds: what a conflict is explained from."""
    return narrow_pool(requirement, tables, store).whole()


def stand_ins(candidates: Iterable[JudgedPart]) -> SlotParts | None:
    """Return parts of one slot that were judged one by one, such as what hangs there, as columns; None for none."""
    by_ref = {one.part.ref: one for one in candidates}
    if not by_ref:
        return None
    one = next(iter(by_ref.values()))
    columns = columns_of(one.part.kind, (judged.part for judged in by_ref.values()))
    ordered = [by_ref[columns.ref_at(row)] for row in range(len(columns))]
    return SlotParts(
        slot=one.slot,
        columns=columns,
        inside=np.ones(len(columns), np.bool_),
        forbidden=np.array([bits_of(judged.forbidden_by) for judged in ordered], np.uint64),
        regrets=np.array([judged.regrets for judged in ordered], np.int64),
        breaches=(),
        source=lambda refs: {ref: by_ref[ref].part for ref in refs},
    )


class _Source:
    """Asks the catalogue for parts once."""

    def __init__(self, store: PartStore) -> None:
        self._store = store
        self._known: dict[PartRef, Part] = {}

    def __call__(self, refs: Iterable[PartRef]) -> Mapping[PartRef, Part]:
        """Return the parts of these very references."""
        wanted = tuple(refs)
        missing = [ref for ref in wanted if ref not in self._known]
        if missing:
            self._known |= {part.ref: part for part in self._store.parts(missing)}
        return {ref: self._known[ref] for ref in wanted}


def _counted(found: Iterable[Breach], size: int) -> tuple[Lines, Ints]:
    """Return the lines whose *must* rules each part breaks, and how many *should* rules."""
    forbidden, regrets = np.zeros(size, np.uint64), np.zeros(size, np.int64)
    for breach in found:
        if breach.severity not in _COUNTED or not np.count_nonzero(breach.where):  # sooner told than by ``any``
            continue
        if breach.severity is Severity.MUST:
            forbidden |= breach.where * _BITS[rule_of(breach.rule_id).requirement]
        else:
            regrets += breach.where
    return forbidden, regrets


def _asked_for(columns: PartColumns, requirement: Requirement) -> Mask:
    inside = columns.has(STATUS, PartStatus.ACTIVE)
    if columns.kind in (PartKind.ADAPTOR, PartKind.SPLITTER):
        return inside
    path = requirement.path
    inside = inside & np.where(
        columns.has_port("outlet"), columns.on_path("outlet", path), columns.on_path("inlet", path)
    )
    if requirement.listing_class is not None:
        inside &= columns.has("listings", requirement.listing_class) & columns.has("schemes", requirement.scheme)
    return inside
