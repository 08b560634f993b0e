"""The root of a function between two bounds: Brent's method of the fluids library, typed."""

from __future__ import annotations

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
    from fluids.numerics import brenth

    return float(brenth(function, low, high, xtol=tolerance))  # type: ignore[no-untyped-call]
