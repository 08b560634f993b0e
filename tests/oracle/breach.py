"""What the inspector writes down."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.model.finding import Severity

MUST = Severity.MUST
SHOULD = Severity.SHOULD


@dataclass(frozen=True, slots=True)
class Breach:
    """One violated requirement: which, how grave, about what, and why.

    ``near`` marks a figure so close to its limit that two honest calculations may disagree.
    """

    requirement: str
    severity: Severity
    subject: str
    text: str
    near: bool = False


def is_near(value: float, limit: float, band: float) -> bool:
    """Whether ``value`` lies within the relative ``band`` of ``limit``."""
    return abs(value - limit) <= band * max(abs(limit), 1e-12)


@dataclass(frozen=True, slots=True)
class Inspection:
    """All breaches of a set, and the musts and shoulds met or missed by less than the calculation's own doubt."""

    breaches: tuple[Breach, ...]
    doubtful: frozenset[str]
    doubtful_shoulds: frozenset[str]

    @property
    def musts(self) -> tuple[Breach, ...]:
        """Breaches that forbid the set."""
        return tuple(b for b in self.breaches if b.severity is MUST)

    @property
    def accepted(self) -> bool:
        """Whether no must is broken."""
        return not self.musts

    @property
    def clean(self) -> bool:
        """Whether no must and no should is broken."""
        return not self.breaches

    def broken(self) -> frozenset[str]:
        """Names of the broken musts."""
        return frozenset(b.requirement for b in self.musts)
