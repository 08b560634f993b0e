"""A site plan as plain text for a terminal: what is asked, what was chosen, what was found, what was checked."""

from __future__ import annotations

import textwrap
import unicodedata
from collections.abc import Iterable, Iterator, Sequence

from spoutline.explain.story import Story
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.plan import JudgedSet, PositionPlan, SitePlan

_WIDTH = 110
_INDENT = "    "


def site_text(site_plan: SitePlan, story: Story) -> str:
    """Return the plan of a whole site as text that ends with a line break."""
    site = site_plan.survey.site
    lines = [
        f"{site.name}",
        f"Jurisdiction: {site_plan.jurisdiction.title} ({site_plan.jurisdiction.id}), "
        f"edition {site_plan.jurisdiction.edition}",
        f"Catalogue: edition {site_plan.provenance.catalogue_edition}",
    ]
    for plan in site_plan.positions:
        lines += ["", *_position(plan, site.currency, story)]
    lines += ["", *_site_sum(site_plan, story), "", *_wrapped(story.phrases.text["advice"], "")]
    return "\n".join(printable(line).rstrip() for line in lines) + "\n"


def printable(text: str) -> str:
    """Return ``text`` as one line without control characters: a name in a survey must not steer a terminal."""
    return "".join(" " if unicodedata.category(character) in ("Cc", "Zl", "Zp") else character for character in text)


def _site_sum(site_plan: SitePlan, story: Story) -> Iterator[str]:
    kept = [plan for plan in site_plan.positions if plan.keeps_every_must]
    total = sum(plan.chosen.hanging_set.price_minor for plan in kept if plan.chosen)
    count = len(site_plan.positions)
    noun = "position has" if count == 1 else "positions have"
    yield f"{len(kept)} of {count} {noun} a set that keeps every must."
    if kept:
        yield f"List price of these sets without accessories: {story.money(total, site_plan.survey.site.currency)}"


def _position(plan: PositionPlan, currency: str, story: Story) -> Iterator[str]:
    head = f"Position {plan.position.label} (dispenser {plan.position.dispenser}): {story.word(plan.status)}"
    yield head
    yield "=" * min(len(head), _WIDTH)
    if plan.refusal:
        yield from _refusal(plan, story)
    if plan.requirement:
        yield "  What is asked"
        rows = []
        for line in plan.requirement.lines:
            text = story.requirement_line(line)
            rows.append((text.severity_word, text.title, f"{text.answer} [{text.source}]"))
        yield from _table(rows)
        yield from _findings("  To settle on site", plan.requirement.findings, story)
    if plan.conflict:
        yield from _conflict(plan, currency, story)
    if plan.chosen:
        yield from _chosen(plan, plan.chosen, currency, story)


def _refusal(plan: PositionPlan, story: Story) -> Iterator[str]:
    if plan.refusal is None:
        return
    for sentence in story.refusal(plan.refusal):
        yield from _wrapped(sentence, "  ")
    if plan.refusal.ways_out:
        yield "  Ways out"
        for way in plan.refusal.ways_out:
            yield from _wrapped(f"- {_capital(story.way_out(way))}", _INDENT)


def _conflict(plan: PositionPlan, currency: str, story: Story) -> Iterator[str]:
    if plan.conflict is None:
        return
    yield "  Why nothing fits"
    for sentence in story.conflict(plan.conflict):
        yield from _wrapped(sentence, _INDENT)
    if plan.conflict.relaxations:
        yield "  What would free a set"
        for relaxation in plan.conflict.relaxations:
            yield from _wrapped(f"- {story.relaxation(relaxation, currency)}", _INDENT)


def _chosen(plan: PositionPlan, chosen: JudgedSet, currency: str, story: Story) -> Iterator[str]:
    yield "  Chosen set, dispenser first"
    rows = [
        (
            story.title(link.slot),
            link.part.number,
            link.part.name,
            story.money(link.part.price_minor(currency), currency),
            story.days(link.part.lead_time_days),
        )
        for link in chosen.hanging_set.links
    ]
    yield from _table(rows)
    yield f"{_INDENT}List price of the set: {story.money(chosen.hanging_set.price_minor, currency)}"
    if plan.accessories:
        yield "  Goes with it"
        yield from _table(
            [
                (f"{line.quantity} x", line.part.number, line.part.name, story.accessory_reason(line.reason))
                for line in plan.accessories
            ]
        )
    yield from _findings("  Findings", chosen.findings, story)
    if chosen.checks:
        yield "  Checks"
        yield from _checks(chosen, story)
    if plan.alternatives:
        yield "  Alternatives"
        for alternative in plan.alternatives:
            yield from _wrapped(f"- {story.alternative(alternative, chosen.hanging_set)}", _INDENT)


def _checks(chosen: JudgedSet, story: Story) -> Iterator[str]:
    rows = []
    for check in chosen.checks:
        text = story.check(check)
        margin = f"margin {text.margin}" if text.margin else ""
        rows.append((text.outcome_word, text.severity_word, text.title, text.value, text.limit, margin))
    yield from _table(rows)


def _findings(head: str, findings: Iterable[Finding], story: Story) -> Iterator[str]:
    told = tuple(finding for finding in findings if finding.verdict is not Verdict.HOLDS)
    if not told:
        return
    yield head
    ordered = sorted(told, key=lambda finding: list(Severity).index(finding.severity))
    for finding in ordered:
        text = story.finding(finding)
        subject = f" {text.subject}:" if text.subject else ""
        yield from _wrapped(
            f"- {text.severity_word}, {text.verdict_word}:{subject} {text.sentence} [{text.source}]", _INDENT
        )


def _table(rows: Sequence[tuple[str, ...]]) -> Iterator[str]:
    """Yield rows with their columns aligned; the last column wraps under itself."""
    if not rows:
        return
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]) - 1)]
    for row in rows:
        lead = _INDENT + "".join(f"{cell:<{width}}  " for cell, width in zip(row, widths, strict=False))
        room = max(_WIDTH - len(lead), 40)
        first, *more = textwrap.wrap(row[-1], room, break_on_hyphens=False) or [""]
        yield lead + first
        for line in more:
            yield " " * len(lead) + line


def _wrapped(text: str, indent: str) -> Iterator[str]:
    hanging = indent + ("  " if text.startswith("- ") else "")
    yield from textwrap.wrap(
        text, _WIDTH, initial_indent=indent, subsequent_indent=hanging, break_on_hyphens=False
    ) or [indent]


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
