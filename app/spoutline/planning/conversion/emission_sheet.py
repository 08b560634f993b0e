"""The emissions of a conversion: increment year by year, break-even, balance of the site, sensitivity."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.calc.emissions import YearValue, crossing_of, factor_kg_m3, yearly_change_line
from spoutline.calc.ranges import OutOfRange
from spoutline.calc.spillage import PUMP_SPILL, spillage_line, spillage_per_fill_line
from spoutline.calc.vapour import break_even_line, program_difference_line, recovery_increment
from spoutline.calc.vapour_displacement import (
    fleet_displacement_line,
    linear_displacement_rate,
)
from spoutline.model.check import WorkedLine
from spoutline.model.conversion_answers import EmissionBasis
from spoutline.model.emission_sheet import EmissionGap, EmissionSheet, EmissionYear, ShareOrigin
from spoutline.model.liquid import LiquidFamily
from spoutline.model.position_conversion import ConversionKind, PositionConversion
from spoutline.model.survey import Survey
from spoutline.model.vapour_figures import VapourFigureId, VapourTables
from spoutline.planning.conversion.emission_inputs import (
    EmissionInputs,
    carb_lines,
    change_kg,
    displacement_of,
    emission_inputs,
    increment,
    spillage_kg,
)
from spoutline.planning.conversion.emission_sensitivity import sensitivity_rows
from spoutline.planning.conversion.hose_losses import hose_change
from spoutline.planning.conversion.onboard_years import YearOfShare, years_of_share

_Id = VapourFigureId


def emission_sheet(
    survey: Survey, positions: tuple[PositionConversion, ...], vapour: VapourTables, *, counted: bool = False
) -> EmissionSheet | None:
    """Return the emissions of a conversion that takes recovery away or brings it in; None where none does.

    Parameters
    ----------
    survey
        With the owner's answers.
    positions
        The converted positions.
    vapour
        Figures, shares and their sources.
    counted
        Leaves out what only a reader asks: worked lines and how far the balance depends on its inputs.
    """
    gasoline = [one for one in positions if one.position.liquid.family is LiquidFamily.GASOLINE]
    removing = [one for one in gasoline if ConversionKind.DECOMMISSION in one.kinds]
    adding = [one for one in gasoline if ConversionKind.ADD_RECOVERY in one.kinds]
    concerned = removing or adding
    if not concerned:
        return None
    inputs = emission_inputs(survey, concerned, vapour, removing=bool(removing))
    return _Sheet(survey, positions, vapour, inputs, removing=bool(removing)).sheet(counted=counted)


class _Sheet:
    """Works one balance out."""

    def __init__(
        self,
        survey: Survey,
        positions: tuple[PositionConversion, ...],
        vapour: VapourTables,
        inputs: EmissionInputs,
        *,
        removing: bool,
    ) -> None:
        self.answers = survey.conversion.emissions
        self.vapour = vapour
        self.inputs = inputs
        self.removing = removing
        self.sign = 1.0 if removing else -1.0
        start = survey.conversion.sequence.start_date
        self.first_year = None if start is None else start.year
        last_year = None if start is None else start.year + survey.conversion.money.years - 1
        self.shares = years_of_share(self.answers, vapour, last_year=last_year)
        self.hoses = hose_change(positions, survey.conversion.follow, vapour, temperature_c=inputs.ambient_c)

    def sheet(self, *, counted: bool) -> EmissionSheet:
        years = tuple(self._year(one) for one in self.shares)
        crossing = crossing_of([YearValue(one.year, one.increment) for one in years])
        reference = self._reference()
        explained = None if counted else reference
        return EmissionSheet(
            years=years,
            break_even=break_even_line(
                recovered_share=self.inputs.recovered_share,
                assist_share=self.inputs.assist_share,
                in_use_efficiency=self.inputs.in_use_efficiency,
                slope=self.inputs.slope,
            ),
            crossing_year=crossing.year if crossing else None,
            crossing_moment=crossing.moment if crossing else None,
            reference_year=reference.year if reference else None,
            lines=tuple(self._lines(explained)) if explained else (),
            sensitivity=sensitivity_rows(self.inputs, self.shares, explained, self.vapour, sign=self.sign)
            if explained
            else (),
            figures=tuple(self.vapour.figure(one) for one in self._figure_ids()),
            gaps=tuple(gap for gap in EmissionGap if gap in set(self._gaps())),
            shares_source=self._shares_source(),
            assist_share=self.inputs.assist_share,
            removing=self.removing,
        )

    def _reference(self) -> YearOfShare | None:
        """Return the first year of the plan whose share is known, else the last known year."""
        ahead = [one for one in self.shares if self.first_year is not None and one.year >= self.first_year]
        return ahead[0] if ahead else (self.shares[-1] if self.shares else None)

    def _is_balanced(self, year: int) -> bool:
        reference = self._reference()
        return reference is not None and year >= reference.year

    def _year(self, one: YearOfShare) -> EmissionYear:
        added = increment(one.share, self.inputs)
        balanced = self._is_balanced(one.year)
        change = change_kg(one.share, self.inputs, self.vapour) if balanced else None
        spilt = spillage_kg(self.inputs, self.vapour) if balanced else None
        return EmissionYear(
            year=one.year,
            onboard_share=one.share,
            origin=one.origin,
            increment=added,
            displacement_kg=None if change is None else self.sign * change,
            spillage_kg=None if spilt is None else self.sign * spilt,
            permeation_kg=self.hoses.change_kg if balanced else None,
        )

    def _lines(self, reference: YearOfShare) -> Iterator[WorkedLine]:
        inputs = self.inputs
        found = recovery_increment(
            recovered_share=inputs.recovered_share,
            assist_share=inputs.assist_share,
            onboard_share=reference.share,
            in_use_efficiency=inputs.in_use_efficiency,
            slope=inputs.slope,
        )
        yield from found.lines
        yield program_difference_line(
            onboard_share=reference.share,
            onboard_efficiency=self.vapour.value(_Id.ONBOARD_EFFICIENCY),
            recovered_share=inputs.recovered_share,
            in_use_efficiency=inputs.in_use_efficiency,
        )
        displacement = displacement_of(inputs, self.vapour)
        yield from displacement.lines
        if inputs.throughput_m3 is None:
            return
        if inputs.basis is EmissionBasis.CARB:
            yield from carb_lines(reference.share, inputs, self.vapour)
        else:
            yield yearly_change_line(
                throughput_m3=inputs.throughput_m3, rate_kg_m3=displacement.rate_kg_m3, increment=found.value
            )
        if inputs.basis is EmissionBasis.EPA_MODEL:
            yield from self._model_lines(reference, displacement.rate_kg_m3)

    def _model_lines(self, reference: YearOfShare, rate_kg_m3: float) -> Iterator[WorkedLine]:
        """Yield what the model says beyond the change: displacement of the fleet without recovery, and spillage."""
        figure = self.vapour.figure
        yield fleet_displacement_line(
            uncontrolled_kg_m3=rate_kg_m3,
            onboard_kg_m3=factor_kg_m3(figure(_Id.ONBOARD_RATE)),
            onboard_share=reference.share,
            program_reduction=0.0,
        )
        yield from self._comparison()
        if self.inputs.marine:
            if self.answers.mean_fill_l is not None:
                yield spillage_per_fill_line(loss_kg=PUMP_SPILL.value, fill_m3=self.answers.mean_fill_l * 1e-3)
            return
        yield spillage_line(
            spillage_kg_m3=factor_kg_m3(figure(_Id.MODEL_SPILLAGE)),
            avoided_share=figure(_Id.MODEL_SPILLAGE_ONBOARD).value * reference.share,
            program_reduction=0.0,
        )

    def _comparison(self) -> Iterator[WorkedLine]:
        """Yield the older linear form beside the one used, where it holds; it enters no balance."""
        dispensed, difference, *_ = displacement_of(self.inputs, self.vapour).lines
        # the linear form takes tank minus dispensed: the reverse of the non-road form, whose tank is as warm as the air
        sign = -1.0 if self.inputs.marine else 1.0
        try:
            yield from linear_displacement_rate(
                dispensed_c=dispensed.result.value,
                difference_c=sign * difference.result.value,
                vapour_pressure_pa=self.inputs.vapour_pressure_pa,
            ).lines
        except OutOfRange:
            return

    def _figure_ids(self) -> Iterator[VapourFigureId]:
        yield from (_Id.COMPATIBILITY_SLOPE, _Id.IN_USE_EFFICIENCY, _Id.IN_USE_EFFICIENCY_LOW)
        yield from (_Id.IN_USE_EFFICIENCY_HIGH, _Id.ONBOARD_EFFICIENCY)
        if self.inputs.basis is EmissionBasis.AP42:
            yield from (_Id.AP42_DISPLACEMENT, _Id.AP42_DISPLACEMENT_CONTROLLED, _Id.AP42_SPILLAGE)
        elif self.inputs.basis is EmissionBasis.CARB:
            yield from (one for one in VapourFigureId if one.startswith("carb_"))
        else:
            on_road = () if self.inputs.marine else ("dispensed_", "difference_")
            prefixes = ("rate_", *on_road, "onboard_rate", "model_")
            yield from (one for one in VapourFigureId if one.startswith(prefixes))
            yield from (_Id.DEFAULT_VAPOUR_PRESSURE, _Id.DEFAULT_AMBIENT)
        yield from (_Id.HOSE_PERMEATION, _Id.HOSE_PERMEATION_LOW)

    def _gaps(self) -> Iterator[EmissionGap]:
        if self.inputs.throughput_m3 is None:
            yield EmissionGap.THROUGHPUT
        origins = {one.origin for one in self.shares}
        if not self.shares or (self.first_year is not None and self.shares[-1].year < self.first_year):
            yield EmissionGap.SHARES
        if ShareOrigin.HELD in origins:
            yield EmissionGap.SHARES_HELD
        if self.inputs.basis is EmissionBasis.EPA_MODEL:
            if self.answers.mean_ambient_c is None:
                yield EmissionGap.AMBIENT_DEFAULT
            if self.answers.reid_vapour_pressure_kpa is None:
                yield EmissionGap.VAPOUR_PRESSURE_DEFAULT
        yield from self.hoses.gaps

    def _shares_source(self) -> str:
        own = self.answers.own_shares_source or "owner's own figures, source not stated"
        told = {
            ShareOrigin.OWN: own,
            ShareOrigin.TABLE: f"{self.vapour.shares_source} [{self.vapour.shares_status}]",
        }
        present = {one.origin for one in self.shares}
        return "; ".join(text for origin, text in told.items() if origin in present)
