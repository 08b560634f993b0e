"""Sets up the project's own Python environment and names what the system lacks. Standard library only."""

from __future__ import annotations

import hashlib
import importlib.util
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from locked import PACKAGING, TEST, read_lock

PROJECT = Path(__file__).resolve().parents[1]
ENVIRONMENT = PROJECT / ".venv"
LOCK = PROJECT / "requirements.lock"
OLDEST = (3, 11)

# Debian's packages for the libraries that Qt asks for (ldd of its plugins on Debian 12, each looked up with dpkg -S).
DEBIAN_PACKAGE = {
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libgthread-2.0.so.0": "libglib2.0-0",
    "libgobject-2.0.so.0": "libglib2.0-0",
    "libgio-2.0.so.0": "libglib2.0-0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libX11.so.6": "libx11-6",
    "libX11-xcb.so.1": "libx11-xcb1",
    "libxcb.so.1": "libxcb1",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-util.so.1": "libxcb-util1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libz.so.1": "zlib1g",
}


class SetUpFailed(Exception):
    """The environment cannot be made; the message says what to do."""


def python() -> Path:
    """Return the environment's interpreter."""
    folder, name = ("Scripts", "python.exe") if os.name == "nt" else ("bin", "python")
    return ENVIRONMENT / folder / name


def set_up(*, with_tests: bool) -> Path:
    """Make the environment where it is missing or older than the lock file; return its interpreter.

    Raise ``SetUpFailed`` with the line that helps.
    """
    if sys.version_info < OLDEST:
        found = ".".join(map(str, sys.version_info[:3]))
        raise SetUpFailed(f"Python 3.11 or newer is needed; this is {found}.")
    wanted = _stamp(with_tests=with_tests)
    stamp = ENVIRONMENT / "installed-for"
    known = stamp.read_text(encoding="utf-8").split() if stamp.is_file() else []
    if python().exists() and (wanted in known or _stamp(with_tests=True) in known):
        return python()
    _make_environment()
    _install(with_tests=with_tests)
    stamp.write_text(f"{wanted}\n", encoding="utf-8")
    return python()


def _stamp(*, with_tests: bool) -> str:
    content = LOCK.read_bytes() + (PROJECT / "pyproject.toml").read_bytes() + str(PROJECT).encode()
    return f"{'tests' if with_tests else 'program'}-{hashlib.sha256(content).hexdigest()[:16]}"


def _make_environment() -> None:
    if python().exists() and _runs([str(python()), "-m", "pip", "--version"]):
        return
    if importlib.util.find_spec("venv") is None or importlib.util.find_spec("ensurepip") is None:
        raise SetUpFailed(
            "Python's venv module is not complete here. On Debian and Ubuntu this installs it:\n"
            "  apt-get install python3-venv"
        )
    print(f"Making the Python environment {ENVIRONMENT} ...", flush=True)
    if subprocess.run([sys.executable, "-m", "venv", "--clear", str(ENVIRONMENT)], check=False).returncode != 0:
        raise SetUpFailed(f"The environment {ENVIRONMENT} could not be made; the lines above say why.")


def _install(*, with_tests: bool) -> None:
    """Install every package at the version and with the hashes of the lock file, then the project in place.

    No package is built here and none is chosen by an index: a file whose hash the lock does not hold is refused.
    """
    print("Installing the packages that requirements.lock names (about a minute) ...", flush=True)
    pip = [str(python()), "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-input", "--no-deps"]
    left_out = {PACKAGING} if with_tests else {PACKAGING, TEST}
    wanted = [one for one in read_lock(LOCK) if one.section not in left_out]
    bare = [one.name for one in wanted if not one.hashes]
    if bare:
        raise SetUpFailed(f"requirements.lock holds no hashes of {', '.join(bare)}: run packaging/lock.py.")
    with tempfile.TemporaryDirectory() as folder:
        chosen = Path(folder, "requirements.txt")
        chosen.write_text("".join(f"{one.lines()}\n" for one in wanted), encoding="utf-8")
        locked = ["--require-hashes", "--only-binary", ":all:", "--requirement", str(chosen)]
        for step in (locked, ["--no-build-isolation", "--editable", str(PROJECT)]):
            if subprocess.run([*pip, *step], check=False, stdin=subprocess.DEVNULL).returncode != 0:
                raise SetUpFailed(
                    "The packages could not be installed; the lines above say why. A network connection to a Python "
                    "package index is needed once."
                )


def missing_libraries(*, for_screen: bool) -> tuple[str, ...]:
    """Return the shared libraries that Qt needs and the system lacks, sorted; none where ldd cannot tell.

    ``for_screen`` asks for a window on an X11 screen; otherwise drawing without a screen is enough.
    """
    folder = _qt_folder()
    ldd = shutil.which("ldd")
    if folder is None or ldd is None or not sys.platform.startswith("linux"):
        return ()
    plugin = "libqxcb.so" if for_screen else "libqoffscreen.so"
    targets = [*folder.glob("QtWidgets.*.so"), folder / "Qt" / "plugins" / "platforms" / plugin]
    told = subprocess.run([ldd, *map(str, targets)], check=False, capture_output=True, text=True).stdout
    return tuple(sorted(set(re.findall(r"^\s*(\S+) => not found", told, re.MULTILINE))))


def installing_line(libraries: tuple[str, ...]) -> str:
    """Return the line that installs ``libraries`` on Debian and Ubuntu, and the names it cannot place."""
    packages = sorted({DEBIAN_PACKAGE[name] for name in libraries if name in DEBIAN_PACKAGE})
    unknown = [name for name in libraries if name not in DEBIAN_PACKAGE]
    line = f"  apt-get install --no-install-recommends {' '.join(packages)}" if packages else ""
    rest = f"  and the packages that hold {', '.join(unknown)}" if unknown else ""
    return "\n".join(text for text in (line, rest) if text)


def _qt_folder() -> Path | None:
    found = sorted(ENVIRONMENT.glob("lib*/python*/site-packages/PySide6"))
    return found[0] if found else None


def _runs(command: list[str]) -> bool:
    return subprocess.run(command, check=False, capture_output=True).returncode == 0
