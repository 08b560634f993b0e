"""A person who may only read the shared book opens it in the window: all is seen, each step that writes is told kindly.

The server is started by the tests; where its programs are not installed these tests are left out, and the run says so.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import psycopg
import pytest
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from gui.test_agreements import on_dialog, sign
from gui.test_quotation_page import TERMS, quote, settled
from planning.quoting_terms import DAY
from postgresql_server import OwnServer
from reliability.fuzz_seeds import one_position
from spoutline.book.quotation_records import IssuedPapers
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.agreement import AgreeDialog, NamedStepDialog
from spoutline.gui.dialogs.surveys import SurveysDialog
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.session import SaveState, Session
from spoutline.gui.window.first_survey import survey_to_show
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.verbs import Verbs
from spoutline.gui.window.workplace import Workplace
from spoutline.model.agreed_sets import AgreementKind, AgreementOrigin
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from stores.quotation_life import quoted

pytestmark = pytest.mark.postgres
KINDLY = "may be read by you but not written"


@pytest.fixture(scope="module")
def shared() -> Iterator[OwnServer]:
    """Yield a server with a station, its agreed sets, an issued quotation, and a login that may only read."""
    server = OwnServer()
    bench = open_workbench(Settings(database=server.url()))
    bench.parts().search("", None, 1)
    demo = demo_survey("small_town")
    survey = demo.model_copy(update={"positions": demo.positions[:2]})
    stored = bench.book().create(survey)
    origin = AgreementOrigin(kind=AgreementKind.PERSON, by="Kim")
    bench.agreeing().agree_plan(bench.plan_site(survey), origin, survey_id=stored.id)
    quotations = bench.book().quotations()
    draft = quotations.create(quoted(bench, heading={"number": "HS-7", "dated": DAY}))
    quotations.issue(draft, IssuedPapers(pdf=b"paper", workbook=b"sheet"), "Kim")
    with psycopg.connect(server.url(), autocommit=True) as connection:
        connection.execute(bench.keeping().roles_sql("public").encode())
        connection.execute(b"CREATE ROLE rita LOGIN; GRANT spoutline_reader TO rita;")
    bench.close()
    yield server
    server.remove()


@pytest.fixture
def rita(shared: OwnServer) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=shared.url("rita")))
    yield bench
    bench.close()


@pytest.fixture
def window(qtbot: QtBot, rita: Workbench) -> Iterator[MainWindow]:
    """Yield the window as the program opens it for her; a fault of the program in any job fails the test."""
    broken: list[object] = []
    session = Session(rita, survey_to_show(rita, None), UnitSystem.US)
    window = MainWindow()
    window.jobs.broke.connect(broken.append)
    qtbot.addWidget(window)
    workplace = window.attach(session)
    window.verbs = Verbs(window, workplace)  # type: ignore[attr-defined]
    window.verbs.surveys.remember_survey(session.stored)  # type: ignore[attr-defined]
    window.show()
    wait_for_plans(qtbot, workplace)
    yield window
    window.jobs.close()
    session.close()
    assert not broken


def place_of(window: MainWindow) -> Workplace:
    assert window.workplace is not None
    return window.workplace


def held(shared: OwnServer) -> tuple[Survey, int]:
    bench = open_workbench(Settings(database=shared.url()))
    try:
        (entry,) = bench.book().entries()
        return bench.book().stored(entry.id).survey, entry.revision
    finally:
        bench.close()


def test_an_edit_stays_in_the_window_and_the_reason_is_told(
    qtbot: QtBot, window: MainWindow, shared: OwnServer
) -> None:
    workplace, before = place_of(window), held(shared)
    session = workplace.session
    site = session.survey.site.model_copy(update={"customer": "seen by Rita"})
    workplace.context.edit(session.survey.model_copy(update={"site": site}), "Customer")
    qtbot.waitUntil(lambda: session.save_state is SaveState.READ_ONLY, timeout=30_000)
    assert KINDLY in window.notices.text
    assert "Ask its keeper" in window.notices.text
    assert session.survey.site.customer == "seen by Rita"
    session.undo_stack.undo()
    session.look()
    qtbot.waitUntil(lambda: session.save_state is SaveState.SAVED, timeout=30_000)
    assert held(shared) == before


def test_she_sees_the_agreed_sets_and_is_told_that_she_cannot_agree(
    qtbot: QtBot, window: MainWindow, rita: Workbench
) -> None:
    workplace = place_of(window)
    qtbot.waitUntil(lambda: workplace.sets.is_ready, timeout=30_000)
    assert workplace.sets.agreed is not None
    assert workplace.sets.agreed.origin.by == "Kim"
    on_dialog(AgreeDialog, lambda dialog: sign(dialog, "Rita"))
    window.actions_by_id[ActionId.AGREE].trigger()
    qtbot.waitUntil(lambda: KINDLY in window.notices.text, timeout=30_000)
    on_dialog(NamedStepDialog, lambda dialog: sign(dialog, "Rita"))
    window.notices.put_away()
    window.actions_by_id[ActionId.WITHDRAW].trigger()
    qtbot.waitUntil(lambda: KINDLY in window.notices.text, timeout=30_000)
    (entries,) = rita.book().agreements.lines(workplace.session.survey.site.name).values()
    assert [one.origin.by for one in entries] == ["Kim"]


def test_she_reads_and_makes_quotations_and_is_told_that_none_is_kept(
    qtbot: QtBot, window: MainWindow, rita: Workbench, tmp_path: Path
) -> None:
    workplace = place_of(window)
    page = QuotationPage(workplace.context, window.notify, today=lambda: date(2099, 1, 1))  # the sent one is over
    workplace.__dict__["quotation_page"] = page
    workplace.views.addWidget(page)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    settled(qtbot, page)
    assert [one.number for one in page.panel.book.entries.records] == ["HS-7"]
    path = tmp_path / "terms.toml"
    path.write_text(TERMS.format(more="", number="RITA-1", dated=DAY.isoformat()), encoding="utf-8")
    quote(qtbot, page, path)
    made = page.quotation
    page.panel.offer.keep_button.click()
    settled(qtbot, page)
    assert KINDLY in page.panel.state_label.text() + window.notices.text
    assert page.quotation is made
    assert page.stored is None
    assert [one.number for one in rita.quoting().life().quotations()] == ["HS-7"]


def test_she_prints_the_papers_of_the_installer_and_is_told_that_no_record_is_kept(
    qtbot: QtBot, window: MainWindow, rita: Workbench
) -> None:
    workplace = place_of(window)
    window.actions_by_id[ActionId.INSTALLER].trigger()
    page = workplace.installer_page
    qtbot.waitUntil(lambda: page.pack_panel.document is not None, timeout=30_000)
    page.tabs.setCurrentWidget(page.record_panel)
    record = page.record_panel
    qtbot.waitUntil(record.keep_button.isEnabled, timeout=30_000)
    remarks = record.fields.remarks_edit
    remarks.setPlainText("gate left open")
    record.keep_button.click()
    assert KINDLY in record.state_label.text()
    assert remarks.toPlainText() == "gate left open"
    page.tabs.setCurrentWidget(page.inspection_panel)
    inspection = page.inspection_panel
    qtbot.waitUntil(lambda: inspection.due_model.rowCount() > 0, timeout=30_000)
    inspection.wear_note_edit.setText("worn at the clamp")
    inspection.wear_button.click()
    assert KINDLY in inspection.state_label.text()
    assert inspection.wear_note_edit.text() == "worn at the clamp"
    site = workplace.session.survey.site.name
    assert rita.packing().records().commissioning(site) == ()
    assert rita.packing().records().wear(site) == ()


def test_the_list_of_surveys_opens_and_says_why_none_is_added(qtbot: QtBot, rita: Workbench, tmp_path: Path) -> None:
    (entry,) = rita.book().entries()
    dialog = SurveysDialog(rita, None)
    qtbot.addWidget(dialog)
    dialog.name_edit.setText("Rita's corner")
    dialog.start_button.click()
    assert KINDLY in dialog.fault_label.text()
    path = tmp_path / "survey.json"
    path.write_text(survey_to_json(demo_survey("marina")), encoding="utf-8")
    dialog.read_file(path)
    assert KINDLY in dialog.fault_label.text()
    assert dialog.chosen is None
    assert rita.book().entries() == (entry,)


def test_choices_that_are_not_remembered_are_no_fault(qtbot: QtBot, window: MainWindow) -> None:
    window.actions_by_id[ActionId.UNITS_SI].trigger()
    assert place_of(window).session.display.system is UnitSystem.SI
    qtbot.wait(10)


def test_a_programme_worked_out_is_shown_though_it_cannot_be_kept(rita: Workbench, tmp_path: Path) -> None:
    from spoutline.planning.conversion.programme_terms import ProgrammeTerms

    (tmp_path / "one.json").write_text(survey_to_json(one_position()), encoding="utf-8")
    terms = ProgrammeTerms(name="Rita", budget=None, years=1)
    number, programme = rita.converting().convert_folder(tmp_path, terms, processes=1)
    assert number is None
    assert programme.name == "Rita"
