"""Cost and margin from the command line: told inside the house, on nothing that the customer gets, and asked about.

The shares expected follow from the percentages of the terms by hand: a list price of 100 bought at 37.31 % off costs
62.69; sold at 10 % off it brings 90, which leaves 27.31, 30.34 % of the price. Prices are rounded to the cent, which
shifts the share by 62.69 / 90 of the rounding, in percent of the price.
"""

from __future__ import annotations

import csv
import io
import json
from decimal import Decimal
from pathlib import Path

import openpyxl
import pytest

from documents.html_reading import shown_text
from paper_text import pages_of, text_of
from program_runs import Run
from short_terms import RECONNECTABLE, SINGLE_USE, short_terms
from spoutline.bootstrap.demos import demo_survey

TRADE = """
[[buying]]
percent = {buying}
[selling]
method = "list_less_discount"
percent = {selling}
"""
INTERNAL = "Internal, not for the customer"
REASON = "kept for the long account"


@pytest.fixture
def run(own_run: Run) -> Run:
    Path("survey.json").write_text(demo_survey("marina").model_dump_json(round_trip=True))

    return own_run


def keep(run: Run, number: int, buying: str, selling: str = "10", more: str = "") -> None:
    trade = TRADE.format(buying=buying, selling=selling)
    Path("terms.toml").write_text(short_terms(f"HS-{number}", trade, more, SINGLE_USE, RECONNECTABLE))
    run("quotation", "keep", "survey.json", "--terms", "terms.toml", "--by", "R. Example")


def rows_of(name: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(Path(name).read_text(encoding="utf-8-sig"))))


def test_the_margin_is_the_same_on_every_internal_form_and_each_says_that_it_is_internal(run: Run) -> None:
    keep(run, 1, "37.31")
    files = ("--pdf", "m.pdf", "--xlsx", "m.xlsx", "--csv", "m.csv")
    told = run("quotation", "margin", "HS-1", *files)
    run("quotation", "margin", 1, "--pdf", "m.html")
    document = json.loads(run("quotation", "margin", 1, "--json"))
    assert told.startswith(INTERNAL)
    assert document["internal"] is True
    pages = pages_of("m.pdf")
    assert all(INTERNAL in page for page in pages)
    assert INTERNAL in shown_text(Path("m.html").read_bytes())
    rows, lines = rows_of("m.csv"), [line for option in document["options"] for line in option["lines"]]
    assert rows
    assert len(rows) == len(lines)
    assert {row["internal"] for row in rows} == {"internal, not for the customer"}
    for row, line in zip(rows, lines, strict=True):
        cost, price = Decimal(row["unit_cost"]), Decimal(row["unit_price"])
        assert cost == Decimal(row["list_price"]) * Decimal("0.6269")
        assert Decimal(row["cost"]) == cost * int(row["quantity"])
        assert Decimal(row["margin"]) == (price - cost) * int(row["quantity"]) == Decimal(line["margin"]["margin"])
        shift = 70 * Decimal("0.005") / price  # percent, from half a cent in the price
        assert abs(Decimal(row["margin_percent"]) - Decimal("30.344")) <= shift + Decimal("0.005")
    for option in document["options"]:
        own = [row for row in rows if row["option"] == option["title"]]
        assert sum(Decimal(row["margin"]) for row in own) == Decimal(option["margin"]["margin"])
    margins = sorted(Decimal(option["margin"]["margin"]) for option in document["options"])
    assert [Decimal(document[name]["margin"]) for name in ("lowest", "highest")] == [margins[0], margins[-1]]
    book = openpyxl.load_workbook("m.xlsx")
    assert all(INTERNAL in (sheet.oddHeader.right.text or "") for sheet in book)
    first = [row[0].value for row in book.worksheets[1].iter_rows(min_row=2)]
    assert first == [row["part_number"] for row in rows if row["option"] == "Single-use"]


def test_another_buying_discount_gives_another_margin_at_the_same_price(run: Run) -> None:
    keep(run, 2, "25")
    keep(run, 3, "60")
    dear, cheap = (json.loads(run("quotation", "margin", one, "--json"))["lowest"] for one in (1, 2))
    assert dear["sold"] == cheap["sold"]
    # bought at 75 and at 40 of a list price of 100
    assert Decimal(cheap["cost"]) / Decimal(dear["cost"]) == Decimal(40) / Decimal(75)


def cells_of(name: str) -> list[str]:
    """Return every value and formula of a workbook."""
    found = []
    for is_value in (False, True):
        book = openpyxl.load_workbook(name, data_only=is_value)
        found += [str(cell.value) for sheet in book for row in sheet.rows for cell in row if cell.value is not None]
    return found


def test_nothing_that_the_customer_gets_tells_cost_or_margin(run: Run) -> None:
    keep(run, 4, "37.31", "40", "least_margin_percent = 12")
    run("quotation", "issue", 1, "--by", "R. Example", "--low-margin", REASON, "--pdf", "q.pdf", "--xlsx", "q.xlsx")
    run("quotation", "print", 1, "--csv", "order.csv")
    run("quote", "survey.json", "--terms", "terms.toml", "--html", "q.html")
    run("quotation", "margin", 1, "--csv", "m.csv", "--pdf", "m.pdf")
    rows = rows_of("m.csv")
    cent = Decimal("0.01")
    shown = {f"{Decimal(row['amount']):.2f}" for row in rows} | {f"{Decimal(row['unit_price']):.2f}" for row in rows}
    shown |= {f"{Decimal(row['list_price']):.2f}" for row in rows}
    costs = {str(Decimal(row[name]).quantize(cent)) for row in rows for name in ("unit_cost", "cost")} - shown
    assert len(costs) > 5
    cells = cells_of("q.xlsx")
    texts = {
        "pdf": text_of("q.pdf").replace(",", ""),
        "html": shown_text(Path("q.html").read_bytes()).replace(",", ""),
        "xlsx": "\n".join(cells),
        "order": Path("order.csv").read_text(encoding="utf-8-sig"),
    }
    internal = text_of("m.pdf").replace(",", "")
    assert any(cost in internal for cost in costs)
    assert REASON in internal
    for name, text in texts.items():
        tokens = {token.strip("$();") for token in text.split()} | set(text.split(","))
        assert not costs & tokens, name
        for word in ("Margin", "margin", "Cost", "below cost", "37.31", "62.69", REASON, INTERNAL):
            assert word not in text, (name, word)
    numbers = {str(Decimal(cell).quantize(cent)) for cell in cells if cell.replace(".", "", 1).isdecimal()}
    assert not costs & numbers


def test_lines_below_cost_are_issued_on_a_named_persons_word_alone(run: Run) -> None:
    keep(run, 5, "25", "60")  # 40 asked for what costs 75
    told = run("quotation", "issue", 1, "--by", "R. Example", expect=2)
    assert "below its cost" in told
    assert "--low-margin" in told
    document = json.loads(run("quotation", "margin", 1, "--json"))
    lines = [line for option in document["options"] for line in option["lines"]]
    assert {line["low"] for line in lines} == {"below_cost"}
    assert all(line["part_number"] in told for line in lines)
    assert "below cost" in run("quotation", "margin", 1)
    assert " draft" in run("quotation", "show", 1).splitlines()[0]
    run("quotation", "issue", 1, "--by", "R. Example", "--low-margin", REASON)
    words = json.loads(run("quotation", "margin", 1, "--json"))["words"]
    assert {(one["option"], one["by"], one["reason"]) for one in words} == {
        (title, "R. Example", REASON) for title in ("Single-use", "Reconnectable")
    }
    run("quotation", "revise", 1, "survey.json", "--terms", "terms.toml", "--by", "R. Example")
    run("quotation", "issue", 1, "--by", "R. Example", expect=2)


def test_lines_below_the_least_margin_are_asked_about_too(run: Run) -> None:
    keep(run, 6, "25", "10", "least_margin_percent = 17")  # 90 for 75 leaves 16.67 %
    assert "below the least margin of 17 %" in run("quotation", "issue", 1, "--by", "R. Example", expect=2)
    keep(run, 7, "25", "10", "least_margin_percent = 16")
    run("quotation", "issue", 2, "--by", "R. Example")


@pytest.mark.parametrize(
    ("language", "internal"),
    [("de", "Intern, nicht für den Kunden"), ("es", "Interno, no es para el cliente"),
     ("fr", "Interne, pas pour le client")],
)  # fmt: skip
def test_every_page_is_headed_so_in_every_language(run: Run, language: str, internal: str) -> None:
    keep(run, 8, "25")
    run("quotation", "margin", 1, "--language", language, "--pdf", "m.pdf", "--xlsx", "m.xlsx")
    assert all(internal in page for page in pages_of("m.pdf"))
    assert all(internal in sheet.oddHeader.right.text for sheet in openpyxl.load_workbook("m.xlsx"))


def test_the_list_tells_total_margin_and_days_and_is_sorted_and_filtered(run: Run) -> None:
    keep(run, 10, "25", "10")
    keep(run, 11, "60", "20")
    run("quotation", "issue", 1, "--by", "R. Example")

    def listed(*words: str) -> list[dict[str, str]]:
        found: list[dict[str, str]] = json.loads(run("quotation", "list", "--json", *words))["quotations"]
        return found

    assert [one["number"] for one in listed("--sort", "margin")] == ["HS-10", "HS-11"]
    assert [one["number"] for one in listed("--sort", "total")] == ["HS-11", "HS-10"]
    assert [one["number"] for one in listed("--status", "draft")] == ["HS-11"]
    (first,) = listed("hs-10")
    document = json.loads(run("quotation", "margin", "HS-10", "--json"))
    shares = sorted(Decimal(one["margin"]["percent"]) for one in document["options"])
    assert [Decimal(first[name]) for name in ("margin_low", "margin_high")] == [shares[0], shares[-1]]
    assert (first["dated"], first["valid_to"], first["status"]) == ("2026-11-25", "2026-12-25", "issued")
    assert f"{first['total_low']}…{first['total_high']} USD" in run("quotation", "list", "hs-10")
