"""What flows through the hose and which listing class its blend asks for."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen


class LiquidFamily(StrEnum):
    """Families of motor fuels and fluids that a dispenser sells."""

    GASOLINE = "gasoline"
    DIESEL = "diesel"
    KEROSENE = "kerosene"
    FUEL_OIL = "fuel_oil"
    DEF = "def"


class ListingClass(StrEnum):
    """Fluid classes of the published listing standards (UL 2586A/B, 567A/B, 330A/B scopes)."""

    E10 = "E10"
    E25 = "E25"
    E85 = "E85"
    B5 = "B5"
    B20 = "B20"
    B100 = "B100"


GASOLINE_CLASSES = (ListingClass.E10, ListingClass.E25, ListingClass.E85)
DIESEL_CLASSES = (ListingClass.B5, ListingClass.B20, ListingClass.B100)


class ListingScheme(StrEnum):
    """Whose standards a part's listing rests on."""

    UL = "UL"
    EN = "EN"


@frozen
class Liquid:
    """A family and its blend: percent ethanol in gasoline, percent biodiesel in the diesel family, 0 for DEF."""

    family: LiquidFamily
    blend_percent: float


def is_flammable(family: LiquidFamily) -> bool:
    """Say whether the family is a flammable or combustible liquid; only DEF is not."""
    return family is not LiquidFamily.DEF
