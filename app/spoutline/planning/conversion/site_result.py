"""What a programme needs of the conversion of a site."""

from __future__ import annotations

from spoutline.model.conversion import SiteConversion
from spoutline.model.position_conversion import PositionOutcome
from spoutline.model.programme import SiteOutcome, SiteResult, YearlyChange
from spoutline.model.removal_standing import Standing
from spoutline.planning.conversion.site_work import site_work


def site_result(conversion: SiteConversion, place: str) -> SiteResult:
    """Return what a programme needs of a site's conversion.

    Parameters
    ----------
    conversion
        Of the site.
    place
        Name of the file that its survey came from.
    """
    money, sheet = conversion.money, conversion.emissions
    years = sheet.years if sheet is not None else ()
    yearly = tuple(YearlyChange(year=one.year, kg=one.total_kg) for one in years if one.total_kg is not None)
    reference = sheet.reference_year if sheet is not None else None
    kinds = dict.fromkeys(kind for one in conversion.positions for kind in one.kinds)
    return SiteResult(
        place=place,
        name=conversion.survey.site.name,
        outcome=_outcome(conversion),
        standing=conversion.standing.standing,
        kinds=tuple(kinds),
        positions=len(conversion.positions),
        converted=sum(one.outcome is PositionOutcome.CONVERTS for one in conversion.positions),
        currency=money.currency,
        cost=money.total if money.complete else None,
        known_cost=money.total,
        yearly_saving=money.yearly_saving,
        net_present_value=money.net_present_value,
        payback_years=money.payback_years,
        change_kg=next((one.kg for one in yearly if one.year == reference), None),
        yearly=yearly,
        work_minutes=conversion.sequence.work_minutes if conversion.sequence else 0,
        work=site_work(conversion),
        invented_prices=conversion.shows_invented_parts,
        deadline_year=conversion.survey.conversion.deadline_year,
    )


def _outcome(conversion: SiteConversion) -> SiteOutcome:
    outcomes = {one.outcome for one in conversion.positions}
    if conversion.standing.standing is Standing.NOT_ALLOWED or PositionOutcome.NOT_ALLOWED in outcomes:
        return SiteOutcome.NOT_ALLOWED
    if not outcomes <= {PositionOutcome.CONVERTS, PositionOutcome.NOTHING_TO_DO}:
        return SiteOutcome.OPEN
    return SiteOutcome.READY if PositionOutcome.CONVERTS in outcomes else SiteOutcome.NOTHING_TO_DO
