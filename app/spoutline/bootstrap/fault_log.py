"""Faults of the program written down for a report: bounded in size and number, without secrets or values of a survey.

The log holds kinds of faults and lines of the program. The words of a fault may repeat what a person entered, so they
come into a report only where the person adds them.
"""

from __future__ import annotations

import sys
import threading
import traceback
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import spoutline
from spoutline.discretion import discreet

LOG_NAME = "faults.log"
LARGEST_BYTES = 256_000  # of one file
FORMER_FILES = 3
_LONGEST_REPORT = 24_000  # characters
_FRAMES_AT_ENDS = 15
_LONGEST_CHAIN = 8
_PACKAGE = Path(spoutline.__file__).parent


def log_folder() -> Path:
    """Return the folder for the record of unexpected faults."""
    import platformdirs

    return Path(platformdirs.user_log_dir("spoutline", appauthor=False))


def fault_report(fault: BaseException, *, with_words: bool = False) -> str:
    """Return what a report of a fault says; ``with_words`` adds the fault's own words, without passwords in them."""
    import platform

    lines = [f"Spoutline {spoutline.__version__}, Python {platform.python_version()}, {sys.platform}"]
    for one, joint in _chain(fault):
        if joint:
            lines.append(joint)
        lines += _frames(one)
        lines.append(f"{type(one).__module__}.{type(one).__qualname__}")
        if with_words:
            lines.append(f"  words: {discreet(str(one))}")
    if not with_words:
        lines.append("The words of the fault are left out: they may hold values of a survey.")
    return "\n".join(lines)[:_LONGEST_REPORT] + "\n"


class FaultLog:
    """A rotating text file; safe to use from several threads."""

    def __init__(self, folder: Path) -> None:
        self._path = folder / LOG_NAME
        self._writing = threading.Lock()

    def write(self, fault: BaseException) -> Path | None:
        """Add one fault and return the file; None where it cannot be written."""
        from spoutline.bootstrap.rotating_file import add_to_rotating  # seldom needed, and logging takes time to load

        text = f"{datetime.now(UTC):%Y-%m-%d %H:%M:%SZ} {fault_report(fault)}"
        with self._writing:
            try:
                self._path.parent.mkdir(parents=True, exist_ok=True)
                add_to_rotating(self._path, text, LARGEST_BYTES, FORMER_FILES)
            except OSError:
                return None
        return self._path


def _chain(fault: BaseException) -> Iterator[tuple[BaseException, str]]:
    """Yield a fault and what led to it, the first cause first, with the words between them."""
    found: list[tuple[BaseException, str]] = [(fault, "")]
    while len(found) < _LONGEST_CHAIN:
        last = found[-1][0]
        if last.__cause__ is not None:
            following, joint = last.__cause__, "which was the cause of"
        elif last.__context__ is not None and not last.__suppress_context__:
            following, joint = last.__context__, "while that was handled"
        else:
            break
        found[-1] = (last, joint)
        found.append((following, ""))
    return reversed(found)


def _frames(fault: BaseException) -> Iterator[str]:
    frames = traceback.extract_tb(fault.__traceback__)
    left_out = len(frames) - 2 * _FRAMES_AT_ENDS
    for number, frame in enumerate(frames):
        if left_out > 0 and _FRAMES_AT_ENDS <= number < len(frames) - _FRAMES_AT_ENDS:
            if number == _FRAMES_AT_ENDS:
                yield f"  ... {left_out} more ..."
            continue
        yield f"  {_place(frame.filename)}:{frame.lineno} {frame.name}: {discreet((frame.line or '')[:160])}"


def _place(filename: str) -> str:
    """Return a source file without the folders of this computer."""
    path = Path(filename)
    if path.is_relative_to(_PACKAGE):
        return path.relative_to(_PACKAGE.parent).as_posix()
    return "/".join(path.parts[-2:])
