"""Which language the program speaks: what was asked for, what was chosen in the window, what the machine is set to."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Final

from spoutline.bootstrap.settings import user_folder
from spoutline.model.faults import StoreFault
from spoutline.model.language import Language, language_of
from spoutline.whole_files import write_file

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
    try:
        return language_of(str(tomllib.loads(_file().read_text(encoding="utf-8")).get("language", "")))
    except (OSError, ValueError):
        return None


def remember_language(language: Language) -> None:
    """Open the window in this language from now on; raise ``StoreFault`` where that cannot be kept."""
    try:
        _file().parent.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise StoreFault(f"{_file().parent} cannot be made: {fault.strerror}.") from fault
    write_file(_file(), f'# What this person chose in the window.\nlanguage = "{language}"\n'.encode())


def _file() -> Path:
    return user_folder() / "window.toml"
