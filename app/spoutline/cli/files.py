"""Reading a survey from a file or standard input, writing on standard output, and which files a command may write."""

from __future__ import annotations

import sys
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.book import survey_text
from spoutline.model.faults import InputFault, InputNote, InputProblem, StoreFault

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
        sys.stderr.write(f"spoutline: note: {note}\n")


def read_standard_input() -> bytes:
    """Return all of standard input; nothing where the program has none."""
    return b"" if sys.stdin is None else sys.stdin.buffer.read()


def write_standard_output(text: str) -> None:
    """Write ``text`` as UTF-8 whatever the terminal's encoding, so that a redirected file is always the same."""
    try:
        sys.stdout.flush()
        sys.stdout.buffer.write(text.encode("utf-8"))
        sys.stdout.buffer.flush()
    except BrokenPipeError:
        raise
    except OSError as fault:
        raise StoreFault(f"Standard output cannot be written: {fault.strerror or fault}.") from fault


def check_outputs(outputs: Mapping[str, Path], survey_name: str) -> None:
    """Raise ``InputFault`` where two outputs are one file, or an output would overwrite the survey."""
    problems: list[InputProblem] = []
    taken = {} if survey_name == STANDARD_INPUT else {Path(survey_name).resolve(): "the survey itself"}
    for option, path in outputs.items():
        place = path.resolve()
        if place in taken:
            problems.append(InputProblem("", option, f"'{path}'", f"this is {taken[place]}; name another file"))
        elif path.is_dir():
            problems.append(InputProblem("", option, f"'{path}'", "this is a folder; name a file in it"))
        taken.setdefault(place, f"the file of {option}")
    if problems:
        raise InputFault(tuple(problems))
