"""A book shared on a PostgreSQL server: the server goes and comes, writers meet, and not everybody may write.

The server is started by the tests; where its programs are not installed these tests are left out, and the run says so.
"""

from __future__ import annotations

import random
import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime
from typing import Any

import pytest

from planning.quoting_terms import DAY
from postgresql_server import OwnServer
from program_runs import Spoutline
from spoutline.book.agreements import AgreementBook
from spoutline.book.book import open_book
from spoutline.book.quotation_records import IssuedPapers
from spoutline.book.records import StoredSurvey
from spoutline.book.save_queue import SaveOutcome, SaveQueue, SaveReport
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.database.faults import Patience
from spoutline.model.agreed_sets import AgreedSets, AgreementKind, AgreementOrigin
from spoutline.model.faults import BusyStore, InputFault, InputProblem, ReadOnlyStore
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.survey import Position, Site, Survey
from stores.quotation_life import quoted
from stores.revisions import revisions_of, survey_at

pytestmark = pytest.mark.postgres


@pytest.fixture(scope="module")
def own_server() -> Iterator[OwnServer]:
    server = OwnServer()
    yield server
    server.remove()


@pytest.fixture
def office(own_server: OwnServer) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=own_server.url()))
    yield bench
    bench.close()


def survey(text: str) -> Survey:
    return Survey(site=Site(name="Invented Corner"), positions=(Position(label="A1", notes=text),))


class Writer:
    """A queue of saves with what it told."""

    def __init__(self, bench: Workbench, stored: StoredSurvey) -> None:
        self.told: list[SaveReport] = []
        self._heard = threading.Condition()
        self.queue = SaveQueue(bench.saving_book, self._hear, pauses=(0.05, 0.5))
        self.queue.follow(stored)

    def _hear(self, report: SaveReport) -> None:
        with self._heard:
            self.told.append(report)
            self._heard.notify_all()

    def wait(self, number: int, *outcomes: SaveOutcome) -> SaveReport:
        """Wait until one of these is told of a state."""
        found: list[SaveReport] = []

        def is_told() -> bool:
            found[:] = [one for one in self.told if one.number == number and one.outcome in outcomes]
            return bool(found)

        with self._heard:
            assert self._heard.wait_for(is_told, 60), self.told[-1]
        return found[0]


def test_a_server_that_was_lost_and_came_back_has_each_save_once(own_server: OwnServer, office: Workbench) -> None:
    stored = office.book().create(survey("first"))
    writer = Writer(office, stored)
    writer.wait(writer.queue.put(survey("before")), SaveOutcome.SAVED)
    own_server.stop("immediate")
    try:
        number = writer.queue.put(survey("while it was away"))
        assert "does not answer for now" in writer.wait(number, SaveOutcome.WAITING).reason
        with pytest.raises(BusyStore):
            office.book().entries()
    finally:
        own_server.start()
    saved = writer.wait(number, SaveOutcome.SAVED)
    held = office.book().stored(stored.id)
    assert held == saved.stored
    assert (held.revision, held.survey.positions[0].notes) == (3, "while it was away")
    assert revisions_of(office.book(), stored.id) == [3, 2, 1]


def test_a_server_killed_in_mid_save_loses_nothing_that_was_told_as_saved(
    own_server: OwnServer, office: Workbench
) -> None:
    rng, stored = random.Random(20310501), office.book().create(survey("first"))
    writer, serial, last = Writer(office, stored), 0, 0
    for _ in range(4):
        end = time.monotonic() + rng.uniform(0.05, 0.6)
        killer = threading.Timer(end - time.monotonic(), own_server.stop, ("immediate",))
        killer.start()
        while killer.is_alive():
            serial += 1
            last = writer.queue.put(survey(f"state {serial} " + "x" * rng.randrange(2000)))
            time.sleep(rng.choice((0.0, 0.002, 0.01)))
        killer.join()
        own_server.start()
    writer.wait(last, SaveOutcome.SAVED)
    assert {one.outcome for one in writer.told} <= {SaveOutcome.SAVED, SaveOutcome.WAITING}
    book = office.book()
    for told in writer.told:
        if told.outcome is SaveOutcome.SAVED and told.stored is not None:
            assert survey_at(book, stored.id, told.stored.revision) == told.stored.survey
    held = book.stored(stored.id)
    assert held.survey.positions[0].notes.startswith(f"state {serial} ")
    assert revisions_of(book, stored.id) == list(range(held.revision, 0, -1))


def test_of_two_writers_of_one_revision_one_is_asked(own_server: OwnServer, office: Workbench) -> None:
    for number in range(5):
        stored = office.book().create(survey("first"))
        writers = [Writer(office, stored) for _ in range(2)]
        numbers = [one.queue.put(survey(f"round {number}, writer {name}")) for name, one in enumerate(writers)]
        told = [one.wait(at, SaveOutcome.SAVED, SaveOutcome.STALE) for one, at in zip(writers, numbers, strict=True)]
        assert sorted(one.outcome for one in told) == [SaveOutcome.SAVED, SaveOutcome.STALE]
        (winner,) = [one.stored for one in told if one.outcome is SaveOutcome.SAVED]
        (met,) = [one.stored for one in told if one.outcome is SaveOutcome.STALE]
        assert office.book().stored(stored.id) == winner == met


@pytest.fixture(scope="module")
def quotation(own_server: OwnServer) -> Quotation:
    bench = open_workbench(Settings(database=own_server.url()))
    made = quoted(bench, heading={"number": "HS-0", "dated": DAY})
    bench.close()
    return made


def numbered(quotation: Quotation, number: str) -> Quotation:
    heading = quotation.terms.heading.model_copy(update={"number": number})
    return quotation.model_copy(update={"terms": quotation.terms.model_copy(update={"heading": heading})})


def test_two_drafts_of_one_number_are_not_both_issued_at_the_same_instant(
    office: Workbench, quotation: Quotation
) -> None:
    book = office.book().quotations()
    papers = IssuedPapers(pdf=b"paper", workbook=b"sheet")
    for number in range(8):
        drafts = [book.create(numbered(quotation, f"TWICE-{number}")) for _ in range(2)]
        together = threading.Barrier(2)

        def issue(draft: object, together: threading.Barrier = together) -> str:
            together.wait()
            try:
                book.issue(draft, papers, "Ada")  # type: ignore[arg-type]
            except InputFault as fault:
                return fault.problems[0].wanted
            return "issued"

        with ThreadPoolExecutor(2) as pool:
            told = sorted(pool.map(issue, drafts))
        assert told[0].startswith("another was sent under this number")
        assert told[1] == "issued"


def agreed(name: str, reason: str) -> AgreedSets:
    """Return an agreement on nothing: what is tried here is who may add the next one."""
    return AgreedSets(
        serial=1,
        site=name,
        survey_fingerprint="0" * 16,
        currency="USD",
        catalogue_edition="trial",
        rules_edition="trial",
        agreed_at=datetime(2027, 1, 4, 8, 30, tzinfo=UTC),
        origin=AgreementOrigin(kind=AgreementKind.PERSON, by="Ada", reason=reason),
        positions=(),
        parts=(),
    )


def test_agreements_are_read_back_in_their_order(office: Workbench) -> None:
    book = office.book().agreements
    line = book.add(None, agreed("Quiet Bend", "first"))
    book.add(line, agreed("Quiet Bend", "second").model_copy(update={"serial": 2}))
    other = book.add(None, agreed("Quiet Bend", "of another survey"))
    found = book.lines("Quiet Bend")
    assert [one.origin.reason for one in found[line]] == ["first", "second"]
    assert [one.origin.reason for one in found[other]] == ["of another survey"]
    assert found[line][0] == agreed("Quiet Bend", "first")


def test_of_two_who_agree_at_the_same_instant_one_is_asked_to_look_again(office: Workbench) -> None:
    book = office.book().agreements
    for number in range(5):
        name = f"Busy Corner {number}"
        line = book.add(None, agreed(name, "before"))
        together = threading.Barrier(2)

        def agree(reason: str, line: int = line, name: str = name, together: threading.Barrier = together) -> str:
            together.wait()
            try:
                book.add(line, agreed(name, reason).model_copy(update={"serial": 2}))
            except InputFault as fault:
                return fault.problems[0].wanted
            return "agreed"

        with ThreadPoolExecutor(2) as pool:
            told = sorted(pool.map(agree, ("mine", "yours")))
        assert told[0] == "agreed"
        assert told[1].startswith("somebody agreed on other sets in the meantime")
        assert len(book.lines(name)[line]) == 2


def test_two_first_agreements_at_the_same_instant_are_two_histories(office: Workbench) -> None:
    book = office.book().agreements
    with ThreadPoolExecutor(4) as pool:
        lines = list(pool.map(lambda reason: book.add(None, agreed("Many Hands", reason)), "abcdefgh"))
    assert len(set(lines)) == len(lines)
    assert sorted(book.lines("Many Hands")) == sorted(lines)


def test_an_order_and_the_agreement_on_its_sets_are_kept_together_or_not_at_all(
    office: Workbench, quotation: Quotation, monkeypatch: pytest.MonkeyPatch
) -> None:
    service = office.quoting()
    draft = office.book().quotations().create(numbered(quotation, "ORDER-1"))
    issued = office.book().quotations().issue(draft, IssuedPapers(pdf=b"paper", workbook=b"sheet"), "Ada")
    site, title = quotation.pins.survey.site.name, quotation.options[0].title
    really = AgreementBook.write

    def broken(*given: Any) -> int:
        really(*given)
        raise InputFault((InputProblem("", "serial", "1", "lost in mid write"),))

    monkeypatch.setattr(AgreementBook, "write", broken)
    with pytest.raises(InputFault, match="lost in mid write"):
        service.life().answer(issued, QuotationStatus.ACCEPTED, "Ada", option=title)
    assert service.life().stored(issued.id).status is QuotationStatus.ISSUED
    assert office.book().agreements.lines(site) == {}
    monkeypatch.undo()
    service.life().answer(issued, QuotationStatus.ACCEPTED, "Ada", option=title)
    (entries,) = office.book().agreements.lines(site).values()
    assert [one.origin.quotation.number for one in entries if one.origin.quotation] == ["ORDER-1"]


# roles


@pytest.fixture(scope="module")
def with_roles(own_server: OwnServer, quotation: Quotation) -> OwnServer:
    """Return the server with an issued quotation, the roles, and a login for each of them."""
    import psycopg

    bench = open_workbench(Settings(database=own_server.url()))
    book = bench.book()
    book.create(survey("for everybody"))
    draft = book.quotations().create(numbered(quotation, "SENT-1"))
    book.quotations().issue(draft, IssuedPapers(pdf=b"paper", workbook=b"sheet"), "Ada")
    with psycopg.connect(own_server.url().replace("postgresql+psycopg", "postgresql"), autocommit=True) as server:
        for _ in range(2):  # run twice it changes nothing more
            server.execute(bench.keeping().roles_sql("public").encode())
        for name, role in (("rita", "reader"), ("esra", "estimator"), ("kim", "keeper")):
            server.execute(f"CREATE ROLE {name} LOGIN; GRANT spoutline_{role} TO {name};".encode())
    bench.close()
    return own_server


def test_who_may_only_read_reads_on_and_is_told_kindly_why_nothing_is_written(
    with_roles: OwnServer, spoutline: Spoutline
) -> None:
    bench = open_workbench(Settings(database=with_roles.url("rita")))
    entry = bench.book().entries()[0]
    stored = bench.book().stored(entry.id)
    assert bench.parts().search("", None, 3)
    with pytest.raises(ReadOnlyStore, match=r"may be read by you but not written.*Ask its keeper"):
        bench.book().save(stored, survey("mine"))
    writer = Writer(bench, stored)
    assert "Nothing was changed" in writer.wait(writer.queue.put(survey("mine")), SaveOutcome.READ_ONLY).reason
    assert bench.book().stored(entry.id) == stored
    bench.close()
    place = ("--database", with_roles.url("rita"))
    listed = spoutline("quotation", "list", *place)
    assert (listed.code, "SENT-1" in listed.out) == (0, True)
    assert spoutline("book", "check", *place).code == 0
    refused = spoutline("quotation", "expire", "--today", "2099-01-01", *place)
    assert refused.code == 2
    assert "may be read by you but not written" in refused.err


def test_an_estimator_surveys_and_quotes_but_changes_nothing_that_was_sent(
    with_roles: OwnServer, quotation: Quotation
) -> None:
    import psycopg

    bench = open_workbench(Settings(database=with_roles.url("esra")))
    book = bench.book()
    stored = book.save(book.create(survey("by esra")), survey("by esra again"))
    assert stored.revision == 2
    quotations = book.quotations()
    draft = quotations.save_draft(quotations.create(numbered(quotation, "ESRA-1")), numbered(quotation, "ESRA-2"))
    issued = quotations.issue(draft, IssuedPapers(pdf=b"hers", workbook=b"sheet"), "Esra")
    quotations.revise(issued, numbered(quotation, "ESRA-2"), "Esra")
    bench.close()
    for name in ("esra", "kim"):
        with psycopg.connect(with_roles.url(name), autocommit=True) as server:
            changed = server.execute("UPDATE quotation_revisions SET pdf = 'other' WHERE issued_at IS NOT NULL")
            assert changed.rowcount == 0
    with psycopg.connect(with_roles.url("esra"), autocommit=True) as server:
        for forbidden in (
            "DELETE FROM surveys",
            "UPDATE survey_revisions SET document = ''",
            "DELETE FROM quotation_events",
            "UPDATE agreements SET document = ''",
            "DELETE FROM agreements",
            "UPDATE book_version SET version_num = 'none'",
            "DELETE FROM catalogue_part",
            "DROP TABLE surveys",
        ):
            with pytest.raises(psycopg.errors.InsufficientPrivilege):
                server.execute(forbidden)


def test_a_keeper_may_change_the_tables(with_roles: OwnServer) -> None:
    import psycopg

    with psycopg.connect(with_roles.url("kim"), autocommit=True) as server:
        server.execute("ALTER TABLE surveys ADD COLUMN keepers_trial integer")
        server.execute("ALTER TABLE surveys DROP COLUMN keepers_trial")


def test_a_server_that_is_not_there_is_told_within_the_patience_of_the_writer() -> None:
    with pytest.raises(BusyStore, match="does not answer for now"):
        open_book("postgresql+psycopg://ada@/office?host=/tmp/no-such-folder", patience=Patience.SHORT)
