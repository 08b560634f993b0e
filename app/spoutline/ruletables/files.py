"""Read a table file as UTF-8 text, with the two ways that can fail kept apart."""

from __future__ import annotations

from pathlib import Path

from spoutline.model.faults import InputFault, InputProblem, StoreFault


def read_text(path: Path) -> str:
    """Return the text of a table file.

    Raises
    ------
    InputFault
        The file is no UTF-8 text.
    StoreFault
        The file cannot be read.
    """
    try:
        return path.read_text(encoding="utf-8")
    except UnicodeDecodeError as fault:
        problem = InputProblem(path.name, "file", f"byte {fault.start}", "save the file as UTF-8 text")
        raise InputFault((problem,)) from fault
    except OSError as fault:
        raise StoreFault(f"The table {path} cannot be read: {fault.strerror}.") from fault
