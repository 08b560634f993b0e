"""Which step may follow which in the life of a quotation."""

from __future__ import annotations

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quotation import QuotationStatus as Status

_MAY_BECOME: dict[Status, frozenset[Status]] = {
    Status.DRAFT: frozenset({Status.DRAFT, Status.ISSUED}),
    Status.ISSUED: frozenset({Status.ACCEPTED, Status.DECLINED, Status.EXPIRED, Status.DRAFT}),
    Status.EXPIRED: frozenset({Status.DRAFT}),
    Status.DECLINED: frozenset({Status.DRAFT}),
    Status.ACCEPTED: frozenset(),
}
OPEN = frozenset({Status.DRAFT, Status.ISSUED})


def may_become(now: Status, wanted: Status) -> bool:
    """Say whether a quotation may go from ``now`` to ``wanted``; back to draft opens a new revision."""
    return wanted in _MAY_BECOME[now]


def check_step(now: Status, wanted: Status) -> None:
    """Raise ``InputFault`` where the step is none that a quotation takes."""
    if not may_become(now, wanted):
        steps = ", ".join(sorted(_MAY_BECOME[now])) or "nothing more: the order stands, changes need a new quotation"
        raise InputFault((InputProblem("", "status", f"from {now} to {wanted}", f"from {now} it may become {steps}"),))
