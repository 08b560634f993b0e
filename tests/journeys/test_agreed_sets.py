"""What is agreed for a station is what every paper of it names, from the order to the record.

The expectations are relations between what the program says in different places; none is a figure of the trade.
"""

from __future__ import annotations

import csv
import io
import json
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from paper_text import text_of
from program_runs import Spoutline
from spoutline.catalogue.store import CatalogueStore
from spoutline.planning.agreement.stated_parts import part_from_text
from spoutline.planning.refit.pins import part_text

STATION = "refit_48"
TERMS = Path(__file__).parents[2] / "resources" / "terms" / "refit.toml"
Run = Callable[..., str]


@pytest.fixture
def run(spoutline: Spoutline, own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Run:
    """Run a step in this process and return what it printed."""
    monkeypatch.chdir(tmp_path)

    def go(*arguments: object, expect: int = 0) -> str:
        done = spoutline("--database", own_database, *arguments)
        assert done.code == expect, done.err
        go.told = done.err  # type: ignore[attr-defined]
        return done.out

    return go


def survey_of(run: Run, name: str, positions: int | None = None) -> Path:
    document = json.loads(run("demo", name))
    document["positions"] = document["positions"][:positions]
    path = Path("survey.json")
    path.write_text(json.dumps(document))
    return path


def bill_parts(path: Path) -> Counter[tuple[str, str]]:
    rows = csv.DictReader(io.StringIO(path.read_text("utf-8-sig")))
    found: Counter[tuple[str, str]] = Counter()
    for row in rows:
        found[row["Maker"], row["Part number"]] += int(row["Qty"])
    return found


def installed_in(path: Path, title: str) -> Counter[tuple[str, str]]:
    """Return the pieces to be installed by maker and number, from the sheet of an option."""
    sheet = next(one for one in openpyxl.load_workbook(path).worksheets if title in str(one["A1"].value) + one.title)
    rows = [row for row in sheet.iter_rows(values_only=True) if isinstance(row[0], int) and isinstance(row[4], int)]
    return Counter({(str(row[2]), str(row[1])): row[4] for row in rows})


def sets(document: dict[str, Any]) -> dict[str, list[str]]:
    return {one["label"]: [link["part_number"] for link in one["set"]] for one in document["positions"]}


def test_the_option_that_was_ordered_is_on_every_paper(run: Run) -> None:
    survey = survey_of(run, STATION, 4)
    run("quotation", "keep", survey, "--terms", TERMS)
    run("quotation", "issue", 1, "--by", "R. Example", "--pdf", "q.pdf")
    titles = [line for line in run("quotation", "show", 1).splitlines() if "reconnectable" in line.lower()]
    assert titles, "the demo terms offer reconnectable breakaways"
    shown = run("quotation", "show", 1)
    title = "Reconnectable breakaways"
    assert title in shown
    run("quotation", "answer", 1, "accepted", "--by", "O. Owner", "--option", title)
    agreed = json.loads(run("agreed", survey, "--json"))
    assert agreed["origin"]["quotation"]["title"] == title

    run("bill", survey, "--csv", "bill.csv", "--pdf", "bill.pdf", "--without-calculations")
    run("bill", survey, "--csv", "plan.csv", "--sets", "plan")
    assert bill_parts(Path("bill.csv")) != bill_parts(Path("plan.csv")), "the option hangs other parts than the plan"
    wanted = Counter((link["maker"], link["part_number"]) for one in agreed["positions"] for link in one["set"])
    billed = bill_parts(Path("bill.csv"))
    assert all(billed[part] == count for part, count in wanted.items())

    run(
        "pack", survey, "--pdf", "pack.pdf", "--form", "form.pdf", "--inspection", "i.pdf", "--in-service", "2027-01-04"
    )
    head = "as ordered in quotation"
    for paper in ("bill.pdf", "pack.pdf", "form.pdf", "i.pdf"):
        assert head in text_of(Path(paper)), paper
    pack, form = text_of(Path("pack.pdf")), text_of(Path("form.pdf"))
    for _, number in wanted:
        assert number in pack
        assert number in form
    gone = {number for _, number in bill_parts(Path("plan.csv")) - billed} - {number for _, number in billed}
    assert gone
    assert not [number for number in gone if number in pack]

    run("quotation", "print", 1, "--csv", "order.csv")
    ordered = {row["part_number"] for row in csv.DictReader(io.StringIO(Path("order.csv").read_text("utf-8-sig")))}
    assert {number for _, number in wanted} <= ordered
    run("quotation", "print", 1, "--xlsx", "q.xlsx")
    assert installed_in(Path("q.xlsx"), title) == billed, "sealant that serves many joints is counted as it is ordered"
    number = shown.split(" r1", 1)[0]
    assert run("quotation", "show", number) == run("quotation", "show", 1)


def test_agreed_papers_have_equal_bytes_and_read_back_from_the_exchange_file(run: Run) -> None:
    survey = survey_of(run, "small_town", 3)
    run("agree", survey, "--from", "plan", "--by", "O. Owner", "--reason", "as talked over")
    Path("agreed.json").write_text(run("agreed", survey, "--json"))
    for name in ("a", "b"):
        run("bill", survey, "--csv", f"{name}.csv", "--pdf", f"{name}.pdf", "--without-calculations")
    assert Path("a.pdf").read_bytes() == Path("b.pdf").read_bytes()
    run("bill", survey, "--csv", "file.csv", "--sets", "file:agreed.json")
    assert Path("file.csv").read_bytes() == Path("a.csv").read_bytes()
    assert "agreed by O. Owner" in text_of(Path("a.pdf"))
    assert "agreed by O. Owner" in run("convert", survey), "also where nothing is converted"


def test_an_edit_after_the_agreement_is_told_and_a_broken_must_ends_with_one(run: Run) -> None:
    survey = survey_of(run, "small_town", 3)
    run("agree", survey, "--from", "plan", "--by", "O. Owner")
    before = sets(json.loads(run("agreed", survey, "--json")))
    document = json.loads(survey.read_text())
    label = document["positions"][0]["label"]
    document["positions"][0]["filler"]["distance_m"] = 9.0  # no hose of a car position reaches that far
    survey.write_text(json.dumps(document))
    run("bill", survey, "--csv", "bill.csv", "--pdf", "bill.pdf", "--without-calculations", expect=1)
    run("pack", survey, "--pdf", "pack.pdf", expect=1)
    for paper in ("bill.pdf", "pack.pdf"):
        head = text_of(Path(paper)).split("Positions", 1)[1][:600]
        assert "✗ the set shown breaks a must" in head, paper
    run("bill", survey, "--csv", "bill.csv", expect=1)
    assert f"{label}: edited since its set was agreed; the set no longer keeps every must" in run.told  # type: ignore[attr-defined]
    parts = {number for _, number in bill_parts(Path("bill.csv"))}
    assert set(before[label]) <= parts, "the agreed set stays shown"


def test_a_doubtful_agreement_is_told_and_not_used(run: Run) -> None:
    survey = survey_of(run, "small_town", 3)
    run("agree", survey, "--from", "plan", "--by", "O. Owner")
    document = json.loads(survey.read_text())
    for position in document["positions"]:
        position["label"] = f"other {position['label']}"
    survey.write_text(json.dumps(document))
    run("bill", survey, "--csv", "bill.csv", "--pdf", "bill.pdf", "--without-calculations")
    assert "it is not sure" in run.told  # type: ignore[attr-defined]
    assert "as planned, not agreed" in text_of(Path("bill.pdf"))
    run("bill", survey, "--csv", "bill.csv", "--sets", "agreed", expect=2)


def test_agreeing_anew_adds_and_undoing_follows(run: Run) -> None:
    survey = survey_of(run, "small_town", 3)
    run("agree", survey, "--from", "plan", "--by", "A")
    first = json.loads(run("agreed", survey, "--json"))
    run("agree", survey, "--from", "convert", "--by", "B", "--position", first["positions"][0]["label"])
    assert json.loads(run("agreed", survey, "--json"))["serial"] == 2
    run("agree", survey, "--undo", "--by", "C", "--reason", "changed their mind")
    assert json.loads(run("agreed", survey, "--json")) == first
    history = run("agreed", survey, "--history").splitlines()
    assert [line.split()[0:2] for line in history] == [["1", "agreed"], ["2", "agreed"], ["3", "taken"]]
    assert "changed their mind" in history[2]


def test_what_was_replaced_hangs_as_built_and_stands_beside_what_was_planned_and_agreed(run: Run) -> None:
    survey = survey_of(run, "small_town", 3)
    site = json.loads(survey.read_text())["site"]["name"]
    run("agree", survey, "--from", "plan", "--by", "O. Owner")
    agreed = json.loads(run("agreed", survey, "--json"))
    label, other = (one["label"] for one in agreed["positions"][:2])
    removed, fitted = agreed["positions"][0]["set"][-1]["part_number"], "QW-N104"
    assert removed != fitted
    more = ("--fitted", fitted, "--reason", "wear", "--on", "2026-03-01", "--survey", survey)
    run("record", "wear", site, label, removed, *more)
    run("bill", survey, "--csv", "built.csv", "--pdf", "built.pdf", "--without-calculations", "--sets", "built")
    run("bill", survey, "--csv", "agreed.csv")
    built, before = bill_parts(Path("built.csv")), bill_parts(Path("agreed.csv"))
    chains = {link["part_number"] for one in agreed["positions"] for link in one["set"]} | {fitted}
    moved = {number: count for (_, number), count in (built - before).items() if number in chains}
    assert moved == {fitted: 1}
    assert {number for _, number in before - built} & chains == {removed}
    head = text_of(Path("built.pdf"))
    assert "as built" in head
    assert "agreed by O. Owner" in head, "the line that it continues stays named"
    assert json.loads(run("agreed", survey, "--json")) == agreed, "records never change what was agreed"

    told = run("agreed", survey, "--compare", "plan", "agreed", "built").splitlines()
    assert told[0] == f"{label}:"
    assert [line.split()[0] for line in told[1:4]] == ["plan", "agreed", "built"]
    assert removed in told[1]
    assert removed in told[2]
    assert fitted in told[3]
    assert told[4:] == ["1 of 3 positions differ."], f"{other} hangs as agreed"
    assert run("agreed", survey, "--compare", "1", "built").splitlines()[-1] == "1 of 3 positions differ."
    run("agreed", survey, "--compare", "plan", expect=2)
    run("agreed", survey, "--compare", "7", "plan", expect=2)


def followed(document: dict[str, Any]) -> dict[str, list[str]]:
    """Return by position the parts of the way or sets that a conversion follows."""
    found = {}
    for one in document["positions"]:
        ways = {option["kind"]: option["part_numbers"] for option in one["options"]}
        if one["follows"]:
            found[one["label"]] = ways[one["follows"]]
    return found


def test_a_conversion_goes_to_the_sets_that_are_agreed(run: Run) -> None:
    survey = survey_of(run, "conversion_balance")
    document = json.loads(survey.read_text())
    document["conversion"]["follow"] = "least_cost"
    survey.write_text(json.dumps(document))
    assert "as planned, not agreed (Way: Least cost)" in run("convert", survey)
    run("agree", survey, "--from", "convert", "--by", "O. Owner")
    agreed = json.loads(run("agreed", survey, "--json"))
    document["conversion"]["follow"] = "good_practice"
    survey.write_text(json.dumps(document))

    shown = json.loads(run("convert", survey, "--json", "--pdf", "report.pdf"))
    assert shown["sets_from"]["source"] == "agreed"
    assert followed(shown).items() <= sets(agreed).items()
    assert any(one["follows"] == "shown" for one in shown["positions"])
    assert "agreed by O. Owner" in text_of(Path("report.pdf"))
    planned = json.loads(run("convert", survey, "--json", "--sets", "plan"))
    assert planned["sets_from"]["source"] == "plan"
    assert followed(planned).items() <= sets(json.loads(run("plan", survey, "--json"))).items()
    assert followed(planned) != followed(shown)
    kept = {
        (one["label"], line["part_number"])
        for one in shown["positions"]
        for line in one["differences"]
        if line["action"] == "keep"
    }
    stays = {(one["label"], link["part_number"]) for one in agreed["positions"] for link in one["set"] if link["kept"]}
    assert stays
    assert kept == stays


def test_lists_say_which_sets_they_are_of(run: Run) -> None:
    survey = survey_of(run, "small_town", 2)
    run("bill", survey, "--csv", "bill.csv", "--xlsx", "bill.xlsx")
    rows = list(csv.DictReader(io.StringIO(Path("bill.csv").read_text("utf-8-sig"))))
    assert {row["Sets"] for row in rows} == {"as planned, not agreed"}
    told = {
        cell for row in openpyxl.load_workbook("bill.xlsx").worksheets[0].iter_rows(values_only=True) for cell in row
    }
    assert "as planned, not agreed" in told
    run(
        "quote",
        survey,
        "--terms",
        TERMS,
        "--csv",
        "o.csv",
        "--pick-list",
        "pick.pdf",
        "--xlsx",
        "q.xlsx",
        "--option",
        2,
    )
    lines = list(csv.DictReader(io.StringIO(Path("o.csv").read_text("utf-8-sig"))))
    assert len({line["sets"] for line in lines}) == len({line["option"] for line in lines})
    assert all(line["sets"].startswith(f"as offered in quotation {line['quotation']} revision 1") for line in lines)
    assert f"as offered in quotation {lines[0]['quotation']} revision 1, option 2" in text_of(Path("pick.pdf"))
    second = openpyxl.load_workbook("q.xlsx").worksheets[1]
    assert "revision 1, option 2" in str(second.cell(3, 1).value)


def test_a_form_of_other_sets_is_refused_and_names_them(run: Run) -> None:
    survey = survey_of(run, "small_town", 2)
    run("agree", survey, "--from", "plan", "--by", "O. Owner")
    agreed = json.loads(run("agreed", survey, "--json"))
    run("pack", survey, "--form", "form.pdf")
    run("record", "read", "form.pdf", "--survey", survey, "--dry-run", expect=1)  # nothing is filled in
    number = agreed["positions"][0]["set"][-1]["part_number"]
    changed = json.dumps(agreed).replace(number, "QW-N777")  # a part that no form of this plan names
    Path("other.json").write_text(changed)
    run("record", "read", "form.pdf", "--survey", survey, "--dry-run", "--sets", "file:other.json", expect=2)
    assert "name those that the form was printed for with --sets" in run.told  # type: ignore[attr-defined]


def test_every_part_of_the_catalogue_reads_back_word_for_word(catalogue_store: CatalogueStore) -> None:
    parts = catalogue_store.search("", None, 100_000)
    assert parts
    assert [part_from_text(part_text(part)) for part in parts] == list(parts)


def test_a_reason_that_this_version_does_not_know_leaves_its_place_empty(run: Run, tmp_path: Path) -> None:
    station = tmp_path / "station.json"
    station.write_text(run("demo", "small_town"), encoding="utf-8")
    run("agree", station, "--from", "plan", "--by", "Odile Fenn")
    agreed = json.loads(run("agreed", station, "--json"))
    for position in agreed["positions"]:
        position["accessories"] = [one | {"reason": "of another time"} for one in position["accessories"]]
    path = tmp_path / "agreed.json"
    path.write_text(json.dumps(agreed), encoding="utf-8")
    run("bill", station, "--sets", f"file:{path}", "--csv", tmp_path / "bill.csv")
    assert "of another time" not in (tmp_path / "bill.csv").read_text(encoding="utf-8-sig")
