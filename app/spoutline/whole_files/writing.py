"""Files written whole or not at all: all beside their places first, then moved there, or taken back together."""

from __future__ import annotations

import contextlib
import os
import secrets
from collections.abc import Iterator, Mapping
from pathlib import Path

from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded
from spoutline.whole_files.places import obstacle


def write_file(path: Path, content: bytes) -> None:
    """Write one file; raise ``StoreFault`` where it cannot be written, an older file is as it was then."""
    write_files({path: content})


def write_files(contents: Mapping[Path, bytes]) -> None:
    """Write every file, or none; raise ``StoreFault`` naming the one that cannot be written.

    A file that is replaced hands on its permissions, a new one has those that the person's mask gives. What is there
    and is no ordinary file (a link, a pipe, a device) is left as it is.
    """
    with staged(contents) as files:
        files.place()


@contextlib.contextmanager
def staged(contents: Mapping[Path, bytes]) -> Iterator[Staged]:
    """Write every file beside its place, onto the disk, for a step that must happen together with the files.

    Within, ``place`` moves them to their places. Where the step fails after that, they are taken back and older files
    are there again; files that were not placed leave nothing behind.

    Raises
    ------
    StoreFault
        A file cannot be written; none was.
    """
    files = Staged()
    try:
        for path, content in contents.items():
            files.add(path, content)
        yield files
    except BaseException:
        files.take_back()
        raise
    finally:
        files.tidy()


class Staged:
    """Files that lie beside their places."""

    def __init__(self) -> None:
        self._waiting: list[tuple[Path, Path]] = []
        self._placed: list[tuple[Path, Path | None]] = []

    def add(self, path: Path, content: bytes) -> None:
        """Write a file beside its place."""
        self._waiting.append((_written_beside(path, content), path))

    def place(self) -> None:
        """Move all files to their places; where one cannot be moved, ``StoreFault`` is raised and none stays."""
        folders = {path.parent for _, path in self._waiting}
        while self._waiting:
            part, path = self._waiting[0]
            with _telling(path):
                words = obstacle(path)
                if words is not None:
                    raise OSError(words)
                former = _kept_aside(path)
                self._placed.append((path, former))
                part.replace(path)
            del self._waiting[0]
        for folder in folders:
            _onto_the_disk(folder)

    def take_back(self) -> None:
        """Put back what was there before."""
        while self._placed:
            path, former = self._placed.pop()
            with contextlib.suppress(OSError):
                if former is not None and path.exists() and former.samefile(path):
                    former.unlink()  # the file never left its place; only its second name goes
                elif former is not None:
                    former.replace(path)
                elif not any(path == waiting for _, waiting in self._waiting):
                    path.unlink(missing_ok=True)

    def tidy(self) -> None:
        """Remove what was only needed on the way."""
        parts = [part for part, _ in self._waiting] + [former for _, former in self._placed if former is not None]
        for one in parts:
            with contextlib.suppress(OSError):
                one.unlink(missing_ok=True)
        self._waiting, self._placed = [], []


def _beside(path: Path, ending: str) -> Path:
    return path.with_name(f".{path.stem[:40]}-{secrets.token_hex(4)}.{ending}")


def _kept_aside(path: Path) -> Path | None:
    """Keep the file that is there under another name beside it and return that; None where none is there."""
    if not path.exists():
        return None
    former = _beside(path, "former")
    try:
        os.link(path, former)  # the file stays in its place until the new one takes it
    except OSError:
        path.replace(former)  # a file system without hard links
    return former


def _written_beside(path: Path, content: bytes) -> Path:
    with _telling(path):
        words = obstacle(path)
        if words is not None:
            raise OSError(words)
        part = _beside(path, "part")
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


def _onto_the_disk(folder: Path) -> None:
    """Let a power cut find the new names; a system that cannot do so for folders is left alone."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


@contextlib.contextmanager
def _telling(path: Path) -> Iterator[None]:
    try:
        yield
    except OSError as fault:
        reason = (fault.strerror or str(fault)).removeprefix("it cannot be written: ")
        raise StoreFault(
            Worded("{path} cannot be written: {reason}. Nothing was written.", path=path, reason=reason)
        ) from fault
