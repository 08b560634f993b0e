"""Files are written whole or not at all, with the permissions that a person expects."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from spoutline.model.faults import StoreFault
from spoutline.whole_files import write_file, write_files


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


def test_a_move_that_fails_leaves_no_litter_and_names_what_stands(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    move = Path.replace

    def full(part: Path, target: Path) -> Path:
        if target.name == "b":
            raise OSError(28, "No space left on device")
        return move(part, target)

    monkeypatch.setattr(Path, "replace", full)
    with pytest.raises(StoreFault, match=r"b cannot be written: No space left on device\. Written before it: .*a\.$"):
        write_files({tmp_path / "a": b"1", tmp_path / "b": b"2"})
    assert names(tmp_path) == ["a"]


def test_a_name_as_long_as_names_may_be_can_be_written(tmp_path: Path) -> None:
    path = tmp_path / ("n" * 251 + ".pdf")  # NAME_MAX of the usual file systems is 255 bytes
    write_file(path, b"x")
    assert path.read_bytes() == b"x"
