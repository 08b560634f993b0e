"""What the one search finds: commands, positions, surveys, quotations, parts and pages of help, the best first."""

from __future__ import annotations

import unicodedata
from collections.abc import Callable, Iterable
from enum import StrEnum

from spoutline.frozen import frozen

_MOST_OF_A_KIND = 8


class FoundKind(StrEnum):
    """Kinds of what is found, in the order in which they are listed where they fit equally well."""

    COMMAND = "command"
    POSITION = "position"
    SURVEY = "survey"
    QUOTATION = "quotation"
    PART = "part"
    HELP = "help"


@frozen(kw_only=True)
class Found:
    """One thing that can be gone to: what it is called, what is told of it, the keys that lead there too."""

    kind: FoundKind
    title: str
    told: str
    go: Callable[[], object]
    keys: str = ""
    more_words: str = ""  # by which it is found too, and which are not shown


def plain(text: str) -> str:
    """Return a text as it is compared: no capitals, no accents."""
    spread = unicodedata.normalize("NFKD", text.casefold())
    return "".join(sign for sign in spread if not unicodedata.combining(sign))


def fitting(text: str, offered: Iterable[Found], most: int = _MOST_OF_A_KIND) -> tuple[Found, ...]:
    """Return what holds every word of ``text``, at most so many of each kind; without a word, commands alone.

    Better fits come first: the title begins with the text, a word of it begins with the first word, the title holds
    all, only what is told of it does.
    """
    words = plain(text).split()
    if not words:
        return tuple(one for one in offered if one.kind is FoundKind.COMMAND)
    ranked: list[tuple[int, int, int, Found]] = []
    order = {kind: place for place, kind in enumerate(FoundKind)}
    for place, one in enumerate(offered):
        rank = _rank(words, plain(one.title), plain(f"{one.title} {one.told} {one.more_words}"))
        if rank is not None:
            ranked.append((rank, order[one.kind], place, one))
    ranked.sort(key=lambda row: row[:3])
    left = dict.fromkeys(FoundKind, most)
    found: list[Found] = []
    for *_, one in ranked:
        if left[one.kind]:
            left[one.kind] -= 1
            found.append(one)
    return tuple(found)


def _rank(words: list[str], title: str, everything: str) -> int | None:
    if any(word not in everything for word in words):
        return None
    if title.startswith(" ".join(words)):
        return 0
    if all(word in title for word in words):
        return 1 if any(part.startswith(words[0]) for part in title.split()) else 2
    return 3
