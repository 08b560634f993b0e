"""The phrases of one language of the installer's papers, complete before any of them is used."""

from __future__ import annotations

from typing import Final

from spoutline.explain.pack.words import PACK_SENTENCES, PACK_VOCABULARY
from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.explain.phrases.reader import PhraseReader

_TABLES: Final = ("text", "words")


def pack_phrasebook_from_toml(text: str, place: str, english: str = "") -> Phrasebook:
    """Return the phrasebook of the pack written in ``text``.

    It holds nothing but the words and sentences of the installer's papers: a paper that asked for another phrase would
    fail in every language alike, so that no sentence of one language slips into the papers of another. Arguments and
    faults are those of ``phrasebook_from_toml``.
    """
    reader = PhraseReader(text, place, english)
    reader.names("table", reader.table, _TABLES)
    sentences = reader.sentences("text", PACK_SENTENCES)
    words = reader.words(PACK_VOCABULARY)
    reader.finish()
    return Phrasebook(text=sentences, asks={}, severity_notes={}, words=words, rules={}, facts={}, values={})
