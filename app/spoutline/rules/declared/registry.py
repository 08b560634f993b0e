"""Each rule declared once: severity, requirement line, limits read, facts carried, source."""

from __future__ import annotations

from spoutline.rules.declared.chain import JOINT_AND_SET_RULES
from spoutline.rules.declared.derivation import DERIVATION_RULES
from spoutline.rules.declared.part import PART_RULES
from spoutline.rules.declared.position import POSITION_RULES
from spoutline.rules.declared.rule import Rule
from spoutline.rules.declared.rule_ids import AccessoryReason, RuleId

__all__ = ["RULES", "AccessoryReason", "Rule", "RuleId", "rule_of"]

RULES: dict[RuleId, Rule] = {
    rule.id: rule for rule in (*DERIVATION_RULES, *POSITION_RULES, *PART_RULES, *JOINT_AND_SET_RULES)
}


def rule_of(rule_id: str) -> Rule:
    """Return the declaration of ``rule_id``; ``ValueError`` for a name that is no rule."""
    return RULES[RuleId(rule_id)]
