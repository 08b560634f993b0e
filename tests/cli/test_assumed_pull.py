"""What the outlet is assumed to bear is one figure wherever a plan tells it."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest


@pytest.mark.parametrize("units", ["us", "si"])
def test_an_assumed_pull_is_told_in_one_way(spoutline: Any, written: Callable[..., Path], units: str) -> None:
    survey = written({"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}})
    text = re.sub(r"\s+", " ", spoutline("plan", survey, "--units", units).out)
    (assumed,) = re.findall(r"not surveyed at any position; ([\d.,]+ (?:lbf|k?N)) is assumed", text)
    assert re.findall(r"the outlet \(which bears ([\d.,]+ (?:lbf|k?N))\)", text) == [assumed]
