"""The last plan of the whole site that a page or paper asked for, so that the next one need not plan it again."""

from __future__ import annotations

import threading
from collections.abc import Callable

from spoutline.frozen import frozen
from spoutline.model.plan import SitePlan
from spoutline.model.survey import Survey


@frozen
class _Kept:
    survey: Survey
    made_for: object
    has_alternatives: bool
    site_plan: SitePlan


class WholePlan:
    """Keeps one plan of a whole site; asked from any thread, since papers are made on several.

    A big station takes minutes to plan, and a person turns from its parts list to the installer's pack and back.
    """

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._kept: _Kept | None = None

    def forget(self) -> None:
        """Have it made anew: rules or catalog have changed, or a person asks for it."""
        with self._lock:
            self._kept = None

    def of(
        self, survey: Survey, made_for: object, make: Callable[[], SitePlan], *, with_alternatives: bool
    ) -> SitePlan:
        """Return what is kept of this very survey and of what else it was ``made_for``, or make and keep it.

        One with alternatives serves whoever needs none.
        """
        with self._lock:
            kept = self._kept
        is_of_this = kept is not None and kept.survey is survey and kept.made_for == made_for
        if kept is not None and is_of_this and (kept.has_alternatives or not with_alternatives):
            return kept.site_plan
        made = _Kept(survey, made_for, with_alternatives, make())
        with self._lock:
            if self._kept is kept:  # else it was forgotten, or another one made, meanwhile
                self._kept = made
        return made.site_plan
