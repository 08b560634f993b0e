"""Phrases and cautions by language: each table read once, English where a language lacks a table or a line."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from spoutline.model.language import Language

if TYPE_CHECKING:
    from spoutline.explain.conversion.phrases import ConversionPhrases
    from spoutline.explain.phrases.phrasebook import Phrasebook
    from spoutline.ruletables.cautions import Caution

_T = TypeVar("_T")
PLAN_FOLDER, CONVERSION_FOLDER, PACK_FOLDER = "phrases", "conversion", "pack"


class PhraseTables:
    """The words of every paper in every language. Methods may be called from several threads.

    Each raises ``InputFault`` with every fault of a table, ``StoreFault`` where the English one cannot be read.
    ``resources`` finds the folder of the tables when one is first needed.
    """

    def __init__(self, resources: Callable[[], Path]) -> None:
        self._resources = resources
        self._reading = threading.RLock()
        self._read: dict[tuple[str, Language], object] = {}

    def plan(self, language: Language) -> Phrasebook:
        """Return the words for plans, bills and quotations."""
        from spoutline.explain.phrases.phrasebook import phrasebook_from_toml

        return self._phrases(PLAN_FOLDER, language, phrasebook_from_toml)

    def conversion(self, language: Language) -> ConversionPhrases:
        """Return the words for conversions."""
        from spoutline.explain.conversion.phrases import conversion_phrases_from_toml

        return self._phrases(CONVERSION_FOLDER, language, conversion_phrases_from_toml)

    def pack(self, language: Language) -> Phrasebook:
        """Return the words for the installer's papers."""
        from spoutline.explain.pack.phrases import pack_phrasebook_from_toml

        return self._phrases(PACK_FOLDER, language, pack_phrasebook_from_toml)

    def cautions(self, language: Language) -> tuple[Caution, ...]:
        """Return the cautions in the order of the work."""
        from spoutline.ruletables.cautions import load_cautions

        def read() -> tuple[Caution, ...]:
            there = (self._resources() / "cautions" / f"{language}.toml").is_file()
            return load_cautions(self._resources(), language.value if there else Language.ENGLISH.value)

        return self._once("cautions", language, read)

    def _phrases(self, folder: str, language: Language, from_toml: Callable[[str, str, str], _T]) -> _T:
        from spoutline.ruletables.files import read_text

        def read() -> _T:
            english, own = (self._resources() / folder / f"{one}.toml" for one in (Language.ENGLISH, language))
            if own == english or not own.is_file():
                return from_toml(read_text(english), english.name, "")
            return from_toml(read_text(own), own.name, read_text(english))

        return self._once(folder, language, read)

    def _once(self, name: str, language: Language, read: Callable[[], _T]) -> _T:
        with self._reading:
            key = (name, language)
            if key not in self._read:
                self._read[key] = read()
            return self._read[key]  # type: ignore[return-value]  # a name stands for one type
