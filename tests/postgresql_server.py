"""Where PostgreSQL's server programs lie, if they are installed."""

from __future__ import annotations

import os
import shutil
import subprocess
import tempfile
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


class OwnServer:
    """A server of the tests' own in a folder of its own, that they may stop, kill and start again."""

    def __init__(self) -> None:
        programs = server_programs()
        assert programs is not None
        self._pg_ctl = str(programs / "pg_ctl")
        # A socket's path may be 107 bytes long at most (unix(7)), so it lies in a short folder.
        self.folder = Path(tempfile.mkdtemp(prefix="pg-"))
        if os.geteuid() == 0:
            shutil.chown(self.folder, "postgres")
        self._data = str(self.folder / "data")
        cluster = ("-A", "trust", "-U", "postgres", "--no-sync", "-E", "UTF8", "--locale=C.UTF-8")
        self._run(str(programs / "initdb"), "-D", self._data, *cluster)
        self.start()

    def url(self, user: str = "postgres") -> str:
        """Return the address of the server's database for a user."""
        return f"postgresql://{user}@/postgres?host={self.folder}"

    def start(self) -> None:
        """Start the server and wait until it answers."""
        # Autovacuum may hold a table that a test alters in a transaction over many tables: the server then gives up one
        # of the two, and which one is chance.
        options = f"-c autovacuum=off -c listen_addresses='' -c unix_socket_directories={self.folder}"
        self._run(self._pg_ctl, "-D", self._data, "-w", "-l", str(self.folder / "log"), "-o", options, "start")

    def stop(self, mode: str = "fast") -> None:
        """Stop the server; ``immediate`` kills it in the middle of whatever it does."""
        self._run(self._pg_ctl, "-D", self._data, "-m", mode, "-w", "stop")

    def remove(self) -> None:
        """Stop the server and delete its folder."""
        self.stop("immediate")
        shutil.rmtree(self.folder)

    def _run(self, *command: str) -> None:
        subprocess.run([*as_postgres(), *command], check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
