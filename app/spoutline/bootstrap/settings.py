"""What a person can choose from outside, and where the person's own files lie."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.frozen import frozen
from spoutline.model.language import Language

if TYPE_CHECKING:
    from spoutline.model.catalogue_edition import EditionRef


@frozen(kw_only=True)
class Settings:
    """What a person can choose from outside.

    ``database`` is a path or a SQLAlchemy URL for surveys and catalogue; ``profiles`` is the folder of own
    jurisdictions; None means the user's data folder. ``price_lists`` are folders of makers' price lists besides those
    that come with the program. ``language`` is that of answers and papers where none is named for one of them.
    ``catalogue`` is what is planned with, whatever survey and book name; None lets the survey say, then the book.
    """

    database: str | None = None
    profiles: Path | None = None
    price_lists: tuple[Path, ...] = ()
    language: Language = Language.ENGLISH
    catalogue: EditionRef | None = None


def user_folder() -> Path:
    """Return the folder where the person's surveys and jurisdictions lie unless another is named.

    It is the one chosen in the preferences, as long as it is there, else the usual one of the desktop.
    """
    from spoutline.bootstrap.preferences import Preference, home_folder, preference

    chosen = preference(Preference.DATA_FOLDER)
    return Path(chosen) if chosen and Path(chosen).is_dir() else home_folder()


def cache_folder() -> Path:
    """Return the folder for what can be made anew at any time."""
    import platformdirs

    return Path(platformdirs.user_cache_dir("spoutline", appauthor=False))
