"""The keeper's job on the command line: begun, filled, checked, published, planned with, handed on."""

from __future__ import annotations

import json
import zipfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from program_runs import Spoutline
from spoutline import assets
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.survey import Survey

Run = Callable[..., tuple[int, str, str]]
NAME = "Office list"


@pytest.fixture
def book(own_database: Path, spoutline: Spoutline, tmp_path: Path) -> Run:
    """Return a function that runs a command on a book of the test's own."""

    def run(*words: str) -> tuple[int, str, str]:
        done = spoutline("--database", str(own_database), *words)
        return done.code, done.out, done.err

    return run


def document(run: Run, *words: str) -> Any:
    code, text, told = run(*words, "--json")
    assert code == 0, told
    return json.loads(text)


def one_position() -> Survey:
    whole = demo_survey("small_town")
    return whole.model_copy(update={"positions": whole.positions[:1]})


@pytest.fixture
def survey(tmp_path: Path) -> str:
    path = tmp_path / "survey.json"
    path.write_text(survey_to_json(one_position()), encoding="utf-8")
    return str(path)


@pytest.fixture
def exported(book: Run, tmp_path: Path) -> Path:
    path = tmp_path / "demonstration.zip"
    assert book("catalogue", "export", "Demonstration", "--out", str(path))[0] == 0
    return path


def test_a_fresh_book_plans_with_the_demonstration_unasked(book: Run, survey: str) -> None:
    said = document(book, "catalogue", "list")
    assert said["planned_with"] == "Demonstration"
    assert [(one["name"], one["read_only"]) for one in said["catalogues"]] == [("Demonstration", True)]
    plan = document(book, "plan", survey)
    assert (plan["provenance"]["catalogue"], plan["provenance"]["edition"]) == ("Demonstration", 1)


def test_a_catalogue_is_filled_published_planned_with_and_handed_on(
    book: Run, survey: str, exported: Path, tmp_path: Path
) -> None:
    assert document(book, "catalog", "new", NAME)["editions"] == []
    tried = document(book, "catalogue", "import", str(exported), "--into", NAME, "--dry-run")
    assert tried["new"] > 700
    assert document(book, "catalogue", "list")["catalogues"][1]["draft"]["parts"] == 0
    done = document(book, "catalogue", "import", str(exported), "--into", NAME)
    assert done["new"] == tried["new"]
    assert document(book, "catalogue", "check", NAME)["faults"] == []
    published = document(book, "catalogue", "publish", NAME, "--note", "The first.", "--by", "Ada Fenn")
    assert (published["edition"], published["publisher"]) == (f"{NAME}@1", "Ada Fenn")

    shown = document(book, "plan", survey)
    mine = document(book, "plan", survey, "--catalogue", f"{NAME}@1")
    assert (mine["provenance"].pop("catalogue"), mine["provenance"].pop("edition")) == (NAME, 1)
    assert (shown["provenance"].pop("catalogue"), shown["provenance"].pop("edition")) == ("Demonstration", 1)
    assert mine["provenance"].pop("catalogue_edition") == f"{NAME}, edition 1"
    shown["provenance"].pop("catalogue_edition")
    assert mine == shown  # the same parts give the same sets

    again = tmp_path / "again.zip"
    assert book("catalogue", "export", NAME, "--out", str(again))[0] == 0
    assert again.read_bytes() == exported.read_bytes()


def test_an_older_edition_can_be_planned_with_and_told_apart(
    book: Run, survey: str, exported: Path, tmp_path: Path
) -> None:
    book("catalogue", "new", NAME)
    book("catalogue", "import", str(exported), "--into", NAME)
    book("catalogue", "publish", NAME, "--note", "1", "--by", "Ada")
    part = document(book, "plan", survey)["positions"][0]["set"][-1]["part_number"]
    dearer = _with_price(exported, part, "USD", 99_999, tmp_path)
    assert document(book, "catalogue", "import", str(dearer), "--into", NAME)["changed"] == 1
    assert book("catalogue", "publish", NAME, "--note", "2", "--by", "Ada")[0] == 0
    changes = document(book, "catalogue", "diff", f"{NAME}@1", NAME)["changes"]
    assert [(one["number"], one["change"], one["fields"][0]["field"]) for one in changes] == [
        (part, "changed", "price in USD")
    ]
    old, new = (document(book, "plan", survey, "--catalog", f"{NAME}@{edition}") for edition in (1, 2))
    assert old["positions"][0]["set"][-1]["part_number"] == part
    assert new["positions"][0]["set"][-1]["part_number"] != part  # far dearer: another takes its place
    assert (old["provenance"]["edition"], new["provenance"]["edition"]) == (1, 2)
    told = document(book, "catalogue", "diff", f"{NAME}@1", NAME, "--surveys", survey)["positions"]
    assert [(one["effect"], one["because"][0]["number"]) for one in told] == [("changes", part)]
    assert told[0]["price_after_minor"] > told[0]["price_before_minor"]
    assert [one["number"] for one in told[0]["before"]] == [link["part_number"] for link in old["positions"][0]["set"]]
    _code, text, _told = book("catalogue", "diff", f"{NAME}@1", NAME, "--surveys", survey)
    assert "1 gets other parts" in text


def test_a_set_that_breaks_is_told_before_the_draft_is_published(
    book: Run, survey: str, exported: Path, tmp_path: Path
) -> None:
    book("catalogue", "new", NAME)
    book("catalogue", "import", str(exported), "--into", NAME)
    book("catalogue", "publish", NAME, "--note", "1", "--by", "Ada")
    without = tmp_path / "without.zip"
    with zipfile.ZipFile(exported) as archive, zipfile.ZipFile(without, "w") as made:
        for name in archive.namelist():
            text = archive.read(name).decode()
            if name in ("nozzle.csv", "prices.csv"):
                nozzles = {line.split(",")[0] for line in archive.read("nozzle.csv").decode().splitlines()[1:]}
                lines = text.splitlines()
                text = "\n".join([lines[0], *(line for line in lines[1:] if line.split(",")[0] not in nozzles), ""])
            made.writestr(name, text)
    assert document(book, "catalogue", "import", str(without), "--into", NAME)["gone"] > 100
    told = document(book, "catalogue", "diff", f"{NAME}@1", f"{NAME}@draft", "--surveys", str(Path(survey).parent))
    (one,) = [one for one in told["positions"] if one["site"] == "Maple Ferry Fuels"][:1]
    assert one["effect"] == "breaks"
    assert one["because"][-1]["change"] == "gone"
    assert one["after"] == []


def test_health_is_told_for_a_draft_and_ends_with_its_own_code(book: Run, exported: Path, tmp_path: Path) -> None:
    book("catalogue", "new", NAME)
    with zipfile.ZipFile(exported) as archive, zipfile.ZipFile(tmp_path / "few.zip", "w") as made:
        made.writestr("datapackage.json", archive.read("datapackage.json"))
        head = archive.read("label.csv").decode().splitlines()[0].split(",")
        identity = head[: head.index("remark") + 1]
        made.writestr(
            "unknown_kind.csv", ",".join(identity) + "\n" + "FW 1,Fernmoor" + "," * (len(identity) - 2) + "\n"
        )
    book("catalogue", "import", str(tmp_path / "few.zip"), "--into", NAME)
    code, text, _told = book("catalogue", "health", NAME, "--jurisdiction", "us_general", "--json")
    assert code == 1
    (note,) = json.loads(text)["notes"]
    assert (note["matter"], note["number"], note["lacking"]) == ("not_described", "FW 1", ["kind", "name"])
    assert book("catalogue", "check", NAME)[0] == 0  # what lacks is no fault
    assert book("catalogue", "health", "Nobody")[0] == 2


def _with_price(path: Path, part: str, currency: str, minor: int, folder: Path) -> Path:
    made = folder / "dearer.zip"
    with zipfile.ZipFile(path) as archive, zipfile.ZipFile(made, "w") as changed:
        for name in archive.namelist():
            text = archive.read(name).decode()
            if name == "prices.csv":
                lines = text.splitlines()
                rows = [line.startswith(f"{part},") and f",{currency}," in line for line in lines]
                place = rows.index(True)
                lines[place] = f"{lines[place].rpartition(',')[0]},{minor}"
                text = "\n".join([*lines, ""])
            changed.writestr(name, text)
    return made


def test_the_book_and_the_survey_remember_what_to_plan_with(
    book: Run, survey: str, exported: Path, tmp_path: Path
) -> None:
    for name in (NAME, "Other list"):
        book("catalogue", "new", name)
        book("catalogue", "import", str(exported), "--into", name)
        book("catalogue", "publish", name, "--note", "1", "--by", "Ada")
    assert book("catalogue", "use", "office LIST")[0] == 0
    assert document(book, "plan", survey)["provenance"]["catalogue"] == NAME
    named = tmp_path / "named.json"
    named.write_text(survey_to_json(one_position().model_copy(update={"catalogue": "Other list@1"})), encoding="utf-8")
    assert document(book, "plan", str(named))["provenance"]["catalogue"] == "Other list"
    told_otherwise = document(book, "plan", str(named), "--catalogue", "Demonstration")
    assert told_otherwise["provenance"]["catalogue"] == "Demonstration"
    code, _text, told = book("plan", survey, "--catalogue", "Nobody")
    assert code == 2
    assert "Office list" in told


def test_a_book_can_do_without_the_demonstration(book: Run, survey: str, exported: Path) -> None:
    assert book("catalogue", "demonstration", "off")[0] == 2  # the book would plan with nothing
    book("catalogue", "new", NAME)
    book("catalogue", "import", str(exported), "--into", NAME)
    book("catalogue", "publish", NAME, "--note", "1", "--by", "Ada")
    book("catalogue", "use", NAME)
    assert book("catalogue", "demonstration", "off")[0] == 0
    assert [one["name"] for one in document(book, "catalogue", "list")["catalogues"]] == [NAME]
    assert book("plan", survey, "--catalogue", "Demonstration")[0] == 2
    assert document(book, "plan", survey)["provenance"]["catalogue"] == NAME
    assert book("catalogue", "demonstration", "on")[0] == 0
    assert document(book, "plan", survey, "--catalogue", "Demonstration")["provenance"]["edition"] == 1


def test_a_faulty_cell_is_told_and_nothing_is_taken_in(book: Run, exported: Path, tmp_path: Path) -> None:
    book("catalogue", "new", NAME)
    faulty = tmp_path / "faulty.zip"
    with zipfile.ZipFile(exported) as archive, zipfile.ZipFile(faulty, "w") as made:
        for name in archive.namelist():
            text = archive.read(name)
            made.writestr(name, text.replace(b",0.3,", b",light,", 1) if name == "swivel.csv" else text)
    code, _text, told = book("catalogue", "import", str(faulty), "--into", NAME)
    assert code == 2
    assert "swivel.csv, line " in told
    assert "'light'" in told
    assert document(book, "catalogue", "list")["catalogues"][1]["draft"]["parts"] == 0


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("new", "Demonstration"), "this name"),
        (("publish", "Demonstration", "--note", "x", "--by", "y"), "only read"),
        (("publish", "Nobody", "--note", "x", "--by", "y"), "Demonstration"),
        (("export", "Demonstration@9", "--out", "x.zip"), "editions 1 to 1"),
        (("export", "Demonstration"), "--out"),
        (("use", "a@b@c"), "NAME@3"),
        (("check", "Nobody"), "Nobody"),
    ],
)
def test_what_cannot_be_done_is_refused(
    book: Run, words: tuple[str, ...], told: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    code, _text, said = book("catalogue", *words)
    assert code == 2
    assert told in said
    assert not list(tmp_path.glob("*.zip"))


def test_nothing_is_published_without_a_word_and_a_name(book: Run, exported: Path) -> None:
    book("catalogue", "new", NAME)
    code, _text, told = book("catalogue", "publish", NAME, "--note", " ", "--by", "")
    assert code == 2
    assert "note" in told
    assert "publisher" in told
    code, _text, told = book("catalogue", "publish", NAME, "--note", "x", "--by", "y")
    assert (code, "draft is empty" in told) == (2, True)


def test_no_quotation_is_made_from_a_draft(book: Run, survey: str, exported: Path, tmp_path: Path) -> None:
    book("catalogue", "new", NAME)
    book("catalogue", "import", str(exported), "--into", NAME)
    terms = str(Path(assets.resources_folder()) / "terms" / "refit.toml")
    pdf = tmp_path / "quotation.pdf"
    words = ("quote", survey, "--terms", terms, "--draft", "--pdf", str(pdf), "--catalogue", f"{NAME}@draft")
    code, _text, told = book(*words)
    assert (code, "publish the draft first" in told, pdf.exists()) == (2, True, False)


def test_without_an_action_prices_are_checked_as_before(book: Run) -> None:
    for spelling in ("catalogue", "catalog"):
        code, text, _told = book(spelling, "--jurisdiction", "us_general")
        assert code in (0, 1)
        assert "Prices asked about: " in text
