"""Commands that only read do so without the whole stores, and answer what the whole stores answer, byte for byte."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any, NoReturn

import pytest

from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import Settings
from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.stores import Stores
from spoutline.cli.main import run
from spoutline.model.part import HANGING_KINDS

POSITION = "1A gasoline"
READING = (
    ("plan", "--json"),
    ("plan",),
    ("why", POSITION, "--json"),
    ("why", POSITION, "--pdf", "why.pdf"),
    ("substitutes", POSITION, "nozzle", "--misfits"),
    ("substitutes", POSITION, "curb hose", "--json"),
    ("site",),
    ("site", "--json"),
    ("drawing", POSITION, "--out", "drawing.svg"),
    ("bill", "--pdf", "bill.pdf", "--csv", "bill.csv"),
    ("bill", "--html", "bill.html", "--why"),
    ("measure", "--json"),
    ("weigh", POSITION, "--json"),
    ("whatif", "--outlet", "npt_1", "--json"),
    ("whatif", "--outlet", "npt_1", "--pdf", "whatif.pdf"),
)
SCRIPT = """
import json, sys
from spoutline.cli.main import run
for arguments in json.loads(sys.argv[1]):
    assert run(arguments, None) == 0, arguments
print(json.dumps(sorted(sys.modules)), file=sys.stderr)
"""


@pytest.fixture(scope="module")
def station(tmp_path_factory: pytest.TempPathFactory, database_to_copy: Path) -> tuple[Path, Path]:
    """Return a book whose columns are kept, and the survey of a station of one position."""
    folder = tmp_path_factory.mktemp("station")
    database, survey = folder / "book.sqlite3", folder / "survey.json"
    shutil.copy(database_to_copy, database)
    stores = Stores(Settings(database=str(database)))
    for kind in HANGING_KINDS:
        stores.catalogue().columns(kind)
    stores.close()
    town = demo_survey("small_town")
    survey.write_text(survey_to_json(town.model_copy(update={"positions": town.positions[:1]})), encoding="utf-8")
    return database, survey


def asked(station: tuple[Path, Path], command: str, *options: str) -> list[str]:
    database, survey = station
    return ["--database", str(database), command, str(survey), *options]


def answer(
    station: tuple[Path, Path], command: tuple[str, ...], folder: Path, monkeypatch: pytest.MonkeyPatch, capfd: Any
) -> tuple[int, str, str, dict[str, bytes]]:
    folder.mkdir()
    monkeypatch.chdir(folder)
    code = run(asked(station, *command), lambda *_: 1)
    out, err = capfd.readouterr()
    return code, out, err, {path.name: path.read_bytes() for path in folder.iterdir()}


def not_opened(*_: object) -> NoReturn:
    raise AssertionError("no whole store is to be opened for this")


@pytest.mark.parametrize("command", READING, ids=" ".join)
def test_a_reading_command_answers_plainly_what_the_whole_stores_answer(
    command: tuple[str, ...],
    station: tuple[Path, Path],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capfd: pytest.CaptureFixture[str],
) -> None:
    with monkeypatch.context() as only_plain:
        only_plain.setattr(Stores, "shelf", not_opened)
        only_plain.setattr(Stores, "book", not_opened)
        plainly = answer(station, command, tmp_path / "plain", only_plain, capfd)
    with monkeypatch.context() as never_plain:
        never_plain.setattr(Stores, "_opened_plainly", lambda *_: None)
        never_plain.setattr(Stores, "_plain_book", lambda *_: None)
        wholly = answer(station, command, tmp_path / "whole", never_plain, capfd)
    assert plainly == wholly
    assert plainly[0] == 0
    assert plainly[1] or plainly[3]


def test_reading_commands_load_nothing_of_the_whole_stores(station: tuple[Path, Path], tmp_path: Path) -> None:
    commands = json.dumps([asked(station, *command) for command in (*READING, ("bill", "--csv", "bill.csv"))])
    done = subprocess.run(
        [sys.executable, "-c", SCRIPT, commands], capture_output=True, text=True, check=True, cwd=tmp_path
    )
    loaded = set(json.loads(done.stderr.splitlines()[-1]))
    assert "spoutline.catalogue.plain_edition" in loaded
    unused = {"sqlalchemy", "alembic", "spoutline.book.book", "spoutline.catalogue.store"}
    assert loaded.isdisjoint(unused), loaded & unused


def test_what_is_agreed_is_shown_whichever_way_the_book_is_read(
    station: tuple[Path, Path], tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    database, survey = tmp_path / "own.sqlite3", station[1]
    shutil.copy(station[0], database)
    assert run(asked((database, survey), "agree", "--from", "plan", "--by", "Ada Ferry"), lambda *_: 1) == 0, (
        capfd.readouterr()
    )
    code, _, err, files = answer((database, survey), ("bill", "--csv", "b.csv"), tmp_path / "b", monkeypatch, capfd)
    assert (code, bool(files)) == (0, True), err
    told = run(asked((database, survey), "bill", "--csv", "c.csv", "--sets", "agreed"), lambda *_: 1)
    assert told == 0, "the agreement must be in the book"
    assert Path("c.csv").read_bytes() == files["b.csv"]
