"""The figures that an accessory adds to those of every part, each declared here and only here."""

from __future__ import annotations

from typing import Annotated

from spoutline.frozen import frozen
from spoutline.model.figure import Figure, TableUnit
from spoutline.model.liquid import LiquidFamily, ListingClass
from spoutline.model.quantity import Dimension

_MM = TableUnit.MILLIMETRE


@frozen(kw_only=True)
class AccessoryData:
    """What a cap, clamp, sealant or label adds: what it fits."""

    fits_diameter_minimum_m: Annotated[
        float | None,
        Figure(
            column="fits_min_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=200,
            up_to="fits_diameter_maximum_m",
            holds="smallest diameter that it fits",
            shown=False,
            tells=1,
            bare=True,
        ),
    ]
    fits_diameter_maximum_m: Annotated[
        float | None,
        Figure(
            column="fits_max_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=200,
            holds="greatest diameter that it fits",
            shown=False,
        ),
    ]
    label_classes: Annotated[
        frozenset[ListingClass],
        Figure(column="label_classes", holds="classes that a label names", shown=False, tells=3, bare=True),
    ]
    label_def: Annotated[bool, Figure(column="label_def", holds="label for DEF", shown=False, tells=4)]
    label_family: Annotated[
        LiquidFamily | None,
        Figure(
            column="label_family",
            holds="kerosene or fuel_oil where the label names it; empty for gasoline and diesel",
            shown=False,
            tells=2,
            bare=True,
        ),
    ] = None
