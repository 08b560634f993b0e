"""Exit codes of the command line; scripts rely on them."""

from __future__ import annotations

from enum import IntEnum


class ExitCode(IntEnum):
    """What a command reports to the shell."""

    FITS = 0  # done; every position has a set without a broken must
    DOES_NOT_FIT = 1  # done; some position has no such set, or the part asked about breaks a must
    BAD_INPUT = 2  # nothing was written; the message names the field
    DEFECT = 3  # a fault of the program, noted in a file
    INTERRUPTED = 130  # stopped from the keyboard (128 + SIGINT, the shells' convention)
