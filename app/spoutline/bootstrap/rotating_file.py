"""A text added to a file that makes room for itself: it is renamed when it is full, and the oldest goes."""

from __future__ import annotations

import logging
from contextlib import closing
from logging.handlers import RotatingFileHandler
from pathlib import Path


def add_to_rotating(path: Path, text: str, largest_bytes: int, former_files: int) -> None:
    """Add ``text`` to ``path``, beside which ``former_files`` full ones are kept; raise ``OSError`` where it fails."""
    handler = _Handler(path, maxBytes=largest_bytes, backupCount=former_files, encoding="utf-8", errors="replace")
    with closing(handler):
        handler.emit(logging.LogRecord("spoutline", logging.ERROR, "", 0, "%s", (text,), None))


class _Handler(RotatingFileHandler):
    def handleError(self, record: logging.LogRecord) -> None:  # noqa: N802 - logging's own
        """Hand a failure on to who writes, instead of printing it, as logging calls it."""
        raise  # noqa: PLE0704 - called while the failure is handled
