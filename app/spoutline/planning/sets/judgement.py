"""A set with everything that was found about it: joints, findings, checks."""

from __future__ import annotations

from spoutline.model.finding import Severity
from spoutline.model.limit import RuleTables
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.requirement import Requirement
from spoutline.rules.chain.joints import joint_findings, joints_of
from spoutline.rules.chain.order import set_findings
from spoutline.rules.checks.run import checks_for
from spoutline.rules.parts.part_rules import judge_part

_ORDER = list(Severity)


class SetJudge:
    """Judges sets for one requirement; a set that was judged before is not judged again."""

    def __init__(self, requirement: Requirement, tables: RuleTables) -> None:
        self.requirement = requirement
        self.tables = tables
        self._known: dict[tuple[str, ...], JudgedSet] = {}

    def judged(self, hanging_set: HangingSet) -> JudgedSet:
        """Return the set with its joints, findings (gravest first) and checks."""
        known = self._known.get(hanging_set.numbers)
        if known is None:
            known = self._judge(hanging_set)
            self._known[hanging_set.numbers] = known
        return known

    def _judge(self, hanging_set: HangingSet) -> JudgedSet:
        requirement, tables = self.requirement, self.tables
        links = hanging_set.links
        findings = [
            *requirement.findings,
            *(found for link in links for found in judge_part(link.part, link.slot, requirement, tables)),
            *joint_findings(links, requirement.outlet, tables),
            *set_findings(hanging_set, requirement, tables),
        ]
        findings.sort(key=lambda finding: (_ORDER.index(finding.severity), finding.rule_id, finding.subject))
        return JudgedSet(
            hanging_set=hanging_set,
            joints=joints_of(links, requirement.outlet),
            findings=tuple(findings),
            checks=checks_for(hanging_set, requirement, tables),
        )
