"""Where the first option of a quotation hangs other parts than a plan of the survey shows, and what may be why.

The plan is at catalogue prices. A position that provably hangs the same is not planned a second time: its set was the
cheapest on the terms, costs the same by the catalogue, and no other set that it may have costs less there.
"""

from __future__ import annotations

import numpy as np

from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.quotation_terms import BreakawayWish, HoseWish
from spoutline.model.quoted_option import QuotedOption, UnlikeReason
from spoutline.model.refit import RefitPlan
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Survey
from spoutline.planning.pricing.rounding import minor_units
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.refit.part_stores import OfferedPrices
from spoutline.planning.refit.quote_sources import QuoteSources
from spoutline.planning.refit.station import plan_refit, stocking_at_list_price
from spoutline.planning.refit.station_plan import stock_price_minor
from spoutline.planning.sets.pool import SLOT_KINDS, judged, slots_of
from spoutline.planning.sets.relabel import same_question

_MOST_CHEAPER = 20  # parts that cost less by the catalogue; with more, looking at each takes as long as a plan


def beside_the_plan(
    quoted: QuotedOption,
    survey: Survey,
    refit: RefitPlan,
    prices: OfferedPrices,
    sources: QuoteSources,
    *,
    progress: Progress | None = None,
) -> QuotedOption:
    """Return the first option with the positions where it hangs other parts than the plan, and what may be why.

    Raises
    ------
    Cancelled
        If ``progress`` asks to stop.
    """
    unlike = _unlike(survey, refit, prices, sources, progress)
    if not unlike:
        return quoted
    price, currency, pricer = stock_price_minor(survey), survey.site.currency, prices.pricer
    told = (
        (_has_wish(quoted), UnlikeReason.WISH),
        (bool(refit.supersessions), UnlikeReason.SUCCESSORS),
        (stock_price_on_terms(survey, pricer) != price, UnlikeReason.STOCK),
        (pricer.terms.currency != currency, UnlikeReason.CURRENCY),
        (True, UnlikeReason.PRICES),
    )
    because = tuple(reason for holds, reason in told if holds)
    return quoted.model_copy(update={"unlike_plan": unlike, "unlike_because": because})


def stock_price_on_terms(survey: Survey, pricer: Pricer) -> int | None:
    """Return the price of one more part number in minor units: that of the terms, else the survey's in its currency."""
    terms = pricer.terms
    if terms.stock_price is not None:
        return minor_units(terms.stock_price, terms.currency)
    return stock_price_minor(survey) if terms.currency == survey.site.currency else None


def _unlike(
    survey: Survey, refit: RefitPlan, prices: OfferedPrices, sources: QuoteSources, progress: Progress | None
) -> tuple[str, ...]:
    """Return the labels of the positions that hang other parts."""
    proved = _proved_alike(survey, refit, prices, sources)
    left = [(one, plan) for one, plan in zip(survey.positions, refit.site_plan.positions, strict=True)]
    left = [(one, plan) for one, plan in left if one.label not in proved]
    if not left:
        return ()
    listed = plan_refit(
        survey.model_copy(update={"positions": tuple(one for one, _ in left)}),
        sources.tables,
        sources.parts,
        stocking=stocking_at_list_price(stock_price_minor(survey), survey.site.currency),
        steps=sources.steps,
        progress=None if progress is None else _OnlyStopping(progress),
    )
    pairs = zip(listed.site_plan.positions, (plan for _, plan in left), strict=True)
    return tuple(one.position.label for one, other in pairs if _hanging(one) != _hanging(other))


class _OnlyStopping:
    """Lets somebody stop a work that is no part of what is counted."""

    def __init__(self, whole: Progress) -> None:
        self._whole = whole

    def on_progress(self, done: int, total: int) -> None:
        pass

    def should_stop(self) -> bool:
        return self._whole.should_stop()


def _hanging(plan: PositionPlan) -> tuple[tuple[PartRef, bool], ...]:
    links = plan.chosen.hanging_set.links if plan.chosen else ()
    return tuple((link.part.ref, link.kept) for link in links)


def _has_wish(option: QuotedOption) -> bool:
    return option.breakaway is not BreakawayWish.ANY or option.hose is not HoseWish.ANY


def _proved_alike(survey: Survey, refit: RefitPlan, prices: OfferedPrices, sources: QuoteSources) -> frozenset[str]:
    """Return the labels of positions that are known to hang the same parts in the plan, without planning them.

    With a stock price in the survey the sets of all positions hang together, and in another currency or from another
    choice of parts nothing is known beforehand.
    """
    pricer = prices.pricer
    wish = pricer.terms.options[0]
    is_free = wish.breakaway is BreakawayWish.ANY and wish.hose is HoseWish.ANY
    if not is_free or pricer.terms.currency != survey.site.currency or stock_price_minor(survey) is not None:
        return frozenset()
    listed = _ListPrices(sources.parts, prices)
    if listed.are_many_cheaper:
        return frozenset()
    changed = {one.label for one in refit.commonality.changed} if refit.commonality else set()
    pairs = zip(survey.positions, refit.site_plan.positions, strict=True)
    return frozenset(
        one.label
        for one, plan in pairs
        if one.label not in changed
        and same_question(one) == same_question(plan.position)
        and listed.leave_best(plan, sources.tables)
    )


class _ListPrices:
    """Prices of the catalogue beside those of the terms: which parts cost other there, and which less."""

    def __init__(self, parts: PartStore, prices: OfferedPrices) -> None:
        currency = prices.pricer.terms.currency
        other: list[PartRef] = []
        cheaper: list[PartRef] = []
        for kind in dict.fromkeys(SLOT_KINDS.values()):
            listed = parts.columns(kind)
            asked = np.nan_to_num(prices.columns(listed).price_minor(currency))
            difference = np.nan_to_num(listed.price_minor(currency)) - asked
            other += map(listed.ref_at, np.flatnonzero(difference != 0.0).tolist())
            cheaper += map(listed.ref_at, np.flatnonzero(difference < 0.0).tolist())
        self._other = frozenset(other)
        self.cheaper: tuple[Part, ...] = tuple(parts.parts(cheaper)) if len(cheaper) <= _MOST_CHEAPER else ()
        self.are_many_cheaper = len(cheaper) > _MOST_CHEAPER

    def leave_best(self, plan: PositionPlan, tables: RuleTables) -> bool:
        """Say whether the set of a plan stays the best by the catalogue.

        That is proved where none of its parts costs other there, and no part that costs less there may hang here.
        """
        if plan.chosen is None or plan.requirement is None:
            return False
        if not self._other.isdisjoint(plan.chosen.hanging_set.refs):
            return False
        return not any(_may_hang(part, plan.requirement, tables) for part in self.cheaper)


def _may_hang(part: Part, requirement: Requirement, tables: RuleTables) -> bool:
    """Say whether a part may be in a set of a position: it hangs there already, or breaks no *must* in some slot."""
    if any(one.ref == part.ref for one in requirement.position.installed):
        return True
    slots = (slot for slot in slots_of(requirement) if SLOT_KINDS[slot] is part.kind)
    return any(not judged(part, slot, requirement, tables).forbidden_by for slot in slots)
