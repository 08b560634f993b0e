"""Files of columns: read back as written, and made anew where they are missing, damaged or of another content."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray

from rules.invented_parts import nozzle, splitter
from spoutline.catalogue.column_files import ColumnFiles
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.catalogue.store import CatalogueStore
from spoutline.database.engine import open_engine
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.part import HANGING_KINDS, PartKind
from spoutline.model.part_columns import PartColumns, columns_of


def _same(one: PartColumns, other: PartColumns) -> bool:
    return (
        (one.kind, one.makers, one.ports) == (other.kind, other.makers, other.ports)
        and set(one.arrays) == set(other.arrays)
        and all(_equal(one.arrays[name], other.arrays[name]) for name in one.arrays)
        and [one.ref_at(row) for row in range(len(one))] == [other.ref_at(row) for row in range(len(other))]
    )


def _equal(one: NDArray[Any], other: NDArray[Any]) -> bool:
    return one.dtype == other.dtype and np.array_equal(one, other, equal_nan=one.dtype.kind == "f")


@pytest.fixture
def nozzles() -> PartColumns:
    return columns_of(PartKind.NOZZLE, [nozzle("N 1"), replace(nozzle("Ñ 2"), maker="Zephyr Brass"), nozzle("N 3")])


@pytest.fixture
def files(tmp_path: Path) -> ColumnFiles:
    return ColumnFiles(tmp_path / "columns")


def _only_file(files: ColumnFiles, tmp_path: Path) -> Path:
    (found,) = (tmp_path / "columns").iterdir()
    return found


def test_what_is_read_is_what_was_written(files: ColumnFiles, nozzles: PartColumns) -> None:
    assert files.read(PartKind.NOZZLE, "f1") is None
    files.write("f1", nozzles)
    read = files.read(PartKind.NOZZLE, "f1")
    assert read is not None
    assert _same(read, nozzles)
    assert files.read(PartKind.NOZZLE, "f2") is None  # another content
    assert files.read(PartKind.SWIVEL, "f1") is None


@pytest.mark.parametrize("parts", [[], [splitter()]], ids=["none", "one"])
def test_a_kind_without_parts_is_kept_too(files: ColumnFiles, parts: list[object]) -> None:
    made = columns_of(PartKind.SPLITTER, parts)  # type: ignore[arg-type]
    files.write("f1", made)
    read = files.read(PartKind.SPLITTER, "f1")
    assert read is not None
    assert _same(read, made)


def _cut(content: bytes) -> bytes:
    return content[: len(content) // 2]


def _turned(place: float) -> Callable[[bytes], bytes]:
    def damage(content: bytes) -> bytes:
        at = int(len(content) * place)
        return content[:at] + bytes([content[at] ^ 0x10]) + content[at + 1 :]

    return damage


DAMAGE: dict[str, Callable[[bytes], bytes]] = {
    "empty": lambda _: b"",
    "cut short": _cut,
    "longer": lambda content: content + b"more",
    "something else": lambda _: b"no columns at all, but long enough to be taken for a head of some kind",
    "a sign of the head": _turned(0.0),
    "a bit of the description": _turned(0.1),
    "a bit of the figures": _turned(0.7),
    "a bit at the end": _turned(0.99),
}


@pytest.mark.parametrize("name", DAMAGE)
def test_a_damaged_file_counts_as_none(files: ColumnFiles, nozzles: PartColumns, tmp_path: Path, name: str) -> None:
    files.write("f1", nozzles)
    path = _only_file(files, tmp_path)
    path.write_bytes(DAMAGE[name](path.read_bytes()))
    assert files.read(PartKind.NOZZLE, "f1") is None
    files.write("f1", nozzles)
    read = files.read(PartKind.NOZZLE, "f1")
    assert read is not None
    assert _same(read, nozzles)


def test_a_folder_that_cannot_be_written_to_is_done_without(tmp_path: Path, nozzles: PartColumns) -> None:
    (tmp_path / "columns").write_text("a file stands where the folder would")
    files = ColumnFiles(tmp_path / "columns")
    files.write("f1", nozzles)
    assert files.read(PartKind.NOZZLE, "f1") is None


def test_old_files_go_and_those_in_use_stay_readable(tmp_path: Path, files: ColumnFiles, nozzles: PartColumns) -> None:
    files.write("f0", nozzles)
    held = files.read(PartKind.NOZZLE, "f0")
    for number in range(1, 20):
        files.write(f"f{number}", nozzles)
    assert len(list((tmp_path / "columns").iterdir())) == 12
    assert held is not None
    assert _same(held, nozzles)


def test_a_file_that_was_never_finished_goes_in_the_end(
    tmp_path: Path, files: ColumnFiles, nozzles: PartColumns
) -> None:
    """A program that is killed while it writes leaves one, of many megabytes for a large catalog."""
    folder = tmp_path / "columns"
    folder.mkdir()
    stale, fresh = folder / "stale.part", folder / "fresh.part"
    for path in (stale, fresh):
        path.write_bytes(b"half")
    long_ago = fresh.stat().st_mtime - 7_200
    os.utime(stale, (long_ago, long_ago))
    files.write("f1", nozzles)
    assert [path.name for path in folder.glob("*.part")] == ["fresh.part"]


@pytest.fixture
def opened(shared_database: Path, tmp_path: Path) -> Callable[[], CatalogueStore]:
    folder = tmp_path / "columns"

    def open_edition() -> CatalogueStore:
        engine = open_engine(f"sqlite:///{shared_database}")
        return CatalogueShelf(engine, folder).parts(EditionRef(DEMONSTRATION))

    return open_edition


def test_an_edition_is_planned_with_from_files_and_makes_them_anew(
    opened: Callable[[], CatalogueStore], catalogue_store: CatalogueStore, tmp_path: Path
) -> None:
    for _ in range(2):  # made, then read
        store = opened()
        assert all(_same(store.columns(kind), catalogue_store.columns(kind)) for kind in HANGING_KINDS)
        assert store.columns(PartKind.NOZZLE) is store.columns(PartKind.NOZZLE)
        store.close()
    paths = sorted((tmp_path / "columns").iterdir())
    assert len(paths) == len(HANGING_KINDS)
    for path in paths:
        path.write_bytes(path.read_bytes()[:-5])
    store = opened()
    assert all(_same(store.columns(kind), catalogue_store.columns(kind)) for kind in HANGING_KINDS)
    store.close()
    assert len(sorted((tmp_path / "columns").iterdir())) == len(paths)


_WRITER = """
import sys
from pathlib import Path
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.part import PartKind

store = CatalogueShelf(open_engine(sys.argv[1]), Path(sys.argv[2])).parts(EditionRef(DEMONSTRATION))
print(len(store.columns(PartKind.SWIVEL)))
"""


def test_two_processes_make_the_same_files_at_once(
    shared_database: Path, files: ColumnFiles, catalogue_store: CatalogueStore, tmp_path: Path
) -> None:
    command = [sys.executable, "-c", _WRITER, f"sqlite:///{shared_database}", str(tmp_path / "columns")]
    running = [subprocess.Popen(command, stdout=subprocess.PIPE, text=True) for _ in range(2)]
    wanted = len(catalogue_store.columns(PartKind.SWIVEL))
    assert [int(one.communicate()[0]) for one in running] == [wanted, wanted]
    read = files.read(PartKind.SWIVEL, catalogue_store.edition().fingerprint)
    assert read is not None
    assert _same(read, catalogue_store.columns(PartKind.SWIVEL))
    assert [path.suffix for path in (tmp_path / "columns").iterdir()] == [".columns"]
