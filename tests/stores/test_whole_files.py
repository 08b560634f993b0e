"""Files are written whole or not at all, with the permissions that a person expects."""

from __future__ import annotations

import os
import socket
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from spoutline.model.faults import InputFault, StoreFault
from spoutline.whole_files import OutputPlan, PlannedFile, is_same_file, places, staged, write_file, write_files


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_files_keep_their_permissions_and_new_ones_take_those_of_the_mask(tmp_path: Path) -> None:
    old, new = tmp_path / "old.csv", tmp_path / "new.csv"
    old.write_text("before")
    old.chmod(0o600)
    mask = os.umask(0o027)
    try:
        write_files({old: b"after", new: b"new"})
    finally:
        os.umask(mask)
    assert old.read_bytes() == b"after"
    assert old.stat().st_mode & 0o777 == 0o600
    assert new.stat().st_mode & 0o777 == 0o640  # what POSIX open() leaves of 0666 under the mask 027
    assert names(tmp_path) == ["new.csv", "old.csv"]


@pytest.mark.parametrize("target", ["folder", "nowhere/file"])
def test_where_one_file_cannot_be_written_none_is(tmp_path: Path, target: str) -> None:
    (tmp_path / "folder").mkdir()
    (tmp_path / "bill.pdf").write_bytes(b"before")
    with pytest.raises(StoreFault, match=rf"{target} cannot be written: .*\. Nothing was written\.$"):
        write_files({tmp_path / "bill.pdf": b"after", tmp_path / "new": b"new", tmp_path / target: b"no"})
    assert (tmp_path / "bill.pdf").read_bytes() == b"before"
    assert names(tmp_path) == ["bill.pdf", "folder"]


def test_a_move_that_fails_takes_back_those_before_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    move = Path.replace
    (tmp_path / "a").write_bytes(b"before")

    def full(part: Path, target: Path) -> Path:
        if target.name == "c":
            raise OSError(28, "No space left on device")
        return move(part, target)

    monkeypatch.setattr(Path, "replace", full)
    with pytest.raises(StoreFault, match=r"c cannot be written: No space left on device\. Nothing was written\.$"):
        write_files({tmp_path / "a": b"1", tmp_path / "b": b"2", tmp_path / "c": b"3"})
    assert names(tmp_path) == ["a"]
    assert (tmp_path / "a").read_bytes() == b"before"


def test_where_the_step_beside_them_fails_placed_files_are_taken_back(tmp_path: Path) -> None:
    (tmp_path / "old").write_bytes(b"before")
    with (
        pytest.raises(ValueError, match="the step"),
        staged({tmp_path / "old": b"after", tmp_path / "new": b"new"}) as files,
    ):
        files.place()
        assert (tmp_path / "old").read_bytes() == b"after"
        raise ValueError("the step failed")
    assert (tmp_path / "old").read_bytes() == b"before"
    assert names(tmp_path) == ["old"]


def test_files_that_were_never_placed_leave_nothing_behind(tmp_path: Path) -> None:
    with staged({tmp_path / "new": b"new"}):
        assert names(tmp_path) != []
    assert names(tmp_path) == []


def test_a_file_system_without_hard_links_serves_too(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def none(*_: object) -> None:
        raise OSError(1, "Operation not permitted")

    monkeypatch.setattr(os, "link", none)
    (tmp_path / "a").write_bytes(b"before")
    write_file(tmp_path / "a", b"after")
    assert (tmp_path / "a").read_bytes() == b"after"
    with pytest.raises(ValueError, match="no"), staged({tmp_path / "a": b"later"}) as files:
        files.place()
        raise ValueError("no")
    assert (tmp_path / "a").read_bytes() == b"after"
    assert names(tmp_path) == ["a"]


@pytest.mark.parametrize("kind", ["link", "dangling", "pipe", "socket", "folder"])
def test_nothing_but_an_ordinary_file_is_replaced(tmp_path: Path, kind: str) -> None:
    path = odd_file(tmp_path, kind)
    before = os.lstat(path)
    with pytest.raises(StoreFault, match="Nothing was written"):
        write_file(path, b"x")
    assert os.lstat(path).st_ino == before.st_ino
    plan = OutputPlan([PlannedFile("--pdf", path, lambda _: True)], (), force=True)
    with pytest.raises(InputFault, match=r"--pdf: .*(not replaced|folder)"):
        plan.check()


def odd_file(folder: Path, kind: str) -> Path:
    path = folder / kind
    if kind == "link":
        (folder / "target").write_bytes(b"kept")
        path.symlink_to(folder / "target")
    elif kind == "dangling":
        path.symlink_to(folder / "nowhere")
    elif kind == "pipe":
        os.mkfifo(path)
    elif kind == "socket":
        server = socket.socket(socket.AF_UNIX)
        server.bind(str(path))
        server.close()
    else:
        path.mkdir()
    return path


def test_one_file_is_known_under_all_its_names(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    book, folder = tmp_path / "book.db", tmp_path / "folder"
    book.write_bytes(b"x")
    folder.mkdir()
    (tmp_path / "other-folder").symlink_to(tmp_path)
    os.link(book, folder / "hard.db")
    monkeypatch.chdir(folder)
    for name in (folder / "hard.db", Path("..") / "book.db", tmp_path / "other-folder" / "book.db"):
        assert is_same_file(book, name), name
    assert not is_same_file(book, tmp_path / "BOOK.db")
    assert is_same_file(tmp_path / "new", folder / ".." / "new")
    assert not is_same_file(tmp_path / "new", folder / "new")


def test_upper_and_lower_case_are_one_file_where_the_folder_says_so(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert not is_same_file(tmp_path / "Bill.pdf", tmp_path / "bill.PDF")
    monkeypatch.setattr(places, "is_case_blind", lambda _folder: True)
    assert is_same_file(tmp_path / "Bill.pdf", tmp_path / "bill.PDF")
    assert is_same_file(tmp_path / "Mu\u0308hle", tmp_path / "m\u00dchle")  # Unicode: the same text, composed or not


def test_a_database_is_never_replaced_whatever_is_forced(tmp_path: Path) -> None:
    path = tmp_path / "other.pdf"
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("create table t (x)")
    with pytest.raises(InputFault, match="this is a database"):
        OutputPlan([PlannedFile("--pdf", path, lambda _: True)], (), force=True).check()


def test_a_name_as_long_as_names_may_be_can_be_written(tmp_path: Path) -> None:
    path = tmp_path / ("n" * 251 + ".pdf")  # NAME_MAX of the usual file systems is 255 bytes
    write_file(path, b"x")
    assert path.read_bytes() == b"x"
