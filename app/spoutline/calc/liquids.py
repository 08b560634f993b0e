"""Density and viscosity of a blend at a temperature, with its cold points."""

from __future__ import annotations

import math
from enum import StrEnum

from spoutline.calc.constants import Constant
from spoutline.calc.liquid_components import COMPONENTS, Component, ComponentData
from spoutline.calc.ranges import RangeReason, require_between
from spoutline.calc.viscosity import D341_SOURCE, viscosity_between_anchors_m2_s
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.quantity import Dimension, Quantity

LOWEST_TEMPERATURE = Constant(
    "lowest temperature of the liquid data", -30.0, "degC", "reach of the viscosity anchors", LimitStatus.JUDGEMENT
)
HIGHEST_TEMPERATURE = Constant(
    "highest temperature of the liquid data", 45.0, "degC", "reach of the viscosity anchors", LimitStatus.JUDGEMENT
)
DENSITY_REFERENCE = Constant("reference temperature of density", 15.0, "degC", "ISO 5024", LimitStatus.MEMORY)
SLOPE_STEP = Constant("step in which the density slope is shown", 10.0, "K", "choice of display", LimitStatus.JUDGEMENT)
B20_COLDER = Constant(
    "rise of the cloud point from B0 to B20", 3.0, "K", "biodiesel handling guidance: 2-3 C", LimitStatus.SECONDARY
)
B20_PERCENT = Constant("biodiesel in B20", 20.0, "percent", "name of the blend", LimitStatus.VERIFIED)

ARRHENIUS_SOURCE = (
    "Arrhenius blending rule with volume fractions; Benjumea et al., Fuel 87 (2008) 2069; Alptekin and Canakci, "
    "Renewable Energy 33 (2008) 2623"
)

_BASE: dict[LiquidFamily, Component] = {
    LiquidFamily.GASOLINE: Component.GASOLINE,
    LiquidFamily.DIESEL: Component.DIESEL_2D,
    LiquidFamily.KEROSENE: Component.KEROSENE,
    LiquidFamily.FUEL_OIL: Component.FUEL_OIL,
    LiquidFamily.DEF: Component.DEF,
}


class LiquidWarning(StrEnum):
    """What the cold may do to a liquid whose flow is still worked out."""

    MAY_CLOUD = "may_cloud"  # wax or ester crystals may form and block filters
    MAY_NOT_POUR = "may_not_pour"


@frozen
class BlendShare:
    """One component of a blend and its share by volume, 0 to 1."""

    component: Component
    fraction: float


@frozen(kw_only=True)
class LiquidState:
    """A liquid at a temperature, as the flow calculations need it."""

    density_kg_m3: float
    kinematic_viscosity_m2_s: float
    temperature_c: float
    warnings: tuple[LiquidWarning, ...] = ()
    lines: tuple[WorkedLine, ...] = ()


@frozen(kw_only=True)
class ColdPoints:
    """Temperatures below which a blend may cloud, may not pour, is solid; None where that lies below the data."""

    cloud_c: float | None
    pour_c: float | None
    solid_c: float | None
    source: str
    status: LimitStatus


def blend_shares(liquid: Liquid) -> tuple[BlendShare, ...]:
    """Return the components of a blend; those with no share are left out.

    Parameters
    ----------
    liquid : Liquid
        Family and blend percent [percent by volume]: ethanol in gasoline, biodiesel in diesel, kerosene and fuel oil.

    Returns
    -------
    tuple of BlendShare
        Shares by volume [-], sum 1.

    Raises
    ------
    OutOfRange
        Blend outside 0 to 100 percent, or a blend of DEF.

    Source: names of the blends (E10 is 10 percent ethanol by volume); diesel is taken as grade 2-D.
    """
    high = 0.0 if liquid.family is LiquidFamily.DEF else 100.0
    require_between("blend_percent", liquid.blend_percent, Dimension.PERCENT, low=0.0, high=high)
    added = Component.ETHANOL if liquid.family is LiquidFamily.GASOLINE else Component.BIODIESEL
    share = liquid.blend_percent / 100.0
    pair = (BlendShare(_BASE[liquid.family], 1.0 - share), BlendShare(added, share))
    return tuple(blended for blended in pair if blended.fraction > 0.0)


def liquid_state(liquid: Liquid, temperature_c: float) -> LiquidState:
    """Return density and viscosity of a blend at a temperature.

    ``rho = sum(phi (rho15 + beta (t - 15)))``; ``ln nu = sum(phi ln nu_i)`` with each ``nu_i`` by ASTM D341.

    Parameters
    ----------
    liquid : Liquid
        Family and blend percent [percent by volume].
    temperature_c : float
        Temperature of the liquid [degC], -30 to 45 and not below its solid point.

    Returns
    -------
    LiquidState
        Density [kg/m3], kinematic viscosity [m2/s], warnings of cold, worked lines.

    Raises
    ------
    OutOfRange
        Temperature outside the data or below the freezing point, or a blend that does not exist.

    Source: ASTM D341 for each component, Arrhenius rule for the blend, component table; typical fuels, a certificate
    beats them.
    """
    shares = blend_shares(liquid)
    cold = cold_points(liquid)
    _require_liquid(temperature_c, cold)
    densities = [_density_line(share.component, temperature_c) for share in shares]
    viscosities = [_viscosity_line(share.component, temperature_c) for share in shares]
    lines = [*densities, *viscosities]
    density = densities[0].result.value
    viscosity = viscosities[0].result.value
    if len(shares) > 1:
        blend = _blend_lines(shares, densities, viscosities)
        density, viscosity = (line.result.value for line in blend)
        lines += blend
    return LiquidState(
        density_kg_m3=density,
        kinematic_viscosity_m2_s=viscosity,
        temperature_c=temperature_c,
        warnings=_warnings(temperature_c, cold),
        lines=tuple(lines),
    )


def cold_points(liquid: Liquid) -> ColdPoints:
    """Return the temperatures at which the cold begins to matter.

    Between B0, B20 and B100 the points are taken in a straight line. The diesel figures are upper ends of the usual
    ranges: a winter fuel stays clear well below.

    Parameters
    ----------
    liquid : Liquid
        Family and blend percent [percent by volume].

    Returns
    -------
    ColdPoints
        Cloud, pour and solid point [degC], None where below the data.

    Raises
    ------
    OutOfRange
        A blend that does not exist.

    Source: cold points of the component table; straight lines between blends are engineering judgement.
    """
    blend_shares(liquid)
    base = COMPONENTS[_BASE[liquid.family]]
    if liquid.family is LiquidFamily.GASOLINE or liquid.blend_percent == 0.0:
        return ColdPoints(
            cloud_c=base.cloud_c,
            pour_c=base.pour_c,
            solid_c=base.solid_c,
            source=base.cold_source,
            status=base.cold_status,
        )
    return _biodiesel_cold_points(base, liquid.blend_percent)


def cold_limit_c(liquid: Liquid) -> float:
    """Return the lowest temperature at which the flow of this liquid is worked out.

    Parameters
    ----------
    liquid : Liquid
        Family and blend percent [percent by volume].

    Returns
    -------
    float
        The higher of the solid point and the lower end of the data [degC].

    Raises
    ------
    OutOfRange
        A blend that does not exist.

    Source: component table, cold points.
    """
    solid_c = cold_points(liquid).solid_c
    return LOWEST_TEMPERATURE.value if solid_c is None else max(solid_c, LOWEST_TEMPERATURE.value)


def _require_liquid(temperature_c: float, cold: ColdPoints) -> None:
    require_between(
        "temperature_c",
        temperature_c,
        Dimension.TEMPERATURE,
        low=LOWEST_TEMPERATURE.value,
        high=HIGHEST_TEMPERATURE.value,
        reason=RangeReason.OUTSIDE_DATA,
    )
    require_between("temperature_c", temperature_c, Dimension.TEMPERATURE, low=cold.solid_c, reason=RangeReason.FROZEN)


def _warnings(temperature_c: float, cold: ColdPoints) -> tuple[LiquidWarning, ...]:
    found = []
    if cold.cloud_c is not None and temperature_c < cold.cloud_c:
        found.append(LiquidWarning.MAY_CLOUD)
    if cold.pour_c is not None and temperature_c < cold.pour_c:
        found.append(LiquidWarning.MAY_NOT_POUR)
    return tuple(found)


def _biodiesel_cold_points(base: ComponentData, percent: float) -> ColdPoints:
    ester = COMPONENTS[Component.BIODIESEL]
    b20 = B20_PERCENT.value

    def along(at_0: float | None, ester_c: float | None) -> float | None:
        if ester_c is None:
            return at_0
        start = LOWEST_TEMPERATURE.value if at_0 is None else at_0
        at_20 = start + (B20_COLDER.value if at_0 is not None else 0.0)
        if percent <= b20:
            return None if at_0 is None else start + (at_20 - start) * percent / b20
        return at_20 + (ester_c - at_20) * (percent - b20) / (100.0 - b20)

    return ColdPoints(
        cloud_c=along(base.cloud_c, ester.cloud_c),
        pour_c=along(base.pour_c, ester.pour_c),
        solid_c=along(base.solid_c, ester.solid_c),
        source=f"{base.cold_source}; {ester.cold_source}; straight lines between blends",
        status=ester.cold_status if percent == 100.0 else LimitStatus.JUDGEMENT,
    )


def _density_line(component: Component, temperature_c: float) -> WorkedLine:
    data = COMPONENTS[component]
    change = data.density_slope_kg_m3_k * SLOPE_STEP.value
    value = data.density_15c_kg_m3 + data.density_slope_kg_m3_k * (temperature_c - DENSITY_REFERENCE.value)
    return WorkedLine(
        formula="rho = rho15 + c (t - t15) / dT",
        inputs=(
            Quantity("rho15", data.density_15c_kg_m3, Dimension.DENSITY),
            Quantity("c", change, Dimension.DENSITY),
            Quantity("dT", SLOPE_STEP.value, Dimension.TEMPERATURE_DIFFERENCE),
            Quantity("t", temperature_c, Dimension.TEMPERATURE),
            Quantity("t15", DENSITY_REFERENCE.value, Dimension.TEMPERATURE),
        ),
        result=Quantity(f"rho {component}", value, Dimension.DENSITY),
        source=f"{data.density_source} ({data.status})",
        note="c is the change of density over dT",
    )


def _viscosity_line(component: Component, temperature_c: float) -> WorkedLine:
    data = COMPONENTS[component]
    first, second = data.anchors
    value = viscosity_between_anchors_m2_s(anchor_1=first, anchor_2=second, temperature_c=temperature_c)
    return WorkedLine(
        formula="log log Z = A - B log T, Z = nu + 0.7 + exp(-1.47 - 1.84 nu - 0.51 nu^2)",
        inputs=(
            Quantity("nu1", first.kinematic_viscosity_m2_s, Dimension.KINEMATIC_VISCOSITY),
            Quantity("t1", first.temperature_c, Dimension.TEMPERATURE),
            Quantity("nu2", second.kinematic_viscosity_m2_s, Dimension.KINEMATIC_VISCOSITY),
            Quantity("t2", second.temperature_c, Dimension.TEMPERATURE),
            Quantity("t", temperature_c, Dimension.TEMPERATURE),
        ),
        result=Quantity(f"nu {component}", value, Dimension.KINEMATIC_VISCOSITY),
        source=f"{D341_SOURCE}; {data.viscosity_source} ({data.status})",
        note="inside the formula nu is in mm2/s and T in kelvin; A and B follow from the two anchors",
    )


def _blend_lines(
    shares: tuple[BlendShare, ...], densities: list[WorkedLine], viscosities: list[WorkedLine]
) -> tuple[WorkedLine, WorkedLine]:
    fractions = tuple(Quantity(f"phi {share.component}", share.fraction, Dimension.RATIO) for share in shares)
    density = math.fsum(share.fraction * line.result.value for share, line in zip(shares, densities, strict=True))
    log_viscosity = math.fsum(
        share.fraction * math.log(line.result.value) for share, line in zip(shares, viscosities, strict=True)
    )
    return (
        WorkedLine(
            formula="rho = sum(phi rho_i)",
            inputs=(*fractions, *(line.result for line in densities)),
            result=Quantity("rho", density, Dimension.DENSITY),
            source="volume fractions, excess volume left out (engineering judgment)",
        ),
        WorkedLine(
            formula="ln nu = sum(phi ln nu_i)",
            inputs=(*fractions, *(line.result for line in viscosities)),
            result=Quantity("nu", math.exp(log_viscosity), Dimension.KINEMATIC_VISCOSITY),
            source=ARRHENIUS_SOURCE,
        ),
    )
