"""Results in words as tree rows: what is asked, checks with worked lines, findings."""

from __future__ import annotations

from spoutline.explain.plan.assumed import own_findings
from spoutline.explain.plan.story import Story
from spoutline.gui.models.marks import tone_of_check, tone_of_finding, tone_of_severity
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.check import Check, WorkedLine
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.funnel import PlaceFunnel, SetReasons
from spoutline.model.plan import PositionPlan
from spoutline.model.requirement import RequirementLine

_GRAVEST_FIRST = (Severity.MUST, Severity.SHOULD, Severity.ADVICE)


def check_titles() -> tuple[str, ...]:
    """Return the column titles of checks."""
    return tr("Check"), tr("Value"), tr("Limit"), tr("Margin"), tr("Outcome")


def check_nodes(checks: tuple[Check, ...], story: Story) -> tuple[Node, ...]:
    """Return one row per check; below it the worked lines, the figures used and the sources of the limit."""
    return tuple(_check_node(check, story) for check in checks)


def _check_node(check: Check, story: Story) -> Node:
    text = story.check(check)
    below = [Node(cells=(text.remark,), spans=True)] if text.remark else []
    below.extend(_worked_node(line, story) for line in check.lines)
    if not check.lines:  # the lines carry the figures already
        below.extend(Node(cells=(fact,), spans=True) for fact in text.facts)
    below.extend(Node(cells=(tr("Limit from: {source}").format(source=source),), spans=True) for source in text.sources)
    return Node(
        cells=(text.title, text.value, text.limit, text.margin, text.verdict),
        record=check.id,
        children=tuple(below),
        tone=tone_of_check(check),
        hint=f"{text.title}{story.writing.colon} {text.verdict} ({text.severity_word})",
    )


def _worked_node(line: WorkedLine, story: Story) -> Node:
    text = story.worked_line(line)
    below = tuple(Node(cells=(part,), spans=True) for part in (text.inputs, text.note, text.source) if part)
    return Node(cells=(f"{text.formula}   →   {text.result}",), children=below, spans=True, hint=text.source)


def requirement_titles() -> tuple[str, ...]:
    """Return the column titles of requirement lines."""
    return tr("What is asked"), tr("Answer"), tr("Weight")


def requirement_nodes(plan: PositionPlan, story: Story) -> tuple[Node, ...]:
    """Return one row per requirement line; below it the rule and its source."""
    lines: tuple[RequirementLine, ...] = ()
    if plan.requirement is not None:
        lines = plan.requirement.lines
    elif plan.refusal is not None:
        lines = plan.refusal.lines
    nodes = []
    for line in lines:
        text = story.requirement_line(line)
        below = tuple(Node(cells=(part,), spans=True) for part in (text.reason, text.source) if part)
        nodes.append(
            Node(cells=(text.title, text.answer, text.severity_word), record=line.id, children=below, hint=text.reason)
        )
    return tuple(nodes)


def finding_titles() -> tuple[str, ...]:
    """Return the column titles of findings."""
    return tr("Finding"), tr("About"), tr("Source")


def finding_nodes(plan: PositionPlan, story: Story) -> tuple[Node, ...]:
    """Return the findings of a plan grouped by weight, the gravest first, questions within their group."""
    return grouped_findings(own_findings(plan.findings), story)


def grouped_findings(findings: tuple[Finding, ...], story: Story) -> tuple[Node, ...]:
    """Return findings grouped by weight, the gravest first; groups without findings are left out."""
    groups = []
    for severity in _GRAVEST_FIRST:
        rows = tuple(_finding_node(finding, story) for finding in findings if finding.severity is severity)
        if rows:
            broken = any(
                finding.severity is severity and finding.verdict in (Verdict.BROKEN, Verdict.QUESTION)
                for finding in findings
            )
            groups.append(
                Node(
                    cells=(f"{story.title(severity)}{story.writing.colon} {story.severity_note(severity)}",),
                    children=rows,
                    tone=tone_of_severity(severity) if broken else Tone.GOOD,
                    is_head=True,
                    spans=True,
                )
            )
    return tuple(groups)


def _finding_node(finding: Finding, story: Story) -> Node:
    text = story.finding(finding)
    return Node(
        cells=(text.sentence, text.subject, text.source),
        record=finding,
        tone=tone_of_finding(finding),
        hint=f"{text.sentence}\n{text.source}",
    )


def reason_titles() -> tuple[str, ...]:
    """Return the column titles of the reasons of a set."""
    return tr("Place, and what takes parts out of it"), tr("Parts")


def reason_nodes(reasons: SetReasons, story: Story) -> tuple[Node, ...]:
    """Return one row per place; below it the counts from the catalog to what was left, then what decided."""
    return tuple(_place_node(place, reasons.hanging_set.currency, story) for place in reasons.places)


def _place_node(place: PlaceFunnel, currency: str, story: Story) -> Node:
    told = story.place_reasons(place, currency)
    counts = (
        Node(cells=(one.text, f"\N{MINUS SIGN}{one.count}" if one.taken else str(one.count))) for one in told.counts
    )
    sentences = (Node(cells=(sentence,), spans=True) for sentence in told.sentences)
    return Node(cells=(told.title, ""), record=place.slot, children=(*counts, *sentences), is_head=True)
