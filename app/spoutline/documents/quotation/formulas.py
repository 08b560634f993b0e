"""Spreadsheet formulas that reckon as the quotation does; every rounding is spelled out."""

from __future__ import annotations

from decimal import Decimal

from spoutline.model.quotation_terms import RoundingMode

# a quotient of binary numbers is cleaned of its last digits before it is rounded, so that a half stays a half
_CLEAN = 6


def rounded_formula(formula: str, step: Decimal, mode: RoundingMode) -> str:
    """Return the formula whose value is ``formula`` at a multiple of ``step``."""
    steps = f"ROUND(({formula})/{step},{_CLEAN})"
    match mode:
        case RoundingMode.HALF_UP:
            whole = f"ROUND({steps},0)"
        case RoundingMode.UP:
            whole = f"ROUNDUP({steps},0)"
        case RoundingMode.DOWN:
            whole = f"ROUNDDOWN({steps},0)"
        case RoundingMode.HALF_EVEN:
            whole = f"IF(ROUND(MOD({steps},1),{_CLEAN})=0.5,2*ROUND({steps}/2,0),ROUND({steps},0))"
    return f"{whole}*{step}"
