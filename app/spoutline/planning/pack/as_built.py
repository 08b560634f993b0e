"""The plan of a site as it was built: the parts fitted, judged like any set, whatever was found."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, PositionPlan, SetLink, SitePlan
from spoutline.model.record import CommissioningRecord
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.pool import SLOT_KINDS

_SLOT_OF = {kind: slot for slot, kind in SLOT_KINDS.items()}


def as_built_plan(
    site_plan: SitePlan, records: Mapping[str, CommissioningRecord], context: PlanningContext
) -> SitePlan:
    """Return the plan with the parts that the records say were fitted.

    Each changed set is judged anew by every rule and check; a broken must then stands on the bill. Positions without a
    record, or with no change, stay as planned.

    Parameters
    ----------
    site_plan
        The plan that the work was done by.
    records
        The newest record of each position, by label.
    context
        Rule tables and catalogue.

    Raises
    ------
    InputFault
        A record names a part that the catalogue does not hold, or an accessory as part of the chain.
    """
    plans = (_as_built(plan, records.get(plan.position.label), context) for plan in site_plan.positions)
    return replace(site_plan, positions=tuple(plans))


def _as_built(plan: PositionPlan, record: CommissioningRecord | None, context: PlanningContext) -> PositionPlan:
    if record is None or plan.chosen is None or plan.requirement is None:
        return plan
    if not record.changes and record.as_built in ((), plan.chosen.hanging_set.numbers):
        return plan
    parts = _parts(record, context)
    site = plan.requirement.site
    hanging_set = HangingSet(
        links=tuple(SetLink(slot=_SLOT_OF[part.kind], part=part) for part in parts),
        price_minor=sum(part.price_minor(site.currency) or 0 for part in parts),
        currency=site.currency,
    )
    judged = SetJudge(plan.requirement, context.tables, context.usual_prices).judged(hanging_set)
    return replace(plan, chosen=judged, alternatives=(), accessories=accessory_lines(judged, plan.requirement, context))


def _parts(record: CommissioningRecord, context: PlanningContext) -> tuple[Part, ...]:
    problems: list[InputProblem] = []
    parts: list[Part] = []
    for number in record.as_built:
        part = context.parts.part(number)
        if part is None:
            near = context.parts.nearest_numbers(number)
            hint = f"; near it are {', '.join(near)}" if near else ""
            wanted = f"it must be a part number of the catalog{hint}"
            problems.append(InputProblem(record.position, "part number", repr(number), wanted))
        elif part.kind not in _SLOT_OF:
            wanted = f"a {part.kind.value.replace('_', ' ')} is no part of the chain; leave it out of the fitted parts"
            problems.append(InputProblem(record.position, "part number", repr(number), wanted))
        else:
            parts.append(part)
    if not parts and not problems:
        problems.append(InputProblem(record.position, "parts", "nothing", "a set has at least one part"))
    if problems:
        raise InputFault(tuple(problems))
    return tuple(parts)
