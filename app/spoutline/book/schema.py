"""The book's tables, the steps that bring older ones up to date, and its faults in plain words."""

from __future__ import annotations

from contextlib import AbstractContextManager
from pathlib import Path
from typing import Final

from spoutline.database import faults
from spoutline.database.engine import shown_url
from spoutline.database.migration import Schema
from spoutline.database.revisions import newest_revision

_MIGRATIONS = Path(__file__).parent / "migrations"
BOOK_SCHEMA: Final = Schema(
    called="The database",
    lock="spoutline book",
    version_table="book_version",
    newest=newest_revision(_MIGRATIONS),
    migrations=_MIGRATIONS,
)


def store_faults(url: str) -> AbstractContextManager[None]:
    """Turn a failing book into a ``StoreFault`` that a person can read."""
    return faults.store_faults(f"{BOOK_SCHEMA.called} {shown_url(url)}", url)
