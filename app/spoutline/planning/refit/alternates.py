"""Substitutes that the terms offer beside lines of an option: where they fit, and what they would change in price."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.pricing import UnitPrice
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_terms import AlternateTerms
from spoutline.model.quoted_option import PartName, QuotedAlternate, QuotedLine
from spoutline.model.refit import RefitPlan
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.relabel import same_question


def quoted_alternates(
    refit: RefitPlan,
    lines: Sequence[QuotedLine],
    pricer: Pricer,
    context: PlanningContext,
    part_names: Callable[[Part], tuple[PartName, ...]],
) -> Iterator[QuotedAlternate]:
    """Yield the alternates of the terms whose part is a line of an option, in the order of the terms.

    An alternate takes the place of the whole line: it is held in every set that has the part, all other parts of the
    set staying, and each set is planned so and checked in full. ``misfits`` are the positions where no such set keeps
    every must; the alternate is not offered then and has no price. Raise ``Cancelled`` where the context's listener
    asks to stop.
    """
    for wanted in pricer.terms.alternates:
        line = next((one for one in lines if wanted.part.names(one.part)), None)
        part = next(iter(context.parts.parts((wanted.by,))), None)
        if line is not None and part is not None and part.ref != line.part:
            misfits = _misfits(line.part, part, refit, context)
            quoted = _quoted(wanted, line, part, misfits, pricer)
            yield quoted.model_copy(update={"names": part_names(part)})


def with_alternate(survey: Survey, quotation: Quotation, taken: QuotedAlternate) -> Survey:
    """Return the survey in which an alternate is kept wherever an option that offers it has the part of its line.

    What else a person decided for those positions stays; the part that gives way is kept no longer.
    """
    labels = {
        position.label
        for option in quotation.options
        if any((one.line, one.part) == (taken.line, taken.part) for one in option.offered_alternates)
        for position in option.positions
        if taken.line in position.parts
    }

    def kept(position: Position) -> Position:
        decisions = position.decisions
        others = tuple(one for one in decisions.pinned if not one.names(taken.line) and not one.names(taken.part))
        refused = tuple(one for one in decisions.refused if not one.names(taken.part))
        now = decisions.model_copy(update={"pinned": (*others, taken.part), "refused": refused})
        return position.model_copy(update={"decisions": now})

    positions = tuple(kept(one) if one.label in labels else one for one in survey.positions)
    return survey.model_copy(update={"positions": positions})


def _misfits(before: PartRef, by: Part, refit: RefitPlan, context: PlanningContext) -> tuple[str, ...]:
    known: dict[object, bool] = {}
    found: list[str] = []
    for plan in refit.site_plan.positions:
        refs = plan.chosen.hanging_set.refs if plan.chosen is not None else ()
        if before not in refs:
            continue
        asked = (same_question(plan.position), refs)
        if asked not in known:
            known[asked] = _fits(plan, refit.site_plan.survey.site, before, by, context)
        if not known[asked]:
            found.append(plan.position.label)
    return tuple(found)


def _fits(plan: PositionPlan, site: Site, before: PartRef, by: Part, context: PlanningContext) -> bool:
    """Say whether a set of the very same parts but for one keeps every must."""
    if plan.chosen is None:
        return False
    wanted = tuple(by.ref if ref == before else ref for ref in plan.chosen.hanging_set.refs)
    decisions = plan.position.decisions.model_copy(update={"pinned": wanted})
    position = plan.position.model_copy(update={"decisions": decisions})
    found = plan_position(position, site, context, with_alternatives=False)
    return found.chosen is not None and found.keeps_every_must and found.chosen.hanging_set.refs == wanted


def _quoted(
    wanted: AlternateTerms, line: QuotedLine, part: Part, misfits: tuple[str, ...], pricer: Pricer
) -> QuotedAlternate:
    pieces = line.fitted + line.spares
    ordered = pieces + -pieces % part.pack_quantity
    override = pricer.terms.override(part.ref)
    found = pricer.unit_price(part, ordered)
    price = found.unit_price if isinstance(found, UnitPrice) else None
    listed = found if isinstance(found, UnitPrice) and override is None else None
    if override is not None:
        price = override.unit_price
    amount = None if price is None or misfits else price * ordered
    return QuotedAlternate(
        line_number=line.part_number,
        line_maker=line.maker,
        part_number=part.number,
        maker=part.maker,
        name=part.name,
        note=wanted.note,
        ordered=ordered,
        unit_price=None if misfits else price,
        difference=None if amount is None or line.amount is None else amount - line.amount,
        lead_time_days=part.lead_time_days,
        misfits=misfits,
        list_id=listed.list_id if listed else "",
        list_currency=listed.list_currency if listed else "",
        list_price=listed.list_price if listed else None,
    )
