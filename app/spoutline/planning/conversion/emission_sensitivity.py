"""How far the result of an emission balance moves with each of its inputs, one at a time."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

from spoutline.calc.emissions import YearValue, crossing_of
from spoutline.calc.ranges import OutOfRange
from spoutline.calc.vapour_displacement import PSI
from spoutline.frozen import frozen
from spoutline.model.conversion_answers import EmissionBasis
from spoutline.model.emission_sheet import SensitivityRow
from spoutline.model.vapour_figures import VapourFigureId, VapourTables
from spoutline.planning.conversion.emission_inputs import EmissionInputs, change_kg, increment
from spoutline.planning.conversion.onboard_years import YearOfShare

SHARE_STEP = 0.02
SLOPE_FACTORS = (0.5, 1.5)
TEMPERATURE_STEP_C = 5.0
THROUGHPUT_FACTORS = (0.8, 1.2)
OWN_STEP = "engineering judgement of this program"


@frozen
class _End:
    """One end of a row: its value, and the inputs and share that go with it."""

    value: float
    inputs: EmissionInputs
    share: float


@frozen
class _Case:
    """One input at its two ends, and where the ends come from."""

    name: str
    low: _End
    high: _End
    source: str


def sensitivity_rows(
    inputs: EmissionInputs,
    shares: tuple[YearOfShare, ...],
    reference: YearOfShare,
    vapour: VapourTables,
    *,
    sign: float,
) -> tuple[SensitivityRow, ...]:
    """Return one row for each input that the basis knows; a row that leaves the range of the data is left out.

    Parameters
    ----------
    inputs
        The inputs of the balance.
    shares
        All years, for the year of crossing.
    reference
        The year whose change is shown.
    vapour
        Figures, for the ends of the usual range.
    sign
        1 for taking recovery away, -1 for bringing it in.
    """
    found: list[SensitivityRow] = []
    for case in _cases(inputs, reference.share, vapour):
        try:
            found.append(_row(case, shares, vapour, sign))
        except OutOfRange:
            continue
    return tuple(found)


def _cases(inputs: EmissionInputs, share: float, vapour: VapourTables) -> Iterator[_Case]:
    def case(
        name: str, values: tuple[float, float], changed: Callable[[float], EmissionInputs], source: str = OWN_STEP
    ) -> _Case:
        low, high = (_End(value, changed(value), share) for value in values)
        return _Case(name, low, high, source)

    ends = (VapourFigureId.IN_USE_EFFICIENCY_LOW, VapourFigureId.IN_USE_EFFICIENCY_HIGH)
    low, high = (vapour.figure(one) for one in ends)
    yield case(
        "in_use_efficiency",
        (low.value, high.value),
        lambda value: replace(inputs, in_use_efficiency=value),
        low.origin,
    )
    slope = inputs.slope
    slopes = (slope.value * SLOPE_FACTORS[0], slope.value * SLOPE_FACTORS[1])
    yield case("compatibility_slope", slopes, lambda value: replace(inputs, slope=replace(slope, value=value)))
    fewer, more = max(share - SHARE_STEP, 0.0), min(share + SHARE_STEP, 1.0)
    yield _Case("onboard_share", _End(fewer, inputs, fewer), _End(more, inputs, more), OWN_STEP)
    if inputs.basis is EmissionBasis.EPA_MODEL:
        pressures = (inputs.vapour_pressure_pa - PSI.value, inputs.vapour_pressure_pa + PSI.value)
        yield case("vapour_pressure", pressures, lambda value: replace(inputs, vapour_pressure_pa=value))
        ambient = (inputs.ambient_c - TEMPERATURE_STEP_C, inputs.ambient_c + TEMPERATURE_STEP_C)
        yield case("ambient", ambient, lambda value: replace(inputs, ambient_c=value))
    if inputs.throughput_m3 is not None:
        sold = (inputs.throughput_m3 * THROUGHPUT_FACTORS[0], inputs.throughput_m3 * THROUGHPUT_FACTORS[1])
        yield case("throughput", sold, lambda value: replace(inputs, throughput_m3=value))


def _row(case: _Case, shares: tuple[YearOfShare, ...], vapour: VapourTables, sign: float) -> SensitivityRow:
    def change(end: _End) -> float | None:
        found = change_kg(end.share, end.inputs, vapour)
        return None if found is None else sign * found

    def crossing(end: _End) -> int | None:
        found = crossing_of([YearValue(one.year, increment(one.share, end.inputs)) for one in shares])
        return found.year if found else None

    low, high = case.low, case.high
    return SensitivityRow(
        input_name=case.name,
        low=low.value,
        high=high.value,
        increment_low=increment(low.share, low.inputs),
        increment_high=increment(high.share, high.inputs),
        change_low_kg=change(low),
        change_high_kg=change(high),
        crossing_low=crossing(low),
        crossing_high=crossing(high),
        source=case.source,
    )
