"""Stores that stay open from command to command, over the one database that all tests only read.

Opening them is matter of the tests of the stores; a command that asks a question pays for it each time: the file is
checked page by page, its versions are read, and the parts of the catalogue come from disk again.
"""

from __future__ import annotations

from pathlib import Path

from spoutline.bootstrap.settings import Settings
from spoutline.bootstrap.stores import Stores
from spoutline.model.catalogue_edition import EditionRef


class _LeftOpen(Stores):
    def close(self) -> None:
        """Stay open: the next command asks the same database."""

    def end(self) -> None:
        super().close()


class OpenStores:
    """Gives stores in the place of ``Stores``: those of the shared database again, of any other new ones."""

    def __init__(self, shared: Path) -> None:
        self._shared = str(shared)
        self._kept: dict[EditionRef | None, _LeftOpen] = {}

    def __call__(self, settings: Settings) -> Stores:
        if settings.database != self._shared:
            return Stores(settings)
        if settings.catalogue not in self._kept:
            self._kept[settings.catalogue] = _LeftOpen(Settings(database=self._shared, catalogue=settings.catalogue))
        return self._kept[settings.catalogue]

    def close(self) -> None:
        """Close them at the end of the run."""
        for stores in self._kept.values():
            stores.end()
