"""Which step may follow which in the life of a quotation."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quotation_status import QuotationStatus as Status
from spoutline.model.worded import Worded

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


def check_step(now: Status, wanted: Status, *, changes_order: bool = False) -> None:
    """Raise ``InputFault`` where the step is none that a quotation takes.

    With ``changes_order`` an order may become a draft too: the next revision, beside the one that was ordered.
    """
    if changes_order and (now, wanted) == (Status.ACCEPTED, Status.DRAFT):
        return
    if not may_become(now, wanted):
        steps = ", ".join(sorted(_MAY_BECOME[now])) or "nothing more: the order stands, changes need a new quotation"
        raise InputFault(
            (
                InputProblem(
                    "",
                    "status",
                    Worded("from {now} to {wanted}", now=now, wanted=wanted),
                    Worded("from {now} it may become {steps}", now=now, steps=steps),
                ),
            )
        )


def standing_order(steps: Iterable[tuple[int, Status]]) -> int | None:
    """Return the revision that was ordered last, whatever became of later ones; None where none was.

    ``steps`` are the revision and the status of each step in the life of a quotation, oldest first.
    """
    return next((revision for revision, status in reversed(tuple(steps)) if status is Status.ACCEPTED), None)


def ordered_option(titles: Sequence[str], answer: Status, named: str) -> str:
    """Return the title of the option that an answer orders; empty where nothing is ordered or there is no choice.

    Arguments: the titles of a quotation's options, the customer's answer, and the title that was named, if any. Raise
    ``InputFault`` where an order out of several names none of them, or where a title is named that is not ordered.
    """
    if answer is not Status.ACCEPTED:
        fitting, wanted = [""], "only an order names an option"
    elif len(titles) == 1:
        fitting, wanted = ["", *titles], Worded("the only option is {titles}", titles=titles[0])
    else:
        fitting, wanted = list(titles), Worded("name the option that is ordered: {titles}", titles=", ".join(titles))
    if named not in fitting:
        raise InputFault((InputProblem("", "option", named or "nothing", wanted),))
    return named if len(titles) > 1 else ""
