"""Values a calculation cannot use: refused with field, value and range, never clamped."""

from __future__ import annotations

import math
from enum import StrEnum

from spoutline.model.quantity import Dimension


class RangeReason(StrEnum):
    """Why a value lies outside what can be computed."""

    NOT_A_NUMBER = "not_a_number"
    OUTSIDE_LIMITS = "outside_limits"
    OUTSIDE_DATA = "outside_data"  # the liquid data end there
    FROZEN = "frozen"
    CANNOT_REACH = "cannot_reach"
    CONTRADICTS = "contradicts"  # two inputs that cannot both be right
    NO_RESISTANCE = "no_resistance"  # a path without any loss would flow without end


REASON_WORDS = {
    RangeReason.NOT_A_NUMBER: "not a number",
    RangeReason.OUTSIDE_LIMITS: "outside what is possible",
    RangeReason.OUTSIDE_DATA: "outside the data",
    RangeReason.FROZEN: "frozen: below the freezing point",
    RangeReason.CANNOT_REACH: "cannot reach",
    RangeReason.CONTRADICTS: "contradicts another input",
    RangeReason.NO_RESISTANCE: "a path needs some loss",
}


class OutOfRange(ValueError):
    """An input lies outside the range for which the calculation holds.

    ``low`` and ``high`` are in the unit of ``dimension``; None leaves a side open. ``missing`` is the distance to the
    nearer bound (for ``CANNOT_REACH`` the missing length).
    """

    def __init__(
        self,
        *,
        field: str,
        value: float,
        low: float | None,
        high: float | None,
        dimension: Dimension,
        reason: RangeReason = RangeReason.OUTSIDE_LIMITS,
    ) -> None:
        self.field = field
        self.value = value
        self.low = low
        self.high = high
        self.dimension = dimension
        self.reason = reason
        super().__init__(f"{field} = {value:g}: {REASON_WORDS[reason]}; wanted {_window(low, high)} ({dimension})")

    @property
    def missing(self) -> float:
        """How far the value lies outside, in the unit of ``dimension``; 0 where no bound is broken."""
        if self.low is not None and self.value < self.low:
            return self.low - self.value
        if self.high is not None and self.value > self.high:
            return self.value - self.high
        return 0.0


def _window(low: float | None, high: float | None) -> str:
    if low is not None and high is not None:
        return f"{low:g} to {high:g}"
    if low is not None:
        return f"{low:g} or more"
    return f"{high:g} or less" if high is not None else "a finite number"


def require_finite(field: str, value: float, dimension: Dimension) -> None:
    """Refuse infinities and values that are not numbers.

    Parameters
    ----------
    field : str
        Name of the argument.
    value : float
        Its value [unit of ``dimension``].
    dimension : Dimension
        What it measures.

    Raises
    ------
    OutOfRange
        The value is not finite.

    Source: IEEE 754 (what a number is); refusing rather than clamping is this program's rule.
    """
    if not math.isfinite(value):
        raise OutOfRange(
            field=field, value=value, low=None, high=None, dimension=dimension, reason=RangeReason.NOT_A_NUMBER
        )


def require_between(
    field: str,
    value: float,
    dimension: Dimension,
    *,
    low: float | None = None,
    high: float | None = None,
    reason: RangeReason = RangeReason.OUTSIDE_LIMITS,
) -> None:
    """Refuse a value outside the closed interval from ``low`` to ``high``.

    Parameters
    ----------
    field : str
        Name of the argument.
    value : float
        Its value [unit of ``dimension``].
    dimension : Dimension
        What it measures.
    low : float or None
        Least value, None for no bound [unit of ``dimension``].
    high : float or None
        Greatest value, None for no bound [unit of ``dimension``].
    reason : RangeReason
        Why values outside are refused.

    Raises
    ------
    OutOfRange
        The value is not finite or lies outside.

    Source: the bounds are the caller's; refusing rather than clamping is this program's rule.
    """
    require_finite(field, value, dimension)
    if (low is not None and value < low) or (high is not None and value > high):
        raise OutOfRange(field=field, value=value, low=low, high=high, dimension=dimension, reason=reason)


def require_positive(field: str, value: float, dimension: Dimension) -> None:
    """Refuse zero, negative values and values that are not numbers.

    Parameters
    ----------
    field : str
        Name of the argument.
    value : float
        Its value [unit of ``dimension``].
    dimension : Dimension
        What it measures.

    Raises
    ------
    OutOfRange
        The value is not finite or not above zero.

    Source: lengths, bores, densities and times of real things are above zero.
    """
    require_finite(field, value, dimension)
    if value <= 0.0:
        raise OutOfRange(field=field, value=value, low=0.0, high=None, dimension=dimension)
