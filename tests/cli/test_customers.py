"""Customers from the shell: kept in the book once, taken from there by quotations, printed on their papers."""

from __future__ import annotations

import contextlib
import json
import re
from decimal import Decimal
from html import unescape
from pathlib import Path

import pytest

from paper_text import text_of
from program_runs import Run
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey

TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Somebody else"
[heading]
number = "CU-1"
dated = 2026-11-25
[[buying]]
percent = 50
[selling]
method = "{method}"
percent = 10
[[selling.exceptions]]
group = "hoses"
percent = 12
"""
NAME = "Hollow Ford Fuels"
FIELDS = (
    "--address", "1 Mill Lane\nHollow Ford", "--delivery-address", "Gate 3, Reed Wharf", "--contact", "Merle",
    "--telephone", "555-0134", "--email", "merle@example.org", "--tax-number", "TX-77", "--payment", "Net 45",
    "--discount", "hoses = 20", "--discount", "nozzles=15",
)  # fmt: skip


@pytest.fixture
def run(own_run: Run) -> Run:
    Path("survey.json").write_text(demo_survey("marina").model_dump_json(round_trip=True))
    Path("terms.toml").write_text(TERMS.format(method="list_less_discount"))

    return own_run


def names(run: Run, *words: str) -> list[str]:
    return [one["name"] for one in json.loads(run("customer", "list", *words, "--json"))["customers"]]


def test_a_customer_is_added_changed_found_and_removed(run: Run) -> None:
    run("customer", "add", NAME, *FIELDS)
    run("customer", "add", "Amber Quay Oil")
    assert names(run) == ["Amber Quay Oil", NAME]
    assert names(run, "mill FORD") == [NAME]
    assert "a customer of this name" in run("customer", "add", "HOLLOW  ford fuels", expect=2)
    run("customer", "set", "hollow ford fuels", "--payment", "Net 10", "--name", "Hollow Ford Fuels Ltd")
    document = json.loads(run("customer", "show", "Hollow Ford Fuels Ltd", "--json"))
    assert (document["payment_terms"], document["registration"]) == ("Net 10", "TX-77")
    assert document["discounts"] == [{"group": "hoses", "percent": "20"}, {"group": "nozzles", "percent": "15"}]
    told = run("customer", "show", "Hollow Ford Fuels Ltd")
    assert "1 Mill Lane" in told
    assert "nozzles = 15" in told
    assert "no customer of this name" in run("customer", "show", NAME, expect=2)
    run("customer", "remove", "Amber Quay Oil")
    assert names(run) == ["Hollow Ford Fuels Ltd"]
    run("customer", "add", "amber quay oil")
    assert names(run) == ["amber quay oil", "Hollow Ford Fuels Ltd"]


@pytest.mark.parametrize(
    ("said", "told"),
    [
        (("--discount", "hoses"), "write a discount group and its percentage"),
        (("--discount", "hoses=120"), "discounts"),
        (("--discount", "hoses=1", "--discount", "hoses=2"), "it occurs twice"),
        (("--contact", "x" * 201), "contact"),
        (("--contact", "a\u202eb"), "contact"),
    ],
)
def test_what_no_customer_can_have_is_told_and_nothing_is_kept(run: Run, said: tuple[str, ...], told: str) -> None:
    assert told in run("customer", "add", NAME, *said, expect=2)
    assert names(run) == []


def test_a_quotation_takes_its_customer_from_the_book(run: Run) -> None:
    run("customer", "add", NAME, *FIELDS)
    run("quotation", "keep", "survey.json", "--terms", "terms.toml", "--customer", "hollow ford fuels")
    run("quotation", "issue", 1, "--by", "R. Example", "--pdf", "q.pdf")
    paper = text_of("q.pdf")
    for text in (NAME, "1 Mill Lane", "Gate 3, Reed Wharf", "Merle", "555-0134", "TX-77", "Net 45"):
        assert text in paper
    assert "Somebody else" not in paper
    lines = [line for one in json.loads(run("quotation", "margin", 1, "--json"))["options"] for line in one["lines"]]
    # list price 100, bought at 50: sold at 80 to this customer a hose leaves 37.5 %, a nozzle at 85 leaves 41.18 %,
    # anything else at 90 leaves 44.44 %; prices are rounded to the cent
    for start, percent in (("TH-H", 37.5), ("QW-N", 41.18), ("LS-S", 44.44)):
        shares = [float(line["margin"]["percent"]) for line in lines if line["part_number"].startswith(start)]
        assert shares
        assert all(abs(share - percent) < 0.1 for share in shares), (start, shares)
    run("customer", "remove", NAME)
    assert NAME in run("quotation", "show", 1), "the quotation keeps what it has of the customer"


def test_discounts_off_the_list_are_refused_where_prices_rest_on_the_cost(run: Run) -> None:
    run("customer", "add", NAME, *FIELDS)
    Path("terms.toml").write_text(TERMS.format(method="mark_up_on_cost"))
    told = run("quotation", "keep", "survey.json", "--terms", "terms.toml", "--customer", NAME, expect=2)
    assert "selling.method" in told
    assert "list_less_discount" in told


def survey_of(customer: str, name: str = "survey.json") -> None:
    survey = demo_survey("marina")
    site = survey.site.model_copy(update={"customer": customer})
    Path(name).write_text(survey.model_copy(update={"site": site}).model_dump_json(round_trip=True))


def test_a_site_remembers_its_customer_and_its_quotations_go_there_unasked(run: Run) -> None:
    survey_of("")
    run("customer", "add", NAME, *FIELDS)
    assert "no customer of the book" in run("customer", "site", "survey.json")
    run("customer", "site", "survey.json", "--set", "hollow ford fuels", "--out", "theirs.json")
    assert json.loads(run("customer", "site", "theirs.json", "--json"))["customer"]["payment_terms"] == "Net 45"
    told = run("quotation", "keep", "theirs.json", "--terms", "terms.toml")
    assert "'Somebody else' gives way to Hollow Ford Fuels" in told
    run("quotation", "issue", 1, "--by", "R. Example", "--pdf", "q.pdf")
    paper = text_of("q.pdf")
    assert NAME in paper
    assert "Gate 3, Reed Wharf" in paper
    run("quote", "theirs.json", "--terms", "terms.toml", "--pdf", "quoted.pdf")
    assert "Net 45" in text_of("quoted.pdf")
    run("customer", "site", "theirs.json", "--none", "--out", "nobodys.json")
    document = json.loads(run("customer", "site", "nobodys.json", "--json"))
    assert (document["survey_names"], document["customer"]) == ("", None)


def test_a_customer_named_beside_the_terms_or_theirs_goes_before_that_of_the_site(run: Run) -> None:
    survey_of(NAME)
    run("customer", "add", NAME)
    run("customer", "add", "Amber Quay Oil")
    for asked in (("--customer", "Amber Quay Oil"), ("--customer-of-terms",), ()):
        run("quotation", "keep", "survey.json", "--terms", "terms.toml", *asked)
    found = json.loads(run("quotation", "list", "--sort", "customer", "--json"))["quotations"]
    assert [(one["id"], one["customer"]) for one in found] == [(1, "Amber Quay Oil"), (3, NAME), (2, "Somebody else")]


def test_a_site_finds_its_customer_under_the_name_that_it_had(run: Run) -> None:
    survey_of(NAME)
    run("customer", "add", NAME)
    run("customer", "set", NAME, "--name", "Hollow Ford Energy")
    run("customer", "set", "Hollow Ford Energy", "--name", "Ford Energy", "--contact", "Merle")
    assert json.loads(run("customer", "site", "survey.json", "--json"))["customer"]["name"] == "Ford Energy"
    run("quotation", "keep", "survey.json", "--terms", "terms.toml")
    assert "Ford Energy" in run("quotation", "show", 1)
    run("customer", "add", NAME, "--contact", "Odile")  # who has a name goes before who had it
    assert json.loads(run("customer", "site", "survey.json", "--json"))["customer"]["contact"] == "Odile"


def test_the_site_of_a_survey_of_the_book_takes_a_customer_there(run: Run, own_database: Path) -> None:
    with contextlib.closing(open_workbench(Settings(database=str(own_database)))) as bench:
        number = bench.book().create(demo_survey("marina")).id
        run("customer", "add", NAME)
        run("customer", "site", "--number", number, "--set", NAME)
        stored = bench.book().stored(number)
    assert (stored.survey.site.customer, stored.revision) == (NAME, 2)
    assert f"customer {NAME}" in run("customer", "site", "--number", number)
    assert "no customer of this name" in run("customer", "site", "--number", number, "--set", "Nobody", expect=2)
    assert "name a file" in run("customer", "site", "--set", NAME, expect=2)
    assert "saved there" in run("customer", "site", "--number", number, "--none", "--out", "x.json", expect=2)


def test_a_quotation_of_a_numbered_survey_is_that_of_the_survey_of_the_book(run: Run, own_database: Path) -> None:
    with contextlib.closing(open_workbench(Settings(database=str(own_database)))) as bench:
        stored = bench.book().create(demo_survey("marina"))
        own = stored.survey.model_copy(update={"survey_id": stored.id})
        Path("numbered.json").write_text(survey_to_json(own))
        other = own.model_copy(update={"site": own.site.model_copy(update={"name": "Another quay"})})
        Path("foreign.json").write_text(survey_to_json(other))
        run("quotation", "keep", "numbered.json", "--terms", "terms.toml")
        run("quotation", "keep", "foreign.json", "--terms", "terms.toml")
        run("quotation", "keep", "survey.json", "--terms", "terms.toml")
        pins = [bench.quoting().life().stored(one).quotation.pins for one in (1, 2, 3)]
        # that of the file without a number is of the only survey of its name
        assert [one.id for one in bench.quoting().life().of_survey(stored.id)] == [3, 1]
        bench.book().create(stored.survey)
        assert [one.id for one in bench.quoting().life().of_survey(stored.id)] == [1]
    found = [(one.survey_id, one.survey_revision) for one in pins]
    assert found == [(stored.id, 1), (None, None), (None, None)]


@pytest.mark.parametrize(
    ("language", "title", "terms"),
    [("en", "Customers", "Terms of payment"), ("de", "Kunden", "Zahlungsbedingungen"), ("fr", "Clients", "Conditions")],
)
def test_the_list_of_customers_is_a_paper(run: Run, tmp_path: Path, language: str, title: str, terms: str) -> None:
    run("customer", "add", "Hollow Ford Fuels", "--address", "1 Mill Lane\nHollow Ford", "--payment", "Net 45")
    run("customer", "add", "<b>Ash & Co", "--email", "ash@ash.example")
    run("customer", "list", "--pdf", tmp_path / "all.pdf", "--language", language)
    told = text_of(tmp_path / "all.pdf")
    for words in (
        title,
        terms,
        "Hollow Ford Fuels 1 Mill Lane Hollow Ford",
        "Net 45",
        "<b>Ash & Co",
        "ash@ash.example",
    ):
        assert words in told
    run("customer", "list", "ash", "--pdf", tmp_path / "some.html")
    page = (tmp_path / "some.html").read_text(encoding="utf-8")
    assert "&lt;b&gt;Ash &amp; Co" in page
    assert "Hollow Ford" not in page


def test_the_list_of_quotations_is_an_internal_paper_with_sums_by_status(run: Run, tmp_path: Path) -> None:
    survey_of("")
    for number in ("L-1", "L-2"):
        Path("terms.toml").write_text(TERMS.format(method="list_less_discount").replace("CU-1", number))
        run("quotation", "keep", "survey.json", "--terms", "terms.toml", "--by", "Ada")
    run("quotation", "issue", "2", "--by", "Ada")
    run("quotation", "follow-up", "2", "2026-12-01")
    listed = json.loads(run("quotation", "list", "--json"))["quotations"]
    run("quotation", "list", "--on", "2026-12-02", "--sort", "number", "--pdf", tmp_path / "list.pdf")
    told = text_of(tmp_path / "list.pdf")
    assert "Internal, not for the customer" in told
    assert "L-2" in told
    run("quotation", "list", "--sort", "number", "--pdf", tmp_path / "both.html")
    page = " ".join(unescape(re.sub(r"<[^>]+>", " ", (tmp_path / "both.html").read_text(encoding="utf-8"))).split())
    assert page.index("L-1") < page.index("L-2")
    for one in listed:
        total = f"{Decimal(one['total_low']):,.2f} {one['currency']}"
        assert page.count(total) >= 2, one  # in the list, and as the sum of its status
