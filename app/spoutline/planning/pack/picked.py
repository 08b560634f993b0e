"""Positions picked out of a plan: by their labels, or by the record of the work."""

from __future__ import annotations

from dataclasses import replace

from spoutline.book.choices import not_one_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.record import CommissioningRecord
from spoutline.model.worded import Worded
from spoutline.planning.part_names import wrong_refs
from spoutline.planning.protocols import PartStore


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
        problems.append(InputProblem("", "site", repr(record.site), Worded("the survey is of {site}", site=site)))
    if record.position not in labels:
        problems.append(
            InputProblem(
                "", "position", repr(record.position), Worded("the survey has {labels}", labels=", ".join(labels))
            )
        )
    if record.plan_revision != revision:
        wanted = Worded(
            "give the survey that the form was printed from; this one makes the plan {revision}", revision=revision
        )
        problems.append(InputProblem("", "plan revision", record.plan_revision, wanted))
    if problems:
        raise InputFault(tuple(problems))
    return next(plan for plan in site_plan.positions if plan.position.label == record.position)


def with_makers(record: CommissioningRecord, plan: PositionPlan, parts: PartStore) -> CommissioningRecord:
    """Return a record whose bare numbers have their makers: from the plan, and from the catalogue for what was fitted.

    It says which edition of the catalogue they are of, where it did not yet. A number that the catalogue does not hold
    stays as it was written.

    Raises
    ------
    InputFault
        Several makers have a number that was fitted.
    """
    links = plan.chosen.hanging_set.refs if plan.chosen is not None else ()
    planned = _planned_refs(record.parts, links)
    by_name = dict(zip(record.parts, planned, strict=True))
    fitted = [ref for change in record.changes for ref in change.fitted]
    found = [part.ref for part in parts.parts(fitted)] if fitted else []
    wrong = wrong_refs(fitted, parts) if fitted else {}
    problems = [
        InputProblem(record.position, "part number", repr(str(ref)), wrong[ref])
        for ref in dict.fromkeys(fitted)
        if ref in wrong and any(ref.names(one) for one in found)
    ]
    if problems:
        raise InputFault(tuple(problems))

    def named(ref: PartRef) -> PartRef:
        return next((one for one in found if ref.names(one)), ref)

    changes = tuple(
        change.model_copy(
            update={
                "planned": by_name.get(change.planned, change.planned),
                "fitted": tuple(map(named, change.fitted)),
            }
        )
        for change in record.changes
    )
    edition = record.catalogue_edition or parts.edition().title
    return record.model_copy(update={"parts": planned, "changes": changes, "catalogue_edition": edition})


def _planned_refs(written: tuple[PartRef, ...], planned: tuple[PartRef, ...]) -> tuple[PartRef, ...]:
    """Return the parts with the makers that they have in the plan; as they are written where it does not tell."""

    def named(ref: PartRef) -> PartRef:
        meant = {one for one in planned if ref.names(one)}
        return meant.pop() if len(meant) == 1 else ref

    return tuple(map(named, written))
