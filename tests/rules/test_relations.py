"""Relations that hold whatever the figures are."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from rules.invented_parts import LITRE_PER_MINUTE, breakaway, hose, nozzle, plain_set, swivel, whip
from rules.stations import derived, position, site, tables
from spoutline.model.check import CheckId
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Slot
from spoutline.model.survey import Climate, Filler, Outlet
from spoutline.rules.chain.set_view import SetViews
from spoutline.rules.checks.run import checks_for, checks_of
from spoutline.rules.parts.figures import loss_pa, states_for
from spoutline.rules.parts.part_rules import judge_part

ASKED = derived(position())
LENGTHS = st.floats(2.5, 5.0)


def values(hanging_set: HangingSet, *wanted: CheckId) -> dict[CheckId, float]:
    found = {check.id: check.value for check in checks_for(hanging_set, ASKED, tables()) if check.id in wanted}
    assert found.keys() == set(wanted)
    return {check_id: value for check_id, value in found.items() if value is not None}


def test_sets_looked_at_together_are_checked_as_each_by_itself() -> None:
    parts = {"curb_hose": hose(length_m=3.5), "nozzle": nozzle()}
    others = {"curb_hose": hose(length_m=4.5), "nozzle": nozzle(mass_kg=2.0)}
    views = SetViews(ASKED, tables())
    for given_up in (set[str](), {"curb_hose"}, {"nozzle"}, {"curb_hose", "nozzle"}):
        hanging_set = plain_set(**{name: (others if name in given_up else parts)[name] for name in parts})
        assert checks_of(views.of(hanging_set)) == checks_for(hanging_set, ASKED, tables())


@given(LENGTHS, LENGTHS)
def test_more_hose_reaches_further_hangs_lower_and_flows_less(one: float, other: float) -> None:
    falling = (CheckId.GROUND_CLEARANCE_AT_REST, CheckId.GROUND_CLEARANCE_IN_USE, CheckId.FLOW_COLD)
    shorter, longer = (
        values(plain_set(curb_hose=hose(length_m=length)), CheckId.HOSE_REACH, *falling)
        for length in sorted((one, other))
    )
    assert longer[CheckId.HOSE_REACH] >= shorter[CheckId.HOSE_REACH]
    for check_id in falling:
        assert longer[check_id] <= shorter[check_id] + 1e-12


@given(st.floats(0.5, 4.0), st.floats(0.5, 4.0))
def test_a_heavier_nozzle_never_raises_the_service_margin(one: float, other: float) -> None:
    light, heavy = sorted((one, other))
    load = CheckId.BREAKAWAY_SERVICE_LOAD
    margins = [values(plain_set(nozzle=nozzle(mass_kg=mass)), load)[load] for mass in (light, heavy)]
    assert margins[1] <= margins[0]


@given(st.floats(1.0, 60.0), st.floats(1.0, 60.0))
def test_more_flow_always_loses_more(one: float, other: float) -> None:
    low, high = sorted((one, other))
    state = states_for(ASKED).cold
    for part, slot in ((hose(), Slot.CURB_HOSE), (nozzle(), Slot.NOZZLE)):
        losses = [loss_pa(part, slot, ASKED, flow * LITRE_PER_MINUTE, state) for flow in (low, high)]
        assert losses[0] <= losses[1]


@given(st.floats(-29.0, 10.0), st.floats(11.0, 52.0), st.floats(0.0, 8.0))
def test_a_milder_climate_never_bars_a_part(low_c: float, high_c: float, milder: float) -> None:
    for part, slot in ((nozzle(), Slot.NOZZLE), (swivel(), Slot.SWIVEL), (breakaway(), Slot.BREAKAWAY)):
        harsh = derived(position(), site(climate=Climate(low_c=low_c, high_c=high_c)))
        mild = derived(position(), site(climate=Climate(low_c=low_c + milder, high_c=max(high_c - milder, 18.1))))
        if not judge_part(part, slot, harsh, tables()):
            assert not judge_part(part, slot, mild, tables())


@given(st.floats(0.2, 4.0), st.floats(0.2, 4.0), st.floats(-0.5, 2.0))
def test_a_further_filler_never_needs_less_hose(one: float, other: float, height_m: float) -> None:
    near, far = sorted((one, other))
    needed = [
        derived(position(filler=Filler(distance_m=distance, height_m=height_m))).hose_length.minimum or 0.0
        for distance in (near, far)
    ]
    assert needed[0] <= needed[1]


@given(st.floats(0.5, 3.0), st.floats(0.1, 0.6))
def test_whip_rule_and_whip_check_agree(outlet_m: float, length_m: float) -> None:
    asked = derived(position(outlet=Outlet(height_m=outlet_m), filler=Filler(distance_m=1.0, height_m=1.5)))
    part = whip(length_m=length_m)
    broken = [found for found in judge_part(part, Slot.WHIP_HOSE, asked, tables()) if found.rule_id == "whip_length"]
    checks = checks_for(plain_set(whip_hose=part), asked, tables())
    check = next(check for check in checks if check.id is CheckId.WHIP_LENGTH)
    assert bool(broken) is not check.passes or abs(check.margin or 0.0) < 1e-5
