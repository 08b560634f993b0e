"""The commands site, quote and quotation do what the contract of the command line says."""

from __future__ import annotations

import csv
import io
import json
import shutil
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from paper_text import text_of

GASOLINE = {"family": "gasoline", "blend_percent": 10}
TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "HS-1"
dated = {dated}
"""


@pytest.fixture
def terms(tmp_path: Path) -> Callable[..., Path]:
    def write(more: str = "", dated: str = "2026-11-25") -> Path:
        path = tmp_path / "terms.toml"
        path.write_text(more + TERMS.format(dated=dated), encoding="utf-8")
        return path

    return write


def test_site_prints_a_document_whose_parts_add_up(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written(*({"label": str(number), "liquid": GASOLINE} for number in range(3)))
    done = spoutline("site", path, "--json", "--stock-price", "20.00")
    assert done.code == 0
    document = json.loads(done.out)
    assert document["format"] == "spoutline-site"
    assert [one["label"] for one in document["positions"]] == ["0", "1", "2"]
    sums = [Decimal(one["unit_price"]) * one["quantity"] for one in document["parts"]]
    assert sums == [Decimal(one["amount"]) for one in document["parts"]]
    assert sum(sums) == Decimal(document["total"])
    assert document["commonality"]["stock_price"] == "20.00"
    assert spoutline("site", path, "--json", "--stock-price", "20.00").out == done.out


def test_site_says_what_commonality_does_in_words(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("site", written(), "--stock-price", "5")
    words = " ".join(done.out.split())
    # a whip hose, a breakaway, a curb hose, a swivel and a nozzle: one position alone has nothing to share
    assert "Chosen together: 5 part numbers in sets instead of 5;" in words
    assert "the sets cost 0.00 more, stocking them 0.00 more." in words


@pytest.mark.parametrize("price", ["-1", "1.005", "many", "NaN", "1e30"])
def test_a_stock_price_that_is_no_amount_is_refused(spoutline: Any, written: Callable[..., Path], price: str) -> None:
    done = spoutline("site", written(), f"--stock-price={price}")
    assert done.code == 2
    assert "--stock-price" in done.err


def test_quote_writes_every_paper(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    names = {"--pdf": b"%PDF", "--xlsx": b"PK", "--csv": b"\xef\xbb\xbf", "--pick-list": b"%PDF", "--bill": b"%PDF"}
    outputs = [item for name in names for item in (name, tmp_path / f"out{name}")]
    done = spoutline("quote", written(), "--terms", terms(), *outputs)
    assert (done.code, done.err) == (0, "")
    assert done.out.splitlines()[0] == "HS-1, Nov 25, 2026 until Dec 25, 2026: Maple Ferry Fuels, 1 position"
    for name, start in names.items():
        assert (tmp_path / f"out{name}").read_bytes().startswith(start)


@pytest.mark.parametrize(
    ("name", "code", "told"),
    [
        ("small_town", 0, ""),
        ("truck_stop", 0, ""),
        ("marina", 0, ""),
        ("mixed_fuels", 1, "without a set that keeps every must: 3 B30"),
        pytest.param("refit_48", 0, "", marks=pytest.mark.at_length),
    ],
)
def test_ready_terms_quote_every_ready_station(spoutline: Any, tmp_path: Path, name: str, code: int, told: str) -> None:
    """No part of a ready station lacks a price; the blend without a listing class is told as not offered."""
    terms, survey, paper = tmp_path / "t.toml", tmp_path / "s.json", tmp_path / "q.pdf"
    assert spoutline("demo", "--terms", "--out", terms).code == 0
    assert spoutline("demo", name, "--out", survey).code == 0
    done = spoutline("quote", survey, "--terms", terms, "--pdf", paper)
    assert done.code == code
    assert bool(done.err) == bool(told)
    assert told in done.err
    assert ("Nothing is offered for: 3 B30 (no listing class)" in done.out) == bool(told)
    assert "No price" not in done.out
    assert ("LS-S113 → LS-S101 (4A diesel, 4B diesel)" in done.out) == (name == "refit_48")
    assert paper.exists()


def test_a_discount_for_a_maker_that_no_list_knows_stops_the_quotation(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    paper = tmp_path / "q.pdf"
    slip = terms('buying = [{ maker = "Larkspindel Couplings", percent = 25 }]\n')
    done = spoutline("quote", written(), "--terms", slip, "--pdf", paper)
    assert done.code == 2
    assert "buying[0].maker" in done.err
    assert "did you mean Larkspindle Couplings?" in done.err
    assert not paper.exists()


def test_quote_tells_each_option_in_short(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    """The amounts are those of the lines for an order system: goods alone, since nothing else is charged here."""
    options = 'stock_price = "5.00"\n[[options]]\ntitle = "Plain"\n[[options]]\ntitle = "Reconnectable"\n'
    lines = tmp_path / "lines.csv"
    path = terms(options + 'breakaway = "reconnectable"\n')
    done = spoutline("quote", written(), "--terms", path, "--csv", lines)
    rows = list(csv.DictReader(io.StringIO(lines.read_text(encoding="utf-8-sig"))))
    for title in ("Plain", "Reconnectable"):
        amounts = [Decimal(row["amount"]) for row in rows if row["option"] == title]
        assert f"  {title}: {sum(amounts)} USD, {len(amounts)} part numbers, covers 1 of 1 hoses\n" in done.out
    assert "Chosen together: 5 part numbers in sets instead of 5;" in done.out


def test_a_quotation_in_short_names_replaced_parts_and_missing_prices(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    """The catalogue's file of swivels says that LS-S101 took the place of LS-S113."""
    survey = written({"label": "7", "liquid": GASOLINE, "decisions": {"pinned": ["LS-S113"]}})
    late = terms(dated="2028-05-01")
    done = spoutline("quote", survey, "--terms", late, "--csv", tmp_path / "q.csv", "--draft")
    assert done.code == 0
    assert "Replaced by its maker: LS-S113 → LS-S101 (7)" in done.out
    assert "No price: LS-S101: the price list has run out" in done.out


def test_a_missing_price_stops_the_quotation_and_names_the_part(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    paper = tmp_path / "q.pdf"
    done = spoutline("quote", written(), "--terms", terms(dated="2028-05-01"), "--pdf", paper)
    assert done.code == 2
    assert "expired" in done.err
    assert "[[overrides]]" in done.err
    assert not paper.exists()
    assert spoutline("quote", written(), "--terms", terms(dated="2028-05-01"), "--pdf", paper, "--draft").code == 0
    assert paper.exists()


def test_faulty_terms_are_told_field_by_field(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    path = terms('currency = "dollars"\nstock_price = -1\nrebate = 3\n')
    done = spoutline("quote", written(), "--terms", path, "--pdf", tmp_path / "q.pdf")
    assert done.code == 2
    for field in ("currency", "stock_price", "rebate"):
        assert field in done.err


def test_quote_needs_a_file_to_write_and_an_option_that_exists(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    assert spoutline("quote", written(), "--terms", terms()).code == 2
    done = spoutline("quote", written(), "--terms", terms(), "--pick-list", tmp_path / "p.pdf", "--option", "2")
    assert done.code == 2
    assert "option 1 only" in done.err


def test_a_logo_stands_on_the_paper_and_a_bad_one_is_refused(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path
) -> None:
    from PIL import Image

    path = terms()
    path.write_text(path.read_text().replace('Supply"', 'Supply"\nlogo = "logo.png"'))
    paper = tmp_path / "q.pdf"
    assert "seller.logo" in spoutline("quote", written(), "--terms", path, "--pdf", paper).err
    Image.new("RGB", (40, 20), "teal").save(tmp_path / "logo.png")
    assert spoutline("quote", written(), "--terms", path, "--pdf", paper).code == 0
    assert b"/Image" in paper.read_bytes()
    (tmp_path / "logo.png").write_bytes(b"no picture")
    done = spoutline("quote", written(), "--terms", path, "--pdf", paper)
    assert done.code == 2
    assert "PNG or JPEG" in done.err


def test_a_quotation_is_kept_issued_printed_again_and_answered(
    spoutline: Any, written: Callable[..., Path], terms: Callable[..., Path], tmp_path: Path, database_to_copy: Path
) -> None:
    own = Path(shutil.copy(database_to_copy, tmp_path / "own.sqlite3"))

    def go(*arguments: object) -> Any:
        done = spoutline("quotation", *arguments, "--database", own)
        assert done.err == ""
        assert done.code == 0
        return done.out

    assert go("keep", written(), "--terms", terms(), "--by", "Odile").split()[1:] == ["HS-1", "r1", "draft"]
    go("issue", 1, "--by", "Odile", "--pdf", tmp_path / "first.pdf")
    go("revise", 1, written(), "--terms", terms("[selling]\npercent = 5\n"), "--by", "Odile")
    go("print", 1, "--revision", 1, "--pdf", tmp_path / "again.pdf")
    assert (tmp_path / "again.pdf").read_bytes() == (tmp_path / "first.pdf").read_bytes()
    assert "terms Selling · Percent: 0 → 5" in go("changes", 1, 1, 2)
    assert "Venta · Porcentaje: 0 → 5" in go("changes", 1, 1, 2, "--language", "es")
    go("issue", 1, "--by", "Odile")
    assert "r2  accepted" in go("answer", 1, "accepted", "--by", "Merle", "--note", "by letter")
    assert "Merle: by letter" in go("show", 1)
    assert go("list", "hollow").count("HS-1") == 1
    assert go("touched", "--today", "2028-01-01") == ""
    assert go("expire", "--today", "2028-01-01") == ""
    refused = spoutline("quotation", "answer", 1, "declined", "--by", "Merle", "--database", own)
    assert refused.code == 2


def test_the_usual_terms_stand_where_a_job_says_nothing(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path, own_data_folder: Path
) -> None:
    """Letterhead and labour come from the person's own file; a table that both name is the job's alone."""
    from PIL import Image

    folder = own_data_folder / "spoutline"
    folder.mkdir(exist_ok=True)
    Image.new("RGB", (40, 20), "teal").save(folder / "own.png")
    (folder / "usual_terms.toml").write_text(
        '[seller]\nname = "Usual Supply"\nlogo = "own.png"\n[customer]\nname = "Nobody"\n'
        '[labour]\nhourly_rate = 50.00\n[[labour.tasks]]\ntitle = "Usual work"\nhours = 2\n'
    )
    job = tmp_path / "job.toml"
    job.write_text('[customer]\nname = "Hollow Ford"\n[heading]\nnumber = "J-1"\ndated = 2026-11-25\n')
    paper = tmp_path / "q.pdf"
    assert spoutline("quote", written(), "--terms", job, "--pdf", paper).code == 0
    text = text_of(paper)
    for words in ("Usual Supply", "Hollow Ford", "Usual work", "100.00"):
        assert words in text
    assert "Nobody" not in text
    assert b"/Image" in paper.read_bytes()
