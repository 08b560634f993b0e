"""The first bytes of a database, read beside connections of this process without taking their locks away."""

from __future__ import annotations

import contextlib
import os
import sys
import threading
from pathlib import Path
from typing import Final

# POSIX lets go of every lock that a process holds on a file as soon as the process closes any descriptor of that file
# (IEEE Std 1003.1, fcntl; https://www.sqlite.org/howtocorrupt.html section 2.2). Another process would then take
# itself for the only one, and clear away the log that a connection here still reads. So descriptors stay open, one
# for each file, until the file has no name any more.
_CLOSING_UNLOCKS: Final = sys.platform != "win32"
_held: dict[tuple[int, int], int] = {}
_guard = threading.Lock()


def first_bytes(path: Path, count: int) -> bytes:
    """Return at most ``count`` bytes from the start of a file; raise ``OSError`` where it cannot be read."""
    if not _CLOSING_UNLOCKS:
        with path.open("rb") as stream:
            return stream.read(count)
    with _guard:
        return os.pread(_descriptor(path), count, 0)


def _descriptor(path: Path) -> int:
    found = path.stat()
    identity = found.st_dev, found.st_ino
    if identity not in _held:
        _let_go_of_what_is_gone()
        opened = os.open(path, os.O_RDONLY | os.O_CLOEXEC)
        found = os.fstat(opened)  # another file may have taken the name in between
        identity = found.st_dev, found.st_ino
        _held.setdefault(identity, opened)
    return _held[identity]


def _let_go_of_what_is_gone() -> None:
    for identity, descriptor in tuple(_held.items()):
        if os.fstat(descriptor).st_nlink == 0:
            del _held[identity]
            with contextlib.suppress(OSError):
                os.close(descriptor)
