"""Sets whose hose hangs so nearly taut in use that its tension parts the breakaway: left out at once, none else."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import replace

import pytest

from bench.generated_parts import generated_parts
from planning.stores import ListStore
from planning.surveys import survey_of
from spoutline.model.check import CheckId
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet
from spoutline.model.quantity import Fact
from spoutline.model.requirement import RefusalStatus, Requirement, RequirementId, Slot
from spoutline.planning.sets.choice import Chooser, TurnedDown, is_turned_down
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.left_open import not_decided
from spoutline.planning.sets.plan_position import chooser_for
from spoutline.planning.sets.pool import narrow_pool
from spoutline.planning.sets.set_query import Held, Objective
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.effort import Exhausted

_OF_A_SLOT = 7
TAUT = survey_of(
    liquid={"family": "gasoline", "blend_percent": 0},
    duty="marine",
    outlet={"size": "1"},
    filler={"distance_m": 5.9, "height_m": -0.5},
)
GROUND = frozenset({RequirementId.GROUND_CLEARANCE})  # given up: a boat lies below the quay


def is_tight(part: Part) -> bool:
    if part.breakaway is not None:
        return part.breakaway.separation_minimum_n < 800.0
    return part.hose is None or part.hose.length_m < 0.4 or 6.0 < part.hose.length_m < 6.2


def some_parts(requirement: Requirement, tables: RuleTables) -> list[Part]:
    """Return the first parts of each slot that may serve: hoses just long enough, weak breakaways."""
    pool = narrow_pool(requirement, tables, ListStore(generated_parts(10_000, seed=7)))
    found: dict[Slot, list[Part]] = defaultdict(list)
    for slot in requirement.chain:
        for one in pool.of(slot):
            if not one.forbidden_by and not one.regrets and len(found[slot]) < _OF_A_SLOT and is_tight(one.part):
                found[slot].append(one.part)
    return [part for parts in found.values() for part in parts]


@pytest.fixture(name="parts", scope="module")
def _parts(us_tables: RuleTables) -> list[Part]:
    requirement = requirement_for(TAUT.positions[0], TAUT.site, us_tables)
    assert isinstance(requirement, Requirement)
    return some_parts(requirement, us_tables)


@pytest.fixture(name="chooser")
def _chooser(parts: list[Part], us_tables: RuleTables) -> Chooser:
    requirement = requirement_for(TAUT.positions[0], TAUT.site, us_tables)
    assert isinstance(requirement, Requirement)
    context = PlanningContext(us_tables, ListStore(parts))
    return chooser_for(requirement, narrow_pool(requirement, us_tables, context.parts), context)


def holds_in_use(chooser: Chooser, hanging_set: HangingSet, least: float) -> bool:
    """Say by the full check whether a set bears its load in service so many times."""
    checks = {check.id: check for check in chooser.judge.judged(hanging_set).checks}
    ratio = checks[CheckId.BREAKAWAY_SERVICE_LOAD].value
    assert ratio is not None
    return ratio >= least


@pytest.mark.parametrize("dropped", [GROUND, GROUND | {RequirementId.SERVICE_LOAD}])
@pytest.mark.parametrize("objective", [Objective.PRICE, Objective.PRESSURE_LOSS])
def test_the_sets_left_out_are_those_that_the_full_check_turns_down(
    chooser: Chooser, objective: Objective, dropped: frozenset[RequirementId]
) -> None:
    """Oracle: the check of the whole set, which solves each curve by itself with Brent's method."""
    query = replace(chooser.query(dropped), objective=objective)
    every = list(chooser.search.sets(query))
    margin = chooser.search.model.tables.jurisdiction
    least = 1.0 if RequirementId.SERVICE_LOAD in dropped else margin.number(LimitId.BREAKAWAY_SERVICE_MARGIN)
    kept = [one.refs for one in every if holds_in_use(chooser, one, least)]
    assert 0 < len(kept) < len(every)
    assert [one.refs for one in chooser.search.sets_in_use(query, dropped)] == kept


def test_the_first_set_that_its_checks_accept_is_found_however_many_are_turned_down_before(
    chooser: Chooser, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoutline.planning.sets.choice._PATIENCE", 10)
    query = replace(chooser.query(GROUND), objective=Objective.PRESSURE_LOSS)
    every = list(chooser.search.sets(query))
    before = [is_turned_down(chooser.judge.judged(one), GROUND) for one in every].index(False)
    assert before > 10  # more than are looked at one by one
    found = chooser.first(query, GROUND)
    assert found is not None
    assert found.hanging_set.refs == every[before].refs
    assert chooser.turned_down == 1


@pytest.mark.parametrize("patience", [3, 60])
@pytest.mark.parametrize("slot", [Slot.CURB_HOSE, Slot.BREAKAWAY, Slot.NOZZLE])
def test_around_a_held_part_what_is_known_to_be_turned_down_is_counted_without_being_judged(
    chooser: Chooser, slot: Slot, patience: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Oracle: every set judged in its order, until one is accepted, however many are turned down before."""
    monkeypatch.setattr("spoutline.planning.sets.choice._PATIENCE", patience)
    monkeypatch.setattr("spoutline.search.through._FEW_ITEMS", 0)
    outcomes = set()
    for parts in chooser.search.pool.portions(slot):
        for ref in parts.refs(parts.free):
            query = replace(chooser.query(GROUND, Held(slot, ref)), objective=Objective.PRESSURE_LOSS)
            every = list(chooser.search.sets(query))
            refused = [is_turned_down(chooser.judge.judged(one), GROUND) for one in every]
            wanted = next((one.refs for one, is_refused in zip(every, refused, strict=True) if not is_refused), None)
            chooser.last_refused = None
            found = chooser.first(query, GROUND)
            assert (found.hanging_set.refs if found else None) == wanted
            if every and found is None:
                assert chooser.last_refused is not None
                assert chooser.last_refused.hanging_set.refs == every[:patience][-1].refs
            outcomes.add((found is None, False in refused[:patience]))
    assert patience > 3 or (False, False) in outcomes  # found after so many


@pytest.fixture
def of_another_kind(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the search not know why sets are turned down, as it does not of any check but that of taut hoses."""
    monkeypatch.setattr("spoutline.planning.sets.choice._parts_in_use", lambda judged, dropped: False)


@pytest.mark.usefixtures("of_another_kind")
def test_sets_turned_down_one_after_another_do_not_show_that_none_fits(
    chooser: Chooser, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Oracle: every set judged in its order."""
    monkeypatch.setattr("spoutline.planning.sets.choice._PATIENCE", 10)
    query = replace(chooser.query(GROUND), objective=Objective.PRESSURE_LOSS)
    refused = [is_turned_down(chooser.judge.judged(one), GROUND) for one in chooser.search.sets(query)]
    assert refused.index(False) > 10
    with pytest.raises(TurnedDown):
        chooser.first(query, GROUND)
    told = not_decided(chooser)
    assert told.status is RefusalStatus.NOT_DECIDED
    facts = {fact.name: fact for finding in told.findings for fact in finding.facts}
    reason = facts["sets_turned_down_for"]
    assert isinstance(reason, Fact)
    assert RequirementId.SERVICE_LOAD in reason.value.split(", ")
    monkeypatch.setattr("spoutline.planning.sets.choice._PATIENCE", refused.index(False) + 1)
    assert chooser.first(query, GROUND) is not None


@pytest.mark.usefixtures("of_another_kind")
@pytest.mark.parametrize(("patience", "is_decided"), [(5, False), (100_000, True)])
def test_a_position_all_of_whose_sets_are_turned_down_fits_none_only_where_all_were_looked_at(
    patience: int, is_decided: bool, chooser: Chooser, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoutline.planning.sets.choice._PATIENCE", patience)
    monkeypatch.setattr("spoutline.planning.sets.choice.is_turned_down", lambda judged, dropped: True)
    if is_decided:
        assert chooser.choose() is None
    else:
        with pytest.raises(Exhausted):
            chooser.choose()
    assert chooser.last_refused is not None


@pytest.mark.usefixtures("of_another_kind")
def test_a_set_found_by_giving_a_should_up_is_not_called_the_best_where_many_were_turned_down_before(
    chooser: Chooser, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Every set is turned down that gives no line up: however few are looked at, the one line is come to."""
    limits = chooser.search.model.set_limits
    soft = sorted({limit.requirement for limit in limits if limit.severity is Severity.SHOULD})
    last = frozenset(soft[-1:])
    monkeypatch.setattr("spoutline.planning.sets.choice.is_turned_down", lambda judged, dropped: not last <= dropped)
    monkeypatch.setattr("spoutline.planning.sets.choice._PATIENCE", 100_000)
    whole = chooser.choose()
    assert whole is not None
    monkeypatch.setattr("spoutline.planning.sets.choice._PATIENCE", 1)
    found = chooser.choose()
    assert found is not None
    assert found.judged.hanging_set.refs == whole.judged.hanging_set.refs
    assert whole.floor is None
    assert found.floor is not None
    assert found.floor < (len(found.dropped), found.judged.hanging_set.price_minor)
