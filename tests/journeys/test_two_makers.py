"""A catalogue in which two makers give one number, through the commands of a job: the two are never mixed up."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from spoutline import assets
from two_makers import MAKER, NUMBER, OTHER, OTHER_PRICE, catalogue_of_two_makers

SITE = "Twin Number Fuels"


@pytest.fixture
def go(spoutline: Callable[..., Any], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[..., Any]:
    """Return a function that runs a command over the demonstration parts and one nozzle more, of the other maker."""
    folder = catalogue_of_two_makers(tmp_path / "catalog")
    monkeypatch.setattr(assets, "catalogue_folder", lambda: folder)
    return lambda command, *rest: spoutline(command, "--database", tmp_path / "own.sqlite3", *rest)


@pytest.fixture
def survey(tmp_path: Path) -> Callable[..., Path]:
    def write(**decisions: Any) -> Path:
        position = {"label": "1A", "liquid": {"family": "gasoline", "blend_percent": 10}, "decisions": decisions}
        path = tmp_path / "survey.json"
        path.write_text(json.dumps({"site": {"name": SITE}, "positions": [position]}))
        return path

    return write


def named(maker: str) -> dict[str, str]:
    return {"maker": maker, "number": NUMBER}


@pytest.mark.parametrize(("kept", "refused"), [(MAKER, OTHER), (OTHER, MAKER)])
def test_a_pin_and_a_refusal_by_maker_hang_the_part_meant(
    go: Callable[..., Any], survey: Callable[..., Path], kept: str, refused: str, tmp_path: Path
) -> None:
    for decisions in ({"pinned": [named(kept)]}, {"pinned": [named(kept)], "refused": [named(refused)]}):
        done = go("plan", survey(**decisions), "--json")
        nozzle = json.loads(done.out)["positions"][0]["set"][-1]
        assert (done.code, nozzle["part_number"], nozzle["maker"]) == (0, NUMBER, kept)
    paper = tmp_path / "bill.csv"
    assert go("bill", survey(pinned=[named(kept)]), "--csv", paper).code == 0
    rows = list(csv.DictReader(io.StringIO(paper.read_text(encoding="utf-8-sig"))))
    assert [row["Maker"] for row in rows if row["Part number"] == NUMBER] == [kept]


def test_a_bare_number_of_two_makers_is_bad_input_that_lists_them(
    go: Callable[..., Any], survey: Callable[..., Path], tmp_path: Path
) -> None:
    stock = tmp_path / "stock.csv"
    stock.write_text(f"part_number,quantity\n{NUMBER},1\n")
    path = survey()
    hanging = json.loads(go("plan", path, "--json").out)["positions"][0]["set"][-1]["part_number"]
    for done in (
        go("plan", survey(pinned=[NUMBER])),
        go("plan", survey(refused=[NUMBER])),
        go("whynot", survey(), "1A", NUMBER),
        go("swap", survey(), "1A", hanging, "--stock", stock),
    ):
        assert done.code == 2
        assert MAKER in done.err
        assert OTHER in done.err


def test_an_unknown_maker_of_a_known_number_is_told_whose_it_is(
    go: Callable[..., Any], survey: Callable[..., Path]
) -> None:
    done = go("plan", survey(pinned=[named("Nobody At All")]))
    assert done.code == 2
    assert "positions[0].decisions.pinned[0]" in done.err
    assert MAKER in done.err
    assert OTHER in done.err


def test_why_not_swap_and_records_take_maker_and_number(
    go: Callable[..., Any], survey: Callable[..., Path], tmp_path: Path
) -> None:
    assert go("whynot", survey(), "1A", f"{OTHER} {NUMBER}").code == 0
    assert go("whynot", survey(pinned=[named(MAKER)]), "1A", f"{OTHER.upper()} {NUMBER}").code == 1
    stock = tmp_path / "stock.csv"
    for text in (f"part_number,quantity\n{OTHER} {NUMBER},1\n", f"part_number,quantity,maker\n{NUMBER},1,{OTHER}\n"):
        stock.write_text(text)
        done = go("swap", survey(pinned=[named(MAKER)]), "1A", NUMBER, "--stock", stock)
        assert done.code == 0
        assert f"Take out {MAKER} {NUMBER}; put in {OTHER} {NUMBER}" in done.out
    day = ("--on", "2026-11-27", "--reason", "wear")
    wear = go("record", "wear", SITE, "1A", f"{MAKER} {NUMBER}", "--fitted", f"{OTHER} {NUMBER}", *day)
    assert wear.code == 0
    assert f"{MAKER} {NUMBER} → {OTHER} {NUMBER}" in go("record", "list", SITE).out


@pytest.mark.parametrize(("maker", "price"), [(MAKER, "71.90"), (OTHER, OTHER_PRICE)])
def test_a_quotation_takes_the_price_of_the_maker(
    go: Callable[..., Any], survey: Callable[..., Path], tmp_path: Path, maker: str, price: str
) -> None:
    terms = tmp_path / "terms.toml"
    terms.write_text(
        'currency = "USD"\n[seller]\nname = "Invented Seller"\n[customer]\nname = "Invented Owner"\n'
        '[heading]\nnumber = "T-1"\ndated = 2026-11-25\n'
    )
    lines = tmp_path / "order.csv"
    assert go("quote", survey(pinned=[named(maker)]), "--terms", terms, "--csv", lines).code == 0
    rows = list(csv.DictReader(io.StringIO(lines.read_text(encoding="utf-8-sig"))))
    found = [(row["maker"], row["unit_price"]) for row in rows if row["part_number"] == NUMBER]
    assert found == [(maker, price)]
