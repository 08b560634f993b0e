"""What it costs to do a site next year instead of this year: money and emissions."""

from __future__ import annotations

from decimal import Decimal

from spoutline.model.programme import SiteResult, Waiting
from spoutline.planning.conversion.placing import work_of
from spoutline.planning.conversion.present_worth import present_worth, risen
from spoutline.planning.conversion.programme_terms import ProgrammeTerms


def waiting_of(site: SiteResult, year: int, terms: ProgrammeTerms) -> Waiting | None:
    """Return what a year of waiting costs; None where the cost of the site is not known.

    In money of the first day of ``year``: the site costs ``K`` then and ``K'`` a year later, one year's saving of
    upkeep ``s`` is missed at the year's end, and the kept money earns interest ``i``. The sum is
    ``K'/(1 + i) - K + s/(1 + i)``, told by its parts: ``(K' - K)/(1 + i)`` for prices, ``K i/(1 + i)`` for interest,
    ``s/(1 + i)`` for upkeep. NIST Handbook 135, single present value factor (from memory); that a site serves no year
    longer for being done later is an assumption.

    Parameters
    ----------
    site
        With cost, saving and emissions.
    year
        From 1.
    terms
        First year, price rise and interest.
    """
    work = work_of(site)
    if work is None:
        return None
    interest, currency = terms.interest_percent, site.currency
    now, later = (
        risen(work.cash, terms.price_rise_percent, count, currency) - work.grant for count in (year - 1, year)
    )
    earned = now - present_worth(now, interest, 1, currency)
    saving = site.yearly_saving
    change = site.change_in(None if terms.first_year is None else terms.first_year + year - 1)
    return Waiting(
        year=year,
        price=present_worth(later - now, interest, 1, currency),
        interest=earned if interest is not None else Decimal(0),
        upkeep=None if saving is None else present_worth(saving, interest, 1, currency),
        kg=None if change is None else -change,
    )
