"""Survey, plan, quotation, revision: the distributor's whole job through the window."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.command import make_edit
from spoutline.gui.pages.quotation_page import QuotationPage
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.quotation import QuotationStatus
from spoutline.planning.refit.revision_changes import Changed

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


@pytest.fixture
def page(window: MainWindow, workplace: Workplace) -> QuotationPage:
    page = QuotationPage(workplace.context, window.tell, today=lambda: DAY)
    workplace.__dict__["quotation_page"] = page
    workplace.views.addWidget(page)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    assert workplace.views.currentWidget() is page
    return page


@pytest.fixture
def terms(tmp_path: Path):
    def write(number: str, more: str = "", dated: str = "2026-11-25") -> Path:
        path = tmp_path / "terms.toml"
        path.write_text(TERMS.format(number=number, more=more, dated=dated), encoding="utf-8")
        return path

    return write


def quote(qtbot: QtBot, page: QuotationPage, path: Path) -> None:
    before = page.quotation
    page.use_terms(path)
    page.panel.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not None and page.quotation is not before, timeout=30_000)


def test_survey_becomes_plan_quotation_and_revision(
    qtbot: QtBot, bench: Workbench, session: Session, page: QuotationPage, terms, tmp_path: Path
) -> None:
    panel = page.panel
    assert not panel.make_button.isEnabled()
    quote(qtbot, page, terms("GUI-1"))
    assert page.quotation is not None
    assert [row.title for row in panel.amounts.records][:4] == ["Goods", "Labour", "Freight", "Total"]
    assert panel.amounts.records[0].differs
    qtbot.waitUntil(lambda: page.paper.page_count > 0, timeout=20_000)
    panel.name_edit.setText("Odile")
    assert not panel.issue_button.isEnabled()
    panel.keep_button.click()
    assert page.stored is not None
    assert "draft" in panel.status_label.text()
    panel.issue_button.click()
    assert page.stored.status is QuotationStatus.ISSUED
    first = page.stored
    sent = bench.quoting().issued_papers(first.id, 1)
    page.save_as(tmp_path / "sent.pdf", "pdf")
    qtbot.waitUntil((tmp_path / "sent.pdf").exists, timeout=10_000)
    assert (tmp_path / "sent.pdf").read_bytes() == sent.pdf
    # the customer wants a third hose
    position = session.survey.positions[0].model_copy(update={"label": "A3"})
    make_edit(session, session.survey.model_copy(update={"positions": (*session.survey.positions, position)}), "add")
    quote(qtbot, page, terms("GUI-1"))
    assert "not kept yet" in panel.status_label.text()
    panel.keep_button.click()
    assert page.stored is not None
    assert (page.stored.id, page.stored.revision, page.stored.status) == (first.id, 2, QuotationStatus.DRAFT)
    changes = {one.changed for one in bench.quoting().changes(first.id, 1, 2)}
    assert {Changed.SURVEY, Changed.QUANTITY, Changed.TOTAL, Changed.POSITION_SET} <= changes
    assert bench.quoting().issued_papers(first.id, 1) == sent
    panel.issue_button.click()
    panel.accept_button.click()
    assert page.stored.status is QuotationStatus.ACCEPTED
    assert not panel.accept_button.isEnabled()
    assert page.stored.quotation.pins.survey_revision == session.stored.revision


def test_a_missing_price_is_named_and_holds_the_issue_back(qtbot: QtBot, page: QuotationPage, terms) -> None:
    quote(qtbot, page, terms("GUI-2", dated="2028-01-01"))
    page.panel.keep_button.click()
    assert "the price list has run out" in page.panel.gap_label.text()
    assert not page.panel.issue_button.isEnabled()


def test_quotations_are_found_by_words_and_opened(qtbot: QtBot, page: QuotationPage, terms) -> None:
    quote(qtbot, page, terms("GUI-3"))
    page.panel.keep_button.click()
    assert page.stored is not None
    page.panel.search_edit.setText("gui-3 hollow")
    assert [one.number for one in page.panel.entries.records] == ["GUI-3"]
    page.panel.search_edit.setText("nobody")
    assert page.panel.entries.records == ()
    kept = page.stored
    quote(qtbot, page, terms("GUI-4"))
    page.panel.search_edit.setText("")
    page.look_at(kept.id)
    assert page.quotation == kept.quotation


def test_faulty_terms_are_told_and_nothing_is_quoted(qtbot: QtBot, page: QuotationPage, terms) -> None:
    page.use_terms(terms("GUI-5", more='currency = "dollars"'))
    page.panel.make_button.click()
    qtbot.waitUntil(lambda: "currency" in page.panel.state_label.text(), timeout=10_000)
    assert page.quotation is None
    assert page.panel.make_button.isEnabled()


def test_ready_terms_can_be_written_and_used(page: QuotationPage, tmp_path: Path, bench: Workbench) -> None:
    path = tmp_path / "mine.toml"
    page.write_example(path)
    assert bench.quoting().read_terms(path).options
    assert "mine.toml" in page.panel.terms_label.text()
    page.write_example(tmp_path / "no folder" / "mine.toml")
    assert "cannot be written" in page.panel.state_label.text()


def test_quoting_can_be_stopped(page: QuotationPage, terms) -> None:
    page.use_terms(terms("GUI-6"))
    page.panel.make_button.click()
    page.panel.stop_button.click()
    assert "Stopped" in page.panel.state_label.text()
    assert page.panel.make_button.isEnabled()


def test_an_offer_whose_last_day_is_over_shows_as_expired(qtbot: QtBot, page: QuotationPage, terms) -> None:
    old = DAY - timedelta(days=60)
    quote(qtbot, page, terms("GUI-7", dated=old.isoformat()))
    page.panel.name_edit.setText("Odile")
    page.panel.keep_button.click()
    page.panel.issue_button.click()
    assert page.stored is not None
    page.refresh()
    shown = {one.number: one.status for one in page.panel.entries.records}
    assert shown["GUI-7"] is QuotationStatus.EXPIRED
