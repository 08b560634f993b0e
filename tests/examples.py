"""How many examples of a property a test tries: all of them in a run at length, a part of them for a quick answer."""

from __future__ import annotations

from collections.abc import Iterable

import pytest
from hypothesis import settings

WHOLE, QUICK = 100, 25  # what Hypothesis tries by itself where a test names no number, and what a quick run does
_FEWEST = 10


def up_to(whole: int, *, fewest: int = _FEWEST) -> int:
    """Return how many examples to try of the ``whole`` that a run at length tries, but ``fewest`` in any run."""
    return min(whole, max(fewest, whole * settings().max_examples // WHOLE))


def stations(*large: str) -> list[object]:
    """Return the names of the demonstration stations as parameters; those named here only for a run at length."""
    from spoutline.bootstrap.demos import demo_names

    return [pytest.param(name, marks=pytest.mark.at_length) if name in large else name for name in demo_names()]


def seeds(whole: int) -> list[object]:
    """Return the seeds of ``whole`` drawn cases as parameters: a quarter in any run, the others in a run at length."""
    return [_seeded(whole, seed) for seed in range(whole)]


def each_with_seeds(names: Iterable[str], whole: int) -> list[object]:
    """Return each name with each seed as parameters: a quarter of the seeds in any run, the others at length."""
    return [_seeded(whole, seed, name) for name in names for seed in range(whole)]


def _seeded(whole: int, seed: int, *before: str) -> object:
    in_any_run = seed < -(-whole * QUICK // WHOLE)  # rounded up
    return pytest.param(*before, seed, marks=() if in_any_run else pytest.mark.at_length)
