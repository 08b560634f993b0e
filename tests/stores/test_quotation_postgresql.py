"""Quotations in a PostgreSQL server: an office where several people quote on one book.

The server is started by the tests; where its programs are not installed these tests are left out, and the run says so.
"""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from planning.quoting_terms import DAY
from spoutline.book.quotation_records import StaleQuotation
from spoutline.bootstrap import Workbench
from spoutline.model.quotation_status import QuotationStatus
from stores.numbering import numbers_kept_by_two_processes
from stores.quotation_life import SI, block_the_issue, follow_a_station, let_expire, live_through, quoted
from stores.test_postgresql import bench, server

pytestmark = pytest.mark.postgres
__all__ = ["bench", "server"]


def test_a_quotation_lives_as_in_sqlite(bench: Workbench) -> None:
    live_through(bench)
    let_expire(bench)
    follow_a_station(bench)
    block_the_issue(bench)


def test_of_two_people_who_issue_at_once_one_succeeds(bench: Workbench) -> None:
    service = bench.quoting()
    draft = service.life().keep(quoted(bench, heading={"number": "HS-3", "dated": DAY}))

    def issue(name: str) -> bool:
        try:
            service.life().issue(draft, name, SI)
        except StaleQuotation:
            return False
        return True

    with ThreadPoolExecutor(4) as pool:
        assert sorted(pool.map(issue, ("Ada", "Ben", "Cleo", "Dov"))) == [False, False, False, True]
    assert service.life().stored(draft.id).status is QuotationStatus.ISSUED
    assert len(service.life().history(draft.id)) == 2


def test_two_processes_are_never_given_the_same_number(bench: Workbench, server: Path) -> None:
    before = len(bench.quoting().life().quotations())
    numbers = numbers_kept_by_two_processes(f"postgresql://postgres@/postgres?host={server}", 8)
    assert numbers == [f"2026-{serial:04}" for serial in range(1, 17)]
    assert len(bench.quoting().life().quotations()) == before + 16
