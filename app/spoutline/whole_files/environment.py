"""Faults of the environment that nobody foresaw where they arose: a folder that may not be entered, a full disk."""

from __future__ import annotations

import errno
import os
from pathlib import Path
from typing import Final

from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded

# what no program can cause or mend; any other error of the system is looked at as a defect of this one
_NOT_OURS: Final = frozenset(
    getattr(errno, name)
    for name in ("EACCES", "EPERM", "EROFS", "ENOSPC", "EDQUOT", "EIO", "ESTALE", "ENAMETOOLONG", "ELOOP")
    if hasattr(errno, name)
)


def fault_of_place(fault: OSError) -> StoreFault | None:
    """Return what a person is told of an error at a file or folder; None where it may be a defect of the program."""
    if fault.errno not in _NOT_OURS or fault.filename is None:
        return None
    return StoreFault(Worded("{where} cannot be used: {reason}.", where=fault.filename, reason=fault.strerror or fault))


def files_in(folder: Path, pattern: str) -> list[Path]:
    """Return what lies in a folder by names that match, sorted.

    Raise ``OSError`` where the folder cannot be read, which ``Path.glob`` takes for an empty one.
    """
    os.scandir(folder).close()
    return sorted(folder.glob(pattern))
