"""The sentences of one language, read from a table and checked for completeness before any of them is used."""

from __future__ import annotations

import difflib
import re
import tomllib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from spoutline.explain.phrases.asked_cases import ASK_PLACEHOLDERS
from spoutline.explain.phrases.vocabulary import TEXT_PLACEHOLDERS, VOCABULARY
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.finding import Severity
from spoutline.rules.declared.rule_ids import RuleId

_TABLES: Final = ("text", "asks", "severity_notes", "words", "rules", "facts", "values")
_PLACEHOLDER = re.compile(r"\{([a-z_]+)\}")
_RULE_FIELDS: Final = ("title", "says")
# facts whose bare value occurs in several lists of words: the list that is meant
_FACT_LISTS: Final = {
    "column": "MaterialColumn",
    "vapour_today": "VapourStatus",
    "vapour_wanted": "VapourStatus",
    "path": "FlowPath",
    "part_path": "FlowPath",
    "retrieval": "Retrieval",
    "duty": "Duty",
    "service": "Service",
    "services": "NozzleService",
    "family": "LiquidFamily",
    "kind": "PartKind",
    "slot": "Slot",
}
# the program advises; a sentence that claims more is a fault of the table
_CLAIMS = re.compile(r"\b(approved|compliant|complies|certified safe|guaranteed)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class RulePhrase:
    """How one rule is spoken of: what it looks at, and the sentence that its figures follow."""

    title: str
    says: str


@dataclass(frozen=True, slots=True)
class Phrasebook:
    """All phrases of one language; complete by construction, see ``phrasebook_from_toml``."""

    text: Mapping[str, str]
    asks: Mapping[str, str]
    severity_notes: Mapping[str, str]
    words: Mapping[str, Mapping[str, str]]
    rules: Mapping[str, RulePhrase]
    facts: Mapping[str, str]
    values: Mapping[str, str]

    @property
    def language(self) -> str:
        """The language tag of the phrases, as in BCP 47."""
        return self.text["language"]

    def word(self, term: StrEnum) -> str:
        """Return the trade word of an enumeration member; ``KeyError`` for a list that is not in the vocabulary."""
        return self.words[type(term).__name__][term.value]

    def rule(self, rule_id: str) -> RulePhrase:
        """Return the phrase of a rule; ``KeyError`` cannot happen for a member of ``RuleId``."""
        return self.rules[rule_id]

    def fill(self, key: str, **parts: str | int) -> str:
        """Return the sentence ``key`` with its placeholders filled."""
        return self.text[key].format(**parts)

    def fact_name(self, name: str) -> str:
        """Return the readable name of a fact."""
        return self.facts.get(name, name.replace("_", " "))

    def fact_value(self, name: str, value: str) -> str:
        """Return the value of the fact ``name`` in trade words, item by item; an unknown item stays as it is."""
        if not value:
            return self.text["outlet"] if name.startswith("upstream") else self.text["nothing"]
        table = self.words.get(_FACT_LISTS.get(name, ""), self.values)
        return ", ".join(table.get(item, self.values.get(item, item)) for item in value.split(", "))


def phrasebook_from_toml(text: str, place: str) -> Phrasebook:
    """Return the phrasebook written in ``text``.

    Parameters
    ----------
    text
        The table in TOML.
    place
        Where the text came from, named in every fault.

    Raises
    ------
    InputFault
        With every fault at once: broken TOML, a missing, unknown or empty phrase, a wrong placeholder, a sentence that
        claims more than advice.
    """
    try:
        table = tomllib.loads(text)
    except tomllib.TOMLDecodeError as fault:
        raise InputFault((InputProblem(place, "table", str(fault), "write valid TOML"),)) from None
    reader = _Reader(place)
    reader.names("table", table, _TABLES)
    sentences = reader.strings("text", table.get("text"), TEXT_PLACEHOLDERS)
    reader.placeholders("text", sentences, TEXT_PLACEHOLDERS)
    asks = reader.strings("asks", table.get("asks"), ASK_PLACEHOLDERS)
    reader.placeholders("asks", asks, ASK_PLACEHOLDERS)
    notes = reader.strings("severity_notes", table.get("severity_notes"), [member.value for member in Severity])
    words = reader.words(table.get("words"))
    rules = reader.rules(table.get("rules"))
    facts = reader.strings("facts", table.get("facts"), None)
    values = reader.strings("values", table.get("values"), None)
    if reader.problems:
        raise InputFault(tuple(reader.problems))
    return Phrasebook(sentences, asks, notes, words, rules, facts, {**_values(words), **values})


def _values(words: Mapping[str, Mapping[str, str]]) -> dict[str, str]:
    """Return words by bare value, leaving out values that two lists word differently."""
    found: dict[str, set[str]] = {}
    for table in words.values():
        for value, word in table.items():
            found.setdefault(value, set()).add(word)
    return {value: next(iter(spellings)) for value, spellings in found.items() if len(spellings) == 1}


class _Reader:
    """Walks the table to its end and gathers every problem."""

    def __init__(self, place: str) -> None:
        self.place = place
        self.problems: list[InputProblem] = []

    def report(self, field: str, value: object, wanted: str) -> None:
        self.problems.append(InputProblem(self.place, field, repr(value), wanted))

    def names(self, field: str, table: Mapping[str, object], known: Iterable[str]) -> None:
        """Report names that are missing or not known."""
        expected = list(known)
        for name in expected:
            if name not in table:
                self.problems.append(InputProblem(self.place, f"{field}.{name}", "nothing", "write this phrase"))
        for name in table:
            if name not in expected:
                near = difflib.get_close_matches(name, expected, n=1)
                self.report(f"{field}.{name}", name, f"did you mean {near[0]!r}?" if near else "remove it: not known")

    def strings(self, field: str, table: object, known: Iterable[str] | None) -> dict[str, str]:
        """Return the phrases of a table of strings; ``known`` None accepts any name."""
        if not isinstance(table, dict):
            self.report(field, table, "write a table of phrases")
            return {}
        if known is not None:
            self.names(field, table, known)
        for name, phrase in table.items():
            self._phrase(f"{field}.{name}", phrase)
        return {name: phrase for name, phrase in table.items() if isinstance(phrase, str)}

    def words(self, table: object) -> dict[str, dict[str, str]]:
        """Return the words of every list of the vocabulary."""
        if not isinstance(table, dict):
            self.report("words", table, "write a table of words per list")
            return {}
        self.names("words", table, VOCABULARY)
        return {
            name: self.strings(f"words.{name}", table[name], [member.value for member in members])
            for name, members in VOCABULARY.items()
            if name in table
        }

    def rules(self, table: object) -> dict[str, RulePhrase]:
        """Return title and sentence of every rule."""
        if not isinstance(table, dict):
            self.report("rules", table, "write a table per rule")
            return {}
        self.names("rules", table, [member.value for member in RuleId])
        phrases: dict[str, RulePhrase] = {}
        for name, entry in table.items():
            fields = self.strings(f"rules.{name}", entry, _RULE_FIELDS)
            phrases[name] = RulePhrase(fields.get("title", ""), fields.get("says", ""))
        return phrases

    def placeholders(self, field: str, sentences: Mapping[str, str], filled: Mapping[str, tuple[str, ...]]) -> None:
        """Report sentences whose placeholders are not the ones that will be filled."""
        for name, sentence in sentences.items():
            wanted = set(filled.get(name, ()))
            if set(_PLACEHOLDER.findall(sentence)) != wanted:
                names = ", ".join(f"{{{item}}}" for item in sorted(wanted)) or "no placeholder"
                self.report(f"{field}.{name}", sentence, f"use {names}")

    def _phrase(self, field: str, phrase: object) -> None:
        if not isinstance(phrase, str) or not phrase.strip():
            self.report(field, phrase, "write a text that is not empty")
        elif _CLAIMS.search(phrase):
            self.report(field, phrase, "say what was found; the program never claims approval or compliance")
