"""What separations at drive-offs are expected to cost with the breakaways of an option."""

from __future__ import annotations

from decimal import Decimal, localcontext

from spoutline.model.part import Part
from spoutline.model.plan import SitePlan
from spoutline.model.pricing import PriceGap
from spoutline.model.quotation_terms import DriveOffs
from spoutline.model.quoted_option import DriveOffEstimate
from spoutline.planning.pricing.rounding import EXACT, coin, rounded
from spoutline.planning.pricing.selling import Pricer


def drive_off_estimate(site_plan: SitePlan, pricer: Pricer) -> DriveOffEstimate | None:
    """Return the expectation; None where the terms give no figures, or a breakaway has no price.

    Each separation costs labour; a single-use breakaway is bought anew each time, a reconnectable one in the share of
    cases that the terms name. Damage to hose, dispenser or vehicle is left out, and nothing is discounted.
    """
    terms = pricer.terms
    if terms.drive_offs is None:
        return None
    yearly, events = Decimal(0), Decimal(0)
    with localcontext(EXACT):
        for plan in site_plan.positions:
            links = plan.chosen.hanging_set.links if plan.chosen else ()
            part = next((link.part for link in links if link.part.breakaway is not None), None)
            if part is None:
                continue
            bought = next((link.part for link in links if link.part.ref == part.comes_with), part)
            cost = yearly_cost_of(part, bought, terms.drive_offs, pricer)
            if cost is None:
                return None
            events += terms.drive_offs.per_position_year
            yearly += cost
    per_year = rounded(yearly, coin(terms.currency), terms.rounding.mode)
    return DriveOffEstimate(
        events_per_year=events,
        per_year=per_year,
        years=terms.drive_offs.years,
        over_years=per_year * terms.drive_offs.years,
    )


def yearly_cost_of(part: Part, bought_as: Part, drive_offs: DriveOffs, pricer: Pricer) -> Decimal | None:
    """Return what separations at one position are expected to cost in a year; None where a breakaway has no price.

    Parameters: ``part``, the breakaway; ``bought_as``, the article that it comes in or itself; ``drive_offs``, what the
    customer expects; ``pricer``, prices on terms.
    """
    cost = _cost_of_one(part, bought_as, drive_offs, pricer)
    return None if cost is None else drive_offs.per_position_year * cost


def _cost_of_one(part: Part, bought_as: Part, drive_offs: DriveOffs, pricer: Pricer) -> Decimal | None:
    """Return what one separation costs; a breakaway that comes in an article is bought anew with the whole of it."""
    override = pricer.terms.override(bought_as.ref)
    if override is not None:
        price = override.unit_price
    else:
        found = pricer.unit_price(bought_as, 1)
        price = None if isinstance(found, PriceGap) else found.unit_price
    if price is None:
        return None
    if part.breakaway is not None and part.breakaway.reconnectable:
        bought = drive_offs.reconnectable_replaced_percent / 100
        hours = drive_offs.reconnectable_hours
    else:
        bought, hours = Decimal(1), drive_offs.single_use_hours
    return price * bought + hours * pricer.terms.labour.hourly_rate
