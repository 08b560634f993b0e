"""What a position sheet must say by itself: open questions, what good practice lacks, why there is no set."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.explain.pack.words import PackQuestion
from spoutline.explain.plan.reasons import requirement_names
from spoutline.explain.plan.words import Words
from spoutline.model.check import Outcome
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import Conflict, PositionPlan, Relaxation
from spoutline.model.quantity import Dimension, Quantity
from spoutline.rules.declared.registry import rule_of

_KNOWN = frozenset(question.value for question in PackQuestion)


def question_texts(plan: PositionPlan, words: Words) -> tuple[str, ...]:
    """Return the questions that a plan leaves open, each once, with the figures that are assumed meanwhile."""
    asked = [one for one in plan.findings if one.verdict is Verdict.QUESTION]
    return tuple(dict.fromkeys(_question(one, words) for one in asked))


def _question(found: Finding, words: Words) -> str:
    if found.rule_id in _KNOWN:
        text = words.word(PackQuestion(found.rule_id))
    else:  # a rule that is younger than these words
        text = f"{words.title(rule_of(found.rule_id).requirement)}?"
    figures = [
        words.display.reading(fact.value, fact.dimension)
        for fact in found.facts
        if isinstance(fact, Quantity) and fact.dimension is not Dimension.RATIO
    ]
    if found.subject_kind is SubjectKind.PART:
        figures.insert(0, found.subject)
    return f"{text} ({', '.join(figures)})" if figures else text


def broken_names(plan: PositionPlan, severity: Severity, words: Words) -> tuple[str, ...]:
    """Return what of one severity the set of a position does not keep or cannot show: checks, then rules."""
    checks = plan.chosen.checks if plan.chosen is not None else ()
    failing = (Outcome.FAILS, Outcome.UNKNOWN)
    names = [words.word(one.id) for one in checks if one.severity is severity and one.outcome in failing]
    broken = (one for one in plan.findings if one.severity is severity and one.verdict is Verdict.BROKEN)
    names.extend(words.word(rule_of(one.rule_id).requirement) for one in broken)
    return tuple(dict.fromkeys(names))


def no_set_reasons(plan: PositionPlan, words: Words) -> Iterator[str]:
    """Yield why a position has no set, and what a person can do about it."""
    if plan.refusal is not None:
        broken = (one for one in plan.refusal.findings if one.verdict is Verdict.BROKEN)
        names = tuple(dict.fromkeys(rule_of(one.rule_id).requirement for one in broken))
        if names:
            yield words.phrases.fill("reason_single", requirements=requirement_names(names, words))
        yield from (words.word(way) for way in plan.refusal.ways_out)
    if plan.conflict is not None:
        yield from _conflict_reasons(plan.conflict, words)


def _conflict_reasons(conflict: Conflict, words: Words) -> Iterator[str]:
    if conflict.pinned:
        numbers = ", ".join(told_apart(one.part.ref for one in conflict.pinned))
        yield words.phrases.fill("reason_pinned", numbers=numbers)
    if conflict.requirements:
        key = "reason_single" if len(conflict.requirements) == 1 else "reason_together"
        yield words.phrases.fill(key, requirements=requirement_names(conflict.requirements, words))
    changes = "; ".join(_change(one, words) for one in conflict.relaxations)
    if changes:
        yield words.phrases.fill("reason_change", changes=changes)


def _change(relaxation: Relaxation, words: Words) -> str:
    name = requirement_names((relaxation.requirement, *relaxation.also), words)
    if relaxation.from_value is None or relaxation.to_value is None or relaxation.dimension is None:
        return words.phrases.fill("reason_given_up", requirement=name)
    before, after = (words.show(one, relaxation.dimension) for one in (relaxation.from_value, relaxation.to_value))
    return f"{name} {before} → {after}"
