"""The best set around a part that is held in its place."""

from __future__ import annotations

from spoutline.model.part_ref import PartRef
from spoutline.model.plan import JudgedSet
from spoutline.planning.sets.choice import ALL_LINES
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.set_query import Held
from spoutline.planning.sets.staying import Choosing
from spoutline.search.effort import Exhausted


class HeldSearch:
    """Searches for one position, a part held in each; all of them draw on one judged pool."""

    def __init__(self, choosing: Choosing, context: PlanningContext) -> None:
        self._choosing, self._context = choosing, context
        self.turned_down: dict[PartRef, JudgedSet] = {}  # sets that a full check alone forbade, by the part held

    def best_with(self, held: Held) -> JudgedSet | None:
        """Return the best set that holds a part, of true parts; None where there is none.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If it takes too much work to say which set that is, or that there is none.
        """
        chooser = self._choosing.chooser
        try:
            if not chooser.search.has_set(chooser.query(ALL_LINES, held), chooser.listener):
                return None  # none even with every should given up: one search instead of one for each group of shoulds
        except Exhausted:
            chooser.spare_work()
            raise
        choice = chooser.choose(held)
        if choice is not None and choice.floor is not None:
            raise Exhausted
        if choice is None:
            if chooser.last_refused is not None:
                self.turned_down[held.part] = chooser.last_refused
            return None
        return self._choosing.true_judged(choice.judged, self._context)
