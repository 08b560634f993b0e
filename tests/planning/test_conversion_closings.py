"""What is closed and what stays live where some hoses keep recovery: by dispenser, riser, pipe and tank.

Expected: Connecticut, CGS 22a-174e (every path that could release vapor is closed where recovery goes); that a path
which hoses still recover through stays open is common practice, no source.
"""

from __future__ import annotations

import dataclasses
from typing import Any, cast

import pytest

from planning.conversion_sites import position, site_of
from spoutline.model.plan import PositionPlan
from spoutline.model.position_conversion import (
    ClosingPlan,
    ConversionKind,
    LiveReason,
    PositionConversion,
    PositionOutcome,
    VapourOpening,
)
from spoutline.model.survey import Survey, VapourStatus
from spoutline.rules.conversion.closings import closing_plan

Counts = dict[tuple[str, str], int]


def converted(survey: Survey, *stuck: str) -> tuple[PositionConversion, ...]:
    """Return the positions as converted, those of ``stuck`` without a set; no set is searched for."""
    return tuple(
        PositionConversion(
            position=one,
            kinds=(ConversionKind.DECOMMISSION,) if one.vapour_wanted is not one.vapour_today else (),
            outcome=PositionOutcome.NO_SET if one.label in stuck else PositionOutcome.CONVERTS,
            least_cost=None,
            good_practice=None,
            renewal=cast("PositionPlan", None),
            renewal_option=None,
            differences=(),
        )
        for one in survey.positions
    )


def planned(*positions: dict[str, Any], stuck: tuple[str, ...] = (), **sequence: Any) -> ClosingPlan:
    survey = site_of(*positions, sequence=sequence)
    return closing_plan(converted(survey, *stuck), survey.conversion)


def going(label: str, dispenser: str, today: str = "balance", **changes: Any) -> dict[str, Any]:
    return position(label, today=today, dispenser=dispenser, **changes)


def kept(label: str, dispenser: str, today: str = "balance", **changes: Any) -> dict[str, Any]:
    return position(label, today=today, wanted=today, dispenser=dispenser, **changes)


def shared(plan: ClosingPlan) -> Counts:
    return {(one.opening.value, one.dispenser): one.quantity for one in plan.shared}


def live(plan: ClosingPlan) -> dict[tuple[str, str], tuple[str, ...]]:
    return {(one.opening.value, one.dispenser): one.needed_by for one in plan.live}


GROUND = {"tank_end_reachable": True, "condensate_traps": 2}


def test_a_pipe_that_an_island_still_needs_is_closed_at_the_other_dispensers_alone() -> None:
    plan = planned(going("1A", "1"), going("2A", "2"), kept("4A", "4"), kept("4B", "4"), **GROUND)
    assert shared(plan) == {("riser", "1"): 1, ("riser", "2"): 1}
    assert live(plan) == {("condensate_trap", ""): ("4A", "4B"), ("tank_end", ""): ("4A", "4B")}
    traps = next(one for one in plan.live if one.opening is VapourOpening.CONDENSATE_TRAP)
    assert traps.quantity == 2
    whole = planned(going("1A", "1"), going("2A", "2"), **GROUND)
    assert ("tank_end", "") in shared(whole)
    assert ("condensate_trap", "") in shared(whole)
    assert not whole.live


def test_the_riser_of_a_dispenser_stays_live_for_the_hose_on_its_other_side() -> None:
    plan = planned(going("1A", "1"), kept("1B", "1"), **GROUND)
    assert not shared(plan)
    assert live(plan)["riser", "1"] == live(plan)["cabinet_pipe", "1"] == ("1B",)
    openings = {one.opening for one in plan.of_position["1A"]}
    assert openings == {VapourOpening.OUTLET, VapourOpening.CABINET_BRANCH}  # never both ends of the common pipe


def test_a_pipe_of_each_grade_is_closed_where_its_own_hoses_all_lose_recovery() -> None:
    pair = (going("1R", "1", grade="regular"), kept("1P", "1", grade="premium"))
    plan = planned(*pair, dual_vapour_pipes=True, **GROUND)
    assert shared(plan) == {("riser", "1"): 1, ("tank_end", ""): 1}
    (traps,) = plan.live  # where each trap sits is not asked, so none is closed
    assert traps.reason is LiveReason.TRAPS_UNKNOWN
    unknown = planned(*pair, **GROUND)
    assert not shared(unknown)
    assert {one.reason for one in unknown.live} == {LiveReason.PIPES_UNKNOWN}


def test_tanks_that_the_survey_names_decide_which_pipe_serves_a_hose() -> None:
    # one grade in two tanks, each with a pipe: the grade alone would keep both live
    pair = (going("1A", "1", grade="regular", tank="T1"), kept("2A", "2", grade="regular", tank="T2"))
    plan = planned(*pair, dual_vapour_pipes=True, tank_end_reachable=True)
    assert shared(plan) == {("riser", "1"): 1, ("tank_end", ""): 1}
    blended = planned(pair[0], {**pair[1], "tank": "T1 + T2"}, dual_vapour_pipes=True, tank_end_reachable=True)
    assert ("tank_end", "") not in shared(blended)
    half_known = planned(pair[0], {**pair[1], "tank": ""}, dual_vapour_pipes=True, tank_end_reachable=True)
    assert ("tank_end", "") not in shared(half_known)


def test_a_central_unit_runs_on_for_what_still_draws_through_it() -> None:
    two = (going("1A", "1", "vacuum_assist"), kept("2A", "2", "vacuum_assist"))
    plan = planned(*two, central_vacuum=True)
    assert ("central_unit", "") not in shared(plan)
    assert live(plan)["central_unit", ""] == ("2A",)
    balance = planned(two[0], kept("2A", "2"), central_vacuum=True)
    assert ("central_unit", "") in shared(balance)


def test_a_hose_whose_removal_cannot_be_done_keeps_its_paths_live() -> None:
    plan = planned(going("1A", "1"), going("1B", "1"), stuck=("1B",), tank_end_reachable=True)
    assert not shared(plan)
    assert {one.reason for one in plan.live} == {LiveReason.NOT_CONVERTED}
    assert set(plan.of_position) == {"1A"}


@pytest.mark.parametrize("added", ["balance", "none"])
def test_a_position_that_gets_recovery_needs_the_pipe_as_well(added: str) -> None:
    survey = site_of(going("1A", "1"), position("2A", wanted=added, dispenser="2"))
    positions = converted(survey)
    plan = closing_plan(
        (positions[0], dataclasses.replace(positions[1], kinds=(ConversionKind.ADD_RECOVERY,))), survey.conversion
    )
    needed = VapourStatus(added) is not VapourStatus.NONE
    assert any(one.opening is VapourOpening.TANK_END for one in plan.live) is needed
