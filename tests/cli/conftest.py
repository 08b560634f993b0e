"""Runs the command line in this process, over the shared catalogue."""

from __future__ import annotations

import io
import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest


@dataclass(frozen=True)
class Done:
    """What a command left behind."""

    code: int
    out: str
    err: str


Spoutline = Callable[..., Done]


@pytest.fixture
def spoutline(
    shared_database: Path, tmp_path: Path, capfd: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> Spoutline:
    """Return a function that runs the program with the arguments given, and ``stdin`` as its standard input."""
    from spoutline.cli.main import run

    def no_window(_workbench: object, _survey: object) -> int:
        raise AssertionError("this command must not open a window")

    def go(*arguments: object, stdin: bytes = b"") -> Done:
        monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(stdin)))
        options = ["--database", str(shared_database), "--profiles", str(tmp_path / "profiles")]
        code = run([*options, *map(str, arguments)], no_window)
        out, err = capfd.readouterr()
        assert "Traceback" not in err
        assert "Traceback" not in out
        return Done(int(code), out, err)

    return go


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
