"""The phrases of one language of the installer's papers, complete before any of them is used.

What a plan says too is said once, in the table of plans, so that the bill and the pack of a station call a thing by one
name. The table of the pack holds what only its papers say, and what they say shorter.
"""

from __future__ import annotations

from typing import Final

from spoutline.explain.pack.words import PACK_SENTENCES, PACK_VOCABULARY
from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.explain.phrases.reader import PhraseReader
from spoutline.explain.phrases.vocabulary import TEXT_PLACEHOLDERS, VOCABULARY

_TABLES: Final = ("text", "words")
_LANGUAGE: Final = "language"  # every table names its own
_SENTENCES_OF_PLANS: Final = frozenset(TEXT_PLACEHOLDERS) - {_LANGUAGE}
_WORDS_OF_PLANS: Final = {name: frozenset(member.value for member in members) for name, members in VOCABULARY.items()}


def own_pack_phrases_from_toml(text: str, place: str, english: str = "") -> Phrasebook:
    """Return what the table of the pack in ``text`` says itself; ``pack_phrasebook`` completes it.

    Arguments and faults are those of ``phrasebook_from_toml``; what plans say too may be missing.
    """
    reader = PhraseReader(text, place, english)
    reader.names("table", reader.table, _TABLES)
    sentences = reader.sentences("text", PACK_SENTENCES, _SENTENCES_OF_PLANS)
    words = reader.words(PACK_VOCABULARY, _WORDS_OF_PLANS)
    reader.finish()
    return Phrasebook(text=sentences, asks={}, severity_notes={}, words=words, rules={}, facts={}, values={})


def pack_phrasebook(own: Phrasebook, of_plans: Phrasebook) -> Phrasebook:
    """Return the phrasebook of the pack: what its table says, and for the rest what plans say in the same language.

    It holds nothing but the words and sentences of the installer's papers: a paper that asked for another phrase would
    fail in every language alike, so that no sentence of one language slips into the papers of another.
    """
    sentences = {name: own.text[name] if name in own.text else of_plans.text[name] for name in PACK_SENTENCES}
    words = {name: {**of_plans.words.get(name, {}), **own.words.get(name, {})} for name in PACK_VOCABULARY}
    return Phrasebook(text=sentences, asks={}, severity_notes={}, words=words, rules={}, facts={}, values={})
