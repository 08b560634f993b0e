"""Where an option hangs other parts than the plan: held against planning every position by the catalogue as well."""

from __future__ import annotations

import pytest

from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.quotation_terms import Terms
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.refit import station
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import PlannedPosition
from spoutline.planning.sets.relabel import same_question
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI = Display(UnitSystem.SI)


@pytest.fixture
def survey() -> Survey:
    """Return a station of twelve hoses, most of which ask what another asks."""
    demo = demo_survey("refit_48")
    return demo.model_copy(update={"positions": demo.positions[:12]})


def hanging(plan: PositionPlan) -> tuple[object, ...]:
    return tuple((link.part.ref, link.kept) for link in plan.chosen.hanging_set.links) if plan.chosen else ()


def override(part: PartRef, price: str) -> dict[str, object]:
    return {"part": part.number, "unit_price": price, "by": "Orla Fennimore", "reason": "agreed"}


def terms(name: str, workbench: Workbench, survey: Survey) -> Terms:
    """Return terms at prices of the catalogue, but for what the name says."""
    plan = workbench.plan_site(survey).positions[0]
    assert plan.chosen is not None
    nozzle = plan.chosen.hanging_set.links[-1].part
    other = next(
        link.part
        for one in plan.alternatives
        for link in one.judged.hanging_set.links
        if link.part.kind is nozzle.kind and link.part.ref != nozzle.ref
    )
    return {
        "plain": terms_of,
        "stock price": lambda: terms_of(stock_price="35.00"),
        "part of the set dearer": lambda: terms_of(overrides=[override(nozzle.ref, "900.00")]),
        "part of the set cheaper": lambda: terms_of(overrides=[override(nozzle.ref, "1.00")]),
        "another part cheaper": lambda: terms_of(overrides=[override(other.ref, "1.00")]),
        "another part dearer": lambda: terms_of(overrides=[override(other.ref, "900.00")]),
        "discount": lambda: terms_of(selling={"method": "list_less_discount", "percent": 10}),
        "wish": lambda: terms_of(options=[{"title": "R", "breakaway": "reconnectable"}]),
    }[name]()


@pytest.mark.plans_anew
@pytest.mark.parametrize(
    "name",
    [
        "plain",
        "stock price",
        "part of the set dearer",
        "part of the set cheaper",
        "another part cheaper",
        "another part dearer",
        "discount",
        "wish",
    ],
)
def test_the_positions_unlike_the_plan_are_those_that_hang_other_parts(
    name: str, workbench: Workbench, survey: Survey
) -> None:
    quoted = workbench.quoting().quote(survey, terms(name, workbench, survey), SI)
    listed, offered = workbench.plan_site(survey), quoted.plans[0].site_plan
    pairs = zip(listed.positions, offered.positions, strict=True)
    unlike = tuple(one.position.label for one, other in pairs if hanging(one) != hanging(other))
    assert quoted.quotation.options[0].unlike_plan == unlike
    if name in ("part of the set dearer", "another part cheaper"):
        assert unlike, "the prices are to make a difference"


@pytest.mark.plans_anew
def test_a_station_at_the_prices_of_the_catalogue_is_planned_once(
    workbench: Workbench, survey: Survey, monkeypatch: pytest.MonkeyPatch
) -> None:
    really, planned = station.planned_position, []

    def planned_position(position: Position, site: Site, context: PlanningContext) -> PlannedPosition:
        planned.append(position.label)
        return really(position, site, context)

    monkeypatch.setattr(station, "planned_position", planned_position)
    quoted = workbench.quoting().quote(survey, terms_of(), SI)
    with_set = {same_question(one.position) for one in quoted.plans[0].site_plan.positions if one.chosen}
    assert len(planned) <= len(set(map(same_question, survey.positions))) + len(survey.positions) - len(with_set)
    assert len(planned) == len(set(planned))
