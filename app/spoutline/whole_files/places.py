"""Where a path leads: which file that is, whatever its name, and whether a file may be put there at all."""

from __future__ import annotations

import os
import stat
import unicodedata
from itertools import islice
from pathlib import Path, PureWindowsPath

from spoutline.frozen import frozen
from spoutline.model.worded import Worded

_Identity = tuple[int, int]  # device and inode
_ENTRIES_TRIED = 40

_KINDS = (
    (stat.S_ISLNK, "this is a symbolic link, which is not replaced; name the file itself or another one"),
    (stat.S_ISDIR, "this is a folder; name a file in it"),
    (stat.S_ISFIFO, "this is a named pipe, which is not replaced; name another file"),
    (stat.S_ISSOCK, "this is a socket, which is not replaced; name another file"),
    (stat.S_ISCHR, "this is a device, which is not replaced; name another file"),
    (stat.S_ISBLK, "this is a device, which is not replaced; name another file"),
)


@frozen
class Place:
    """What tells one file from another: the file that is there, and the folder with the name that it has in it."""

    file: _Identity | None
    folder: _Identity | None
    name: str
    path: str


def place_of(path: Path) -> Place:
    """Return where ``path`` leads, links on the way resolved; nothing needs to be there yet."""
    real = os.path.realpath(path)
    folder, name = os.path.split(real)
    return Place(_identity(real), _identity(folder), _as_told_apart(folder, name), real)


def is_same_place(one: Place, other: Place) -> bool:
    """Say whether two places are one file: the same one on disk, hard links included, or one name in one folder."""
    if one.file is not None and one.file == other.file:
        return True
    if one.folder is None or other.folder is None:
        return one.path == other.path
    return one.folder == other.folder and one.name == other.name


def is_same_file(one: Path, other: Path) -> bool:
    """Say whether two paths lead to one file, or would once it is written."""
    return is_same_place(place_of(one), place_of(other))


def is_below(place: Place, folder: Path) -> bool:
    """Say whether a place lies in a folder, however deep."""
    wanted = _identity(os.path.realpath(folder))
    if wanted is None:
        return False
    return any(_identity(str(parent)) == wanted for parent in Path(place.path).parents)


def obstacle(path: Path) -> str | None:
    """Return why no file may be put at ``path``, as what would be right; None where one may.

    Only an ordinary file is replaced: writing would put one in the place of a link, a pipe or a device.
    """
    if os.name == "nt" and PureWindowsPath(path).is_reserved():
        return "this is the name of a device, which is not replaced; name another file"
    try:
        mode = os.lstat(path).st_mode
    except FileNotFoundError:
        mode = None
    except (OSError, ValueError) as fault:
        return Worded("it cannot be written ({reason})", reason=_reason(fault))
    if mode is not None:
        return next((words for is_kind, words in _KINDS if is_kind(mode)), None)
    folder = path.parent
    if not folder.exists():
        return Worded("it cannot be written: the folder '{folder}' is not there; make it first", folder=folder)
    return None if folder.is_dir() else Worded("it cannot be written: '{folder}' is no folder", folder=folder)


def _identity(path: str) -> _Identity | None:
    try:
        found = Path(path).stat()
    except (OSError, ValueError):
        return None
    return found.st_dev, found.st_ino


def _as_told_apart(folder: str, name: str) -> str:
    """Return a name as its folder tells names apart, where upper and lower case may mean one file."""
    return unicodedata.normalize("NFC", name).casefold() if is_case_blind(Path(folder)) else name


def is_case_blind(folder: Path) -> bool:
    """Say whether a folder takes upper and lower case for one name, found out by what it holds already."""
    try:
        with os.scandir(folder) as entries:
            held = [entry.name for entry in islice(entries, _ENTRIES_TRIED)]
    except OSError:
        held = []
    tried = (folder / name for name in held)
    for path in (*tried, folder):
        other = path.with_name(path.name.swapcase()) if path.name else path
        if other.name == path.name:
            continue
        one = _identity(str(path))
        if one is not None:
            return other.name not in held and _identity(str(other)) == one
    return False


def _reason(fault: BaseException) -> str:
    return (fault.strerror or str(fault)) if isinstance(fault, OSError) else str(fault)
