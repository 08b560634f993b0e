"""Whether the set that comes also serves the liquid that is sold today: only then may it hang before the change."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.model.check import Check, Outcome
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.position_conversion import ConversionKind, PositionConversion, PositionOutcome
from spoutline.model.requirement import Refusal
from spoutline.model.survey import Site
from spoutline.model.tank_change import Hindrance
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.rules.derive.requirement import requirement_for


def hindrances_of(
    one: PositionConversion, site: Site, follow: OptionKind, context: PlanningContext
) -> tuple[Hindrance, ...]:
    """Return why the new set of a position does not serve the liquid of today; empty where it does, or nothing changes.

    Parameters
    ----------
    one
        The position as converted.
    site
        Its station.
    follow
        The way that is followed.
    context
        Rule tables.
    """
    position = one.position
    if one.outcome is not PositionOutcome.CONVERTS or ConversionKind.CHANGE_LIQUID not in one.kinds:
        return ()
    option = one.followed(follow)
    if option is None or position.liquid_today is None:
        return ()
    today = position.model_copy(update={"liquid": position.liquid_today})
    requirement = requirement_for(today, site, context.tables)
    if isinstance(requirement, Refusal):
        return (Hindrance(position=position.label),)
    judged = SetJudge(requirement, context.tables).judged(option.judged.hanging_set)
    return tuple(_found(position.label, judged.findings, judged.checks))


def _found(label: str, findings: Sequence[Finding], checks: Sequence[Check]) -> Iterator[Hindrance]:
    for finding in findings:
        if finding.severity is Severity.MUST and finding.verdict is Verdict.BROKEN:
            yield Hindrance(position=label, finding=finding)
    for check in checks:
        if check.severity is Severity.MUST and check.outcome is Outcome.FAILS:
            yield Hindrance(position=label, check=check.id)
