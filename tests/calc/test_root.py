"""Roots against scipy's own, digit by digit where the method is the same, and where there is none."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brenth, brentq

from spoutline.calc.root import bracketed_root, quadratic_root

FUNCTIONS: dict[str, Callable[[float, float], float]] = {
    "line": lambda x, at: x - at,
    "cube": lambda x, at: (x - at) ** 3 + (x - at),
    "exponential": lambda x, at: math.exp(min(x - at, 50.0)) - 1.0,
    "step": lambda x, at: 1.0 if x > at else -1.0,
}


@given(st.sampled_from(sorted(FUNCTIONS)), st.floats(-9.0, 9.0), st.floats(0.01, 9.0), st.floats(0.01, 9.0))
def test_roots_are_those_of_scipy(name: str, at: float, below: float, above: float) -> None:
    low, high = at - below, at + above

    def function(x: float) -> float:
        return FUNCTIONS[name](x, at)

    xtol = 1e-9 * (high - low)
    for one, other in ((low, high), (high, low)):
        found = quadratic_root(function, low=one, high=other, tolerance=xtol, relative=1e-12)
        assert found == brentq(function, one, other, xtol=xtol, rtol=1e-12)
        assert abs(found - at) <= 2.0 * xtol + 1e-11 * abs(at)
    assert bracketed_root(function, low=low, high=high, tolerance=xtol) == pytest.approx(
        brenth(function, low, high, xtol=xtol), abs=2.0 * xtol + 1e-11 * abs(at)
    )


@pytest.mark.parametrize("at", [5e-324, -5e-324, 1e-200])
def test_a_value_next_to_nothing_is_a_root(at: float) -> None:
    """By hand: the function is ``at`` off zero in the middle, far nearer than the root must come."""

    def function(x: float) -> float:
        return FUNCTIONS["cube"](x, at)

    for low, high in ((at - 1.0, at + 1.0), (at + 1.0, at - 1.0)):
        found = quadratic_root(function, low=low, high=high, tolerance=2e-9, relative=1e-12)
        assert found == pytest.approx(at, abs=4e-9)
        assert bracketed_root(function, low=low, high=high, tolerance=2e-9) == pytest.approx(at, abs=4e-9)


def test_a_function_that_keeps_its_sign_is_refused() -> None:
    with pytest.raises(ValueError, match="does not change its sign"):
        bracketed_root(lambda x: x * x + 1.0, low=-1.0, high=2.0)
    with pytest.raises(ValueError, match="does not change its sign"):
        quadratic_root(lambda x: x * x + 1.0, low=-1.0, high=2.0, tolerance=1e-9, relative=1e-12)
