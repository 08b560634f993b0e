"""The languages of the program: what a person reads and prints in."""

from __future__ import annotations

from enum import StrEnum


class Language(StrEnum):
    """Languages of window, command line and papers, as in BCP 47."""

    ENGLISH = "en"
    SPANISH = "es"
    GERMAN = "de"
    FRENCH = "fr"


def language_of(tag: str) -> Language | None:
    """Return the language of a tag such as ``de``, ``de-AT`` or ``de_AT.UTF-8``; None for one that is not spoken here.

    ``C`` and ``POSIX``, the locales of a machine without settings, name no language.
    """
    name = tag.strip().replace("_", "-").partition("-")[0].partition(".")[0].partition("@")[0].lower()
    return next((language for language in Language if language.value == name), None)
