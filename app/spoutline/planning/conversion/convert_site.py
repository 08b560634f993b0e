"""The conversion of a whole site: standing first, then positions, closings, sequence, emissions, money."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from spoutline.calc.ranges import OutOfRange
from spoutline.calc.vapour_decay import pressure_decay_line
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.check import WorkedLine
from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import Cancelled, InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.position_conversion import PositionConversion
from spoutline.model.removal_standing import RemovalStanding
from spoutline.model.survey import Position, Survey
from spoutline.model.tank_change import TankChange
from spoutline.model.vapour_figures import VapourFigureId, VapourTables
from spoutline.model.worded import Worded
from spoutline.planning.conversion.agency_names import check_agency
from spoutline.planning.conversion.convert_position import ConversionContext, convert_position
from spoutline.planning.conversion.counted_positions import CountedPositions
from spoutline.planning.conversion.emission_sheet import emission_sheet
from spoutline.planning.conversion.liquid_of_today import hindrances_of
from spoutline.planning.conversion.money_sheet import money_sheet
from spoutline.planning.conversion.relabelling import relabelled_conversion, same_conversion
from spoutline.planning.conversion.sequence import SequenceInput, sequence_of
from spoutline.planning.part_names import installed_parts
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.plan_site import provenance_of
from spoutline.rules.conversion.closings import closing_plan
from spoutline.rules.conversion.decay import decay_constant
from spoutline.rules.conversion.standing import removal_standing
from spoutline.rules.conversion.tanks import tank_changes


def convert_site(
    survey: Survey,
    context: ConversionContext,
    progress: Progress | None = None,
    *,
    sets: SitePlan | None = None,
) -> SiteConversion:
    """Return the conversion of a site.

    Positions that differ only in label, dispenser, grade and notes are worked out once.

    Parameters
    ----------
    survey
        With installed parts and the owner's answers.
    context
        Tables, part store and listener.
    progress
        Told after each position; may ask to stop.
    sets
        Sets to convert to, such as agreed ones; without them the conversion follows the way that the survey names.

    Raises
    ------
    InputFault
        If an answer cannot be used: an unknown agency, more vacuum assist than recovery, a value outside the data.
    Cancelled
        If ``progress`` or the listener asks to stop.
    """
    check_agency(survey, context.vapour)
    planning = replace(context.planning, answers=survey.conversion, steps=context.steps)
    context = replace(context, planning=planning)
    tables = context.planning.tables
    standing = removal_standing(survey, tables.jurisdiction, context.vapour)
    known = _installed_parts(survey, context)
    positions = _positions(survey, standing, known, context, progress, sets=sets)
    going = [one for one in positions if one.loses_recovery]
    closed = closing_plan(positions, survey.conversion)
    positions = tuple(replace(one, closings=closed.of_position.get(one.position.label, ())) for one in positions)
    changes = _tank_changes(survey, positions, context)
    sequence = sequence_of(
        SequenceInput(
            survey=survey,
            standing=standing,
            positions=positions,
            closed=closed,
            changes=changes,
            steps=context.steps,
        )
    )
    try:
        emissions = emission_sheet(survey, positions, context.vapour, counted=context.memory is not None)
    except OutOfRange as fault:
        raise _answer_fault(fault) from fault
    return SiteConversion(
        survey=survey,
        jurisdiction=tables.jurisdiction,
        standing=standing,
        positions=positions,
        closings=(*(closing for one in positions for closing in one.closings), *closed.shared),
        stays_live=closed.live,
        tank_changes=changes,
        emissions=emissions,
        sequence=sequence,
        money=money_sheet(survey, positions, sequence, standing.agency, context.vapour),
        provenance=provenance_of(survey, tables, context.planning.parts),
        decay=_decay(survey, positions, context.vapour) if going else None,
        sets_from=sets.sets_from if sets is not None else SetsFrom(way=survey.conversion.follow.value),
    )


def _installed_parts(survey: Survey, context: ConversionContext) -> dict[PartRef, Part]:
    """Return the catalogue parts of what hangs there, by the reference in the survey; unknown ones are left out."""
    installed = {item.ref for position in survey.positions for item in position.installed if item.ref}
    return installed_parts(installed, context.planning.parts)


def _positions(
    survey: Survey,
    standing: RemovalStanding,
    known: Mapping[PartRef, Part],
    context: ConversionContext,
    progress: Progress | None,
    *,
    sets: SitePlan | None,
) -> tuple[PositionConversion, ...]:
    handed_in = {plan.position.label: plan for plan in sets.positions} if sets is not None else {}
    made_by = _Positions if context.memory is None else CountedPositions
    convert = made_by(survey, standing, known, context).conversion
    found: list[PositionConversion] = []
    for done, position in enumerate(survey.positions):
        if progress is not None:
            progress.on_progress(done, len(survey.positions))
            if progress.should_stop():
                raise Cancelled
        found.append(convert(position, handed_in.get(position.label)))
    if progress is not None:
        progress.on_progress(len(survey.positions), len(survey.positions))
    return tuple(found)


class _Positions:
    """Converts the positions of one site; those that ask the same are worked out once."""

    def __init__(
        self,
        survey: Survey,
        standing: RemovalStanding,
        known: Mapping[PartRef, Part],
        context: ConversionContext,
    ) -> None:
        self._asked = (survey, standing, known, context)
        self._worked_out: dict[Position, PositionConversion] = {}

    def conversion(self, position: Position, shown: PositionPlan | None = None) -> PositionConversion:
        if shown is not None:  # each has the set that was agreed for it, also where two ask the same
            return convert_position(position, *self._asked, shown=shown)
        question = same_conversion(position)
        if question not in self._worked_out:
            self._worked_out[question] = convert_position(position, *self._asked)
            return self._worked_out[question]
        return relabelled_conversion(self._worked_out[question], position)


def _tank_changes(
    survey: Survey, positions: tuple[PositionConversion, ...], context: ConversionContext
) -> tuple[TankChange, ...]:
    site, follow, planning = survey.site, survey.conversion.follow, context.planning
    hindrances = {one.position.label: hindrances_of(one, site, follow, planning) for one in positions}
    scheme = planning.tables.jurisdiction.scheme
    return tank_changes(survey, positions, hindrances, context.steps.figures, scheme)


def _decay(survey: Survey, positions: tuple[PositionConversion, ...], vapour: VapourTables) -> WorkedLine | None:
    ullage = survey.conversion.emissions.ullage_m3
    if ullage is None:
        return None
    constant, nozzles = decay_constant(positions, vapour)
    return pressure_decay_line(
        ullage_m3=ullage, start=vapour.figure(VapourFigureId.DECAY_START), decay=constant, nozzles=nozzles
    )


def _answer_fault(fault: OutOfRange) -> InputFault:
    window = " to ".join(f"{bound:g}" for bound in (fault.low, fault.high) if bound is not None)
    problem = InputProblem(
        "",
        Worded("conversion, emissions, {field}", field=fault.field),
        f"{fault.value:g}",
        Worded("wanted: {window}", window=window),
    )
    return InputFault((problem,))
