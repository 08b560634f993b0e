"""Figures that benches measured, handed to whoever puts them into one table; and what memory a process really took."""

from __future__ import annotations

import json
import os
import sys
from pathlib import Path
from typing import Final

FIGURES_FILE: Final = "SPOUTLINE_BENCH_FIGURES"  # names the file that figures go to; without it none are noted
_STATUS, _REFERENCES = Path("/proc/self/status"), Path("/proc/self/clear_refs")


def tell(name: str, figure: float) -> None:
    """Note a figure under a name that says what it is and in what unit, where a table is being made."""
    target = os.environ.get(FIGURES_FILE)
    if target:
        with Path(target).open("a", encoding="utf-8") as file:
            file.write(json.dumps([name, figure]) + "\n")


def told_in(file: Path) -> dict[str, float]:
    """Return the figures of a file by name; of those told twice the later one."""
    lines = file.read_text("utf-8").splitlines() if file.exists() else []
    return dict(json.loads(line) for line in lines)


def peak_mib(process: int | str = "self") -> float:
    """Return the most memory that a process has held since it began, or since ``forget_peak``, MiB.

    ``ru_maxrss`` does not tell it: on Linux a process begins with the peak of the one that started it.
    """
    status = Path("/proc") / str(process) / "status"
    if status.exists():
        found = next((line for line in status.read_text("ascii").splitlines() if line.startswith("VmHWM")), "VmHWM: 0")
        return int(found.split()[1]) / 1024
    import resource  # which Windows lacks

    unit = 2**20 if sys.platform == "darwin" else 2**10
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / unit


def forget_peak() -> None:
    """Let ``peak_mib`` of this process begin anew with what it holds now, where the system can."""
    if _REFERENCES.exists():
        _REFERENCES.write_text("5", "ascii")
