"""From liquid and blend to listing class and material column; blends that no class covers are named as gaps."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.liquid import Liquid, LiquidFamily, ListingClass
from spoutline.model.material import MaterialColumn
from spoutline.model.requirement import WayOut


@frozen
class ClassFound:
    """The listing class of a blend; None for DEF, which no flammable-liquid class covers."""

    listing_class: ListingClass | None
    column: MaterialColumn
    limits: tuple[LimitId, ...]


@frozen
class ClassGap:
    """A blend that no class covers: classes end at ``covered_up_to`` percent and start again at ``covered_from``."""

    covered_up_to: float
    covered_from: float | None
    limits: tuple[LimitId, ...]
    ways_out: tuple[WayOut, ...]


def class_for(liquid: Liquid, jurisdiction: Jurisdiction) -> ClassFound | ClassGap:
    """Return the next class that covers the blend, or the gap in which it lies.

    Gasoline takes the ethanol classes; diesel, kerosene and fuel oil the biodiesel classes; DEF none. A blend is never
    rounded: 10 percent is E10 and 10.1 percent E25; above 20 and below 99.9 percent biodiesel nothing exists.

    Parameters: ``liquid``, blend in percent by volume; ``jurisdiction``, the bounds.
    Source: scopes of UL 2586 (1.4), UL 2586A (1.3), UL 2586B (1.3).
    """
    if liquid.family is LiquidFamily.DEF:
        return ClassFound(None, MaterialColumn.DEF, ())
    if liquid.family is LiquidFamily.GASOLINE:
        return _gasoline_class(liquid.blend_percent, jurisdiction)
    return _diesel_class(liquid.blend_percent, jurisdiction)


def _gasoline_class(ethanol_percent: float, jurisdiction: Jurisdiction) -> ClassFound | ClassGap:
    steps = (
        (LimitId.LISTING_E10_MAX, ListingClass.E10),
        (LimitId.LISTING_E25_MAX, ListingClass.E25),
        (LimitId.LISTING_E85_MAX, ListingClass.E85),
    )
    found = _first_step(ethanol_percent, steps, jurisdiction)
    if found is not None:
        return found
    return ClassGap(
        covered_up_to=jurisdiction.number(LimitId.LISTING_E85_MAX),
        covered_from=None,
        limits=(LimitId.LISTING_E85_MAX,),
        ways_out=(WayOut.USE_E85_OR_LESS, WayOut.ASK_AUTHORITY_AND_MAKER),
    )


def _diesel_class(biodiesel_percent: float, jurisdiction: Jurisdiction) -> ClassFound | ClassGap:
    steps = ((LimitId.LISTING_B5_MAX, ListingClass.B5), (LimitId.LISTING_B20_MAX, ListingClass.B20))
    found = _first_step(biodiesel_percent, steps, jurisdiction)
    if found is not None:
        return found
    if biodiesel_percent >= jurisdiction.number(LimitId.LISTING_B100_MIN):
        return ClassFound(ListingClass.B100, MaterialColumn.B100, (LimitId.LISTING_B100_MIN,))
    return ClassGap(
        covered_up_to=jurisdiction.number(LimitId.LISTING_B20_MAX),
        covered_from=jurisdiction.number(LimitId.LISTING_B100_MIN),
        limits=(LimitId.LISTING_B20_MAX, LimitId.LISTING_B100_MIN),
        ways_out=(WayOut.USE_B20_OR_LESS, WayOut.USE_B100, WayOut.ASK_AUTHORITY_AND_MAKER),
    )


def _first_step(
    percent: float, steps: tuple[tuple[LimitId, ListingClass], ...], jurisdiction: Jurisdiction
) -> ClassFound | None:
    for limit_id, listing_class in steps:
        if percent <= jurisdiction.number(limit_id):
            return ClassFound(listing_class, MaterialColumn(listing_class.value), (limit_id,))
    return None
