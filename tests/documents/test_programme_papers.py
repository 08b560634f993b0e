"""A programme on paper, as tables and as a calendar: what a reader sees, and what another program reads back."""

from __future__ import annotations

import calendar
import csv
from datetime import date, timedelta
from decimal import Decimal
from io import BytesIO, StringIO
from pathlib import Path

import icalendar
import openpyxl
import pytest

from paper_text import text_of
from planning.programme_sites import programme, site, work
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.documents.conversion.programme_calendar import first_monday
from spoutline.documents.conversion.programme_chart import programme_chart
from spoutline.documents.drawing.shapes import Drawing, Ink, Label
from spoutline.documents.drawing.shapes import Path as Line
from spoutline.documents.paper_form import PaperForm
from spoutline.explain.conversion.programme_words import ProgrammeWords
from spoutline.model.faults import InputFault
from spoutline.model.language import Language
from spoutline.model.programme import Programme, SiteOutcome
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI = Display(UnitSystem.SI)


@pytest.fixture(scope="module")
def bench(shared_database: Path) -> Workbench:
    return open_workbench(Settings(database=str(shared_database)))


@pytest.fixture(scope="module")
def found() -> Programme:
    """Return three years: a site of one visit, one in two visits that misses its deadline, one left out."""
    return programme(
        site("=south", 100, change_kg=-40.0, yearly_saving=Decimal(21)),
        site("east", work(60, 60, visit=10), deadline_year=2028, change_kg=15.0),
        site("west", work(300), net_present_value=Decimal(1)),
        site("north", 1, outcome=SiteOutcome.NOT_ALLOWED),
        budget=100,
        years=3,
        first_year=2027,
        price_rise_percent=Decimal(3),
        interest_percent=Decimal(5),
        deadlines={"=south": 2027},
    )


def chart(bench: Workbench, found: Programme) -> Drawing:
    drawn = programme_chart(ProgrammeWords(found, bench.converting().words(SI)))
    assert drawn is not None
    return drawn


def bars(drawn: Drawing, fill: Ink) -> list[float]:
    """Return the signed heights of the bars of one fill, from their axis."""
    filled = [one for one in drawn.shapes if isinstance(one, Line) and one.fill is fill]
    return [one.places[1].y_m - one.places[0].y_m for one in filled]


def test_bars_are_in_proportion_and_told_apart_without_colour(bench: Workbench, found: Programme) -> None:
    # by hand: year 1 100; year 2 (60 + 10) 1.03 = 72.10; year 3 70 * 1.0609 = 74.26 (factors of the 3 % table)
    assert [one.spent for one in found.years] == [100, Decimal("72.10"), Decimal("74.26")]
    drawn = chart(bench, found)
    first, second, third = bars(drawn, Ink.STATION)
    assert second / first == pytest.approx(0.721)
    assert third / first == pytest.approx(0.7426)
    # emissions with the sites done by each year's end: -40, -40, -40 + 15, below the axis; they are not filled
    down = bars(drawn, Ink.PAPER)
    assert [round(one / down[0], 3) for one in down] == [1.0, 1.0, 0.625]
    assert all(one < 0 for one in down)
    assert any(isinstance(one, Line) and one.dashed for one in drawn.shapes)  # the budget


def test_the_chart_is_told_in_words(bench: Workbench, found: Programme) -> None:
    drawn = chart(bench, found)
    for text in ("2027: 100.00 USD, emissions -40 kg", "2028: 72.10 USD", "2029: 74.26 USD, emissions -25 kg"):
        assert text in drawn.description
    labels = {one.text for one in drawn.shapes if isinstance(one, Label)}
    assert {"2027", "2028", "2029", "100", "72", "74", "-40", "-25"} <= labels


def test_no_label_leaves_the_drawing(bench: Workbench, found: Programme) -> None:
    drawn = chart(bench, found)
    for one in drawn.shapes:
        for place in one.places if isinstance(one, Line) else (one.at,) if isinstance(one, Label) else ():
            assert drawn.box.left_m <= place.x_m <= drawn.box.right_m
            assert drawn.box.bottom_m <= place.y_m <= drawn.box.top_m


def test_of_many_years_the_least_and_the_greatest_figure_are_told(bench: Workbench) -> None:
    sites = [
        site(f"s{number:02d}", 50 + number, net_present_value=Decimal(9000 - 200 * number)) for number in range(20)
    ]
    found = programme(*sites, budget=80, years=20, first_year=2027)
    drawn = chart(bench, found)
    labels = [one.text for one in drawn.shapes if isinstance(one, Label)]
    assert [text for text in labels if text.isdigit() and len(text) == 2] == ["50", "69"]
    assert [text for text in labels if len(text) == 4 and text.isdigit()][:2] == ["2027", "2029"]  # each second year


def test_the_paper_says_terms_reasons_and_what_waiting_costs(bench: Workbench, found: Programme) -> None:
    paper = bench.converting().programme_pdf(found, SI)
    told = " ".join(text_of(paper).split())
    for text in (
        "Advice, no permission",
        "Budget: 100.00 USD a year",
        "Price rise: 3 % a year",
        "Interest: 5 % a year",
        "Its deadline is 2027; the first year has the money.",
        "Deadline 2028: NOT kept.",
        "it is done in 2 visits, 2029 the last",
        "1/2",
        "It costs more than a year's budget and cannot be split",
        "not allowed",
        # =south: (103 - 100) / 1.05 = 2.86; 21 / 1.05 = 20; 100 - 100 / 1.05 = 4.76; together 18.10
        *("2.86 USD", "20.00 USD", "-4.76 USD", "18.10 USD"),
        "not a proof that no other choice returns more",
    ):
        assert text in told
    assert paper == bench.converting().programme_pdf(found, SI)


def test_invented_prices_are_said_on_every_page(bench: Workbench) -> None:
    notice = "Demonstration catalog"
    plain, invented = (programme(site("a", 10, invented_prices=told), budget=10) for told in (False, True))
    assert notice not in text_of(bench.converting().programme_pdf(plain, SI))
    assert notice in text_of(bench.converting().programme_pdf(invented, SI))


@pytest.mark.parametrize(
    ("language", "texts"),
    [
        (Language.GERMAN, ("Was ein Jahr später kostet", "Frist 2028: NICHT eingehalten.", "Barkosten")),
        (Language.SPANISH, ("Lo que cuesta un año después", "Plazo 2028: NO se cumple.", "Efectivo")),
        (Language.FRENCH, ("Ce que coûte un an plus tard", "Échéance 2028 : NON tenue.", "Dépense")),
    ],
)
def test_the_paper_is_told_in_every_language(
    bench: Workbench, found: Programme, language: Language, texts: tuple[str, ...]
) -> None:
    paper = bench.converting().programme_pdf(found, SI, None, language)
    told = " ".join(text_of(paper).split()).replace("\N{NO-BREAK SPACE}", " ")
    assert all(text in told for text in texts)


def test_the_paper_is_a_page_for_screen_readers_too(bench: Workbench, found: Programme) -> None:
    page = bench.converting().programme_pdf(found, SI, form=PaperForm.HTML).decode().replace("\N{NO-BREAK SPACE}", " ")
    assert "2029: 74.26 USD, emissions -25 kg" in page
    assert "=SOUTH" in page


def test_a_workbook_holds_years_sites_visits_and_terms_as_figures(bench: Workbench, found: Programme) -> None:
    book = openpyxl.load_workbook(BytesIO(bench.converting().programme_xlsx(found, SI)))
    assert book.sheetnames == ["years", "sites", "visits", "terms"]
    years = [dict(zip([one.value for one in book["years"][1]], row, strict=True)) for row in _rows(book, "years")]
    assert [(one["year"], one["cash"], one["left"]) for one in years] == [
        (2027, 100, 0),
        (2028, 72.1, 27.9),
        (2029, 74.26, 25.74),
    ]
    assert years[1]["present_value"] == pytest.approx(68.67)  # 72.10 / 1.05 = 68.67
    visits = [row[1:6] for row in _rows(book, "visits")]
    assert visits == [("=SOUTH", "=south.json", 1, 1, 2027), *(("EAST", "east.json", n, 2, 2027 + n) for n in (1, 2))]
    cell = book["sites"]["E2"]
    assert (cell.value, cell.data_type) == ("=SOUTH", "s")  # a name that looks like a formula is none
    assert any("Interest: 5 %" in str(row[0]) for row in _rows(book, "terms"))
    rows = list(csv.DictReader(StringIO(bench.converting().programme_csv(found).decode("utf-8-sig"))))
    assert [row["site"] for row in rows] == ["'=SOUTH", "EAST", "WEST", "NORTH"]
    assert rows[0]["wait_money"] == "18.10"


def _rows(book: openpyxl.Workbook, name: str) -> list[tuple[object, ...]]:
    return list(book[name].iter_rows(min_row=2, values_only=True))


def test_the_calendar_has_each_visit_and_each_deadline(bench: Workbench, found: Programme) -> None:
    read = icalendar.Calendar.from_ical(bench.converting().programme_calendar(found, SI))
    events = {str(one["summary"]): one for one in read.walk("VEVENT")}
    assert len(events) == 3 + 2 == len({str(one["uid"]) for one in events.values()})
    visit = events["EAST: conversion planned for 2029, dispensers 2"]
    assert visit["dtstart"].dt == date(2029, 1, 1)  # a Monday
    assert visit["dtend"].dt - visit["dtstart"].dt == timedelta(days=40)
    assert "NOT kept" in str(visit["description"])
    deadline = events["EAST: last day of the deadline"]
    assert (deadline["dtstart"].dt, deadline["dtend"].dt) == (date(2028, 12, 31), date(2029, 1, 1))


def test_a_calendar_needs_years_of_the_calendar(bench: Workbench) -> None:
    with pytest.raises(InputFault, match="first year"):
        bench.converting().programme_calendar(programme(site("a", 10), budget=10), SI)


def test_the_first_monday_is_that_of_the_calendar() -> None:
    for year in range(2020, 2061):
        weeks = calendar.Calendar(calendar.MONDAY).monthdatescalendar(year, 1)
        assert first_monday(year) == next(week[0] for week in weeks if week[0].year == year)


def test_a_program_of_an_older_version_is_told_as_far_as_it_goes(bench: Workbench) -> None:
    old = {
        "format": "spoutline-programme",
        "version": 1,
        "name": "old",
        "currency": "USD",
        "budget": "100",
        "ranked": [
            {
                "rank": 1,
                "site": {"place": "a.json", "name": "A", "outcome": "ready", "currency": "USD", "cost": "90"},
                "year": 1,
            }
        ],
        "others": [],
        "years": [{"year": 1, "spent": "90", "sites": 1, "change_kg": 2.5}],
    }
    kept = Programme.model_validate(old)
    assert "90" in text_of(bench.converting().programme_pdf(kept, SI))
    assert bench.converting().programme_xlsx(kept, SI)
    assert "Budget: 100.00 USD" in ProgrammeWords(kept, bench.converting().words(SI)).terms()[0]


def test_a_dispenser_that_is_dearer_than_a_year_is_told_alone_or_with_its_tank(bench: Workbench) -> None:
    found = programme(site("a", work(20, 95, visit=10)), budget=100, years=2)  # 95 + 10 > 100
    words = ProgrammeWords(found, bench.converting().words(SI))
    (ranked,) = found.ranked
    assert words.left_out(ranked).startswith("Dispenser 2 alone costs 105.00 USD")
    assert ranked.dear_part is not None
    pair = ranked.dear_part.model_copy(update={"dispensers": ("1", "2")})
    both = words.left_out(ranked.model_copy(update={"dear_part": pair}))
    assert both.startswith("Dispensers 1, 2 belong together and cost 105.00 USD")
