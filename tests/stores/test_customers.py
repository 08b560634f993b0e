"""Customers of the book: nobody's change is written over, and names are told apart without capitals."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from spoutline.book.all_tables import BookTable
from spoutline.book.roles import roles_sql
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.model.customer import with_customer
from spoutline.model.faults import InputFault
from spoutline.model.quotation_terms import Terms


@pytest.fixture
def bench(own_database: Path) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=str(own_database)))
    yield bench
    bench.close()


def test_somebody_elses_change_is_not_written_over(bench: Workbench) -> None:
    service = bench.customers()
    before = service.add({"name": "Hollow Ford Fuels", "contact": "Merle"})
    service.change(before, {"contact": "Odile"})
    with pytest.raises(InputFault, match="in the meantime"):
        service.change(before, {"telephone": "555-0134"})
    assert service.named("HOLLOW FORD FUELS").contact == "Odile"


def test_another_name_is_taken_where_nobody_has_it(bench: Workbench) -> None:
    service = bench.customers()
    first, second = service.add({"name": "Reed Wharf"}), service.add({"name": "Amber Quay"})
    with pytest.raises(InputFault, match="a customer of this name"):
        service.change(second, {"name": "reed wharf"})
    service.remove(first.name)
    assert service.change(second, {"name": "REED wharf"}).name == "REED wharf"
    assert [one.name for one in service.all()] == ["REED wharf"]


def test_an_estimator_may_add_and_change_customers_and_take_serials() -> None:
    sql = roles_sql(BookTable.metadata.tables, ())
    for table in ("customers", "quotation_serials"):
        assert f'GRANT INSERT, UPDATE ON "public"."{table}" TO spoutline_estimator;' in sql


def test_terms_of_old_read_as_they_were_and_other_exceptions_stay(bench: Workbench) -> None:
    old = {
        "seller": {"name": "Hedgerow Supply"},
        "customer": {"name": "Hollow Ford Fuels", "address": "1 Mill Lane"},
        "heading": {"number": "HS-1", "dated": "2026-11-25"},
        "selling": {"percent": 5, "exceptions": [{"group": "hoses", "percent": 9}, {"kind": "nozzle", "percent": 7}]},
    }
    terms = Terms.model_validate(old)
    assert (terms.customer.delivery_address, terms.customer.payment_terms) == ("", "")
    customer = bench.customers().add({"name": "Reed Wharf", "discounts": "hoses = 20"})
    found = with_customer(terms, customer)
    assert [(one.kind, one.group, one.percent) for one in found.selling.exceptions] == [
        ("nozzle", "", 7),
        (None, "hoses", 20),
    ]
    assert (found.customer.name, found.customer.address) == ("Reed Wharf", "")
