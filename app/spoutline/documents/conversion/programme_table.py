"""A programme of conversions as CSV: one line for each site, ranked ones first."""

from __future__ import annotations

import csv
from io import StringIO

from spoutline.documents.tabular.cells import shielded, without_controls
from spoutline.model.programme import Programme, RankedSite, SiteResult

COLUMNS = (
    "rank",
    "year",
    "left_out",
    "outcome",
    "site",
    "file",
    "positions",
    "converted",
    "cost",
    "currency",
    "yearly_saving",
    "net_present_value",
    "payback_years",
    "change_kg",
    "message",
)


def programme_csv(programme: Programme) -> bytes:
    """Return the programme as CSV, UTF-8 with a byte order mark; equal programmes give equal bytes."""
    stream = StringIO(newline="")
    writer = csv.writer(stream, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for ranked in programme.ranked:
        writer.writerow(_row(ranked.site, ranked))
    for other in programme.others:
        writer.writerow(_row(other, None))
    return stream.getvalue().encode("utf-8-sig")


def _row(site: SiteResult, ranked: RankedSite | None) -> tuple[str, ...]:
    def shown(value: object) -> str:
        return "" if value is None else str(value)

    return (
        shown(ranked.rank if ranked else None),
        shown(ranked.year if ranked else None),
        shown(ranked.left_out.value if ranked and ranked.left_out else None),
        site.outcome.value,
        _safe(site.name),
        _safe(site.place),
        str(site.positions),
        str(site.converted),
        shown(site.cost),
        site.currency,
        shown(site.yearly_saving),
        shown(site.net_present_value),
        shown(site.payback_years),
        "" if site.change_kg is None else f"{site.change_kg:.1f}",
        _safe(site.message),
    )


def _safe(text: str) -> str:
    return shielded(without_controls(text))
