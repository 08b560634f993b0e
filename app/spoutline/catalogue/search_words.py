"""How entries are known to whoever types: words of their texts, and numbers whatever signs stand in them.

A text becomes tokens of letters, digits and ``/ . - +``; everything else stands between tokens and is never an operator
of anything. What is typed is turned into tokens in the same way, and finds an entry by the beginning of its tokens.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from functools import lru_cache
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.part import PartKind

JOINING: Final = "/.-+"  # signs inside a word: 3/4, 1.5, E-85
LONGEST_TOKEN: Final = 64  # characters; what is longer is known by its beginning
# what tells tokens of different use apart; none of them can stand in a word
WHOLE: Final = "="  # a number from its first sign to its last, letters and digits alone
PIECE: Final = "#"  # the rest of a number from one of its pieces on, letters and digits alone
_CATALOGUE: Final = "@"
_DESCRIBED: Final = "!"
_KIND: Final = "&"
_SLASHES: Final = frozenset("\u2044\u2215")  # fraction slash, division slash


@frozen
class Typed:
    """What somebody looks for.

    ``words`` are as written, each of them to be the beginning of a token; ``number`` is the whole as a number, letters
    and digits alone.
    """

    words: tuple[str, ...]
    number: str


def typed(text: str) -> Typed:
    """Return what a text asks for; no words where it holds neither a letter nor a digit."""
    words = tuple(dict.fromkeys(word[:LONGEST_TOKEN] for word in words_in(text)))
    return Typed(words, compact(text)[: LONGEST_TOKEN - 1])


def words_in(text: str) -> tuple[str, ...]:
    """Return the words of a text as they are compared: without capitals and accents, no sign at their ends."""
    if text.isascii():
        return tuple(filter(None, (word.strip(JOINING) for word in _PLAIN_WORDS.findall(text.lower()))))
    kept = "".join(sign if is_kept(sign) or sign in JOINING else " " for sign in _plain(text))
    return tuple(filter(None, (word.strip(JOINING) for word in kept.split())))


def compact(text: str) -> str:
    """Return a number as it is compared: letters and digits alone."""
    if text.isascii():
        return "".join(_PIECES.findall(text.lower()))
    return "".join(filter(is_kept, _plain(text)))


def _plain(text: str) -> str:
    """Write a text in one way: compatible forms alike, no capitals, no accents, one dash and one slash."""
    folded = unicodedata.normalize("NFKD", unicodedata.normalize("NFKD", text).casefold())
    return "".join(filter(None, map(_one_way, folded)))


def _one_way(sign: str) -> str:
    if sign.isascii():
        return sign
    category = unicodedata.category(sign)
    if category in ("Mn", "Me", "Cf"):
        return ""
    if category == "Pd" or sign == "\u2212":
        return "-"
    return "/" if sign in _SLASHES else sign


def is_kept(sign: str) -> bool:
    """Return whether a sign is a letter or digit, or belongs to one."""
    return sign.isalnum() or (not sign.isascii() and unicodedata.category(sign)[0] == "M")


def _rests(word: str) -> Iterator[str]:
    """Yield a word, and what is left of it from each further piece on: behind a sign, and where digits begin or end."""
    if word.isascii():
        for found in _PIECES.finditer(word):
            yield word[found.start() :]
        return
    for place, sign in enumerate(word):
        before = word[place - 1] if place else JOINING[0]
        if is_kept(sign) and (not is_kept(before) or before.isdecimal() != sign.isdecimal()):
            yield word[place:]


_PIECES: Final = re.compile(r"[a-z]+|[0-9]+")  # of a plain word of ASCII
_PLAIN_WORDS: Final = re.compile(r"[a-z0-9/.+-]+")


@lru_cache(maxsize=20_000)  # the words of names stand in many of them
def _tokens_of_word(word: str) -> tuple[str, ...]:
    return tuple(rest[:LONGEST_TOKEN] for rest in _rests(word))


@lru_cache(maxsize=5_000)  # makers and suppliers are few
def _of_text(text: str) -> tuple[str, ...]:
    return tuple(token for word in words_in(text) for token in _tokens_of_word(word))


def _of_number(number: str) -> Iterator[str]:
    joined = JOINING[0].join(words_in(number))
    if joined:
        yield WHOLE + compact(joined)[: LONGEST_TOKEN - 1]
    for rest in _rests(joined):
        yield PIECE + compact(rest)[: LONGEST_TOKEN - 1]


def search_text(entry: CatalogueEntry, catalogue_id: int, *, described: bool) -> str:
    """Return all tokens of an entry, separated by blanks."""
    kind = "" if entry.kind is None else entry.kind.value
    texts = (entry.name, entry.maker, entry.supplier)
    return tokens_text(catalogue_id, kind, texts, (entry.number, entry.item_number, entry.gtin), described=described)


def tokens_text(
    catalogue_id: int, kind: str, texts: tuple[str, ...], numbers: tuple[str, ...], *, described: bool
) -> str:
    """Return the tokens of texts and numbers, and those by which a search is narrowed."""
    tokens = [f"{_CATALOGUE}{catalogue_id}", f"{_DESCRIBED}{int(described)}", *([_KIND + kind] if kind else [])]
    for text in texts:
        tokens.extend(_of_text(text))
    for number in numbers:
        tokens.extend(_of_number(number))
    return " ".join(dict.fromkeys(tokens))


def narrowing(catalogue_id: int, described: bool | None, kind: PartKind | None) -> tuple[str, ...]:
    """Return the tokens that every entry has that is looked for."""
    tokens = [f"{_CATALOGUE}{catalogue_id}"]
    if described is not None:
        tokens.append(f"{_DESCRIBED}{int(described)}")
    if kind is not None:
        tokens.append(_KIND + kind.value)
    return tuple(tokens)


_TOKEN: Final = re.compile(r"[^\s'\"\\]+")


def is_token(token: str) -> bool:
    """Return whether a token can stand in a query as it is: it holds no blank, quote or backslash."""
    return _TOKEN.fullmatch(token) is not None
