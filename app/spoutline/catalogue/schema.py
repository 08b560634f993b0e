"""The catalogue's tables, the steps that bring older ones up to date, and its faults in plain words."""

from __future__ import annotations

from contextlib import AbstractContextManager
from pathlib import Path
from typing import Final

from sqlalchemy import Engine

from spoutline.database import faults
from spoutline.database.engine import shown_url, url_of
from spoutline.database.migration import Schema
from spoutline.database.revisions import newest_revision

_MIGRATIONS = Path(__file__).parent / "migrations"
CATALOGUE_SCHEMA: Final = Schema(
    called="The catalog in",
    lock="spoutline catalogue",
    version_table="catalogue_version",
    newest=newest_revision(_MIGRATIONS),
    migrations=_MIGRATIONS,
)


def store_faults(engine: Engine) -> AbstractContextManager[None]:
    """Turn a failing catalogue into a ``StoreFault`` that a person can read."""
    url = url_of(engine)
    return faults.store_faults(f"{CATALOGUE_SCHEMA.called} {shown_url(url)}", url)
