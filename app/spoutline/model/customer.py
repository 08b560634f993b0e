"""A customer of the firm: kept once in the book, taken from there by quotations."""

from __future__ import annotations

from typing import Self

from pydantic import Field, model_validator

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.field_faults import fault_in
from spoutline.model.plain_values import PlainValues
from spoutline.model.quotation_terms import (
    Label,
    Percent,
    Recipient,
    SellingException,
    SellingMethod,
    Terms,
)
from spoutline.model.worded import Worded

_MOST_FORMER = 100  # names; the oldest give way


class GroupDiscount(PlainValues):
    """What a customer gets off the list price of a discount group."""

    group: Label
    percent: Percent


class Customer(Recipient):
    """A customer by name; ``discounts`` hold for quotations whose prices are list prices less a discount.

    ``former_names`` are those it had in the book before, by which surveys may still name it.
    """

    discounts: tuple[GroupDiscount, ...] = Field((), max_length=100)
    former_names: tuple[Label, ...] = Field((), max_length=_MOST_FORMER)

    @model_validator(mode="after")
    def _groups_are_unique(self) -> Self:
        groups = [one.group for one in self.discounts]
        for at, group in enumerate(groups):
            if group in groups[:at]:
                raise fault_in(f"discounts[{at}].group", repr(group), "it occurs twice; each may stand once")
        return self


def folded_customer_name(name: str) -> str:
    """Return a name as it is told apart from others: capitals and runs of blanks do not count."""
    return " ".join(name.split()).casefold()


def following(before: Customer, customer: Customer) -> Customer:
    """Return a customer as changed from ``before``: where it has another name, the old one leads to it still."""
    folded = folded_customer_name(customer.name)
    names = dict.fromkeys((*before.former_names, before.name))
    kept = tuple(one for one in names if folded_customer_name(one) != folded)
    return customer.model_copy(update={"former_names": kept[-_MOST_FORMER:]})


def with_customer(terms: Terms, customer: Customer) -> Terms:
    """Return terms for a customer of the book: name and addresses, terms of payment, discounts of groups.

    Raise ``InputFault`` where the customer has discounts and prices are not made as list prices less a discount.
    """
    recipient = Recipient(**{name: getattr(customer, name) for name in Recipient.model_fields})
    selling = terms.selling
    if customer.discounts and selling.method is not SellingMethod.LIST_LESS_DISCOUNT:
        wanted = Worded(
            "the discounts of {customer_name} are off the list price: use {list_less_discount}",
            customer_name=customer.name,
            list_less_discount=SellingMethod.LIST_LESS_DISCOUNT,
        )
        raise InputFault((InputProblem("", "selling.method", selling.method.value, wanted),))
    own = {one.group for one in customer.discounts}
    others = tuple(one for one in selling.exceptions if one.kind is not None or one.group not in own)
    theirs = tuple(SellingException(group=one.group, percent=one.percent) for one in customer.discounts)
    return terms.model_copy(
        update={"customer": recipient, "selling": selling.model_copy(update={"exceptions": (*others, *theirs)})}
    )
