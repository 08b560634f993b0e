"""Which own jurisdictions and published editions lie in a folder, told by the names of their files; none is read."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Final

from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded

SUFFIX: Final = ".toml"
EDITIONS: Final = "editions"  # folder of the published ones, within that of own jurisdictions
_REF: Final = re.compile(r"([a-z][a-z0-9_]{0,39})@([1-9]\d{0,5})")


def own_profile_ids(folder: Path) -> tuple[str, ...]:
    """Return the ids of the profiles in ``folder``, sorted; none where the folder is not there yet.

    Raise ``StoreFault`` where it cannot be read.
    """
    return tuple(sorted(path.stem for path in _files(folder)))


def split_ref(text: str) -> tuple[str, int] | None:
    """Return id and number of what is written as ``my_county@2``; None for anything else."""
    found = _REF.fullmatch(text)
    return None if found is None else (found[1], int(found[2]))


def published_refs(folder: Path) -> tuple[str, ...]:
    """Return every published edition as ``my_county@2``, sorted; raise as ``own_profile_ids`` does."""
    return tuple(sorted(path.stem for path in _files(folder / EDITIONS) if split_ref(path.stem) is not None))


def _files(folder: Path) -> Iterator[Path]:
    """Yield the files of tables; raise ``StoreFault`` for a folder that is there and cannot be read.

    Nobody should plan by other rules than his own because his folder is closed to him.
    """
    try:
        with os.scandir(folder) as entries:
            for entry in entries:
                path = Path(entry.path)
                if path.match(f"*{SUFFIX}") and entry.is_file():
                    yield path
    except (FileNotFoundError, NotADirectoryError):
        return
    except OSError as fault:
        reason = fault.strerror or fault
        raise StoreFault(Worded("{where} cannot be used: {reason}.", where=folder, reason=reason)) from fault
