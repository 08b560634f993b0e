"""Discounts that name a maker or a group which no price list knows: a slip there would quietly discount nothing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.book.choices import choice_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.pricing import PriceList
from spoutline.model.quotation_terms import Terms


def check_discount_names(terms: Terms, price_lists: Sequence[PriceList]) -> None:
    """Check that makers and groups named in discounts and exceptions occur in the price lists, of whatever day.

    Without any price list nothing is checked: then every part is told to lack its price.

    Raises
    ------
    InputFault
        Naming each maker and group that no list knows, with those that there are.
    """
    problems = tuple(_problems(terms, price_lists)) if price_lists else ()
    if problems:
        raise InputFault(problems)


def _problems(terms: Terms, price_lists: Sequence[PriceList]) -> Iterator[InputProblem]:
    makers = tuple(sorted({one.maker for one in price_lists}))
    groups = tuple(sorted({row.discount_group for one in price_lists for row in one.rows if row.discount_group}))
    for number, discount in enumerate(terms.buying):
        yield from _unknown(f"buying[{number}].maker", discount.maker, makers)
        yield from _unknown(f"buying[{number}].group", discount.group, groups)
    for number, exception in enumerate(terms.selling.exceptions):
        yield from _unknown(f"selling.exceptions[{number}].group", exception.group, groups)


def _unknown(field: str, name: str, known: tuple[str, ...]) -> Iterator[InputProblem]:
    if name and name not in known:
        yield InputProblem("", field, repr(name), choice_of(name, known))
