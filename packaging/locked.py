"""Reads requirements.lock: packages in sections, each at one version with its hashes. Standard library only."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

PROGRAM, BUILD, PACKAGING, TEST = "program", "build", "packaging", "test"
_HEAD = re.compile(r"# == (\w+)")
_PIN = re.compile(r"([a-z0-9-]+)==([0-9][0-9a-z.]*)")
_HASH = re.compile(r"--hash=sha256:([0-9a-f]{64})")


@dataclass(frozen=True)
class Locked:
    """A package: what it is for, and the SHA-256 of every file of this version that an index holds."""

    name: str
    version: str
    section: str
    hashes: tuple[str, ...]

    def lines(self) -> str:
        """Return the package as the lock file writes it."""
        return " \\\n".join([f"{self.name}=={self.version}", *(f"    --hash=sha256:{one}" for one in self.hashes)])


def read_lock(path: Path) -> tuple[Locked, ...]:
    """Return the packages of a lock file; a package that somebody added by hand has no hashes yet."""
    section, found = PROGRAM, []
    for entry in path.read_text(encoding="utf-8").replace("\\\n", " ").splitlines():
        head = _HEAD.match(entry)
        if head:
            section = head[1]
        elif entry.strip() and not entry.startswith("#"):
            pin = _PIN.match(entry)
            if pin is None:
                raise ValueError(f"{path.name}: {entry.split()[0]!r} is no NAME==VERSION")
            found.append(Locked(pin[1], pin[2], section, tuple(_HASH.findall(entry))))
    return tuple(found)
