"""Answer an unknown name with the known ones closest to it."""

from __future__ import annotations

import difflib
from collections.abc import Iterable


def nearest(name: str, known: Iterable[str]) -> str:
    """Return a phrase that names up to three close known names, or a few of them where none is close."""
    names = sorted(known)
    close = difflib.get_close_matches(name, names, n=3, cutoff=0.5)
    if close:
        return f"did you mean {' or '.join(close)}?"
    shown = names[:12]
    return f"known are {', '.join(shown)}{' and more' if len(names) > len(shown) else ''}"
