"""Plans made once per run of the tests, for tests in which the plan is the means and not the matter.

Planning is a function of position, site, rule tables and catalogue. Tests of window, papers and command line ask for
the same few stations hundreds of times; here the second question gets the first answer. Tests of planning itself, of
its order and its repeatability never use this: those in ``planning``, ``sweep``, ``oracle``, ``rules``, ``search``.
"""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import select

from spoutline.catalogue.store import CatalogueStore
from spoutline.catalogue.tables import EditionRow
from spoutline.model.faults import Cancelled
from spoutline.model.plan import PositionPlan
from spoutline.model.survey import Position, Site
from spoutline.planning.conversion import convert_position
from spoutline.planning.sets import plan_position as module
from spoutline.planning.sets import plan_site, why_not
from spoutline.planning.sets.context import PlanningContext


class PlanMemo:
    """Plans by what was asked; kept for the whole run, used by a test only after ``serve``."""

    def __init__(self) -> None:
        self._plans: dict[tuple[object, ...], PositionPlan] = {}

    def serve(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Answer every ``plan_position`` of the program from here until ``monkeypatch`` is undone."""
        really = module.plan_position

        def plan_position(position: Position, site: Site, context: PlanningContext, **options: Any) -> PositionPlan:
            if not isinstance(context.parts, CatalogueStore):
                return really(position, site, context, **options)
            asked = (position, site, context.tables, _content(context.parts), tuple(options.items()))
            if asked not in self._plans:
                self._plans[asked] = really(position, site, context, **options)
            elif context.listener is not None and context.listener.should_stop():
                raise Cancelled
            return self._plans[asked]

        for user in (module, plan_site, why_not, convert_position):
            monkeypatch.setattr(user, "plan_position", plan_position)


def _content(store: CatalogueStore) -> tuple[object, ...]:
    """Return what tells one compiled catalogue from another: the fingerprint of the text it was compiled from."""
    with store._engine.connect() as connection:
        return tuple(connection.execute(select(EditionRow.edition, EditionRow.fingerprint)).one())
