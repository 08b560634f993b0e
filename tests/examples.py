"""How many examples of a property a test tries: all of them in a run at length, a part of them for a quick answer."""

from __future__ import annotations

from hypothesis import settings

WHOLE, QUICK = 100, 25  # what Hypothesis tries by itself where a test names no number, and what a quick run does
_FEWEST = 10


def up_to(whole: int) -> int:
    """Return how many examples to try of the ``whole`` that a run at length tries."""
    return min(whole, max(_FEWEST, whole * settings().max_examples // WHOLE))
