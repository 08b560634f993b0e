"""Reasons for which no requirement can be derived, gathered before one refusal is made of them."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Finding
from spoutline.model.requirement import Refusal, RefusalStatus, WayOut
from spoutline.rules.verdicts import Derivation

_WEIGHT = (
    RefusalStatus.NO_LISTING_CLASS,
    RefusalStatus.CONTRADICTION,
    RefusalStatus.NOT_ALLOWED,
    RefusalStatus.NO_SET,
    RefusalStatus.OUT_OF_RANGE,
)


@frozen
class Refused:
    """One reason: the finding that says it, what kind it is, what a person can do."""

    status: RefusalStatus
    finding: Finding
    ways_out: tuple[WayOut, ...]


def refusal_of(reasons: tuple[Refused, ...], notes: Derivation) -> Refusal:
    """Return one refusal that carries every reason; its status is the weightiest of them.

    Parameters: ``reasons``, at least one; ``notes``, the lines derived so far.
    """
    status = min((reason.status for reason in reasons), key=_WEIGHT.index)
    ways = dict.fromkeys(way for reason in reasons for way in reason.ways_out)
    return Refusal(
        status=status,
        findings=tuple(reason.finding for reason in reasons),
        ways_out=tuple(ways),
        lines=tuple(notes.lines),
    )
