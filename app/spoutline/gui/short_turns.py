"""Gives the window's thread its turn soon while a worker computes.

Python runs one thread at a time, and lets a busy one go on for 5 ms before another that waits has its turn. The
window's thread gives up its turn at many calls of Qt: what it builds or paints beside a worker would wait as long at
each.
"""

from __future__ import annotations

import sys
from typing import Final

_TURN_S: Final = 0.001


def take_short_turns() -> None:
    """Let no thread go on for longer than a millisecond while another waits for its turn."""
    sys.setswitchinterval(_TURN_S)
