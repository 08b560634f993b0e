"""The priced lines of an option: what each part costs at the quantity ordered, or why no price stands."""

from __future__ import annotations

from decimal import Decimal

from spoutline.model.pricing import PriceGap, UnitPrice
from spoutline.model.quotation_terms import PriceOverride
from spoutline.model.quoted_option import PartName, QuotedLine
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.refit.quantities import PartQuantity


def quoted_line(quantity: PartQuantity, pricer: Pricer, names: tuple[PartName, ...] = ()) -> QuotedLine:
    """Return the line of one part; a person's override comes before any list."""
    part = quantity.part
    found = pricer.unit_price(part, quantity.ordered)
    override = pricer.terms.override(part.ref)
    price = _price(found, override)
    listed = found if isinstance(found, UnitPrice) else None
    gap = found if price is None and isinstance(found, PriceGap) else None
    return QuotedLine(
        part_number=part.number,
        maker=part.maker,
        kind=part.kind,
        name=part.name,
        fitted=quantity.fitted,
        spares=quantity.spares,
        pack_rest=quantity.pack_rest,
        pack=part.pack_quantity,
        unit_price=price,
        amount=None if price is None else price * quantity.ordered,
        cost=listed.cost if listed and listed.is_cost_stated else None,
        list_id=listed.list_id if listed else "",
        list_currency=listed.list_currency if listed else "",
        list_price=listed.list_price if listed else None,
        from_quantity=listed.from_quantity if listed else 0,
        gap=gap.reason if gap else None,
        gap_detail=gap.detail if gap else "",
        override_by=override.by if override else "",
        override_reason=override.reason if override else "",
        lead_time_days=part.lead_time_days,
        mass_kg=quantity.mass_kg,
        names=names,
        buying_percent=listed.buying_percent if listed and listed.is_cost_stated else None,
    )


def _price(found: UnitPrice | PriceGap, override: PriceOverride | None) -> Decimal | None:
    """Return the price that stands. An override without a price lets it follow even where a list has one."""
    if override is not None:
        return override.unit_price
    return found.unit_price if isinstance(found, UnitPrice) else None
