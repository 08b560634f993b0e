"""What a part rule looks at, and how it says that something is wrong.

A rule is written once. Over the columns of a kind it says of every part whether it breaks the rule; over one part it
says the same, and the figures that it names become the facts of a finding.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from enum import StrEnum
from functools import cache, lru_cache
from typing import Any

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.limit import Jurisdiction, LimitId, RuleTables
from spoutline.model.part import Part
from spoutline.model.part_columns import Floats, Mask, OnePart, PartView
from spoutline.model.part_figures import value_at
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.declared.registry import RULES, RuleId
from spoutline.rules.verdicts import finding, yes_no

EVERYWHERE: Mask = np.asarray(np.True_)[()]
_NOT_STATED = "not_stated"


@frozen
class Shown:
    """A fact of a finding: a value that the rule knows, or a figure of the part under its path.

    ``dimension`` is None for a word. ``unknown`` is the word for a number that is not known; without one such a number
    is left out. ``place`` picks one of several words; an ``answer`` is shown as yes, no or not stated.
    """

    name: str
    value: Any = None
    path: str = ""
    dimension: Dimension | None = None
    unknown: str | None = None
    place: int | None = None
    answer: bool = False

    def of(self, part: Part) -> Quantity | Fact | None:
        """Return the fact for one part; None where there is nothing to show."""
        value: Any = value_at(part, self.path) if self.path else self.value
        if self.answer:
            return Fact(self.name, _NOT_STATED if value is None else yes_no(bool(value)))
        if self.dimension is None:
            return Fact(self.name, _words(value if self.place is None else value[self.place]))
        number = value.item() if isinstance(value, np.generic | np.ndarray) else value
        if number is None or math.isnan(number):
            return None if self.unknown is None else Fact(self.name, self.unknown)
        return Quantity(self.name, number, self.dimension)


def _words(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, frozenset):
        return ", ".join(sorted(value))
    return value if isinstance(value, str) else str(value)


@cache  # of what stands in the rules, so that a rule makes it once however often it looks
def figure(name: str, path: str, dimension: Dimension, unknown: str | None = None) -> Shown:
    """Return that a number of the part is shown, as it stands in the part."""
    return Shown(name, path=path, dimension=dimension, unknown=unknown)


def quantity(name: str, value: float | Floats | None, dimension: Dimension) -> Shown:
    """Return that a number in SI is shown; one for each part where it was worked out of columns."""
    return Shown(name, value, dimension=dimension)


@cache  # likewise
def words_of(name: str, path: str) -> Shown:
    """Return that a word, or several sorted, of the part is shown."""
    return Shown(name, path=path)


@lru_cache(maxsize=512, typed=True)  # words of the position too: few at a time
def word(name: str, value: str) -> Shown:
    """Return that a word is shown."""
    return Shown(name, value)


@frozen
class Breach:
    """Where a rule is broken: a truth value for each part looked at."""

    rule_id: RuleId
    where: Mask
    shown: tuple[Shown, ...]
    severity: Severity
    limits: tuple[LimitId, ...]


@frozen
class Look:
    """The parts of a kind, or one of them, in one place of the chain, with what the position asks of it."""

    part: PartView
    slot: Slot
    requirement: Requirement
    tables: RuleTables

    @property
    def jurisdiction(self) -> Jurisdiction:
        """The rule profile."""
        return self.tables.jurisdiction

    def limit(self, limit_id: LimitId) -> float:
        """Return a number of the profile; NaN, with which nothing compares, where it sets none."""
        value = self.tables.jurisdiction.optional_number(limit_id)
        return math.nan if value is None else value

    def broken(
        self,
        rule_id: RuleId,
        where: Mask,
        *shown: Shown,
        severity: Severity | None = None,
        limits: tuple[LimitId, ...] = (),
    ) -> Breach:
        """Return where parts break a rule, with what a finding of it shows."""
        return Breach(rule_id, where, shown, severity or RULES[rule_id].severity, limits)


PartRule = Callable[[Look], Iterator[Breach]]


def findings_of(
    part: Part, slot: Slot, requirement: Requirement, tables: RuleTables, rules: Iterable[PartRule]
) -> tuple[Finding, ...]:
    """Return the findings of ``rules`` about one part, in their order."""
    return tuple(each_finding(part, slot, requirement, tables, rules))


def each_finding(
    part: Part, slot: Slot, requirement: Requirement, tables: RuleTables, rules: Iterable[PartRule]
) -> Iterator[Finding]:
    """Yield the ``findings_of`` a part; a rule is asked when it is its turn."""
    look = Look(OnePart(part), slot, requirement, tables)
    yield from (finding_of(breach, part, tables) for rule in rules for breach in rule(look) if breach.where)


def finding_of(breach: Breach, part: Part, tables: RuleTables) -> Finding:
    """Return the finding that a part breaks a rule."""
    facts = (shown.of(part) for shown in breach.shown)
    found = finding(
        breach.rule_id,
        tables,
        SubjectKind.PART,
        part.number,
        *(fact for fact in facts if fact is not None),
        verdict=Verdict.BROKEN,
        severity=breach.severity,
        limits=breach.limits,
    )
    return replace(found, part=part.ref)


def outside(value: Floats, low: float | None, high: float | None, tolerance: float = 1e-9) -> Mask:
    """Say where a figure lies outside an interval, ends included; None leaves a side open, unknown lies outside."""
    above: Mask = value >= (-math.inf if low is None else low - tolerance)
    below: Mask = value <= (math.inf if high is None else high + tolerance)
    return ~(above & below)


def members_with(enum: Iterable[StrEnum], holds: Callable[[Any], bool]) -> Mask:
    """Return a table by code that says for which words of an enumeration something holds, and not for none."""
    table = np.zeros(256, np.bool_)
    table[: len(list(enum))] = [holds(member) for member in enum]
    return table
