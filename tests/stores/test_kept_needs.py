"""Stations are planned for the work due only where something that the answer rests on has changed.

What is due is counted by the same functions as for a single station, tested in ``tests/planning``; here the answer
of a second look is held against that of a first one without anything kept.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.agreements import AgreementService
from spoutline.bootstrap.settings import cache_folder
from spoutline.model.inspection import InspectionItemId
from spoutline.model.record import ChangeReason, InspectionEntry, WearEntry
from spoutline.model.survey import Survey

ON, DAY = date(2026, 11, 29), date(2025, 11, 20)
SITES = ("Fern Pond Fuels", "Heron Ford Fuels", "Quiet Mill Fuels")


def survey(site: str, blend: float = 10) -> Survey:
    position = {"label": "1A", "liquid": {"family": "gasoline", "blend_percent": blend}}
    return Survey.model_validate({"site": {"name": site}, "positions": [position]})


@pytest.fixture
def bench(own_database: Path, tmp_path: Path) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=str(own_database), profiles=tmp_path / "profiles"))
    for name in SITES:
        bench.book().create(survey(name))
        seen(bench, name, InspectionItemId.SHEAR_VALVE)
    yield bench
    bench.close()


def seen(bench: Workbench, site: str, item: InspectionItemId) -> None:
    entry = InspectionEntry(site=site, position="1A", item=item, done_on=DAY)
    bench.packing().records().add_inspection(entry)


@pytest.fixture
def planned(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Return the names of the sites whose sets are asked for, as they are."""
    names: list[str] = []
    whole: Callable[..., object] = AgreementService.sets_for

    def watched(self: AgreementService, asked: Survey, *rest: object, **named: object) -> object:
        names.append(asked.site.name)
        return whole(self, asked, *rest, **named)

    monkeypatch.setattr(AgreementService, "sets_for", watched)
    return names


def test_a_second_look_plans_no_station_and_says_the_same(bench: Workbench, planned: list[str]) -> None:
    first = bench.due_work().due(ON)
    assert sorted(set(planned) & set(SITES)) == list(SITES)
    planned.clear()
    assert bench.due_work().due(ON) == first
    assert planned == []
    # an inspection changes what is due, and no set
    seen(bench, SITES[0], InspectionItemId.HOSE_PULLED_OUT)
    after = bench.due_work().due(ON)
    assert planned == []
    assert after != first
    # the same without anything kept
    for path in (cache_folder() / "inspection_needs").iterdir():
        path.unlink()
    assert bench.due_work().due(ON) == after
    assert set(SITES) <= set(planned)


def test_a_station_is_planned_anew_where_survey_records_or_agreement_change(
    bench: Workbench, planned: list[str]
) -> None:
    bench.due_work().due(ON)
    planned.clear()
    entries = {entry.name: entry for entry in bench.book().entries()}
    stored = bench.book().stored(entries[SITES[0]].id)
    bench.book().save(stored, survey(SITES[0], blend=0))
    bench.due_work().due(ON)
    assert planned == [SITES[0]]
    planned.clear()
    plan = bench.plan_site(survey(SITES[1]))
    chosen = plan.positions[0].chosen
    assert chosen is not None
    nozzle = chosen.hanging_set.refs[-1]
    bench.packing().records().add_wear(
        WearEntry(
            site=SITES[1],
            position="1A",
            done_on=DAY,
            removed=nozzle,
            fitted=nozzle,
            reason=ChangeReason.WEAR,
        )
    )
    found = bench.due_work().due(ON)
    assert planned == [SITES[1]]
    assert InspectionItemId.AFTER_BOND in {row.due.item.id for row in found.rows if row.site.name == SITES[1]}
    planned.clear()
    third = bench.book().stored(entries[SITES[2]].id)
    bench.agreeing().agree(third.survey, "plan", by="Ada", survey_id=third.id)
    bench.due_work().due(ON)
    assert planned == [SITES[2]]


def test_a_file_that_cannot_be_used_counts_as_none(bench: Workbench, planned: list[str]) -> None:
    first = bench.due_work().due(ON)
    for path in (cache_folder() / "inspection_needs").iterdir():
        path.write_text('{"x": [{"position": 7}]}')
    planned.clear()
    assert bench.due_work().due(ON) == first
    assert set(SITES) <= set(planned)
