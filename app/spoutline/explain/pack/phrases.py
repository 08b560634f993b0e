"""The phrases of one language of the installer's papers, complete before any of them is used."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from typing import Final

from spoutline.explain.pack.words import PACK_SENTENCES, PACK_VOCABULARY
from spoutline.explain.phrases.phrase_table import PhraseTable
from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.explain.plan.story import Story
from spoutline.model.faults import InputFault, InputProblem
from spoutline.units.display import Display

_TABLES: Final = ("text", "words")


def pack_phrasebook_from_toml(text: str, place: str) -> Phrasebook:
    """Return the phrasebook of the pack written in ``text``.

    It holds nothing but the words and sentences of the installer's papers: a paper that asked for another phrase would
    fail in every language alike, so that no sentence of one language slips into the papers of another.

    Parameters
    ----------
    text
        The table in TOML.
    place
        Where the text came from, named in every fault.

    Raises
    ------
    InputFault
        With every fault at once: broken TOML, a missing, unknown or empty phrase, a wrong placeholder.
    """
    try:
        table = tomllib.loads(text)
    except tomllib.TOMLDecodeError as fault:
        raise InputFault((InputProblem(place, "table", str(fault), "write valid TOML"),)) from None
    reader = PhraseTable(place)
    sentences = reader.strings("text", table.get("text"), PACK_SENTENCES)
    reader.placeholders("text", sentences, PACK_SENTENCES)
    given = table.get("words")
    lists = given if isinstance(given, dict) else {}
    words = {
        name: reader.strings(f"words.{name}", lists.get(name), [member.value for member in members])
        for name, members in PACK_VOCABULARY.items()
    }
    unknown = [f"words.{name}" for name in lists if name not in PACK_VOCABULARY]
    unknown += [name for name in table if name not in _TABLES]
    reader.problems.extend(InputProblem(place, name, "a table", "remove it: not known") for name in unknown)
    if reader.problems:
        raise InputFault(tuple(reader.problems))
    return Phrasebook(text=sentences, asks={}, severity_notes={}, words=words, rules={}, facts={}, values={})


def pack_story(phrases: Phrasebook, display: Display) -> Story:
    """Return the words of the pack with figures in ``display``'s units, written with the language's decimal sign."""
    sign = phrases.text["decimal_sign"]
    return Story(phrases, display if sign == "." else LocalDisplay(display.system, sign))


@dataclass(frozen=True, slots=True)
class LocalDisplay(Display):
    """Shows figures with another decimal sign than the point (SI brochure 5.4.4 allows point and comma)."""

    decimal_sign: str

    def _joined(self, text: str, unit: str) -> str:
        return Display._joined(self, text.replace(".", self.decimal_sign), unit)
