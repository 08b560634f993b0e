"""A set with everything that was found about it: joints, findings, checks."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.finding import Finding, Severity
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet, SetLink
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.sets.pool import Pool
from spoutline.planning.sets.usual_prices import UsualPrices
from spoutline.rules.chain.joints import joint_findings, joints_of
from spoutline.rules.chain.order import set_findings
from spoutline.rules.chain.set_view import SetViews
from spoutline.rules.checks.run import checks_of
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.parts.part_rules import judge_part

_ORDER = list(Severity)
_OF_THE_SALE = frozenset({RequirementId.STATUS, RequirementId.PRICE, RequirementId.LEAD_TIME})


class SetJudge:
    """Judges sets for one requirement; a set that was judged before is not judged again.

    ``usual`` tells what parts usually cost; without it no price is asked about. ``pool``, of the same requirement and
    tables, tells which parts break no rule, so that these are not judged one by one.
    """

    def __init__(
        self,
        requirement: Requirement,
        tables: RuleTables,
        usual: UsualPrices | None = None,
        pool: Pool | None = None,
    ) -> None:
        self.requirement = requirement
        self.tables = tables
        self._usual = usual
        self._pool = pool
        self._views = SetViews(requirement, tables)
        self._known: dict[tuple[tuple[PartRef, bool], ...], JudgedSet] = {}
        self._parts: dict[tuple[int, Slot], tuple[Part, tuple[Finding, ...]]] = {}  # with the part, which so lives on

    def judged(self, hanging_set: HangingSet) -> JudgedSet:
        """Return the set with its joints, findings (gravest first) and checks."""
        known = self._known.get(hanging_set.identity)
        if known is None:
            known = self._judge(hanging_set)
            self._known[hanging_set.identity] = known
        return known

    def _of_part(self, link: SetLink) -> Iterator[Finding]:
        """Yield what the part's own rules find; one that hangs already need not be on sale any more."""
        for found in self._found(link.part, link.slot):
            if not (link.kept and rule_of(found.rule_id).requirement in _OF_THE_SALE):
                yield found

    def _found(self, part: Part, slot: Slot) -> tuple[Finding, ...]:
        """Return what the rules find of a part in a slot; the same part is not judged again for another set."""
        known = self._parts.get((id(part), slot))
        if known is None:
            is_clean = self._pool is not None and self._pool.breaks_nothing(slot, part.ref)
            known = part, () if is_clean else judge_part(part, slot, self.requirement, self.tables)
            self._parts[id(part), slot] = known
        return known[1]

    def _judge(self, hanging_set: HangingSet) -> JudgedSet:
        requirement, tables = self.requirement, self.tables
        links = hanging_set.links
        findings = [
            *requirement.findings,
            *(found for link in links for found in self._of_part(link)),
            *joint_findings(links, requirement.outlet, tables),
            *set_findings(hanging_set, requirement, tables),
            *(self._usual.of_set(hanging_set, tables) if self._usual else ()),
        ]
        findings.sort(key=lambda finding: (_ORDER.index(finding.severity), finding.rule_id, finding.subject))
        return JudgedSet(
            hanging_set=hanging_set,
            joints=joints_of(links, requirement.outlet),
            findings=tuple(findings),
            checks=checks_of(self._views.of(hanging_set)),
        )
