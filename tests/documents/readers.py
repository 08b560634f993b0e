"""Words and units for tests, and what a reader of a PDF sees."""

from __future__ import annotations

import subprocess
import sys
from functools import lru_cache
from io import BytesIO
from pathlib import Path

from pypdf import PdfReader

from spoutline import assets
from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml
from spoutline.explain.plan.story import Story
from spoutline.ruletables.cautions import Caution, load_cautions
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


@lru_cache(maxsize=1)
def phrasebook() -> Phrasebook:
    path = assets.resources_folder() / "phrases" / "en.toml"
    return phrasebook_from_toml(path.read_text(encoding="utf-8"), path.name)


def story(system: UnitSystem = UnitSystem.SI) -> Story:
    return Story(phrasebook(), Display(system))


@lru_cache(maxsize=1)
def cautions() -> tuple[Caution, ...]:
    return load_cautions(assets.resources_folder())


def reader_of(pdf: bytes) -> PdfReader:
    return PdfReader(BytesIO(pdf))


def outputs_elsewhere(script: str) -> set[str]:
    """Return what a Python script prints in processes of unlike hash seeds and time zones."""
    return {
        subprocess.run(
            [sys.executable, "-c", script],
            env={"PYTHONHASHSEED": seed, "PYTHONPATH": str(Path(__file__).parents[1]), "TZ": zone},
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for seed, zone in (("1", "UTC"), ("4242", "Asia/Tokyo"))
    }
