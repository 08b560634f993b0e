"""What the program's tables mean, kept from one start to the next, so that a short command need not read them anew.

To read TOML and to check each row and phrase takes a seventh of a short command, and gives the same values each time.
They are kept in the cache under a fingerprint of the very texts and of the code that read them, with a check sum. Of a
text or a program that changed nothing is kept, and a file that is torn or was made by something else counts as none.
Only what could be read without a fault is kept, so that a faulty table is told of each time.
"""

from __future__ import annotations

import hashlib
import io
import os
import pickle
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from dataclasses import is_dataclass
from enum import Enum
from functools import cache
from pathlib import Path
from typing import Any, Final, TypeVar

import spoutline
from spoutline.bootstrap.settings import cache_folder

_T = TypeVar("_T")
READING: Final = ("calc", "explain", "frozen.py", "input_bounds", "model", "rules", "ruletables", "units")
"""Packages and modules whose code decides what the texts mean, lists of words declared beside rules among it."""
_MEANT: Final = ("spoutline.explain.", "spoutline.model.")  # where the types of what is kept are declared
_MAGIC: Final = b"SPOUTTAB"
_LARGEST: Final = 16 * 1024 * 1024  # bytes; a larger file is none of the program's
_KEPT: Final = 12  # files of one reader; the oldest go
_ENDING: Final = ".table"
_PART: Final = ".part"  # of a file that is being written
_UNFINISHED_S: Final = 3_600.0  # seconds after which nobody writes on: a program was ended in the midst


def kept(name: str, texts: Sequence[str], read: Callable[[], _T]) -> _T:
    """Return what ``texts`` mean: what was kept of these very texts, else what ``read`` makes of them, which is kept.

    ``name`` says which reader it is. Raise what ``read`` raises. A folder that cannot be used is done without.
    """
    code = reading_code()
    if code is None:
        return read()
    path = cache_folder() / "tables" / f"{name}-{_key(code, name, texts)}{_ENDING}"
    with suppress(
        OSError, ValueError, ImportError, KeyError, TypeError, AttributeError, IndexError, EOFError, pickle.PickleError
    ):
        found: _T = _loaded(path)
        return found
    made = read()
    with suppress(OSError, pickle.PickleError, TypeError, AttributeError):
        _write(path, made)
        _tidy(path.parent, name)
    return made


@cache
def reading_code() -> str | None:
    """Return what tells the code that reads tables from any other, as Python tells its compiled files: by day and size.

    Of a frozen program, whose modules lie in one file, that of this file. None where there is neither.
    """
    package = Path(__file__).parents[1]
    with suppress(OSError):
        looked_at = [_state(sys.executable)] if getattr(sys, "frozen", False) else _states(package)
        return repr((spoutline.__version__, sys.version, looked_at))
    return None


def _states(package: Path) -> list[tuple[str, int, int]]:
    """Return the states of the sources of the code that reads tables; raise ``OSError`` where they are not there."""
    found: list[tuple[str, int, int]] = []
    for name in READING:
        path = str(package / name)
        of_one = [_state(path)] if name.endswith(".py") else list(_states_below(path))
        if not of_one:
            raise FileNotFoundError(path)
        found += of_one
    return sorted(found)


def _states_below(folder: str) -> Iterator[tuple[str, int, int]]:
    with os.scandir(folder) as entries:
        for entry in entries:
            if entry.name.endswith(".py"):
                state = entry.stat()
                yield entry.path, state.st_mtime_ns, state.st_size
            elif entry.is_dir() and entry.name != "__pycache__":
                yield from _states_below(entry.path)


def _state(path: str) -> tuple[str, int, int]:
    state = os.stat(path)  # noqa: PTH116  (as of the others, whose path is a text)
    return path, state.st_mtime_ns, state.st_size


def _key(code: str, name: str, texts: Sequence[str]) -> str:
    digest = hashlib.sha256(code.encode())
    for text in (name, *texts):
        told = text.encode()
        digest.update(len(told).to_bytes(8, "big") + told)
    return digest.hexdigest()[:32]


def _loaded(path: Path) -> Any:  # noqa: ANN401  (what the reader of this name makes)
    """Return what a file holds; raise ``OSError`` where it is not there, ``ValueError`` where it is not sound."""
    with path.open("rb") as stream:
        whole = stream.read(_LARGEST + 1)
    begin = len(_MAGIC) + hashlib.sha256().digest_size
    content = memoryview(whole)[begin:]
    if len(whole) > _LARGEST or whole[:begin] != _MAGIC + hashlib.sha256(content).digest():
        raise ValueError(path)
    return _OnlyValues(io.BytesIO(content)).load()


class _OnlyValues(pickle.Unpickler):
    """Makes values of the program's own types and nothing else: no file of the cache can have anything else called."""

    def find_class(self, module: str, name: str) -> type[Any]:
        """Return a type of values; raise ``UnpicklingError`` for anything else."""
        found = super().find_class(module, name) if module.startswith(_MEANT) else None
        if not isinstance(found, type) or not (issubclass(found, Enum) or is_dataclass(found)):
            raise pickle.UnpicklingError(f"{module}.{name} is no value of a table")
        return found


def _write(path: Path, made: object) -> None:
    import tempfile  # loaded where something new is kept

    content = pickle.dumps(made, pickle.HIGHEST_PROTOCOL)
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, beside = tempfile.mkstemp(dir=path.parent, suffix=_PART)
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(_MAGIC + hashlib.sha256(content).digest() + content)
        Path(beside).replace(path)
    except BaseException:
        Path(beside).unlink(missing_ok=True)
        raise


def _tidy(folder: Path, name: str) -> None:
    """Remove the oldest files of a reader, of texts and programs that are long gone, and what was never finished."""
    found = sorted(folder.glob(f"{name}-*{_ENDING}"), key=_written_at, reverse=True)
    long_ago = max(map(_written_at, found), default=0.0) - _UNFINISHED_S
    unfinished = [path for path in folder.glob(f"*{_PART}") if _written_at(path) < long_ago]
    for path in (*found[_KEPT:], *unfinished):
        with suppress(OSError):
            path.unlink()


def _written_at(path: Path) -> float:
    return path.stat().st_mtime
