"""Why these parts, in the window: the counts of a place add up, and the paper says the same on request."""

from __future__ import annotations

from pytestqt.qtbot import QtBot

from paper_text import text_of
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
