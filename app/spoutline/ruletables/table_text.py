"""A table as it lies in its file, before anybody asks what it means."""

from __future__ import annotations

from pathlib import Path

from spoutline.frozen import frozen
from spoutline.model.faults import InputProblem


@frozen
class TableText:
    """The text of a table, or why its file cannot be read as text."""

    path: Path
    text: str
    problems: tuple[InputProblem, ...] = ()
