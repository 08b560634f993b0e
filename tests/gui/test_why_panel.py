"""Why these parts, in the window: the counts of a place add up, and the paper says the same on request."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from gui.test_no_set import LATE, without_set
from paper_text import text_of
from spoutline.gui.dialogs.no_set import NoSetDialog
from spoutline.gui.pages.result.why_panel import WhyPanel
from spoutline.gui.window.workplace import Workplace

MINUS = "\N{MINUS SIGN}"


def shown(qtbot: QtBot, workplace: Workplace) -> WhyPanel:
    panel = workplace.set_page.why
    workplace.set_page.show_panel(panel)
    panel.refresh()
    qtbot.waitUntil(lambda: panel.model.rowCount() > 0, timeout=60_000)
    return panel


def test_each_place_of_the_set_shows_counts_that_add_up_and_what_decided(qtbot: QtBot, workplace: Workplace) -> None:
    panel = shown(qtbot, workplace)
    plan = workplace.plans.plan(workplace.session.label)
    assert plan is not None
    assert plan.chosen is not None
    assert panel.model.rowCount() == len(plan.chosen.hanging_set.links)
    for row, link in enumerate(plan.chosen.hanging_set.links):
        node = panel.model.node_at(panel.model.index(row, 0))
        assert node is not None
        assert link.part.number in node.cells[0]
        counts = [one.cells[1] for one in node.children if not one.spans]
        there, *taken, left = (int(text.replace(MINUS, "-")) for text in counts)
        assert there + sum(taken) == left >= 1
        assert any(one.spans for one in node.children)


def test_the_bill_says_why_on_request_alone(qtbot: QtBot, workplace: Workplace) -> None:
    bill = workplace.bill_page
    workplace.show_bill()
    qtbot.waitUntil(lambda: bill.document is not None, timeout=120_000)
    assert bill.document is not None
    assert "why these parts" not in text_of(bill.document)
    bill.why_box.click()
    qtbot.waitUntil(lambda: bill.document is not None, timeout=120_000)
    assert "why these parts" in text_of(bill.document)


def test_without_a_set_the_first_obstacle_is_told_with_its_numbers_and_the_way_to_all(
    qtbot: QtBot, workplace: Workplace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The lead time is the wish that fails: no part of the catalogue lies at hand today (day 0)."""
    without_set(qtbot, workplace, decisions=LATE)
    panel = shown(qtbot, workplace)
    qtbot.waitUntil(lambda: panel.hands._is_allowed, timeout=60_000)
    first = panel.model.node_at(panel.model.index(0, 0))
    assert first is not None
    assert "lead time" in first.cells[0]
    assert any(character.isdigit() for behind in first.children for character in behind.cells[0])
    assert panel.all_button.isVisible()
    opened: list[NoSetDialog] = []
    monkeypatch.setattr(NoSetDialog, "exec", lambda dialog: opened.append(dialog) or dialog.reject() or 0)
    panel.all_button.click()
    assert len(opened) == 1
    path = tmp_path / "why.pdf"
    panel.hands.save_to(path)
    qtbot.waitUntil(path.exists, timeout=60_000)
    assert "Why no set fits" in text_of(path)
    assert "Accept a lead time of" in " ".join(text_of(path).split())
