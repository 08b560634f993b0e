"""How far a long command is, on a terminal only."""

from __future__ import annotations

import sys


class TerminalProgress:
    """Overwrites one line of standard error; silent where that is not a terminal. Never asks to stop."""

    def __init__(self, what: str = "positions planned") -> None:
        self._what = what

    def on_progress(self, done: int, total: int) -> None:
        """Show how many of ``total`` units are done, and clear the line at the end."""
        if sys.stderr is None or not sys.stderr.isatty():
            return
        text = "" if done >= total else f"{done} of {total} {self._what}"
        sys.stderr.write(f"\r\x1b[K{text}")
        sys.stderr.flush()

    def should_stop(self) -> bool:
        """Return False: the keyboard interrupt ends a command."""
        return False
