"""How far a long command is, on a terminal only."""

from __future__ import annotations

import sys

from spoutline.cli.voice import said


class TerminalProgress:
    """Overwrites one line of standard error; silent where that is not a terminal. Never asks to stop."""

    def __init__(self, template: str = "") -> None:
        """Tell with a template that names ``done`` and ``total``; without one, of positions planned."""
        self._template = template

    def on_progress(self, done: int, total: int) -> None:
        """Show how many of ``total`` units are done, and clear the line at the end."""
        if sys.stderr is None or not sys.stderr.isatty():
            return
        sys.stderr.write(f"\r\x1b[K{'' if done >= total else self._told(done, total)}")
        sys.stderr.flush()

    def _told(self, done: int, total: int) -> str:
        if self._template:
            return said(self._template, done=done, total=total)
        return said("{done} of {total} positions planned", done=done, total=total)

    def should_stop(self) -> bool:
        """Return False: the keyboard interrupt ends a command."""
        return False
