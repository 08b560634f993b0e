"""Install what is needed and run the tests; arguments go to pytest.

Usage: python3 packaging/verify.py [pytest arguments]
"""

from __future__ import annotations

import os
import subprocess
import sys

import environment


def main() -> int:
    """Set up with the test packages, then run pytest and return its exit code."""
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
    command = [str(python), "-m", "pytest", *sys.argv[1:]]
    settings = {**os.environ, "QT_QPA_PLATFORM": os.environ.get("QT_QPA_PLATFORM", "offscreen")}
    return subprocess.run(command, check=False, cwd=environment.PROJECT, env=settings).returncode


if __name__ == "__main__":
    sys.exit(main())
