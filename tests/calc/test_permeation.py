"""Permeation: doubling per 10 K, proportional to surface."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.calc.permeation import PermeationLoss, permeation_applies, permeation_loss
from spoutline.calc.ranges import OutOfRange, RangeReason
from spoutline.model.liquid import LiquidFamily

TEN_G_M2_DAY = 10e-3 / 86400.0


def _loss(temperature_c: float, *, length_m: float = 3.66, rate: float = TEN_G_M2_DAY) -> PermeationLoss:
    return permeation_loss(rate_kg_m2_s=rate, bore_m=0.01905, length_m=length_m, temperature_c=temperature_c)


@given(st.floats(0, 35))
def test_ten_kelvin_double_the_loss(temperature_c: float) -> None:
    # EPA on-road model, exponent 0.0385 per F (memory): a factor of two per 18 F
    warm, cold = _loss(temperature_c + 10).loss_kg_s, _loss(temperature_c).loss_kg_s
    assert warm == pytest.approx(2 * cold, rel=1e-12)


@given(st.floats(0, 45), st.floats(0.1, 20))
def test_twice_the_hose_loses_twice(temperature_c: float, length_m: float) -> None:
    once, twice = (_loss(temperature_c, length_m=factor * length_m).loss_kg_s for factor in (1, 2))
    assert twice == pytest.approx(2 * once, rel=1e-12)


def test_year_at_test_temperature_by_hand() -> None:
    # 0.2190 m2 x 10 g/(m2 day) x 365 days = 799.5 g
    assert _loss(38.0).yearly_loss_kg == pytest.approx(0.7995, abs=1e-4)


@pytest.mark.parametrize("temperature_c", [-0.1, 45.1])
def test_temperature_outside_the_rule_is_refused(temperature_c: float) -> None:
    with pytest.raises(OutOfRange) as refused:
        _loss(temperature_c)
    assert (refused.value.field, refused.value.reason) == ("temperature_c", RangeReason.OUTSIDE_DATA)


def test_negative_rate_is_refused() -> None:
    with pytest.raises(OutOfRange, match="rate_kg_m2_s"):
        _loss(20.0, rate=-1e-9)


def test_only_gasoline_permeates() -> None:
    assert [family for family in LiquidFamily if permeation_applies(family)] == [LiquidFamily.GASOLINE]
