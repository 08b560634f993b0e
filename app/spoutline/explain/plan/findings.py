"""Findings in words."""

from __future__ import annotations

from spoutline.explain.plan.texts import FindingText
from spoutline.explain.plan.words import Words
from spoutline.model.finding import Finding, SubjectKind, Verdict


def finding_text(finding: Finding, words: Words) -> FindingText:
    """Return a finding as title, sentence with its figures in parentheses, subject and source."""
    phrase = words.phrases.rule(finding.rule_id)
    held = f"{phrase.title}{words.writing.colon} {words.word(finding.verdict)}"
    opening = held if finding.verdict is Verdict.HOLDS else phrase.says
    return FindingText(
        title=phrase.title,
        sentence=words.with_figures(opening, finding.facts),
        subject=_subject(finding),
        severity=finding.severity,
        severity_word=words.word(finding.severity),
        verdict=finding.verdict,
        verdict_word=words.word(finding.verdict),
        source=words.source_told(finding.source),
    )


def by_severity(findings: tuple[Finding, ...], words: Words) -> tuple[FindingText, ...]:
    """Return findings in words, the gravest first, otherwise in the order given."""
    return tuple(finding_text(finding, words) for finding in words.gravest_first(findings))


def _subject(finding: Finding) -> str:
    if finding.subject_kind is not SubjectKind.JOINT:
        return finding.subject
    return finding.subject.removeprefix(" > ").strip() or finding.subject
