"""The real catalogue and rule tables, compiled once."""

from __future__ import annotations

from pathlib import Path

import pytest

from spoutline.catalogue.store import CatalogueStore
from spoutline.model.limit import RuleTables
from spoutline.ruletables.load import load_rule_tables

TOP = Path(__file__).parents[2]


@pytest.fixture(scope="session")
def catalogue(catalogue_store: CatalogueStore) -> CatalogueStore:
    """Return the compiled catalogue that all tests share."""
    return catalogue_store


@pytest.fixture(scope="session")
def us_tables() -> RuleTables:
    """Load the general US profile."""
    return load_rule_tables("us_general", resources=TOP / "resources", own_profiles=None)
