"""Install what is needed and do the main job: the window on a ready demo station, or its plan where no screen is.

Usage: python3 packaging/launch.py
"""

from __future__ import annotations

import os
import subprocess
import sys

import environment

DEMO = "small_town"


def main() -> int:
    """Set up, then open the window or plan the demo station on the command line."""
    try:
        python = environment.set_up(with_tests=False)
    except environment.SetUpFailed as failure:
        print(failure, file=sys.stderr)
        return 2
    program = [str(python), "-m", "spoutline"]
    if not _has_screen():
        print("There is no display here, so no window can open. The command line does the same job:")
        return _plan_demo(program)
    missing = environment.missing_libraries(for_screen=True)
    if missing:
        print(f"The window needs system libraries that are missing here: {', '.join(missing)}", file=sys.stderr)
        print("On Debian and Ubuntu this line installs them:", file=sys.stderr)
        print(environment.installing_line(missing), file=sys.stderr)
        print("Until then the command line does the same job:")
        return _plan_demo(program) or 2
    return subprocess.run([*program, "window", "--demo", DEMO], check=False).returncode


def _has_screen() -> bool:
    if sys.platform in ("win32", "darwin"):
        return True
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


def _plan_demo(program: list[str]) -> int:
    """Plan the demo station, and show which commands did it."""
    name = ".venv/bin/spoutline"
    print(f"  {name} demo {DEMO} > station.json")
    print(f"  {name} plan station.json")
    print(f"  {name} bill station.json --pdf bill.pdf")
    print(f"The plan of the demo station {DEMO}:\n", flush=True)
    survey = subprocess.run([*program, "demo", DEMO], check=False, stdout=subprocess.PIPE)
    if survey.returncode != 0:
        return survey.returncode
    return subprocess.run([*program, "plan", "-"], check=False, input=survey.stdout).returncode


if __name__ == "__main__":
    sys.exit(main())
