"""What the languages are called."""

from __future__ import annotations

from typing import Final

from spoutline.model.language import Language

# each language is named in itself, so that who reads it finds it
LANGUAGE_NAMES: Final = {
    Language.ENGLISH: "English",
    Language.SPANISH: "Español",
    Language.GERMAN: "Deutsch",
    Language.FRENCH: "Français",
}
