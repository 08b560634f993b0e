"""The share of gasoline into vehicles with onboard recovery, year by year: own figures, the table, or none."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.conversion_answers import AfterTable, EmissionAnswers
from spoutline.model.emission_sheet import ShareOrigin
from spoutline.model.vapour_figures import VapourTables


@frozen
class YearOfShare:
    """A year's share and where it comes from."""

    year: int
    share: float
    origin: ShareOrigin


def years_of_share(answers: EmissionAnswers, vapour: VapourTables, *, last_year: int | None) -> tuple[YearOfShare, ...]:
    """Return the known years, rising; years held at the last share only where the owner chose that.

    Parameters
    ----------
    answers
        The owner's shares and what stands beyond them.
    vapour
        The table of national shares.
    last_year
        The last year that is of interest; None ends with the last known year.
    """
    known: dict[int, YearOfShare] = {}
    if answers.national_shares:
        known = {row.year: YearOfShare(row.year, row.gasoline, ShareOrigin.TABLE) for row in vapour.shares}
    known.update({one.year: YearOfShare(one.year, one.share, ShareOrigin.OWN) for one in answers.own_shares})
    if not known:
        return ()
    end = max(known) if last_year is None else max(last_year, *known)
    found: list[YearOfShare] = []
    for year in range(min(known), end + 1):
        if year in known:
            found.append(known[year])
        elif answers.after_table is AfterTable.HOLD_LAST:
            found.append(YearOfShare(year, found[-1].share, ShareOrigin.HELD))
    return tuple(found)
