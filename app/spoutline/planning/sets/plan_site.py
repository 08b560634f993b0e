"""All positions of a survey, equal ones planned once."""

from __future__ import annotations

import hashlib

import spoutline
from spoutline.model.conversion_step import StepTable
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.plan import PositionPlan, Provenance, SitePlan
from spoutline.model.survey import Position, Survey
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.sets.context import PlanningContext, stop_listener
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.relabel import relabelled, same_question


def plan_site(
    survey: Survey,
    tables: RuleTables,
    parts: PartStore,
    progress: Progress | None = None,
    *,
    steps: StepTable | None = None,
    with_alternatives: bool = True,
) -> SitePlan:
    """Plan every position of ``survey``; ``steps`` price the work of fitting parts where some may stay.

    Without ``with_alternatives`` they are not looked for: that takes two thirds of the time.

    Positions that differ only in label, dispenser and notes ask the same and get the same answer without a new search.

    Raises
    ------
    Cancelled
        If ``progress`` asks to stop.
    """
    context = PlanningContext(tables, parts, stop_listener(progress), survey.conversion, steps)
    known: dict[Position, PositionPlan] = {}
    plans: list[PositionPlan] = []
    for done, position in enumerate(survey.positions):
        if progress is not None:
            progress.on_progress(done, len(survey.positions))
            if progress.should_stop():
                raise Cancelled
        plans.append(_planned_once(position, survey, context, known, with_alternatives))
    if progress is not None:
        progress.on_progress(len(survey.positions), len(survey.positions))
    return SitePlan(
        survey=survey,
        jurisdiction=tables.jurisdiction,
        positions=tuple(plans),
        provenance=provenance_of(survey, tables, parts),
    )


def _planned_once(
    position: Position,
    survey: Survey,
    context: PlanningContext,
    known: dict[Position, PositionPlan],
    with_alternatives: bool,
) -> PositionPlan:
    question = same_question(position)
    if question in known:
        return relabelled(known[question], position)
    known[question] = plan_position(position, survey.site, context, with_alternatives=with_alternatives)
    return known[question]


def provenance_of(survey: Survey, tables: RuleTables, parts: PartStore) -> Provenance:
    """Return what a result for ``survey`` is made from."""
    edition = parts.edition()
    return Provenance(
        catalogue_edition=edition.title,
        catalogue=edition.catalogue,
        edition=edition.number,
        rules_edition=f"{tables.jurisdiction.edition}; materials {tables.materials.edition}",
        jurisdiction_id=tables.jurisdiction.id,
        survey_fingerprint=fingerprint_of(survey),
        program_version=spoutline.__version__,
    )


def fingerprint_of(survey: Survey) -> str:
    """Return the first 16 hex digits of the SHA-256 of the survey's canonical JSON.

    What says nothing about the station (the number in a book, a stock price of nought, no catalog, from where an answer
    of a position is) is left out, so that a form printed before surveys had these fields is still of its survey.
    """
    site: set[str] = set() if survey.site.stock_price else {"stock_price"}
    unnamed = survey.catalogue is None
    text = survey.model_dump_json(
        round_trip=True,
        exclude={
            "survey_id": True,
            "catalogue": unnamed,
            "site": site,
            "positions": {"__all__": {"dispenser_type"}},
        },
    )
    return hashlib.sha256(text.encode()).hexdigest()[:16]
