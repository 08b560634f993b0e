"""Freezes the program into one folder that needs no Python: dist/spoutline, and says what weighs in it.

Usage: python3 packaging/bundle.py [FOLDER]

It makes an environment of its own below FOLDER (build/bundle unless named) from requirements.lock, without the packages
of the tests and without an installed project, so that nothing enters that the lock does not pin.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import venv
from pathlib import Path

from locked import BUILD, PACKAGING, PROGRAM, read_lock

PROJECT = Path(__file__).resolve().parents[1]
_WEIGHED = 12


def main() -> int:
    """Build the bundle and print its size; return the exit code."""
    work = Path(sys.argv[1] if len(sys.argv) > 1 else PROJECT / "build" / "bundle").resolve()
    python = _environment(work / "environment")
    command = [str(python), "-m", "PyInstaller", "--noconfirm", "--log-level", "WARN"]
    places = ["--workpath", str(work / "work"), "--distpath", str(work / "dist")]
    done = subprocess.run([*command, *places, str(PROJECT / "packaging" / "spoutline.spec")], check=False)
    if done.returncode:
        return done.returncode
    slim(work / "dist" / "spoutline")
    weigh(work / "dist" / "spoutline")
    return 0


def _environment(folder: Path) -> Path:
    """Return the interpreter of an environment that holds the program's packages and the freezer, at their pins."""
    python = folder / ("Scripts/python.exe" if sys.platform == "win32" else "bin/python")
    wanted = folder.parent / "requirements.txt"
    packages = [one for one in read_lock(PROJECT / "requirements.lock") if one.section in (PROGRAM, BUILD, PACKAGING)]
    text = "".join(f"{one.lines()}\n" for one in packages)
    if python.exists() and wanted.is_file() and wanted.read_text(encoding="utf-8") == text:
        return python
    venv.create(folder, with_pip=True, clear=True)
    pip = [str(python), "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-input", "--no-deps"]
    wanted.write_text(text, encoding="utf-8")
    try:
        subprocess.run(
            [*pip, "--require-hashes", "--only-binary", ":all:", "--requirement", str(wanted)],
            check=True,
            stdin=subprocess.DEVNULL,
        )
        # The lock lists a package once, under what needs it first; the freezer must find what it needs too.
        subprocess.run([str(python), "-m", "pip", "check"], check=True, stdin=subprocess.DEVNULL)
    except subprocess.CalledProcessError:
        wanted.unlink()
        raise
    return python


def slim(folder: Path) -> None:
    """Take the names that only debuggers read out of shared libraries, where the system has the tool for that.

    Those that wheels carry in a folder ``NAME.libs`` stay as they are: their segments were moved when they were put
    there, and the tool breaks them.
    """
    tool = shutil.which("strip")
    if tool is None or not sys.platform.startswith("linux"):
        return
    for path in sorted(folder.rglob("*.so*")):
        is_moved = any(part.endswith(".libs") for part in path.parts)
        if path.is_file() and not path.is_symlink() and not is_moved:
            subprocess.run([tool, "--strip-unneeded", "-p", str(path)], check=True)


def weigh(folder: Path) -> None:
    """Print the size of the bundle and of its heaviest parts, in MB of 1,000,000 bytes."""
    sizes: dict[str, int] = {}
    files = [path for path in folder.rglob("*") if path.is_file() and not path.is_symlink()]
    for path in files:
        parts = path.relative_to(folder).parts
        part = "/".join(parts[1:2] or parts[:1]) if parts[0] == "_internal" else parts[0]
        sizes[part] = sizes.get(part, 0) + path.stat().st_size
    print(f"{folder}: {sum(sizes.values()) / 1e6:.0f} MB in {len(files)} files")
    for part, size in sorted(sizes.items(), key=lambda pair: -pair[1])[:_WEIGHED]:
        print(f"{size / 1e6:8.1f} MB  {part}")


if __name__ == "__main__":
    sys.exit(main())
