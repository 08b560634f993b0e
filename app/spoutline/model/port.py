"""The ends of a part: thread standard, nominal size, gender and path."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from spoutline.model.nominal_size import NominalSize

MADE_UP_IN = "inside"  # stands before the joint of an article where a port is written in words


class ThreadStandard(StrEnum):
    """Thread standards met on hanging hardware."""

    NPT = "NPT"  # ASME B1.20.1, taper 60 degrees
    G = "G"  # ISO 228-1, parallel 55 degrees
    M = "M"  # metric, vacuum-assist coaxial
    UN = "UN"  # unified, balance coaxial


class Gender(StrEnum):
    """Which half of the thread the port carries."""

    MALE = "male"
    FEMALE = "female"


class FlowPath(StrEnum):
    """What passes through the port: one liquid bore, or liquid and vapour side by side."""

    SINGLE = "single"
    BALANCE = "balance"
    VACUUM_ASSIST = "vacuum_assist"


@dataclass(frozen=True, slots=True, order=True)
class Port:
    """One end of a part; ``size`` is the nominal size as the thread standard writes it (``3/4``, ``34x1.5``).

    ``made_up_in`` names the joint at this end where it was made up inside an article before it was sold: maker of the
    article and number of the part below the joint, so that joints of two articles, or two of one article, are never
    taken for each other. It is empty where the joint is made at the station. Nobody undoes a joint inside an article:
    nothing else can go there.
    """

    thread: ThreadStandard
    size: NominalSize
    gender: Gender
    path: FlowPath
    made_up_in: str = ""

    def __str__(self) -> str:
        own = f"{self.thread} {self.size} {self.gender} {self.path}"
        return f"{own} {MADE_UP_IN} {self.made_up_in}" if self.made_up_in else own


class Seal(StrEnum):
    """How a joint of this thread is made tight."""

    SEALANT = "sealant"  # on the taper thread
    O_RING = "o_ring"  # in the port; the thread stays dry
    FLAT_GASKET = "flat_gasket"
    MADE_UP = "made_up"  # inside an article, before it was sold: nobody makes it at the station


def seal_of(port: Port) -> Seal:
    """Return how a joint at this port is sealed.

    NPT is tight with sealant on the thread (ASME B1.20.1 clause 3.1); G and the coaxial threads seal on a gasket or
    O-ring and must stay free of sealant (ISO 228-1 scope: joints not made on the thread).
    """
    if port.made_up_in:
        return Seal.MADE_UP
    if port.thread is ThreadStandard.NPT:
        return Seal.SEALANT
    return Seal.FLAT_GASKET if port.thread is ThreadStandard.G else Seal.O_RING
