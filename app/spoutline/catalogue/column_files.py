"""Columns of published editions kept as files that are mapped into memory, a file for each kind and content.

They are a copy: whatever is missing, damaged or made by another version is read from the tables and written anew. A
file is written beside its place and put there in one step, so that several processes may do so at once; one that is in
use stays as it is. A folder that cannot be written to is done without.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import mmap
import os
import struct
import tempfile
import zlib
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from spoutline.catalogue.part_assembly import port_from
from spoutline.model.part import PartKind
from spoutline.model.part_columns import (
    ENDS,
    LEAD_TIME,
    MAKER,
    NUMBER_END,
    NUMBER_START,
    NUMBER_TEXT,
    STATUS,
    PartColumns,
    figures_by_path,
)

_MAGIC: Final = b"SPOUTCOL"
_LAYOUT: Final = 2  # raised whenever files are written otherwise
_HEAD: Final = struct.Struct("<8sII")  # magic, length of the description, its check sum
_ALIGNED: Final = 64
_KEPT: Final = 12  # files of one kind; the oldest go
_SORTS: Final = frozenset("iufb")
_ENDING: Final = ".columns"
_PART: Final = ".part"  # of a file that is being written
_UNFINISHED_S: Final = 3_600.0  # seconds after which nobody writes on: a program was ended in the midst


class ColumnFiles:
    """Files of columns in one folder."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def read(self, kind: PartKind, fingerprint: str) -> PartColumns | None:
        """Return the columns of a kind in an edition of this content; None where no sound file holds them."""
        path = self._path(kind, fingerprint)
        try:
            with path.open("rb") as stream:
                whole = mmap.mmap(stream.fileno(), 0, access=mmap.ACCESS_READ)
            return _read(whole, kind, fingerprint)
        except (OSError, ValueError, KeyError, TypeError, IndexError, struct.error):
            return None

    def holds(self, kind: PartKind, fingerprint: str) -> bool:
        """Say whether a file is kept for a kind in an edition of this content, sound or not."""
        return os.path.isfile(self._path(kind, fingerprint))  # noqa: PTH113  (Path's own fails in a closed folder)

    def write(self, fingerprint: str, columns: PartColumns) -> None:
        """Keep columns for the next time; where that is not possible nothing is kept."""
        path = self._path(columns.kind, fingerprint)
        with contextlib.suppress(OSError):
            self._folder.mkdir(parents=True, exist_ok=True)
            handle, name = tempfile.mkstemp(dir=self._folder, suffix=_PART)
            try:
                with os.fdopen(handle, "wb") as stream:
                    for piece in _pieces(fingerprint, columns):
                        stream.write(piece)
                Path(name).replace(path)
            except BaseException:
                Path(name).unlink(missing_ok=True)
                raise
            self._tidy(columns.kind)

    def _path(self, kind: PartKind, fingerprint: str) -> Path:
        named = hashlib.sha256(f"{_LAYOUT}\0{_declared(kind)}\0{fingerprint}".encode()).hexdigest()[:32]
        return self._folder / f"{kind}-{named}{_ENDING}"

    def _tidy(self, kind: PartKind) -> None:
        """Remove the oldest files of a kind, but not what another process has open, and what was never finished."""
        found = sorted(self._folder.glob(f"{kind}-*{_ENDING}"), key=_written_at, reverse=True)
        long_ago = max(map(_written_at, found), default=0.0) - _UNFINISHED_S
        unfinished = [path for path in self._folder.glob(f"*{_PART}") if _written_at(path) < long_ago]
        for path in (*found[_KEPT:], *unfinished):
            with contextlib.suppress(OSError):
                path.unlink()


def _written_at(path: Path) -> float:
    return path.stat().st_mtime


@cache
def _declared(kind: PartKind) -> str:
    """Return a digest of what the columns of a kind mean: paths, types and the order of words."""
    figures = figures_by_path(kind).values()
    told = [(one.path, one.value_type.__name__, str(one.many), [*map(str, one.choices)]) for one in figures]
    return hashlib.sha256(json.dumps(told).encode()).hexdigest()


def _pieces(fingerprint: str, columns: PartColumns) -> Iterator[bytes]:
    """Yield the bytes of a file: head, description, arrays, each array at a round place."""
    arrays = {name: np.ascontiguousarray(array) for name, array in columns.arrays.items()}
    placed, end = [], 0
    for name, array in arrays.items():
        placed.append([name, array.dtype.str, array.shape, end])
        end = _round(end + array.nbytes)
    check = 0
    for array in arrays.values():
        check = zlib.crc32(_filled(array), check)
    description = {
        "kind": columns.kind,
        "fingerprint": fingerprint,
        "declared": _declared(columns.kind),
        "makers": columns.makers,
        "ports": [[port.thread, port.size, port.gender, port.path, port.made_up_in] for port in columns.ports],
        "arrays": placed,
        "size": end,
        "check": check,
    }
    text = json.dumps(description).encode()
    head = _HEAD.pack(_MAGIC, len(text), zlib.crc32(text)) + text
    yield head + bytes(_round(len(head)) - len(head))
    yield from map(_filled, arrays.values())


def _filled(array: NDArray[Any]) -> bytes:
    content = array.tobytes()
    return content + bytes(_round(len(content)) - len(content))


def _round(length: int) -> int:
    return -(-length // _ALIGNED) * _ALIGNED


def _read(whole: mmap.mmap, kind: PartKind, fingerprint: str) -> PartColumns | None:
    """Return what a file holds; raise what shows that it is damaged."""
    magic, length, check = _HEAD.unpack(whole[: _HEAD.size])
    text = whole[_HEAD.size : _HEAD.size + length]
    if magic != _MAGIC or zlib.crc32(text) != check:
        return None
    described = json.loads(text)
    start = _round(_HEAD.size + length)
    own = described["kind"], described["fingerprint"], described["declared"]
    body = memoryview(whole)[start:]
    if own != (kind, fingerprint, _declared(kind)) or len(body) != described["size"]:
        return None
    if zlib.crc32(body) != described["check"]:
        return None
    placed = described["arrays"]
    arrays = {name: _array(whole, start + at, kind_of, tuple(shape)) for name, kind_of, shape, at in placed}
    ports = tuple(port_from(*port) for port in described["ports"])
    columns = PartColumns(kind, arrays, tuple(described["makers"]), ports)
    return columns if _is_whole(columns) else None


def _array(whole: mmap.mmap, at: int, kind_of: str, shape: tuple[int, ...]) -> NDArray[Any]:
    kept = np.dtype(kind_of)
    if kept.kind not in _SORTS:
        raise ValueError(kind_of)
    return np.frombuffer(whole, kept, int(np.prod(shape)), at).reshape(shape)


def _is_whole(columns: PartColumns) -> bool:
    """Say whether every column is there, each with a row for each part."""
    wanted = {*figures_by_path(columns.kind), *ENDS, STATUS, LEAD_TIME, MAKER, NUMBER_START, NUMBER_END}
    sizes = {len(array) for name, array in columns.arrays.items() if name != NUMBER_TEXT}
    return wanted | {NUMBER_TEXT} <= set(columns.arrays) and len(sizes) == 1
