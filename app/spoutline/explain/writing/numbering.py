"""Numbers as they are referred to: consecutive ones as a range."""

from __future__ import annotations

from collections.abc import Iterable


def number_ranges(numbers: Iterable[int], sign: str = "") -> str:
    """Return ``numbers`` in order, each behind ``sign``, three or more in a row as a range: ``3, 7–9``."""
    runs: list[list[int]] = []
    for number in sorted(set(numbers)):
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(
        f"{sign}{run[0]}–{run[-1]}" if len(run) > 2 else ", ".join(f"{sign}{number}" for number in run) for run in runs
    )
