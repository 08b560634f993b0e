"""A programme of conversions as CSV: one line for each site, ranked ones first."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from decimal import Decimal
from io import StringIO

from spoutline.documents.tabular.cells import Cell, shielded, without_controls
from spoutline.model.programme import Programme, RankedSite, SiteResult, Visit

_ONCE = (
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
COLUMNS = (
    *_ONCE[:-1],
    "visits",
    "cash",
    "lost_margin",
    "own_hours",
    "rank_reason",
    "year_reason",
    "not_split",
    "deadline",
    "in_time",
    "wait_money",
    "wait_price",
    "wait_upkeep",
    "wait_interest",
    "wait_kg",
    "message",
)
COLUMNS_EVER = (_ONCE, COLUMNS)  # titles of tables that any version wrote


def programme_csv(programme: Programme) -> bytes:
    """Return the programme as CSV, UTF-8 with a byte order mark; equal programmes give equal bytes."""
    stream = StringIO(newline="")
    writer = csv.writer(stream, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for row in site_rows(programme):
        writer.writerow(["" if cell is None else str(cell) for cell in row])
    return stream.getvalue().encode("utf-8-sig")


def site_rows(programme: Programme, *, shield: bool = True) -> Iterator[tuple[Cell, ...]]:
    """Yield one row for each site under ``COLUMNS``, ranked ones first; years are those of the calendar if known.

    With ``shield`` no text is one that a spreadsheet takes for a formula.
    """
    for ranked in programme.ranked:
        row = (*_head(ranked.site, programme, ranked), *_placed(programme, ranked), ranked.site.message)
        yield tuple(_safe(cell, shield=shield) for cell in row)
    for other in programme.others:
        row = (*_head(other, programme, None), *[None] * (len(COLUMNS) - len(_ONCE)), other.message)
        yield tuple(_safe(cell, shield=shield) for cell in row)


def _head(site: SiteResult, programme: Programme, ranked: RankedSite | None) -> tuple[Cell, ...]:
    year = ranked.year if ranked else None
    return (
        ranked.rank if ranked else None,
        None if year is None else programme.calendar_year(year),
        ranked.left_out.value if ranked and ranked.left_out else None,
        site.outcome.value,
        site.name,
        site.place,
        site.positions,
        site.converted,
        site.cost,
        site.currency,
        site.yearly_saving,
        site.net_present_value,
        site.payback_years,
        None if site.change_kg is None else round(site.change_kg, 1),
    )


def _placed(programme: Programme, one: RankedSite) -> tuple[Cell, ...]:
    work, waiting = one.site.work, one.waiting
    lost = [visit.lost_margin for visit in one.visits if visit.lost_margin is not None]
    return (
        "; ".join(_visit(programme, visit) for visit in one.visits),
        one.cash if one.visits else None,
        sum(lost, Decimal(0)) if lost else None,
        round(sum(visit.own_minutes for visit in one.visits) / 60, 2) if one.visits else None,
        one.rank_reason.value,
        one.year_reason.value if one.year_reason else None,
        work.hindrance.value if work is not None and work.hindrance else None,
        one.deadline,
        None if one.in_time is None else ("yes" if one.in_time else "no"),
        *(
            (None,) * 5
            if waiting is None
            else (
                waiting.money,
                waiting.price,
                waiting.upkeep,
                waiting.interest,
                None if waiting.kg is None else round(waiting.kg, 1),
            )
        ),
    )


def _visit(programme: Programme, visit: Visit) -> str:
    """Return year and dispensers of a visit, such as ``2027 (1, 2) 8200.00``; no dispensers for the whole site."""
    where = f" ({', '.join(visit.dispensers)})" if visit.dispensers else ""
    return f"{programme.calendar_year(visit.year)}{where} {visit.cash}"


def _safe(cell: Cell, *, shield: bool) -> Cell:
    if not isinstance(cell, str):
        return cell
    plain = without_controls(cell)
    return shielded(plain) if shield else plain
