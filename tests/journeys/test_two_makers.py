"""A catalogue in which two makers give one number, through the commands of a job: the two are never mixed up."""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader, PdfWriter

from paper_text import text_of
from spoutline import assets
from two_makers import MAKER, NUMBER, OTHER, OTHER_PRICE, catalogue_of_two_makers

SITE = "Twin Number Fuels"
WANTED = {"1A": MAKER, "1B": OTHER}


@pytest.fixture
def go(spoutline: Callable[..., Any], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[..., Any]:
    """Return a function that runs a command over the demonstration parts and one nozzle more, of the other maker."""
    folder = catalogue_of_two_makers(tmp_path / "catalog")
    monkeypatch.setattr(assets, "catalogue_folder", lambda: folder)
    return lambda command, *rest: spoutline(command, "--database", tmp_path / "own.sqlite3", *rest)


@pytest.fixture
def survey(tmp_path: Path) -> Callable[..., Path]:
    def write(**decisions: Any) -> Path:
        return written(tmp_path, {"label": "1A", "decisions": decisions})

    return write


@pytest.fixture
def both(tmp_path: Path) -> Path:
    """Return a survey of two positions: the nozzle of one maker at 1A, that of the other at 1B."""
    positions = ({"label": label, "decisions": {"pinned": [named(maker)]}} for label, maker in WANTED.items())
    return written(tmp_path, *positions)


@pytest.fixture
def terms(tmp_path: Path) -> Path:
    path = tmp_path / "terms.toml"
    path.write_text(
        'currency = "USD"\n[seller]\nname = "Invented Seller"\n[customer]\nname = "Invented Owner"\n'
        '[heading]\nnumber = "T-1"\ndated = 2026-11-25\n'
    )
    return path


def written(folder: Path, *positions: dict[str, Any]) -> Path:
    path = folder / "survey.json"
    liquid = {"family": "gasoline", "blend_percent": 10}
    path.write_text(
        json.dumps({"site": {"name": SITE}, "positions": [{"liquid": liquid, **position} for position in positions]})
    )
    return path


def rows_of(path: Path) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(path.read_text(encoding="utf-8-sig"))))


def nozzles_of_bill(path: Path) -> dict[str, str]:
    """Return the maker of the nozzle at each position of a bill."""
    return {row["Position"]: row["Maker"] for row in rows_of(path) if row["Part number"] == NUMBER}


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
    others = go("substitutes", survey(pinned=[named(MAKER)]), "1A", NUMBER).out
    assert f"Nozzle: {MAKER} {NUMBER} (" in others
    assert f"✓ {OTHER} {NUMBER} (" in others
    stock = tmp_path / "stock.csv"
    for text in (f"part_number,quantity\n{OTHER} {NUMBER},1\n", f"part_number,quantity,maker\n{NUMBER},1,{OTHER}\n"):
        stock.write_text(text)
        done = go("swap", survey(pinned=[named(MAKER)]), "1A", NUMBER, "--stock", stock)
        assert done.code == 0
        assert f"Take out {MAKER} {NUMBER}; put in {OTHER} {NUMBER}" in done.out
    day = ("--on", "2026-11-27", "--reason", "wear", "--survey", survey(pinned=[named(MAKER)]))
    wear = go("record", "wear", SITE, "1A", f"{MAKER} {NUMBER}", "--fitted", f"{OTHER} {NUMBER}", *day)
    assert wear.code != 2, "kept; the other part breaks what the survey asks for by name"
    assert f"{MAKER} {NUMBER} → {OTHER} {NUMBER}" in go("record", "list", SITE).out


def test_the_printed_plan_and_the_form_name_the_maker_only_where_the_number_is_of_two(
    go: Callable[..., Any], survey: Callable[..., Path], tmp_path: Path
) -> None:
    done = go("plan", survey(pinned=[named(OTHER)]))
    hanging = done.out.partition("Chosen set, dispenser first")[2].partition("List price of the set")[0]
    rows = [re.split(r" {2,}", line.strip()) for line in hanging.strip().splitlines()]
    shown = {row[0]: row[1] for row in rows if len(row) > 2}  # a long name goes on in a line of its own
    assert shown.pop("Nozzle") == f"{OTHER} {NUMBER}"
    assert shown
    assert not any(" " in number for number in shown.values())
    form = tmp_path / "form.pdf"
    assert go("pack", survey(pinned=[named(OTHER)]), "--form", form).code == 0
    reader = PdfReader(form)
    assert f"{OTHER} {NUMBER}" in text_of(form)
    fitted = {name: one["/V"] for name, one in (reader.get_fields() or {}).items() if name.endswith("_fitted")}
    assert f"{OTHER} {NUMBER}" in fitted.values()
    assert sum(" " in shown for shown in fitted.values()) == 1


@pytest.mark.parametrize(("maker", "price"), [(MAKER, "71.90"), (OTHER, OTHER_PRICE)])
def test_a_quotation_takes_the_price_of_the_maker(
    go: Callable[..., Any], survey: Callable[..., Path], terms: Path, tmp_path: Path, maker: str, price: str
) -> None:
    lines = tmp_path / "order.csv"
    assert go("quote", survey(pinned=[named(maker)]), "--terms", terms, "--csv", lines).code == 0
    rows = list(csv.DictReader(io.StringIO(lines.read_text(encoding="utf-8-sig"))))
    found = [(row["maker"], row["unit_price"]) for row in rows if row["part_number"] == NUMBER]
    assert found == [(maker, price)]


def test_an_installed_part_is_kept_as_that_of_its_maker(go: Callable[..., Any], tmp_path: Path) -> None:
    bare = written(tmp_path, {"label": "1A", "installed": [{"kind": "nozzle", "number": NUMBER}]})
    for command in ("plan", "convert"):
        done = go(command, bare)
        assert done.code == 2
        assert "positions[0].installed[0].number" in done.err
        assert MAKER in done.err
        assert OTHER in done.err
    for maker in (MAKER, OTHER):
        hanging = {"kind": "nozzle", "number": NUMBER, "maker": maker}
        whole = written(tmp_path, {"label": "1A", "installed": [hanging]})
        (position,) = json.loads(go("convert", whole, "--json").out)["positions"]
        kept = [one for one in position["differences"] if one["action"] == "keep"]
        assert [(one["part_number"], one["maker"]) for one in kept] == [(NUMBER, maker)]
        last = json.loads(go("plan", whole, "--json").out)["positions"][0]["set"][-1]
        assert (last["maker"], last["kept"]) == (maker, True)


def test_a_station_counts_the_parts_of_each_maker_by_themselves(go: Callable[..., Any], both: Path) -> None:
    document = json.loads(go("site", both, "--json").out)
    found = [(part["maker"], part["quantity"]) for part in document["parts"] if part["number"] == NUMBER]
    assert sorted(found) == [(OTHER, 1), (MAKER, 1)]
    assert {one["label"]: one["makers"][-1] for one in document["positions"]} == WANTED
    shown = go("site", both).out
    for maker in (MAKER, OTHER):
        assert shown.count(f"{maker} {NUMBER}") == 2, "once at its position, once in the list"


def test_an_order_and_its_papers_hang_the_part_of_the_maker_quoted(
    go: Callable[..., Any], both: Path, terms: Path, tmp_path: Path
) -> None:
    assert go("quotation", "keep", both, "--terms", terms).code == 0
    assert go("agree", both, "--from", "quotation:1", "--by", "Merle").code == 0
    agreed = json.loads(go("agreed", both, "--json").out)
    assert {one["label"]: one["set"][-1]["maker"] for one in agreed["positions"]} == WANTED
    assert agreed["catalogue_edition"]
    shown = go("agreed", both).out
    assert f"{MAKER} {NUMBER}" in shown
    assert f"{OTHER} {NUMBER}" in shown
    bill = tmp_path / "agreed.csv"
    assert go("bill", both, "--sets", "agreed", "--csv", bill).code == 0
    assert nozzles_of_bill(bill) == WANTED


def test_a_form_says_by_maker_what_was_fitted(go: Callable[..., Any], both: Path, tmp_path: Path) -> None:
    form, filled, bill = tmp_path / "form.pdf", tmp_path / "filled.pdf", tmp_path / "built.csv"
    assert go("pack", both, "--form", form).code == 0
    fields = PdfReader(form).get_fields() or {}
    nozzle = max(name for name in fields if re.fullmatch(r"p1_part\d+_fitted", name)).removesuffix("_fitted")
    answers = {"p1_done_on": "2027-01-12", f"{nozzle}_fitted": NUMBER, f"{nozzle}_reason": "not_on_van"}
    fill(form, filled, **answers)
    assert go("record", "read", filled, "--survey", both).code != 2, "the planned number again is no change"
    fill(form, filled, **answers | {f"{nozzle}_fitted": f"{OTHER} {NUMBER}"})
    assert go("record", "read", filled, "--survey", both).code != 2
    (line,) = [one for one in go("record", "list", SITE).out.splitlines() if OTHER in one]
    assert NUMBER in line
    assert go("bill", both, "--sets", "built", "--csv", bill).code in (0, 1)
    assert nozzles_of_bill(bill) == {"1A": OTHER, "1B": OTHER}


def fill(source: Path, target: Path, **values: str) -> None:
    writer = PdfWriter(clone_from=source)
    for page in writer.pages:
        writer.update_page_form_field_values(page, dict(values), auto_regenerate=False)
    target.unlink(missing_ok=True)
    writer.write(target)
