"""Which own jurisdictions and published editions lie in a folder, told by the names of their files; none is read."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final

SUFFIX: Final = ".toml"
EDITIONS: Final = "editions"  # folder of the published ones, within that of own jurisdictions
_REF: Final = re.compile(r"([a-z][a-z0-9_]{0,39})@([1-9]\d{0,5})")


def own_profile_ids(folder: Path) -> tuple[str, ...]:
    """Return the ids of the profiles in ``folder``, sorted; none where the folder is not there yet."""
    return tuple(sorted(path.stem for path in folder.glob(f"*{SUFFIX}") if path.is_file()))


def split_ref(text: str) -> tuple[str, int] | None:
    """Return id and number of what is written as ``my_county@2``; None for anything else."""
    found = _REF.fullmatch(text)
    return None if found is None else (found[1], int(found[2]))


def published_refs(folder: Path) -> tuple[str, ...]:
    """Return every published edition as ``my_county@2``, sorted."""
    names = (path.stem for path in (folder / EDITIONS).glob(f"*{SUFFIX}") if split_ref(path.stem) is not None)
    return tuple(sorted(names))
