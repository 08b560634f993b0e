"""The sentences of one language read from a table, and checked for completeness before any of them is used."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from spoutline.explain.phrases.asked_cases import ASK_PLACEHOLDERS
from spoutline.explain.phrases.phrasebook import CITED, TOLD, Phrasebook, RulePhrase
from spoutline.explain.phrases.reader import PhraseReader
from spoutline.explain.phrases.vocabulary import TEXT_PLACEHOLDERS, VOCABULARY
from spoutline.model.finding import Severity
from spoutline.rules.declared.rule_ids import RuleId

_TABLES: Final = ("text", "asks", "severity_notes", "words", "rules", "facts", "values")
_RULE_FIELDS: Final = ("title", "says")


def phrasebook_from_toml(text: str, place: str, english: str = "") -> Phrasebook:
    """Return the phrasebook written in ``text``.

    Parameters
    ----------
    text
        The table in TOML.
    place
        Where the text came from, named in every fault.
    english
        The English table, for the phrases that ``text`` lacks; empty where ``text`` must be complete.

    Raises
    ------
    InputFault
        With every fault at once: broken TOML, a missing, unknown or empty phrase, a wrong placeholder, a sentence that
        claims more than advice.
    """
    reader = PhraseReader(text, place, english)
    table = reader.table
    reader.names("table", {name: part for name, part in table.items() if name not in (TOLD, CITED)}, _TABLES)
    sentences = reader.sentences("text", TEXT_PLACEHOLDERS)
    asks = reader.sentences("asks", ASK_PLACEHOLDERS)
    notes = reader.strings("severity_notes", table.get("severity_notes"), [member.value for member in Severity])
    words = reader.words(VOCABULARY)
    rules = _rules(reader)
    facts = reader.strings("facts", table.get("facts"), None)
    values = reader.strings("values", table.get("values"), None)
    told = reader.strings(TOLD, table.get(TOLD, {}), None)
    cited = reader.strings(CITED, table.get(CITED, {}), None)
    reader.finish()
    return Phrasebook(sentences, asks, notes, words, rules, facts, {**_values(words), **values}, told, cited)


def _rules(reader: PhraseReader) -> dict[str, RulePhrase]:
    """Return title and sentence of every rule."""
    table = reader.table.get("rules")
    if not isinstance(table, dict):
        reader.report("rules", repr(table), "write a table for each rule")
        return {}
    reader.names("rules", table, [member.value for member in RuleId])
    phrases: dict[str, RulePhrase] = {}
    for name, entry in table.items():
        fields = reader.strings(f"rules.{name}", entry, _RULE_FIELDS)
        phrases[name] = RulePhrase(fields.get("title", ""), fields.get("says", ""))
    return phrases


def _values(words: Mapping[str, Mapping[str, str]]) -> dict[str, str]:
    """Return words by bare value, leaving out values that two lists word differently."""
    found: dict[str, set[str]] = {}
    for table in words.values():
        for value, word in table.items():
            found.setdefault(value, set()).add(word)
    return {value: next(iter(spellings)) for value, spellings in found.items() if len(spellings) == 1}
