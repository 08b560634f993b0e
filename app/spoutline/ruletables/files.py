"""Read a table file as UTF-8 text, with the two ways that can fail kept apart."""

from __future__ import annotations

from pathlib import Path

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_stream
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.worded import Worded


def read_text(path: Path) -> str:
    """Return the text of a table file.

    Raises
    ------
    InputFault
        The file is no UTF-8 text, or far too long.
    StoreFault
        The file cannot be read.
    """
    try:
        with path.open("rb") as file:
            content = bounded_stream(file, BOUNDS.toml_bytes, path.name, "file", "a readable table is needed")
        return content.decode("utf-8").replace("\r\n", "\n").replace("\r", "\n")
    except UnicodeDecodeError as fault:
        problem = InputProblem(
            path.name, "file", Worded("byte {start}", start=fault.start), "save the file as UTF-8 text"
        )
        raise InputFault((problem,)) from fault
    except OSError as fault:
        raise StoreFault(
            Worded("The table {path} cannot be read: {reason}.", path=path, reason=fault.strerror)
        ) from fault
