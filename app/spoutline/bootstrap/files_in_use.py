"""Which files the program draws on, so that no output takes their place."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

from spoutline import assets
from spoutline.book.address import database_files
from spoutline.book.backups import backup_folder
from spoutline.bootstrap.settings import Settings, user_folder
from spoutline.whole_files import InUse


def files_in_use(settings: Settings, profiles: Path, price_folders: Sequence[Path]) -> tuple[InUse, ...]:
    """Return the files of book and catalogue, jurisdictions, price lists and usual terms, and those of the program.

    ``profiles`` is the folder of the person's own jurisdictions. Nothing is opened or made; a file need not be there.
    """
    usual = user_folder() / "usual_terms.toml"
    files = database_files(settings.database, user_folder())
    return (
        *(InUse(path, "a file of the book") for path in files),
        *(InUse(backup_folder(path), "in the folder of backups", holds_all=True) for path in files[:1]),
        *(InUse(path, "a jurisdiction of yours") for path in sorted(profiles.glob("*.toml"))),
        *(InUse(path, "a price list in use") for folder in price_folders for path in _lists_in(folder)),
        InUse(usual, "your usual terms"),
        InUse(assets.resources_folder(), "in the folder of data that come with the program", holds_all=True),
        InUse(assets.catalogue_folder(), "in the folder of data that come with the program", holds_all=True),
    )


def _lists_in(folder: Path) -> Iterator[Path]:
    from spoutline.catalogue.price_lists import price_list_files

    yield from price_list_files(folder)
