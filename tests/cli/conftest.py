"""Survey files for commands. The fixture ``spoutline`` that runs a command is every test's."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest


def survey_document(*positions: dict[str, Any], **site: Any) -> dict[str, Any]:
    """Return a survey as JSON would hold it; without positions, one car position for E10."""
    return {
        "site": {"name": "Maple Ferry Fuels", **site},
        "positions": list(positions) or [{"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}}],
    }


@pytest.fixture
def written(tmp_path: Path) -> Callable[..., Path]:
    """Return a function that writes a survey file and returns its path."""

    def write(*positions: dict[str, Any], **site: Any) -> Path:
        path = tmp_path / "survey.json"
        path.write_text(json.dumps(survey_document(*positions, **site)))
        return path

    return write
