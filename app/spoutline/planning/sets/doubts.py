"""How sure the verdicts on a set are: each figure that nobody measured is moved through its plausible range, alone.

The set stays the same; the requirement is derived and the checks are run anew for each value, as they are for a plan.
A verdict that is another somewhere in the range is bracketed on a grid, going out from what is assumed. The value
where it changes is found by Brent's method: on the margin where both ends of the bracket have one against the same
limit, else on the verdict itself, which halves the bracket. Two figures that move together are not looked at.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from itertools import pairwise
from typing import Final

from spoutline.calc.root import quadratic_root
from spoutline.frozen import frozen
from spoutline.model.answered import answered, assumptions
from spoutline.model.check import Check, Outcome
from spoutline.model.doubt import (
    CheckDoubt,
    Flip,
    Judged,
    PositionDoubts,
    Reach,
    Standing,
    StationDoubts,
    UnmeasuredFigure,
)
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.plan import HangingSet, PositionPlan
from spoutline.model.requirement import Requirement, RequirementId
from spoutline.model.site_figure import PlausibleRange, SiteFigure, SiteRanges
from spoutline.model.survey import Position, Site
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.relabel import same_question
from spoutline.rules.chain.set_view import view_of
from spoutline.rules.checks.run import CHECKS, checks_for
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part

_STEPS: Final = 8  # on each side of what is assumed; a verdict that changes twice between two of them is not seen
_XTOL: Final = 1e-9  # of the bracket
_RTOL: Final = 1e-12
_SAME: Final = 1e-9  # relative: less is no other margin
_SEVERITIES: Final = tuple(Severity)  # the gravest first
# what a figure can change that parts are held to without a check
_LINES: Final[Mapping[SiteFigure, RequirementId]] = {
    SiteFigure.CLIMATE_LOW: RequirementId.TEMPERATURE,
    SiteFigure.CLIMATE_HIGH: RequirementId.TEMPERATURE,
    SiteFigure.SUPPLY_PRESSURE: RequirementId.PRESSURE,
}


@frozen
class _Reading:
    """What one value of a figure makes of a check, or of a line that parts are held to without one."""

    standing: Standing
    severity: Severity
    check: Check | None = None

    @property
    def verdict(self) -> tuple[Standing, Severity | None]:
        """What is said: whether it holds, and how grave it is that it does not."""
        return self.standing, None if self.standing is Standing.HOLDS else self.severity

    @property
    def margin(self) -> float | None:
        """The margin in SI; None where there is none."""
        return None if self.check is None else self.check.margin


_Readings = Mapping[Judged, _Reading]
_HOLDING: Final = _Reading(Standing.HOLDS, Severity.ADVICE)  # of a check that has nothing to say about the set


def unmeasured(position: Position, site: Site) -> tuple[SiteFigure, ...]:
    """Return the figures that decide a set and that nobody measured: not answered, or answered as not known."""
    silent, given = set(assumptions(position)), answered(site)

    def is_silent(figure: SiteFigure) -> bool:
        if figure.is_of_site:
            return tuple(figure.value.split(".")) not in given
        return figure.value in silent or figure.stated_si(position, site) is None

    return tuple(figure for figure in SiteFigure if is_silent(figure))


def unmeasured_beside(position: Position) -> tuple[tuple[SiteFigure, int], ...]:
    """Return what nobody measured of the further fillers, each with the place of its filler among them."""
    given = answered(position)
    return tuple(
        (figure, at)
        for at in range(len(position.other_fillers))
        for figure in (SiteFigure.FILLER_DISTANCE, SiteFigure.FILLER_HEIGHT)
        if ("other_fillers", at, figure.value.split(".")[1]) not in given
    )


def position_doubts(plan: PositionPlan, site: Site, tables: RuleTables, ranges: SiteRanges) -> PositionDoubts | None:
    """Return what the verdicts on a chosen set rest on that nobody measured; None without a set.

    Parameters: ``plan`` of the position; ``site`` of the survey; ``tables``, limits and materials; ``ranges``, where
    such figures may lie.
    """
    if plan.chosen is None:
        return None
    figures: list[UnmeasuredFigure] = []
    asked = [(figure, None) for figure in unmeasured(plan.position, site)]
    for figure, other in (*asked, *unmeasured_beside(plan.position)):
        sweep = _Sweep(figure, plan.position, site, plan.chosen.hanging_set, tables, other=other)
        moved = sweep.moved(ranges.of(figure, plan.position))
        if moved is not None:
            figures.append(moved)
    figures.sort(key=lambda one: one.rank)
    return PositionDoubts(
        label=plan.position.label, figures=tuple(figures), checks=tuple(_check_doubts(plan.chosen.checks, figures))
    )


def station_doubts(
    plans: Sequence[PositionPlan],
    site: Site,
    tables: RuleTables,
    ranges: SiteRanges,
    progress: Progress | None = None,
) -> StationDoubts:
    """Return the same for all positions with a set; equal questions with equal sets are answered once.

    ``progress`` is told after each position; raise ``Cancelled`` where it asks to stop.
    """
    found: list[PositionDoubts] = []
    known: list[tuple[Position, PositionPlan, PositionDoubts]] = []
    for at, plan in enumerate(plans, start=1):
        question = same_question(plan.position)
        doubts = next((one for asked, other, one in known if asked == question and _is_alike(plan, other, site)), None)
        if doubts is None:
            doubts = position_doubts(plan, site, tables, ranges)
            if doubts is not None:
                known.append((question, plan, doubts))
        if doubts is not None:
            found.append(replace(doubts, label=plan.position.label))
        if progress is not None:
            progress.on_progress(at, len(plans))
            if progress.should_stop():
                raise Cancelled
    return StationDoubts(tuple(found))


def _is_alike(plan: PositionPlan, other: PositionPlan, site: Site) -> bool:
    """Say whether two positions that ask the same have the same set, and the same was measured there."""
    if plan.chosen is None or other.chosen is None:
        return False
    same_set = plan.chosen.hanging_set.identity == other.chosen.hanging_set.identity
    if not same_set or unmeasured_beside(plan.position) != unmeasured_beside(other.position):
        return False
    return unmeasured(plan.position, site) == unmeasured(other.position, site)


def _check_doubts(checks: Sequence[Check], figures: Sequence[UnmeasuredFigure]) -> Iterator[CheckDoubt]:
    """Yield each check that has a margin, or that a figure could turn, with the least margin that a figure leaves."""
    for check in checks:
        reaches = [
            (one.least_margin, figure.figure) for figure in figures for one in figure.reaches if one.check is check.id
        ]
        flips_by = tuple(one.figure for one in figures if any(flip.judged is check.id for flip in one.flips))
        if check.margin is None and not flips_by:
            continue
        least, figure = min(reaches, default=(check.margin, None), key=lambda reach: reach[0])
        yield CheckDoubt(
            check=check.id,
            severity=check.severity,
            dimension=check.dimension,
            margin=check.margin,
            least_margin=least,
            figure=figure,
            flips_by=flips_by,
        )


class _Sweep:
    """One figure moved from what is assumed to both ends of its range, everything else as it is.

    ``other`` is the place of the further filler that the figure is of; None for any other figure.
    """

    def __init__(
        self,
        figure: SiteFigure,
        position: Position,
        site: Site,
        hanging_set: HangingSet,
        tables: RuleTables,
        *,
        other: int | None,
    ) -> None:
        self._figure, self._position, self._site, self._other = figure, position, site, other
        self._set, self._tables = hanging_set, tables

    def moved(self, plausible: PlausibleRange) -> UnmeasuredFigure | None:
        """Return what the figure does to the verdicts; None where nothing can be worked out with what is assumed."""
        assumed = self._assumed()
        base = None if assumed is None else self._readings(assumed)
        if assumed is None or base is None:
            return None
        sides = [
            self._side(assumed, base, end) for end in (min(plausible.least, assumed), max(plausible.most, assumed))
        ]
        walked = [step for side in sides for step in side]
        values = [assumed, *(value for value, _ in walked)]
        return UnmeasuredFigure(
            figure=self._figure,
            filler="" if self._other is None else self._position.other_fillers[self._other].label,
            assumed=assumed,
            least=min(values),
            most=max(values),
            range=plausible,
            flips=tuple(flip for side in sides for flip in self._flips([(assumed, base), *side])),
            reaches=tuple(_reaches(base, [readings for _, readings in walked])),
        )

    def _assumed(self) -> float | None:
        """Return what is assumed, SI: the usual answer, or what the jurisdiction puts in the place of an empty one."""
        if self._other is not None:
            return float(getattr(self._position.other_fillers[self._other], self._figure.value.split(".")[1]))
        stated = self._figure.stated_si(self._position, self._site)
        if stated is not None:
            return stated
        requirement = requirement_for(self._position, self._site, self._tables)
        if not isinstance(requirement, Requirement):
            return None
        return {
            SiteFigure.OUTLET_STRENGTH: requirement.outlet_pull_strength_n,
            SiteFigure.SUPPLY_PRESSURE: requirement.supply_pressure_pa,
            SiteFigure.SUPPLY_FLOW: requirement.supply_flow_m3_s,
        }.get(self._figure)

    def _side(self, assumed: float, base: _Readings, end: float) -> list[tuple[float, _Readings]]:
        """Return the steps from what is assumed to an end, as far as anything can be worked out."""
        steps: list[tuple[float, _Readings]] = []
        if end == assumed:
            return steps
        for step in range(1, _STEPS + 1):
            value = end if step == _STEPS else assumed + (end - assumed) * step / _STEPS
            readings = self._readings(value)
            if readings is None:
                break
            steps.append((value, {judged: readings.get(judged, _HOLDING) for judged in {**base, **readings}}))
        return steps

    def _flips(self, steps: Sequence[tuple[float, _Readings]]) -> Iterator[Flip]:
        """Yield where verdicts change on the way out; one that was said before on this way is not told again."""
        judged_all = dict.fromkeys(judged for _, readings in steps for judged in readings)
        for judged in judged_all:
            told = [(value, readings.get(judged, _HOLDING)) for value, readings in steps]
            seen = {told[0][1].verdict}
            for (before_at, before), (after_at, after) in pairwise(told):
                if after.verdict in seen:
                    continue
                seen.add(after.verdict)
                yield Flip(
                    judged=judged,
                    severity=min(before.severity, after.severity, key=_SEVERITIES.index),
                    before=before.standing,
                    after=after.standing,
                    at_value=self._threshold(judged, (before_at, before), (after_at, after)),
                    above=after_at > before_at,
                )

    def _threshold(self, judged: Judged, start: tuple[float, _Reading], end: tuple[float, _Reading]) -> float:
        """Return the value between two where the verdict changes, to a billionth of what lies between them."""
        (low, before), (high, after) = start, end

        def margin(value: float) -> float:
            found = self._one(judged, value).margin
            if found is None:
                raise _NoMarginError
            return found

        def same(value: float) -> float:
            return 1.0 if self._one(judged, value).verdict == before.verdict else -1.0

        margins = [one.margin for one in (before, after) if one.margin is not None]
        if before.severity is after.severity and margins and min(margins) <= 0.0 <= max(margins):
            with suppress(_NoMarginError):
                return _root(margin, low, high)
        return _root(same, low, high)

    def _requirement(self, value: float) -> Requirement | None:
        """Return what the position asks with another value (SI); None where nothing can be asked with it."""
        block, name = self._figure.value.split(".")
        if self._other is not None:
            fillers = list(self._position.other_fillers)
            fillers[self._other] = fillers[self._other].model_copy(update={name: value})
            moved_position = self._position.model_copy(update={"other_fillers": tuple(fillers)})
            asked = requirement_for(moved_position, self._site, self._tables)
            return asked if isinstance(asked, Requirement) else None
        owner: Position | Site = self._site if self._figure.is_of_site else self._position
        held = getattr(owner, block).model_copy(update={name: value / self._figure.unit_si})
        moved = owner.model_copy(update={block: held})
        site = moved if isinstance(moved, Site) else self._site
        position = moved if isinstance(moved, Position) else self._position
        if site.climate.low_c > site.climate.high_c:
            return None
        found = requirement_for(position, site, self._tables)
        return found if isinstance(found, Requirement) else None

    def _readings(self, value: float) -> _Readings | None:
        requirement = self._requirement(value)
        if requirement is None:
            return None
        checks = checks_for(self._set, requirement, self._tables)
        readings: dict[Judged, _Reading] = {check.id: _read(check) for check in checks}
        line = _LINES.get(self._figure)
        if line is not None:
            readings[line] = self._line(line, requirement)
        return readings

    def _one(self, judged: Judged, value: float) -> _Reading:
        """Return the reading of one check or line alone; what cannot be worked out is not shown."""
        requirement = self._requirement(value)
        if requirement is None:
            return _Reading(Standing.NOT_SHOWN, Severity.MUST)
        if isinstance(judged, RequirementId):
            return self._line(judged, requirement)
        check = CHECKS[judged](view_of(self._set, requirement, self._tables))
        return _HOLDING if check is None else _read(check)

    def _line(self, line: RequirementId, requirement: Requirement) -> _Reading:
        """Return whether every part of the set keeps a line of its own."""
        found = (one for link in self._set.links for one in judge_part(link.part, link.slot, requirement, self._tables))
        broken = [one for one in found if one.verdict is Verdict.BROKEN and rule_of(one.rule_id).requirement is line]
        if not broken:
            return _Reading(Standing.HOLDS, Severity.MUST)
        return _Reading(Standing.FAILS, min((one.severity for one in broken), key=_SEVERITIES.index))


class _NoMarginError(Exception):
    """A check has no margin at some value between two where it has one."""


def _root(function: Callable[[float], float], low: float, high: float) -> float:
    return quadratic_root(function, low=low, high=high, tolerance=abs(high - low) * _XTOL, relative=_RTOL)


def _read(check: Check) -> _Reading:
    standing = {Outcome.FAILS: Standing.FAILS, Outcome.UNKNOWN: Standing.NOT_SHOWN}.get(check.outcome, Standing.HOLDS)
    return _Reading(standing, check.severity, check)


def _reaches(base: _Readings, walked: Sequence[_Readings]) -> Iterator[Reach]:
    """Yield the checks whose margin the figure lowers somewhere in its range, held against the same kind of limit."""
    for judged, reading in base.items():
        check, margin = reading.check, reading.margin
        if check is None or margin is None:
            continue
        others = [one[judged] for one in walked if judged in one and one[judged].severity is reading.severity]
        found = [one.check for one in others if one.check is not None and one.check.margin is not None]
        least = min(found, key=lambda one: one.margin or 0.0, default=None)
        if (
            least is None
            or least.margin is None
            or least.margin >= margin - _SAME * max(abs(margin), abs(least.margin))
        ):
            continue
        limit = max((abs(one.value) for one in (least.lower, least.upper) if one is not None), default=0.0)
        yield Reach(
            check=check.id,
            dimension=check.dimension,
            margin=margin,
            least_margin=least.margin,
            least_share=least.margin / limit if limit else None,
        )
