"""Where PostgreSQL's server programs lie, if they are installed."""

from __future__ import annotations

import os
import shutil
from pathlib import Path


def server_programs() -> Path | None:
    """Return the folder of ``initdb`` and ``pg_ctl``: on the path, or where Debian puts them; None without them."""
    on_path = shutil.which("initdb")
    if on_path is not None:
        return Path(on_path).resolve().parent
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"))
    return found[-1].parent if found else None


def as_postgres() -> list[str]:
    """Return what goes before a server program where this is root, which the server refuses to be; else nothing.

    A shell that became root by plain ``su`` has no ``/usr/sbin`` on its path, so the usual place is named too.
    """
    if os.geteuid() != 0:
        return []
    return [shutil.which("runuser") or "/usr/sbin/runuser", "-u", "postgres", "--"]
