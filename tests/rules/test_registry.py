"""The declarations of the rules hold together."""

from __future__ import annotations

import pytest

from spoutline.model.limit import LimitId
from spoutline.model.requirement import RequirementId
from spoutline.rules.declared.registry import RULES, RuleId, rule_of


def test_every_rule_is_declared_once_with_source_and_facts() -> None:
    assert set(RULES) == set(RuleId)
    for rule_id, rule in RULES.items():
        assert rule.id is rule_id
        assert rule.source
        assert rule.facts
        assert len(set(rule.limits)) == len(rule.limits)


def test_every_requirement_line_has_the_rule_that_derives_it() -> None:
    for requirement in RequirementId:
        assert rule_of(f"asks_{requirement}").requirement is requirement


def test_every_limit_row_is_read_by_some_rule() -> None:
    read = {limit for rule in RULES.values() for limit in rule.limits}
    assert set(LimitId) - read == set()


def test_a_name_that_is_no_rule_is_refused() -> None:
    with pytest.raises(ValueError, match="no_such_rule"):
        rule_of("no_such_rule")
