"""What a search left open, as findings: every page, paper and document of a plan tells findings."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.explain.writing.money import amount
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.plan import AlternativeKind
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Refusal, RefusalStatus, Requirement, RequirementId, WayOut
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.conflicts import conflict_of_checks
from spoutline.planning.sets.set_query import Promise
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.declared.rule_ids import RuleId


def not_decided(chooser: Chooser) -> Refusal:
    """Return that no set was found and that none is shown not to exist, with what may settle it."""
    requirement = chooser.search.requirement
    facts = (*_tight(chooser, frozenset()), *_turned_down(chooser))
    found = _finding(RuleId.SETS_NOT_DECIDED, requirement, facts)
    return Refusal(
        status=RefusalStatus.NOT_DECIDED,
        findings=(found,),
        ways_out=(WayOut.ASK_FOR_A_PART, WayOut.LOOSEN_A_LIMIT),
        lines=requirement.lines,
    )


def not_proven(chooser: Chooser, choice: Choice, *, with_work: bool) -> tuple[Finding, ...]:
    """Return that a set before the chosen one may have been missed, and what no set goes below; nothing where proven.

    ``with_work`` says that prices were counted with the work that parts make.
    """
    if choice.floor is None:
        return ()
    requirement = chooser.search.requirement
    facts = (*_figures(chooser, choice, choice.floor, with_work=with_work), *_tight(chooser, choice.dropped))
    return (_finding(RuleId.SET_NOT_PROVEN_BEST, requirement, facts, SubjectKind.SET),)


def alternatives_open(requirement: Requirement, kinds: Sequence[AlternativeKind]) -> tuple[Finding, ...]:
    """Return that it is not decided whether there are other sets of some kinds; nothing for no kind."""
    if not kinds:
        return ()
    named = ", ".join(kind for kind in AlternativeKind if kind in kinds)
    return (_finding(RuleId.OTHER_SETS_NOT_DECIDED, requirement, (Fact("alternatives", named),)),)


def reasons_open(requirement: Requirement) -> tuple[Finding, ...]:
    """Return that none fits, and that not all that is in the way or would help was found out."""
    return (_finding(RuleId.REASONS_NOT_DECIDED, requirement, (Fact("duty", requirement.position.duty),)),)


def _figures(chooser: Chooser, choice: Choice, floor: Promise, *, with_work: bool) -> tuple[Quantity | Fact, ...]:
    broken = len(choice.dropped) + chooser.regrets_of(choice.judged.hanging_set)
    if floor.regrets < broken:
        return (
            Quantity("departures_of_set", float(broken), Dimension.COUNT),
            Quantity("fewest_departures", float(floor.regrets), Dimension.COUNT),
        )
    hanging_set = choice.judged.hanging_set
    named = zip(("set_price", "price_floor"), (hanging_set.price_minor, floor.price_minor), strict=True)
    ending = "_with_work" if with_work else ""
    currency = hanging_set.currency
    return tuple(Fact(f"{name}{ending}", f"{amount(minor, currency)} {currency}") for name, minor in named)


def _tight(chooser: Chooser, dropped: frozenset[RequirementId]) -> tuple[Fact, ...]:
    """Return the lines whose limits some sets exceed: those that could be loosened."""
    lines = chooser.search.binding_lines(chooser.query(dropped))
    return (Fact("limits_that_bind", ", ".join(lines)),) if lines else ()


def _turned_down(chooser: Chooser) -> tuple[Fact, ...]:
    """Return the lines for which a full check turned down the last set that was looked at."""
    conflict = conflict_of_checks(chooser.last_refused)
    return (Fact("sets_turned_down_for", ", ".join(conflict.requirements)),) if conflict is not None else ()


def _finding(
    rule_id: RuleId,
    requirement: Requirement,
    facts: tuple[Quantity | Fact, ...],
    about: SubjectKind = SubjectKind.POSITION,
) -> Finding:
    return Finding(
        rule_id=rule_id,
        severity=Severity.ADVICE,
        verdict=Verdict.NOTE,
        subject_kind=about,
        subject=requirement.position.label,
        facts=facts,
        limit_ids=(),
        source=rule_of(rule_id).source,
    )
