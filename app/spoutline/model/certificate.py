"""What was measured at the hoses of a dispenser in one test: readings with limits, instruments, days and people."""

from __future__ import annotations

from datetime import date
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.record import JudgedEntry


class CertifiedTest(StrEnum):
    """The tests of which a certificate is made."""

    BOND = "bond"  # resistance from the outlet to the spout tip
    LEAK = "leak"  # at working pressure, the nozzle shut


@frozen(kw_only=True)
class Measurement:
    """What was measured at a position last.

    ``is_of_today`` tells whether the survey is as it was then; an inspection names no survey, and is.
    """

    position: str
    judged: JudgedEntry
    done_on: date
    done_by: str
    licence: str
    instruments: str
    is_of_today: bool


@frozen(kw_only=True)
class Certificate:
    """One test at the positions of one dispenser, in the order of the survey."""

    test: CertifiedTest
    dispenser: str
    rows: tuple[Measurement, ...]
