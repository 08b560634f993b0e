"""Writes requirements.lock anew: the versions that stand in it, in sections, with the hashes of all their files.

Usage, in the project's environment: python packaging/lock.py
After adding a package: write NAME==VERSION anywhere into the file, install it, run this.
It needs uv (pip install uv), which asks the package index that UV_DEFAULT_INDEX names, or else the public one.
"""

from __future__ import annotations

import importlib.metadata
import re
import subprocess
import sys
import tempfile
import tomllib
from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path

from locked import BUILD, PACKAGING, PROGRAM, TEST, Locked, read_lock
from packaging.requirements import Requirement

PROJECT = Path(__file__).resolve().parents[1]
LOCK = PROJECT / "requirements.lock"
OLDEST_PYTHON = "3.11"
HEAD = f"""\
# Every package of the program, its build and its tests, at the version they were tried with, with the hashes of all
# files that the index holds of it. Written by packaging/lock.py; add a package by hand as NAME==VERSION and run that.
# Tried on Linux (x86-64) with Python {OLDEST_PYTHON}. On Windows pytest needs colorama besides.
"""


def main() -> int:
    """Write the lock file and return the exit code."""
    packages = read_lock(LOCK)
    hashes = _hashes(packages)
    missing = [one.name for one in packages if not hashes.get(one.name)]
    if missing:
        print(f"The index holds no files of {', '.join(missing)} at these versions.", file=sys.stderr)
        return 1
    sections = _sections()
    written = [
        replace(one, section=sections.get(one.name, TEST), hashes=hashes[one.name])
        for one in sorted(packages, key=lambda one: one.name)
    ]
    parts = [HEAD]
    for section in (PROGRAM, BUILD, PACKAGING, TEST):
        parts.append(f"\n# == {section}\n")
        parts += [f"{one.lines()}\n" for one in written if one.section == section]
    LOCK.write_text("".join(parts), encoding="utf-8")
    print(f"{len(written)} packages, {sum(len(one.hashes) for one in written)} hashes")
    return 0


def _hashes(packages: Iterable[Locked]) -> dict[str, tuple[str, ...]]:
    """Ask the index through uv for the hashes of every file of each version, for every platform."""
    with tempfile.TemporaryDirectory() as folder:
        wanted, answer = Path(folder, "wanted.txt"), Path(folder, "answer.txt")
        wanted.write_text("".join(f"{one.name}=={one.version}\n" for one in packages), encoding="utf-8")
        command = ["uv", "pip", "compile", str(wanted), "--no-deps", "--generate-hashes", "--universal", "--quiet"]
        options = ["--python-version", OLDEST_PYTHON, "--no-annotate", "--no-header", "--output-file", str(answer)]
        subprocess.run([*command, *options], check=True, stdout=subprocess.DEVNULL)
        return {one.name: tuple(sorted(one.hashes)) for one in read_lock(answer)}


def _sections() -> dict[str, str]:
    """Return what each package is needed for, followed through what is installed; the program goes before all."""
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text(encoding="utf-8"))
    extras = project["project"]["optional-dependencies"]
    roots = {
        PACKAGING: extras["packaging"],
        BUILD: [*project["build-system"]["requires"], "editables"],
        PROGRAM: [*project["project"]["dependencies"], *extras["office"]],
    }
    return {name: section for section, asked in roots.items() for name in _closure(asked)}


def _closure(asked: Iterable[str]) -> set[str]:
    found: set[tuple[str, str]] = set()
    waiting = [(Requirement(text), "") for text in asked]
    while waiting:
        requirement, extra = waiting.pop()
        if requirement.marker is not None and not requirement.marker.evaluate({"extra": extra}):
            continue
        name = normal(requirement.name)
        for wanted in ("", *requirement.extras):
            if (name, wanted) in found:
                continue
            found.add((name, wanted))
            needs = importlib.metadata.distribution(name).requires or ()
            waiting += [(Requirement(text), wanted) for text in needs]
    return {name for name, _ in found}


def normal(name: str) -> str:
    """Return the name of a package as indexes compare names (PEP 503)."""
    return re.sub(r"[-_.]+", "-", name).lower()


if __name__ == "__main__":
    sys.exit(main())
