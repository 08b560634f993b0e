"""What a programme counts of a site against its conversion worked out whole; answers shared by processes and runs.

The whole conversion is what a person sees of one station: every way with its checks and reasons, nothing remembered.
"""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from decimal import Decimal
from functools import partial
from pathlib import Path
from random import Random
from typing import Any

import pytest

from bench.generated_sites_conversion import small_site
from examples import seeds
from planning.conversion_sites import context_for
from spoutline.bootstrap import Settings
from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.kept_answers import SharedAnswers, answers_for_run
from spoutline.bootstrap.workbench import Workbench, open_converting
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.plan import SitePlan
from spoutline.model.programme import SiteOutcome, SiteResult
from spoutline.model.survey import Survey
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.planning.conversion.counted_positions import CountedPositions
from spoutline.planning.conversion.folder import convert_files
from spoutline.planning.conversion.memory import ConversionMemory
from spoutline.planning.conversion.site_result import site_result
from spoutline.planning.protocols import PartStore

Counts = Callable[[Survey, SitePlan | None], SiteResult]


@pytest.fixture
def parts(workbench: Workbench) -> PartStore:
    return workbench._stores.catalogue()


@pytest.fixture
def answers(tmp_path: Path) -> Iterator[Path]:
    with answers_for_run(tmp_path / "kept") as path:
        yield path


def whole(survey: Survey, parts: PartStore, sets: SitePlan | None = None) -> SiteResult:
    return site_result(convert_site(survey, context_for(survey, parts), sets=sets), "site.json")


def counted(
    survey: Survey, parts: PartStore, answers: Path, sets: SitePlan | None = None, basis: str = "today"
) -> SiteResult:
    """Return what a run counts whose process knows nothing but what the file of answers says."""
    from dataclasses import replace

    with closing(SharedAnswers(answers)) as kept:
        context = replace(context_for(survey, parts), memory=ConversionMemory(kept), basis=basis)
        return site_result(convert_site(survey, context, sets=sets), "site.json")


def varied(number: int) -> Survey:
    """Return an invented station with answers that change what may stay, what changes and which way is followed."""
    draw = Random(number)
    survey = small_site(number, draw).model_dump(mode="json")
    conversion = survey["conversion"]
    conversion["follow"] = draw.choice(list(OptionKind))
    conversion["keep_parts"] = draw.random() < 0.7
    conversion["retire_superseded"] = draw.random() < 0.3
    conversion["longest_age_years"] = draw.choice((None, None, 6))
    conversion["money"]["labour_rate_per_hour"] = draw.choice((None, "90"))
    for one in survey["positions"]:
        match draw.randrange(6):
            case 0:
                one["liquid_today"], one["liquid"] = one["liquid"], {"family": "gasoline", "blend_percent": 85}
            case 1:
                one["vapour_wanted"] = one["vapour_today"]
            case 2:
                one["filler"]["distance_m"] = 9.0  # beyond every hose
            case 3:
                one["installed"][0]["condition"] = "worn"
            case 4:
                one["installed"] = []
    return Survey.model_validate(survey)


def questions_worked_out(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Return the labels of the positions whose answers are worked out from here on."""
    found: list[str] = []
    own = CountedPositions._worked_out

    def noted(self: CountedPositions, position: Any, **named: Any) -> Any:
        found.append(position.label)
        return own(self, position, **named)

    monkeypatch.setattr(CountedPositions, "_worked_out", noted)
    return found


@pytest.mark.parametrize("number", seeds(24))
def test_what_is_counted_is_that_of_the_whole_conversion_fresh_and_kept(
    number: int, parts: PartStore, answers: Path
) -> None:
    survey = varied(number)
    expected = whole(survey, parts)
    assert counted(survey, parts, answers) == expected
    assert counted(survey, parts, answers) == expected


@pytest.mark.parametrize("name", ["conversion_balance", "conversion_assist", "mixed_fuels", "marina"])
@pytest.mark.parametrize("way", list(OptionKind))
def test_so_it_is_for_the_demonstration_stations_in_every_way(
    name: str, way: OptionKind, parts: PartStore, answers: Path
) -> None:
    survey = demo_survey(name)
    survey = survey.model_copy(update={"conversion": survey.conversion.model_copy(update={"follow": way})})
    expected = whole(survey, parts)
    assert counted(survey, parts, answers) == expected
    assert counted(survey, parts, answers) == expected


def test_so_it_is_for_sets_that_were_handed_in(workbench: Workbench, parts: PartStore, answers: Path) -> None:
    survey = demo_survey("conversion_balance")
    sets = workbench.plan_site(survey)
    assert counted(survey, parts, answers, sets) == whole(survey, parts, sets)
    with closing(sqlite3.connect(answers)) as file:  # agreed for one station: no answer for others
        assert file.execute("SELECT count(*) FROM answers").fetchone() == (0,)


def test_a_kept_answer_is_not_worked_out_again_unless_what_it_rests_on_changed(
    parts: PartStore, answers: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    survey, worked = varied(1), questions_worked_out(monkeypatch)
    first = counted(survey, parts, answers)
    asked = len(worked)
    assert asked > 0
    renamed = survey.model_copy(
        update={"site": survey.site.model_copy(update={"name": "Another", "address": "Lane 3"})}
    )
    assert counted(renamed, parts, answers).cost == first.cost
    assert len(worked) == asked
    counted(survey, parts, answers, basis="tomorrow")  # another edition, other rules
    assert len(worked) == 2 * asked
    money = survey.conversion.money.model_copy(update={"labour_rate_per_hour": Decimal(130)})
    dearer = survey.conversion.model_copy(update={"money": money})
    counted(survey.model_copy(update={"conversion": dearer}), parts, answers)
    assert len(worked) == 3 * asked


def test_nothing_is_remembered_of_a_draft(parts: PartStore, answers: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from dataclasses import replace

    survey, worked = varied(1), questions_worked_out(monkeypatch)
    with closing(SharedAnswers(answers)) as kept:
        context = replace(context_for(survey, parts), memory=ConversionMemory(kept), basis=None)
        first = convert_site(survey, context)
        asked = len(worked)
        assert convert_site(survey, context) == first
    assert len(worked) == 2 * asked


# whole runs


@pytest.fixture(scope="module")
def own_stores(database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    return Path(shutil.copy(database_to_copy, tmp_path_factory.mktemp("counted") / "own.sqlite3"))


def written(folder: Path, surveys: list[Survey]) -> tuple[Path, ...]:
    paths = tuple(folder / f"{number}.json" for number in range(len(surveys)))
    for path, survey in zip(paths, surveys, strict=True):
        path.write_text(survey.model_dump_json(), encoding="utf-8")
    return paths


def test_two_processes_never_work_the_same_question_out(own_stores: Path, answers: Path, tmp_path: Path) -> None:
    """Ten stations that ask the same, so that both processes meet every question at once.

    An answer that is written again takes another row: as many answers as the highest row tell that none was.
    """
    station = small_site(1, Random(3))
    named = [
        station.model_copy(update={"site": station.site.model_copy(update={"name": f"Invented Stop {number}"})})
        for number in range(10)
    ]
    paths = written(tmp_path, named)
    open_converter = partial(open_converting, Settings(database=str(own_stores)))
    together, _ = convert_files(paths, open_converter, processes=2, answers=answers)
    with closing(sqlite3.connect(answers)) as file:
        count, highest = file.execute("SELECT count(*), max(rowid) FROM answers").fetchone()
    assert 0 < count == highest <= len(station.positions)
    assert {one.cost for one in together} == {together[0].cost}
    alone, _ = convert_files(paths, open_converter, processes=1)
    assert together == alone


class StopsWithin:
    """Asks to stop at the n-th question whether to, wherever that is asked."""

    def __init__(self, at: int) -> None:
        self.left = at

    def on_progress(self, done: int, total: int) -> None:
        pass

    def should_stop(self) -> bool:
        self.left -= 1
        return self.left < 0


def test_a_run_stopped_within_a_site_goes_on_behind_the_last_position(
    own_stores: Path, answers: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    surveys = [varied(number) for number in (3, 4)]
    paths = written(tmp_path, surveys)
    open_converter = partial(open_converting, Settings(database=str(own_stores)))
    expected, _ = convert_files(paths, open_converter, processes=1)
    worked = questions_worked_out(monkeypatch)
    found: tuple[SiteResult, ...] = ()
    rounds, stopped = 0, True
    while stopped:
        rounds += 1
        assert rounds < 60
        found, stopped = convert_files(paths, open_converter, StopsWithin(3 * rounds), processes=1, answers=answers)
    assert rounds > 1
    assert found == expected
    with closing(sqlite3.connect(answers)) as file:
        (kept,) = file.execute("SELECT count(*) FROM answers").fetchone()
    assert len(worked) <= kept + rounds  # at most the one in hand when a run was stopped
    assert all(one.outcome is not SiteOutcome.FAULT for one in found)
