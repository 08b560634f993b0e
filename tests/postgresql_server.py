"""Where PostgreSQL's server programs lie, if they are installed."""

from __future__ import annotations

import shutil
from pathlib import Path


def server_programs() -> Path | None:
    """Return the folder of ``initdb`` and ``pg_ctl``: on the path, or where Debian puts them; None without them."""
    on_path = shutil.which("initdb")
    if on_path is not None:
        return Path(on_path).resolve().parent
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"))
    return found[-1].parent if found else None
