"""Two people agree on the sets of one station at once: both entries stand in one history, or one of them is told.

On SQLite, and on a PostgreSQL server where one can be started.
"""

from __future__ import annotations

import shutil
import threading
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from postgresql_server import OwnServer
from reliability.fuzz_seeds import one_position
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.model.faults import InputFault
from spoutline.model.plan import SitePlan

MEANWHILE = "somebody agreed on other sets in the meantime: look at them, then agree again"


@pytest.fixture(scope="module")
def own_server() -> Iterator[OwnServer]:
    server = OwnServer()
    yield server
    server.remove()


@pytest.fixture(params=["sqlite", pytest.param("postgresql", marks=pytest.mark.postgres)])
def offices(
    request: pytest.FixtureRequest, database_to_copy: Path, tmp_path: Path
) -> Iterator[tuple[Workbench, Workbench]]:
    """Yield two programs over one book."""
    if request.param == "sqlite":
        url = str(shutil.copy(database_to_copy, tmp_path / "shared.sqlite3"))
    else:
        url = request.getfixturevalue("own_server").url()
    both = open_workbench(Settings(database=url)), open_workbench(Settings(database=url))
    yield both
    for one in both:
        one.close()


@pytest.fixture(scope="module")
def site_plan(workbench: Workbench) -> SitePlan:
    return workbench.plan_site(one_position())


def named(site_plan: SitePlan, name: str) -> SitePlan:
    survey = site_plan.survey
    site = survey.site.model_copy(update={"name": name})
    from dataclasses import replace

    return replace(site_plan, survey=survey.model_copy(update={"site": site}))


def agreed_together(offices: tuple[Workbench, Workbench], plan: SitePlan, survey_id: int | None) -> list[str]:
    """Let both agree at the same instant; return what each was told."""
    together = threading.Barrier(2)

    def agree(office: Workbench, by: str) -> str:
        service = office.agreeing()
        service.match(plan.survey, survey_id)  # the book is open before both start
        together.wait()
        try:
            service.agree_on(plan, by=by, survey_id=survey_id)
        except InputFault as fault:
            return fault.problems[0].wanted
        return by

    with ThreadPoolExecutor(2) as pool:
        return sorted(pool.map(agree, offices, ("Ada", "Esra")))


@pytest.mark.parametrize("with_id", [True, False])
def test_of_two_first_agreements_none_is_lost(
    offices: tuple[Workbench, Workbench], site_plan: SitePlan, with_id: bool
) -> None:
    for number in range(6):
        plan = named(site_plan, f"Twice {with_id} {number}")
        survey_id = offices[0].book().create(plan.survey).id if with_id else None
        told = agreed_together(offices, plan, survey_id)
        kept = [one for one in told if one in ("Ada", "Esra")]
        assert set(told) <= {"Ada", "Esra", MEANWHILE}
        assert kept
        lines = offices[0].book().agreements.lines(plan.survey.site.name)
        assert len(lines) == 1  # two histories of one survey would hide one of them
        (entries,) = lines.values()
        assert sorted(one.origin.by for one in entries) == sorted(kept)
        assert [one.serial for one in entries] == list(range(1, len(kept) + 1))


def test_of_two_next_agreements_none_is_lost(offices: tuple[Workbench, Workbench], site_plan: SitePlan) -> None:
    plan = named(site_plan, "Again and again")
    offices[0].agreeing().agree_on(plan, by="Kim")
    expected = 1
    for _ in range(6):
        told = agreed_together(offices, plan, None)
        assert set(told) <= {"Ada", "Esra", MEANWHILE}
        expected += sum(one != MEANWHILE for one in told)
    (entries,) = offices[1].book().agreements.lines("Again and again").values()
    assert [one.serial for one in entries] == list(range(1, expected + 1))


def test_the_later_of_two_who_looked_at_nothing_is_told(
    offices: tuple[Workbench, Workbench], site_plan: SitePlan
) -> None:
    from spoutline.model.agreed_sets import AgreementKind, AgreementOrigin
    from spoutline.planning.agreement.making import agreed_sets

    plan = named(site_plan, "Looked at nothing")
    origin = AgreementOrigin(kind=AgreementKind.PERSON, by="Ada")
    books = [office.book().agreements for office in offices]
    entry = agreed_sets(plan, origin, books[0].now(), None)
    seen = [frozenset(book.lines("Looked at nothing")) for book in books]
    books[0].add(None, entry, seen[0])
    with pytest.raises(InputFault, match="in the meantime"):
        books[1].add(None, entry, seen[1])
    ((kept,),) = books[1].lines("Looked at nothing").values()
    assert kept == entry


@pytest.mark.postgres
def test_an_estimator_adds_to_the_agreements_and_changes_none(own_server: OwnServer, site_plan: SitePlan) -> None:
    import psycopg

    bench = open_workbench(Settings(database=own_server.url()))
    bench.parts().search("", None, 1)  # the catalogue has its tables
    bench.agreeing().agree_on(named(site_plan, "By roles"), by="Ada")
    with psycopg.connect(own_server.url().replace("postgresql+psycopg", "postgresql"), autocommit=True) as server:
        server.execute(bench.keeping().roles_sql("public").encode())
        server.execute(b"CREATE ROLE ernst LOGIN; GRANT spoutline_estimator TO ernst;")
    bench.close()
    hers = open_workbench(Settings(database=own_server.url("ernst")))
    assert hers.agreeing().agree_on(named(site_plan, "By roles"), by="Ernst").serial == 2
    hers.close()
    with psycopg.connect(own_server.url("ernst"), autocommit=True) as server:
        for forbidden in ("UPDATE agreements SET document = ''", "DELETE FROM agreements"):
            with pytest.raises(psycopg.errors.InsufficientPrivilege):
                server.execute(forbidden)
