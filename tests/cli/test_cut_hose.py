"""Hose cut to length on the command line: lengths in the draft, published, chosen, quoted by a price list."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

NAME = "Cut list"


def test_an_article_goes_into_the_draft_and_is_chosen_by_price(
    spoutline: Any, own_database: Path, tmp_path: Path
) -> None:
    def run(*words: object, code: int = 0) -> Any:
        done = spoutline("--database", str(own_database), *words)
        assert done.code == code, (done.out, done.err)
        return done

    survey, export = tmp_path / "s.json", tmp_path / "all.zip"
    run("demo", "small_town", "--out", survey)
    chosen = json.loads(run("plan", survey, "--json").out)["positions"][0]["set"]
    hose = next(one for one in chosen if one["slot"] == "curb_hose")
    run("catalogue", "export", "Demonstration", "--out", export)
    run("catalogue", "new", NAME)
    run("catalogue", "import", export, "--into", NAME)
    prices = tmp_path / "own.csv"
    prices.write_text(f"number,group,from_quantity,unit_price\n{hose['part_number']},H,1,90\n")
    words = ("--id", "own", "--maker", hose["maker"], "--currency", "USD", "--valid-from", "2026-01-01")
    run("catalogue", "price-list", "import", prices, "--into", NAME, *words)
    base = f"{hose['maker']} {hose['part_number']}"
    cut = ("--number", "ZC-7", "--unit", "ft", "--from", "7 ft", "--to", "16", "--step", "6 in")
    article = ("catalogue", "cut", NAME, base, *cut, "--price", "0.20 USD", "--fitted", "1 USD", "--price-list", "own")
    told = json.loads(run(*article, "--dry-run", "--json").out)
    assert (told["new"], told["changed"], told["gone"]) == (19, 0, 0)
    assert told["lengths"][1]["number"] == "ZC-7 7 ft 6 in"
    assert told["lengths"][1]["length_m"] == 2.286  # 7.5 x 0.3048
    assert told["lengths"][1]["prices"] == [{"currency": "USD", "minor": 250}]
    assert "19 new" in run(*article).out
    assert "0 new, 0 changed, 0 taken out" in run(*article).out
    listed = json.loads(run("catalogue", "price-list", "list", f"{NAME}@draft", "--json").out)["price_lists"]
    listed = [one for one in listed if one["id"] == "own"]  # beside those that came with the exchange file
    assert [one["parts"] for one in listed] == [20]
    run("catalogue", "publish", NAME, "--note", "first", "--by", "Ada Fenn")
    after = json.loads(run("plan", survey, "--json", "--catalogue", NAME).out)["positions"][0]
    cut_to = next(one for one in after["set"] if one["slot"] == "curb_hose")
    assert cut_to["part_number"].startswith("ZC-7 ")
    assert cut_to["part_number"] in run("plan", survey, "--catalogue", NAME).out
    shorter = (*article[: article.index("16")], "8", *article[article.index("16") + 1 :])
    assert "0 new, 0 changed, 16 taken out" in run(*shorter).out
    listed = json.loads(run("catalogue", "price-list", "list", f"{NAME}@draft", "--json").out)["price_lists"]
    listed = [one for one in listed if one["id"] == "own"]  # beside those that came with the exchange file
    assert [one["parts"] for one in listed] == [4]
    assert "such as 8 ft 6 in" in run(*article[:7], "ft", "--from", "long", *article[10:], code=2).err
    refused = run(*article[:-1], "none", code=2).err
    assert "one of: gr-2026-h2-eur, " in refused
    assert ", own, " in refused
