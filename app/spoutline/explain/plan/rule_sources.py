"""Every rule with what it rests on, and every limit with its source, as a page of the manual."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.explain.phrases.manual_words import ManualWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.finding import Severity
from spoutline.model.limit import Jurisdiction, Limit
from spoutline.rules.declared.registry import RULES
from spoutline.rules.declared.rule import Rule

_ORDER = (Severity.MUST, Severity.SHOULD, Severity.ADVICE)


def rule_sources(title: str, story: Story, jurisdiction: Jurisdiction) -> str:
    """Return the page as Markdown: the rules by weight, each with the limits it reads, as a jurisdiction sets them.

    A rule says what its logic rests on; a figure says from where it is, its clause and edition, and how well it is
    founded.
    """
    lines = [f"# {title}", "", story.word(Word.RULES_LEAD), ""]
    for severity in _ORDER:
        rules = [rule for rule in RULES.values() if rule.severity is severity]
        lines += [f"## {story.title(severity)}", ""]
        for rule in rules:
            lines += [*_rule(rule, story, jurisdiction), ""]
    return "\n".join(lines) + "\n"


def _rule(rule: Rule, story: Story, jurisdiction: Jurisdiction) -> Iterator[str]:
    phrase = story.phrases.rule(rule.id)
    yield f"### {phrase.title}"
    yield ""
    yield f"{phrase.says}. {story.title(Word.RESTS_ON)}: {story.cited(rule.source)}."
    limits = [jurisdiction.limit(one) for one in rule.limits]
    if limits:
        yield ""
    for limit in limits:
        yield f"- {_limit(limit, story)}"


def _limit(limit: Limit, story: Story) -> str:
    sources = story.limit_source(limit)
    return f"{story.limit_title(limit)}: {story.limit_value(limit)} – {sources} [{story.limit_status(limit.status)}]"
