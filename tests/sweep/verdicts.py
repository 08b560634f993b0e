"""The program's verdict and the inspector's on the same chain, side by side."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from oracle.breach import MUST
from oracle.need import Need, need_of
from oracle.part_inspection import inspect_part
from oracle.set_inspection import inspect_set
from spoutline.model.finding import Severity, SubjectKind, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Requirement
from spoutline.planning.sets.judgement import SetJudge
from spoutline.rules.chain.joints import joint_findings
from spoutline.rules.parts.part_rules import judge_part


@dataclass(frozen=True, slots=True)
class Disagreement:
    """One side accepts what the other turns down."""

    swapped_in: str
    slot: str
    inspector: tuple[str, ...]
    program: tuple[str, ...]

    def __str__(self) -> str:
        inspector = "; ".join(self.inspector) or "accepts"
        return (
            f"{self.swapped_in} as {self.slot}: inspector {inspector}; program {'; '.join(self.program) or 'accepts'}"
        )


def swaps(links: Sequence[SetLink], parts: Sequence[Part]) -> Iterator[tuple[SetLink, tuple[SetLink, ...]]]:
    """Yield every chain in which one part is replaced by another of its kind."""
    for index, link in enumerate(links):
        for part in parts:
            if part.kind is link.part.kind and part.number != link.part.number:
                changed = SetLink(slot=link.slot, part=part)
                yield changed, (*links[:index], changed, *links[index + 1 :])


def disagreements(
    requirement: Requirement, tables: RuleTables, links: Sequence[SetLink], parts: Sequence[Part]
) -> tuple[list[Disagreement], int]:
    """Judge every swap twice and return where the verdicts differ beyond doubt, and how many swaps were judged."""
    judge = SetJudge(requirement, tables)
    need = need_of(requirement.position, requirement.site)
    found, judged = [], 0
    for changed, chain in swaps(links, parts):
        judged += 1
        differing = _compare(judge, need, changed, chain)
        if differing is not None:
            found.append(differing)
    return found, judged


def _compare(judge: SetJudge, need: Need, changed: SetLink, chain: tuple[SetLink, ...]) -> Disagreement | None:
    if _both_turn_down_the_part(judge, need, changed):
        return None
    inspection = inspect_set(need.position, need.site, chain)
    program = program_musts(judge, chain)
    if inspection.accepted == (not program) or (inspection.accepted and inspection.doubtful):
        return None
    inspector = tuple(f"{b.requirement}: {b.text}" for b in inspection.musts)
    return Disagreement(changed.part.number, changed.slot.value, inspector, program)


def _both_turn_down_the_part(judge: SetJudge, need: Need, changed: SetLink) -> bool:
    if not any(b.severity is MUST for b in inspect_part(changed.part, changed.slot, need)):
        return False
    findings = judge_part(changed.part, changed.slot, judge.requirement, judge.tables)
    return any(f.severity is Severity.MUST and f.verdict is Verdict.BROKEN for f in findings)


def program_musts(judge: SetJudge, chain: tuple[SetLink, ...]) -> tuple[str, ...]:
    """Return the musts that the program finds broken on a chain, position-wide findings left out."""
    requirement, tables, currency = judge.requirement, judge.tables, judge.requirement.site.currency
    price = sum(link.part.price_minor(currency) or 0 for link in chain)
    judged = judge.judged(HangingSet(links=chain, price_minor=price, currency=currency))
    of_parts = (f for link in chain for f in judge_part(link.part, link.slot, requirement, tables))
    of_joints = joint_findings(chain, requirement.outlet, tables)
    broken = {
        f"{f.rule_id} ({f.subject})"
        for f in (*of_parts, *of_joints, *judged.findings)
        if f.severity is Severity.MUST and f.verdict is Verdict.BROKEN and f.subject_kind is not SubjectKind.POSITION
    }
    broken |= {f"{c.id} ({c.value})" for c in judged.checks if c.severity is Severity.MUST and not c.passes}
    return tuple(sorted(broken))
