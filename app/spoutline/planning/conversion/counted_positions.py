"""The positions of a site as far as a programme counts them: each question is worked out once over all sites."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import partial

from spoutline.model.conversion_answers import OptionKind
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PlanStatus, PositionPlan
from spoutline.model.position_conversion import (
    ConversionKind,
    ConversionOption,
    DifferenceLine,
    PositionConversion,
    PositionOutcome,
)
from spoutline.model.removal_standing import RemovalStanding, Standing
from spoutline.model.requirement import Refusal
from spoutline.model.survey import Position, Survey
from spoutline.planning.conversion.convert_position import (
    ConversionContext,
    convert_position,
    keeps_everything,
    options_for,
    outcome_without_set,
)
from spoutline.planning.conversion.differences import staying_places
from spoutline.planning.conversion.memory import ConversionMemory, QuestionKeys
from spoutline.planning.conversion.options import PositionOptions
from spoutline.planning.conversion.position_answer import (
    PositionAnswer,
    answer_of,
    conversion_of,
    counted_conversion,
    counted_lines,
)
from spoutline.planning.conversion.relabelling import relabelled_conversion
from spoutline.planning.sets.installed_units import installed_units
from spoutline.planning.sets.plan_position import STATUS_OF
from spoutline.rules.conversion.kinds import conversion_kinds
from spoutline.rules.conversion.standing import takes_recovery_away
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.effort import Exhausted


class CountedPositions:
    """Converts the positions of one site by the way that its survey follows, and finds no more than is counted.

    Parameters
    ----------
    survey, standing
        The site, and whether recovery may be taken away there.
    known
        Catalogue parts by what names them in the survey.
    context
        Tables, part store, listener, and the memory that answers are asked of first.
    """

    def __init__(
        self,
        survey: Survey,
        standing: RemovalStanding,
        known: Mapping[PartRef, Part],
        context: ConversionContext,
    ) -> None:
        self._survey, self._standing = survey, standing
        self._known, self._context = known, context
        self._keys = QuestionKeys(survey, context.basis or "")
        self._here: dict[str, PositionConversion] = {}

    def conversion(self, position: Position, shown: PositionPlan | None = None) -> PositionConversion:
        """Return the conversion of a position: to the set of the plan ``shown``, else by the way of the survey.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        forbidden = takes_recovery_away(position) and self._standing.standing is Standing.NOT_ALLOWED
        if shown is not None:
            return self._to_shown(position, shown, forbidden=forbidden)
        key = self._keys.key(position, self._known, forbidden=forbidden)
        found = self._met(key)
        if found is not None:
            return relabelled_conversion(found, position)
        found = self._answered(key, position, forbidden=forbidden)
        self._here[key] = found
        if self._memory is not None:
            self._memory.meet(key, found)
        return found

    def _met(self, key: str) -> PositionConversion | None:
        known = self._here.get(key)
        return self._memory.met(key) if known is None and self._memory is not None else known

    @property
    def _memory(self) -> ConversionMemory | None:
        """Nothing is remembered beyond a site that is planned with a draft, which changes under whoever reads it."""
        return None if self._context.basis is None else self._context.memory

    def _answered(self, key: str, position: Position, *, forbidden: bool) -> PositionConversion:
        def work() -> PositionAnswer:
            return self._worked_out(position, forbidden=forbidden)

        answer = work() if self._memory is None else self._memory.answer(key, work)
        found = self._of(answer, position)
        if found is not None:
            return found
        # the catalogue that is there lacks a part of it
        return convert_position(position, self._survey, self._standing, self._known, self._context)

    def _of(self, answer: PositionAnswer, position: Position) -> PositionConversion | None:
        units = installed_units(position, self._known)
        return conversion_of(answer, position, self._survey.site.currency, units, self._context.planning.parts)

    def _worked_out(self, position: Position, *, forbidden: bool) -> PositionAnswer:
        survey, tables = self._survey, self._context.planning.tables
        kinds = conversion_kinds(position, survey.conversion, self._known)
        if not kinds and not position.installed:
            return PositionAnswer(outcome=PositionOutcome.NOTHING_TO_DO, kinds=kinds)
        requirement = requirement_for(position, survey.site, tables)
        if isinstance(requirement, Refusal):
            outcome = outcome_without_set(STATUS_OF[requirement.status], forbidden=forbidden)
            return PositionAnswer(outcome=outcome, kinds=kinds)
        if forbidden:
            return PositionAnswer(outcome=PositionOutcome.NOT_ALLOWED, kinds=kinds)
        options = options_for(requirement, survey, self._known, self._context, counted=True)
        try:
            option = _nearest_way(options, survey.conversion.follow)
        except Exhausted:
            return PositionAnswer(outcome=PositionOutcome.NOT_DECIDED, kinds=kinds)
        if option is None:
            return PositionAnswer(outcome=PositionOutcome.NO_SET, kinds=kinds)
        stays = staying_places(option, options.verdicts)
        lines = counted_lines(option, tuple(one.unit for one in options.verdicts), stays)
        return answer_of(kinds, _outcome(kinds, lines), option, stays)

    def _to_shown(self, position: Position, shown: PositionPlan, *, forbidden: bool) -> PositionConversion:
        survey, tables = self._survey, self._context.planning.tables
        kinds = conversion_kinds(position, survey.conversion, self._known)
        counted = partial(counted_conversion, position, kinds)
        if not kinds and not position.installed:
            return counted(PositionOutcome.NOTHING_TO_DO)
        requirement = requirement_for(position, survey.site, tables)
        if isinstance(requirement, Refusal) or forbidden:
            status = STATUS_OF[requirement.status] if isinstance(requirement, Refusal) else PlanStatus.FITS
            return counted(outcome_without_set(status, forbidden=forbidden))
        options = options_for(requirement, survey, self._known, self._context, counted=True)
        option = options.of_plan(shown)
        if option is None:
            return counted(PositionOutcome.NO_SET, shown=shown)
        stays = staying_places(option, options.verdicts)
        lines = tuple(counted_lines(option, tuple(one.unit for one in options.verdicts), stays))
        return counted(_outcome(kinds, lines), option, lines, shown=shown)


def _nearest_way(options: PositionOptions, wanted: OptionKind) -> ConversionOption | None:
    """Return the wanted way, else the nearest cheaper one; None without a set."""
    order = list(OptionKind)
    ways = map(options.way, reversed(order[: order.index(wanted) + 1]))
    return next((one for one in ways if one is not None), None)


def _outcome(kinds: tuple[ConversionKind, ...], lines: Iterable[DifferenceLine]) -> PositionOutcome:
    nothing = not kinds and keeps_everything(lines)
    return PositionOutcome.NOTHING_TO_DO if nothing else PositionOutcome.CONVERTS
