"""Which price of a part applies on a day, and why: every price list of its maker with what speaks for or against it."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import FoundPrice, PriceList


class ListStanding(StrEnum):
    """What becomes of a price list where the price of a part is asked."""

    APPLIES = "applies"
    COMES_AFTER = "comes_after"  # it would apply too: another is in the wanted currency, or began later
    BELOW_LEAST_QUANTITY = "below_least_quantity"
    NOT_LISTED = "not_listed"
    OTHER_CURRENCY = "other_currency"
    OTHER_SUPPLIER = "other_supplier"
    NOT_YET_VALID = "not_yet_valid"
    EXPIRED = "expired"


@frozen(kw_only=True)
class ListVerdict:
    """A price list with its standing, and the price that it states for the quantity where it states one."""

    price_list: PriceList
    standing: ListStanding
    found: FoundPrice | None = None


@frozen(kw_only=True)
class PriceAsked:
    """Which price is wanted; ``currencies`` are those that may be reckoned with, the first one preferred; () any."""

    part: PartRef
    quantity: int
    day: date
    currencies: tuple[str, ...] = ()
    supplier: str = ""


@frozen(kw_only=True)
class PriceAnswer:
    """The lists of the maker, the one that applies first, then those that come nearest."""

    asked: PriceAsked
    verdicts: tuple[ListVerdict, ...]

    @property
    def applies(self) -> FoundPrice | None:
        """The price that applies; None where none does."""
        found = (one.found for one in self.verdicts if one.standing is ListStanding.APPLIES)
        return next(found, None)


def price_answer(asked: PriceAsked, lists: Iterable[PriceList]) -> PriceAnswer:
    """Return which list applies, as ``PriceBook`` chooses: by wanted currency, then the one that began last."""
    mine = [one for one in lists if one.maker == asked.part.maker]
    currencies = asked.currencies or tuple(sorted({one.currency for one in mine}))
    ordered = sorted(
        mine,
        key=lambda one: (
            currencies.index(one.currency) if one.currency in currencies else len(currencies),
            -one.valid_from.toordinal(),
            one.id,
        ),
    )
    verdicts: list[ListVerdict] = []
    is_found = False
    for one in ordered:
        verdict = _verdict(one, asked, currencies, is_found=is_found)
        is_found = is_found or verdict.standing is ListStanding.APPLIES
        verdicts.append(verdict)
    order = list(ListStanding)
    return PriceAnswer(asked=asked, verdicts=tuple(sorted(verdicts, key=lambda one: order.index(one.standing))))


def _verdict(one: PriceList, asked: PriceAsked, currencies: tuple[str, ...], *, is_found: bool) -> ListVerdict:
    row = one.by_number.get(asked.part.number)
    reached = None if row is None else row.price_at(asked.quantity)
    found = None if row is None or reached is None else FoundPrice(price_list=one, row=row, reached=reached)
    if one.valid_from > asked.day:
        standing = ListStanding.NOT_YET_VALID
    elif not one.holds_on(asked.day):
        standing = ListStanding.EXPIRED
    elif one.currency not in currencies:
        standing = ListStanding.OTHER_CURRENCY
    elif asked.supplier and one.supplier != asked.supplier:
        standing = ListStanding.OTHER_SUPPLIER
    elif row is None:
        standing = ListStanding.NOT_LISTED
    elif found is None:
        standing = ListStanding.BELOW_LEAST_QUANTITY
    else:
        standing = ListStanding.COMES_AFTER if is_found else ListStanding.APPLIES
    return ListVerdict(price_list=one, standing=standing, found=found)
