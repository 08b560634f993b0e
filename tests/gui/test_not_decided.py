"""A position of which it takes too much work to say whether a set fits, in the window: told as what it is.

So little work is allowed that every question is left open; a plan that searched on all the same would find sets.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from spoutline.gui.edits.question import Step
from spoutline.gui.models.marks import Tone, tone_of_plan
from spoutline.gui.models.site_nodes import plan_words
from spoutline.gui.window.main_window import MainWindow
from spoutline.model.language import Language
from spoutline.model.plan import PlanStatus
from spoutline.search.listener import Listener

pytestmark = pytest.mark.plans_anew
WORDS = {
    Language.ENGLISH: "not decided",
    Language.GERMAN: "nicht entschieden",
    Language.SPANISH: "sin decidir",
    Language.FRENCH: "non tranché",
}


@pytest.fixture(autouse=True)
def next_to_no_work() -> Iterator[None]:
    """Let questions take next to no work; asked for before the window is made."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(Listener, "most_work", 1.0)
        yield


def test_the_window_says_not_decided_and_what_may_settle_it(qtbot: QtBot, spoken: tuple[Language, MainWindow]) -> None:
    language, window = spoken
    workplace = window.workplace
    assert workplace is not None
    plans, session = workplace.plans, workplace.session
    assert {plans.plan(one.label).status for one in session.survey.positions} == {PlanStatus.NOT_DECIDED}
    for position in session.survey.positions:
        plan = plans.plan(position.label)
        assert plan_words(plan, workplace.context.story) == WORDS[language]
        assert tone_of_plan(plan) is Tone.BAD  # it is no set that could be counted as one
    workplace.show_step(Step.SET)
    card = workplace.set_page.outcome
    qtbot.waitUntil(lambda: WORDS[language] in card.headline_label.text().lower(), timeout=20_000)
    assert not card.is_waiting
    told = [label.text() for label in card.findChildren(QLabel) if not label.isHidden()]
    story = workplace.context.story
    plan = plans.plan(session.label)
    assert plan is not None
    assert plan.refusal is not None
    for way in plan.refusal.ways_out:
        assert any(story.way_out(way) in text for text in told)
    assert not card.price_label.text()
