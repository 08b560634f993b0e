"""What the command line says of itself in one language: help of commands and options, and the words of argparse."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from spoutline.explain.phrases.reader import PhraseReader
from spoutline.frozen import frozen

_TABLES: Final = ("argparse", "names", "texts")


@frozen
class CommandWords:
    """Texts of the command line by the English text, which stands in for those that a language lacks."""

    texts: Mapping[str, str]

    def of(self, text: str) -> str:
        """Return the text in this language. What is already in this language stays as it is."""
        return self.texts.get(text, text)

    def counted(self, one: str, several: str, count: int) -> str:
        """Return the text for so many, as gettext's ``ngettext`` does."""
        return self.of(one if count == 1 else several)


ENGLISH_WORDS: Final = CommandWords({})


def command_words_from_toml(text: str, place: str) -> CommandWords:
    """Return the words written in ``text``; raise ``InputFault`` with every fault, naming ``place``."""
    reader = PhraseReader(text, place)
    reader.names("table", reader.table, _TABLES)
    tables = [reader.strings(name, reader.table.get(name), None) for name in _TABLES]
    reader.finish()
    return CommandWords({said: told for table in tables for said, told in table.items()})
