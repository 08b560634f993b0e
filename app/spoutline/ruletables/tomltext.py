"""Write text as TOML strings: basic strings with every control character escaped."""

from __future__ import annotations

from collections.abc import Iterable

_SHORT = {'"': '\\"', "\\": "\\\\", "\n": "\\n", "\r": "\\r", "\t": "\\t", "\b": "\\b", "\f": "\\f"}


def quoted(text: str) -> str:
    """Return ``text`` as a TOML basic string (TOML 1.0, section String)."""
    return '"' + "".join(_escaped(character) for character in text) + '"'


def quoted_list(texts: Iterable[str]) -> str:
    """Return the texts as a TOML array of strings."""
    return "[" + ", ".join(quoted(text) for text in texts) + "]"


def _escaped(character: str) -> str:
    if character in _SHORT:
        return _SHORT[character]
    if character < " " or character == "\x7f":
        return f"\\u{ord(character):04x}"
    return character
