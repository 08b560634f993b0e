"""What is declared about a rule."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId
from spoutline.model.requirement import RequirementId
from spoutline.rules.declared.rule_ids import RuleId


@frozen(kw_only=True)
class Rule:
    """One testable statement.

    ``severity`` is the greatest that the rule gives; bonding rules give less for a liquid that does not burn.
    ``limits`` are the rows it may read, ``facts`` the names of the values its findings carry, in order. ``source`` is
    what the logic rests on; the figures' own sources stand in the limit rows.
    """

    id: RuleId
    severity: Severity
    requirement: RequirementId
    source: str
    limits: tuple[LimitId, ...] = ()
    facts: tuple[str, ...] = ()


def declared(
    rule_id: RuleId,
    requirement: RequirementId,
    source: str,
    *limits: LimitId,
    facts: tuple[str, ...],
    severity: Severity = Severity.MUST,
) -> Rule:
    """Return a rule as the tables declare it; a must unless said otherwise."""
    return Rule(
        id=rule_id,
        severity=severity,
        requirement=requirement,
        source=source,
        limits=limits,
        facts=facts,
    )
