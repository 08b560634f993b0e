"""What a command says of positions on a paper that it wrote: those without a sound set, and those left undecided."""

from __future__ import annotations

import sys
from collections.abc import Iterable
from typing import TYPE_CHECKING

from spoutline.cli.exit_code import ExitCode
from spoutline.cli.voice import said
from spoutline.model.plan import PlanStatus

if TYPE_CHECKING:
    from spoutline.model.plan import SitePlan


def tell_open_of(site_plan: SitePlan) -> ExitCode:
    """Tell of the positions of a plan that lack a sound set, and return the code that says so."""
    return tell_open((plan.position.label, plan.status) for plan in site_plan.positions if not plan.keeps_every_must)


def tell_open(lacking: Iterable[tuple[str, PlanStatus]]) -> ExitCode:
    """Tell of positions that lack a sound set, by what they are called, and return the code that says so.

    Of those that are not decided no more is said than is known: a set may fit there.
    """
    named = tuple(lacking)
    undecided = ", ".join(name for name, status in named if status is PlanStatus.NOT_DECIDED)
    others = ", ".join(name for name, status in named if status is not PlanStatus.NOT_DECIDED)
    if others:
        told = said("Written, but without a set that keeps every must: {positions}", positions=others)
        sys.stderr.write(f"{told}\n")
    if undecided:
        told = said("Written, but it is not decided whether a set fits: {positions}", positions=undecided)
        sys.stderr.write(f"{told}\n")
    return ExitCode.DOES_NOT_FIT if named else ExitCode.FITS
