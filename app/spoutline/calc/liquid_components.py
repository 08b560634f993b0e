"""The pure components that the liquids are blended from: density, viscosity anchors, cold points."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus


class Component(StrEnum):
    """Components with data of their own."""

    GASOLINE = "gasoline"  # without ethanol
    ETHANOL = "ethanol"
    DIESEL_1D = "diesel_1d"
    DIESEL_2D = "diesel_2d"
    BIODIESEL = "biodiesel"  # B100, soy
    KEROSENE = "kerosene"
    FUEL_OIL = "fuel_oil"  # No. 2
    DEF = "def"  # AUS 32


@frozen
class ViscosityAnchor:
    """One known point: kinematic viscosity at a temperature."""

    temperature_c: float
    kinematic_viscosity_m2_s: float


@frozen(kw_only=True)
class ComponentData:
    """Typical figures of a component; a fuel certificate beats them.

    ``density_slope_kg_m3_k`` is the change of density per kelvin. ``cloud_c`` is the upper end of the usual range of
    cloud points, ``pour_c`` of pour points; below ``solid_c`` the liquid does not flow and is refused. None where no
    figure is known inside the range of the data.
    """

    density_15c_kg_m3: float
    density_slope_kg_m3_k: float
    anchors: tuple[ViscosityAnchor, ViscosityAnchor]
    cloud_c: float | None
    pour_c: float | None
    solid_c: float | None
    density_source: str
    viscosity_source: str
    cold_source: str
    status: LimitStatus
    cold_status: LimitStatus


def _anchors(
    first_c: float, first_mm2_s: float, second_c: float, second_mm2_s: float
) -> tuple[ViscosityAnchor, ViscosityAnchor]:
    return ViscosityAnchor(first_c, first_mm2_s * 1e-6), ViscosityAnchor(second_c, second_mm2_s * 1e-6)


_FUEL_TABLE = "US DOE Alternative Fuels Data Center, fuel properties table"

COMPONENTS: dict[Component, ComponentData] = {
    Component.GASOLINE: ComponentData(
        density_15c_kg_m3=745.0,
        density_slope_kg_m3_k=-0.90,
        anchors=_anchors(-20.0, 0.90, 20.0, 0.55),
        cloud_c=None,
        pour_c=None,
        solid_c=None,
        density_source=f"{_FUEL_TABLE}: specific gravity 0.72-0.78, middle",
        viscosity_source=f"{_FUEL_TABLE}: 0.8-1.0 at -4 F, 0.5-0.6 at 68 F, middles",
        cold_source=f"{_FUEL_TABLE}: -40 C, below the range of the data",
        status=LimitStatus.SECONDARY,
        cold_status=LimitStatus.SECONDARY,
    ),
    Component.ETHANOL: ComponentData(
        density_15c_kg_m3=793.7,
        density_slope_kg_m3_k=-0.85,
        anchors=_anchors(-20.0, 3.435, 20.0, 1.50),
        cloud_c=None,
        pour_c=None,
        solid_c=None,
        density_source=f"{_FUEL_TABLE}: specific gravity 0.794-0.796; slope of a reference equation of state",
        viscosity_source=f"{_FUEL_TABLE}: rows at -4 F and 68 F",
        cold_source=f"{_FUEL_TABLE}: far below the range of the data",
        status=LimitStatus.SECONDARY,
        cold_status=LimitStatus.SECONDARY,
    ),
    Component.DIESEL_1D: ComponentData(
        density_15c_kg_m3=815.0,
        density_slope_kg_m3_k=-0.73,
        anchors=_anchors(-20.0, 7.0, 40.0, 1.75),
        cloud_c=None,
        pour_c=None,
        solid_c=None,
        density_source="typical value",
        viscosity_source="ASTM D975 range 1.3-2.4 at 40 C, middle; cold anchor typical",
        cold_source="about -40 C, below the range of the data",
        status=LimitStatus.MEMORY,
        cold_status=LimitStatus.MEMORY,
    ),
    Component.DIESEL_2D: ComponentData(
        density_15c_kg_m3=845.0,
        density_slope_kg_m3_k=-0.71,
        anchors=_anchors(-20.0, 14.7, 20.0, 3.74),
        cloud_c=-7.0,
        pour_c=None,
        solid_c=None,
        density_source=f"{_FUEL_TABLE}: specific gravity",
        viscosity_source=f"{_FUEL_TABLE}: 9.0-24.0 at -4 F, 2.8-5.0 at 68 F, geometric means",
        cold_source="Maryland 03.03.05.02 caps the cloud point at -7 C; elsewhere it goes by season",
        status=LimitStatus.SECONDARY,
        cold_status=LimitStatus.VERIFIED,
    ),
    Component.BIODIESEL: ComponentData(
        density_15c_kg_m3=882.0,
        density_slope_kg_m3_k=-0.73,
        anchors=_anchors(20.0, 6.6, 40.0, 4.1),
        cloud_c=15.0,
        pour_c=10.0,
        solid_c=-5.0,
        density_source=f"{_FUEL_TABLE}: specific gravity 0.88; slope typical",
        viscosity_source=f"typical soy ester, inside the 1.9-6.0 at 40 C of the {_FUEL_TABLE}",
        cold_source=f"{_FUEL_TABLE}: cloud point -3 to 15 C, pour point -5 to 10 C",
        status=LimitStatus.MEMORY,
        cold_status=LimitStatus.VERIFIED,
    ),
    Component.KEROSENE: ComponentData(
        density_15c_kg_m3=805.0,
        density_slope_kg_m3_k=-0.74,
        anchors=_anchors(-20.0, 4.8, 40.0, 1.30),
        cloud_c=None,
        pour_c=None,
        solid_c=None,
        density_source="military handbook range of Jet A, 775-840",
        viscosity_source="typical values",
        cold_source="about -40 C, below the range of the data",
        status=LimitStatus.MEMORY,
        cold_status=LimitStatus.MEMORY,
    ),
    Component.FUEL_OIL: ComponentData(
        density_15c_kg_m3=855.0,
        density_slope_kg_m3_k=-0.70,
        anchors=_anchors(0.0, 8.5, 40.0, 3.0),
        cloud_c=None,
        pour_c=-6.0,
        solid_c=None,
        density_source="typical value, near diesel 2-D",
        viscosity_source="typical values, near diesel 2-D",
        cold_source="ASTM D396 pour point about -6 C",
        status=LimitStatus.MEMORY,
        cold_status=LimitStatus.MEMORY,
    ),
    Component.DEF: ComponentData(
        density_15c_kg_m3=1092.4,
        density_slope_kg_m3_k=-0.48,
        anchors=_anchors(0.0, 2.20, 20.0, 1.285),
        cloud_c=None,
        pour_c=None,
        solid_c=-11.5,
        density_source="ISO 22241-1: 1087-1093 at 20 C, middle",
        viscosity_source="about 1.4 mPa.s at 20 C by the viscosity of water and of 5.9 molal urea",
        cold_source="ISO 22241-3: freezes at -11.5 C; sheets round it to -11 C (12 F)",
        status=LimitStatus.MEMORY,
        cold_status=LimitStatus.MEMORY,
    ),
}
