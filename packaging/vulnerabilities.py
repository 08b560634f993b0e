"""Asks whether known vulnerabilities concern the packages of requirements.lock; optional, as it needs a network.

Usage: python packaging/vulnerabilities.py
It runs pip-audit (pip install pip-audit). Exit codes: 0 none is known, 1 some are, 3 not checked: offline, or no
pip-audit.
"""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

LOCK = Path(__file__).resolve().parents[1] / "requirements.lock"
NONE_KNOWN, SOME_KNOWN, NOT_CHECKED = 0, 1, 3


def main() -> int:
    """Run the check, say what came of it and return the exit code."""
    command = [sys.executable, "-m", "pip_audit", "--requirement", str(LOCK), "--disable-pip", "--require-hashes"]
    done = subprocess.run(
        [*command, "--format", "json", "--progress-spinner", "off"], check=False, capture_output=True, text=True
    )
    try:
        packages = json.loads(done.stdout)["dependencies"]
    except (ValueError, KeyError, TypeError):
        reason = (done.stderr.strip().splitlines() or ["pip-audit said nothing"])[-1]
        print(f"NOT CHECKED for known vulnerabilities: offline, or no pip-audit here ({reason}).", file=sys.stderr)
        return NOT_CHECKED
    unknown = [one["name"] for one in packages if "skip_reason" in one]
    found = [(one["name"], one["version"], fault) for one in packages for fault in one.get("vulns", ())]
    for name, version, fault in found:
        print(f"{name} {version}: {fault['id']}, mended in {', '.join(fault['fix_versions']) or 'no version yet'}")
    if unknown:
        print(f"NOT CHECKED: {', '.join(unknown)}", file=sys.stderr)
    print(f"{len(packages) - len(unknown)} packages checked, {len(found)} known vulnerabilities")
    if found:
        return SOME_KNOWN
    return NOT_CHECKED if unknown else NONE_KNOWN


if __name__ == "__main__":
    sys.exit(main())
