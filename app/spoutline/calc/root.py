"""The root of a function between two bounds: Brent's method of the fluids library, typed."""

from __future__ import annotations

import math
import sys
from collections.abc import Callable


def bracketed_root(function: Callable[[float], float], *, low: float, high: float, tolerance: float = 1e-12) -> float:
    """Return where a continuous function that changes sign between two bounds is zero.

    Parameters
    ----------
    function : callable
        Continuous function [any unit] of one float.
    low : float
        Lower bound [unit of the root].
    high : float
        Upper bound [unit of the root].
    tolerance : float
        How near the root must come [unit of the root].

    Returns
    -------
    float
        The root [unit of ``low``].

    Raises
    ------
    ValueError
        The function has the same sign at both bounds.

    Source: Brent 1973, hyperbolic variant, as in the fluids library.
    """
    return _found(function, low, high, xtol=tolerance)


def quadratic_root(
    function: Callable[[float], float], *, low: float, high: float, tolerance: float, relative: float
) -> float:
    """Return where a function that changes sign between two bounds is zero, or jumps past it.

    Parameters
    ----------
    function : callable
        Function [any unit] of one float.
    low : float
        One bound [unit of the root].
    high : float
        The other [unit of the root].
    tolerance : float
        How near the root must come [unit of the root], beside the next.
    relative : float
        How near it must come, of the root itself [-].

    Returns
    -------
    float
        The root [unit of ``low``].

    Raises
    ------
    ValueError
        The function has the same sign at both bounds.

    Source: Brent 1973, inverse quadratic interpolation, as in the fluids library.
    """
    return _found(function, low, high, xtol=tolerance, rtol=relative, q=True)


def _found(function: Callable[[float], float], low: float, high: float, **options: float) -> float:
    from fluids.numerics import NotBoundedError, brenth

    # The library compares signs by a product, which of two values below this is nothing: it runs to the wrong bound.
    as_zero = math.sqrt(sys.float_info.min)

    def with_a_sign(at: float) -> float:
        value = function(at)
        return 0.0 if abs(value) < as_zero else value

    try:
        return float(brenth(with_a_sign, low, high, **options))  # type: ignore[no-untyped-call]
    except NotBoundedError as fault:
        raise ValueError(f"the function does not change its sign between {low:g} and {high:g}") from fault
