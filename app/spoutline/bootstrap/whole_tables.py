"""How a table is taken into a draft whole, or not at all: a draft that faults would have changed stays as it was."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager, suppress
from typing import TYPE_CHECKING, Protocol, TypeVar

if TYPE_CHECKING:
    from spoutline.catalogue.draft import DraftDesk
    from spoutline.planning.table_intake.intake import IntakeReport


class Reported(Protocol):
    """What came of a table, with what is told of its cells."""

    @property
    def report(self) -> IntakeReport:
        """The report."""
        ...


_Result = TypeVar("_Result", bound=Reported)


class _NotTakenIn(Exception):
    """Takes back what a table with faults would have done."""


def taken_whole(draft: AbstractContextManager[DraftDesk], take_in: Callable[[DraftDesk], _Result]) -> _Result:
    """Return what came of a table, which the draft keeps where no cell of it is wrong or open."""
    with suppress(_NotTakenIn), draft as desk:
        result = take_in(desk)
        if not result.report.is_sound:
            raise _NotTakenIn
    return result
