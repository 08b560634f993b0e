"""Which form of its tables a store should have, told by the names of the scripts that make them."""

from __future__ import annotations

from pathlib import Path


def newest_revision(migrations: Path) -> str:
    """Return the newest revision of scripts that are named after theirs, as ``book_0001_surveys.py``."""
    return "_".join(max(script.stem for script in (migrations / "versions").glob("*_*_*.py")).split("_")[:2])
