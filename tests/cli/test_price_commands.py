"""`catalogue price-list` and `catalogue price`: taken in with validity, asked on a day, quoted by."""

from __future__ import annotations

import csv
import json
import re
from collections.abc import Callable, Iterable
from io import StringIO
from pathlib import Path

import pytest

from program_runs import Spoutline

Run = Callable[..., tuple[int, str, str]]
NAME = "Office list"
# an invented price file; what is expected of it is read off by eye
FILE = "number,group,from_quantity,unit_price\nFX-1,couplings,1,12.50\nFX-1,couplings,10,11.00\n"
TABLE = "Part No.;Description;Price USD\nFX-1;Coupling;12.75\nFX-2;Hose;40.00\n"
IMPORT = ("--into", NAME, "--maker", "Fennel Works", "--currency", "USD")


@pytest.fixture
def book(own_database: Path, spoutline: Spoutline, tmp_path: Path) -> Run:
    def run(*words: str) -> tuple[int, str, str]:
        done = spoutline("--database", str(own_database), "catalogue", *words)
        return done.code, done.out, done.err

    (tmp_path / "prices.csv").write_text(FILE)
    (tmp_path / "table.csv").write_text(TABLE)
    assert run("new", NAME)[0] == 0
    code, _, err = run(
        "import", str(tmp_path / "table.csv"), "--into", NAME, "--maker", "Fennel Works", "--kind", "swivel"
    )
    assert code == 0, err
    return run


def test_the_price_of_a_day_names_its_list(book: Run, tmp_path: Path) -> None:
    file = str(tmp_path / "prices.csv")
    for name, first, last in (("h1", "2026-01-01", "2026-06-30"), ("h2", "2026-07-01", "2026-12-31")):
        words = ("--id", name, "--valid-from", first, "--valid-to", last)
        code, _, err = book("price-list", "import", file, *IMPORT, *words)
        assert code == 0, err
    code, out, _ = book("price", f"{NAME}@draft", "FX-1", "--on", "2026-08-01", "--quantity", "12", "--json")
    told = json.loads(out)
    assert code == 0
    assert [(one["id"], one["standing"]) for one in told["price_lists"]] == [("h2", "applies"), ("h1", "expired")]
    assert told["price_lists"][0]["unit_price"] == "11.00"
    assert told["plain_prices"] == [{"currency": "USD", "price": "12.75"}]
    code, out, _ = book("price", f"{NAME}@draft", "FX-1", "--on", "2027-08-01")
    assert code == 1
    assert "no price list applies" in out
    assert "has ended" in out


def test_a_suppliers_table_goes_into_a_list(book: Run, tmp_path: Path) -> None:
    words = ("--id", "fennel", "--valid-from", "2026-01-01", "--supplier", "Larch Supply")
    code, _, err = book("price-list", "import", str(tmp_path / "table.csv"), *IMPORT, *words)
    assert code == 0, err
    code, out, _ = book("price-list", "list", f"{NAME}@draft", "--json")
    (one,) = json.loads(out)["price_lists"]
    assert (one["id"], one["supplier"], one["parts"], one["valid_to"]) == ("fennel", "Larch Supply", 2, None)
    code, out, _ = book("price", f"{NAME}@draft", "FX-2", "--on", "2026-08-01")
    assert "40" in out.splitlines()[0]
    assert book("price-list", "remove", NAME, "fennel")[0] == 0
    assert json.loads(book("price-list", "list", f"{NAME}@draft", "--json")[1])["price_lists"] == []


def test_numbers_and_prices_alone_go_into_a_list_and_numbers_of_no_part_are_told(book: Run, tmp_path: Path) -> None:
    file = tmp_path / "net.csv"
    file.write_text("FX-1,12.80\nFX-7,9.00\n")
    words = ("price-list", "import", str(file), *IMPORT, "--id", "net", "--valid-from", "2026-01-01")
    code, out, err = book(*words)
    assert code == 0, err
    assert "numbers that no part of the draft has: 1, such as FX-7" in out
    assert json.loads(book(*words, "--json")[1])["of_no_part"] == ["FX-7"]
    code, out, _ = book("price", f"{NAME}@draft", "FX-1", "--on", "2026-08-01", "--json")
    assert json.loads(out)["price_lists"][0]["unit_price"] == "12.80"


def test_wrong_files_and_options_change_nothing(book: Run, tmp_path: Path) -> None:
    bad = tmp_path / "bad.csv"
    bad.write_text("number,group,from_quantity,unit_price\nFX-1,,0,12.50\nFX-1,,1,-3\n")
    words = ("--id", "x", "--valid-from", "2026-07-01")
    code, _, err = book("price-list", "import", str(bad), *IMPORT, *words)
    assert code == 2
    assert "line 2" in err
    assert "line 3" in err
    backwards = ("--id", "x", "--valid-from", "2026-07-01", "--valid-to", "2026-01-01")
    code, _, err = book("price-list", "import", str(tmp_path / "prices.csv"), *IMPORT, *backwards)
    assert code == 2
    assert "valid_from" in err
    assert book("price", f"{NAME}@draft", "FX-9")[0] == 2
    assert book("price", f"{NAME}@draft", "FX-1", "--quantity", "0")[0] == 2
    assert book("price-list", "remove", NAME, "none")[0] == 2
    assert json.loads(book("price-list", "list", f"{NAME}@draft", "--json")[1])["price_lists"] == []


INVENTED_LISTS = re.findall(
    r"^id = ", (Path(__file__).parents[2] / "catalog/prices/lists.toml").read_text(encoding="utf-8"), re.MULTILINE
)


def test_a_quotation_goes_by_the_list_of_its_catalogue(
    own_database: Path, spoutline: Spoutline, written: Callable[..., Path], tmp_path: Path
) -> None:
    def run(*words: object) -> str:
        done = spoutline("--database", str(own_database), *words)
        assert done.code == 0, done.err
        return done.out

    export, survey, order = tmp_path / "all.zip", written(), tmp_path / "order.csv"
    run("catalogue", "export", "Demonstration", "--out", export)
    run("catalogue", "new", "Office")
    taken = [json.loads(run("catalogue", "import", export, "--into", "Office", "--json")) for _ in range(2)]
    assert [one["price_lists"] for one in taken] == [len(INVENTED_LISTS), 0]
    run("catalogue", "publish", "Office", "--note", "first", "--by", "Ada Fenn")
    terms = tmp_path / "terms.toml"
    terms.write_text(
        '[seller]\nname = "Hedgerow Supply"\n[customer]\nname = "Hollow Ford Fuels"\n'
        '[heading]\nnumber = "HS-1"\ndated = 2026-11-25\n'
    )
    run("quote", survey, "--terms", terms, "--csv", order, "--catalogue", "Office")
    before = list(csv.DictReader(StringIO(order.read_text(encoding="utf-8-sig"))))
    # The lists that come with the invented catalogue price it alone; a copy has them as its own.
    listed = json.loads(run("catalogue", "price-list", "list", "Office", "--json"))
    assert set().union(*lists_of(before).values()) <= {one["id"] for one in listed["price_lists"]}
    assert listed["price_lists_of_folders"] == []
    shown = json.loads(run("catalogue", "price-list", "list", "Demonstration", "--json"))
    assert [one["id"] for one in shown["price_lists_of_folders"]] == [one["id"] for one in listed["price_lists"]]
    nozzle = next(row for row in before if row["maker"] == "Quillmere Forgeworks")
    prices = tmp_path / "own.csv"
    # its price of today: the choice of sets stays, the list that it names does not
    prices.write_text(f"number,group,from_quantity,unit_price\n{nozzle['part_number']},,1,71.90\n")
    words = ("--maker", "Quillmere Forgeworks", "--currency", "USD", "--valid-from", "2026-11-01")
    run("catalogue", "price-list", "import", prices, "--into", "Office", "--id", "own-2026", *words)
    run("catalogue", "publish", "Office", "--note", "prices", "--by", "Ada Fenn")
    differing = json.loads(run("catalogue", "diff", "Office@1", "Office@2", "--json"))
    assert differing["price_lists"] == [{"change": "new", "id": "own-2026"}]
    assert differing["changes"] == []
    run("quote", survey, "--terms", terms, "--csv", order, "--catalogue", "Office")
    after = list(csv.DictReader(StringIO(order.read_text(encoding="utf-8-sig"))))
    assert lists_of(before)[nozzle["part_number"]] != {"own-2026"}
    assert lists_of(after) == lists_of(before) | {nozzle["part_number"]: {"own-2026"}}
    run("quote", survey, "--terms", terms, "--csv", order, "--catalogue", "Office@1")
    assert lists_of(csv.DictReader(StringIO(order.read_text(encoding="utf-8-sig")))) == lists_of(before)
    # A list that is taken out of the copy prices no part of it any more.
    run("catalogue", "price-list", "remove", "Office", lists_of(before)[nozzle["part_number"]].pop())
    run("catalogue", "price-list", "remove", "Office", "own-2026")
    run("catalogue", "publish", "Office", "--note", "without", "--by", "Ada Fenn")
    unpriced = spoutline(
        *("--database", own_database, "quote", survey, "--terms", terms, "--csv", order, "--catalogue", "Office@3")
    )
    assert unpriced.code == 2
    assert nozzle["part_number"] in unpriced.err


def lists_of(rows: Iterable[dict[str, str]]) -> dict[str, set[str]]:
    """Return the price lists that the lines of each part name."""
    found: dict[str, set[str]] = {}
    for row in rows:
        found.setdefault(row["part_number"], set()).add(row["price_list"])
    return found


def test_lists_are_written_as_a_paper_and_told_as_a_change_of_the_draft(book: Run, tmp_path: Path) -> None:
    assert book("publish", NAME, "--note", "first", "--by", "Ada Fenn")[0] == 0
    words = ("--id", "h1", "--valid-from", "2026-01-01")
    assert book("price-list", "import", str(tmp_path / "prices.csv"), *IMPORT, *words)[0] == 0
    assert "price lists changed" in book("list")[1]
    paper = tmp_path / "lists.pdf"
    code, out, err = book("price-list", "export", f"{NAME}@draft", "--pdf", str(paper))
    assert code == 0, err
    assert str(paper) in out
    assert paper.read_bytes().startswith(b"%PDF-")
    code, _, err = book("price-list", "export", f"{NAME}@draft", "--id", "h9", "--pdf", str(tmp_path / "no.pdf"))
    assert (code, "one of: h1" in err, (tmp_path / "no.pdf").exists()) == (2, True, False)
    assert book("price-list", "export", f"{NAME}@draft")[0] == 2
