"""Files written whole or not at all: each beside its place first, then moved there."""

from __future__ import annotations

import contextlib
import errno
import os
import secrets
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from spoutline.model.faults import StoreFault


def write_file(path: Path, content: bytes) -> None:
    """Write one file; raise ``StoreFault`` where it cannot be written, an older file is as it was then."""
    write_files({path: content})


def write_files(contents: Mapping[Path, bytes]) -> None:
    """Write every file, or none: all are written beside their places, onto the disk, before the first is moved there.

    A file that is replaced hands on its permissions, a new one has those that the person's mask gives.

    Raises
    ------
    StoreFault
        Naming the file that cannot be written, and those that stand already where a move failed all the same.
    """
    written: list[tuple[Path, Path]] = []
    moved: list[Path] = []
    try:
        for path, content in contents.items():
            written.append((_written_beside(path, content), path))
        for part, path in written:
            with _telling(path, moved):
                part.replace(path)
            moved.append(path)
    except BaseException:
        for part, _ in written:
            part.unlink(missing_ok=True)
        raise


def _written_beside(path: Path, content: bytes) -> Path:
    part = path.with_name(f".{path.stem[:40]}-{secrets.token_hex(4)}.part")
    with _telling(path):
        if path.is_dir():
            raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
        # the mask is applied by the system: asking for it would change it for every other thread meanwhile
        handle = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), 0o666)
        try:
            with os.fdopen(handle, "wb") as stream:
                stream.write(content)
                stream.flush()
                os.fsync(stream.fileno())
            with contextlib.suppress(FileNotFoundError):
                part.chmod(path.stat().st_mode & 0o777)
        except BaseException:
            part.unlink(missing_ok=True)
            raise
    return part


@contextlib.contextmanager
def _telling(path: Path, moved: Sequence[Path] = ()) -> Iterator[None]:
    try:
        yield
    except OSError as fault:
        done = f"Written before it: {', '.join(map(str, moved))}." if moved else "Nothing was written."
        raise StoreFault(f"{path} cannot be written: {fault.strerror or fault}. {done}") from fault
