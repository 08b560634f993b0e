"""Order files of suppliers: each in the columns that it wants, all of them together what the quotation orders.

What stands in them is read back with csv and openpyxl and held against the quotation's own order lines and its
internal sheet, which are made elsewhere; encodings are those of Python, by their names in the register of character
sets (IANA).
"""

from __future__ import annotations

import csv
import io
import json
from decimal import Decimal
from pathlib import Path

import openpyxl
import pytest

from program_runs import Run
from short_terms import RECONNECTABLE, SINGLE_USE, short_terms
from spoutline.bootstrap.demos import demo_survey

TRADE = """
[[buying]]
percent = 37.31
[selling]
method = "list_less_discount"
percent = 10
"""
OPTION = "Single-use"
COLUMNS = (
    "Pos=line", "Article=part_number", "Text=description", "Qty=quantity", "Packs=quantity:packs", "Net each=unit_cost",
    "Net=cost", "Account=fixed:4711; north", "Kilos=mass", "Pounds=mass:pounds", "Day=dated", "Your no.=order",
)  # fmt: skip


@pytest.fixture
def run(own_run: Run) -> Run:
    Path("survey.json").write_text(demo_survey("marina").model_dump_json(round_trip=True))
    Path("terms.toml").write_text(short_terms("SO-1", TRADE, SINGLE_USE, RECONNECTABLE))

    own_run("quotation", "keep", "survey.json", "--terms", "terms.toml", "--by", "R. Example")
    return own_run


def keep(run: Run, name: str, *more: str, columns: tuple[str, ...] = COLUMNS) -> str:
    return run("supplier", "set", name, *(word for one in columns for word in ("--column", one)), *more)


def quoted(run: Run) -> list[dict[str, str]]:
    """Return the lines of the option as the quotation's own internal table has them."""
    run("quotation", "margin", "SO-1", "--csv", "lines.csv", "--force")
    rows = csv.DictReader(io.StringIO(Path("lines.csv").read_text(encoding="utf-8-sig")))
    return [row for row in rows if row["option"] == OPTION]


def suppliers(run: Run) -> list[dict[str, object]]:
    return json.loads(run("supplier", "orders", "SO-1", "--option", OPTION, "--json"))["suppliers"]


def written(run: Run, name: str, *, delimiter: str = ",", encoding: str = "utf-8-sig") -> list[list[str]]:
    run("supplier", "order", "SO-1", name, "--option", OPTION, "--csv", "out.csv", "--force")
    text = Path("out.csv").read_bytes().decode(encoding)
    return list(csv.reader(io.StringIO(text, newline=""), delimiter=delimiter))


def test_the_orders_of_all_suppliers_together_are_the_lines_of_the_quotation(run: Run) -> None:
    own, makers = quoted(run), {row["maker"] for row in quoted(run)}
    assert len(makers) > 2
    found: dict[tuple[str, str], int] = {}
    cost = Decimal(0)
    for maker in makers:
        keep(run, maker, columns=("Maker=maker", *COLUMNS))
        head, *rows = written(run, maker)
        assert head == ["Maker", *(one.partition("=")[0] for one in COLUMNS)]
        for row in rows:
            cells = dict(zip(head, row, strict=True))
            found[cells["Maker"], cells["Article"]] = int(cells["Qty"])
            cost += Decimal(cells["Net"])
            assert cells["Account"] == "4711; north"
            assert cells["Day"] == "2026-11-25"
            assert cells["Your no."] == "SO-1"
    assert found == {(row["maker"], row["part_number"]): int(row["quantity"]) for row in own}
    assert cost == sum(Decimal(row["cost"]) for row in own)
    assert sum(Decimal(str(one["cost"])) for one in suppliers(run)) == cost


def test_no_price_of_the_customer_goes_to_a_supplier(run: Run) -> None:
    own = quoted(run)
    prices = {row["unit_price"] for row in own} - {row["unit_cost"] for row in own}
    for maker in {row["maker"] for row in own}:
        keep(run, maker)
        assert not prices & {cell for row in written(run, maker) for cell in row}


def test_pieces_are_counted_in_packs_and_weighed_in_pounds_where_wanted(run: Run) -> None:
    """1 lb is 0.45359237 kg exactly (international yard and pound agreement of 1959; NIST SP 811, B.8)."""
    maker = quoted(run)[0]["maker"]
    keep(run, maker, columns=("Qty=quantity", "Pack=pack", "Packs=quantity:packs", "Kilos=mass", "Pounds=mass:pounds"))
    _, *rows = written(run, maker)
    assert rows
    for quantity, pack, packs, kilos, pounds in rows:
        assert int(packs) * int(pack) == int(quantity)
        assert abs(Decimal(pounds) * Decimal("0.45359237") - Decimal(kilos)) <= Decimal("0.001")


def test_separator_decimal_sign_encoding_day_and_headings_are_the_suppliers(run: Run) -> None:
    maker = quoted(run)[0]["maker"]
    plain = keep(run, maker, columns=("Net=cost", "Day=dated", "Größe=description", "Konto=fixed:Nord süd"))
    assert "Größe=description" in plain
    before = written(run, maker)
    options = ("--separator", "semicolon", "--decimal", "comma", "--encoding", "windows-1252", "--days", "day_first")
    run("supplier", "set", maker.upper(), *options, "--no-headings")
    rows = written(run, maker, delimiter=";", encoding="cp1252")
    assert before[0] == ["Net", "Day", "Größe", "Konto"]
    assert [row[0] for row in rows] == [row[0].replace(".", ",") for row in before[1:]]
    assert {(row[1], row[3]) for row in rows} == {("25.11.2026", "Nord süd")}
    document = json.loads(run("supplier", "show", maker, "--json"))
    assert (document["separator"], document["headings"], len(document["columns"])) == ("semicolon", False, 4)
    run("supplier", "set", maker, "--days", "month_first", "--separator", "tab")
    assert written(run, maker, delimiter="\t", encoding="cp1252")[0][1] == "11/25/2026"


def test_the_workbook_has_the_same_rows_with_numbers_as_numbers(run: Run) -> None:
    maker = quoted(run)[0]["maker"]
    keep(run, maker)
    text = written(run, maker)
    run("supplier", "order", "SO-1", maker, "--option", OPTION, "--xlsx", "out.xlsx")
    run(
        "supplier", "order", "SO-1", maker, "--option", OPTION, "--xlsx", "out.xlsx"
    )  # the program's own may be replaced
    sheet = openpyxl.load_workbook("out.xlsx").active
    assert sheet is not None
    head, *rows = [list(row) for row in sheet.iter_rows(values_only=True)]
    assert head == text[0]
    for row, cells in zip(rows, text[1:], strict=True):
        for value, cell in zip(row, cells, strict=True):
            is_text = isinstance(value, str)
            assert value == cell if is_text else abs(float(value) - float(cell)) < 1e-9, (value, cell)
        assert isinstance(row[head.index("Qty")], int)
        assert isinstance(row[head.index("Article")], str)


def test_no_text_is_taken_for_a_formula(run: Run) -> None:
    maker = quoted(run)[0]["maker"]
    keep(run, maker, columns=("=1+1=part_number", "Bill=fixed:=cmd|' /C calc'!A0", "At=fixed:@home"))
    head, first, *_ = written(run, maker)
    assert head[0] == "'=1+1"
    assert first[1:] == ["'=cmd|' /C calc'!A0", "'@home"]
    run("supplier", "order", "SO-1", maker, "--option", OPTION, "--xlsx", "out.xlsx")
    sheet = openpyxl.load_workbook("out.xlsx").active
    assert sheet is not None
    assert {cell.data_type for row in sheet.iter_rows() for cell in row} == {"s"}


def test_several_makers_are_ordered_from_one_supplier(run: Run) -> None:
    one, other, *_ = sorted({row["maker"] for row in quoted(run)})
    keep(run, "Wharf Wholesale", "--maker", one, "--maker", other, columns=("Maker=maker", "Article=part_number"))
    named = {str(found["supplier"]): found for found in suppliers(run)}
    assert named["Wharf Wholesale"]["makers"] == [one, other]
    assert one not in named
    assert {row[0] for row in written(run, "wharf wholesale")[1:]} == {one, other}
    told = run("supplier", "set", one, "--column", "Article=part_number", expect=2)
    assert "Wharf Wholesale already" in told


def test_a_maker_without_a_layout_gets_the_usual_file(run: Run) -> None:
    maker = quoted(run)[0]["maker"]
    head, *rows = written(run, maker)
    assert head[:4] == ["Line", "Part number", "Description", "Quantity"]
    assert {str(row[0]) for row in rows} == {str(number) for number in range(1, len(rows) + 1)}
    assert all(not found["is_kept"] for found in suppliers(run))


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--separator", "comma", "--decimal", "comma"), "another sign between cells"),
        (("--column", "Qty=quantity:pounds"), "pieces, packs"),
        (("--column", "Qty=amount"), "part_number"),
        (("--column", "Qty=line:packs"), "none"),
        (("--maker", "x" * 81), "makers"),
    ],
)
def test_what_cannot_be_is_refused_in_words_and_nothing_is_kept(run: Run, words: tuple[str, ...], said: str) -> None:
    keep(run, "Larkspindle")
    before = run("supplier", "show", "Larkspindle", "--json")
    assert said in run("supplier", "set", "Larkspindle", *words, expect=2)
    assert run("supplier", "show", "Larkspindle", "--json") == before


def test_a_sign_that_the_encoding_lacks_is_named(run: Run) -> None:
    maker = quoted(run)[0]["maker"]
    keep(run, maker, "--encoding", "iso-8859-1", columns=("Account=fixed:Łódź",))
    told = run("supplier", "order", "SO-1", maker, "--option", OPTION, "--csv", "out.csv", expect=2)
    assert "'Ł'" in told
    assert not Path("out.csv").exists()


def test_what_is_kept_is_listed_and_taken_out_again(run: Run) -> None:
    keep(run, "Larkspindle")
    assert "Larkspindle" in run("supplier", "list")
    assert "removed" in run("supplier", "remove", "LARKSPINDLE")
    assert json.loads(run("supplier", "list", "--json")) == {"suppliers": []}
    assert "supplier list" in run("supplier", "show", "Larkspindle", expect=2)
    keep(run, "Larkspindle")  # its name is free again
    assert "Larkspindle" in run("supplier", "list")


def test_an_option_that_is_none_and_an_unknown_supplier_are_told(run: Run) -> None:
    assert "Reconnectable" in run("supplier", "orders", "SO-1", expect=2)
    told = run("supplier", "order", "SO-1", "Nobody", "--option", OPTION, "--csv", "out.csv", expect=2)
    assert quoted(run)[0]["maker"] in told


def test_the_files_of_all_suppliers_are_written_together_each_as_its_supplier_reads_it(run: Run) -> None:
    own = quoted(run)
    makers = sorted({row["maker"] for row in own})
    keep(run, makers[0], "--file", "xlsx", columns=("Article=part_number", "Qty=quantity"))
    keep(run, makers[1], "--separator", "semicolon", columns=("Article=part_number", "Qty=quantity"))
    told = json.loads(run("supplier", "files", "SO-1", "--option", OPTION, "--folder", "orders", "--json"))["files"]
    assert [one["supplier"] for one in told] == makers
    assert sorted(Path("orders").iterdir()) == sorted(Path(one["file"]) for one in told)
    found: dict[tuple[str, str], int] = {}
    for one in told:
        path = Path(one["file"])
        assert path.name.startswith("SO-1-r1-")
        assert path.stem.endswith("-".join(one["supplier"].split()))
        if one["supplier"] == makers[0]:
            assert path.suffix == ".xlsx"
            sheet = openpyxl.load_workbook(path).active
            assert sheet is not None
            rows = [(str(row[0]), int(str(row[1]))) for row in list(sheet.values)[1:]]
        else:
            sign, number, quantity = (
                (";", "Article", "Qty") if one["supplier"] == makers[1] else (",", "Part number", "Quantity")
            )
            text = path.read_text(encoding="utf-8-sig").splitlines()
            rows = [(row[number], int(row[quantity])) for row in csv.DictReader(text, delimiter=sign)]
        found |= {(one["supplier"], part): pieces for part, pieces in rows}
    assert found == {(row["maker"], row["part_number"]): int(row["quantity"]) for row in own}
    # what lies there and may be somebody else's stays, and then nothing is written
    foreign = Path(told[-1]["file"])
    foreign.write_text("mine")
    Path(told[0]["file"]).unlink()
    refused = run("supplier", "files", "SO-1", "--option", OPTION, "--folder", "orders", expect=2)
    assert foreign.name in refused
    assert (foreign.read_text(), Path(told[0]["file"]).exists()) == ("mine", False)
    run("supplier", "files", "SO-1", "--option", OPTION, "--folder", "orders", "--force")
    assert Path(told[0]["file"]).exists()
    assert "folder is needed" in run(
        "supplier", "files", "SO-1", "--option", OPTION, "--folder", "terms.toml", expect=2
    )
