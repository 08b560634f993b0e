"""Each rule declared once: title, severity, requirement line, limits read, facts carried, source."""

from __future__ import annotations

from spoutline.model.finding import Severity
from spoutline.model.requirement import RequirementId
from spoutline.rules.declared.derivation import DERIVATION_RULES
from spoutline.rules.declared.part import PART_RULES
from spoutline.rules.declared.position import POSITION_RULES
from spoutline.rules.declared.rule import Rule
from spoutline.rules.declared.rule_ids import AccessoryReason, RuleId

__all__ = ["RULES", "AccessoryReason", "Rule", "RuleId", "rule_of", "rules_by_requirement"]

RULES: dict[RuleId, Rule] = {rule.id: rule for rule in (*DERIVATION_RULES, *POSITION_RULES, *PART_RULES)}


def rule_of(rule_id: str) -> Rule:
    """Return the declaration of ``rule_id``; ``ValueError`` for a name that is no rule."""
    return RULES[RuleId(rule_id)]


def rules_by_requirement(requirement: RequirementId, *, severity: Severity | None = None) -> tuple[Rule, ...]:
    """Return the rules that serve a requirement line, in order of declaration, of one severity where asked."""
    return tuple(
        rule for rule in RULES.values() if rule.requirement is requirement and severity in (None, rule.severity)
    )
