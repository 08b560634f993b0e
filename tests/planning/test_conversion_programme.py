"""Many sites: ranks and budget against an integer programme; one process against several; cancelling; the book."""

from __future__ import annotations

import json
import shutil
from dataclasses import replace
from datetime import UTC, datetime
from decimal import Decimal
from functools import partial
from pathlib import Path
from random import Random
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from bench.generated_sites_conversion import small_site
from examples import up_to
from spoutline import assets
from spoutline.book.book import open_book
from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.conversions import ConversionService
from spoutline.bootstrap.workbench import open_converting
from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import InputFault
from spoutline.model.programme import LeftOut, SiteOutcome, SiteResult
from spoutline.model.removal_standing import Standing
from spoutline.model.survey import Position, Survey
from spoutline.planning.conversion import run_log
from spoutline.planning.conversion.counted_positions import CountedPositions
from spoutline.planning.conversion.folder import convert_files
from spoutline.planning.conversion.programme import programme_of
from spoutline.planning.conversion.programme_terms import ProgrammeTerms
from spoutline.planning.conversion.run_log import RunLog


@pytest.fixture(scope="module")
def own_stores(database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Give worker processes a database of their own: they must not close one that other tests have open here."""
    return Path(shutil.copy(database_to_copy, tmp_path_factory.mktemp("programme") / "own.sqlite3"))


def site(place: str, cost: int | None, value: int | None, **changes: object) -> SiteResult:
    return SiteResult.model_validate(
        {
            "place": place,
            "name": place,
            "outcome": SiteOutcome.READY,
            "standing": Standing.MAY_GO,
            "currency": "USD",
            "cost": cost,
            "known_cost": cost or 0,
            "net_present_value": value,
            **changes,
        }
    )


def terms(budget: int | None, years: int = 1) -> ProgrammeTerms:
    return ProgrammeTerms(name="test", budget=None if budget is None else Decimal(budget), years=years)


def test_what_must_go_comes_first_then_the_best_return_then_the_cheapest() -> None:
    results = (
        site("poor", 100, 50),
        site("rich", 100, 400),
        site("unknown dear", 90, None),
        site("unknown cheap", 10, None),
        site("ordered", 500, -100, standing=Standing.MUST_GO),
    )
    found = programme_of(results, terms(None))
    assert [one.site.name for one in found.ranked] == ["ordered", "rich", "poor", "unknown cheap", "unknown dear"]
    assert {one.year for one in found.ranked} == {1}


def test_a_site_dearer_than_a_year_or_of_unknown_cost_is_named() -> None:
    results = (site("a", 200, 10), site("b", 60, 10), site("c", 60, 5), site("d", 60, 1), site("e", None, 1))
    found = programme_of(results, terms(100, years=2))
    left = {one.site.name: one.left_out for one in found.ranked}
    assert left == {
        "a": LeftOut.DEARER_THAN_A_YEAR,
        "b": None,
        "c": None,
        "d": LeftOut.BEYOND_THE_YEARS,
        "e": LeftOut.COST_UNKNOWN,
    }


def test_one_budget_does_not_pay_two_currencies() -> None:
    with pytest.raises(InputFault):
        programme_of((site("a", 1, 1), site("b", 1, 1, currency="EUR")), terms(10))


sites_drawn = st.lists(st.tuples(st.integers(1, 60), st.integers(1, 100)), min_size=1, max_size=9)


@settings(deadline=None, max_examples=up_to(60))
@given(sites_drawn, st.integers(20, 120), st.integers(1, 3))
def test_no_year_overspends_and_no_choice_beats_the_proved_optimum(
    drawn: list[tuple[int, int]], budget: int, years: int
) -> None:
    results = tuple(site(f"{index:02d}", cost, value) for index, (cost, value) in enumerate(drawn))
    found = programme_of(results, terms(budget, years))
    chosen = [one for one in found.ranked if one.year is not None]
    for year in range(1, years + 1):
        assert sum((one.site.known_cost for one in chosen if one.year == year), Decimal(0)) <= budget
    # HiGHS: which sites in which years give the greatest value; the greedy rank never gives more
    costs, values = (np.array([one[at] for one in drawn], dtype=float) for at in (0, 1))
    count = len(drawn)
    once = np.zeros((count, count * years))
    spent = np.zeros((years, count * years))
    for year in range(years):
        for index in range(count):
            once[index, year * count + index] = 1
            spent[year, year * count + index] = costs[index]
    solved = milp(
        -np.tile(values, years),
        constraints=[LinearConstraint(once, ub=1), LinearConstraint(spent, ub=budget)],
        integrality=1,
        bounds=Bounds(0, 1),
    )
    worth = sum(float(one.site.net_present_value or 0) for one in chosen)
    assert worth <= -solved.fun + 1e-6
    # what is left out did not fit beside what ranks before it
    for one in found.ranked:
        if one.left_out is LeftOut.BEYOND_THE_YEARS:
            before = [other for other in chosen if other.rank < one.rank]
            for year in range(1, years + 1):
                used = sum((other.site.known_cost for other in before if other.year == year), Decimal(0))
                assert used + one.site.known_cost > budget


# many files


class Watcher:
    """Notes progress and asks to stop after ``stop_after`` sites."""

    def __init__(self, stop_after: int | None = None) -> None:
        self.seen: list[tuple[int, int]] = []
        self.stop_after = stop_after

    def on_progress(self, done: int, total: int) -> None:
        self.seen.append((done, total))

    def should_stop(self) -> bool:
        return self.stop_after is not None and self.seen[-1][0] >= self.stop_after


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, ...]:
    tmp_path, draw = tmp_path_factory.mktemp("sites"), Random(11)
    paths = tuple(tmp_path / f"site_{number}.json" for number in range(1, 5))
    for number, path in enumerate(paths, start=1):
        path.write_text(small_site(number, draw).model_dump_json(), encoding="utf-8")
    (tmp_path / "site_9.json").write_text('{"site": {}}', encoding="utf-8")
    return (*paths, tmp_path / "site_9.json")


@pytest.fixture(scope="module")
def alone(files: tuple[Path, ...], own_stores: Path) -> tuple[SiteResult, ...]:
    """Return what one process finds in all files, its memory of positions at work."""
    open_converter = partial(open_converting, Settings(database=str(own_stores)))
    watcher = Watcher()
    found, stopped = convert_files(files, open_converter, watcher, processes=1)
    assert not stopped
    assert watcher.seen[-1] == (5, 5)
    return tuple(found)


def test_two_processes_find_what_one_finds_and_a_bad_survey_stops_no_other(
    files: tuple[Path, ...], alone: tuple[SiteResult, ...], own_stores: Path
) -> None:
    together, _ = convert_files(files, partial(open_converting, Settings(database=str(own_stores))), processes=2)
    assert alone == tuple(together)
    assert [one.outcome is SiteOutcome.FAULT for one in alone] == [False, False, False, False, True]
    assert "site" in alone[-1].message


def test_remembered_positions_change_no_result(
    files: tuple[Path, ...], alone: tuple[SiteResult, ...], own_stores: Path
) -> None:
    from spoutline.book.survey_text import read_survey
    from spoutline.planning.conversion.site_result import site_result

    service = open_converting(Settings(database=str(own_stores)))
    fresh = [site_result(service.convert(read_survey(path)), path.name) for path in files[:-1]]
    assert list(alone[:-1]) == fresh


def test_a_question_that_stations_share_is_worked_out_once_over_all_of_them(
    own_stores: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Four stations of one owner under names of their own: 16 positions, as many questions as one station has."""
    worked: list[str] = []
    own = CountedPositions._worked_out

    def noted(counted: CountedPositions, position: Position, **named: Any) -> Any:
        worked.append(position.label)
        return own(counted, position, **named)

    monkeypatch.setattr(CountedPositions, "_worked_out", noted)
    station = small_site(1, Random(3))
    asked = {position.model_dump_json(exclude={"label", "dispenser", "notes"}) for position in station.positions}
    paths = []
    for number in range(4):
        named = station.model_copy(update={"site": station.site.model_copy(update={"name": f"Invented Stop {number}"})})
        paths.append(tmp_path / f"{number}.json")
        paths[-1].write_text(named.model_dump_json(), encoding="utf-8")
    found, _ = convert_files(paths, partial(open_converting, Settings(database=str(own_stores))), processes=1)
    assert len(worked) <= len(asked) < 16
    assert len({one.cost for one in found}) == 1


def test_a_stopped_run_keeps_what_it_has(files: tuple[Path, ...], own_stores: Path) -> None:
    open_converter = partial(open_converting, Settings(database=str(own_stores)))
    found, stopped = convert_files(files, open_converter, Watcher(stop_after=2), processes=1)
    assert stopped
    assert len(found) == 2


class Counted:
    """Opens converters that note the sites they work on."""

    def __init__(self, database: Path) -> None:
        self._database = database
        self.sites: list[str] = []

    def __call__(self) -> Any:
        converter = open_converting(Settings(database=str(self._database)))
        convert = converter.convert_shown

        def noted(survey: Survey, *asked: Any) -> Any:
            self.sites.append(survey.site.name)
            return convert(survey, *asked)

        converter.convert_shown = noted
        return converter


def test_a_stopped_run_is_taken_up_where_it_ended_and_finds_the_same(
    files: tuple[Path, ...], alone: tuple[SiteResult, ...], own_stores: Path, tmp_path: Path
) -> None:
    kept, opened = tmp_path / "sites.run", Counted(own_stores)
    with RunLog(kept, "a") as log:
        found, stopped = convert_files(files, opened, Watcher(stop_after=2), processes=1, log=log)
    assert stopped
    assert list(found) == list(alone[:2])
    kept.write_text(
        kept.read_text("utf-8") + '\n{"survey":"cut o', encoding="utf-8"
    )  # as a fall of the machine leaves it
    watcher = Watcher()
    with RunLog(kept, "a") as log:
        found, stopped = convert_files(files, opened, watcher, processes=1, log=log)
    assert not stopped
    assert found == alone
    assert watcher.seen[0] == (2, 5)
    assert watcher.seen[-1] == (5, 5)
    assert len(opened.sites) == len(set(opened.sites)) == 4  # none twice; the fifth file is no survey
    with RunLog(kept, "a") as log:
        assert convert_files(files, opened, processes=1, log=log) == (alone, False)
    assert len(opened.sites) == 4


def test_what_changed_since_a_run_is_worked_out_anew(files: tuple[Path, ...], own_stores: Path, tmp_path: Path) -> None:
    own = tmp_path / files[0].name
    own.write_bytes(files[0].read_bytes())
    kept, opened = tmp_path / "sites.run", Counted(own_stores)

    def run(made_with: str) -> SiteResult:
        with RunLog(kept, made_with) as log:
            ((found,), _) = convert_files((own,), opened, processes=1, log=log)
        return found

    first = run("a")
    own.write_text(own.read_text("utf-8").replace(first.name, "Renamed"), encoding="utf-8")
    assert run("a").name == "Renamed"
    assert run("b").name == "Renamed"  # another edition, other rules
    assert len(opened.sites) == 3
    assert run("b").name == "Renamed"
    assert len(opened.sites) == 3


def test_a_run_of_an_older_version_is_worked_out_anew(
    files: tuple[Path, ...], alone: tuple[SiteResult, ...], own_stores: Path, tmp_path: Path
) -> None:
    kept, opened = tmp_path / "sites.run", Counted(own_stores)
    with RunLog(kept, "a") as log:
        convert_files(files[:1], opened, processes=1, log=log)
    text = kept.read_text("utf-8")
    newest = json.loads(text.split("\n")[1])["version"]
    kept.write_text(text.replace(f'"version":{newest}', '"version":1', 1), encoding="utf-8")
    with RunLog(kept, "a") as log:
        assert convert_files(files[:1], opened, processes=1, log=log) == (alone[:1], False)
    assert len(opened.sites) == 2


def test_a_file_that_is_no_run_is_refused_and_left_alone(tmp_path: Path) -> None:
    other = tmp_path / "letter.txt"
    other.write_text("Dear all\n", encoding="utf-8")
    with pytest.raises(InputFault, match="resume"):
        RunLog(other, "a")
    assert other.read_text(encoding="utf-8") == "Dear all\n"


def test_lines_that_no_longer_count_leave_a_file_that_grows_towards_its_bound(
    files: tuple[Path, ...], own_stores: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept, opened = tmp_path / "sites.run", Counted(own_stores)
    bounds = run_log.BOUNDS
    sizes = []
    for made_with in ("a", "b", "c", "c"):
        with RunLog(kept, made_with) as log:
            convert_files(files[:2], opened, processes=1, log=log)
        sizes.append(kept.stat().st_size)
        monkeypatch.setattr(run_log, "BOUNDS", replace(bounds, run_bytes=sizes[0] * 2))
    assert all(size < 1.2 * sizes[0] for size in sizes)  # two sites each, below two heads
    assert len(opened.sites) == 6  # the last run took both over


def test_a_damaged_file_of_the_programs_own_begins_anew(tmp_path: Path) -> None:
    service = open_converting(Settings(database=str(tmp_path / "book.sqlite3")))
    own = service.run_file(tmp_path)
    assert own is not None
    with RunLog(own, "a"):
        pass
    assert service.run_file(tmp_path) == own
    assert own.exists()
    own.write_bytes(b"\0" * 300)  # as a fall of the machine may leave it
    assert service.run_file(tmp_path) == own
    assert not own.exists()
    with RunLog(own, "a"):
        pass


def test_the_command_takes_a_run_up_by_itself(
    files: tuple[Path, ...], spoutline: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = files[0].parent
    first = spoutline("programme", folder, "--processes", "1", "--json")

    def never(*_: object) -> None:
        raise AssertionError("a site was worked out again")

    monkeypatch.setattr("spoutline.bootstrap.conversions.ConversionService.convert", never)
    assert spoutline("programme", folder, "--processes", "1", "--json").out == first.out


def test_the_command_takes_a_run_up(
    files: tuple[Path, ...], spoutline: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder, kept = files[0].parent, tmp_path / "north.run"
    first = spoutline("programme", folder, "--processes", "1", "--resume", kept, "--json")

    def never(*_: object) -> None:
        raise AssertionError("a site was worked out again")

    monkeypatch.setattr("spoutline.bootstrap.conversions.ConversionService.convert", never)
    again = spoutline("programme", folder, "--processes", "1", "--resume", kept, "--json")
    assert again.out == first.out
    refused = spoutline("programme", folder, "--resume", folder / "x.json")
    assert refused.code == 2
    assert "--resume" in refused.err


@pytest.mark.parametrize(("edition", "again"), [("Demonstration@1", 0), ("Own@draft", 4)])
def test_a_run_is_taken_up_with_an_edition_and_worked_out_anew_with_a_draft(
    edition: str, again: int, files: tuple[Path, ...], spoutline: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    own, exported = ("--database", tmp_path / "own.sqlite3"), tmp_path / "parts.zip"
    for step in (("export", "Demonstration", "--out", exported), ("new", "Own"), ("import", exported, "--into", "Own")):
        assert spoutline(*own, "catalogue", *step).code == 0
    asked = (*own, "--catalogue", edition, "programme", files[0].parent, "--processes", "1")
    worked_out: list[Survey] = []
    convert = ConversionService.convert

    def noted(service: ConversionService, survey: Survey, *rest: Any, **named: Any) -> SiteConversion:
        worked_out.append(survey)
        return convert(service, survey, *rest, **named)

    monkeypatch.setattr(ConversionService, "convert", noted)
    run = (*asked, "--resume", tmp_path / "north.run")
    spoutline(*run)
    assert len(worked_out) == 4  # the fifth file is no survey
    spoutline(*run)
    assert len(worked_out) - 4 == again


def test_a_run_rests_on_the_table_of_steps_as_on_the_rules(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    resources = tmp_path / "resources"
    for name in ("rules", "conversion"):
        shutil.copytree(assets.resources_folder() / name, resources / name)
    monkeypatch.setattr("spoutline.bootstrap.workbench._resources", lambda: resources)

    def basis() -> str:
        return open_workbench(Settings(database=str(tmp_path / "book.sqlite3"))).converting()._sources.made_with()

    first = basis()
    assert basis() == first
    steps = resources / "conversion" / "steps.toml"
    steps.write_text(f"{steps.read_text('utf-8')}\n", encoding="utf-8")
    assert basis() != first


def test_the_book_keeps_programmes_newest_first(tmp_path: Path) -> None:
    times = iter((datetime(2027, 1, 1, tzinfo=UTC), datetime(2027, 1, 2, tzinfo=UTC)))
    book = open_book(f"sqlite:///{tmp_path / 'book.db'}", now=lambda: next(times))
    programmes = book.programmes
    first = programmes.add(programme_of((site("a", 10, 5),), terms(100)))
    second = programmes.add(programme_of((), terms(None)))
    assert [entry.id for entry in programmes.entries()] == [second, first]
    assert programmes.programme(first) == programme_of((site("a", 10, 5),), terms(100))
    with pytest.raises(InputFault):
        programmes.programme(99)
    book.close()
