"""Which mark a plan, check or finding gets."""

from __future__ import annotations

from spoutline.explain.plan.assumed import own_findings
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.answered import is_surveyed
from spoutline.model.check import Check, Outcome
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.plan import JudgedSet, PlanStatus, PositionPlan
from spoutline.model.survey import Position

_WORDS = {
    Tone.GOOD: "in order",
    Tone.CAUTION: "caution",
    Tone.BAD: "not in order",
    Tone.QUESTION: "a question is open",
    Tone.NOTE: "a note",
    Tone.WORKING: "being worked out",
    Tone.OPEN: "not answered yet",
}


def told_with_mark(text: str, tone: Tone | None, hint: str = "") -> str:
    """Return what a screen reader says of a cell: its text and what its mark says; ``hint`` where that says more."""
    if tone is None:
        return text
    if hint:
        return hint if hint.startswith(text) else f"{text}: {hint}"
    return f"{text}: {tr(_WORDS[Tone(tone)])}" if text else tr(_WORDS[Tone(tone)])


def tone_of_position(position: Position | None, plan: PositionPlan | None) -> Tone:
    """Return the mark of a planned position; whatever its plan, one that nobody surveyed is open."""
    if position is not None and not is_surveyed(position):
        return Tone.OPEN
    return tone_of_plan(plan)


def tone_of_plan(plan: PositionPlan | None) -> Tone:
    """Return the mark of a position; ``WORKING`` while there is no plan yet.

    What is asked of the station as a whole marks none of its positions.
    """
    if plan is None:
        return Tone.WORKING
    if plan.status is not PlanStatus.FITS or plan.chosen is None:
        return Tone.BAD
    tones = {tone_of_check(check) for check in plan.chosen.checks} | {
        tone_of_finding(finding) for finding in own_findings(plan.findings)
    }
    for tone in (Tone.BAD, Tone.QUESTION, Tone.CAUTION):
        if tone in tones:
            return tone
    return Tone.GOOD


def tone_of_check(check: Check) -> Tone:
    """Return the mark of a check; one that cannot be shown never counts as passed."""
    match check.outcome:
        case Outcome.PASSES:
            return Tone.GOOD
        case Outcome.INFORMATION:
            return Tone.NOTE
        case Outcome.UNKNOWN:
            return Tone.QUESTION
        case Outcome.FAILS:
            return tone_of_severity(check.severity)


def tone_of_finding(finding: Finding) -> Tone:
    """Return the mark of a finding."""
    match finding.verdict:
        case Verdict.HOLDS:
            return Tone.GOOD
        case Verdict.NOTE:
            return Tone.NOTE
        case Verdict.QUESTION:
            return Tone.QUESTION
        case Verdict.BROKEN:
            return tone_of_severity(finding.severity)


def tone_of_severity(severity: Severity) -> Tone:
    """Return the mark of a broken rule of this weight."""
    return {Severity.MUST: Tone.BAD, Severity.SHOULD: Tone.CAUTION, Severity.ADVICE: Tone.NOTE}[severity]


def lead_time_days(judged: JudgedSet) -> int:
    """Return the lead time of a set: that of its slowest part."""
    return max((link.part.lead_time_days for link in judged.hanging_set.links), default=0)
