"""What takes parts out of a place of a set, and what puts the chosen part before the next one."""

from __future__ import annotations

from enum import StrEnum


class Cut(StrEnum):
    """What takes parts out of a place, in the order in which it is asked; each part is counted at the first."""

    LINE = "line"  # a must of the part alone
    NO_SET = "no_set"  # no set with it keeps every must of the whole chain
    NOT_DECIDED = "not_decided"  # it takes too much work to say whether a set with it does
    DEPARTURES = "departures"  # each set with it departs from good practice more often than the chosen one
    OUTMATCHED = "outmatched"  # one with the same ends comes first by practice and price, and no load of it is greater


class Decider(StrEnum):
    """What puts the chosen part before the next one."""

    ALONE = "alone"  # nothing else could take its place
    PRICE = "price"  # the set with the next one costs more
    NUMBER = "number"  # both cost the same; the lower number is taken, so that equal questions get equal sets
    WHOLE = "whole"  # the next one is cheaper here: what was agreed, what hangs there or the whole station decided
