"""The station on one page: figures of the report, read back from the papers; one sheet in every language and size."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from decimal import Decimal
from functools import lru_cache
from pathlib import Path

import pytest

from documents.html_reading import figures, page_of
from paper_text import page_text, pages_of, text_of
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.blocks import PaperSize, Table
from spoutline.documents.conversion.content import conversion_content
from spoutline.documents.conversion.one_page import Setting, one_page_content
from spoutline.documents.paper_form import PaperForm
from spoutline.documents.pdf.render import pdf_with_pages
from spoutline.model.conversion import SiteConversion
from spoutline.model.language import Language
from spoutline.model.position_conversion import PositionConversion
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

US = Display(UnitSystem.US)
DEMOS = ("conversion_assist", "conversion_balance")
PART_NUMBER = re.compile(r"\b[A-Z]{2}-[A-Z]\d{3}\b")  # how the invented catalogue numbers its parts


@pytest.fixture(scope="module")
def bench(shared_database: Path) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=str(shared_database)))
    yield bench
    bench.close()


@lru_cache(maxsize=4)
def conversion_of(bench: Workbench, demo: str) -> SiteConversion:
    return bench.converting().convert(demo_survey(demo))


@pytest.mark.parametrize("demo", DEMOS)
@pytest.mark.parametrize("language", list(Language))
def test_every_figure_of_the_page_is_one_of_the_report(bench: Workbench, demo: str, language: Language) -> None:
    conversion, service = conversion_of(bench, demo), bench.converting()
    day = date(2026, 11, 29)
    page = text_of(service.one_page(conversion, US, day, language))
    report = text_of(service.pdf(conversion, US, day, language))
    assert len(figures(page)) > 40
    alone = {one.rstrip(".,") for one in figures(page)} - {one.rstrip(".,") for one in figures(report)}
    # a line of the report may end inside a number of a part or of a law
    assert {one for one in alone if one not in report} == set()


@pytest.mark.parametrize("demo", DEMOS)
@pytest.mark.parametrize("language", list(Language))
def test_a_conversion_stands_on_one_page_of_either_sheet(bench: Workbench, demo: str, language: Language) -> None:
    conversion, words = conversion_of(bench, demo), bench.converting().words(US, language)
    for paper in PaperSize:
        contents = (one_page_content(conversion, words, setting) for setting in Setting)
        assert min(pdf_with_pages(replace(content, paper=paper))[1] for content in contents) == 1, paper
    assert len(pages_of(bench.converting().one_page(conversion, US, None, language))) == 1


def rows_of(content: bytes) -> list[list[str]]:
    """Return the rows of the tables of an HTML paper as the texts of their cells, headings of columns left out."""
    rows: list[list[str]] = []
    for one in page_of(content).elements:
        if one.tag == "tr":
            rows.append([])
        elif one.tag in ("td", "th") and rows and "thead" not in one.parents:
            rows[-1].append(" ".join(one.text.split()))
    return [row for row in rows if row]


def sheets_of(report: bytes) -> dict[str, str]:
    """Return the sheets of the report by their position; a sheet may go on over several pages."""
    sheets: dict[str, str] = {}
    label = ""
    for place in range(len(pages_of(report))):
        text = page_text(report, place)
        head = re.search(r"Position (\S.*?): removal and fitting", text)
        label = head[1] if head else label
        if label:
            sheets[label] = f"{sheets.get(label, '')} {text}"
    return sheets


@pytest.mark.parametrize("demo", DEMOS)
def test_positions_stay_go_and_come_as_their_sheets_of_the_report_say(bench: Workbench, demo: str) -> None:
    conversion, service = conversion_of(bench, demo), bench.converting()
    sheets = sheets_of(service.pdf(conversion, US))
    rows = [row for row in rows_of(service.one_page(conversion, US, form=PaperForm.HTML)) if len(row) == 5]
    told = {label: row for row in rows for label in row[0].split(", ")}
    assert set(told) == {one.position.label for one in conversion.positions} == set(sheets)
    assert len(rows) < len(conversion.positions) or demo == "conversion_balance"  # equal ones share a row
    for label, (_, _, keep, remove, add) in told.items():
        removal, _, fitting = sheets[label].partition("What is installed, dispenser first")
        fitting = fitting.partition("The ways at this position")[0]
        bought = set(PART_NUMBER.findall(fitting)) - set(PART_NUMBER.findall(keep))
        assert set(PART_NUMBER.findall(add)) == bought, label
        goes_or_stays = set(PART_NUMBER.findall(removal.partition("What goes and what stays")[2]))
        assert set(PART_NUMBER.findall(f"{keep} {remove}")) == goes_or_stays, label


def costs_of(report: bytes) -> list[Decimal]:
    """Return the amounts of the report's table of costs, its total last."""
    table = text_of(report).partition("Item Grant Amount")[2].partition("Against today's upkeep")[0]
    return [Decimal(one.replace(",", "")) for one in re.findall(r"([\d,]+\.\d\d) USD", table)]


def test_cost_payback_and_days_are_those_of_report_survey_and_calendar(bench: Workbench) -> None:
    conversion, service = conversion_of(bench, "conversion_assist"), bench.converting()
    page = text_of(service.one_page(conversion, US))
    *costs, total = costs_of(service.pdf(conversion, US))
    assert len(costs) == 6
    assert sum(costs) == total
    assert f"Cost of the conversion {total:,.2f} USD" in page
    money = conversion.survey.conversion.money
    assert money.upkeep_today_per_year is not None and money.upkeep_after_per_year is not None
    # simple payback is cost over yearly saving
    assert f"Pays back in {total / (money.upkeep_today_per_year - money.upkeep_after_per_year):.1f} years" in page
    calendar = service.calendar(conversion, US).decode()
    days = re.findall(r"^DT(?:START|END)[^:]*:(\d{8})", calendar, re.MULTILINE)
    first, last = (date.fromisoformat(one) for one in (min(days), max(days)))
    assert first == conversion.survey.conversion.sequence.start_date
    assert f"From {first:%b} {first.day}, {first.year} to {last:%b} {last.day}, {last.year}." in page


@pytest.mark.parametrize("demo", DEMOS)
def test_departures_and_kept_parts_are_those_of_the_decision_table(bench: Workbench, demo: str) -> None:
    conversion, service = conversion_of(bench, demo), bench.converting()
    row = re.search(
        r"Good practice \(followed in this report\) [\d.,]+ USD (\d+) ([\d.,]+ USD) (\d+)",
        text_of(service.pdf(conversion, US)),
    )
    assert row is not None
    page = text_of(service.one_page(conversion, US))
    assert f"Departures {row[3]} broken" in page
    assert f"Parts kept {row[1]}, new for {row[2]}" in page


def test_a_missing_price_makes_the_cost_at_least_and_says_what_is_missing(bench: Workbench) -> None:
    conversion, service = conversion_of(bench, "conversion_balance"), bench.converting()
    page = text_of(service.one_page(conversion, US))
    *costs, total = costs_of(service.pdf(conversion, US))
    assert sum(costs) == total
    assert f"Cost of the conversion at least {total:,.2f} USD" in page
    assert re.search(r"Work \d+\.\d h: not known", page)
    assert "The price of an hour of work" in page
    priced = text_of(service.one_page(conversion_of(bench, "conversion_assist"), US))
    assert "at least" not in priced.partition("Cost of the conversion")[2].partition("made up of")[0]


def test_the_page_says_what_is_asked_of_whom_and_that_it_is_no_permission(bench: Workbench) -> None:
    page = text_of(bench.converting().one_page(conversion_of(bench, "conversion_balance"), US))
    for words in (
        "Air agency: Maine",
        "Written approval comes before the work.",
        "notice to the tank agency 30 days before",  # 40 CFR 280.32(b)
        "Weights and measures office",
        "no permission",
        "Assumed: usual values wherever nobody answered, at every position; the sheet of each says which",
        "Demonstration catalog: invented parts and prices",
    ):
        assert words in page


def test_a_position_that_cannot_be_converted_is_open_on_the_page(bench: Workbench) -> None:
    survey = demo_survey("conversion_balance")
    # California's retail stations keep recovery at the nozzle: 17 CCR 94011 and the air districts' rules
    survey = survey.model_copy(
        update={
            "conversion": survey.conversion.model_copy(update={"agency": "california_retail"}),
            "site": survey.site.model_copy(update={"name": "A & B <Fuels>\u202e", "address": "Road 1\nTown"}),
        }
    )
    conversion = bench.converting().convert(survey)
    page = text_of(bench.converting().one_page(conversion, US))
    assert "A & B <Fuels>" in page
    assert "Address: Road 1, Town" in page
    assert "not allowed here" in page
    assert page.index("not allowed here") < page.index("Name:")
    refused = [one.position.label for one in conversion.positions if one.outcome.value == "not_allowed"]
    assert refused == ["1A", "1B"]
    assert "Positions that cannot be converted as asked 1A, 1B: Not allowed" in page
    html = bench.converting().one_page(conversion, US, form=PaperForm.HTML)
    row = next(row for row in rows_of(html) if row[0] in ("1A", "1A, 1B"))
    assert row[2].startswith("hangs on as it is:") and row[3] == "–" and row[4] == "Not allowed"


def test_equal_conversions_give_equal_bytes_and_html_says_the_same(bench: Workbench) -> None:
    conversion, service = conversion_of(bench, "conversion_balance"), bench.converting()
    pdf, html = service.one_page(conversion, US), service.one_page(conversion, US, form=PaperForm.HTML)
    assert pdf == service.one_page(conversion, US)
    shown = {one.rstrip(".,") for one in figures(html.decode().partition("<body")[2])}
    assert {one.rstrip(".,") for one in figures(text_of(pdf))} - shown <= {"1"}  # the number of the page


def test_a_station_too_large_for_a_sheet_takes_a_second_and_loses_nothing(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_balance")
    many: list[PositionConversion] = []
    for number in range(1, 13):
        for one in conversion.positions:
            blend = one.position.liquid.model_copy(update={"blend_percent": float(number)})
            changes = {"label": f"far {one.position.label} {number}", "liquid": blend}
            many.append(replace(one, position=one.position.model_copy(update=changes)))
    pages = pages_of(bench.converting().one_page(replace(conversion, positions=tuple(many)), US))
    assert len(pages) > 1
    told = " ".join(" ".join(pages).split())
    assert all(one.position.label in told for one in many)
    assert "Customers and staff" in pages[-1]


def big_station(times: int) -> Survey:
    """Return the demo conversion so many times over, with the answers of each position and names of its own."""
    demo = demo_survey("conversion_balance")
    copies = tuple(
        one.model_copy(update={"label": f"{copy}-{one.label}", "dispenser": f"{copy}-{one.dispenser}"})
        for copy in range(1, times + 1)
        for one in demo.positions
    )
    return demo.model_copy(update={"positions": copies})


@lru_cache(maxsize=1)
def big_conversion(bench: Workbench) -> SiteConversion:
    return bench.converting().convert(big_station(60))


@pytest.mark.parametrize("language", list(Language))
def test_a_station_of_300_positions_stands_on_one_page_which_tells_how_many_there_are(
    bench: Workbench, language: Language
) -> None:
    service = bench.converting()
    conversion = big_conversion(bench)
    page = pages_of(service.one_page(conversion, US, None, language))
    assert len(page) == 1
    text = " ".join(page[0].split())
    assert text.count("60-2A E15") == 2  # what hangs there, and its tank
    assert "30-2A E15" not in text
    words = service.words(US, language)
    assert words.say("many_places", first="1-1A, 1-1B, 2-1A", last="60-1B", count=120) in text


def test_every_position_of_a_tank_that_changes_is_named_once_in_the_report_of_a_big_station(bench: Workbench) -> None:
    report = conversion_content(big_conversion(bench), bench.converting().words(US, Language.ENGLISH), ())
    named = [
        cell
        for block in report.blocks
        if isinstance(block, Table)
        for row in block.rows
        for cell in map(str, row.cells)
        if "1-2A E15, 2-2A E15" in cell and "…" not in cell
    ]
    assert [one.split(", ") for one in named] == [[f"{copy}-2A E15" for copy in range(1, 61)]]
