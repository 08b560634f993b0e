"""Plans in the window: positions that ask the same are planned once, each under its own name."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

import pytest
from pytestqt.qtbot import QtBot

from call_count import calls_counted
from spoutline.bootstrap import Workbench
from spoutline.gui.edits.command import make_edit
from spoutline.gui.jobs import Ticket
from spoutline.gui.pages.survey import site_panel
from spoutline.gui.roles import Role, Tone
from spoutline.gui.session import Session
from spoutline.gui.window.workplace import Workplace
from spoutline.model.finding import SubjectKind
from spoutline.model.plan import SitePlan
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Survey


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Return the labels that the search is asked about from now on."""
    labels: list[str] = []
    plan_stages = Workbench.plan_stages

    def noted(bench: Workbench, survey: Survey, label: str, ticket: Ticket) -> Iterator[StagedPlan]:
        labels.append(label)
        return plan_stages(bench, survey, label, ticket)

    monkeypatch.setattr(Workbench, "plan_stages", noted)
    return labels


def widened(survey: Survey, copies: int) -> Survey:
    """Return the survey with copies of its first position, at dispensers of their own."""
    first = survey.positions[0]
    more = (first.model_copy(update={"label": f"copy {n}", "dispenser": f"D{n}"}) for n in range(copies))
    return survey.model_copy(update={"positions": (*survey.positions, *more)})


@pytest.mark.plans_anew
def test_positions_that_ask_the_same_share_one_search(
    qtbot: QtBot, session: Session, workplace: Workplace, asked: list[str]
) -> None:
    plans = workplace.plans
    qtbot.waitUntil(lambda: all(plans.plan(one.label) for one in session.survey.positions), timeout=20_000)
    asked.clear()
    make_edit(session, widened(session.survey, 40), "widen")
    labels = [one.label for one in session.survey.positions]
    qtbot.waitUntil(lambda: all(plans.plan(label) for label in labels), timeout=20_000)
    assert asked == []
    first, copy = plans.plan(labels[0]), plans.plan("copy 7")
    assert first is not None
    assert copy is not None
    assert first.chosen is not None
    assert copy.chosen is not None
    assert copy.position == session.survey.position("copy 7")
    assert copy.chosen.hanging_set.numbers == first.chosen.hanging_set.numbers
    named = {one.subject for one in copy.chosen.findings if one.subject_kind is SubjectKind.POSITION}
    assert named <= {"copy 7"}


def test_an_answer_changed_at_one_of_them_is_searched_for_it_alone(
    qtbot: QtBot, session: Session, workplace: Workplace, asked: list[str]
) -> None:
    plans = workplace.plans
    make_edit(session, widened(session.survey, 3), "widen")
    qtbot.waitUntil(lambda: all(plans.plan(one.label) for one in session.survey.positions), timeout=20_000)
    asked.clear()
    changed = session.survey.position("copy 1")
    assert changed is not None
    attended = changed.model_copy(update={"hold_open_wanted": not changed.hold_open_wanted})
    positions = tuple(attended if one is changed else one for one in session.survey.positions)
    make_edit(session, session.survey.model_copy(update={"positions": positions}), "change")
    qtbot.waitUntil(lambda: plans.plan("copy 1") is not None, timeout=20_000)
    assert asked == ["copy 1"]


def test_with_a_stock_price_an_answer_changed_at_one_position_plans_the_others_anew_at_once(
    qtbot: QtBot, bench: Workbench, session: Session, workplace: Workplace, monkeypatch: pytest.MonkeyPatch
) -> None:
    plans, labels = workplace.plans, [one.label for one in session.survey.positions]
    asked: list[Survey] = []
    plan_site = Workbench.plan_site

    def noted(bench: Workbench, survey: Survey, ticket: Ticket) -> SitePlan:
        asked.append(survey)
        return plan_site(bench, survey, ticket)

    monkeypatch.setattr(Workbench, "plan_site", noted)
    site = session.survey.site.model_copy(update={"stock_price": Decimal(200)})
    make_edit(session, session.survey.model_copy(update={"site": site}), "price")
    qtbot.waitUntil(lambda: all(plans.plan(label) for label in labels), timeout=60_000)
    first = session.survey.positions[0]
    attended = first.model_copy(update={"hold_open_wanted": not first.hold_open_wanted})
    make_edit(
        session, session.survey.model_copy(update={"positions": (attended, *session.survey.positions[1:])}), "change"
    )
    assert [plans.plan(label) for label in labels] == [None] * len(labels)
    session.look_at(labels[1])
    qtbot.waitUntil(lambda: all(plans.plan(label) for label in labels), timeout=60_000)
    together = plan_site(bench, session.survey)
    for label, wanted in zip(labels, together.positions, strict=True):
        staged = plans.staged(label)
        assert staged is not None
        assert staged.whole == wanted
    assert len(asked) == 2


def test_changed_rules_are_searched_anew(
    qtbot: QtBot, session: Session, workplace: Workplace, asked: list[str]
) -> None:
    plans = workplace.plans
    make_edit(session, widened(session.survey, 3), "widen")
    labels = [one.label for one in session.survey.positions]
    qtbot.waitUntil(lambda: all(plans.plan(label) for label in labels), timeout=20_000)
    asked.clear()
    plans.forget()
    qtbot.waitUntil(lambda: all(plans.plan(label) for label in labels), timeout=20_000)
    assert asked
    assert len(asked) < len(labels)


def unlike(survey: Survey, count: int) -> Survey:
    """Return the survey with so many positions, no two of which ask the same."""
    first = survey.positions[0]
    positions = []
    for number in range(count):
        filler = first.filler.model_copy(update={"distance_m": round(1.5 + number / 1000, 3)})
        positions.append(first.model_copy(update={"label": f"P{number}", "filler": filler}))
    return survey.model_copy(update={"positions": tuple(positions)})


@pytest.mark.parametrize("stock_price", [Decimal(0), Decimal(35)])
def test_looking_for_every_plan_works_no_question_out_anew(
    qtbot: QtBot, session: Session, workplace: Workplace, stock_price: Decimal, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The window looks for all plans after each that comes; together each would ask for all positions, each time."""
    monkeypatch.setattr(workplace.plans, "_fetch", lambda: None)
    survey = unlike(session.survey, 200)
    survey = survey.model_copy(update={"site": survey.site.model_copy(update={"stock_price": stock_price})})
    make_edit(session, survey, "widen")
    with calls_counted() as calls:
        assert not any(workplace.plans.plan(one.label) for one in survey.positions)
        assert not any(workplace.plans.trouble(one.label) for one in survey.positions)
    assert calls["hash_func"] < 20 * len(survey.positions)


def test_a_plan_that_comes_lets_one_row_of_a_big_site_be_made_anew(
    qtbot: QtBot, session: Session, workplace: Workplace, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(workplace.plans, "_fetch", lambda: None)
    make_edit(session, unlike(session.survey, 200), "widen")
    panel, wholes = workplace.site_panel, []
    qtbot.waitUntil(lambda: not panel._later.isActive())
    whole = site_panel.site_nodes
    monkeypatch.setattr(site_panel, "site_nodes", lambda *given: wholes.append(1) or whole(*given))
    monkeypatch.setattr(workplace.plans, "tone", lambda label: Tone.GOOD if label == "P7" else Tone.WORKING)
    workplace.plans.updated.emit("P7")
    workplace.plans.updated.emit("nobody")
    qtbot.waitUntil(lambda: panel.model.index_of("P7").data(Role.TONE) == Tone.GOOD)
    assert panel.model.index_of("P8").data(Role.TONE) == Tone.WORKING
    assert wholes == []
