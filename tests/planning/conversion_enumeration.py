"""Every chain of a small catalogue, judged by rules and checks alone: the oracle of the cheapest conversion.

It knows nothing of the search: no stand-ins, no numbered ports, no bounds. An installed part costs nothing the first
time that it is used; further copies are bought.
"""

from __future__ import annotations

from collections import Counter
from random import Random

from planning.enumeration import linked
from planning.stores import ListStore
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.protocols import CandidateFilter
from spoutline.planning.sets.pool import SLOT_KINDS, narrow_pool
from spoutline.rules.checks.run import checks_for
from spoutline.rules.parts.part_rules import judge_part


def small_catalogue(store: CatalogueStore, requirement: Requirement, tables: RuleTables, seed: int) -> ListStore:
    """Draw three able parts and one other for each slot, and two adaptors."""
    random = Random(seed)
    drawn: dict[str, Part] = {}
    pool = narrow_pool(requirement, tables, store)
    for slot in (*requirement.chain, Slot.ADAPTOR):
        able = [one.part for one in pool.of(slot) if not one.forbidden_by]
        some = store.candidates(CandidateFilter(kind=SLOT_KINDS[slot]))
        for part in (*random.sample(able, min(3, len(able))), random.choice(some)):
            drawn[part.number] = part
    return ListStore(drawn.values())


def least_cost(
    requirement: Requirement, tables: RuleTables, store: ListStore, staying: Counter[str], work_minor: int
) -> int | None:
    """Return the least that a conversion can cost: list prices of what is bought, with ``work_minor`` for each part."""
    currency = requirement.site.currency
    best: int | None = None
    forbidden: dict[tuple[Slot, str], bool] = {}
    for links in linked(requirement, store):
        for link in links:
            if (link.slot, link.part.number) not in forbidden:
                forbidden[link.slot, link.part.number] = _forbidden(link, requirement, tables)
        if any(forbidden[link.slot, link.part.number] for link in links):
            continue
        cost = _cost(links, staying, currency, work_minor)
        if cost is None or (best is not None and cost >= best):
            continue
        checked = HangingSet(links=links, price_minor=0, currency=currency)
        if all(
            check.passes or check.severity is not Severity.MUST for check in checks_for(checked, requirement, tables)
        ):
            best = cost
    return best


def _cost(links: tuple[SetLink, ...], staying: Counter[str], currency: str, work_minor: int) -> int | None:
    left = Counter(staying)
    cost = 0
    for link in links:
        if left[link.part.number] > 0:
            left[link.part.number] -= 1
            continue
        price = link.part.price_minor(currency)
        if price is None:
            return None
        cost += price + work_minor
    return cost


def _forbidden(link: SetLink, requirement: Requirement, tables: RuleTables) -> bool:
    found: tuple[Finding, ...] = judge_part(link.part, link.slot, requirement, tables)
    return any(one.severity is Severity.MUST and one.verdict is Verdict.BROKEN for one in found)
