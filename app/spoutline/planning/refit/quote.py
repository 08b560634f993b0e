"""The use case: a survey and terms in, a complete quotation out."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal

from spoutline.explain.writing.money import amount
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.liquid import LiquidFamily
from spoutline.model.number_pattern import check_pattern
from spoutline.model.part import ACCESSORIES, Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.pricing import PriceGap
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_terms import OptionTerms, Terms
from spoutline.model.quoted_option import (
    CommonalityFigures,
    QuotedOption,
    QuotedPosition,
    SupersededPart,
)
from spoutline.model.refit import Commonality, RefitPlan
from spoutline.model.survey import Position, Survey
from spoutline.planning.part_names import wrong_refs
from spoutline.planning.pricing.charges import amounts_of, labour_lines
from spoutline.planning.pricing.discount_names import check_discount_names
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.rounding import check_steps, minor_units
from spoutline.planning.pricing.sellable import Sellable
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.refit.alternates import quoted_alternates
from spoutline.planning.refit.beside_plan import beside_the_plan, stock_price_on_terms
from spoutline.planning.refit.coverage import common_amounts
from spoutline.planning.refit.drive_off import drive_off_estimate
from spoutline.planning.refit.ladders import Ladder
from spoutline.planning.refit.part_stores import OfferedParts, OfferedPrices, every_part, keeps
from spoutline.planning.refit.pins import pins_of
from spoutline.planning.refit.priced_lines import quoted_line
from spoutline.planning.refit.quantities import part_quantities
from spoutline.planning.refit.quote_sources import QuoteSources
from spoutline.planning.refit.station import Stocking, plan_refit
from spoutline.planning.sets.context import PlanningContext, stop_listener
from spoutline.planning.sets.plan_site import provenance_of
from spoutline.planning.sets.supersession import with_successors

_ALTERNATE_WANTED = (
    "name another part of the same kind that hangs in a set, none that is sold under an article's number"
)


@frozen(kw_only=True)
class Quoted:
    """A quotation and the plan of each of its options, in their order, parts at the prices of the terms."""

    quotation: Quotation
    plans: tuple[RefitPlan, ...]


def quote(
    survey: Survey,
    terms: Terms,
    sources: QuoteSources,
    *,
    origin: tuple[int, int] | None = None,
    logo: str = "",
    progress: Progress | None = None,
) -> Quoted:
    """Plan, price and add up every option of ``terms``.

    Parameters
    ----------
    survey, terms
        What to quote and on what terms; the terms' currency holds.
    sources
        Rule tables, catalogue, price lists.
    origin
        Id and revision of the survey in the book; None where it came from a file.
    logo
        The letterhead's picture in base 64; empty for none.
    progress
        Watches and may stop; counts positions over all options.

    Raises
    ------
    InputFault
        A pattern of numbers that cannot be filled, a rounding step or an override that no coin can pay, an override of
        a part that the catalogue lacks, or a discount for a maker or group that no price list knows.
    Cancelled
        If ``progress`` asks to stop.
    """
    check_pattern(terms.heading.number)
    check_steps(terms)
    check_discount_names(terms, sources.price_lists)
    _check_parts(terms, sources.parts)
    pricer = Pricer(terms, PriceBook(sources.price_lists, terms.heading.dated))
    prices = OfferedPrices(pricer)
    plans, options = [], []
    for number, option in enumerate(terms.options):
        watched = None if progress is None else _PartOf(progress, number, len(terms.options))
        plan = _planned(survey, option, prices, sources, watched)
        plans.append(plan)
        quoted = _with_alternates(_quoted(option, plan, pricer, sources), plan, prices, sources, progress)
        options.append(quoted if number else beside_the_plan(quoted, survey, plan, prices, sources, progress=progress))
    options = _with_common_amounts(options, plans, pricer)
    pins = pins_of(
        survey,
        options=options,
        parts=_parts_in(options, plans, sources.parts),
        lists=sources.price_lists,
        tables=sources.tables,
        provenance=provenance_of(survey, sources.tables, sources.parts),
        origin=origin,
    )
    return Quoted(quotation=Quotation(terms=terms, options=tuple(options), pins=pins, logo=logo), plans=tuple(plans))


def _with_alternates(
    quoted: QuotedOption, refit: RefitPlan, prices: OfferedPrices, sources: QuoteSources, progress: Progress | None
) -> QuotedOption:
    pricer = prices.pricer
    if not pricer.terms.alternates:
        return quoted
    parts = OfferedParts(sources.parts, every_part, prices)
    answers = refit.site_plan.survey.conversion
    context = PlanningContext(sources.tables, parts, stop_listener(progress), answers, sources.steps)
    found = quoted_alternates(refit, quoted.lines, pricer, context, sources.part_names)
    return quoted.model_copy(update={"alternates": tuple(found)})


def _parts_in(options: Sequence[QuotedOption], plans: Sequence[RefitPlan], parts: PartStore) -> tuple[Part, ...]:
    """Return every part that is sold, offered instead or hangs, as the catalogue states it; else as it was surveyed."""
    surveyed = {
        link.part.ref: link.part
        for refit in plans
        for plan in refit.site_plan.positions
        if plan.chosen is not None
        for link in plan.chosen.hanging_set.links
    }
    sold = {line.part for option in options for line in option.lines}
    sold |= {one.part for option in options for one in option.offered_alternates}
    known = {part.ref: part for part in parts.parts(sorted(sold | surveyed.keys()))}
    return tuple(part for _, part in sorted({**surveyed, **known}.items()))


class _PartOf:
    """The progress of one option out of several."""

    def __init__(self, whole: Progress, number: int, count: int) -> None:
        self._whole, self._number, self._count = whole, number, count

    def on_progress(self, done: int, total: int) -> None:
        self._whole.on_progress(self._number * total + done, self._count * total)

    def should_stop(self) -> bool:
        return self._whole.should_stop()


def _check_parts(terms: Terms, parts: PartStore) -> None:
    """Raise ``InputFault`` naming every part in the terms that the catalogue lacks, and alternates of another kind."""
    named = [(f"overrides[{number}].part", one.part) for number, one in enumerate(terms.overrides)]
    for number, other in enumerate(terms.alternates):
        named += [(f"alternates[{number}].part", other.part), (f"alternates[{number}].by", other.by)]
    wrong = wrong_refs((ref for _, ref in named), parts)
    problems = [InputProblem("", field, repr(str(ref)), wrong[ref]) for field, ref in named if ref in wrong]
    if problems:
        raise InputFault(tuple(problems))
    problems = [
        InputProblem("", f"alternates[{number}].by", repr(str(one.by)), _ALTERNATE_WANTED)
        for number, one in enumerate(terms.alternates)
        if not _may_replace(*(next(iter(parts.parts((ref,)))) for ref in (one.part, one.by)))
    ]
    if problems:
        raise InputFault(tuple(problems))


def _may_replace(part: Part, by: Part) -> bool:
    single = part.article is None and by.article is None
    return part.ref != by.ref and part.kind is by.kind and part.kind not in ACCESSORIES and single


def _planned(
    survey: Survey, option: OptionTerms, prices: OfferedPrices, sources: QuoteSources, progress: Progress | None
) -> RefitPlan:
    pricer = prices.pricer
    stores: dict[tuple[LiquidFamily, tuple[PartRef, ...]], OfferedParts] = {}

    def parts_for(position: Position) -> OfferedParts:
        asked = position.liquid.family, position.decisions.pinned
        if asked not in stores:
            stores[asked] = OfferedParts(sources.parts, keeps(option, *asked), prices)
        return stores[asked]

    updated, supersessions = with_successors(survey, sources.parts)
    site = updated.site.model_copy(update={"currency": pricer.terms.currency})
    stock_price = stock_price_on_terms(survey, pricer)
    stocking = None if stock_price is None else Stocking(price_minor=stock_price, ladder=_ladder(pricer))
    return plan_refit(
        updated.model_copy(update={"site": site}),
        sources.tables,
        OfferedParts(sources.parts, every_part, prices),
        parts_for=parts_for,
        stocking=stocking,
        supersessions=supersessions,
        steps=sources.steps,
        progress=progress,
    )


def _ladder(pricer: Pricer) -> Callable[[Sellable], Ladder]:
    """Return the prices of a part by quantity; one price where none is listed, or a person set it."""
    currency = pricer.terms.currency

    def ladder(part: Sellable) -> Ladder:
        own = ((1, part.price_minor(currency) or 0),)
        override = pricer.terms.override(part.ref)
        if (override is not None and override.unit_price is not None) or not pricer.steps(part):
            return own
        found = [(start, pricer.unit_price(part, start)) for start in pricer.steps(part)]
        steps = [
            (start, minor_units(one.unit_price, currency)) for start, one in found if not isinstance(one, PriceGap)
        ]
        return tuple(steps) if steps and steps[0][0] == 1 else (*own, *steps)

    return ladder


def _quoted(option: OptionTerms, plan: RefitPlan, pricer: Pricer, sources: QuoteSources) -> QuotedOption:
    plans = plan.site_plan.positions
    lines = tuple(
        quoted_line(quantity, pricer, sources.part_names(quantity.part))
        for quantity in part_quantities(plans, pricer.terms)
    )
    labour = labour_lines(plans, pricer.terms)
    amounts = amounts_of(lines, labour, pricer.terms)
    return QuotedOption(
        title=option.title,
        breakaway=option.breakaway,
        hose=option.hose,
        positions=_positions(plans, sources),
        lines=lines,
        labour=labour,
        goods_amount=amounts.goods,
        labour_amount=amounts.labour,
        freight_amount=amounts.freight,
        taxes=amounts.taxes,
        rounding_amount=amounts.rounding,
        total=amounts.total,
        commonality=_commonality(plan.commonality, pricer.terms.currency),
        drive_offs=drive_off_estimate(plan.site_plan, pricer),
        superseded=tuple(
            SupersededPart(
                number_before=one.before.number,
                number_now=one.now.number,
                positions=one.positions,
                maker_before=one.before.maker,
                maker_now=one.now.maker,
            )
            for one in plan.supersessions
        ),
    )


def _with_common_amounts(
    options: Sequence[QuotedOption], plans: Sequence[RefitPlan], pricer: Pricer
) -> list[QuotedOption]:
    """Return the options, those that cover other hoses than the first held against it on what both cover."""
    found = []
    for option, plan in zip(options, plans, strict=True):
        common = common_amounts(plans[0].site_plan.positions, plan.site_plan.positions, pricer)
        found.append(option if common is None else option.model_copy(update={"on_common": common}))
    return found


def _positions(plans: Sequence[PositionPlan], sources: QuoteSources) -> tuple[QuotedPosition, ...]:
    return tuple(
        QuotedPosition(
            label=plan.position.label,
            dispenser=plan.position.dispenser,
            liquid=sources.liquid_text(plan.position),
            status=plan.status,
            keeps_every_must=plan.keeps_every_must,
            part_numbers=tuple(link.part.number for link in links),
            accessories=tuple(line.part.number for line in plan.accessories),
            slots=tuple(link.slot for link in links),
            kept=tuple(place for place, link in enumerate(links) if link.kept),
            accessory_quantities=tuple(line.quantity for line in plan.accessories),
            accessory_reasons=tuple(line.reason for line in plan.accessories),
            makers=tuple(link.part.maker for link in links),
            accessory_makers=tuple(line.part.maker for line in plan.accessories),
        )
        for plan in plans
        for links in (plan.chosen.hanging_set.links if plan.chosen else (),)
    )


def _commonality(found: Commonality | None, currency: str) -> CommonalityFigures | None:
    if found is None:
        return None

    def money(minor: int) -> Decimal:
        return amount(minor, currency)

    return CommonalityFigures(
        stock_price=money(found.stock_price_minor),
        sets_alone=money(found.alone.sets_minor),
        sets_together=money(found.together.sets_minor),
        part_numbers_alone=found.alone.part_numbers,
        part_numbers_together=found.together.part_numbers,
        changed=tuple(change.label for change in found.changed),
        left_open=money(found.open_minor),
    )
