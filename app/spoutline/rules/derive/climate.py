"""The climate against the hardware's listed range and the liquid's own cold points."""

from __future__ import annotations

from spoutline.calc.liquids import HIGHEST_TEMPERATURE, cold_limit_c, cold_points
from spoutline.model.finding import Verdict
from spoutline.model.limit import LimitId
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import RefusalStatus, WayOut, Window
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.refusal import Refused
from spoutline.rules.verdicts import Derivation

_RANGE = (LimitId.NOZZLE_TEMPERATURE_MIN, LimitId.NOZZLE_TEMPERATURE_MAX)


def _celsius(name: str, value: float) -> Quantity:
    return Quantity(name, value, Dimension.TEMPERATURE)


def derive_climate(notes: Derivation, liquid: Liquid) -> tuple[Refused, ...]:
    """Add the temperature line and what the climate says about listing, freezing, clouding and the liquid data.

    The hardware is held to the whole climate. The flow is worked out only where the liquid has data, and says so.

    Parameters: ``notes``, the derivation under way; ``liquid``, family and blend percent.
    Result: a refusal where no temperature of the climate can be computed, else empty.
    """
    climate = notes.site.climate
    ends = (_celsius("temperature_low", climate.low_c), _celsius("temperature_high", climate.high_c))
    notes.line(RuleId.ASKS_TEMPERATURE, *ends, limits=_RANGE)
    _compare_with_listing(notes, ends)
    _compare_with_cold_points(notes, liquid, ends[0])
    return _compare_with_data(notes, liquid, ends)


def _compare_with_listing(notes: Derivation, ends: tuple[Quantity, Quantity]) -> None:
    low, high = (notes.tables.jurisdiction.optional_number(row) for row in _RANGE)
    listed = Window(minimum=low, maximum=high)
    if listed.holds(ends[0].value) and listed.holds(ends[1].value):
        return
    bounds = (("listing_low", low), ("listing_high", high))
    shown = tuple(_celsius(name, bound) for name, bound in bounds if bound is not None)
    notes.find(RuleId.CLIMATE_BEYOND_LISTING, *ends, *shown, verdict=Verdict.NOTE, limits=_RANGE)


def _compare_with_cold_points(notes: Derivation, liquid: Liquid, low: Quantity) -> None:
    if liquid.family is LiquidFamily.DEF:
        freezing = notes.tables.jurisdiction.optional_number(LimitId.DEF_FREEZING)
        if freezing is not None and low.value < freezing:
            notes.find(
                RuleId.DEF_FREEZES,
                low,
                _celsius("freezing", freezing),
                verdict=Verdict.BROKEN,
                limits=(LimitId.DEF_FREEZING,),
            )
        return
    points, family = cold_points(liquid), Fact("family", liquid.family)
    if points.solid_c is not None and low.value < points.solid_c:
        notes.find(RuleId.LIQUID_SOLID, family, low, _celsius("solid_point", points.solid_c), verdict=Verdict.BROKEN)
        return
    first_c = max((point for point in (points.cloud_c, points.pour_c) if point is not None), default=None)
    if first_c is not None and low.value < first_c:
        notes.find(RuleId.LIQUID_CLOUDS, family, low, _celsius("cold_limit", first_c), verdict=Verdict.NOTE)


def _compare_with_data(notes: Derivation, liquid: Liquid, ends: tuple[Quantity, Quantity]) -> tuple[Refused, ...]:
    data_low, data_high = cold_limit_c(liquid), HIGHEST_TEMPERATURE.value
    low, high = ends[0].value, ends[1].value
    if low > data_high or high < data_low:
        found = notes.find(
            RuleId.CLIMATE_NOT_COMPUTABLE,
            *ends,
            _celsius("data_low", data_low),
            _celsius("data_high", data_high),
            verdict=Verdict.BROKEN,
        )
        def_ways = (WayOut.HEAT_OR_HOUSE_DEF,) if liquid.family is LiquidFamily.DEF else ()
        return (Refused(RefusalStatus.OUT_OF_RANGE, found, (*def_ways, WayOut.CORRECT_CLIMATE)),)
    if low < data_low or high > data_high:
        notes.find(
            RuleId.CLIMATE_BEYOND_DATA,
            *ends,
            _celsius("computed_low", max(low, data_low)),
            _celsius("computed_high", min(high, data_high)),
            verdict=Verdict.NOTE,
        )
    return ()
