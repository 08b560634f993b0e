"""What a run of the program leaves behind, and the type of the function that runs it: the fixture ``spoutline``."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True)
class Done:
    """What a command left behind."""

    code: int
    out: str
    err: str


Spoutline = Callable[..., Done]
Run = Callable[..., str]  # of the arguments of a command: what it said; `own_run` is one
