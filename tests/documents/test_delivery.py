"""Longest lead time and earliest delivery, counted by hand on the calendar, on paper, in workbook, shell and window."""

from __future__ import annotations

import csv
from datetime import date
from pathlib import Path

import pytest

from documents.readers import story
from documents.spreadsheet import Workbook
from paper_text import text_of
from planning.quoting_terms import terms_of
from program_runs import Spoutline
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.quotation.delivery import delivery_text
from spoutline.documents.quotation.papers import pick_list_pdf, quotation_pdf, quotation_workbook
from spoutline.gui.models.quotation_amounts import amount_rows
from spoutline.model.delivery import delivery_of
from spoutline.model.language import Language
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedLine
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

OPTIONS = [
    {"title": "Single-use", "breakaway": "single_use"},
    {"title": "Reconnectable", "breakaway": "reconnectable"},
]


def quoted(workbench: Workbench, **terms: object) -> Quotation:
    survey = demo_survey("marina")
    return workbench.quoting().quote(survey, terms_of(**terms), Display(UnitSystem.SI)).quotation


def with_leads(quotation: Quotation, *leads: tuple[int, ...]) -> Quotation:
    """Return the quotation with the lead times of the first lines of each option set, and 3 days for all others."""
    options = []
    for option, days in zip(quotation.options, leads, strict=True):
        padded = (*days, *(3 for _ in option.lines))
        lines = (
            line.model_copy(update={"lead_time_days": lead}) for line, lead in zip(option.lines, padded, strict=False)
        )
        options.append(option.model_copy(update={"lines": tuple(lines)}))
    return quotation.model_copy(update={"options": tuple(options)})


@pytest.fixture(scope="module")
def quotation(workbench: Workbench) -> Quotation:
    """Return two options dated 25 November 2026 of which the slowest part takes 14 days and 40 days."""
    return with_leads(quoted(workbench, options=OPTIONS), (7, 14), (40, 14, 40))


def lines_of(quotation: Quotation, *days: int) -> tuple[QuotedLine, ...]:
    line = quotation.options[0].lines[0]
    return tuple(
        line.model_copy(update={"part_number": f"X-{n}", "lead_time_days": lead}) for n, lead in enumerate(days)
    )


@pytest.mark.parametrize(
    ("days", "ordered_on", "earliest", "slowest"),
    [
        # counted on the calendar: November has 30 days, December 31, the February of 2028 29
        ((7, 21, 14), date(2026, 11, 25), date(2026, 12, 16), ["X-1"]),
        ((40, 3, 40), date(2026, 11, 25), date(2027, 1, 4), ["X-0", "X-2"]),
        ((2,), date(2028, 2, 28), date(2028, 3, 1), ["X-0"]),
        ((0, 0), date(2026, 11, 25), date(2026, 11, 25), ["X-0", "X-1"]),
    ],
)
def test_the_longest_lead_time_counts_in_calendar_days_from_the_day_of_the_order(
    quotation: Quotation, days: tuple[int, ...], ordered_on: date, earliest: date, slowest: list[str]
) -> None:
    found = delivery_of(lines_of(quotation, *days), ordered_on)
    assert found is not None
    assert (found.lead_days, found.earliest, [one.number for one in found.waits_for]) == (max(days), earliest, slowest)


def test_nothing_ordered_is_not_delivered() -> None:
    assert delivery_of((), date(2026, 11, 25)) is None


def test_the_paper_and_the_workbook_tell_each_options_own_day(quotation: Quotation) -> None:
    paper = " ".join(text_of(quotation_pdf(quotation, 1, story())).split())
    first, second = (option.lines for option in quotation.options)
    assert f"Longest lead time 14 days ({first[1].part_number})" in paper
    assert f"Longest lead time 40 days ({second[0].part_number}, {second[2].part_number})" in paper
    for told in ("on Dec 9, 2026 at the earliest", "on Jan 4, 2027 at the earliest", "calendar days"):
        assert told in paper
    sheets = Workbook(quotation_workbook(quotation, 1, story())).values
    for number, day in ((1, "Dec 9, 2026"), (2, "Jan 4, 2027")):
        cells = {str(row[0].value): row[9].value for row in sheets[f"Option {number}"].iter_rows()}
        assert cells["Earliest delivery"] == day


def test_the_pick_list_tells_the_day_of_its_option(quotation: Quotation) -> None:
    paper = " ".join(text_of(pick_list_pdf(quotation, 1, 1, story())).split())
    assert "40 days" in paper
    assert "Jan 4, 2027, counted in calendar days" in paper
    assert "Dec 9, 2026" not in paper


def test_a_single_option_tells_it_on_its_first_page(workbench: Workbench) -> None:
    made = with_leads(quoted(workbench), (21, 21, 21, 21))
    paper = " ".join(text_of(quotation_pdf(made, 1, story())).split())
    assert "Earliest delivery Dec 16, 2026, counted in calendar days" in paper
    assert "+1)" in paper, "three of the four slowest parts are named, the other is counted"


@pytest.mark.parametrize(
    ("language", "told"),
    [
        (Language.GERMAN, "frühestens am 04.01.2027"),
        (Language.SPANISH, "días corridos"),
        (Language.FRENCH, "jours calendaires"),
    ],
)
def test_it_is_told_in_every_language(
    workbench: Workbench, quotation: Quotation, language: Language, told: str
) -> None:
    words = workbench.story(Display(UnitSystem.SI), language)
    assert told in delivery_text(quotation.options[1], quotation, words)


def test_the_window_shows_it_beside_the_amounts(quotation: Quotation) -> None:
    rows = {row.title: row for row in amount_rows(quotation, story())}
    assert rows["Longest lead time"].cells == ("14 days", "40 days")
    assert rows["Longest lead time"].differs
    assert rows["Earliest delivery"].cells == ("Dec 9, 2026", "Jan 4, 2027")


def test_the_shell_tells_it_too(spoutline: Spoutline, tmp_path: Path) -> None:
    survey, terms = tmp_path / "survey.json", tmp_path / "terms.toml"
    survey.write_text(demo_survey("marina").model_dump_json(round_trip=True))
    terms.write_text(
        '[seller]\nname = "Hedgerow Supply"\n[customer]\nname = "Hollow Ford"\n'
        '[heading]\nnumber = "D-1"\ndated = 2026-11-25\n'
    )
    told = " ".join(spoutline("quote", survey, "--terms", terms, "--csv", tmp_path / "order.csv").out.split())
    with (tmp_path / "order.csv").open(newline="") as lines:
        slowest = max(int(row["lead_time_days"]) for row in csv.DictReader(lines))
    assert f"Longest lead time {slowest} days" in told
