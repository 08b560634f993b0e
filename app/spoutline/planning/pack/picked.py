"""Positions picked out of a plan: by their labels, or by the record of the work."""

from __future__ import annotations

from dataclasses import replace

from spoutline.book.choices import not_one_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.record import CommissioningRecord


def only_positions(site_plan: SitePlan, labels: tuple[str, ...]) -> SitePlan:
    """Return the plan with the positions named alone; all of them where none is named.

    Raises
    ------
    InputFault
        A label is none of the survey's.
    """
    known = tuple(plan.position.label for plan in site_plan.positions)
    for label in labels:
        if label not in known:
            raise not_one_of(label, known, field="position")
    if not labels:
        return site_plan
    return replace(site_plan, positions=tuple(plan for plan in site_plan.positions if plan.position.label in labels))


def plan_of(record: CommissioningRecord, site_plan: SitePlan) -> PositionPlan:
    """Return the plan of the position that a record is of.

    Raises
    ------
    InputFault
        The record is of another site or position, or was made from another revision of the survey.
    """
    site, revision = site_plan.survey.site.name, site_plan.provenance.survey_fingerprint
    labels = [plan.position.label for plan in site_plan.positions]
    problems = []
    if record.site != site:
        problems.append(InputProblem("", "site", repr(record.site), f"the survey is of {site}"))
    if record.position not in labels:
        problems.append(InputProblem("", "position", repr(record.position), f"the survey has {', '.join(labels)}"))
    if record.plan_revision != revision:
        wanted = f"give the survey that the form was printed from; this one makes the plan {revision}"
        problems.append(InputProblem("", "plan revision", record.plan_revision, wanted))
    if problems:
        raise InputFault(tuple(problems))
    return next(plan for plan in site_plan.positions if plan.position.label == record.position)
