"""The words of a conversion: trade words of its lists, and its sentences with their placeholders."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from enum import StrEnum
from typing import Final

from spoutline.explain.conversion.sentences import SENTENCES
from spoutline.explain.phrases.reader import PhraseReader
from spoutline.frozen import frozen
from spoutline.model.conversion_answers import EmissionBasis, OptionKind, StationKind
from spoutline.model.conversion_money import CostKind, MoneyGap
from spoutline.model.conversion_sequence import DeadlineKind, SequenceFinding
from spoutline.model.conversion_step import StepRole
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.emission_sheet import EmissionGap, ShareOrigin
from spoutline.model.installed import InstalledCondition
from spoutline.model.position_conversion import (
    ConversionKind,
    DifferenceAction,
    LiveReason,
    PositionOutcome,
    VapourOpening,
)
from spoutline.model.programme import LeftOut, SiteOutcome, SplitHindrance
from spoutline.model.removal_standing import Standing, StandingReason
from spoutline.model.tank_change import ChangeWay

_LISTS: Final[tuple[type[StrEnum], ...]] = (
    ChangeWay,
    ConversionKind,
    CostKind,
    DeadlineKind,
    DifferenceAction,
    DifferenceReason,
    EmissionBasis,
    EmissionGap,
    InstalledCondition,
    LeftOut,
    LiveReason,
    MoneyGap,
    OptionKind,
    PositionOutcome,
    SequenceFinding,
    ShareOrigin,
    SiteOutcome,
    SplitHindrance,
    Standing,
    StandingReason,
    StationKind,
    StepRole,
    VapourOpening,
)
CONVERSION_VOCABULARY: Final = {members.__name__: members for members in _LISTS}
_TABLES: Final = ("words", "sentences")
STEPS: Final = "steps"  # titles of steps in another language than that of the table of steps; by id, any of them


@frozen
class ConversionPhrases:
    """Words by list and value, sentences by key, titles of steps by their id."""

    words: Mapping[str, Mapping[str, str]]
    sentences: Mapping[str, str]
    steps: Mapping[str, str] = field(default_factory=dict)

    def word(self, term: StrEnum) -> str:
        """Return the trade word of a member; ``KeyError`` for a list that is not in the vocabulary."""
        return self.words[type(term).__name__][term.value]

    def fill(self, key: str, **parts: str | int) -> str:
        """Return the sentence ``key`` with its placeholders filled."""
        return self.sentences[key].format(**parts)


def conversion_phrases_from_toml(text: str, place: str, english: str = "") -> ConversionPhrases:
    """Return the phrases of a TOML text; arguments and faults are those of ``phrasebook_from_toml``."""
    reader = PhraseReader(text, place, english)
    reader.names("table", {name: table for name, table in reader.table.items() if name != STEPS}, _TABLES)
    words = reader.words(CONVERSION_VOCABULARY)
    sentences = reader.sentences("sentences", SENTENCES)
    steps = reader.strings(STEPS, reader.table.get(STEPS, {}), None)
    reader.finish()
    return ConversionPhrases(words, sentences, steps)
