"""What one emission balance depends on, and the figures that follow from it."""

from __future__ import annotations

from spoutline.calc.emissions import factor_change_line, factor_kg_m3, mixed_factor_line, yearly_change_line
from spoutline.calc.vapour import recovery_increment
from spoutline.calc.vapour_displacement import (
    PSI,
    Displacement,
    RateFigures,
    TemperatureFigures,
    celsius,
    dispensed_temperature_line,
    displacement_rate,
    pump_difference_line,
    pump_temperature_line,
    tank_difference_line,
)
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.conversion_answers import EmissionAnswers, EmissionBasis
from spoutline.model.liquid import LiquidFamily
from spoutline.model.position_conversion import PositionConversion
from spoutline.model.survey import Duty, Position, Survey, VapourStatus
from spoutline.model.vapour_figures import VapourFigure, VapourFigureId, VapourTables

_Id = VapourFigureId


@frozen(kw_only=True)
class EmissionInputs:
    """Everything that one balance depends on; a sensitivity changes one field at a time."""

    recovered_share: float
    assist_share: float
    in_use_efficiency: float
    slope: VapourFigure
    throughput_m3: float | None
    ambient_c: float
    vapour_pressure_pa: float
    basis: EmissionBasis
    marine: bool
    enhanced_nozzles: bool


def emission_inputs(
    survey: Survey, concerned: list[PositionConversion], vapour: VapourTables, *, removing: bool
) -> EmissionInputs:
    """Return what the balance of a site depends on; gasoline positions count alike where the survey gives no share."""
    answers = survey.conversion.emissions
    gasoline = [one for one in survey.positions if one.liquid.family is LiquidFamily.GASOLINE]

    def status(position: Position) -> VapourStatus:
        return position.vapour_today if removing else position.vapour_wanted

    recovered = [one.position for one in concerned if status(one.position) is not VapourStatus.NONE]
    assisted = [position for position in recovered if status(position) is VapourStatus.VACUUM_ASSIST]
    recovered_share = len(recovered) / len(gasoline) if gasoline else 0.0
    assist_share = len(assisted) / len(gasoline) if gasoline else 0.0
    if answers.assist_share is not None:
        assist_share = answers.assist_share
    if answers.assist_works_with_onboard:
        assist_share = 0.0
    options = [one.followed(survey.conversion.follow) for one in concerned]
    nozzles = [link.part.nozzle for option in options if option for link in option.judged.hanging_set.links]
    return EmissionInputs(
        recovered_share=recovered_share,
        assist_share=assist_share,
        in_use_efficiency=answers.in_use_efficiency or vapour.value(_Id.IN_USE_EFFICIENCY),
        slope=vapour.figure(_Id.COMPATIBILITY_SLOPE),
        throughput_m3=answers.gasoline_throughput_m3,
        ambient_c=_ambient_c(answers, vapour),
        vapour_pressure_pa=_vapour_pressure_pa(answers, vapour),
        basis=answers.basis,
        marine=all(one.position.duty is Duty.MARINE for one in concerned),
        enhanced_nozzles=all(nozzle.enhanced_conventional for nozzle in nozzles if nozzle),
    )


def _ambient_c(answers: EmissionAnswers, vapour: VapourTables) -> float:
    return celsius(vapour.value(_Id.DEFAULT_AMBIENT)) if answers.mean_ambient_c is None else answers.mean_ambient_c


def _vapour_pressure_pa(answers: EmissionAnswers, vapour: VapourTables) -> float:
    if answers.reid_vapour_pressure_kpa is not None:
        return answers.reid_vapour_pressure_kpa * 1e3
    return vapour.value(_Id.DEFAULT_VAPOUR_PRESSURE) * PSI.value


def displacement_of(inputs: EmissionInputs, vapour: VapourTables) -> Displacement:
    """Return the uncontrolled displacement of a balance by its own basis, with its lines.

    Boats go by the non-road form, everything else by the on-road form, each taken whole.
    """
    figure = vapour.figure
    if inputs.basis is EmissionBasis.AP42:
        return Displacement(rate_kg_m3=factor_kg_m3(figure(_Id.AP42_DISPLACEMENT)), lines=())
    if inputs.basis is EmissionBasis.CARB:
        return Displacement(rate_kg_m3=factor_kg_m3(figure(_Id.CARB_WITHOUT_ONBOARD)), lines=())
    temperatures = TemperatureFigures(
        dispensed_constant=figure(_Id.DISPENSED_CONSTANT),
        dispensed_slope=figure(_Id.DISPENSED_SLOPE),
        difference_slope=figure(_Id.DIFFERENCE_SLOPE),
        difference_constant=figure(_Id.DIFFERENCE_CONSTANT),
        difference_maximum=figure(_Id.DIFFERENCE_MAXIMUM),
    )
    rates = RateFigures(
        constant=figure(_Id.RATE_CONSTANT),
        difference=figure(_Id.RATE_DIFFERENCE),
        dispensed=figure(_Id.RATE_DISPENSED),
        vapour_pressure=figure(_Id.RATE_VAPOUR_PRESSURE),
    )
    if inputs.marine:
        dispensed = pump_temperature_line(ambient_c=inputs.ambient_c)
        difference = pump_difference_line(ambient_c=inputs.ambient_c, dispensed_c=dispensed.result.value)
    else:
        dispensed = dispensed_temperature_line(ambient_c=inputs.ambient_c, figures=temperatures)
        difference = tank_difference_line(dispensed_c=dispensed.result.value, figures=temperatures)
    rate = displacement_rate(
        dispensed_c=dispensed.result.value,
        difference_c=difference.result.value,
        vapour_pressure_pa=inputs.vapour_pressure_pa,
        figures=rates,
    )
    return Displacement(rate_kg_m3=rate.rate_kg_m3, lines=(dispensed, difference, *rate.lines))


def increment(share: float, inputs: EmissionInputs) -> float:
    """Return what recovery at the nozzle adds at an onboard share, as a share of the uncontrolled displacement."""
    return recovery_increment(
        recovered_share=inputs.recovered_share,
        assist_share=inputs.assist_share,
        onboard_share=share,
        in_use_efficiency=inputs.in_use_efficiency,
        slope=inputs.slope,
    ).value


def change_kg(share: float, inputs: EmissionInputs, vapour: VapourTables) -> float | None:
    """Return what removal changes on the displacement in a year [kg]; None without a throughput."""
    if inputs.throughput_m3 is None:
        return None
    if inputs.basis is EmissionBasis.CARB:
        return inputs.recovered_share * carb_lines(share, inputs, vapour)[-1].result.value
    return yearly_change_line(
        throughput_m3=inputs.throughput_m3,
        rate_kg_m3=displacement_of(inputs, vapour).rate_kg_m3,
        increment=increment(share, inputs),
    ).result.value


def carb_lines(share: float, inputs: EmissionInputs, vapour: VapourTables) -> tuple[WorkedLine, ...]:
    """Return the balance by fixed factors, spillage apart; it knows no compatibility factor."""

    def mixed(without: VapourFigureId, onboard: VapourFigureId) -> WorkedLine:
        return mixed_factor_line(
            without_kg_m3=factor_kg_m3(vapour.figure(without)),
            onboard_kg_m3=factor_kg_m3(vapour.figure(onboard)),
            onboard_share=share,
            spillage_kg_m3=0.0,
            source=vapour.figure(without).origin,
        )

    before = mixed(_Id.CARB_WITHOUT_ONBOARD_CONTROLLED, _Id.CARB_ONBOARD_CONTROLLED)
    after = mixed(_Id.CARB_WITHOUT_ONBOARD, _Id.CARB_ONBOARD)
    change = factor_change_line(
        throughput_m3=inputs.throughput_m3 or 1.0,
        before_kg_m3=before.result.value,
        after_kg_m3=after.result.value,
        source=vapour.figure(_Id.CARB_WITHOUT_ONBOARD).origin,
    )
    return (before, after, change)


def spillage_kg(inputs: EmissionInputs, vapour: VapourTables) -> float | None:
    """Return what removal changes on spillage in a year [kg]; the two bases without own nozzle factors change none."""
    if inputs.throughput_m3 is None:
        return None
    if inputs.basis is not EmissionBasis.CARB:
        return 0.0
    after = _Id.CARB_SPILLAGE_ENHANCED if inputs.enhanced_nozzles else _Id.CARB_SPILLAGE
    line = factor_change_line(
        throughput_m3=inputs.throughput_m3 * inputs.recovered_share,
        before_kg_m3=factor_kg_m3(vapour.figure(_Id.CARB_SPILLAGE_CONTROLLED)),
        after_kg_m3=factor_kg_m3(vapour.figure(after)),
        source=vapour.figure(after).origin,
    )
    return line.result.value
