"""Stock, suppliers and customers of a book shared on a PostgreSQL server: people work at once, and roles hold.

The server is started by the tests; where its programs are not installed these tests are left out, and the run says so.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import pytest

from documents import plan_factory as factory
from postgresql_server import OwnServer
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.stock import Asked, Job
from spoutline.model.faults import InputFault, ReadOnlyStore
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import Movement, StockEntry
from spoutline.model.supplier_layout import SupplierLayout, usual_layout

pytestmark = pytest.mark.postgres

NOZZLE = PartRef("QW-N103", "Quillmere Forgeworks")


@pytest.fixture(scope="module")
def own_server() -> Iterator[OwnServer]:
    server = OwnServer()
    yield server
    server.remove()


@pytest.fixture
def two(own_server: OwnServer) -> Iterator[tuple[Workbench, Workbench]]:
    """Yield the use cases of two people, each with connections of their own."""
    both = open_workbench(Settings(database=own_server.url())), open_workbench(Settings(database=own_server.url()))
    both[0].book()  # the first makes the tables
    yield both
    for bench in both:
        bench.close()


def at_once(acts: tuple[Callable[[], object], ...]) -> list[str]:
    """Do what several people do at the same instant, and return what each was told; empty where it was done."""
    together = threading.Barrier(len(acts))

    def one(act: Callable[[], object]) -> str:
        together.wait()
        try:
            act()
        except InputFault as fault:
            return str(fault)
        return ""

    with ThreadPoolExecutor(len(acts)) as pool:
        return list(pool.map(one, acts))


def moved(place: str, movement: Movement, quantity: int = 1, **others: str) -> StockEntry:
    count = "May" if movement is Movement.COUNTED else ""
    told = {"place": place, "movement": movement, "part": NOZZLE, "quantity": quantity, "count": count, **others}
    return StockEntry.model_validate(told)


def held(bench: Workbench, place: str) -> int:
    return sum(one.quantity for one in bench.stock().balances((place,)))


def test_a_code_is_scanned_into_a_shared_book_and_taken_back(two: tuple[Workbench, Workbench]) -> None:
    """The code of the catalogue is found there too: PostgreSQL holds catalogue and book alike."""
    service, other = two[0].stock(), two[1].stock()
    number, *_ = service.add([service.entry(Asked(place="shelf", movement=Movement.RECEIVED, code="QW-N103"))])
    service.set_level("shelf", "QW-N103", 6, 4)
    (line,) = other.lines(("shelf",))
    # one lies there and six are to: five are lacking, two lots of four
    assert (line.balance.part, line.balance.quantity, line.order) == (NOZZLE, 1, 8)
    told = at_once((lambda: service.undo(number), lambda: other.undo(number)))
    assert sorted(map(bool, told)) == [False, True]
    assert "already" in "".join(told)
    assert held(two[0], "shelf") == 0


def test_what_two_people_count_at_once_adds_up(two: tuple[Workbench, Workbench]) -> None:
    def counting(bench: Workbench) -> Callable[[], None]:
        def count() -> None:
            for _ in range(20):
                bench.stock().add([moved("yard", Movement.COUNTED)])

        return count

    assert at_once((counting(two[0]), counting(two[1]))) == ["", ""]
    assert held(two[0], "yard") == held(two[1], "yard") == 40


def test_a_job_is_loaded_once_by_two_people_who_saw_the_same(two: tuple[Workbench, Workbench]) -> None:
    plan = factory.site_plan(factory.fitting_plan(factory.position("1A")))
    nozzle = factory.nozzle().ref
    two[0].stock().add([moved("van", Movement.RECEIVED, 9).model_copy(update={"part": nozzle})])
    seen = [one.stock().lines(("van",), Job(name="Fern Pond", site_plan=plan)) for one in two]
    assert seen[0] == seen[1]
    acts = tuple(
        lambda bench=bench, lines=lines: bench.stock().take(lines, "Fern Pond")
        for bench, lines in zip(two, seen, strict=True)
    )
    told = at_once(acts)
    assert sorted(map(bool, told)) == [False, True]
    assert "look again" in "".join(told)
    again = two[1].stock().lines(("van",), Job(name="Fern Pond", site_plan=plan))
    (line,) = (one for one in again if one.balance.part == nozzle)
    assert (line.needed, line.taken, line.takes, line.balance.quantity) == (1, 1, 0, 8)


def test_a_count_is_not_closed_over_what_somebody_scans_meanwhile(two: tuple[Workbench, Workbench]) -> None:
    hose = PartRef("MG-H122", "Mossglimmer Hose Guild")
    first = moved("cellar", Movement.RECEIVED, 3).model_copy(update={"part": hose})
    two[0].stock().add([first, moved("cellar", Movement.COUNTED)])
    seen = two[0].stock().uncounted("cellar", "May")
    assert [(one.part, one.quantity) for one in seen] == [(hose, 3)]
    two[1].stock().add([moved("cellar", Movement.COUNTED, 2).model_copy(update={"part": hose})])
    with pytest.raises(InputFault, match="look again"):
        two[0].stock().close_count("cellar", "May", seen)
    assert two[0].stock().uncounted("cellar", "May") == ()
    assert held(two[1], "cellar") == 3  # one nozzle and two hoses


def test_of_two_who_keep_a_suppliers_file_at_once_one_looks_again(two: tuple[Workbench, Workbench]) -> None:
    def keeping(bench: Workbench, name: str, sign: str) -> Callable[[], SupplierLayout]:
        fields = usual_layout(name).model_dump(mode="json") | {"separator": sign, "file_form": "xlsx"}
        return lambda: bench.supplier_orders().keep(fields, before[name])

    for number in range(4):
        name = f"Wharf Wholesale {number}"
        before: dict[str, Any] = {name: two[0].supplier_orders().keep(usual_layout(name).model_dump(mode="json"), None)}
        told = at_once((keeping(two[0], name, "tab"), keeping(two[1], name, "bar")))
        assert sorted(map(bool, told)) == [False, True]
        assert "meantime" in "".join(told)
        kept = two[1].supplier_orders().named(name.upper())
        assert (kept.separator, kept.file_form) == ("tab" if not told[0] else "bar", "xlsx")


def test_of_two_customers_of_one_name_at_once_one_is_taken(two: tuple[Workbench, Workbench]) -> None:
    for number in range(4):
        said = {"name": f"Hollow Ford Fuels {number}"}
        told = at_once((lambda said=said: two[0].customers().add(said), lambda said=said: two[1].customers().add(said)))
        assert sorted(map(bool, told)) == [False, True]
    assert len(two[0].customers().all("Hollow Ford")) == 4


@pytest.fixture(scope="module")
def with_roles(own_server: OwnServer) -> OwnServer:
    """Return the server with the roles, and a login for each of them."""
    import psycopg

    bench = open_workbench(Settings(database=own_server.url()))
    bench.stock().add([moved("hall", Movement.RECEIVED, 5)])
    bench.stock().set_level("hall", "QW-N103", 2, 1)
    bench.supplier_orders().keep(usual_layout("Quillmere Forgeworks").model_dump(mode="json"), None)
    with psycopg.connect(own_server.url(), autocommit=True) as server:
        server.execute(bench.keeping().roles_sql("public").encode())
        for name, role in (("rita", "reader"), ("esra", "estimator"), ("kim", "keeper")):
            server.execute(f"CREATE ROLE {name} LOGIN; GRANT spoutline_{role} TO {name};".encode())
    bench.close()
    return own_server


def test_who_may_only_read_sees_the_stock_and_moves_none(with_roles: OwnServer) -> None:
    bench = open_workbench(Settings(database=with_roles.url("rita")))
    before = held(bench, "hall")
    acts: tuple[Callable[[], object], ...] = (
        lambda: bench.stock().add([moved("hall", Movement.TAKEN)]),
        lambda: bench.stock().set_level("hall", "QW-N103", 9, 1),
        lambda: bench.supplier_orders().keep(usual_layout("Nobody").model_dump(mode="json"), None),
        lambda: bench.customers().add({"name": "Nobody"}),
    )
    for act in acts:
        with pytest.raises(ReadOnlyStore, match="may be read by you but not written"):
            act()
    assert held(bench, "hall") == before
    assert bench.supplier_orders().of("Nobody") is None
    bench.close()


@pytest.mark.parametrize("name", ["esra", "kim"])
def test_an_estimator_moves_stock_by_entries_alone(with_roles: OwnServer, name: str) -> None:
    bench = open_workbench(Settings(database=with_roles.url(name)))
    before = held(bench, "hall")
    (number,) = bench.stock().add([moved("hall", Movement.TAKEN, 2, job="Fern Pond")])
    bench.stock().undo(number, name)
    bench.stock().set_level("hall", "QW-N103", 3, 1)
    assert held(bench, "hall") == before
    bench.supplier_orders().keep(usual_layout(f"Wharf of {name}").model_dump(mode="json"), None)
    assert bench.supplier_orders().remove(f"Wharf of {name}").supplier == f"Wharf of {name}"
    bench.customers().add({"name": f"Customer of {name}"})
    bench.close()


def test_no_estimator_changes_or_deletes_an_entry_of_the_stock(with_roles: OwnServer) -> None:
    import psycopg

    with psycopg.connect(with_roles.url("esra"), autocommit=True) as server:
        for forbidden in (
            "UPDATE stock_entries SET document = ''",
            "DELETE FROM stock_entries",
            "UPDATE stock_levels SET document = ''",
            "DELETE FROM stock_levels",
            "DELETE FROM supplier_layouts",
            "DELETE FROM customers",
        ):
            with pytest.raises(psycopg.errors.InsufficientPrivilege):
                server.execute(forbidden)
