"""What tells parts of one kind apart in their names, as a list of words of the phrasebook."""

from __future__ import annotations

from enum import StrEnum


class PartTerm(StrEnum):
    """What tells parts of one kind apart, where no enumeration of the model names it."""

    SINGLE_USE = "single_use"
    RECONNECTABLE = "reconnectable"
    WITH_LATCH = "with_latch"
    WITHOUT_LATCH = "without_latch"
    LOW_SPILLAGE = "low_spillage"
    LOW_PERMEATION = "low_permeation"
    MULTI_PLANE = "multi_plane"
