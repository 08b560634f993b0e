"""The quotations of a station: its customer is taken unasked, and its last quotation is shown when it is opened."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot
from sqlalchemy import delete

from gui.test_quotation_page import TERMS, keep, quote, settled
from paper_text import text_of
from spoutline.book.quotation_tables import (
    QuotationEventRow,
    QuotationPartRow,
    QuotationRevisionRow,
    QuotationRow,
)
from spoutline.bootstrap import Workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.customers import CustomersDialog
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.pages.quotation.work import LOOK
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

DAY = date(2026, 11, 25)


@pytest.fixture
def survey(survey: Survey) -> Survey:
    """Return a station of a name of its own, with no customer yet."""
    return survey.model_copy(update={"site": survey.site.model_copy(update={"name": "Alder Bend", "customer": ""})})


@pytest.fixture(autouse=True)
def nothing_of_others(bench: Workbench) -> Iterator[None]:
    """Leave neither quotations nor customers behind."""
    yield
    with bench.book()._engine.begin() as connection:
        for table in (QuotationEventRow, QuotationPartRow, QuotationRevisionRow, QuotationRow):
            connection.execute(delete(table))
    for one in bench.customers().all():
        bench.customers().remove(one.name)


@pytest.fixture
def page(window: MainWindow, workplace: Workplace) -> QuotationPage:
    page = QuotationPage(workplace.context, window.notify, today=lambda: DAY)
    workplace.__dict__["quotation_page"] = page
    workplace.views.addWidget(page)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    return page


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "terms.toml"
    path.write_text(TERMS.format(number="{year}-{serial:04}", more="", dated=DAY), encoding="utf-8")
    return path


def choose(qtbot: QtBot, page: QuotationPage, monkeypatch: pytest.MonkeyPatch, name: str, *, for_site: bool) -> None:
    """Mark a customer in the dialog and take it, to be quoted to or as the station's own."""

    def take(self: CustomersDialog) -> int:
        self.show()
        self.refresh(name)
        qtbot.mouseClick(self.site_button if for_site else self.use_button, Qt.MouseButton.LeftButton)
        return 1

    monkeypatch.setattr(CustomersDialog, "exec", take)
    qtbot.mouseClick(page.panel.offer.customer_button, Qt.MouseButton.LeftButton)


def quoted_to(page: QuotationPage) -> str:
    assert page.quotation is not None
    return page.quotation.terms.customer.name


def test_the_customer_of_a_station_is_quoted_to_unasked_and_no_other_station_has_it(
    qtbot: QtBot,
    page: QuotationPage,
    session: Session,
    survey: Survey,
    bench: Workbench,
    file: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    for name in ("Reed Wharf Oil", "Amber Quay Oil"):
        bench.customers().add({"name": name})
    choose(qtbot, page, monkeypatch, "Reed Wharf Oil", for_site=True)
    assert session.survey.site.customer == "Reed Wharf Oil"
    assert "customer of this station" in page.panel.state_label.text()
    quote(qtbot, page, file)
    assert quoted_to(page) == "Reed Wharf Oil"
    assert "to Reed Wharf Oil" in page.panel.offer.terms_label.text()
    # another customer is quoted to once; the station keeps its own
    choose(qtbot, page, monkeypatch, "Amber Quay Oil", for_site=False)
    qtbot.mouseClick(page.panel.offer.make_button, Qt.MouseButton.LeftButton)
    settled(qtbot, page)
    assert quoted_to(page) == "Amber Quay Oil"
    assert session.survey.site.customer == "Reed Wharf Oil"
    keep(qtbot, page)
    # a station that names none goes where the terms say, and has whom it is quoted to first
    assert session.settle()
    session.open(bench.book().create(survey))
    settled(qtbot, page)
    quote(qtbot, page, file)
    assert quoted_to(page) == "Hollow Ford Fuels"
    choose(qtbot, page, monkeypatch, "Amber Quay Oil", for_site=False)
    assert session.survey.site.customer == "Amber Quay Oil"
    session.undo_stack.undo()
    assert session.survey.site.customer == ""


def test_terms_that_cannot_be_made_for_the_customer_of_the_station_are_told_and_nothing_is_quoted(
    qtbot: QtBot, page: QuotationPage, bench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    bench.customers().add({"name": "Reed Wharf Oil", "discounts": "hoses = 14"})
    choose(qtbot, page, monkeypatch, "Reed Wharf Oil", for_site=True)
    path = tmp_path / "cost.toml"
    path.write_text(TERMS.format(number="C-1", more="", dated=DAY) + '[selling]\nmethod = "mark_up_on_cost"\n')
    page.terms.use_file(path)
    qtbot.waitUntil(lambda: page.terms.in_hand is not None and page.terms.in_hand.base is not None, timeout=10_000)
    page.make()
    settled(qtbot, page)
    assert page.quotation is None
    assert "selling.method" in page.panel.state_label.text()


def test_the_station_that_is_opened_shows_its_own_last_quotation_whatever_it_is_called(
    qtbot: QtBot, page: QuotationPage, session: Session, survey: Survey, bench: Workbench, file: Path
) -> None:
    first, namesake, unquoted = session.stored, bench.book().create(survey), bench.book().create(survey)
    service, terms = bench.quoting(), bench.quoting().terms().read_terms(file)
    metric = Display(UnitSystem.SI)
    kept = [
        service.life().keep(service.quote(survey, terms, metric, origin=(of.id, of.revision)).quotation, "Odile")
        for of in (first, namesake, first, first)
    ]
    service.life().save_draft(kept[2], kept[2].quotation, "Odile")  # the last on which somebody took a step
    shown = []
    for stored in (namesake, first, unquoted, namesake):
        session.open(stored)
        settled(qtbot, page)
        qtbot.waitUntil(lambda: not page._context.jobs.is_at_work(LOOK), timeout=10_000)
        shown.append(None if page.stored is None else page.stored.id)
    assert shown == [kept[1].id, kept[2].id, None, kept[1].id]
    told = [[one.id for one in bench.standing(survey, of.id).quotations] for of in (first, namesake, unquoted)]
    assert told == [[kept[2].id, kept[3].id, kept[0].id], [kept[1].id], []]


def test_an_offer_that_expires_by_itself_is_not_the_last_one(bench: Workbench, survey: Survey, file: Path) -> None:
    stored, service = bench.book().create(survey), bench.quoting()
    made = service.quote(
        survey, service.terms().read_terms(file), Display(UnitSystem.SI), origin=(stored.id, stored.revision)
    ).quotation
    old = service.life().issue(service.life().keep(made, "Odile"), "Odile", Display(UnitSystem.SI))
    draft = service.life().keep(made, "Odile")
    assert service.life().expire(date(2028, 1, 1)) == (old.id,)
    assert service.life().quotations()[0].id == old.id, "the list has what changed last first"
    assert [one.id for one in service.life().of_survey(stored.id)] == [draft.id, old.id]


def test_the_job_of_a_station_is_done_by_what_was_ordered_whatever_is_quoted_since(
    bench: Workbench, survey: Survey, file: Path
) -> None:
    site = survey.site.model_copy(update={"name": "Ordered and quoted since"})
    ordered = survey.model_copy(update={"site": site})
    stored, service, metric = bench.book().create(ordered), bench.quoting(), Display(UnitSystem.SI)
    assert service.life().of_job(stored.id) is None
    made = service.quote(
        ordered, service.terms().read_terms(file), metric, origin=(stored.id, stored.revision)
    ).quotation
    first, second = (service.life().keep(made, "Odile") for _ in range(2))
    assert (found := service.life().of_job(stored.id)) is not None
    assert found.id == second.id, "nothing is ordered yet"
    issued = service.life().issue(first, "Odile", metric)
    service.life().answer(issued, QuotationStatus.ACCEPTED, "Merle", "", made.options[0].title)
    service.life().save_draft(second, made, "Odile")
    assert [one.id for one in service.life().of_survey(stored.id)] == [second.id, first.id]
    assert (found := service.life().of_job(stored.id)) is not None
    assert found.id == first.id


def test_what_is_not_in_the_book_yet_stays_in_hand_when_another_station_is_opened(
    qtbot: QtBot, page: QuotationPage, session: Session, survey: Survey, bench: Workbench, file: Path
) -> None:
    quote(qtbot, page, file)
    made = page.quotation
    assert page.stored is None
    session.open(bench.book().create(survey))
    settled(qtbot, page)
    assert page.quotation is made
    assert "not in the book yet" in page.panel.state_label.text()
    assert "Alder Bend" in page.panel.state_label.text()


def test_the_list_in_view_and_the_customers_are_saved_as_papers(
    qtbot: QtBot, page: QuotationPage, file: Path, tmp_path: Path, bench: Workbench, monkeypatch: pytest.MonkeyPatch
) -> None:
    bench.customers().add({"name": "Sedge Fuels", "address": "3 Reed Lane"})
    quote(qtbot, page, file)
    keep(qtbot, page)
    book, paper, people = page.panel.book, tmp_path / "list.pdf", tmp_path / "people.html"
    page.panel.show_panel(book)
    qtbot.waitUntil(lambda: bool(book.entries_in_view()), timeout=30_000)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(paper), "PDF (*.pdf)"))
    book.hands.save()
    qtbot.waitUntil(paper.exists, timeout=30_000)
    (entry,) = book.entries_in_view()
    assert entry.number in text_of(paper)
    assert "Internal, not for the customer" in text_of(paper)

    def ask(self: CustomersDialog) -> int:
        self.show()
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(people), "HTML (*.html)"))
        self.hands.save()
        qtbot.waitUntil(people.exists, timeout=30_000)
        return 0

    monkeypatch.setattr(CustomersDialog, "exec", ask)
    qtbot.mouseClick(page.panel.offer.customer_button, Qt.MouseButton.LeftButton)
    assert "Sedge Fuels" in people.read_text(encoding="utf-8")
