"""Findings and requirement lines put together with their limits and sources, the same way everywhere."""

from __future__ import annotations

from dataclasses import field

from spoutline.frozen import frozen
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.limit import Limit, LimitId, LimitStatus, RuleTables
from spoutline.model.quantity import Fact, Quantity
from spoutline.model.requirement import RequirementLine
from spoutline.model.survey import Position, Site
from spoutline.rules.declared.registry import RULES, RuleId


def limit_source(limit: Limit) -> str:
    """Return where a limit row comes from, with its status unless the text itself was read.

    Parameters: ``limit``, the row. Result: source, clause and edition in one line.
    """
    clause = f", {limit.clause}" if limit.clause else ""
    edition = f" ({limit.edition})" if limit.edition else ""
    status = "" if limit.status is LimitStatus.VERIFIED else f" [{limit.status}]"
    return f"{limit.source}{clause}{edition}{status}"


def source_of(rule_id: RuleId, limit_ids: tuple[LimitId, ...], tables: RuleTables) -> str:
    """Return the sources of the limit rows used, or of the rule's own logic where it uses none.

    Parameters: ``rule_id``; ``limit_ids``, the rows used; ``tables``, the profile. Result: one line, no source twice.
    """
    sources = [limit_source(tables.jurisdiction.limit(limit_id)) for limit_id in limit_ids]
    return "; ".join(dict.fromkeys(sources)) or RULES[rule_id].source


def finding(
    rule_id: RuleId,
    tables: RuleTables,
    subject_kind: SubjectKind,
    subject: str,
    *facts: Quantity | Fact,
    verdict: Verdict = Verdict.BROKEN,
    severity: Severity | None = None,
    limits: tuple[LimitId, ...] = (),
) -> Finding:
    """Return a verdict of a rule with the facts and limit rows that it used.

    Parameters: ``subject`` is a position label, part number, joint or set; ``facts`` come in the order that the rule
    declares; ``severity`` defaults to the rule's own; ``limits`` are the rows that decided.
    """
    return Finding(
        rule_id=rule_id,
        severity=severity or RULES[rule_id].severity,
        verdict=verdict,
        subject_kind=subject_kind,
        subject=subject,
        facts=facts,
        limit_ids=limits,
        source=source_of(rule_id, limits, tables),
    )


def yes_no(value: bool) -> str:
    """Return the word that a fact carries for a truth value; the words shown come from the phrasebook."""
    return "yes" if value else "no"


@frozen
class Derivation:
    """What one derivation works on, and the lines and findings that it has gathered so far."""

    position: Position
    site: Site
    tables: RuleTables
    lines: list[RequirementLine] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)

    def line(
        self,
        rule_id: RuleId,
        *facts: Quantity | Fact,
        severity: Severity | None = None,
        limits: tuple[LimitId, ...] = (),
    ) -> None:
        """Add the requirement line that ``rule_id`` derives, with its facts and the limit rows that decided."""
        rule = RULES[rule_id]
        self.lines.append(
            RequirementLine(
                id=rule.requirement,
                severity=severity or rule.severity,
                rule_id=rule_id,
                facts=facts,
                limit_ids=limits,
                source=source_of(rule_id, limits, self.tables),
            )
        )

    def find(
        self,
        rule_id: RuleId,
        *facts: Quantity | Fact,
        verdict: Verdict,
        severity: Severity | None = None,
        limits: tuple[LimitId, ...] = (),
    ) -> Finding:
        """Add, and return, a finding about the position."""
        found = finding(
            rule_id,
            self.tables,
            SubjectKind.POSITION,
            self.position.label,
            *facts,
            verdict=verdict,
            severity=severity,
            limits=limits,
        )
        self.findings.append(found)
        return found
