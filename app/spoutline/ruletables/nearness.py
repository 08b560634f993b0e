"""Answer an unknown name with the known ones closest to it."""

from __future__ import annotations

import difflib
from collections.abc import Iterable

from spoutline.model.worded import Worded


def nearest(name: str, known: Iterable[str]) -> str:
    """Return a phrase that names up to three close known names, or a few of them where none is close."""
    names = sorted(known)
    close = difflib.get_close_matches(name, names, n=3, cutoff=0.5)
    if close:
        return Worded("did you mean {close}?", close=" / ".join(close))
    shown = names[:12]
    more = Worded(" and {count} more", count=len(names) - len(shown)) if len(names) > len(shown) else ""
    return Worded("known are {shown}{more}", shown=", ".join(shown), more=more)
