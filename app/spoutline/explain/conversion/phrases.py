"""The words of a conversion: trade words of its lists, and its sentences with their placeholders."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from spoutline.explain.conversion.sentences import SENTENCES
from spoutline.model.conversion_answers import EmissionBasis, OptionKind, StationKind
from spoutline.model.conversion_money import CostKind, MoneyGap
from spoutline.model.conversion_sequence import SequenceFinding
from spoutline.model.conversion_step import StepRole
from spoutline.model.emission_sheet import EmissionGap, ShareOrigin
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.installed import InstalledCondition
from spoutline.model.position_conversion import (
    ConversionKind,
    DifferenceAction,
    DifferenceReason,
    PositionOutcome,
    VapourOpening,
)
from spoutline.model.removal_standing import Standing, StandingReason

_LISTS: Final[tuple[type[StrEnum], ...]] = (
    ConversionKind,
    CostKind,
    DifferenceAction,
    DifferenceReason,
    EmissionBasis,
    EmissionGap,
    InstalledCondition,
    MoneyGap,
    OptionKind,
    PositionOutcome,
    SequenceFinding,
    ShareOrigin,
    Standing,
    StandingReason,
    StationKind,
    StepRole,
    VapourOpening,
)
CONVERSION_VOCABULARY: Final = {members.__name__: members for members in _LISTS}
_PLACEHOLDER = re.compile(r"\{(\w*)\}")
_CLAIMS = re.compile(r"\b(is|are|be|been|was|fully) (approved|compliant|certified)\b|\bguarantee", re.IGNORECASE)
_DENIAL = re.compile(r"\b(not|never|no|whether|nothing)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class ConversionPhrases:
    """Words by list and value, sentences by key."""

    words: Mapping[str, Mapping[str, str]]
    sentences: Mapping[str, str]

    def word(self, term: StrEnum) -> str:
        """Return the trade word of a member; ``KeyError`` for a list that is not in the vocabulary."""
        return self.words[type(term).__name__][term.value]

    def fill(self, key: str, **parts: str | int) -> str:
        """Return the sentence ``key`` with its placeholders filled."""
        return self.sentences[key].format(**parts)


def conversion_phrases_from_toml(text: str, place: str) -> ConversionPhrases:
    """Return the phrases of a TOML text.

    Parameters
    ----------
    text
        The table.
    place
        Where it came from, named in every fault.

    Raises
    ------
    InputFault
        With every fault: broken TOML, a missing, unknown or empty phrase, a wrong placeholder, a claim.
    """
    try:
        table = tomllib.loads(text)
    except tomllib.TOMLDecodeError as fault:
        raise InputFault((InputProblem(place, "table", str(fault), "write valid TOML"),)) from None
    problems: list[InputProblem] = []
    words = {
        name: _strings(
            f"words.{name}", table.get("words", {}).get(name), (one.value for one in members), place, problems
        )
        for name, members in CONVERSION_VOCABULARY.items()
    }
    sentences = _strings("sentences", table.get("sentences"), SENTENCES, place, problems)
    problems.extend(_placeholder_problems(sentences, place))
    if problems:
        raise InputFault(tuple(problems))
    return ConversionPhrases(words, sentences)


def _strings(
    field: str, table: object, known: Iterable[str], place: str, problems: list[InputProblem]
) -> dict[str, str]:
    expected = list(known)
    found = table if isinstance(table, dict) else {}
    for name in expected:
        phrase = found.get(name)
        if not isinstance(phrase, str) or not phrase.strip():
            problems.append(InputProblem(place, f"{field}.{name}", repr(phrase), "write this phrase"))
        elif _CLAIMS.search(phrase) and not _DENIAL.search(phrase):
            wanted = "say what was found; the program never claims approval or compliance"
            problems.append(InputProblem(place, f"{field}.{name}", repr(phrase), wanted))
    for name in found:
        if name not in expected:
            problems.append(InputProblem(place, f"{field}.{name}", repr(name), "remove it: not known"))
    return {name: phrase for name, phrase in found.items() if isinstance(phrase, str)}


def _placeholder_problems(sentences: Mapping[str, str], place: str) -> Iterable[InputProblem]:
    for name, sentence in sentences.items():
        wanted = set(SENTENCES.get(name, ()))
        if set(_PLACEHOLDER.findall(sentence)) != wanted:
            names = ", ".join(f"{{{item}}}" for item in sorted(wanted)) or "no placeholder"
            yield InputProblem(place, f"sentences.{name}", repr(sentence), f"use {names}")
