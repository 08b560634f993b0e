"""Install what is needed and run the tests on every core; arguments go to pytest.

Usage: python3 packaging/verify.py [core] [pytest arguments]

``core`` runs the tests of the core alone, for a first answer. ``--at-length`` runs whole what otherwise runs in part.
``-n 0`` runs in one process, as a debugger needs it.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import environment

CORE = [f"tests/{folder}" for folder in ("calc", "rules", "search", "explain", "units", "architecture")]
NOT_CORE = "--ignore=tests/architecture/test_delivery.py"  # it builds a wheel: no first answer needs that
PARALLEL = ["-n", "auto", "--dist", "worksteal"]
MEMORY = Path("/dev/shm")  # Linux keeps these files in memory
ROOM = 4 << 30  # bytes; a run takes less than a quarter of this


def main() -> int:
    """Set up with the test packages, then run pytest and return its exit code."""
    arguments = sys.argv[1:]
    if arguments[:1] == ["core"]:
        arguments[:1] = [*CORE, NOT_CORE]
    try:
        python = environment.set_up(with_tests=True)
    except environment.SetUpFailed as failure:
        print(failure, file=sys.stderr)
        return 2
    missing = environment.missing_libraries(for_screen=False)
    if missing:
        print(f"The tests of the window need system libraries that are missing: {', '.join(missing)}", file=sys.stderr)
        print("On Debian and Ubuntu this line installs them:", file=sys.stderr)
        print(environment.installing_line(missing), file=sys.stderr)
        return 2
    command = [str(python), "-m", "pytest", *PARALLEL, *arguments]
    # Compiled modules may be kept: the tests start the program many times, and each start would compile it anew.
    settings = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    settings.setdefault("QT_QPA_PLATFORM", "offscreen")
    settings.setdefault("PYTHONFAULTHANDLER", "1")  # a worker that dies shows where, also outside a test
    if _is_roomy(MEMORY):
        # the stores wait for the disk at every step; what is thrown away after the run need not get there
        settings.setdefault("PYTEST_DEBUG_TEMPROOT", str(MEMORY))
    # in a fresh checkout every worker would compile the program for itself
    compiling = [str(python), "-m", "compileall", "-q", "-j", "0", "app"]
    subprocess.run(compiling, check=False, cwd=environment.PROJECT, env=settings, stdout=subprocess.DEVNULL)
    return subprocess.run(command, check=False, cwd=environment.PROJECT, env=settings).returncode


def _is_roomy(folder: Path) -> bool:
    return os.access(folder, os.W_OK) and shutil.disk_usage(folder).free > ROOM


if __name__ == "__main__":
    sys.exit(main())
