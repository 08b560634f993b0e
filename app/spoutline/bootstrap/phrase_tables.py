"""Phrases and cautions by language: each table read once, English where a language lacks a table or a line."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

from spoutline.bootstrap.once import OnceEach
from spoutline.model.language import Language

if TYPE_CHECKING:
    from spoutline.explain.conversion.phrases import ConversionPhrases
    from spoutline.explain.phrases.command_words import CommandWords
    from spoutline.explain.phrases.field_words import FieldWords
    from spoutline.explain.phrases.phrasebook import Phrasebook
    from spoutline.explain.phrases.refusal_words import RefusalWords
    from spoutline.ruletables.cautions import Caution

_T = TypeVar("_T")
PLAN_FOLDER, CONVERSION_FOLDER, PACK_FOLDER = "phrases", "conversion", "pack"
COMMAND_FOLDER, REFUSAL_FOLDER, FIELD_FOLDER = "commands", "refusals", "fields"


class PhraseTables:
    """The words of every paper in every language. Methods may be called from several threads.

    Each raises ``InputFault`` with every fault of a table, ``StoreFault`` where the English one cannot be read.
    ``resources`` finds the folder of the tables when one is first needed.
    """

    def __init__(self, resources: Callable[[], Path]) -> None:
        self._resources = resources
        self._plan = OnceEach(self._read_plan)
        self._conversion = OnceEach(self._read_conversion)
        self._pack = OnceEach(self._read_pack)
        self._cautions = OnceEach(self._read_cautions)

    def plan(self, language: Language) -> Phrasebook:
        """Return the words for plans, bills and quotations."""
        return self._plan(language)

    def conversion(self, language: Language) -> ConversionPhrases:
        """Return the words for conversions."""
        return self._conversion(language)

    def pack(self, language: Language) -> Phrasebook:
        """Return the words for the installer's papers."""
        return self._pack(language)

    def cautions(self, language: Language) -> tuple[Caution, ...]:
        """Return the cautions in the order of the work."""
        return self._cautions(language)

    def commands(self, language: Language) -> CommandWords:
        """Return what the command line says of itself; its English stands where commands are declared."""
        from spoutline.explain.phrases.command_words import ENGLISH_WORDS

        path = self._resources() / COMMAND_FOLDER / f"{language}.toml"
        return self._alone(path, _commands) if path.is_file() else ENGLISH_WORDS

    def fields(self, language: Language) -> FieldWords:
        """Return what fields are called that are told by their paths."""
        return self._alone(self._resources() / FIELD_FOLDER / f"{language}.toml", _fields)

    def refusals(self, language: Language) -> RefusalWords:
        """Return the words of refusals and notes; their English stands where they are said."""
        from spoutline.explain.phrases.refusal_words import ENGLISH_REFUSALS

        path = self._resources() / REFUSAL_FOLDER / f"{language}.toml"
        return self._alone(path, _refusals) if path.is_file() else ENGLISH_REFUSALS

    def _read_plan(self, language: Language) -> Phrasebook:
        return self._phrases(PLAN_FOLDER, language, _plan)

    def _read_conversion(self, language: Language) -> ConversionPhrases:
        return self._phrases(CONVERSION_FOLDER, language, _conversion)

    def _read_pack(self, language: Language) -> Phrasebook:
        from spoutline.explain.pack.phrases import pack_phrasebook

        own = self._phrases(PACK_FOLDER, language, _pack)
        return pack_phrasebook(own, self._plan(Language(own.language)))

    def _read_cautions(self, language: Language) -> tuple[Caution, ...]:
        from spoutline.ruletables.cautions import load_cautions

        there = (self._resources() / "cautions" / f"{language}.toml").is_file()
        return load_cautions(self._resources(), language.value if there else Language.ENGLISH.value)

    def _phrases(self, folder: str, language: Language, from_toml: Callable[[str, str, str], _T]) -> _T:
        from spoutline.ruletables.files import read_text

        english, own = (self._resources() / folder / f"{one}.toml" for one in (Language.ENGLISH, language))
        if own == english or not own.is_file():
            texts = read_text(english), english.name, ""
        else:
            texts = read_text(own), own.name, read_text(english)
        made: _T = _made(from_toml, *texts)
        return made

    def _alone(self, path: Path, from_toml: Callable[[str, str, str], _T]) -> _T:
        """Return what a table means for which no English one stands in."""
        from spoutline.ruletables.files import read_text

        made: _T = _made(from_toml, read_text(path), path.name, "")
        return made


# the readers, each loaded only where nothing of its table is kept from an earlier start


def _plan(text: str, place: str, english: str) -> Phrasebook:
    from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml

    return phrasebook_from_toml(text, place, english)


def _conversion(text: str, place: str, english: str) -> ConversionPhrases:
    from spoutline.explain.conversion.phrases import conversion_phrases_from_toml

    return conversion_phrases_from_toml(text, place, english)


def _pack(text: str, place: str, english: str) -> Phrasebook:
    from spoutline.explain.pack.phrases import own_pack_phrases_from_toml

    return own_pack_phrases_from_toml(text, place, english)


def _commands(text: str, place: str, _english: str) -> CommandWords:
    from spoutline.explain.phrases.command_words import command_words_from_toml

    return command_words_from_toml(text, place)


def _fields(text: str, place: str, _english: str) -> FieldWords:
    from spoutline.explain.phrases.field_words import field_words_from_toml

    return field_words_from_toml(text, place)


def _refusals(text: str, place: str, _english: str) -> RefusalWords:
    from spoutline.explain.phrases.refusal_words import refusal_words_from_toml

    return refusal_words_from_toml(text, place)


@lru_cache(maxsize=len(Language))
def refusals_in(language: Language) -> RefusalWords:
    """Return the words of refusals; English where they cannot be read, as what is refused goes before its words."""
    from spoutline.assets import resources_folder
    from spoutline.explain.phrases.refusal_words import ENGLISH_REFUSALS
    from spoutline.model.faults import InputFault, StoreFault

    try:
        return PhraseTables(resources_folder).refusals(language)
    except (InputFault, StoreFault):
        return ENGLISH_REFUSALS


@lru_cache(maxsize=16)
def _made(from_toml: Callable[[str, str, str], object], text: str, place: str, english: str) -> Any:  # noqa: ANN401  # a cache hides the type
    """Return what a table holds; the same text is read once, and kept for the next start."""
    from spoutline.bootstrap.kept_tables import kept

    return kept(f"words{from_toml.__name__}", (text, place, english), lambda: from_toml(text, place, english))
