"""Options that leave hoses out: told on every paper, compared on what both cover, issued on a person's word alone.

The expectations are relations between what the program says in different places; none is a figure of the trade.
"""

from __future__ import annotations

import io
from collections.abc import Iterator
from pathlib import Path

import openpyxl
import pytest

from paper_text import page_text, text_of
from program_runs import Run
from short_terms import RECONNECTABLE, SINGLE_USE, short_terms
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.quotation import Quotation
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

TRADE = """
[labour]
hourly_rate = 62.00
[[labour.tasks]]
title = "Exchange of a set"
per = "position"
hours = 0.75
[[taxes]]
name = "Sales tax"
percent = 6.25
on = ["goods"]
"""
SI = Display(UnitSystem.SI)
# a position of this station asks for a breakaway that can be put together again, so that one option leaves it out
STATION, LEFT_OUT = "conversion_balance", "2B E10"


@pytest.fixture
def bench(own_database: Path) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=str(own_database)))
    yield bench
    bench.close()


def terms(number: int) -> Path:
    path = Path(f"terms{number}.toml")
    path.write_text(short_terms(f"HS-{number}", TRADE, SINGLE_USE, RECONNECTABLE))
    return path


def survey_file(survey: Survey) -> Path:
    path = Path("survey.json")
    path.write_text(survey.model_dump_json(round_trip=True))
    return path


def quoted(bench: Workbench, survey: Survey) -> Quotation:
    service = bench.quoting()
    return service.quote(survey, service.terms().read_terms(terms(9)), SI).quotation


def test_the_difference_for_common_hoses_is_that_of_a_quotation_of_those_alone(
    bench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    survey = demo_survey(STATION)
    first, other = quoted(bench, survey).options
    assert first.on_common is None
    assert {one.label for one in first.without_set} ^ {one.label for one in other.without_set} == {LEFT_OUT}
    common = other.on_common
    assert common is not None
    alone = survey.model_copy(
        update={"positions": tuple(one for one in survey.positions if one.label in common.labels)}
    )
    first_alone, other_alone = quoted(bench, alone).options
    assert (common.first_total, common.own_total) == (first_alone.total, other_alone.total)
    assert common.difference == other_alone.total - first_alone.total
    assert other_alone.on_common is None, "both cover the same hoses now"


def test_coverage_stands_on_page_one_in_the_columns_and_in_the_workbook(own_run: Run) -> None:
    survey = survey_file(demo_survey(STATION))
    told = own_run("quote", survey, "--terms", terms(1), "--pdf", "q.pdf", "--xlsx", "q.xlsx", expect=1)
    assert "covers 4 of 5 hoses" in told
    assert "covers 5 of 5 hoses" in told
    assert "against the first option for the 4 hoses that both cover" in told
    first_page = page_text("q.pdf", 0)
    assert f"covers 4 of 5 hoses; leaves out {LEFT_OUT}" in first_page
    assert "covers 5 of 5 hoses" in first_page
    assert "Hoses covered covers 4 of 5 hoses ◆ covers 5 of 5 hoses" in text_of("q.pdf")
    book = openpyxl.load_workbook(io.BytesIO(Path("q.xlsx").read_bytes()))
    one, other = (
        [str(cell.value) for row in book[name].rows for cell in row if cell.value] for name in book.sheetnames[:2]
    )
    assert "covers 4 of 5 hoses" in one
    assert "covers 5 of 5 hoses" in other
    assert any(text.startswith("Total for the hoses that both cover") and "(4)" in text for text in other)


def test_an_incomplete_option_is_issued_on_a_named_persons_word_alone(own_run: Run) -> None:
    survey = survey_file(demo_survey(STATION))
    own_run("quotation", "keep", survey, "--terms", terms(2))
    told = own_run("quotation", "issue", 1, "--by", "R. Example", expect=2)
    assert "covers 4 of 5 hoses" in told
    assert LEFT_OUT in told
    assert " draft" in own_run("quotation", "show", 1).splitlines()[0]
    own_run("quotation", "issue", 1, "--by", "R. Example", "--incomplete", "customer keeps that hose", "--pdf", "q.pdf")
    first_page = page_text("q.pdf", 0)
    assert "issued so by R. Example: customer keeps that hose" in first_page
    assert own_run("quotation", "show", "HS-2") == own_run("quotation", "show", 1)
    assert "issued so by R. Example: customer keeps that hose" in own_run("quotation", "show", 1)


def test_the_word_is_kept_in_the_revision_and_asked_for_again_in_the_next(bench: Workbench, own_run: Run) -> None:
    survey = survey_file(demo_survey(STATION))
    own_run("quotation", "keep", survey, "--terms", terms(3))
    own_run("quotation", "issue", 1, "--by", "R. Example", "--incomplete", "as asked")
    (word,) = bench.quoting().life().at_revision(1, 1).incomplete_words
    assert (word.option, word.labels, word.by, word.reason) == ("Single-use", (LEFT_OUT,), "R. Example", "as asked")
    own_run("quotation", "revise", 1, survey, "--terms", terms(3))
    own_run("quotation", "issue", 1, "--by", "R. Example", expect=2)
    assert bench.quoting().life().at_revision(1, 2).incomplete_words == ()
