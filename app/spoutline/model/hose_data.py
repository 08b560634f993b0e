"""The figures that a hose adds to those of every part, each declared here and only here."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from spoutline.frozen import frozen
from spoutline.model.figure import Figure, TableUnit
from spoutline.model.quantity import Dimension

_MM = TableUnit.MILLIMETRE
_G_M2_DAY = TableUnit.GRAM_PER_SQUARE_METRE_DAY


class HoseConstruction(StrEnum):
    """Hardwall keeps its round bore on a bend (helical wire); softwall is textile-braided and lies flat on a reel."""

    HARDWALL = "hardwall"
    SOFTWALL = "softwall"


@frozen(kw_only=True)
class HoseData:
    """What a hose adds. ``inner_tube_*`` describe the second tube of a coaxial hose and are None on one path.

    For balance hose liquid runs inside and vapour in the outer ring; for vacuum assist liquid runs in the ring round
    the inner vapour tube. ``permeation_kg_m2_s`` is on the inner area at 38 degrees Celsius; None where untested.
    """

    construction: Annotated[
        HoseConstruction,
        Figure(
            column="construction",
            holds="hardwall keeps its round bore; softwall lies flat on a reel",
            tells=2,
            bare=True,
        ),
    ]
    bore_m: Annotated[
        float,
        Figure(
            column="bore_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=5,
            most=80,
            below="outside_diameter_m",
            holds="bore of the hose, of the outer tube if coaxial",
            label="bore",
            tells=4,
        ),
    ]
    length_m: Annotated[
        float,
        Figure(
            column="length_m",
            dimension=Dimension.LENGTH,
            above=0,
            most=40,
            holds="length",
            label="length",
            tells=1,
            bare=True,
        ),
    ]
    outside_diameter_m: Annotated[
        float,
        Figure(
            column="outside_diameter_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=5,
            most=120,
            holds="outside diameter",
            label="outside_diameter",
        ),
    ]
    minimum_bend_radius_m: Annotated[
        float,
        Figure(
            column="min_bend_radius_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=1000,
            holds="smallest bend radius",
            label="least_bend_radius",
        ),
    ]
    mass_kg_m: Annotated[
        float,
        Figure(
            column="mass_kg_m",
            dimension=Dimension.MASS_PER_LENGTH,
            above=0,
            most=5,
            holds="mass of the empty hose",
            label="mass_per_length",
        ),
    ]
    resistance_ohm_m: Annotated[
        float | None,
        Figure(
            column="resistance_ohm_m",
            dimension=Dimension.RESISTANCE_PER_LENGTH,
            least=0,
            most=1e8,
            holds="electrical resistance",
            label="resistance_per_length",
        ),
    ]
    permeation_kg_m2_s: Annotated[
        float | None,
        Figure(
            column="permeation_g_m2_day",
            unit=_G_M2_DAY,
            dimension=Dimension.PERMEATION,
            least=0,
            most=1000,
            holds="permeation at 38 C",
            label="permeation",
            at_c=38.0,
        ),
    ]
    low_permeation: Annotated[bool, Figure(column="low_permeation", holds="marked low-permeation", tells=3)]
    inner_tube_bore_m: Annotated[
        float | None,
        Figure(
            column="inner_tube_bore_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=60,
            below="inner_tube_outside_diameter_m",
            holds="bore of the inner tube",
            note="coaxial only",
            label="inner_tube_bore",
            coaxial_only=True,
        ),
    ]
    inner_tube_outside_diameter_m: Annotated[
        float | None,
        Figure(
            column="inner_tube_od_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=60,
            below="bore_m",
            holds="outside diameter of the inner tube",
            label="inner_tube_outside_diameter",
            coaxial_only=True,
        ),
    ]
    built_in_swivel: Annotated[
        bool,
        Figure(
            column="built_in_swivel",
            holds="turns at its end without a separate swivel",
            label="swivel_built_in",
            coaxial_only=True,
        ),
    ]
