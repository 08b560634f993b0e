"""What a part rule looks at, and how it says that something is wrong."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.limit import Jurisdiction, LimitId, RuleTables
from spoutline.model.part import Part
from spoutline.model.quantity import Fact, Quantity
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.verdicts import finding


@dataclass(frozen=True, slots=True)
class Candidate:
    """One part in one place of the chain, with what the position asks of it."""

    part: Part
    slot: Slot
    requirement: Requirement
    tables: RuleTables

    @property
    def jurisdiction(self) -> Jurisdiction:
        """The rule profile."""
        return self.tables.jurisdiction

    def broken(
        self,
        rule_id: RuleId,
        *facts: Quantity | Fact,
        severity: Severity | None = None,
        limits: tuple[LimitId, ...] = (),
    ) -> Finding:
        """Return the finding that the part breaks a rule."""
        found = finding(
            rule_id,
            self.tables,
            SubjectKind.PART,
            self.part.number,
            *facts,
            verdict=Verdict.BROKEN,
            severity=severity,
            limits=limits,
        )
        return replace(found, part=self.part.ref)


PartRule = Callable[[Candidate], Iterator[Finding]]
