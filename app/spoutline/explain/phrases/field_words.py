"""What a field that is told by its path is called: the titles of the questions that ask for it, in one language."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from spoutline.explain.phrases.reader import PhraseReader
from spoutline.frozen import frozen

SUBJECTS: Final = ("position", "site", "terms")
PARTED: Final = " · "
_NUMBERED: Final = re.compile(r"\[(\d+)\]")


@frozen
class FieldWords:
    """Titles by the path of a field without places in lists; ``group · title`` where a title alone says too little."""

    position: Mapping[str, str]
    site: Mapping[str, str]
    terms: Mapping[str, str]

    def told(self, subject: str, path: str) -> str:
        """Return what a field is called, places in lists counted from 1; its path in words where nothing asks it."""
        titles: Mapping[str, str] = getattr(self, subject)
        return field_called(titles.get(bare_path(path)), path)


def bare_path(path: str) -> str:
    """Return a path without its places in lists."""
    return _NUMBERED.sub("", path)


def field_called(title: str | None, path: str) -> str:
    """Return a title, ``group · title`` or a title alone, with the places of ``path`` in lists, counted from 1.

    Places stand where the words ask for them, else at the end of what they belong to; without a title, the path in
    words.
    """
    if title is None:
        return ", ".join(_counted(part.replace("_", " "), part) for part in path.split("."))
    *above, last = path.split(".")
    group, parted, own = title.rpartition(PARTED)
    if not parted:
        return _counted(own, last)
    return f"{_counted(group, '.'.join(above))}{PARTED}{_counted(own, last)}"


def _counted(words: str, path: str) -> str:
    bare = _NUMBERED.sub("", words)
    places = " ".join(str(int(place) + 1) for place in _NUMBERED.findall(path))
    if "{0}" in bare:
        return bare.format(places)
    return f"{bare} {places}" if places else bare


def field_words_from_toml(text: str, place: str) -> FieldWords:
    """Return the titles written in ``text``; raise ``InputFault`` with every fault, naming ``place``."""
    reader = PhraseReader(text, place)
    reader.names("table", reader.table, SUBJECTS)
    position, site, terms = (reader.strings(name, reader.table.get(name), None) for name in SUBJECTS)
    reader.finish()
    return FieldWords(position=position, site=site, terms=terms)
