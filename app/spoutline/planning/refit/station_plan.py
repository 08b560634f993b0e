"""The plan of a survey by the one policy: each question alone, or together where the survey gives a stock price."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.conversion_step import StepTable
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import RuleTables
from spoutline.model.plan import SitePlan
from spoutline.model.survey import Survey
from spoutline.model.worded import Worded
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.sets.plan_site import plan_site


def stock_price_minor(survey: Survey) -> int | None:
    """Return what one more part number is worth in minor units; None where the survey sets no price.

    Raise ``InputFault`` for a price that no coin of the currency can pay.
    """
    price, currency = survey.site.stock_price, survey.site.currency
    if not price:
        return None
    from spoutline.planning.pricing.rounding import minor_units

    try:
        return minor_units(price, currency)
    except ValueError as fault:
        wanted = Worded("write an amount that the coins of {currency} can pay, such as 35", currency=currency)
        raise InputFault((InputProblem("", "site, stock_price", str(price), wanted),)) from fault


def station_plan(
    survey: Survey,
    tables: RuleTables,
    parts: PartStore,
    progress: Progress | None = None,
    *,
    steps: StepTable | None = None,
    with_alternatives: bool = True,
) -> SitePlan:
    """Plan every position; with a stock price in the survey the sets of the station are chosen together.

    A set that was changed for the sake of the station has no alternatives of its own, and without
    ``with_alternatives`` none has.

    Raises
    ------
    InputFault
        The stock price is none that a coin of the currency can pay.
    Cancelled
        If ``progress`` asks to stop.
    """
    price = stock_price_minor(survey)
    if price is None:
        return plan_site(survey, tables, parts, progress, steps=steps, with_alternatives=with_alternatives)
    from spoutline.planning.refit.station import plan_refit, stocking_at_list_price

    stocking = stocking_at_list_price(price, survey.site.currency)
    found = plan_refit(
        survey, tables, parts, stocking=stocking, steps=steps, progress=progress, with_alternatives=with_alternatives
    )
    left_open = found.commonality.open_minor if found.commonality is not None else 0
    return replace(found.site_plan, still_to_save_minor=left_open) if left_open else found.site_plan
