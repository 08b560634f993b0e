"""The electrical path and how fast charge leaves."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.calc.bond import (
    PartResistance,
    relaxation_time,
    residence_time,
    series_resistance,
)
from spoutline.calc.ranges import OutOfRange

OHMS = st.lists(st.one_of(st.none(), st.floats(0, 1e6)), max_size=7)


@given(OHMS, st.integers(0, 10), st.floats(0, 5))
def test_series_is_the_sum_or_cannot_be_shown(ohms: list[float | None], joints: int, allowance: float) -> None:
    parts = tuple(PartResistance(f"part {number}", ohm) for number, ohm in enumerate(ohms))
    path = series_resistance(parts, joints=joints, joint_allowance_ohm=allowance)
    known = math.fsum(ohm for ohm in ohms if ohm is not None) + joints * allowance
    assert path.known_ohm == pytest.approx(known)
    if None in ohms:
        assert path.total_ohm is None
        assert len(path.unknown) == ohms.count(None)
    else:
        assert path.total_ohm == path.known_ohm


def test_unknown_part_is_named_and_never_counted_as_zero() -> None:
    parts = (PartResistance("whip hose", 15e3), PartResistance("breakaway", None), PartResistance("nozzle", 10.0))
    path = series_resistance(parts, joints=4, joint_allowance_ohm=1.0)
    assert path.unknown == ("breakaway",)
    assert path.lines[0].result.name == "R at least"
    assert "cannot be shown" in path.lines[0].note


def test_liquid_stays_in_a_car_hose_for_under_two_seconds() -> None:
    # 3.66 m of 3/4 in holds 1.04 L; at 10 gpm (0.6309 L/s) 1.65 s, by hand.
    stay = residence_time(bore_m=0.01905, length_m=3.66, flow_m3_s=6.30901964e-4)
    assert stay.time_s == pytest.approx(1.65, abs=0.005)


def test_dry_diesel_carries_its_charge_to_the_nozzle() -> None:
    # Low-sulphur diesel at 2 pS/m, permittivity 2.1: about 9 s, more than its stay in the hose.
    relaxation = relaxation_time(relative_permittivity=2.1, conductivity_s_m=2e-12)
    assert relaxation.time_s == pytest.approx(9.3, abs=0.05)


@pytest.mark.parametrize(
    ("field", "call"),
    [
        ("resistance_ohm", lambda: series_resistance((PartResistance("x", -1.0),), joints=0, joint_allowance_ohm=0)),
        ("joints", lambda: series_resistance((), joints=-1, joint_allowance_ohm=0.0)),
        ("joint_allowance_ohm", lambda: series_resistance((), joints=1, joint_allowance_ohm=-1.0)),
        ("relative_permittivity", lambda: relaxation_time(relative_permittivity=0.9, conductivity_s_m=1e-12)),
        ("conductivity_s_m", lambda: relaxation_time(relative_permittivity=2.0, conductivity_s_m=0.0)),
        ("flow_m3_s", lambda: residence_time(bore_m=0.02, length_m=1.0, flow_m3_s=0.0)),
    ],
)
def test_impossible_circuits_are_refused_by_name(field: str, call: object) -> None:
    assert callable(call)
    with pytest.raises(OutOfRange) as refused:
        call()
    assert refused.value.field == field
