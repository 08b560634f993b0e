"""A kept file opened by the desktop's own program, from a copy that nobody misses."""

from __future__ import annotations

import tempfile
from pathlib import Path

from PySide6.QtCore import QUrl
from PySide6.QtGui import QDesktopServices

from spoutline.model.part_file import PartFile


def open_copy(file: PartFile, content: bytes) -> Path:
    """Write a copy into a folder of its own and ask the desktop to open it; return where the copy is."""
    folder = Path(tempfile.mkdtemp(prefix="spoutline-"))
    path = folder / f"{file.digest[:12]}{file.media.ending}"  # no sign of a title enters a path
    path.write_bytes(content)
    path.chmod(0o400)
    QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))
    return path
