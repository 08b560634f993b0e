"""What a change of the survey means in money, on the quotation page before anybody quotes it again."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from datetime import date
from decimal import Decimal

import pytest
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot
from sqlalchemy import delete

from planning.quoting_terms import terms_of
from spoutline.book.quotation_tables import QuotationEventRow, QuotationPartRow, QuotationRevisionRow, QuotationRow
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.quotations import QuotationService
from spoutline.gui.dialogs.foreseen_quote import ForeseenQuoteDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.pages.quotation.terms import TermsInHand
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.quotation_status import QuotationStatus
from spoutline.planning.refit.money_change import MoneyChange

DAY = date(2026, 11, 25)


@pytest.fixture(autouse=True)
def no_quotations_of_others(bench: Workbench) -> Iterator[None]:
    yield
    with bench.book()._engine.begin() as connection:
        for table in (QuotationEventRow, QuotationPartRow, QuotationRevisionRow, QuotationRow):
            connection.execute(delete(table))


@pytest.fixture
def page(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> QuotationPage:
    """Return the page with a quotation of two options in the book."""
    page = QuotationPage(workplace.context, window.notify, today=lambda: DAY)
    workplace.__dict__["quotation_page"] = page
    workplace.views.addWidget(page)
    workplace.show_quotations()
    options = ({"title": "Single-use", "breakaway": "single_use"}, {"title": "Any"})
    page.terms.hold(TermsInHand(title="terms", base=terms_of(options=options)))
    page.make()
    qtbot.waitUntil(lambda: page.quotation is not None, timeout=30_000)
    page.panel.name_edit.setText("Odile")
    page.book_steps.keep()
    qtbot.waitUntil(lambda: page.stored is not None and not page.is_busy, timeout=30_000)
    return page


def with_third_hose(session: Session) -> None:
    position = session.survey.positions[0].model_copy(update={"label": "A3"})
    make_edit(session, session.survey.model_copy(update={"positions": (*session.survey.positions, position)}), "add")


def foreseen(qtbot: QtBot, page: QuotationPage) -> MoneyChange:
    qtbot.waitUntil(lambda: page.foreseer.found is not None, timeout=30_000)
    assert page.foreseer.found is not None
    return page.foreseer.found.change


def answered(monkeypatch: pytest.MonkeyPatch, answer: QDialog.DialogCode) -> list[ForeseenQuoteDialog]:
    shown: list[ForeseenQuoteDialog] = []

    def take(dialog: ForeseenQuoteDialog) -> int:
        shown.append(dialog)
        return answer

    monkeypatch.setattr(ForeseenQuoteDialog, "exec", take)
    return shown


def test_a_changed_survey_tells_every_option_then_and_now(qtbot: QtBot, page: QuotationPage, session: Session) -> None:
    before = page.quotation
    assert before is not None
    assert not page.money_row.isVisible()
    with_third_hose(session)
    change = foreseen(qtbot, page)
    assert page.money_row.isVisible()
    assert [one.title for one in change.options] == ["Single-use", "Any"]
    assert [one.total.before for one in change.options] == [option.total for option in before.options]
    words = page.money_row.label.text()
    for one in change.options:
        assert one.total.before is not None
        assert one.total.after is not None
        assert f"{one.title}: {one.total.before:,.2f} → {one.total.after:,.2f} USD" in words
    # quoted by the button it comes to the same
    page.make()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    assert page.quotation is not None
    assert [option.total for option in page.quotation.options] == [one.total.after for one in change.options]
    assert not page.money_row.isVisible()


def test_what_was_foreseen_is_taken_in_hand_and_kept_as_the_next_state(
    qtbot: QtBot, page: QuotationPage, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    with_third_hose(session)
    change = foreseen(qtbot, page)
    shown = answered(monkeypatch, QDialog.DialogCode.Rejected)
    before = page.quotation
    page.money_row.details_button.click()
    assert page.quotation is before
    (dialog,) = shown
    heads = [dialog.model.index(row, 0) for row in range(dialog.model.rowCount())]
    assert [head.data() for head in heads] == ["Single-use", "Any"]
    for head, option in zip(heads, change.options, strict=True):
        below = [dialog.model.index(row, 3, head).data() for row in range(dialog.model.rowCount(head))]
        parts = [Decimal(text.replace(",", "")) for text in below]
        assert len(parts) == len(option.lines) > 0
        assert sum(parts) == option.total.difference
    answered(monkeypatch, QDialog.DialogCode.Accepted)
    page.money_row.details_button.click()
    assert page.quotation is not before
    page.book_steps.keep()
    qtbot.waitUntil(lambda: not page.is_busy, timeout=30_000)
    assert page.stored is not None
    assert page.stored.quotation.pins.survey == session.survey
    assert page.stored.quotation.pins.survey_id == session.stored.id
    assert page.stored.status is QuotationStatus.DRAFT
    assert not page.money_row.isVisible()


def test_a_change_that_costs_nothing_says_so_and_taken_back_it_says_nothing(
    qtbot: QtBot, page: QuotationPage, session: Session
) -> None:
    noted = session.survey.positions[0].model_copy(update={"notes": "worn"})
    rest = session.survey.positions[1:]
    make_edit(session, session.survey.model_copy(update={"positions": (noted, *rest)}), "note")
    assert foreseen(qtbot, page).is_nothing
    assert "No amount" in page.money_row.label.text()
    session.undo_stack.undo()
    assert not page.money_row.isVisible()
    assert page.foreseer.found is None


def test_the_work_can_be_stopped_and_taken_up_again(
    qtbot: QtBot, page: QuotationPage, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    gate, quote = threading.Event(), QuotationService.quote

    def slow(self: QuotationService, *arguments: object, **named: object) -> object:
        gate.wait(20)
        return quote(self, *arguments, **named)  # type: ignore[arg-type]

    monkeypatch.setattr(QuotationService, "quote", slow)
    with_third_hose(session)
    qtbot.waitUntil(lambda: page.foreseer.is_at_work, timeout=10_000)
    assert page.money_row.stop_button.isVisible()
    page.money_row.stop_button.click()
    gate.set()
    assert not page.foreseer.is_at_work
    assert page.money_row.again_button.isVisible()
    assert "was not worked out" in page.money_row.label.text()
    page.money_row.again_button.click()
    foreseen(qtbot, page)


def test_a_page_out_of_sight_works_nothing_out(
    qtbot: QtBot, page: QuotationPage, session: Session, workplace: Workplace
) -> None:
    workplace.show_walk()
    with_third_hose(session)
    assert not page.foreseer.is_asked
    workplace.show_quotations()
    foreseen(qtbot, page)


def test_what_cannot_be_quoted_is_told(
    qtbot: QtBot, page: QuotationPage, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object, **__: object) -> object:
        raise refused()

    monkeypatch.setattr(QuotationService, "quote", refuse)
    with_third_hose(session)
    qtbot.waitUntil(lambda: bool(page.foreseer.fault), timeout=10_000)
    assert "no list has it" in page.money_row.label.text()


def refused() -> Exception:
    from spoutline.model.faults import InputFault, InputProblem

    return InputFault((InputProblem("", "price", "A-1", "no list has it"),))


def test_an_alternate_is_taken_in_one_step_with_its_money_shown_first(
    qtbot: QtBot, page: QuotationPage, session: Session, bench: Workbench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A person's prices make the difference: 95.50 instead of 40.00 for each piece."""
    nozzle_of = page.quotation
    assert nozzle_of is not None
    assert not page.panel.offer.alternate_button.isVisible()
    prices = [
        {"part": "LS-B101", "unit_price": "40.00", "by": "Odile"},
        {"part": "QW-B101", "unit_price": "95.50", "by": "Odile"},
    ]
    alternates = [{"part": "LS-B101", "by": "QW-B101"}]
    options = ({"title": "Any"},)
    page.terms.hold(TermsInHand(title="terms", base=terms_of(options=options, overrides=prices, alternates=alternates)))
    page.make()
    qtbot.waitUntil(lambda: page.quotation is not nozzle_of and not page.is_busy, timeout=30_000)
    page.book_steps.keep()
    qtbot.waitUntil(lambda: not page.is_busy, timeout=30_000)
    before, survey = page.quotation, session.survey
    assert before is not None
    (offered,) = before.offered_alternates
    button = page.panel.offer.alternate_button
    assert button.isVisible()
    (choice,) = button.choices.actions()
    answered(monkeypatch, QDialog.DialogCode.Rejected)
    choice.trigger()
    qtbot.waitUntil(lambda: not page.is_busy, timeout=30_000)
    assert page.quotation is before
    assert session.survey == survey
    (line,) = (one for one in before.options[0].lines if one.part == offered.line)
    shown = answered(monkeypatch, QDialog.DialogCode.Accepted)
    choice = button.choices.actions()[0]
    choice.trigger()
    qtbot.waitUntil(lambda: bool(shown) and not page.is_busy, timeout=30_000)
    assert page.stored is not None
    assert page.stored.quotation is page.quotation is not before
    made = page.stored.quotation
    assert made.options[0].total - before.options[0].total == line.ordered * Decimal("55.50")
    assert offered.part in made.parts
    assert offered.line not in made.parts
    # the survey that is open keeps the part, as an edit that can be undone, and is what was quoted
    assert made.pins.survey == session.survey != survey
    assert (made.pins.survey_id, made.pins.survey_revision) == (session.stored.id, session.stored.revision)
    session.undo_stack.undo()
    assert session.survey == survey
