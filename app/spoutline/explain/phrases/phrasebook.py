"""The sentences of one language, all of which were checked for completeness before any of them is used."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import field
from enum import StrEnum
from functools import lru_cache
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.language import Language

TOLD: Final = "told"  # texts of rule tables and calculations in another language than theirs, any of them
CITED: Final = "cited"  # pieces of citations, as TOLD by their English text
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
    "liquids": "LiquidFamily",
    "kind": "PartKind",
    "slot": "Slot",
    "limits_that_bind": "RequirementId",
    "sets_turned_down_for": "RequirementId",
    "alternatives": "AlternativeKind",
}


@frozen
class RulePhrase:
    """How one rule is spoken of: what it looks at, and the sentence that its figures follow."""

    title: str
    says: str


@frozen
class Phrasebook:
    """All phrases of one language; complete by construction, see ``phrasebook_table``."""

    text: Mapping[str, str]
    asks: Mapping[str, str]
    severity_notes: Mapping[str, str]
    words: Mapping[str, Mapping[str, str]]
    rules: Mapping[str, RulePhrase]
    facts: Mapping[str, str]
    values: Mapping[str, str]
    told: Mapping[str, str] = field(default_factory=dict)
    cited: Mapping[str, str] = field(default_factory=dict)

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

    def tell(self, text: str) -> str:
        """Return a text of a rule table or a calculation in this language; as it is written where none is there."""
        return self.told.get(text, text)

    def cite(self, source: str) -> str:
        """Return a citation with what connects and describes in this language; titles, numbers and the rest stay."""
        return _pieces(tuple(self.cited)).sub(lambda found: self.cited[found[0]], source) if self.cited else source

    def fact_name(self, name: str) -> str:
        """Return the readable name of a fact."""
        return self.facts.get(name, name.replace("_", " "))

    def fact_value(self, name: str, value: str) -> str:
        """Return the value of the fact ``name`` in trade words, item by item; an unknown item stays as it is."""
        if not value:
            return self.text["outlet"] if name.startswith("upstream") else self.text["nothing"]
        table = self.words.get(_FACT_LISTS.get(name, ""), self.values)
        return ", ".join(table.get(item, self.values.get(item, item)) for item in value.split(", "))


@lru_cache(maxsize=len(Language))
def _pieces(known: tuple[str, ...]) -> re.Pattern[str]:
    """Return what finds pieces of a citation, the longest first.

    A single word counts where a number or a title follows it or where it is a whole piece between signs, so that it is
    not taken out of the middle of a title.
    """
    found = []
    for one in sorted(known, key=lambda text: (-len(text), text)):
        word = re.escape(one)
        alone = rf"(?:(?<![^,;:(]\s)(?<![^\s(\[]){word}(?=$|[,;:)\]])|(?<![\w-]){word}(?= [\dA-Z(]))"
        found.append(alone if one.isalpha() else rf"(?<![\w-]){word}(?![\w-])")
    return re.compile("|".join(found))
