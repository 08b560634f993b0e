"""How sound an edition is before it is published: what lacks, what joins nothing, what no station can ever choose."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from datetime import date, timedelta
from enum import StrEnum
from functools import partial
from typing import Final

from spoutline.catalogue.descriptions import EntryFault, describe
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import ACCESSORIES, HANGING_KINDS, Part, PartKind, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.port import Port
from spoutline.model.pricing import PriceList
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.keeping.questions import requirements
from spoutline.planning.sets.pool import SLOT_KINDS
from spoutline.rules.chain.joints import mates
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.rules.parts.part_rules import judge_part
from spoutline.rules.parts.prices import middle_price, price_question

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
    asked: dict[Slot, list[tuple[Requirement, RuleTables]]] = defaultdict(list)
    for one in tables:
        for requirement in requirements((one,)):
            for slot in (*requirement.chain, Slot.ADAPTOR, Slot.SPLITTER):
                asked[slot].append((requirement, one))
    for part in parts:
        if part.kind in ACCESSORIES or part.status is not PartStatus.ACTIVE:
            continue
        slot = _SLOT_OF[part.kind]
        least = _fewest_broken(part, slot, asked[slot])
        if least is None or least:
            yield HealthNote(matter=Matter.NEVER_CHOSEN, ref=part.ref, name=part.name, findings=least or ())


def _fewest_broken(
    part: Part, slot: Slot, asked: Sequence[tuple[Requirement, RuleTables]]
) -> tuple[Finding, ...] | None:
    """Return the musts that a part breaks at the question that suits it best; None where no chain has its slot."""
    least: tuple[Finding, ...] | None = None
    for requirement, tables in [one for one in asked if _may_suit(part, slot, one[0])] or asked[:1]:
        broken = tuple(
            finding
            for finding in judge_part(part, slot, requirement, tables)
            if finding.verdict is Verdict.BROKEN
            and finding.severity is Severity.MUST
            and finding.rule_id not in _DECIDED_ELSEWHERE
        )
        if not broken:
            return ()
        if least is None or _how_far(broken) < _how_far(least):
            least = broken
    return least


def _how_far(broken: tuple[Finding, ...]) -> tuple[int, int]:
    """Put the questions that are meant for other parts behind those that the part is made for."""
    return sum(finding.rule_id in _ANOTHER_QUESTION for finding in broken), len(broken)


def _may_suit(part: Part, slot: Slot, requirement: Requirement) -> bool:
    """Leave out quickly what breaks a must for certain: another path, another listing class."""
    if part.path is not requirement.path:
        return False
    unlisted = slot in (Slot.ADAPTOR, Slot.SPLITTER) or requirement.listing_class is None
    return unlisted or requirement.listing_class in part.listings


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
