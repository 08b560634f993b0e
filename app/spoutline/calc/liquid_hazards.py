"""Flash class, conductivity and permittivity of the liquids: what decides fire and static."""

from __future__ import annotations

from enum import StrEnum

from spoutline.calc.constants import Constant
from spoutline.calc.liquids import blend_shares
from spoutline.calc.ranges import require_finite
from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.quantity import Dimension

_CLASS_SOURCE = "29 CFR 1910.106(a), older text"
_FUEL_TABLE = "US DOE Alternative Fuels Data Center, fuel properties table"
_NFPA_77 = "NFPA 77 (2000), extract"
PICOSIEMENS = Constant("picosiemens", 1e-12, "S", "SI prefix, exact", LimitStatus.VERIFIED)

CLASS_II_FROM = Constant("lowest flash point of class II", 37.8, "degC", _CLASS_SOURCE, LimitStatus.SECONDARY)
CLASS_IIIA_FROM = Constant("lowest flash point of class IIIA", 60.0, "degC", _CLASS_SOURCE, LimitStatus.SECONDARY)
CLASS_IIIB_FROM = Constant("lowest flash point of class IIIB", 93.0, "degC", _CLASS_SOURCE, LimitStatus.SECONDARY)
NON_CONDUCTIVE_BELOW = Constant("conductivity limit of non-conductive", 50e-12, "S/m", _NFPA_77, LimitStatus.SECONDARY)
CONDUCTIVE_ABOVE = Constant("conductivity limit of conductive", 10_000e-12, "S/m", _NFPA_77, LimitStatus.SECONDARY)
LEAST_ETHANOL_SHEDDING_CHARGE = Constant(
    "ethanol from which gasoline keeps little charge",
    10.0,
    "percent",
    "Paasi, Kalliohaka and Glor, J. Electrostatics 67 (2009) 247, abstract: E10 a little, E85 none",
    LimitStatus.SECONDARY,
)
LEAST_ETHANOL_CONDUCTIVE = Constant(
    "ethanol from which a blend counts as conductive",
    51.0,
    "percent",
    "ASTM D5798 lower end of E85 (51 percent); taking that as the boundary",
    LimitStatus.JUDGEMENT,
)

PERMITTIVITY_GASOLINE = Constant("relative permittivity of gasoline", 2.0, "-", _NFPA_77, LimitStatus.SECONDARY)
PERMITTIVITY_DISTILLATE = Constant(
    "relative permittivity of diesel, kerosene and fuel oil", 2.1, "-", "typical value", LimitStatus.MEMORY
)
PERMITTIVITY_ETHANOL = Constant("relative permittivity of ethanol", 24.5, "-", "handbooks, 25 C", LimitStatus.MEMORY)
PERMITTIVITY_BIODIESEL = Constant("relative permittivity of biodiesel", 3.2, "-", "typical value", LimitStatus.MEMORY)
PERMITTIVITY_DEF = Constant("relative permittivity of DEF", 80.0, "-", "water at 20 C", LimitStatus.MEMORY)

FLASH_GASOLINE = Constant("flash point of gasoline", -43.0, "degC", _FUEL_TABLE, LimitStatus.SECONDARY)
FLASH_ETHANOL = Constant("flash point of ethanol", 13.0, "degC", _FUEL_TABLE, LimitStatus.SECONDARY)
FLASH_DIESEL_2D = Constant(
    "least flash point of diesel 2-D", 52.0, "degC", "Maryland 03.03.05.02 after ASTM D975", LimitStatus.VERIFIED
)
FLASH_BIODIESEL = Constant("flash point of B100", 130.0, "degC", _FUEL_TABLE, LimitStatus.VERIFIED)
FLASH_KEROSENE = Constant("least flash point of kerosene", 38.0, "degC", "ASTM D3699", LimitStatus.MEMORY)
FLASH_FUEL_OIL = Constant("least flash point of fuel oil No. 2", 38.0, "degC", "ASTM D396", LimitStatus.MEMORY)


class FlashClass(StrEnum):
    """Classes of flammable and combustible liquids by flash point."""

    I = "I"  # noqa: E741 - the class is called so
    II = "II"
    IIIA = "IIIA"
    IIIB = "IIIB"
    NONE = "none"  # no flammable or combustible liquid


class ConductivityClass(StrEnum):
    """How a liquid keeps or sheds charge."""

    NON_CONDUCTIVE = "non_conductive"
    SEMI_CONDUCTIVE = "semi_conductive"
    CONDUCTIVE = "conductive"


@frozen(kw_only=True)
class Flash:
    """The flash class with the flash point it rests on [degC]; the certificate of the fuel beats it."""

    flash_class: FlashClass
    flash_point_c: float | None
    source: str
    status: LimitStatus


@frozen(kw_only=True)
class Conductivity:
    """Typical range of conductivity [S/m]; None on a side without a figure."""

    conductivity_class: ConductivityClass
    low_s_m: float | None
    high_s_m: float | None
    source: str
    status: LimitStatus


def class_of_flash_point(flash_point_c: float) -> FlashClass:
    """Return the class of a flash point, for instance of the user's own certificate.

    Parameters
    ----------
    flash_point_c : float
        Flash point, closed cup [degC].

    Returns
    -------
    FlashClass
        I below 37.8, II below 60, IIIA below 93, IIIB above.

    Raises
    ------
    OutOfRange
        The flash point is not a finite number.

    Source: 29 CFR 1910.106(a), older text (secondary).
    """
    require_finite("flash_point_c", flash_point_c, Dimension.TEMPERATURE)
    if flash_point_c < CLASS_II_FROM.value:
        return FlashClass.I
    if flash_point_c < CLASS_IIIA_FROM.value:
        return FlashClass.II
    return FlashClass.IIIA if flash_point_c < CLASS_IIIB_FROM.value else FlashClass.IIIB


def flash_class(liquid: Liquid) -> Flash:
    """Return the flash class of a liquid by its usual flash point.

    A blend takes the lower flash point of its components: a little of the lighter one decides.

    Parameters
    ----------
    liquid : Liquid
        Family and blend percent [percent by volume].

    Returns
    -------
    Flash
        Class and flash point [degC], with source and status.

    Raises
    ------
    OutOfRange
        A blend that does not exist.

    Source: fuel properties table, ASTM D975, D396, D3699; class limits 29 CFR 1910.106(a).
    """
    blend_shares(liquid)
    if liquid.family is LiquidFamily.DEF:
        return Flash(
            flash_class=FlashClass.NONE,
            flash_point_c=None,
            source="aqueous urea does not burn",
            status=LimitStatus.MEMORY,
        )
    pure = liquid.blend_percent == 100.0
    constant = {
        LiquidFamily.GASOLINE: FLASH_ETHANOL if pure else FLASH_GASOLINE,
        LiquidFamily.DIESEL: FLASH_BIODIESEL if pure else FLASH_DIESEL_2D,
        LiquidFamily.KEROSENE: FLASH_BIODIESEL if pure else FLASH_KEROSENE,
        LiquidFamily.FUEL_OIL: FLASH_BIODIESEL if pure else FLASH_FUEL_OIL,
    }[liquid.family]
    return Flash(
        flash_class=class_of_flash_point(constant.value),
        flash_point_c=constant.value,
        source=constant.source,
        status=constant.status,
    )


def conductivity_s_m(liquid: Liquid) -> Conductivity:
    """Return the typical range of conductivity; blends with diesel keep the figures of dry diesel, the worse case.

    Parameters
    ----------
    liquid : Liquid
        Family and blend percent [percent by volume].

    Returns
    -------
    Conductivity
        Class and range [S/m]; no figure where none is published, as for ethanol blends.

    Raises
    ------
    OutOfRange
        A blend that does not exist.

    Source: tanker safety guide table 3.1 (extract, pairing from memory); class limits of NFPA 77 (2000);
    Paasi et al. 2009.
    """
    blend_shares(liquid)
    if liquid.family is LiquidFamily.GASOLINE:
        return _gasoline_conductivity(liquid.blend_percent)
    if liquid.family is LiquidFamily.DEF:
        return Conductivity(
            conductivity_class=ConductivityClass.CONDUCTIVE,
            low_s_m=CONDUCTIVE_ABOVE.value,
            high_s_m=None,
            source="aqueous solution; lower end is the class limit of NFPA 77 (2000)",
            status=LimitStatus.MEMORY,
        )
    if liquid.blend_percent == 100.0:
        return Conductivity(
            conductivity_class=ConductivityClass.SEMI_CONDUCTIVE,
            low_s_m=NON_CONDUCTIVE_BELOW.value,
            high_s_m=CONDUCTIVE_ABOVE.value,
            source="biodiesel as semi-conductive; ends are the class limits of NFPA 77 (2000)",
            status=LimitStatus.MEMORY,
        )
    low, high = (1.0, 50.0) if liquid.family is LiquidFamily.KEROSENE else (0.1, 100.0)
    return Conductivity(
        conductivity_class=ConductivityClass.NON_CONDUCTIVE,
        low_s_m=low * PICOSIEMENS.value,
        high_s_m=high * PICOSIEMENS.value,
        source="tanker safety guide table 3.1 (extract): dry diesel 0.1-2, diesel 1-100, kerosene 1-50 pS/m",
        status=LimitStatus.MEMORY,
    )


def relative_permittivity(liquid: Liquid) -> Constant:
    """Return the relative permittivity; a blend is taken linear by volume, which errs on the long side of relaxation.

    Parameters
    ----------
    liquid : Liquid
        Family and blend percent [percent by volume].

    Returns
    -------
    Constant
        Relative permittivity [-] with source and status.

    Raises
    ------
    OutOfRange
        A blend that does not exist.

    Source: NFPA 77 (2000) for gasoline-like liquids, handbook values from memory for the rest.
    """
    blend_shares(liquid)
    if liquid.family is LiquidFamily.DEF:
        return PERMITTIVITY_DEF
    gasoline = liquid.family is LiquidFamily.GASOLINE
    base = PERMITTIVITY_GASOLINE if gasoline else PERMITTIVITY_DISTILLATE
    added = PERMITTIVITY_ETHANOL if gasoline else PERMITTIVITY_BIODIESEL
    if liquid.blend_percent == 0.0:
        return base
    share = liquid.blend_percent / 100.0
    return Constant(
        name="relative permittivity of the blend",
        value=(1.0 - share) * base.value + share * added.value,
        unit="-",
        source=f"{base.name} ({base.source}) and {added.name} ({added.source}), linear by volume",
        status=LimitStatus.JUDGEMENT,
    )


def _gasoline_conductivity(ethanol_percent: float) -> Conductivity:
    if ethanol_percent >= LEAST_ETHANOL_CONDUCTIVE.value:
        return Conductivity(
            conductivity_class=ConductivityClass.CONDUCTIVE,
            low_s_m=CONDUCTIVE_ABOVE.value,
            high_s_m=None,
            source="alcohols about 1e5 pS/m; lower end is the class limit of NFPA 77 (2000)",
            status=LEAST_ETHANOL_CONDUCTIVE.status,
        )
    if ethanol_percent >= LEAST_ETHANOL_SHEDDING_CHARGE.value:
        return Conductivity(
            conductivity_class=ConductivityClass.SEMI_CONDUCTIVE,
            low_s_m=None,
            high_s_m=None,
            source=LEAST_ETHANOL_SHEDDING_CHARGE.source,
            status=LEAST_ETHANOL_SHEDDING_CHARGE.status,
        )
    return Conductivity(
        conductivity_class=ConductivityClass.NON_CONDUCTIVE,
        low_s_m=0.1 * PICOSIEMENS.value,
        high_s_m=300.0 * PICOSIEMENS.value,
        source="tanker safety guide table 3.1 (extract): straight-run 0.1-1, motor gasoline 10-300 pS/m",
        status=LimitStatus.MEMORY,
    )
