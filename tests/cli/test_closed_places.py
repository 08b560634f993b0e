"""Places that the system does not let anybody look at: told as such, never as a fault of the program.

A name longer than file systems take fails as a folder does that may not be entered, whoever runs the tests: every look
at it is an error of its own, where a file that is not there is none.
"""

from __future__ import annotations

import errno
import os
from collections.abc import Callable
from pathlib import Path
from typing import NoReturn

import pytest

from spoutline.cli.main import run
from spoutline.model.faults import StoreFault
from spoutline.planning.conversion.folder import surveys_of
from spoutline.ruletables.profile_files import own_profile_ids, published_refs
from spoutline.whole_files.environment import fault_of_place, files_in

TOO_LONG = "x" * 300  # NAME_MAX is 255 (POSIX limits.h), and of NTFS as well
Written = Callable[..., Path]


@pytest.mark.parametrize(
    "arguments",
    [
        ("--database", TOO_LONG, "plan", "SURVEY"),
        ("--database", f"{TOO_LONG}/book.sqlite3", "plan", "SURVEY"),
        ("--database", f"sqlite:///{TOO_LONG}", "due"),
        ("--profiles", TOO_LONG, "profile", "list"),
        ("--profiles", TOO_LONG, "plan", "SURVEY"),
        ("plan", f"{TOO_LONG}.json"),
        ("bill", "SURVEY", "--pdf", f"{TOO_LONG}.pdf"),
        ("convert", "SURVEY", "--pdf", f"{TOO_LONG}/convert.pdf"),
        ("book", "check", TOO_LONG),
        ("book", "restore", TOO_LONG),
        ("programme", TOO_LONG),
        ("import", f"{TOO_LONG}.csv", "--site", "Fern Hollow"),
        ("profile", "import", f"{TOO_LONG}.toml"),
        ("quote", "SURVEY", "--terms", f"{TOO_LONG}.toml", "--pdf", "quote.pdf"),
    ],
)
def test_a_place_that_cannot_be_looked_at_is_told_as_such(
    arguments: tuple[str, ...],
    written: Written,
    own_database: Path,
    capsys: pytest.CaptureFixture[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    survey = written({"label": "1A"})
    monkeypatch.chdir(tmp_path)
    given = [str(survey) if one == "SURVEY" else one for one in arguments]
    if "--database" not in given:
        given = ["--database", str(own_database), *given]
    assert run(given, None) == 2
    told = capsys.readouterr().err
    assert TOO_LONG in told
    assert "fault of the program" not in told


def test_what_is_kept_from_run_to_run_is_done_without(
    written: Written, own_database: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    given = ["--database", str(own_database), "plan", str(written({"label": "1A"})), "--json"]
    answers = []
    for cache in ("cache", TOO_LONG):
        monkeypatch.setenv("XDG_CACHE_HOME", str(own_database.parent / cache))
        assert run(given, None) == 0
        answers.append(capsys.readouterr().out)
    assert answers[0] == answers[1]


def closed(*_: object) -> NoReturn:
    raise PermissionError(errno.EACCES, os.strerror(errno.EACCES), "there")


def test_a_folder_that_cannot_be_read_is_not_taken_for_an_empty_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "my_county.toml").write_text("", encoding="utf-8")
    (tmp_path / "a_folder.toml").mkdir()
    (tmp_path / "editions").mkdir()
    (tmp_path / "editions" / "my_county@2.toml").write_text("", encoding="utf-8")
    assert own_profile_ids(tmp_path) == ("my_county",)
    assert published_refs(tmp_path) == ("my_county@2",)
    assert own_profile_ids(tmp_path / "nowhere") == published_refs(tmp_path / "editions") == ()
    assert files_in(tmp_path, "*county.toml") == [tmp_path / "my_county.toml"]
    monkeypatch.setattr(os, "scandir", closed)
    for looked_at in (own_profile_ids, published_refs):
        with pytest.raises(StoreFault, match="Permission denied"):
            looked_at(tmp_path)
    for listed in (surveys_of, lambda folder: files_in(folder, "*")):
        with pytest.raises(PermissionError):
            listed(tmp_path)


def test_a_full_disk_is_no_fault_of_the_program_and_a_file_that_is_not_there_may_be_one() -> None:
    full = fault_of_place(OSError(errno.ENOSPC, os.strerror(errno.ENOSPC), "/disk/bill.pdf"))
    assert str(full) == "/disk/bill.pdf cannot be used: No space left on device."
    assert fault_of_place(FileNotFoundError(errno.ENOENT, os.strerror(errno.ENOENT), "resources")) is None
    assert fault_of_place(OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))) is None  # of which place nobody knows
    assert fault_of_place(OSError("something")) is None
