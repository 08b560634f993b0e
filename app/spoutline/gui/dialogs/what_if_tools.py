"""What looking at other answers works with."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.jobs import Jobs, Ticket

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.plan import SitePlan


class TodaysSets:
    """Makes the sets of today when they are first asked for, off the window's thread, and keeps them."""

    def __init__(self, make: Callable[[Ticket], SitePlan]) -> None:
        self._make = make
        self._known: SitePlan | None = None

    def __call__(self, ticket: Ticket) -> SitePlan:
        """Return the sets; raise ``Cancelled`` where ``ticket`` asks to stop."""
        if self._known is None:
            self._known = self._make(ticket)
        return self._known


@frozen
class WhatIfTools:
    """What the dialog works with; ``today`` gives the sets of today, off the window's thread."""

    workbench: Workbench
    jobs: Jobs
    story: Story
    today: TodaysSets
