"""Columns of price lists, and of what becomes of each where the price of a part is asked."""

from __future__ import annotations

from datetime import date

from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.pricing import PriceList
from spoutline.planning.pricing.applying import ListStanding, ListVerdict


def price_list_columns(today: date) -> tuple[Column[PriceList], ...]:
    """Return the columns of price lists with their standing on a day."""
    return (
        Column(title=tr("Price list"), text=lambda one: one.id, tone=lambda one: _tone(one, today)),
        Column(title=tr("Maker"), text=lambda one: one.maker),
        Column(title=tr("Supplier"), text=lambda one: one.supplier),
        Column(title=tr("Currency"), text=lambda one: one.currency),
        Column(title=tr("Valid from"), text=lambda one: one.valid_from.isoformat()),
        Column(title=tr("Valid to"), text=lambda one: one.valid_to.isoformat() if one.valid_to else tr("open")),
        Column(title=tr("Today"), text=lambda one: _state(one, today)),
        Column(title=tr("Parts"), text=lambda one: str(len(one.rows)), sort=lambda one: len(one.rows), is_number=True),
    )


def _state(one: PriceList, today: date) -> str:
    return tr("valid") if one.holds_on(today) else tr("not valid yet") if one.valid_from > today else tr("ended")


def _tone(one: PriceList, today: date) -> Tone:
    return Tone.GOOD if one.holds_on(today) else Tone.NOTE if one.valid_from > today else Tone.CAUTION


def verdict_columns() -> tuple[Column[ListVerdict], ...]:
    """Return the columns of the lists of a maker, with why each applies or does not."""
    return (
        Column(title=tr("Price list"), text=lambda one: one.price_list.id, tone=_applies),
        Column(title=tr("Why"), text=lambda one: standing_text(one.standing)),
        Column(title=tr("Unit price"), text=_price, is_number=True),
        Column(title=tr("From quantity"), text=_quantity, is_number=True),
        Column(title=tr("Discount group"), text=lambda one: one.found.row.discount_group if one.found else ""),
    )


def standing_text(standing: ListStanding) -> str:
    """Return what a standing means."""
    return {
        ListStanding.APPLIES: tr("applies"),
        ListStanding.COMES_AFTER: tr("would apply too: another currency is wanted, or it began earlier"),
        ListStanding.BELOW_LEAST_QUANTITY: tr("sells this part only from a greater quantity"),
        ListStanding.NOT_LISTED: tr("does not list this part"),
        ListStanding.OTHER_CURRENCY: tr("is in a currency that is not wanted"),
        ListStanding.OTHER_SUPPLIER: tr("is of another supplier"),
        ListStanding.NOT_YET_VALID: tr("not valid yet"),
        ListStanding.EXPIRED: tr("ended"),
    }[standing]


def _applies(one: ListVerdict) -> Tone:
    return Tone.GOOD if one.standing is ListStanding.APPLIES else Tone.NOTE


def _price(one: ListVerdict) -> str:
    return f"{one.found.reached.unit_price} {one.price_list.currency}" if one.found else ""


def _quantity(one: ListVerdict) -> str:
    return str(one.found.reached.from_quantity) if one.found else ""
