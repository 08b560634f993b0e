"""Reading a survey from a file or standard input, writing on standard output."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.book import survey_text
from spoutline.cli.voice import told, words
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_stream
from spoutline.model.faults import InputNote, StoreFault
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.model.survey import Survey

STANDARD_INPUT = "-"


def read_survey(name: str) -> Survey:
    """Return the survey in the file ``name``, or on standard input for ``-``; raise ``InputFault``.

    How a size was understood is told on standard error.
    """
    if name != STANDARD_INPUT:
        return survey_text.read_survey(Path(name), tell_note)
    return survey_text.survey_from_bytes(read_standard_input(), "standard input", tell_note)


def tell_note(note: InputNote) -> None:
    """Write a note about the input on standard error; standard output stays what was asked for."""
    if sys.stderr is not None:
        sys.stderr.write(f"{noted(words().line(note))}\n")


def noted(note: str) -> str:
    """Return the line of standard error that notes something, said in the language of this command."""
    return f"spoutline: {told(Worded('note: {note}', note=note))}"


def read_standard_input() -> bytes:
    """Return all of standard input; nothing where the program has none. Raise ``InputFault`` for far too much."""
    if sys.stdin is None:
        return b""
    needed = "a survey or a jurisdiction is needed"
    return bounded_stream(sys.stdin.buffer, BOUNDS.survey_bytes, "standard input", "file", needed)


def write_standard_output(text: str) -> None:
    """Write ``text`` as UTF-8 whatever the terminal's encoding, so that a redirected file is always the same."""
    try:
        sys.stdout.flush()
        sys.stdout.buffer.write(text.encode("utf-8", "backslashreplace"))  # a path may hold bytes that are no text
        sys.stdout.buffer.flush()
    except BrokenPipeError:
        raise
    except OSError as fault:
        raise StoreFault(
            Worded("Standard output cannot be written: {reason}.", reason=fault.strerror or fault)
        ) from fault
