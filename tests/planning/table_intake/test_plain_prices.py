"""A table of numbers and prices alone is taken as such without titles; what could be read two ways is asked for."""

from __future__ import annotations

from pathlib import Path

import pytest

from spoutline.model.faults import InputFault
from spoutline.planning.table_intake.column_map import TableMap, map_to_toml, read_map
from spoutline.planning.table_intake.into_draft import OpenedTable, open_supplier_table
from spoutline.planning.table_intake.into_price_list import price_list_in
from spoutline.planning.table_intake.plain_prices import is_amount
from spoutline.planning.table_intake.raw_table import column_letters
from spoutline.planning.table_intake.table_look import open_file

SAID = {"maker": "Fernmoor Works", "currency": "USD"}
HEAD = {"id": "net", "maker": "Fernmoor Works", "supplier": "", "currency": "USD", "valid_from": "2026-01-01"}


def opened(folder: Path, text: str, **choices: str) -> OpenedTable:
    path = folder / "net.csv"
    path.write_text(text, encoding="utf-8")
    return open_supplier_table(path, (), SAID | {"decimal_comma": ",5" in text}, choices)


def prices(table: OpenedTable) -> dict[str, str]:
    made = price_list_in(table, HEAD)
    assert made.price_list is not None, made.report.reports
    return {row.part_number: str(row.breaks[0].unit_price) for row in made.price_list.rows}


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("FW-1,12.50\nFW-2,7\n", {"FW-1": "12.50", "FW-2": "7.00"}),
        ("12.50,FW-1\n7,FW-2\n", {"FW-1": "12.50", "FW-2": "7.00"}),  # prices first
        ("Item,Net\nFW-1,12.50\nFW-2,7\n", {"FW-1": "12.50", "FW-2": "7.00"}),  # titles that say nothing
        ('Item,Net\nFW-1,"1,234.00"\n', {"FW-1": "1234.00"}),
        ("FW-1,$12.50\nFW-2,$7\n", {"FW-1": "12.50", "FW-2": "7.00"}),
        ("FW-1;12,50\nFW-2;7,00\n", {"FW-1": "12.50", "FW-2": "7.00"}),  # as spreadsheets of many countries write it
        ("4711\t12.50\n4712\t7.00\n", {"4711": "12.50", "4712": "7.00"}),
        ("\n\nFW-1,,12.50\nFW-2,,7\n", {"FW-1": "12.50", "FW-2": "7.00"}),  # blank rows and a blank column
    ],
)
def test_numbers_and_prices_alone_need_no_titles(tmp_path: Path, text: str, wanted: dict[str, str]) -> None:
    assert prices(opened(tmp_path, text)) == wanted


@pytest.mark.parametrize(
    "text",
    [
        "4711,5\n4712,7\n",  # which of them are prices?
        "4711.50,5.50\n4712.50,7.50\n",
        "FW-1,12.50\nFW-1,7.00\n",  # numbers stand once
        "FW-1,12.50\nFW-2,on request\n",
        "FW-1,12.50,14.00\nFW-2,7.00,8.00\n",
        "FW-1,Swivel\nFW-2,Hose\n",
        "Item,Net\n",
    ],
)
def test_what_is_not_sure_is_asked_for(tmp_path: Path, text: str) -> None:
    with pytest.raises(InputFault, match="a row of titles is needed"):
        opened(tmp_path, text)


def test_a_person_says_what_columns_without_titles_hold(tmp_path: Path) -> None:
    assert prices(opened(tmp_path, "4711,5\n4712,7\n", A="number", B="price")) == {"4711": "5.00", "4712": "7.00"}
    said = opened(tmp_path, "Item,Net,Old\nFW-1,12.50,9.00\nFW-2,7.00,6.00\n", A="number", Net="price")
    assert prices(said) == {"FW-1": "12.50", "FW-2": "7.00"}


def test_a_map_of_a_table_without_titles_is_taken_for_no_other(tmp_path: Path) -> None:
    """Two suppliers' files without titles look alike; the maker of one is not that of the other."""
    first = opened(tmp_path, "FW-1,12.50\nFW-2,7\n")
    kept = tmp_path / "map.toml"
    kept.write_text(map_to_toml(first.remembered), encoding="utf-8")
    other = tmp_path / "other.csv"
    other.write_text("ZZ-1,12.50\n", encoding="utf-8")
    file = open_file(other, (read_map(kept),), plain=TableMap())
    assert file.opened is not None
    assert not file.opened.is_recognised
    assert file.opened.table_map.maker == ""
    fields = {column_letters(one.place): one.field.key for one in file.opened.mapping if one.field}
    assert fields == {"A": "number", "B": "price"}


@pytest.mark.parametrize("text", ["12.50", "$ 12.50", "1'234.50 CHF", "7", "1 234,50", "EUR 7"])
def test_an_amount_is_known(text: str) -> None:
    assert is_amount(text)


@pytest.mark.parametrize("text", ["", "FW-1", "12.50-", "USD", "3/4", "1.5 in", "-5"])
def test_what_is_no_amount_is_none(text: str) -> None:
    assert not is_amount(text)
