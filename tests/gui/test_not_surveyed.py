"""A position that nobody surveyed reads so, is not quoted or listed unasked, and a surveyed one can be green."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from gui.test_quotation_page import TERMS
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.command import make_edit
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.roles import Tone
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.survey import Position, SurveyLiquid

SURVEYED = Position(label="1A", liquid=SurveyLiquid(blend_percent=10), duty="car")


def show(qtbot: QtBot, workplace: Workplace, *positions: Position) -> None:
    """Put these positions in the place of the station's, the first one in focus."""
    session = workplace.session
    make_edit(session, session.survey.model_copy(update={"positions": positions}), "positions")
    session.look_at(positions[0].label)
    wait_for_plans(qtbot, workplace)


@pytest.fixture
def page(window: MainWindow, workplace: Workplace) -> QuotationPage:
    page = QuotationPage(workplace.context, window.notify, today=lambda: date(2026, 11, 25))
    workplace.__dict__["quotation_page"] = page
    workplace.views.addWidget(page)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    return page


@pytest.fixture
def terms(tmp_path: Path) -> Path:
    path = tmp_path / "terms.toml"
    path.write_text(TERMS.format(number="OPEN-1", more="", dated="2026-11-25"), encoding="utf-8")
    return path


def test_an_untouched_position_is_not_surveyed_and_an_answered_one_is_green(qtbot: QtBot, workplace: Workplace) -> None:
    show(qtbot, workplace, Position(label="2A"), SURVEYED)
    card = workplace.set_page.outcome
    card.refresh()
    assert workplace.context.sets.tone("2A") is Tone.OPEN
    assert card.headline_label.text() == "Not surveyed yet"
    assert card.price_label.text() == ""
    assert workplace.context.sets.tone("1A") is Tone.GOOD  # outlet strength and pressure are asked of the station
    workplace.session.look_at("1A")
    card.refresh()
    assert card.headline_label.text() == "A set fits"
    assert "USD" in card.price_label.text()


def test_answering_a_main_question_with_its_usual_value_surveys_the_position(
    qtbot: QtBot, workplace: Workplace
) -> None:
    show(qtbot, workplace, Position(label="2A"))
    assert workplace.context.sets.tone("2A") is Tone.OPEN
    show(qtbot, workplace, Position(label="2A", duty="car"))
    assert workplace.context.sets.tone("2A") is not Tone.OPEN


def test_what_nobody_surveyed_is_not_quoted(
    qtbot: QtBot, workplace: Workplace, page: QuotationPage, terms: Path
) -> None:
    show(qtbot, workplace, SURVEYED, Position(label="2A"))
    page.terms.use_file(terms)
    page.panel.offer.make_button.click()
    qtbot.waitUntil(lambda: page.quotation is not None, timeout=30_000)
    assert page.quotation is not None
    assert [one.label for one in page.quotation.pins.survey.positions] == ["1A"]
    assert "2A" in page.panel.state_label.text()


def test_nothing_is_quoted_where_nothing_is_surveyed(
    qtbot: QtBot, workplace: Workplace, page: QuotationPage, terms: Path
) -> None:
    show(qtbot, workplace, Position(label="2A"))
    page.terms.use_file(terms)
    page.panel.offer.make_button.click()
    assert not page.is_busy
    assert "No position is surveyed yet" in page.panel.state_label.text()


def test_what_nobody_surveyed_is_not_on_the_parts_list(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    show(qtbot, workplace, SURVEYED, Position(label="2A"))
    window.actions_by_id[ActionId.BILL].trigger()
    bill = workplace.bill_page
    qtbot.waitUntil(lambda: "2A" in bill.state_label.text(), timeout=30_000)
    shown = [bill.positions_model.index(row, 0).data() for row in range(bill.positions_model.rowCount())]
    assert shown == ["1A"]
    assert "Not surveyed yet, and not in the list: 2A." in bill.state_label.plain


def test_a_position_surveyed_by_its_usual_answers_comes_onto_the_parts_list(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    show(qtbot, workplace, SURVEYED, Position(label="2A"))
    window.actions_by_id[ActionId.BILL].trigger()
    bill = workplace.bill_page
    qtbot.waitUntil(lambda: "2A" in bill.state_label.text(), timeout=30_000)
    show(qtbot, workplace, SURVEYED, Position(label="2A", duty="car"))  # the values are those of before
    qtbot.waitUntil(lambda: bill.positions_model.rowCount() == 2, timeout=30_000)
    assert "2A" not in bill.state_label.plain
