"""The sets that a conversion follows where it goes no way of its own."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.plan import SitePlan


@frozen(kw_only=True)
class HandedIn:
    """The sets that a conversion follows; None where it goes a way of its own. ``notes`` tell what was not used."""

    site_plan: SitePlan | None
    notes: tuple[str, ...] = ()
