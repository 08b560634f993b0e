"""How sound an edition is before it is published: what lacks, what joins nothing, what no station can ever choose."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date, timedelta
from enum import StrEnum
from functools import partial
from typing import Final

import numpy as np

from spoutline.catalogue.descriptions import EntryFault, describe
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import ACCESSORIES, HANGING_KINDS, Part, PartKind, PartStatus
from spoutline.model.part_columns import Ints, Mask, PartColumns, columns_of
from spoutline.model.part_ref import PartRef
from spoutline.model.port import Port
from spoutline.model.pricing import PriceList
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.keeping.questions import requirements
from spoutline.planning.sets.pool import SLOT_KINDS
from spoutline.rules.chain.joints import mates
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.rules.parts.part_rules import breaches, judge_part
from spoutline.rules.parts.prices import middle_price, price_question

_Question = tuple[Requirement, RuleTables]
_MORE_THAN_RULES: Final = 1_000  # no part can break as many
_NO_QUESTION: Final = 2**62
_SOON: Final = timedelta(days=30)
# what a dispenser's outlet may face: a survey may name any outlet, so the inlet of these needs no mate in the catalogue
_AT_THE_OUTLET: Final = frozenset(
    {PartKind.WHIP_HOSE, PartKind.BREAKAWAY, PartKind.CURB_HOSE, PartKind.ADAPTOR, PartKind.SPLITTER}
)
_SLOT_OF: Final[dict[PartKind, Slot]] = {kind: slot for slot, kind in SLOT_KINDS.items()}
# what a survey or an offer decides, and no property of the part
_DECIDED_ELSEWHERE: Final = frozenset({RuleId.PART_PRICE, RuleId.PART_REFUSED, RuleId.PART_LEAD_TIME})

# broken where the question is meant for parts of another class, scheme or liquid
_ANOTHER_QUESTION: Final = frozenset({RuleId.PART_CLASS, RuleId.PART_SCHEME, RuleId.PART_DEF_OFFER})


class Matter(StrEnum):
    """What a note is about."""

    FAULTY = "faulty"  # figures that are wrong; it keeps the draft from being published
    NOT_DESCRIBED = "not_described"
    NO_MATE = "no_mate"
    NEVER_CHOSEN = "never_chosen"
    NO_SCHEME = "no_scheme"  # listing classes, but no scheme that they rest on
    NO_PRICE = "no_price"
    PRICE_UNUSUAL = "price_unusual"
    LIST_EXPIRED = "list_expired"
    LIST_EXPIRES = "list_expires"  # within thirty days


@frozen(kw_only=True)
class HealthNote:
    """One thing that a keeper should look at; what does not belong to its matter is empty.

    ``columns`` are figures that lack. ``ports`` join nothing. ``findings`` say why no question can choose the part: the
    rules that it breaks where it breaks fewest, or what its price puts.
    """

    matter: Matter
    ref: PartRef | None = None
    name: str = ""
    columns: tuple[str, ...] = ()
    faults: tuple[EntryFault, ...] = ()
    ports: tuple[Port, ...] = ()
    findings: tuple[Finding, ...] = ()
    currency: str = ""
    price_list: str = ""
    day: date | None = None


def health_of(
    entries: Iterable[CatalogueEntry],
    tables: Sequence[RuleTables],
    lists: Sequence[PriceList],
    today: date,
) -> tuple[HealthNote, ...]:
    """Return what a keeper should look at in an edition, matter by matter, then by number and maker.

    Parameters
    ----------
    entries
        Everything in the edition.
    tables
        The rule tables by which stations ask; the first says how far from the usual a price is asked about.
    lists
        The price lists at hand.
    today
        The day by which they have expired or soon will.
    """
    parts: list[Part] = []
    notes: list[HealthNote] = []
    for entry in entries:
        found = describe(entry)
        if found.part is not None:
            parts.append(found.part)
        elif found.faults:
            notes.append(HealthNote(matter=Matter.FAULTY, ref=entry.ref, name=entry.name, faults=found.faults))
        else:
            notes.append(HealthNote(matter=Matter.NOT_DESCRIBED, ref=entry.ref, name=entry.name, columns=found.lacking))
    in_lists = {(one.maker, row.part_number) for one in lists for row in one.rows}
    makers = {part.maker for part in parts} | {note.ref.maker for note in notes if note.ref is not None}
    notes += (*_without_mate(parts), *_never_chosen(parts, tables), *_prices(parts, tables, in_lists))
    notes += _expired(lists, makers, today)
    order = list(Matter)
    return tuple(sorted(notes, key=lambda note: (order.index(note.matter), note.ref or PartRef(note.price_list))))


def _without_mate(parts: Sequence[Part]) -> Iterator[HealthNote]:
    """Yield the parts with an end that no part of another kind makes up with."""
    hanging = [part for part in parts if part.kind in HANGING_KINDS and part.status is PartStatus.ACTIVE]
    inlets: dict[Port, set[PartKind]] = defaultdict(set)  # the kinds of part that have a port
    outlets: dict[Port, set[PartKind]] = defaultdict(set)
    for part in hanging:
        if part.inlet:
            inlets[part.inlet].add(part.kind)
        if part.outlet:
            outlets[part.outlet].add(part.kind)
    kinds_below = {port: _kinds(inlets, partial(mates, port)) for port in outlets}
    kinds_above = {port: _kinds(outlets, partial(_is_below, port)) for port in inlets}
    for part in hanging:
        lonely = []
        at_outlet = part.kind in _AT_THE_OUTLET and part.comes_with is None
        if part.inlet and not at_outlet and not kinds_above[part.inlet] - {part.kind}:
            lonely.append(part.inlet)
        if part.outlet and not kinds_below[part.outlet] - {part.kind}:
            lonely.append(part.outlet)
        if lonely:
            yield HealthNote(matter=Matter.NO_MATE, ref=part.ref, name=part.name, ports=tuple(lonely))


def _is_below(port: Port, other: Port) -> bool:
    return mates(other, port)


def _kinds(ports: Mapping[Port, set[PartKind]], meets: Callable[[Port], bool]) -> set[PartKind]:
    """Return the kinds that have a port which ``meets`` another."""
    return {kind for port, kinds in ports.items() if meets(port) for kind in kinds}


def _never_chosen(parts: Sequence[Part], tables: Sequence[RuleTables]) -> Iterator[HealthNote]:
    """Yield the parts on sale that break a must of every question, with the rules broken where they break fewest."""
    asked: dict[Slot, list[_Question]] = defaultdict(list)
    for one in tables:
        for requirement in requirements((one,)):
            plain = replace(requirement, lines=(), findings=(), limit_statuses=())  # which no rule of parts reads
            for slot in (*requirement.chain, Slot.ADAPTOR, Slot.SPLITTER):
                asked[slot].append((plain, one))
    on_sale: dict[PartKind, list[Part]] = defaultdict(list)
    for part in parts:
        if part.kind not in ACCESSORIES and part.status is PartStatus.ACTIVE:
            on_sale[part.kind].append(part)
    for kind, alike in on_sale.items():
        for part, question in _suited_by_none(alike, _SLOT_OF[kind], asked[_SLOT_OF[kind]]):
            findings = () if question is None else _broken(part, _SLOT_OF[kind], *question)
            yield HealthNote(matter=Matter.NEVER_CHOSEN, ref=part.ref, name=part.name, findings=findings)


def _suited_by_none(
    parts: Sequence[Part], slot: Slot, asked: Sequence[_Question]
) -> Iterator[tuple[Part, _Question | None]]:
    """Yield the parts of a kind that break a must of every question, with the first one of which they break fewest.

    None for no question: no chain has the slot. All parts are judged at once, as columns; those that suit a question,
    as most do soon, are asked nothing more.
    """
    columns = columns_of(parts[0].kind, parts)
    least = np.full(len(columns), _NO_QUESTION)
    best = np.full(len(columns), -1)
    rows = np.arange(len(columns))  # those of ``left``
    left = columns
    for number, question in enumerate(asked):
        may = _may_suit(left, slot, question[0])
        if may.any():
            far = np.where(may, _how_far(left, slot, *question), _NO_QUESTION)
            nearer = far < least[rows]
            best[rows[nearer]] = number
            least[rows] = np.minimum(far, least[rows])
            unsuited = np.flatnonzero(least[rows])
            if len(unsuited) < len(rows):
                rows, left = rows[unsuited], left.take(unsuited)
    if asked:  # what may suit a part nowhere is told by the first question
        nowhere = best < 0
        least[nowhere] = _how_far(columns.take(nowhere), slot, *asked[0])
        best[nowhere] = 0
    by_ref = {part.ref: part for part in parts}
    for row in np.flatnonzero(least).tolist():
        yield by_ref[columns.ref_at(row)], asked[best[row]] if asked else None


def _how_far(columns: PartColumns, slot: Slot, requirement: Requirement, tables: RuleTables) -> Ints:
    """Return, by part, how many musts of a question it breaks; none where it suits.

    Questions that are meant for other parts come behind those that the part is made for.
    """
    broken, meant_for_others = np.zeros((2, len(columns)), np.int64)
    for breach in breaches(columns, slot, requirement, tables):
        if breach.severity is Severity.MUST and breach.rule_id not in _DECIDED_ELSEWHERE:
            broken += breach.where
            meant_for_others += breach.where & (breach.rule_id in _ANOTHER_QUESTION)
    return meant_for_others * _MORE_THAN_RULES + broken


def _broken(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> tuple[Finding, ...]:
    """Return the musts of a question that a part breaks, but what a survey or an offer decides."""
    return tuple(
        finding
        for finding in judge_part(part, slot, requirement, tables)
        if finding.verdict is Verdict.BROKEN
        and finding.severity is Severity.MUST
        and finding.rule_id not in _DECIDED_ELSEWHERE
    )


def _may_suit(columns: PartColumns, slot: Slot, requirement: Requirement) -> Mask:
    """Leave out quickly what breaks a must for certain: another path, another listing class."""
    path = requirement.path
    may = np.where(columns.has_port("outlet"), columns.on_path("outlet", path), columns.on_path("inlet", path))
    if slot in (Slot.ADAPTOR, Slot.SPLITTER) or requirement.listing_class is None:
        return may
    return may & columns.has("listings", requirement.listing_class)


def _prices(
    parts: Sequence[Part], tables: Sequence[RuleTables], in_lists: set[tuple[str, str]]
) -> Iterator[HealthNote]:
    by_kind: dict[PartKind, list[Part]] = defaultdict(list)
    for part in parts:
        by_kind[part.kind].append(part)
        if part.listings and not part.schemes and part.kind in HANGING_KINDS:
            yield HealthNote(matter=Matter.NO_SCHEME, ref=part.ref, name=part.name)
        if not part.prices and (part.maker, part.number) not in in_lists:
            yield HealthNote(matter=Matter.NO_PRICE, ref=part.ref, name=part.name)
    for alike in by_kind.values():
        for currency in sorted({price.currency for part in alike for price in part.prices}):
            middle = middle_price(alike, currency)
            for part in alike:
                question = price_question(part, currency, middle, tables[0])
                if question is not None:
                    yield HealthNote(
                        matter=Matter.PRICE_UNUSUAL,
                        ref=part.ref,
                        name=part.name,
                        findings=(question,),
                        currency=currency,
                    )


def _expired(lists: Iterable[PriceList], makers: set[str], today: date) -> Iterator[HealthNote]:
    """Yield the lists of these makers that have ended, or soon will, with none to follow in the same currency."""
    by_use: dict[tuple[str, str], list[PriceList]] = defaultdict(list)
    for one in lists:
        if one.maker in makers:
            by_use[one.maker, one.currency].append(one)
    for alike in by_use.values():
        last = max(alike, key=lambda one: (one.valid_to or date.max, one.id))
        if last.valid_to is not None and last.valid_to < today + _SOON:
            matter = Matter.LIST_EXPIRED if last.valid_to < today else Matter.LIST_EXPIRES
            yield HealthNote(matter=matter, price_list=last.id, name=last.maker, day=last.valid_to)
