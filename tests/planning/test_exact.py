"""The chosen set is the cheapest that passes all checks: held against enumeration and against an integer solver.

The enumeration tries every chain of a small random catalogue and judges each whole set by the rules and checks alone;
it knows nothing of ports numbered, loads, bounds or groups of nozzles. The integer programme (HiGHS through
scipy.optimize.milp) takes the whole catalogue and the figures of the rules.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from random import Random

import pytest

from planning.stores import ListStore
from planning.surveys import ALL_THAT_FIT, TIGHT
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.check import Check
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import HangingSet, PlanStatus, SetLink
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Survey
from spoutline.planning.desk import Desk
from spoutline.planning.loads import CHECK_LINES
from spoutline.planning.plan_position import chooser_for, plan_position
from spoutline.planning.pool import SLOT_KINDS, narrow_pool
from spoutline.planning.protocols import CandidateFilter
from spoutline.rules.checks import checks_for
from spoutline.rules.joint_rules import mates
from spoutline.rules.part_rules import judge_part
from spoutline.rules.requirement import requirement_for

EVERYTHING = tuple(PartKind)


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


def chains(requirement: Requirement, store: ListStore) -> Iterator[HangingSet]:
    """Yield every chain whose ports meet, at most one adaptor at each joint."""
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

    currency = requirement.site.currency
    for links in grown((), requirement.chain):
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


def enumerated_best(requirement: Requirement, tables: RuleTables, store: ListStore) -> tuple[int, int] | None:
    """Return (shoulds broken, price) of the best chain."""
    judged: dict[tuple[Slot, str], tuple[Finding, ...]] = {}
    best: tuple[int, int] | None = None
    for hanging_set in chains(requirement, store):
        findings: list[Finding] = []
        for link in hanging_set.links:
            key = (link.slot, link.part.number)
            if key not in judged:
                judged[key] = judge_part(link.part, link.slot, requirement, tables)
            findings.extend(judged[key])
        if any(map(forbids, findings)):
            continue
        regrets = sum(one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN for one in findings)
        if best is not None and (regrets, hanging_set.price_minor) >= best:
            continue
        checks = checks_for(hanging_set, requirement, tables)
        if any(map(forbids, checks)):
            continue
        found = (len(should_lines_broken(checks)) + regrets, hanging_set.price_minor)
        best = found if best is None else min(best, found)
    return best


@pytest.mark.parametrize(
    ("name", "seed"), [*itertools.product(ALL_THAT_FIT, range(4)), *itertools.product(TIGHT, range(6))]
)
def test_plan_is_the_best_of_all_chains(name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    survey: Survey = {**ALL_THAT_FIT, **TIGHT}[name]
    position, site = survey.positions[0], survey.site
    requirement = requirement_for(position, site, us_tables)
    assert isinstance(requirement, Requirement)
    store = small_catalogue(catalogue, requirement, us_tables, seed)
    plan = plan_position(position, site, Desk(us_tables, store), with_alternatives=False)
    best = enumerated_best(requirement, us_tables, store)
    if best is None:
        assert plan.status is PlanStatus.DOES_NOT_FIT
        return
    assert plan.chosen is not None
    hanging_set = plan.chosen.hanging_set
    regrets = sum(
        one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN
        for link in hanging_set.links
        for one in judge_part(link.part, link.slot, requirement, us_tables)
    )
    assert (len(should_lines_broken(plan.chosen.checks)) + regrets, hanging_set.price_minor) == best


def test_the_bounds_leave_the_full_checks_next_to_nothing_to_turn_down(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    # A set that the bounds let through and a check turned down would cost another search: counted, not timed.
    turned_down = {}
    for name, survey in {**ALL_THAT_FIT, **TIGHT}.items():
        requirement = requirement_for(survey.positions[0], survey.site, us_tables)
        assert isinstance(requirement, Requirement)
        pool = narrow_pool(requirement, us_tables, catalogue)
        chooser = chooser_for(requirement, pool, Desk(us_tables, catalogue))
        chooser.choose()
        turned_down[name] = chooser.turned_down
    # Once the wanted flow is given up, a nozzle's own least flow is judged by its check alone.
    assert {name for name, count in turned_down.items() if count} <= {"no_wanted_flow"}
    assert turned_down["no_wanted_flow"] < 30
