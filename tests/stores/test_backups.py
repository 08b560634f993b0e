"""Backups of the book, what lies at its path, and putting one back.

What a damaged file looks like is made here by damaging one, by the layout that SQLite publishes
(https://www.sqlite.org/fileformat2.html): 16 bytes of name, the size of a page at 16, pages counted at 28.
"""

from __future__ import annotations

import hashlib
import os
import shutil
import sqlite3
import tempfile
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from spoutline.book.backups import BackupReason, backups_of, daily_backup, make_backup, restore, rotate, verify
from spoutline.book.book import Book, open_book
from spoutline.book.book_file import FileKind, check_usable, inspect_file
from spoutline.bootstrap import Settings, open_workbench
from spoutline.model.faults import DamagedStore, InputFault, ReadOnlyStore, StoreFault
from spoutline.model.survey import Position, Site, Survey

NOON = datetime(2031, 5, 1, 12, 0, tzinfo=UTC)


def survey(name: str) -> Survey:
    return Survey(site=Site(name=name), positions=tuple(Position(label=f"{one}") for one in range(1, 30)))


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "office ü.sqlite3"
    book = opened(path)
    for number in range(12):
        book.create(survey(f"Site {number}"))
    book.close()
    return path


def opened(path: Path) -> Book:
    from sqlalchemy import URL

    return open_book(URL.create("sqlite", database=str(path)).render_as_string(hide_password=False))


def names(path: Path) -> list[str]:
    with closing(sqlite3.connect(path)) as raw:
        return [name for (name,) in raw.execute("SELECT name FROM surveys ORDER BY id")]


def fingerprint(path: Path) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()


def damage(path: Path, how: str) -> None:
    content = bytearray(path.read_bytes())
    page = int.from_bytes(content[16:18], "big")
    match how:
        case "empty":
            content = bytearray()
        case "cut off":
            content = content[: len(content) // 2 // page * page + 100]
        case "cut to a stub":
            content = content[:9]
        case "foreign":
            content = bytearray(b"%PDF-1.7\n" + b"Dear customer, " * 500)
        case "scribbled over":
            for start in range(2 * page, len(content) - page, 3 * page):
                content[start : start + 200] = b"\xa5" * 200
        case "wrong index":
            pass
    path.write_bytes(content)
    if how == "wrong index":  # a sound page with the wrong rows in it: only a thorough check finds it
        with closing(sqlite3.connect(path, isolation_level=None)) as raw:
            raw.execute("PRAGMA writable_schema = ON")
            raw.execute(
                "UPDATE sqlite_master SET sql = 'CREATE INDEX ix_surveys_changed_at ON surveys (name)' "
                "WHERE name = 'ix_surveys_changed_at'"
            )


DAMAGES = {
    "empty": FileKind.EMPTY,
    "cut off": FileKind.CUT_OFF,
    "cut to a stub": FileKind.CUT_OFF,
    "foreign": FileKind.FOREIGN,
    "scribbled over": FileKind.DAMAGED,
    "wrong index": FileKind.DAMAGED,
}


def test_a_sound_book_in_a_folder_that_may_not_be_written_is_never_called_damaged() -> None:
    """Reading a book with a write-ahead log takes files beside it (https://www.sqlite.org/wal.html#readonly)."""
    with tempfile.TemporaryDirectory() as folder:  # not below a folder that is this person's alone
        path = Path(folder) / "office.sqlite3"
        opened(path).close()
        path.chmod(0o444)
        Path(folder).chmod(0o555)
        person = os.geteuid()
        try:
            if person == 0:  # whom no right of a file stops
                os.seteuid(65534)
            with pytest.raises(ReadOnlyStore, match="may be read by you but not written"):
                check_usable(path)
        finally:
            if person == 0:
                os.seteuid(0)
            Path(folder).chmod(0o755)


@pytest.mark.parametrize(("how", "kind"), DAMAGES.items())
def test_a_file_that_is_no_sound_book_is_told_as_what_it_is_and_left_alone(
    path: Path, how: str, kind: FileKind
) -> None:
    damage(path, how)
    before = fingerprint(path)
    assert inspect_file(path).kind is kind
    bench = open_workbench(Settings(database=str(path)))
    for use in (bench.book, bench.saving_book, lambda: bench.parts().search("")):
        with pytest.raises(DamagedStore, match="left as it is, byte for byte"):
            use()
    bench.close()
    assert fingerprint(path) == before


def test_a_database_of_another_program_is_not_made_into_a_book(tmp_path: Path) -> None:
    path = tmp_path / "music.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE songs (title TEXT)")
    before = fingerprint(path)
    with pytest.raises(DamagedStore, match=r"another program \(its tables: songs\).*Name another file"):
        check_usable(path)
    assert fingerprint(path) == before


def test_a_missing_file_begins_a_book(tmp_path: Path) -> None:
    path = tmp_path / "new.sqlite3"
    assert inspect_file(path).kind is FileKind.NEW
    bench = open_workbench(Settings(database=str(path)))
    bench.book()
    bench.close()
    assert sorted(one.name for one in tmp_path.iterdir()) == ["new.sqlite3"]
    assert inspect_file(path).kind is FileKind.BOOK


def test_a_backup_of_a_book_in_use_holds_all_that_was_saved(path: Path) -> None:
    book = opened(path)
    book.create(survey("Saved a moment ago"))  # still in the log beside the file
    made = make_backup(path, BackupReason.ASKED, NOON)
    book.create(survey("Saved after"))
    assert names(made.path)[-1] == "Saved a moment ago"
    assert verify(made.path).surveys == 13
    assert [one.path for one in backups_of(path)] == [made.path]
    assert [one.name for one in made.path.parent.iterdir()] == [made.path.name]  # one file, nothing left beside it
    book.close()


@pytest.mark.parametrize("how", DAMAGES)
def test_no_backup_is_made_of_a_damaged_book_and_older_ones_stay(path: Path, how: str) -> None:
    good = make_backup(path, BackupReason.DAILY, NOON)
    damage(path, how)
    with pytest.raises(DamagedStore):
        make_backup(path, BackupReason.DAILY, NOON + timedelta(days=30))
    assert [one.path for one in backups_of(path)] == [good.path]


def test_one_backup_a_day_seven_days_and_four_weeks_are_kept(path: Path) -> None:
    asked = make_backup(path, BackupReason.ASKED, NOON - timedelta(days=400))
    first = make_backup(path, BackupReason.DAILY, NOON)
    assert daily_backup(path, NOON + timedelta(hours=3)) is None
    for day in range(1, 60):  # the copies stand for backups of those days
        at = NOON + timedelta(days=day)
        shutil.copy(first.path, first.path.with_name(f"{at:%Y%m%dT%H%M%SZ}-daily.sqlite3"))
    rotate(path)
    kept = [one.made_at.date() for one in backups_of(path) if one.reason is BackupReason.DAILY]
    last = (NOON + timedelta(days=59)).date()  # 2031-06-29, by a calendar the Sunday that ends ISO week 26
    days = [last - timedelta(days=back) for back in range(7)]
    sundays = [last - timedelta(weeks=back) for back in range(1, 4)]
    assert last.isoformat() == "2031-06-29"
    assert last.isoweekday() == 7
    assert kept == [*days, *sundays]
    assert asked.path.exists()


def test_a_backup_stands_before_each_migration(path: Path) -> None:
    with closing(sqlite3.connect(path)) as raw, raw:
        raw.execute("UPDATE book_version SET version_num = 'book_0004'")
        raw.execute("ALTER TABLE quotation_events DROP COLUMN option")  # what the steps after it add
        raw.execute("DROP TABLE agreements")
        raw.execute("DROP TABLE dispenser_types")
        raw.execute("DROP TABLE quotation_serials")
        for table in ("customers", "supplier_layouts", "stock_entries", "stock_levels"):
            raw.execute(f"DROP TABLE {table}")
        for name in ("dated", "currency", "total_low", "total_high", "margin_low", "margin_high", "follow_up"):
            raw.execute(f"ALTER TABLE quotations DROP COLUMN {name}")
        raw.execute("ALTER TABLE quotation_revisions DROP COLUMN html")
    bench = open_workbench(Settings(database=str(path)))
    assert len(bench.book().entries()) == 12
    (kept,) = bench.keeping().backups()
    assert kept.reason is BackupReason.BEFORE_MIGRATION
    assert inspect_file(kept.path).book_revision == "book_0004"
    bench.close()
    again = open_workbench(Settings(database=str(path)))
    again.book()
    assert len(again.keeping().backups()) == 1
    again.close()


@pytest.mark.parametrize("how", [*DAMAGES, "missing", "sound"])
def test_a_backup_is_put_back_and_what_lay_there_is_set_aside_byte_for_byte(path: Path, how: str) -> None:
    backup = make_backup(path, BackupReason.DAILY, NOON)
    if how == "missing":
        path.unlink()
    elif how == "sound":
        book = opened(path)
        book.create(survey("Newer than the backup"))
        book.close()
    else:
        damage(path, how)
    before = fingerprint(path) if path.exists() else None
    done = restore(path, backup.path, NOON + timedelta(hours=1))
    assert names(path) == [f"Site {number}" for number in range(12)]
    assert backup.path.exists()
    assert (done.set_aside and fingerprint(done.set_aside)) == before
    kept = [one for one in backups_of(path) if one.reason is BackupReason.BEFORE_RESTORE]
    if how == "sound":
        assert names(kept[0].path)[-1] == "Newer than the backup"
    else:
        assert kept == []
    book = opened(path)
    assert len(book.entries()) == 12
    book.close()


def test_a_backup_that_is_not_sound_replaces_nothing(path: Path, tmp_path: Path) -> None:
    backup = make_backup(path, BackupReason.DAILY, NOON)
    damage(backup.path, "scribbled over")
    before = fingerprint(path)
    with pytest.raises(DamagedStore, match="no sound book"):
        restore(path, backup.path, NOON)
    with pytest.raises(InputFault, match="name a backup"):
        restore(path, tmp_path / "absent.sqlite3", NOON)
    with pytest.raises(InputFault, match="the book itself"):
        restore(path, path, NOON)
    assert fingerprint(path) == before


def test_a_folder_that_cannot_take_a_backup_is_told(path: Path) -> None:
    path.with_name(f"{path.name}.backups").write_text("in the way")
    with pytest.raises(StoreFault, match="cannot be written"):
        make_backup(path, BackupReason.ASKED, NOON)


# the file under an open book


def test_a_deleted_file_is_noticed_before_anything_is_called_saved(path: Path) -> None:
    book = opened(path)
    stored = book.stored(1)
    path.unlink()
    for use in (lambda: book.save(stored, survey("Lost")), lambda: book.create(survey("Lost")), book.entries):
        with pytest.raises(StoreFault, match="no longer there"):
            use()
    assert not path.exists()  # nor is an empty file left in its place
    book.close()


def test_a_replaced_file_is_the_book_from_then_on(path: Path) -> None:
    backup = make_backup(path, BackupReason.ASKED, NOON)
    book = opened(path)
    first = book.create(survey("After the backup"))
    restore(path, backup.path, NOON)
    assert len(book.entries()) == 12
    with pytest.raises(InputFault, match="no such survey"):
        book.save(first, survey("After the backup, changed"))
    saved = book.save(book.stored(1), survey("Into the restored book"))
    book.close()
    assert names(path)[0] == "Into the restored book"
    assert saved.revision == 2
