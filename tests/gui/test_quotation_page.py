"""Survey, plan, quotation, revision: the distributor's whole job through the window."""

from __future__ import annotations

import base64
import csv
import re
import threading
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QLabel
from pytestqt.qtbot import QtBot
from sqlalchemy import delete

from paper_text import pages_of, text_of
from planning.quoting_terms import terms_of
from spoutline.book.agreements import AgreementRow
from spoutline.book.quotation_tables import (
    QuotationEventRow,
    QuotationPartRow,
    QuotationRevisionRow,
    QuotationRow,
)
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.quotation_papers import QuotationPapers
from spoutline.bootstrap.quotation_terms import QuotationTerms
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.customers import CustomersDialog
from spoutline.gui.dialogs.named_step import NamedStepDialog
from spoutline.gui.dialogs.terms import TermsDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.local_days import day_text
from spoutline.gui.models.quotation_prices import PricedPart
from spoutline.gui.pages.quotation.files import FileKind
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.pages.quotation.terms import TermsInHand, price_answer
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.quotation_terms import Terms
from spoutline.model.survey import Survey
from spoutline.planning.refit.revision_changes import Changed
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

TERMS = """
{more}
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "{number}"
dated = {dated}
[[options]]
title = "Single-use"
breakaway = "single_use"
[[options]]
title = "Reconnectable"
breakaway = "reconnectable"
"""
DAY = date(2026, 11, 25)
NO_LISTS = "2028-01-01"  # no price list of the catalogue reaches that far
# the smallest picture that the PNG specification (W3C, third edition) admits: one transparent pixel
PIXEL = base64.b64decode(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg=="
)

Write = Callable[..., Path]


@pytest.fixture
def survey(survey: Survey) -> Survey:
    """Return a station of a name of its own: what is ordered for it is agreed, and shown wherever it is opened."""
    return survey.model_copy(update={"site": survey.site.model_copy(update={"name": "Quoted Corner"})})


@pytest.fixture(autouse=True)
def no_quotations_of_others(bench: Workbench) -> Iterator[None]:
    """Leave no quotation behind: the page looks through all that are open in the book each time it is shown."""
    yield
    with bench.book()._engine.begin() as connection:
        for table in (QuotationEventRow, QuotationPartRow, QuotationRevisionRow, QuotationRow, AgreementRow):
            connection.execute(delete(table))


@pytest.fixture
def page(window: MainWindow, workplace: Workplace) -> QuotationPage:
    page = QuotationPage(workplace.context, window.notify, today=lambda: DAY)
    workplace.__dict__["quotation_page"] = page
    workplace.views.addWidget(page)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    assert workplace.views.currentWidget() is page
    return page


@pytest.fixture
def terms(tmp_path: Path) -> Write:
    def write(number: str, more: str = "", dated: str = "2026-11-25") -> Path:
        path = tmp_path / "terms.toml"
        path.write_text(TERMS.format(number=number, more=more, dated=dated), encoding="utf-8")
        return path

    return write


def settled(qtbot: QtBot, page: QuotationPage) -> None:
    """Wait until no step is being taken, nothing is quoted and nothing is read."""
    qtbot.waitUntil(lambda: not page.is_busy, timeout=30_000)
    qtbot.waitUntil(page.panel.book.check_button.isEnabled, timeout=30_000)


def quote(qtbot: QtBot, page: QuotationPage, path: Path) -> None:
    before = page.quotation
    page.terms.use_file(path)
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not None and page.quotation is not before, timeout=30_000)


def keep(qtbot: QtBot, page: QuotationPage) -> None:
    page.panel.offer.keep_button.click()
    settled(qtbot, page)
    assert page.stored is not None
    assert page.stored.quotation is page.quotation


def issue(qtbot: QtBot, page: QuotationPage) -> None:
    page.panel.offer.issue_button.click()
    settled(qtbot, page)
    assert page.stored is not None
    assert page.stored.status is QuotationStatus.ISSUED


def quote_and_issue(qtbot: QtBot, page: QuotationPage, path: Path) -> None:
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, path)
    keep(qtbot, page)
    issue(qtbot, page)


def look_at(qtbot: QtBot, page: QuotationPage, quotation_id: int) -> None:
    page.look_at(quotation_id)
    qtbot.waitUntil(lambda: page.stored is not None and page.stored.id == quotation_id, timeout=10_000)


def with_third_hose(session: Session) -> None:
    position = session.survey.positions[0].model_copy(update={"label": "A3"})
    make_edit(session, session.survey.model_copy(update={"positions": (*session.survey.positions, position)}), "add")


def test_survey_becomes_plan_quotation_and_revision(
    qtbot: QtBot, bench: Workbench, session: Session, page: QuotationPage, terms: Write, tmp_path: Path
) -> None:
    offer = page.panel.offer
    assert not offer.make_button.isEnabled()
    quote(qtbot, page, terms("GUI-1"))
    assert page.quotation is not None
    assert [row.title for row in offer.amounts.records][:4] == ["Materials", "Labor", "Freight", "Total"]
    assert offer.amounts.records[0].differs
    qtbot.waitUntil(lambda: page.paper.images() != (), timeout=20_000)
    page.panel.name_edit.setText("Odile")
    assert not offer.issue_button.isEnabled()
    keep(qtbot, page)
    assert "draft" in page.panel.status_label.text()
    issue(qtbot, page)
    first = page.stored
    assert first is not None
    sent = bench.quoting().life().issued_papers(first.id, 1)
    page.save_as(tmp_path / "sent.pdf", FileKind.PDF)
    qtbot.waitUntil((tmp_path / "sent.pdf").exists, timeout=10_000)
    assert (tmp_path / "sent.pdf").read_bytes() == sent.pdf
    # the customer wants a third hose
    with_third_hose(session)
    quote(qtbot, page, terms("GUI-1"))
    assert "not kept yet" in page.panel.status_label.text()
    assert "revision 2 opens" in offer.next_label.text()
    keep(qtbot, page)
    assert page.stored is not None
    assert (page.stored.id, page.stored.revision, page.stored.status) == (first.id, 2, QuotationStatus.DRAFT)
    changes = {one.changed for one in bench.quoting().life().changes(first.id, 1, 2)}
    assert {Changed.SURVEY, Changed.QUANTITY, Changed.TOTAL, Changed.POSITION_SET} <= changes
    assert bench.quoting().life().issued_papers(first.id, 1) == sent
    issue(qtbot, page)
    offer.note_edit.setText("by letter of the 26th")
    assert [action.text() for action in offer.accept_menu.actions()] == ["Single-use", "Reconnectable"]
    offer.accept_menu.actions()[1].trigger()
    settled(qtbot, page)
    assert page.stored.status is QuotationStatus.ACCEPTED
    # the order names its option, and the pick list is of that one
    assert page.panel.status_label.text().endswith("accepted: Reconnectable")
    assert offer.option_box.currentText() == "Reconnectable"
    page.save_as(tmp_path / "order.csv", FileKind.ORDER)
    qtbot.waitUntil((tmp_path / "order.csv").exists, timeout=10_000)
    order = csv.DictReader((tmp_path / "order.csv").read_text(encoding="utf-8-sig").splitlines())
    assert {row["option"] for row in order} == {"Reconnectable"}
    assert not offer.accept_button.isVisible()
    answered = bench.quoting().life().history(first.id)[-1]
    assert (answered.note, answered.option) == ("by letter of the 26th", "Reconnectable")
    assert page.panel.history.model.index(0, 4).data() == "Reconnectable; by letter of the 26th"
    assert page.stored.quotation.pins.survey_revision == session.stored.revision


def test_an_only_option_is_accepted_at_once(qtbot: QtBot, bench: Workbench, page: QuotationPage, terms: Write) -> None:
    quote(qtbot, page, terms("GUI-1E"))  # of several options before
    service = bench.quoting()
    survey = page._context.session.survey
    made = service.quote(survey, terms_of(heading={"number": "GUI-1A", "dated": DAY}), Display(UnitSystem.SI)).quotation
    issued = service.life().issue(service.life().keep(made, "Odile"), "Odile", Display(UnitSystem.SI))
    look_at(qtbot, page, issued.id)
    page.panel.name_edit.setText("Merle")
    qtbot.mouseClick(page.panel.offer.accept_button, Qt.MouseButton.LeftButton)
    settled(qtbot, page)
    assert service.life().history(issued.id)[-1].status is QuotationStatus.ACCEPTED
    assert service.life().history(issued.id)[-1].option == ""


def test_the_next_step_follows_a_changed_survey(
    qtbot: QtBot, session: Session, page: QuotationPage, terms: Write
) -> None:
    """A draft is not to be issued unseen after its survey was changed; what is quoted again alike is said to be so."""
    offer = page.panel.offer
    quote(qtbot, page, terms("GUI-1B"))
    keep(qtbot, page)
    assert offer.issue_button.objectName() == "primary"
    quote(qtbot, page, terms("GUI-1B"))
    assert "what the book holds as revision 1" in page.panel.state_label.text()
    with_third_hose(session)
    assert "quote this survey for that" in offer.next_label.text()
    assert offer.make_button.objectName() == "primary"
    assert offer.issue_button.objectName() == ""


def test_nobody_issues_without_a_name(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    quote(qtbot, page, terms("GUI-1F"))
    keep(qtbot, page)
    page.panel.offer.issue_button.click()
    assert not page.is_busy
    assert "Write your name first" in page.panel.state_label.text()
    assert page.panel.name_edit.hasFocus()
    qtbot.keyClicks(page.panel.name_edit, "Odile")
    issue(qtbot, page)


def test_a_number_is_sent_once(qtbot: QtBot, session: Session, page: QuotationPage, terms: Write) -> None:
    """An order stands under its number: what is quoted besides is refused it, with what to do."""
    quote_and_issue(qtbot, page, terms("GUI-1C"))
    page.panel.offer.accept_menu.actions()[0].trigger()
    settled(qtbot, page)
    with_third_hose(session)
    quote(qtbot, page, terms("GUI-1C"))
    assert "another number" in page.panel.offer.next_label.text()
    keep(qtbot, page)
    page.panel.offer.issue_button.click()
    settled(qtbot, page)
    assert page.stored is not None
    assert page.stored.status is QuotationStatus.DRAFT
    assert "heading.number" in page.panel.state_label.text()
    assert "sent under this number" in page.panel.state_label.text()


def test_no_paper_of_a_draft_is_saved_under_a_number_that_was_sent(
    qtbot: QtBot, session: Session, page: QuotationPage, terms: Write, tmp_path: Path
) -> None:
    quote_and_issue(qtbot, page, terms("GUI-1D"))
    page.panel.offer.accept_menu.actions()[0].trigger()
    settled(qtbot, page)
    sent, refused, own = (tmp_path / f"{name}.pdf" for name in ("sent", "refused", "own"))
    page.files.save(sent, FileKind.PDF)
    qtbot.waitUntil(sent.exists, timeout=20_000)
    with_third_hose(session)
    quote(qtbot, page, terms("GUI-1D"))
    keep(qtbot, page)
    assert "was sent under the number GUI-1D" in page.panel.offer.next_label.text()
    page.files.save(refused, FileKind.PDF)
    assert "was sent under the number GUI-1D" in page.panel.state_label.text()
    page.panel.state_label.clear()
    page.files.save(table := tmp_path / "refused.xlsx", FileKind.WORKBOOK)
    assert "was sent under the number GUI-1D" in page.panel.state_label.text()
    quote(qtbot, page, terms("GUI-1E"))
    assert "was sent under" not in page.panel.offer.next_label.text()
    page.files.save(own, FileKind.PDF)
    qtbot.waitUntil(own.exists, timeout=20_000)
    assert not refused.exists()
    assert not table.exists()


def test_turning_to_a_position_leaves_the_quotations(
    qtbot: QtBot, workplace: Workplace, session: Session, page: QuotationPage
) -> None:
    tree = workplace.site_panel.tree
    for label in (session.label, session.survey.positions[1].label, session.survey.positions[1].label):
        workplace.show_quotations()
        index = workplace.site_panel.model.index_of(label)
        qtbot.mouseClick(tree.viewport(), Qt.MouseButton.LeftButton, pos=tree.visualRect(index).center())
        assert session.label == label
        assert workplace.views.currentWidget() is workplace.walk


def test_what_choosing_together_changes_is_told_apart_in_a_narrow_column(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    quote(qtbot, page, terms("GUI-1D", more="stock_price = 35"))
    titles = [row.title for row in page.panel.offer.amounts.records if "together" in row.title]
    assert titles == ["Price, sets chosen together", "Stock, sets chosen together"]
    table = page.panel.offer.amount_table
    room = table.columnWidth(0) - 2 * 8
    assert all(table.fontMetrics().horizontalAdvance(title) <= room for title in titles)


def test_what_changed_between_revisions_is_told_in_words(
    qtbot: QtBot, session: Session, page: QuotationPage, terms: Write
) -> None:
    quote_and_issue(qtbot, page, terms("GUI-10"))
    history = page.panel.history
    assert "One revision so far" in history.change_label.text()
    with_third_hose(session)
    quote(qtbot, page, terms("GUI-10", more='freight = { method = "fixed", amount = 12 }'))

    def heads() -> list[str]:
        root = [history.changes.index(row, 0) for row in range(history.changes.rowCount())]
        return [str(index.data()) for index in root]

    # before it is kept, what was quoted again is held against the newest revision
    qtbot.waitUntil(lambda: bool(heads()), timeout=10_000)
    assert (history.before_box.currentText(), history.after_box.currentText()) == ("r1", "not kept yet")
    keep(qtbot, page)
    qtbot.waitUntil(lambda: bool(heads()), timeout=10_000)
    assert (history.before_box.currentText(), history.after_box.currentText()) == ("r1", "r2")
    assert heads() == ["Survey", "Terms", "Option “Single-use”", "Option “Reconnectable”"]
    rows = {
        str(history.changes.index(row, 0, head).data()): tuple(
            str(history.changes.index(row, column, head).data()) for column in (1, 2)
        )
        for place in range(history.changes.rowCount())
        for head in [history.changes.index(place, 0)]
        for row in range(history.changes.rowCount(head))
    }
    assert rows["Position A3"] == ("–", "there")
    assert rows["Freight and taxes · Amount or percent"] == ("0", "12")
    assert "Total" in rows
    # the other way round
    history.before_box.setCurrentIndex(1)
    assert "Choose two different revisions" in history.change_label.text()
    history.after_box.setCurrentIndex(0)
    qtbot.waitUntil(lambda: bool(heads()), timeout=10_000)
    assert history.changes.index(0, 0).data() == "Survey"


def test_an_older_revision_is_read_as_it_was_sent_and_takes_no_step(
    qtbot: QtBot, bench: Workbench, session: Session, page: QuotationPage, terms: Write, tmp_path: Path
) -> None:
    quote_and_issue(qtbot, page, terms("GUI-11"))
    first = page.stored
    assert first is not None
    sent = bench.quoting().life().issued_papers(first.id, 1)
    with_third_hose(session)
    quote_and_issue(qtbot, page, terms("GUI-11"))
    newest = page.quotation
    history = page.panel.history
    steps = [(one.revision, one.status.value, one.by) for one in history.model.records]
    assert steps == [(2, "issued", "Odile"), (2, "draft", "Odile"), (1, "issued", "Odile"), (1, "draft", "Odile")]
    page.panel.show_panel(history)
    history.table.setFocus()
    history.table.selectRow(2)
    qtbot.keyClick(history.table, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.quotation == first.quotation, timeout=10_000)
    offer = page.panel.offer
    assert page.panel.older_bar.isVisible()
    assert "Revision 1 as it was sent" in page.panel.older_label.text()
    assert "the newest is revision 2" in page.panel.older_label.text()
    for button in (offer.keep_button, offer.issue_button, offer.anew_button):
        assert not button.isEnabled()
    assert not offer.accept_button.isVisible()
    assert not page.panel.prices.answer_button.isEnabled()
    qtbot.waitUntil(lambda: page.paper.document == sent.pdf, timeout=10_000)
    page.save_as(tmp_path / "old.xlsx", FileKind.WORKBOOK)
    qtbot.waitUntil((tmp_path / "old.xlsx").exists, timeout=10_000)
    assert (tmp_path / "old.xlsx").read_bytes() == sent.workbook
    page.save_as(tmp_path / "old.html", FileKind.PDF)
    qtbot.waitUntil((tmp_path / "old.html").exists, timeout=10_000)
    assert (tmp_path / "old.html").read_bytes() == sent.html != b""
    page.panel.newest_button.click()
    assert page.quotation is newest
    assert not page.panel.older_bar.isVisible()
    page.panel.show_panel(offer)
    assert offer.accept_button.isVisible()


def test_papers_are_set_off_the_windows_thread_and_only_once(
    qtbot: QtBot, page: QuotationPage, terms: Write, monkeypatch: pytest.MonkeyPatch
) -> None:
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, terms("GUI-12"))
    keep(qtbot, page)
    held, threads = threading.Event(), []
    make = QuotationPapers.workbook

    def slowly(papers: QuotationPapers, *arguments: object) -> bytes:
        threads.append(threading.current_thread())
        assert held.wait(20)
        return make(papers, *arguments)  # type: ignore[arg-type]

    monkeypatch.setattr(QuotationPapers, "workbook", slowly)
    offer = page.panel.offer
    offer.issue_button.click()
    assert page.is_busy
    assert not offer.issue_button.isEnabled()
    assert "One moment" in offer.next_label.text()
    page.book_steps.issue()  # a second step is not begun
    assert page.stored is not None
    page.look_at(page.stored.id)  # nor is anything else opened in the meantime
    held.set()
    settled(qtbot, page)
    assert page.stored.status is QuotationStatus.ISSUED
    assert len(threads) == 1
    assert threads[0] is not threading.main_thread()


def test_somebody_elses_newer_version_is_shown_and_nothing_overwritten(
    qtbot: QtBot, bench: Workbench, page: QuotationPage, terms: Write
) -> None:
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, terms("GUI-13"))
    keep(qtbot, page)
    assert page.stored is not None
    bench.quoting().life().issue(page.stored, "Merle", Display(UnitSystem.SI))
    page.panel.offer.issue_button.click()
    settled(qtbot, page)
    assert "changed by somebody else" in page.panel.state_label.text()
    assert page.stored.status is QuotationStatus.ISSUED
    assert page.panel.history.model.records[0].by == "Merle"


def test_a_missing_price_is_named_and_holds_the_issue_back(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    quote(qtbot, page, terms("GUI-2", dated=NO_LISTS))
    keep(qtbot, page)
    assert "the price list has run out" in page.panel.offer.gap_label.text()
    assert not page.panel.offer.issue_button.isEnabled()


def part_of(page: QuotationPage, number: str) -> PricedPart:
    return next(one for one in page.panel.prices.model.records if one.part.number == number)


def answer(qtbot: QtBot, page: QuotationPage, number: str, price: str | None, reason: str) -> None:
    """Mark a part, enter what is said about its price, and wait for the quotation made on that."""
    panel, before = page.panel.prices, page.quotation
    panel.table.pick_row([one.part.number for one in panel.model.records].index(number))
    if price is None:
        panel.follows_choice.setChecked(True)
    else:
        panel.price_choice.setChecked(True)
        panel.price_edit.setText(price)
    panel.reason_edit.setText(reason)
    panel.answer_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)


def test_somebody_answers_for_a_missing_price_and_takes_it_back(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    quote(qtbot, page, terms("GUI-14", dated=NO_LISTS))
    offer, prices = page.panel.offer, page.panel.prices
    offer.gap_button.click()
    assert page.panel.tabs.currentWidget() is prices
    # the keyboard is in the price of the first part that misses one
    assert prices.price_edit.hasFocus()
    assert prices.part is not None
    assert prices.part.is_open
    first, second, *_ = [one.part.number for one in prices.model.records if one.is_open]
    # without a name, a reason or a price nobody answers
    prices.answer_button.click()
    for missing in ("your name", "reason", "price"):
        assert missing in page.panel.state_label.text()
    # what is missing first gets the keyboard: price, name, reason
    for editor, text in (
        (prices.price_edit, "0.01"),
        (page.panel.name_edit, "Odile Farrow"),
        (prices.reason_edit, ""),
    ):
        prices.answer_button.setFocus()
        prices.answer_button.click()
        assert editor.hasFocus()
        qtbot.keyClicks(editor, text)
    answer(qtbot, page, first, "0.01", "by telephone from the maker")
    assert page.quotation is not None
    lines = {line.part_number: line for line in page.quotation.options[0].lines + page.quotation.options[1].lines}
    assert str(lines[first].unit_price) == "0.01"
    assert lines[first].override_by == "Odile Farrow"
    assert not part_of(page, first).is_open
    assert part_of(page, first).source_text == "Odile Farrow: by telephone from the maker"
    answer(qtbot, page, second, None, "asked for")
    assert part_of(page, second).price_text == "price follows"
    counts = {row.title: row.cells for row in offer.amounts.records}
    for title, lines_of in (
        ("Prices missing in these amounts", "open_lines"),
        ("Prices that follow", "following_lines"),
    ):
        assert counts[title] == tuple(str(len(getattr(option, lines_of))) for option in page.quotation.options)
    assert {one.part.number for one in page.quotation.terms.overrides} == {first, second}
    # what was said is taken back, and blocks again
    prices.table.pick_row([one.part.number for one in prices.model.records].index(second))
    before = page.quotation
    prices.back_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert {one.part.number for one in page.quotation.terms.overrides} == {first}
    assert part_of(page, second).is_open


def test_one_price_after_another_is_entered_without_waiting(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, terms("GUI-28", dated=NO_LISTS))
    prices = page.panel.prices
    page.panel.show_panel(prices)
    said = []
    qtbot.keyClicks(prices.reason_edit, "list to follow")  # and it is offered for the parts after the first
    for _ in range(2):
        assert prices.part is not None
        said.append(prices.part.part.number)
        qtbot.keyClicks(prices.price_edit, "0.05")
        assert prices.reason_edit.text() == "list to follow"
        qtbot.keyClick(prices.reason_edit, Qt.Key.Key_Return)
    assert said[0] != said[1]
    qtbot.keyClicks(prices.price_edit, "0.0")  # still typing when the quotation comes in
    here = prices.part
    assert here is not None
    before = page.quotation
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert page.quotation is not None
    assert {one.part.number for one in page.quotation.terms.overrides} == set(said)
    if here.part.number in page.quotation.part_numbers:
        assert prices.part is not None
        assert prices.part.part.number == here.part.number
        assert prices.price_edit.text() == "0.0"


def test_a_price_is_read_as_written_or_refused() -> None:
    assert price_answer("X-1", " 1234.50 ", "Odile", "agreed").unit_price == Decimal("1234.50")
    assert price_answer("X-1", None, "Odile", "asked for").unit_price is None
    for typed in ("", "12,50", "1,234.50", "free", "-3", "1e9", "NaN", "9" * 30):
        with pytest.raises(InputFault):
            price_answer("X-1", typed, "Odile", "agreed")


def test_a_price_that_makes_a_part_too_dear_leaves_the_answer_in_view(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, terms("GUI-25"))
    assert page.quotation is not None
    label = next(line.part_number for line in page.quotation.options[0].lines if line.kind is PartKind.LABEL)
    answer(qtbot, page, label, "9999", "a mistake")
    assert page.quotation is not None
    assert label not in page.quotation.part_numbers
    assert part_of(page, label).name == "not chosen in any option"
    before = page.quotation
    page.panel.prices.table.pick_row([one.part.number for one in page.panel.prices.model.records].index(label))
    page.panel.prices.back_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert page.quotation.terms.overrides == ()


def test_a_price_that_no_coin_can_pay_is_refused_and_can_be_put_right(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, terms("GUI-15", dated=NO_LISTS))
    before, prices = page.quotation, page.panel.prices
    number = prices.model.records[0].part.number
    prices.price_edit.setText("3.999")
    prices.reason_edit.setText("guess")
    prices.answer_button.click()
    qtbot.waitUntil(lambda: not page.is_busy, timeout=30_000)
    assert "smallest unit of USD" in page.panel.state_label.text()
    assert page.quotation is before
    answer(qtbot, page, number, "0.02", "agreed")
    assert part_of(page, number).price_text == "0.02"


def test_answers_stand_over_a_terms_file_that_is_read_anew(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, terms("GUI-16", dated=NO_LISTS))
    number = page.panel.prices.model.records[0].part.number
    answer(qtbot, page, number, "0.02", "agreed")
    terms("GUI-16", more="stock_price = 5", dated=NO_LISTS)  # somebody edits the file
    before = page.quotation
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert page.quotation is not None
    assert str(page.quotation.terms.stock_price) == "5"
    assert [one.part.number for one in page.quotation.terms.overrides] == [number]


def test_each_button_saves_its_own_file(
    qtbot: QtBot, page: QuotationPage, terms: Write, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """PDF files begin with %PDF- (ISO 32000-1, 7.5.2), workbooks are ZIP archives (ECMA-376 part 2): PK, 3, 4."""
    quote(qtbot, page, terms("GUI-31"))
    assert page.quotation is not None
    begins = {}
    hands = page.files.hands
    qtbot.waitUntil(hands[FileKind.PDF].save_button.isEnabled, timeout=30_000)  # its pages are there
    presses = {kind: button.click for kind, button in page.panel.offer.save_buttons.items()}
    presses |= {
        FileKind.PDF: hands[FileKind.PDF].save_button.click,
        FileKind.PICK_LIST: hands[FileKind.PICK_LIST].save,
        FileKind.MARGIN: hands[FileKind.MARGIN].save,
    }
    for kind, press in presses.items():
        target = tmp_path / f"{kind.value}.{kind.ending}"
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_, target=target: (str(target), ""))
        press()
        qtbot.waitUntil(target.exists, timeout=30_000)
        begins[kind] = target.read_bytes()[:4]
    assert begins[FileKind.PDF] == begins[FileKind.PICK_LIST] == b"%PDF"
    assert begins[FileKind.WORKBOOK] == b"PK\x03\x04"
    pages = {kind: text_of(tmp_path / f"{kind.value}.pdf") for kind in (FileKind.PDF, FileKind.PICK_LIST)}
    total = f"{page.quotation.options[0].total:,.2f}"
    assert {kind: total in text for kind, text in pages.items()} == {FileKind.PDF: True, FileKind.PICK_LIST: False}
    assert begins[FileKind.MARGIN] == b"%PDF"
    assert all("Internal, not for the customer" in one for one in pages_of(tmp_path / "margin.pdf"))
    rows = list(csv.DictReader((tmp_path / "csv.csv").read_text(encoding="utf-8-sig").splitlines()))
    told = {text for row in rows for text in row.values()}
    assert {line.part_number for option in page.quotation.options for line in option.lines} <= told


def test_the_book_makes_the_number_of_a_pattern_and_quoting_again_keeps_it(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    page.panel.name_edit.setText("Odile")
    pattern = "GUI-{year}-{month}-{serial:03}"
    quote(qtbot, page, terms(pattern))
    keep(qtbot, page)
    assert page.quotation is not None
    assert page.quotation.terms.heading.number == "GUI-2026-11-001"
    assert "GUI-2026-11-001" in page.panel.status_label.text()
    quote(qtbot, page, terms(pattern, "freight = { amount = 5 }"))
    keep(qtbot, page)
    assert page.stored is not None
    heading = page.stored.quotation.terms.heading
    assert (page.stored.revision, heading.number) == (1, "GUI-2026-11-001"), "the draft is saved over"
    issue(qtbot, page)
    assert [entry.number for entry in page._service.life().quotations()] == ["GUI-2026-11-001"]


def test_a_customer_is_written_once_and_chosen_for_the_quotation(
    qtbot: QtBot, page: QuotationPage, terms: Write, bench: Workbench, monkeypatch: pytest.MonkeyPatch
) -> None:
    page.terms.use_file(terms("GUI-71"))
    qtbot.waitUntil(lambda: page.terms.in_hand is not None and page.terms.in_hand.base is not None, timeout=10_000)
    faults: list[str] = []

    def fill_in(self: CustomersDialog) -> int:
        self.show()
        qtbot.mouseClick(self.new_button, Qt.MouseButton.LeftButton)
        qtbot.keyClicks(self.line_edits["name"], "Reed Wharf Oil")
        qtbot.keyClicks(self.line_edits["payment_terms"], "Net 45")
        qtbot.keyClicks(self.page_edits["delivery_address"], "Gate 3")
        qtbot.keyClicks(self.page_edits["discounts"], "hoses: 14")
        qtbot.mouseClick(self.save_button, Qt.MouseButton.LeftButton)
        faults.append(self.fault_label.text())
        self.page_edits["discounts"].selectAll()
        qtbot.keyClicks(self.page_edits["discounts"], "hoses = 14")
        qtbot.mouseClick(self.save_button, Qt.MouseButton.LeftButton)
        assert self.list.currentItem().text() == "Reed Wharf Oil"
        qtbot.mouseClick(self.use_button, Qt.MouseButton.LeftButton)
        return 1

    monkeypatch.setattr(CustomersDialog, "exec", fill_in)
    qtbot.mouseClick(page.panel.offer.customer_button, Qt.MouseButton.LeftButton)
    assert "write a discount group and its percentage" in faults[0]
    assert bench.customers().named("reed wharf oil").payment_terms == "Net 45"
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not None, timeout=30_000)
    keep(qtbot, page)
    assert page.quotation is not None
    assert [(one.group, one.percent) for one in page.quotation.terms.selling.exceptions] == [("hoses", 14)]
    page.panel.name_edit.setText("Odile")
    issue(qtbot, page)
    assert page.stored is not None
    paper = text_of(bench.quoting().life().issued_papers(page.stored.id, 1).pdf)
    for text in ("Reed Wharf Oil", "Gate 3", "Net 45"):
        assert text in paper
    bench.customers().remove("Reed Wharf Oil")


def test_the_book_lists_total_and_margin_and_shows_one_status_alone(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    """Bought at 75, sold at 90 of a list price of 100: 16.7 % of the price is left."""
    quote_and_issue(qtbot, page, terms("GUI-81", "buying = [{ percent = 25 }]\nselling = { percent = 10 }\n"))
    made, book = page.quotation, page.panel.book
    assert made is not None
    qtbot.waitUntil(lambda: len(book.entries.records) == 1, timeout=10_000)
    totals = sorted(one.total for one in made.options)
    cells = [book.entries.index(0, place) for place in range(book.entries.columnCount())]
    told = [str(cell.data(Qt.ItemDataRole.ToolTipRole)) for cell in cells]
    assert f"{totals[0]:,.2f} …" in [cell.data() for cell in cells]
    assert any(f"{totals[0]:,.2f} … {totals[1]:,.2f} USD" in text for text in told), told
    assert any(re.search(r"\b16\.[67]\d\b", text) for text in told), told
    book.status_box.setCurrentIndex(book.status_box.findText("Draft"))
    qtbot.waitUntil(lambda: not book.entries.records, timeout=10_000)
    book.status_box.setCurrentIndex(book.status_box.findText("Issued"))
    qtbot.waitUntil(lambda: len(book.entries.records) == 1, timeout=10_000)


def test_the_day_to_ask_again_is_kept_listed_when_due_and_over_with_the_answer(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    edit, book = page.panel.follow_edit, page.panel.book
    quote(qtbot, page, terms("GUI-82"))
    assert edit.isHidden(), "nothing is asked again that is not in the book"
    page.panel.name_edit.setText("Odile")
    keep(qtbot, page)
    issue(qtbot, page)
    edit.setText("2026-13-40")
    qtbot.keyClick(edit, Qt.Key.Key_Return)
    assert "write a day" in page.panel.state_label.text()

    def follow_up(day: date | None) -> None:
        edit.setText("" if day is None else day.isoformat())
        qtbot.keyClick(edit, Qt.Key.Key_Return)
        qtbot.waitUntil(lambda: page.stored is not None and page.stored.follow_up == day, timeout=10_000)
        settled(qtbot, page)

    follow_up(DAY + timedelta(days=1))
    assert edit.text() == day_text(DAY + timedelta(days=1))
    qtbot.waitUntil(lambda: len(book.entries.records) == 1, timeout=10_000)
    column = next(
        place
        for place in range(book.entries.columnCount())
        if book.entries.headerData(place, Qt.Orientation.Horizontal) == "Follow up"
    )
    qtbot.waitUntil(lambda: book.entries.index(0, column).data() == day_text(DAY + timedelta(days=1)), timeout=10_000)
    book.due_box.setChecked(True)
    qtbot.waitUntil(lambda: not book.entries.records, timeout=10_000)
    follow_up(DAY)
    qtbot.waitUntil(lambda: len(book.entries.records) == 1, timeout=10_000)
    follow_up(None)
    qtbot.waitUntil(lambda: not book.entries.records, timeout=10_000)
    follow_up(DAY)
    page.panel.offer.decline_button.click()
    settled(qtbot, page)
    assert page.stored is not None
    assert (page.stored.status, page.stored.follow_up, edit.text()) == (QuotationStatus.DECLINED, None, "")


BELOW_COST = "buying = [{ percent = 25 }]\nselling = { percent = 60 }\n"


def test_cost_and_margin_stand_in_the_window_and_lines_below_cost_ask_for_a_word(
    qtbot: QtBot, page: QuotationPage, terms: Write, bench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Bought at 75 and sold at 40 of a list price of 100, a piece loses 35, which is 87.5 % of its price."""
    page.panel.name_edit.setText("Odile")
    quote(qtbot, page, terms("GUI-61", BELOW_COST))
    keep(qtbot, page)
    offer, made = page.panel.offer, page.quotation
    assert made is not None
    rows = {row.title: row.cells for row in offer.amounts.records}
    for place, option in enumerate(made.options):
        sold, cost, margin = (Decimal(rows[title][place].replace(",", "")) for title in ("Materials", "Cost", "Margin"))
        assert sold == option.goods_amount
        assert margin == sold - cost
        assert abs(cost - sold * 75 / 40) < Decimal("0.01") * len(option.lines) * 10
        assert abs(Decimal(rows["Margin, %"][place]) - Decimal("-87.5")) < Decimal("0.1")
    assert all(part.is_low and part.margins[0].startswith("-87") for part in page.panel.prices.model.records)
    assert "below cost" in offer.next_label.text()
    asked: list[str] = []

    def give_word(self: NamedStepDialog) -> int:
        asked.append(" ".join(label.text() for label in self.findChildren(QLabel)))
        self.reason_edit.setText("kept for the long account")
        return int(NamedStepDialog.DialogCode.Accepted if len(asked) > 1 else NamedStepDialog.DialogCode.Rejected)

    monkeypatch.setattr(NamedStepDialog, "exec", give_word)
    offer.issue_button.click()
    settled(qtbot, page)
    assert page.stored is not None
    assert page.stored.status is QuotationStatus.DRAFT
    issue(qtbot, page)
    assert made.options[0].lines[0].part_number in asked[0]
    words = bench.quoting().life().at_revision(page.stored.id, 1).margin_words
    assert [(one.option, one.by, one.reason) for one in words] == [
        (title, "Odile", "kept for the long account") for title in ("Single-use", "Reconnectable")
    ]
    sent = text_of(bench.quoting().life().issued_papers(page.stored.id, 1).pdf)
    assert "long account" not in sent
    for kind in (FileKind.MARGIN_TABLE, FileKind.MARGIN_WORKBOOK):
        target = tmp_path / f"internal.{kind.ending}"
        page.save_as(target, kind)
        qtbot.waitUntil(target.exists, timeout=30_000)
    (tmp_path / "internal.csv").read_text(encoding="utf-8-sig").index("internal, not for the customer")
    assert (tmp_path / "internal.xlsx").read_bytes()[:4] == b"PK\x03\x04"


def test_a_picture_is_never_looked_for_where_the_program_was_started(
    bench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "logo.png").write_bytes(PIXEL)
    monkeypatch.chdir(tmp_path)
    terms = terms_of(seller={"name": "Hedgerow Supply", "logo": "logo.png"})
    with pytest.raises(InputFault, match=r"seller\.logo"):
        TermsInHand(title="", base=terms).logo(bench.quoting())
    assert base64.b64decode(TermsInHand(title="", base=terms, folder=tmp_path).logo(bench.quoting())) == PIXEL


def test_a_kept_quotation_is_revised_on_its_own_terms_without_a_file(
    qtbot: QtBot, bench: Workbench, session: Session, page: QuotationPage, terms: Write, tmp_path: Path
) -> None:
    (tmp_path / "logo.png").write_bytes(PIXEL)
    path = terms("GUI-17")
    path.write_text(path.read_text().replace('Supply"', 'Supply"\nlogo = "logo.png"'))
    quote_and_issue(qtbot, page, path)
    kept = page.stored
    assert kept is not None
    path.unlink()
    (tmp_path / "logo.png").unlink()
    page.panel.offer.own_terms_action.trigger()
    assert "GUI-17 r1" in page.panel.offer.terms_label.text()
    with_third_hose(session)
    before = page.quotation
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert page.quotation is not None
    assert base64.b64decode(page.quotation.logo) == PIXEL
    keep(qtbot, page)
    assert page.stored is not None
    assert (page.stored.id, page.stored.revision) == (kept.id, 2)
    assert len(page.quotation.options[0].positions) == 3


def test_terms_are_changed_in_the_form_and_quoted_on(
    qtbot: QtBot, page: QuotationPage, terms: Write, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    page.terms.use_file(terms("GUI-26", 'labour = { tasks = [{ title = "Exchange", hours = 1.5 }] }'))
    qtbot.waitUntil(lambda: page.terms.in_hand is not None and page.terms.in_hand.terms is not None, timeout=10_000)
    seen: list[Terms] = []
    notes: list[str] = []

    def left_alone(dialog: TermsDialog) -> int:
        notes.extend(label.text() for label in dialog.findChildren(QLabel) if "Survey in hand" in label.text())
        dialog.accept()
        assert dialog.terms is not None
        seen.append(dialog.terms)
        return 1

    monkeypatch.setattr(TermsDialog, "exec", left_alone)
    page.panel.offer.terms_button.click()
    assert page.terms.in_hand is not None
    assert seen == [page.terms.in_hand.terms]
    assert "positions: 2" in notes[0]
    assert notes[0].endswith("3 hours.")  # 1.5 at each of the two
    assert page.terms.in_hand.file == tmp_path / "terms.toml"  # nothing was changed: the file's terms they stay

    def renamed(dialog: TermsDialog) -> int:
        dialog.open_file(terms("GUI-27"))
        dialog.save_as(tmp_path / "other.toml")
        dialog.accept()
        return 1

    monkeypatch.setattr(TermsDialog, "exec", renamed)
    page.panel.offer.terms_button.click()
    assert page.terms.in_hand.file == tmp_path / "other.toml"
    assert "other.toml" in page.panel.offer.terms_label.text()
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not None, timeout=30_000)
    assert page.quotation is not None
    assert page.quotation.terms.heading.number == "GUI-27"
    # changed and saved nowhere: the value itself is in hand
    changed = page.quotation.terms.model_copy(update={"stock_price": Decimal(7)})
    page.terms.use_changed(changed, None, None)
    before = page.quotation
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert page.quotation.terms.stock_price == Decimal(7)


def test_another_number_makes_a_quotation_of_its_own(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    quote(qtbot, page, terms("GUI-18"))
    keep(qtbot, page)
    assert page.stored is not None
    draft = page.stored
    quote(qtbot, page, terms("GUI-19"))
    assert page.stored is None
    keep(qtbot, page)
    assert page.stored.id != draft.id


def test_quotations_are_found_by_words_and_opened(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    quote(qtbot, page, terms("GUI-3"))
    keep(qtbot, page)
    book = page.panel.book
    book.search_edit.setText("gui-3 hollow")
    qtbot.waitUntil(lambda: [one.number for one in book.entries.records] == ["GUI-3"], timeout=10_000)
    book.search_edit.setText("nobody")
    qtbot.waitUntil(lambda: book.entries.records == (), timeout=10_000)
    kept = page.stored
    assert kept is not None
    quote(qtbot, page, terms("GUI-4"))
    book.search_edit.setText("gui-3")
    qtbot.waitUntil(lambda: len(book.entries.records) == 1, timeout=10_000)
    page.panel.show_panel(book)
    book.entry_table.setFocus()
    book.entry_table.selectRow(0)
    qtbot.keyClick(book.entry_table, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.quotation == kept.quotation, timeout=10_000)
    assert page.panel.tabs.currentWidget() is page.panel.offer


def test_faulty_terms_are_told_and_nothing_is_quoted(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    path = terms("GUI-5", more='currency = "dollars"')
    page.terms.use_file(path)
    qtbot.waitUntil(lambda: "currency" in page.panel.state_label.text(), timeout=10_000)
    page.panel.offer.make_button.click()
    settled(qtbot, page)
    assert "currency" in page.panel.state_label.text()
    assert page.quotation is None
    assert page.panel.offer.make_button.isEnabled()
    terms("GUI-5")  # put right in an editor
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not None, timeout=30_000)


def test_ready_terms_can_be_written_and_used(
    qtbot: QtBot, page: QuotationPage, tmp_path: Path, bench: Workbench
) -> None:
    path = tmp_path / "mine.toml"
    page.terms.write_example(path)
    assert bench.quoting().terms().read_terms(path).options
    assert "mine.toml" in page.panel.offer.terms_label.text()
    dated = f"dated {day_text(date(2026, 11, 25))}"
    qtbot.waitUntil(lambda: dated in page.panel.offer.terms_label.text(), timeout=10_000)
    page.terms.write_example(tmp_path / "no folder" / "mine.toml")
    assert "cannot be written" in page.panel.state_label.text()


def test_quoting_can_be_stopped(page: QuotationPage, terms: Write) -> None:
    page.terms.use_file(terms("GUI-6"))
    page.panel.offer.make_button.click()
    assert not page.panel.offer.make_button.isEnabled()
    assert page.panel.state_label.text() == "Planning…"  # of a station of three hoses it said 0 of 1 positions
    page.panel.offer.stop_button.click()
    assert "Stopped" in page.panel.state_label.text()
    assert page.panel.offer.make_button.isEnabled()


def test_a_survey_changed_while_it_is_quoted_drops_the_answer(
    session: Session, page: QuotationPage, terms: Write
) -> None:
    page.terms.use_file(terms("GUI-20"))
    page.panel.offer.make_button.click()
    with_third_hose(session)
    assert "was changed while it was quoted" in page.panel.state_label.text()
    assert not page.is_busy
    assert page.quotation is None


def test_an_offer_whose_last_day_is_over_expires_and_is_quoted_anew(
    qtbot: QtBot, session: Session, page: QuotationPage, terms: Write
) -> None:
    old = DAY - timedelta(days=60)
    quote(qtbot, page, terms("GUI-7", dated=old.isoformat()))
    assert page.quotation is not None
    page.panel.name_edit.setText("Odile")
    keep(qtbot, page)
    assert "its last day is over" in page.panel.status_label.text()
    issue_and_expire(qtbot, page)
    shown = {one.number: one.status for one in page.panel.book.entries.records}
    assert shown["GUI-7"] is QuotationStatus.EXPIRED
    assert "expired" in page.panel.status_label.text()
    assert "revision 2 opens" in page.panel.offer.next_label.text()
    with_third_hose(session)
    before = page.quotation
    page.panel.offer.anew_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert "It has been changed since" in page.panel.state_label.text()
    # an offer of today: the day of the old one would leave it expired at once
    assert page.quotation.terms.heading.dated == DAY
    assert page.quotation.pins.survey == before.pins.survey
    keep(qtbot, page)
    assert page.stored is not None
    assert (page.stored.revision, page.stored.status) == (2, QuotationStatus.DRAFT)


def issue_and_expire(qtbot: QtBot, page: QuotationPage) -> None:
    """Issue an offer that is over; the page lets it expire by itself."""
    page.panel.offer.issue_button.click()
    qtbot.waitUntil(lambda: page.stored is not None and page.stored.status is QuotationStatus.EXPIRED, timeout=20_000)
    settled(qtbot, page)


def test_a_change_of_prices_is_told_by_itself_and_the_quotation_quoted_anew(
    qtbot: QtBot, bench: Workbench, page: QuotationPage, terms: Write, monkeypatch: pytest.MonkeyPatch
) -> None:
    quote(qtbot, page, terms("GUI-21"))
    keep(qtbot, page)
    kept = page.stored
    assert kept is not None
    line = kept.quotation.options[0].lines[0]
    assert line.list_price is not None
    lists = bench.quoting().terms().price_lists(DEMONSTRATION)
    # the maker halves the price of one part
    cheaper = tuple(
        replace(one, rows=tuple(halved(row) if row.part_number == line.part_number else row for row in one.rows))
        for one in lists
    )
    monkeypatch.setattr(QuotationTerms, "price_lists", lambda _, catalogue: cheaper)
    page.refresh()
    settled(qtbot, page)
    book = page.panel.book
    mine = [one for one in book.touched if one.stored.id == kept.id]
    assert len(mine) == 1
    assert "have changed under open quotations" in page.panel.notice.text
    assert "touched" in page.panel.tabs.tabText(page.panel.tabs.indexOf(book))
    page.panel.show_panel(book)
    head = book.touched_model.index_of(mine[0])
    assert str(head.data()).startswith("GUI-21 r1")
    child = book.touched_model.index(0, 0, head)
    assert child.data() == line.part_number
    assert f"{line.list_price:f} USD → {line.list_price / 2:f} USD" in str(child.siblingAtColumn(1).data())
    # opening the entry looks at the quotation, quoting anew takes its own survey and terms
    quote(qtbot, page, terms("GUI-22"))
    page.panel.show_panel(book)
    book.touched_tree.pick(head)
    book.touched_tree.setFocus()
    qtbot.keyClick(book.touched_tree, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.stored is not None and page.stored.id == kept.id, timeout=10_000)
    page.panel.show_panel(book)
    # once more, from another quotation's side
    quote(qtbot, page, terms("GUI-22"))
    page.panel.show_panel(book)
    before = page.quotation
    book.anew_button.click()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert page.quotation is not None
    now = {one.part_number: one.list_price for option in page.quotation.options for one in option.lines}
    assert now[line.part_number] == line.list_price / 2
    assert page.quotation.terms == kept.quotation.terms
    assert [one.status for one in page.panel.history.model.records] == [QuotationStatus.DRAFT]
    keep(qtbot, page)
    assert page.stored is not None
    assert page.stored.id == kept.id
    assert kept.id not in {one.stored.id for one in book.touched}


def halved(row):  # type: ignore[no-untyped-def]
    return replace(row, breaks=tuple(replace(step, unit_price=step.unit_price / 2) for step in row.breaks))


def test_parts_that_differ_stand_below_the_amounts(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    quote(qtbot, page, terms("GUI-23"))
    assert page.quotation is not None
    first, second = ({line.part_number: line.ordered for line in option.lines} for option in page.quotation.options)
    wanted = {
        number: tuple(f"{count} ×" if count else "–" for count in (first.get(number, 0), second.get(number, 0)))
        for number in first.keys() | second.keys()
        if first.get(number) != second.get(number)
    }
    assert wanted
    numbers = first.keys() | second.keys()
    shown = {
        row.title.split()[0]: row.cells for row in page.panel.offer.amounts.records if row.title.split()[0] in numbers
    }
    assert shown == wanted
    assert [row.title for row in page.panel.offer.amounts.records].count("Where the parts differ:") == 1


def test_names_with_markup_are_shown_as_they_are(qtbot: QtBot, page: QuotationPage, terms: Write) -> None:
    path = terms("GUI-24")
    path.write_text(path.read_text().replace("Hollow Ford Fuels", "<b>Hollow</b> & Ford"))
    quote(qtbot, page, path)
    keep(qtbot, page)
    book = page.panel.book
    book.search_edit.setText("gui-24")
    qtbot.waitUntil(lambda: len(book.entries.records) == 1, timeout=10_000)
    index = book.entries.index(0, 2)
    assert index.data() == "<b>Hollow</b> & Ford"
    assert "&lt;b&gt;Hollow&lt;/b&gt; &amp; Ford" in index.data(Qt.ItemDataRole.ToolTipRole)


def test_everything_is_reached_by_keyboard(page: QuotationPage) -> None:
    offer, prices, history, book = page.panel.offer, page.panel.prices, page.panel.history, page.panel.book
    for widget in (
        page.panel.name_edit, page.panel.tabs.tabBar(), offer.take_button, offer.make_button, offer.amount_table,
        offer.keep_button, offer.issue_button, offer.note_edit, offer.accept_button, *offer.save_buttons.values(),
        prices.table, prices.price_edit, prices.reason_edit, prices.answer_button, prices.back_button,
        history.table, history.read_button, history.before_box, history.after_box, history.tree,
        book.search_edit, book.entry_table, book.check_button, book.anew_button, book.touched_tree,
    ):  # fmt: skip
        assert widget.focusPolicy() & Qt.FocusPolicy.TabFocus


def test_it_is_told_that_sets_are_chosen_together_between_two_options(
    qtbot: QtBot, page: QuotationPage, terms: Write
) -> None:
    """Over a big catalog that takes minutes, in which no further position is counted."""
    quote(qtbot, page, terms("2026-3300"))  # of two options
    offer = page.panel.offer
    for done, is_choosing in ((0, False), (299, False), (300, True), (301, False), (600, True)):
        assert ("choosing sets together" in offer.show_progress(done, 600)) is is_choosing, done
