"""Plans made once per run of the tests, for tests in which the plan is the means and not the matter.

Planning is a function of position, site, rule tables and catalogue. Tests of window, papers and command line ask for
the same few stations hundreds of times; here the second question gets the first answer. Tests of the order and the
repeatability of planning never use this, nor do those in ``oracle``, ``rules`` and ``search``.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import pytest

from spoutline.catalogue.store import CatalogueStore
from spoutline.documents.content.blocks import Document
from spoutline.documents.pdf import render
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.faults import Cancelled
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import PositionPlan
from spoutline.model.position_conversion import PositionConversion
from spoutline.model.removal_standing import RemovalStanding, Standing
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.conversion import convert_position, convert_site
from spoutline.planning.conversion.convert_position import ConversionContext
from spoutline.planning.conversion.memory import memory_key
from spoutline.planning.protocols import PartStore
from spoutline.planning.refit import station
from spoutline.planning.refit.part_stores import OfferedParts
from spoutline.planning.sets import plan_position as module
from spoutline.planning.sets import plan_site, why_not
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.relabel import relabelled, same_question

_CHOOSERS = 64  # plans kept with what chose them, which is large


class PlanMemo:
    """Plans by what was asked; kept for the whole run, used by a test only after ``serve``."""

    def __init__(self) -> None:
        self._plans: dict[tuple[object, ...], PositionPlan] = {}
        self._planned: OrderedDict[tuple[object, ...], module.PlannedPosition] = OrderedDict()
        self._conversions: dict[tuple[object, ...], PositionConversion] = {}
        self._papers: dict[Document, bytes] = {}

    def serve(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Answer what the program asks of planning from here until ``monkeypatch`` is undone."""
        self._serve_plans(monkeypatch)
        self._serve_refits(monkeypatch)
        self._serve_conversions(monkeypatch)
        self._serve_papers(monkeypatch)

    def _serve_plans(self, monkeypatch: pytest.MonkeyPatch) -> None:
        really = module.plan_position

        def plan_position(position: Position, site: Site, context: PlanningContext, **options: Any) -> PositionPlan:
            if not isinstance(context.parts, CatalogueStore):
                return really(position, site, context, **options)
            answers = (context.answers, context.steps)
            asked = (position, site, context.tables, answers, _content(context.parts), tuple(options.items()))
            if asked not in self._plans:
                self._plans[asked] = really(position, site, context, **options)
            _may_go_on(context)
            return self._plans[asked]

        for user in (module, plan_site, why_not, convert_position):
            monkeypatch.setattr(user, "plan_position", plan_position)

    def _serve_refits(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Plan the same position once for all quotations, whatever their numbers and dates, at the same prices."""
        really = station.planned_position

        def planned_position(position: Position, site: Site, context: PlanningContext) -> module.PlannedPosition:
            if not isinstance(context.parts, CatalogueStore | OfferedParts):
                return really(position, site, context)
            answers = (context.answers, context.steps)
            asked = (same_question(position), site, context.tables, answers, _content(context.parts))
            planned = self._planned.pop(asked, None)
            if planned is None:
                planned = really(position, site, context)
            elif planned.chooser is not None:
                planned.chooser.listener = context.listener  # who asks now may stop what follows, not who asked first
            self._planned[asked] = planned
            if len(self._planned) > _CHOOSERS:
                self._planned.popitem(last=False)
            _may_go_on(context)
            return replace(planned, plan=relabelled(planned.plan, position))

        monkeypatch.setattr(station, "planned_position", planned_position)

    def _serve_conversions(self, monkeypatch: pytest.MonkeyPatch) -> None:
        really = convert_position.convert_position

        def convert(
            position: Position,
            survey: Survey,
            standing: RemovalStanding,
            known: Mapping[str, Part],
            context: ConversionContext,
            *,
            shown: PositionPlan | None = None,
        ) -> PositionConversion:
            planning = context.planning
            if shown is not None or not isinstance(planning.parts, CatalogueStore):
                return really(position, survey, standing, known, context, shown=shown)
            key = memory_key(position, survey, forbidden=standing.standing is Standing.NOT_ALLOWED)
            asked = (key, position, survey.site, planning.tables, context.steps, _content(planning.parts))
            if asked not in self._conversions:
                self._conversions[asked] = really(position, survey, standing, known, context)
            _may_go_on(planning)
            return self._conversions[asked]

        monkeypatch.setattr(convert_site, "convert_position", convert)

    def _serve_papers(self, monkeypatch: pytest.MonkeyPatch) -> None:
        really = render.pdf_bytes

        def pdf_bytes(document: Document) -> bytes:
            if document not in self._papers:
                self._papers[document] = really(document)
            return self._papers[document]

        monkeypatch.setattr(render, "pdf_bytes", pdf_bytes)


def _may_go_on(context: PlanningContext) -> None:
    """Stop where the search would have been stopped."""
    if context.listener is not None and context.listener.should_stop():
        raise Cancelled


def _content(store: PartStore) -> tuple[object, ...]:
    """Return what tells the parts and prices of one store from another.

    Of an edition those are its name and the fingerprint of its parts; an offer draws on some of them, at prices of its
    own.
    """
    if isinstance(store, OfferedParts):
        within = store._store
        wanted = [CandidateFilter(kind=kind) for kind in PartKind]
        refs = [part.ref for one in wanted for part in within.candidates(one)]
        offered = frozenset(part.ref for one in wanted for part in store.candidates(one))
        return (_content(within), offered, tuple((part.ref, part.prices) for part in store.parts(refs)))
    assert isinstance(store, CatalogueStore)
    edition = store.edition()
    return edition.ref, edition.title, edition.fingerprint
