"""A programme of several sites as bytes; heavy libraries are imported when one is asked for."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from spoutline.documents.conversion.programme_table import COLUMNS, site_rows
from spoutline.documents.paper_form import PaperForm
from spoutline.documents.tabular.cells import Cell

if TYPE_CHECKING:
    from datetime import date

    from spoutline.explain.conversion.story import ConversionStory
    from spoutline.model.programme import Programme

_YEARS = (
    *("year", "sites", "cash", "available", "left", "present_value", "lost_margin", "own_hours"),
    *("change_kg", "after_kg"),
)
_VISITS = ("rank", "site", "file", "visit", "visits", "year", "dispensers", "cash", "lost_margin", "own_hours")
_SITE_MONEY = ("cost", "yearly_saving", "net_present_value", "cash", "lost_margin", "wait_money", "wait_price")
_MONEY = (*_SITE_MONEY, "wait_upkeep", "wait_interest", "available", "left", "present_value")


def programme_pdf(
    programme: Programme,
    words: ConversionStory,
    *,
    dated: date | None = None,
    form: PaperForm = PaperForm.PDF,
) -> bytes:
    """Return the programme as PDF, or in another ``form``; equal arguments give equal bytes.

    Raise ``StoreFault`` for a missing font.
    """
    from spoutline.documents.conversion.programme_paper import programme_content
    from spoutline.documents.paper import paper_bytes

    return paper_bytes(programme_content(programme, words, dated=dated), form)


def programme_xlsx(programme: Programme, english: ConversionStory) -> bytes:
    """Return years, sites, visits and terms as a workbook, in English in every language; kilograms and hours."""
    from spoutline import __version__
    from spoutline.documents.tabular.rows import Sheet
    from spoutline.documents.tabular.workbook import workbook_bytes
    from spoutline.explain.conversion.programme_words import ProgrammeWords

    told = ProgrammeWords(programme, english)

    def sheet(name: str, titles: tuple[str, ...], rows: Iterator[tuple[Cell, ...]]) -> Sheet:
        money = frozenset(place for place, title in enumerate(titles) if title in _MONEY)
        return Sheet(name, titles, tuple(rows), money)

    sites = (*(one.site for one in programme.ranked), *programme.others)
    return workbook_bytes(
        (
            sheet("years", _YEARS, _year_rows(programme)),
            sheet("sites", COLUMNS, site_rows(programme, shield=False)),
            sheet("visits", _VISITS, _visit_rows(programme)),
            sheet("terms", ("terms",), ((text,) for text in (*told.terms(), *told.rules()))),
        ),
        title=english.say("program_title", name=programme.name),
        author=f"Spoutline {__version__}",
        comments=english.say("program_advice"),
        currency=programme.currency or "USD",
        notice=english.story.phrases.text["demonstration_notice"] if any(one.invented_prices for one in sites) else "",
    )


def _year_rows(programme: Programme) -> Iterator[tuple[Cell, ...]]:
    for one in programme.years:
        yield (
            programme.calendar_year(one.year),
            one.sites,
            one.spent,
            one.available,
            one.left,
            one.present_value,
            one.lost_margin,
            round(one.own_minutes / 60, 2),
            round(one.change_kg, 1),
            round(one.after_kg, 1),
        )


def _visit_rows(programme: Programme) -> Iterator[tuple[Cell, ...]]:
    for one in programme.ranked:
        for number, visit in enumerate(one.visits, start=1):
            yield (
                one.rank,
                one.site.name,
                one.site.place,
                number,
                len(one.visits),
                programme.calendar_year(visit.year),
                ", ".join(visit.dispensers),
                visit.cash,
                visit.lost_margin,
                round(visit.own_minutes / 60, 2),
            )
