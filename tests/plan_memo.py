"""Plans made once per run of the tests, for tests in which the plan is the means and not the matter.

Planning is a function of position, site, rule tables and catalogue. Tests of window, papers and command line ask for
the same few stations hundreds of times; here the second question gets the first answer. Tests of the order and the
repeatability of planning never use this, nor do those in ``oracle``, ``rules`` and ``search``.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any, TypeGuard

import pytest

from spoutline.catalogue.plain_edition import PlainEdition
from spoutline.catalogue.store import CatalogueStore
from spoutline.documents.content.blocks import Document
from spoutline.documents.pdf import render
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.position_conversion import PositionConversion
from spoutline.model.pricing import PriceList
from spoutline.model.quotation_terms import Heading, OptionTerms
from spoutline.model.refit import RefitPlan
from spoutline.model.removal_standing import RemovalStanding, Standing
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.conversion import convert_position, convert_site
from spoutline.planning.conversion.convert_position import ConversionContext
from spoutline.planning.conversion.memory import QuestionKeys
from spoutline.planning.protocols import Progress
from spoutline.planning.refit import quote as quoting
from spoutline.planning.refit import station
from spoutline.planning.refit.part_stores import OfferedPrices
from spoutline.planning.refit.quote_sources import QuoteSources
from spoutline.planning.sets import plan_position as module
from spoutline.planning.sets import plan_site, why_not
from spoutline.planning.sets.alternatives import kinds_looked_for
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.relabel import relabelled, same_question, same_site

_CHOOSERS = 64  # plans kept with what chose them, which is large


class PlanMemo:
    """Plans by what was asked; kept for the whole run, used by a test only after ``serve``."""

    def __init__(self) -> None:
        self._plans: dict[tuple[object, ...], PositionPlan] = {}
        self._planned: OrderedDict[tuple[object, ...], module.PlannedPosition] = OrderedDict()
        self._refits: dict[tuple[object, ...], RefitPlan] = {}
        self._lists: dict[int, PriceList] = {}
        self._conversions: dict[tuple[object, ...], PositionConversion] = {}
        self._papers: dict[Document, bytes] = {}
        self._seen: dict[int, object] = {}

    def serve(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Answer what the program asks of planning from here until ``monkeypatch`` is undone."""
        self._serve_plans(monkeypatch)
        self._serve_refits(monkeypatch)
        self._serve_conversions(monkeypatch)
        self._serve_papers(monkeypatch)

    def _serve_plans(self, monkeypatch: pytest.MonkeyPatch) -> None:
        really = module.plan_position

        def plan_position(position: Position, site: Site, context: PlanningContext, **options: Any) -> PositionPlan:
            if not _is_published(context.parts):
                return really(position, site, context, **options)
            answers = (context.answers, context.steps)
            question = (same_question(position), same_site(site))
            others = options.pop("with_alternatives", True)
            key = (*question, self._tables_of(context.tables), answers, _content(context.parts), *options.items())
            asked = (*key, others)
            if asked not in self._plans:
                self._plans[asked] = really(position, site, context, with_alternatives=others, **options)
            _may_go_on(context)
            plan = self._plans[asked]
            return (
                plan if plan.position is position else relabelled(plan, position)
            )  # an equal one may be answered less

        really_by_stages = module.plan_stages

        def plan_stages(position: Position, site: Site, context: PlanningContext) -> Iterator[StagedPlan]:
            if not _is_published(context.parts):
                yield from really_by_stages(position, site, context)
                return
            whole = StagedPlan.of(plan_position(position, site, context))
            if whole.plan.refusal is None:
                chosen = whole.plan.chosen
                sought = kinds_looked_for(chosen.hanging_set) if chosen is not None else ()
                yield replace(whole, counts=None, alternatives=None, sought=sought)
                yield replace(whole, alternatives=None, sought=sought)
            yield whole

        for user in (module, plan_site, why_not, convert_position):
            monkeypatch.setattr(user, "plan_position", plan_position)
        monkeypatch.setattr(module, "plan_stages", plan_stages)

    def _serve_refits(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Plan for all quotations of a survey on like terms once, whatever their numbers, titles and customers."""
        really, really_planned = quoting._planned, station.planned_position

        def planned(
            survey: Survey, option: OptionTerms, prices: OfferedPrices, sources: QuoteSources, progress: Progress | None
        ) -> RefitPlan:
            if not _is_published(sources.parts):
                return really(survey, option, prices, sources, progress)
            heading = Heading(number="-", dated=prices.pricer.terms.heading.dated)
            terms = prices.pricer.terms.model_copy(update={"heading": heading, "customer": None, "options": ()})
            lists = tuple(map(id, sources.price_lists))
            self._lists.update(
                {id(one): one for one in sources.price_lists}
            )  # no other gets the id of one that is kept
            asked = (
                survey,
                option,
                terms,
                self._tables_of(sources.tables),
                sources.steps,
                lists,
                _content(sources.parts),
            )
            if asked not in self._refits:
                self._refits[asked] = really(survey, option, prices, sources, progress)
            if progress is not None and progress.should_stop():
                raise Cancelled
            return self._refits[asked]

        def planned_position(position: Position, site: Site, context: PlanningContext) -> module.PlannedPosition:
            if not _is_published(context.parts):
                return really_planned(position, site, context)
            answers = (context.answers, context.steps)
            asked = (position, same_site(site), self._tables_of(context.tables), answers, _content(context.parts))
            found = self._planned.pop(asked, None)
            if found is None:
                found = really_planned(position, site, context)
            elif found.chooser is not None:
                found.chooser.listener = context.listener  # who asks now may stop what follows, not who asked first
            self._planned[asked] = found
            if len(self._planned) > _CHOOSERS:
                self._planned.popitem(last=False)
            _may_go_on(context)
            return found

        monkeypatch.setattr(quoting, "_planned", planned)
        monkeypatch.setattr(station, "planned_position", planned_position)

    def _serve_conversions(self, monkeypatch: pytest.MonkeyPatch) -> None:
        really = convert_position.convert_position

        def convert(
            position: Position,
            survey: Survey,
            standing: RemovalStanding,
            known: Mapping[PartRef, Part],
            context: ConversionContext,
            *,
            shown: PositionPlan | None = None,
        ) -> PositionConversion:
            planning = context.planning
            if shown is not None or not _is_published(planning.parts):
                return really(position, survey, standing, known, context, shown=shown)
            key = QuestionKeys(survey, "").key(position, known, forbidden=standing.standing is Standing.NOT_ALLOWED)
            site, tables = same_site(survey.site), self._tables_of(planning.tables)
            asked = (key, position, site, tables, context.steps, _content(planning.parts))
            if asked not in self._conversions:
                self._conversions[asked] = really(position, survey, standing, known, context)
            _may_go_on(planning)
            return self._conversions[asked]

        monkeypatch.setattr(convert_site, "convert_position", convert)

    def _serve_papers(self, monkeypatch: pytest.MonkeyPatch) -> None:
        really = render.pdf_bytes

        def pdf_bytes(document: Document, progress: Progress | None = None) -> bytes:
            if document not in self._papers:
                self._papers[document] = really(document, progress)
            return self._papers[document]

        monkeypatch.setattr(render, "pdf_bytes", pdf_bytes)

    def _tables_of(self, tables: RuleTables) -> tuple[object, ...]:
        """Return what tells these tables from others; they are read once and too large to be compared each time."""
        parts = (tables.jurisdiction, tables.materials)
        self._seen.update({id(one): one for one in parts})  # no other gets the id of one that is kept
        return (*map(id, parts), tables.asked_with_removal)


def _may_go_on(context: PlanningContext) -> None:
    """Stop where the search would have been stopped."""
    if context.listener is not None and context.listener.should_stop():
        raise Cancelled


def _is_published(parts: object) -> TypeGuard[CatalogueStore | PlainEdition]:
    """Say whether parts are of an edition, told from every other by its fingerprint; a draft has none."""
    return isinstance(parts, CatalogueStore | PlainEdition) and bool(parts.edition().fingerprint)


def _content(store: CatalogueStore | PlainEdition) -> tuple[object, ...]:
    """Return what tells one edition from another: its name, and the fingerprint of its parts."""
    edition = store.edition()
    return edition.ref, edition.title, edition.fingerprint
