"""A value held against its bounds: outcome and margin made the same way for every check."""

from __future__ import annotations

from spoutline.model.check import Bound, Check, CheckId, Outcome, WorkedLine
from spoutline.model.finding import Severity
from spoutline.model.limit import Jurisdiction, LimitId, LimitStatus
from spoutline.model.part import Part
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.rules.verdicts import limit_source

TOLERANCE = 1e-9  # relative: sums of binary fractions must not break a limit that is met exactly


def bound_of(limit_id: LimitId, jurisdiction: Jurisdiction) -> Bound | None:
    """Return a limit row as a bound; None where the profile leaves it empty.

    Parameters: ``limit_id``; ``jurisdiction``.
    """
    value = jurisdiction.optional_number(limit_id)
    limit = jurisdiction.limit(limit_id)
    return None if value is None else Bound(value=value, source=limit_source(limit), status=limit.status)


def part_bound(value: float, part: Part) -> Bound:
    """Return a figure of a part as a bound.

    Parameters: ``value`` in SI; ``part`` whose data state it.
    """
    return Bound(value=value, source=f"part data of {part.number}", status=LimitStatus.VERIFIED)


def judgement_bound(value: float, source: str) -> Bound:
    """Return a computed figure that rests on engineering judgement as a bound.

    Parameters: ``value`` in SI; ``source``, what it was computed from.
    """
    return Bound(value=value, source=source, status=LimitStatus.JUDGEMENT)


def held(
    check_id: CheckId,
    severity: Severity,
    value: float | None,
    dimension: Dimension,
    *,
    lower: Bound | None = None,
    upper: Bound | None = None,
    text: str = "",
    facts: tuple[Quantity | Fact, ...] = (),
    lines: tuple[WorkedLine, ...] = (),
    fails: bool | None = None,
) -> Check:
    """Return the check of ``value`` (SI, in ``dimension``) against its bounds.

    No value is UNKNOWN, no bound INFORMATION; bounds are met with equality. ``fails`` overrides what the bounds say
    where a rule judges more than one number.
    """
    margins = []
    if value is not None and lower is not None:
        margins.append(value - lower.value)
    if value is not None and upper is not None:
        margins.append(upper.value - value)
    margin = min(margins, default=None)
    judged = _outcome(value, margin, lower, upper)
    if fails is not None:
        judged = Outcome.FAILS if fails else Outcome.PASSES
    return Check(
        id=check_id,
        severity=severity,
        outcome=judged,
        value=value,
        dimension=dimension,
        lower=lower,
        upper=upper,
        margin=margin,
        text=text,
        facts=facts,
        lines=lines,
    )


def stated(
    check_id: CheckId,
    severity: Severity,
    value: float | None,
    dimension: Dimension,
    *,
    text: str = "",
    facts: tuple[Quantity | Fact, ...] = (),
    lines: tuple[WorkedLine, ...] = (),
) -> Check:
    """Return a check that informs only: nothing is asked of ``value`` (SI, in ``dimension``), which may be absent."""
    return Check(
        id=check_id,
        severity=severity,
        outcome=Outcome.INFORMATION,
        value=value,
        dimension=dimension,
        lower=None,
        upper=None,
        margin=None,
        text=text,
        facts=facts,
        lines=lines,
    )


def _outcome(value: float | None, margin: float | None, lower: Bound | None, upper: Bound | None) -> Outcome:
    if value is None:
        return Outcome.UNKNOWN
    if margin is None:
        return Outcome.INFORMATION
    scale = max(abs(bound.value) for bound in (lower, upper) if bound is not None)
    return Outcome.PASSES if margin >= -TOLERANCE * scale else Outcome.FAILS
