"""The firm's customers: kept in the book, taken from there by quotations."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from pydantic import ValidationError

from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.book.book import Book
    from spoutline.model.customer import Customer
    from spoutline.model.quotation_terms import Terms
    from spoutline.model.survey import Survey

_LISTS = ("discounts", "former_names")


class CustomerService:
    """Customers. Methods may be called from several threads; bad input raises ``InputFault``, nothing changes."""

    def __init__(self, book: Callable[[], Book]) -> None:
        self._book = book

    def all(self, text: str = "") -> tuple[Customer, ...]:
        """Return the customers by name whose name, addresses or contact hold each word of ``text``."""
        words = text.casefold().split()

        def holds(customer: Customer) -> bool:
            told = " ".join((customer.name, customer.address, customer.delivery_address, customer.contact)).casefold()
            return all(word in told for word in words)

        return tuple(one for one in self._book().customers.all() if holds(one))

    def named(self, name: str) -> Customer:
        """Return a customer of the book, whatever the capitals of the name."""
        return self._book().customers.named(name)

    def add(self, said: Mapping[str, str]) -> Customer:
        """Put a new customer into the book, field by field as typed, and return it."""
        customer = customer_of(said)
        self._book().customers.add(customer)
        return customer

    def change(self, before: Customer, said: Mapping[str, str]) -> Customer:
        """Change fields of a customer as typed, others stay, and return it; another name renames it."""
        from spoutline.model.customer import following

        customer = following(before, customer_of({**fields_of(before), **said}))
        self._book().customers.change(before, customer)
        return customer

    def remove(self, name: str) -> Customer:
        """Take a customer out of the book; quotations keep what they have of it."""
        return self._book().customers.remove(name)

    def of_site(self, survey: Survey) -> Customer | None:
        """Return the customer of the book that the site of a survey names; None where it names none of the book's."""
        name = survey.site.customer
        return self._book().customers.called(name) if name.strip() else None

    def with_site_customer(self, survey: Survey, name: str) -> tuple[Survey, Customer | None]:
        """Return a survey whose site names a customer of the book, or none for an empty name, and that customer.

        Raise ``InputFault`` where the book has none of this name.
        """
        from spoutline.model.answered import unanswered

        if not name.strip():
            return survey.model_copy(update={"site": unanswered(survey.site, "customer")}), None
        customer = self.named(name)
        return survey.model_copy(update={"site": survey.site.model_copy(update={"customer": customer.name})}), customer

    def terms_for(self, terms: Terms, name: str) -> Terms:
        """Return terms for a customer of the book."""
        from spoutline.model.customer import with_customer

        return with_customer(terms, self.named(name))


def fields_of(customer: Customer) -> dict[str, str]:
    """Return every field as it is typed; discounts line by line as ``group = percent``."""
    found = {name: str(getattr(customer, name)) for name in type(customer).model_fields if name not in _LISTS}
    return {**found, "discounts": "\n".join(f"{one.group} = {one.percent:f}" for one in customer.discounts)}


def customer_of(said: Mapping[str, str]) -> Customer:
    """Return the customer that typed fields tell; raise ``InputFault`` with every fault."""
    from spoutline.book.survey_faults import problems_of
    from spoutline.model.customer import Customer

    fields: dict[str, object] = {name: text for name, text in said.items() if name != "discounts"}
    fields["discounts"] = _discounts(said.get("discounts", ""))
    try:
        return Customer.model_validate(fields)
    except ValidationError as fault:
        raise InputFault(tuple(problems_of(fault, Customer, ""))) from fault


def _discounts(text: str) -> list[dict[str, object]]:
    from spoutline.units.decimals import exact_decimal

    found: list[dict[str, object]] = []
    for line in text.splitlines():
        if not line.strip():
            continue
        group, equals, percent = line.rpartition("=")
        if not equals or not group.strip():
            wanted = "write a discount group and its percentage: hoses = 14"
            raise InputFault((InputProblem("", "discounts", repr(line), wanted),))
        found.append({"group": group.strip(), "percent": exact_decimal(percent, field="discounts")})
    return found
