"""Every part of the one catalogue that all tests share."""

from __future__ import annotations

import pytest

from spoutline.bootstrap import Workbench
from spoutline.model.part import Part


@pytest.fixture(scope="session")
def catalogue(workbench: Workbench) -> tuple[Part, ...]:
    """Return every part of the catalogue."""
    return workbench.parts().search("", None, 100_000)
