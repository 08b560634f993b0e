"""What a person chose for this machine: kept in a file of its own, so that it is known before any book is opened."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path

from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded


class Preference(StrEnum):
    """What is kept for the person on this machine; what belongs to a book is a setting of that book."""

    LANGUAGE = "language"
    THEME = "theme"
    DATA_FOLDER = "data_folder"
    OPEN_WITH = "open_with"


class OpenWith(StrEnum):
    """What the window shows at first where no survey is named."""

    LAST_SURVEY = "last"
    START_VIEW = "start"


def home_folder() -> Path:
    """Return the folder of what is kept for the person, whatever folder was chosen for data."""
    import platformdirs

    return Path(platformdirs.user_data_dir("spoutline", appauthor=False))


def preference(name: Preference) -> str:
    """Return what was chosen; empty where nothing was, or the file cannot be read."""
    try:
        text = _file().read_text(encoding="utf-8")
        import tomllib  # loaded only where somebody chose something

        return str(tomllib.loads(text).get(name, ""))
    except (OSError, ValueError):
        return ""


def preferred_opening() -> OpenWith:
    """Return what the window shows at first; the survey that was open last where nothing readable was chosen."""
    kept = preference(Preference.OPEN_WITH)
    return OpenWith(kept) if kept in tuple(OpenWith) else OpenWith.LAST_SURVEY


def keep_preference(name: Preference, value: str) -> None:
    """Keep a choice, or forget it where ``value`` is empty; raise ``StoreFault`` where that cannot be kept."""
    import tomlkit

    from spoutline.whole_files import write_file

    kept = {one: preference(one) for one in Preference} | {name: value}
    document = tomlkit.document()
    document.add(tomlkit.comment("What this person chose in the window."))
    for one, text in kept.items():
        if text:
            document.add(one.value, tomlkit.item(text))
    try:
        _file().parent.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise StoreFault(
            Worded("{parent} cannot be made: {reason}.", parent=_file().parent, reason=fault.strerror)
        ) from fault
    write_file(_file(), tomlkit.dumps(document).encode())


def _file() -> Path:
    return home_folder() / "window.toml"
