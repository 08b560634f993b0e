"""The book: what is saved stays, newer work is never overwritten, and a failing migration keeps the file.

Nothing here is a figure of the trade; the expectations are the promises in the docstrings of the book.
"""

from __future__ import annotations

import os
import shutil
import signal
import sqlite3
import subprocess
import sys
import threading
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import inspect

import spoutline
from spoutline.book.address import database_url
from spoutline.book.all_tables import BookTable
from spoutline.book.book import Book, open_book
from spoutline.book.records import SettingName, StaleSurvey
from spoutline.book.schema import BOOK_SCHEMA
from spoutline.database.engine import open_engine
from spoutline.model.faults import InputFault, NewerStore, StoreFault
from spoutline.model.survey import Position, Site, Survey
from stores.revisions import revisions_of, survey_at


def survey(name: str = "Maple Ferry Fuels", positions: int = 1) -> Survey:
    return Survey(
        site=Site(name=name), positions=tuple(Position(label=str(number)) for number in range(1, positions + 1))
    )


class Ticking:
    """A clock that moves on by one minute each time it is read."""

    def __init__(self) -> None:
        self.now = datetime(2031, 5, 1, 12, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        self.now += timedelta(minutes=1)
        return self.now


@pytest.fixture
def url(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'book.sqlite3'}"


@pytest.fixture
def book(url: str, empty_book: Path, tmp_path: Path):
    shutil.copy(empty_book, tmp_path / "book.sqlite3")
    opened = open_book(url, Ticking())
    yield opened
    opened.close()


def test_a_created_survey_comes_back_unchanged(book: Book) -> None:
    stored = book.create(survey(positions=3))
    assert book.stored(stored.id) == stored
    assert stored.revision == 1


def test_each_save_counts_the_revision_and_keeps_the_earlier_one(book: Book) -> None:
    first = book.create(survey("One"))
    second = book.save(first, survey("Two"))
    third = book.save(second, survey("Three"))
    assert (second.revision, third.revision) == (2, 3)
    assert book.stored(first.id).survey.site.name == "Three"
    assert revisions_of(book, first.id) == [3, 2, 1]
    assert survey_at(book, first.id, 1).site.name == "One"


def test_a_stale_save_is_refused_with_what_is_stored(book: Book) -> None:
    first = book.create(survey("One"))
    newer = book.save(first, survey("Newer"))
    with pytest.raises(StaleSurvey) as refused:
        book.save(first, survey("Older"))
    assert refused.value.stored == newer
    assert book.stored(first.id) == newer
    assert len(revisions_of(book, first.id)) == 2


def test_two_books_on_one_file_see_each_others_saves(book: Book, url: str) -> None:
    other = open_book(url)
    first = book.create(survey("One"))
    other.save(other.stored(first.id), survey("By the other window"))
    with pytest.raises(StaleSurvey):
        book.save(first, survey("Mine"))
    other.close()


def test_of_many_savers_of_one_revision_exactly_one_wins(book: Book) -> None:
    first = book.create(survey("One"))
    outcomes: list[str] = []

    def save(number: int) -> None:
        try:
            book.save(first, survey(f"Saver {number}"))
            outcomes.append("saved")
        except StaleSurvey:
            outcomes.append("stale")

    savers = [threading.Thread(target=save, args=(number,)) for number in range(8)]
    for saver in savers:
        saver.start()
    for saver in savers:
        saver.join()
    assert sorted(outcomes) == ["saved"] + ["stale"] * 7


def test_the_list_starts_with_the_survey_changed_last(book: Book) -> None:
    one = book.create(survey("One"))
    book.create(survey("Two"))
    book.save(one, survey("One, changed"))
    entries = book.entries()
    assert [entry.name for entry in entries] == ["One, changed", "Two"]
    assert entries[0].changed_at > entries[1].changed_at
    assert entries[0].changed_at.tzinfo is UTC


def test_a_removed_survey_leaves_the_list_but_its_revisions_stay(book: Book) -> None:
    stored = book.create(survey("Gone"))
    book.remove(stored.id)
    assert book.entries() == ()
    with pytest.raises(InputFault, match="no such survey"):
        book.stored(stored.id)
    with pytest.raises(InputFault, match="no such survey"):
        book.save(stored, survey("Back"))
    assert survey_at(book, stored.id, 1).site.name == "Gone"


def test_unknown_surveys_are_input_faults(book: Book) -> None:
    with pytest.raises(InputFault, match="survey: 99"):
        book.stored(99)
    with pytest.raises(InputFault, match="survey: 99"):
        book.remove(99)


def test_text_of_a_person_is_data_in_the_database(book: Book) -> None:
    name = "O'Hare'); DROP TABLE surveys;--"
    stored = book.create(survey(name))
    assert book.stored(stored.id).survey.site.name == name
    assert [entry.name for entry in book.entries()] == [name]


def test_remembered_choices_come_back(book: Book, url: str) -> None:
    assert book.setting(SettingName.UNIT_SYSTEM) is None
    book.remember(SettingName.UNIT_SYSTEM, "US")
    book.remember(SettingName.UNIT_SYSTEM, "SI")
    other = open_book(url)
    assert other.setting(SettingName.UNIT_SYSTEM) == "SI"
    other.close()


def test_sqlite_runs_in_wal_with_full_synchronisation(url: str) -> None:
    engine = open_engine(url)
    with engine.connect() as connection:
        # SQLite's documentation of PRAGMA synchronous: 2 is FULL.
        assert connection.exec_driver_sql("PRAGMA journal_mode").scalar() == "wal"
        assert connection.exec_driver_sql("PRAGMA synchronous").scalar() == 2
        assert connection.exec_driver_sql("PRAGMA foreign_keys").scalar() == 1
    engine.dispose()


SAVE_AND_WAIT = """
import sys
from spoutline.book.book import open_book
from spoutline.model.survey import Position, Site, Survey
book = open_book(sys.argv[1])
stored = book.create(Survey(site=Site(name="Start"), positions=(Position(label="1"),)))
number = 0
while True:
    number += 1
    stored = book.save(stored, Survey(site=Site(name=f"Save {number}"), positions=(Position(label="1"),)))
    print(number, flush=True)
"""


def test_kill_9_loses_no_save_that_had_returned(url: str) -> None:
    writer = subprocess.Popen([sys.executable, "-c", SAVE_AND_WAIT, url], stdout=subprocess.PIPE, text=True)
    assert writer.stdout is not None
    last = 0
    for line in writer.stdout:
        last = int(line)
        if last >= 25:
            os.kill(writer.pid, signal.SIGKILL)
            break
    last = max([last, *(int(line) for line in writer.stdout if line.strip())])
    writer.stdout.close()
    writer.wait()
    book = open_book(url)
    (entry,) = book.entries()
    # One more save may have reached the disk before its number reached the pipe.
    assert entry.revision - 1 in (last, last + 1)
    assert book.stored(entry.id).survey.site.name == f"Save {entry.revision - 1}"
    assert len(revisions_of(book, entry.id)) == entry.revision
    book.close()


def test_migrations_from_empty_make_exactly_the_tables_of_the_model(url: str) -> None:
    from alembic.autogenerate import compare_metadata
    from alembic.migration import MigrationContext

    open_book(url).close()
    engine = open_engine(url)
    with engine.connect() as connection:
        context = MigrationContext.configure(connection, opts={"version_table": BOOK_SCHEMA.version_table})
        assert compare_metadata(context, BookTable.metadata) == []
        assert BOOK_SCHEMA.stored_revision(connection) == BOOK_SCHEMA.newest
    engine.dispose()


def test_the_newest_revision_named_in_code_is_the_head_of_the_migrations() -> None:
    from alembic.script import ScriptDirectory

    assert ScriptDirectory(str(BOOK_SCHEMA.migrations)).get_heads() == [BOOK_SCHEMA.newest]


FAILING_STEP = f"""
import sqlalchemy as sa
from alembic import op
revision = "book_9999"
down_revision = "{BOOK_SCHEMA.newest}"
def upgrade():
    op.create_table("half_done", sa.Column("id", sa.Integer(), primary_key=True))
    op.execute("DELETE FROM survey_revisions")
    raise RuntimeError("the step fails on purpose")
"""


def test_a_failing_migration_stops_says_so_and_keeps_the_data(url: str, tmp_path: Path) -> None:
    book = open_book(url)
    stored = book.create(survey("Precious"))
    book.close()
    broken = tmp_path / "migrations"
    (broken / "versions").mkdir(parents=True)
    (broken / "env.py").write_bytes((BOOK_SCHEMA.migrations / "env.py").read_bytes())
    for step in (BOOK_SCHEMA.migrations / "versions").glob("*.py"):
        (broken / "versions" / step.name).write_bytes(step.read_bytes())
    (broken / "versions" / "book_9999.py").write_text(FAILING_STEP)
    failing = replace(BOOK_SCHEMA, newest="book_9999", migrations=broken)
    engine = open_engine(url)
    with pytest.raises(StoreFault, match=r"the step fails on purpose\. It was left as it was"):
        failing.bring_up_to_date(engine)
    assert "half_done" not in inspect(engine).get_table_names()
    engine.dispose()
    book = open_book(url)
    assert book.stored(stored.id) == stored
    book.close()


def test_a_book_of_a_newer_program_is_refused_and_left_alone(url: str, tmp_path: Path) -> None:
    open_book(url).close()
    with sqlite3.connect(tmp_path / "book.sqlite3") as raw:
        noted = raw.execute("SELECT value FROM settings WHERE name = 'book_version written by'").fetchall()
        assert noted == [(spoutline.__version__,)]
        raw.execute("UPDATE settings SET value = '9.3.1' WHERE name = 'book_version written by'")
        raw.execute("UPDATE book_version SET version_num = 'book_7777'")
        before = list(raw.iterdump())
    raw.close()
    with pytest.raises(NewerStore) as refused:
        open_book(url)
    told = str(refused.value)
    assert "written by Spoutline 9.3.1 or a later one (its form is book_7777)" in told
    assert f"This is Spoutline {spoutline.__version__}, which knows forms up to {BOOK_SCHEMA.newest}" in told
    with sqlite3.connect(tmp_path / "book.sqlite3") as raw:
        assert list(raw.iterdump()) == before
    raw.close()


def test_a_book_whose_writer_is_not_noted_is_refused_as_kindly(url: str, tmp_path: Path) -> None:
    open_book(url).close()
    with sqlite3.connect(tmp_path / "book.sqlite3") as raw:
        raw.execute("UPDATE book_version SET version_num = 'book_7777'")
        raw.execute("DELETE FROM settings")
    raw.close()
    with pytest.raises(NewerStore, match=r"written by a newer version of Spoutline \(its form is book_7777\)"):
        open_book(url)


def test_many_processes_may_open_a_new_book_at_once(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'new.sqlite3'}"
    code = "import sys; from spoutline.book.book import open_book; open_book(sys.argv[1]).close()"
    openers = [subprocess.Popen([sys.executable, "-c", code, url], stderr=subprocess.PIPE, text=True) for _ in range(4)]
    assert [(opener.communicate()[1], opener.returncode) for opener in openers] == [("", 0)] * 4


def test_a_file_that_is_no_database_is_a_store_fault_and_stays(tmp_path: Path) -> None:
    path = tmp_path / "letter.sqlite3"
    path.write_text("Dear customer, " * 200)
    with pytest.raises(StoreFault, match=r"letter\.sqlite3 cannot be used"):
        open_book(f"sqlite:///{path}")
    assert path.read_text() == "Dear customer, " * 200


def test_a_stored_document_of_another_form_is_a_store_fault(book: Book, tmp_path: Path) -> None:
    stored = book.create(survey())
    with sqlite3.connect(tmp_path / "book.sqlite3") as raw:
        raw.execute("UPDATE surveys SET document = '{\"version\": 99}'")
    raw.close()
    with pytest.raises(StoreFault, match=r"cannot be read by this version.*version: 99"):
        book.stored(stored.id)


def test_a_path_or_nothing_becomes_an_sqlite_file_with_its_folder(tmp_path: Path) -> None:
    assert database_url(None, tmp_path / "a") == f"sqlite:///{tmp_path / 'a' / 'spoutline.sqlite3'}"
    assert database_url(str(tmp_path / "b" / "c.db"), tmp_path) == f"sqlite:///{tmp_path / 'b' / 'c.db'}"
    assert database_url(f"sqlite:///{tmp_path}/d.db", tmp_path) == f"sqlite:///{tmp_path / 'd.db'}"
    assert (tmp_path / "a").is_dir()
    assert (tmp_path / "b").is_dir()


def test_a_postgresql_url_names_the_driver_that_is_installed(tmp_path: Path) -> None:
    wanted = "postgresql+psycopg://someone@office/fuel"
    assert database_url("postgresql://someone@office/fuel", tmp_path) == wanted
    assert database_url("postgres://someone@office/fuel", tmp_path) == wanted
    assert database_url(wanted, tmp_path) == wanted


@pytest.mark.parametrize("given", ["", "  ", "sqlite://", "sqlite:///:memory:", "/"])
def test_a_database_that_would_keep_nothing_is_refused(given: str, tmp_path: Path) -> None:
    with pytest.raises(InputFault, match=r"^database: "):
        database_url(given, tmp_path)


def test_a_folder_that_cannot_be_made_is_named(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    with pytest.raises(InputFault, match="folder cannot be made"):
        database_url(str(tmp_path / "file" / "book.db"), tmp_path)


@pytest.mark.parametrize("url", ["nosuchdriver://host/name", "://", "sqlite+nosuch:///x"])
def test_a_url_that_no_driver_understands_is_an_input_fault(url: str) -> None:
    with pytest.raises(InputFault, match=r"^database: "):
        open_engine(url)
