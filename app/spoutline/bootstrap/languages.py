"""Which language the program speaks: what was asked for, what was chosen in the window, what the machine is set to."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from spoutline.bootstrap.preferences import Preference, keep_preference, preference
from spoutline.model.language import Language, language_of

# in the order in which POSIX and gettext let one go before the other
_VARIABLES: Final = ("LC_ALL", "LC_MESSAGES", "LANG")


def language_of_environment(environment: Mapping[str, str]) -> Language:
    """Return the language that the first set variable of the machine's locale names; English for any other.

    ``LANGUAGE``, a list of preferences separated by colons, goes before them where a locale is set, as in gettext.
    """
    locale = next((value for name in _VARIABLES if (value := environment.get(name, ""))), "")
    if locale in ("", "C", "POSIX") or locale.startswith("C."):
        return Language.ENGLISH
    preferred = (*environment.get("LANGUAGE", "").split(":"), locale)
    return next((language for tag in preferred if (language := language_of(tag))), Language.ENGLISH)


def remembered_language() -> Language | None:
    """Return the language chosen in the window; None where none was chosen or the file cannot be read."""
    return language_of(preference(Preference.LANGUAGE))


def remember_language(language: Language) -> None:
    """Open the window in this language from now on; raise ``StoreFault`` where that cannot be kept."""
    keep_preference(Preference.LANGUAGE, language.value)
