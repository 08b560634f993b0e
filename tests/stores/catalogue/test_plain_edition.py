"""An edition read plainly answers as the whole store does, and leaves to it what it cannot read."""

from __future__ import annotations

import json
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from typing import NoReturn

import numpy as np
import pytest
from hypothesis import given, settings

from examples import up_to
from spoutline import assets
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.catalogue.build import open_shelf
from spoutline.catalogue.plain_edition import PlainEdition, open_plainly
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.part import HANGING_KINDS, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import SitePlan
from stores.catalogue.test_store import filters
from two_makers import MAKER, NUMBER, OTHER, catalogue_of_two_makers


def no_store(_: EditionRef) -> NoReturn:
    raise AssertionError("the whole store is not to be opened for this")


def opened(
    path: Path, columns: Path, named: EditionRef | None = None, source: Path | None = None
) -> PlainEdition | None:
    return open_plainly(path, named, source or assets.catalogue_folder(), columns, no_store)


def whole(path: Path, columns: Path, source: Path | None = None) -> CatalogueStore:
    """Open *Demonstration* with the store that planning has otherwise, its columns kept."""
    shelf = open_shelf(f"sqlite:///{path}", source or assets.catalogue_folder(), columns=columns)
    store = shelf.parts(EditionRef(DEMONSTRATION))
    for kind in HANGING_KINDS:
        store.columns(kind)
    return store


@pytest.fixture(scope="module")
def both(
    shared_database: Path, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[tuple[PlainEdition, CatalogueStore]]:
    columns = tmp_path_factory.mktemp("columns")
    store = whole(shared_database, columns)
    plain = opened(shared_database, columns)
    assert plain is not None
    yield plain, store
    plain.close()
    store.close()


def test_edition_currencies_and_counts_are_those_of_the_store(both: tuple[PlainEdition, CatalogueStore]) -> None:
    plain, store = both
    assert plain.edition() == store.edition()
    assert plain.currencies() == store.currencies()
    assert [plain.count(kind) for kind in PartKind] == [store.count(kind) for kind in PartKind]


def test_every_column_is_that_of_the_store(both: tuple[PlainEdition, CatalogueStore]) -> None:
    plain, store = both
    for kind in HANGING_KINDS:
        mine, others = plain.columns(kind), store.columns(kind)
        assert mine is plain.columns(kind)
        assert (mine.makers, mine.ports, set(mine.arrays)) == (others.makers, others.ports, set(others.arrays))
        for name, array in mine.arrays.items():
            assert np.array_equal(array, others.arrays[name], equal_nan=array.dtype.kind == "f"), (kind, name)


def test_every_part_is_that_of_the_store(both: tuple[PlainEdition, CatalogueStore]) -> None:
    plain, store = both
    parts = tuple(part for kind in PartKind for part in store.candidates(CandidateFilter(kind=kind)))
    found = plain.parts([part.ref for part in reversed(parts)])
    assert found == tuple(sorted(parts, key=lambda part: part.ref))
    assert repr(found) == repr(store.parts([part.ref for part in parts]))  # a yes is no 1
    assert plain.part(PartRef("no such number")) is None


@settings(max_examples=up_to(100), deadline=None)
@given(wanted=filters)
def test_every_filter_finds_what_the_store_finds(
    both: tuple[PlainEdition, CatalogueStore], wanted: CandidateFilter
) -> None:
    plain, store = both
    assert plain.candidates(wanted) == store.candidates(wanted)


def test_a_number_of_two_makers_names_both_and_neither_alone(tmp_path: Path) -> None:
    source, path = catalogue_of_two_makers(tmp_path / "catalog"), tmp_path / "book.sqlite3"
    store = whole(path, tmp_path / "columns", source)
    plain = opened(path, tmp_path / "columns", source=source)
    assert plain is not None
    assert [part.maker for part in plain.parts([PartRef(NUMBER)])] == sorted((MAKER, OTHER))
    assert plain.parts([PartRef(NUMBER)]) == store.parts([PartRef(NUMBER)])
    assert plain.part(PartRef(NUMBER)) is None
    assert plain.part(PartRef(NUMBER, OTHER)) == store.part(PartRef(NUMBER, OTHER))
    plain.close()
    store.close()


def test_what_is_not_there_not_published_or_not_kept_is_left_to_the_whole_store(
    own_database: Path, tmp_path: Path
) -> None:
    columns = tmp_path / "columns"
    assert opened(own_database, columns) is None  # no columns are kept yet
    whole(own_database, columns).close()
    for named, is_plain in (
        (None, True),
        (EditionRef(DEMONSTRATION.upper()), True),
        (EditionRef(DEMONSTRATION, 1), True),
        (EditionRef(DEMONSTRATION, 99), False),
        (EditionRef(DEMONSTRATION, is_draft=True), False),
        (EditionRef("No such catalog"), False),
    ):
        plain = opened(own_database, columns, named)
        assert (plain is not None) is is_plain, named
        if plain is not None:
            plain.close()
    assert opened(tmp_path / "missing.sqlite3", columns) is None
    assert opened(own_database, columns, source=catalogue_of_two_makers(tmp_path / "catalog")) is None


@pytest.mark.parametrize(
    "change",
    [
        "UPDATE catalogue_version SET version_num = 'catalogue_0001'",
        "UPDATE catalogue_state SET demonstration_left_out = 1",
    ],
)
def test_tables_of_another_form_and_a_demonstration_left_out_are_left_to_the_whole_store(
    own_database: Path, tmp_path: Path, change: str
) -> None:
    whole(own_database, tmp_path / "columns").close()
    with closing(sqlite3.connect(own_database)) as connection, connection:
        connection.execute(change)
    assert opened(own_database, tmp_path / "columns") is None


def test_what_a_plain_query_fails_at_the_whole_store_answers(own_database: Path, tmp_path: Path) -> None:
    store = whole(own_database, tmp_path / "columns")
    folder = assets.catalogue_folder()
    plain = open_plainly(own_database, None, folder, tmp_path / "columns", lambda _: store)
    assert plain is not None
    plain.close()  # every query fails from here on
    wanted = CandidateFilter(kind=PartKind.NOZZLE)
    assert plain.candidates(wanted) == store.candidates(wanted)
    assert plain.count(PartKind.NOZZLE) == store.count(PartKind.NOZZLE)
    assert plain.nearest_numbers("QW-N10l") == store.nearest_numbers("QW-N10l")
    store.close()


def test_a_catalogue_that_the_book_plans_with_is_read_plainly_too(own_database: Path, tmp_path: Path) -> None:
    shelf = open_shelf(f"sqlite:///{own_database}", assets.catalogue_folder(), columns=tmp_path / "columns")
    whole(own_database, tmp_path / "columns").close()
    shelf.choose(EditionRef(DEMONSTRATION, 1))
    shelf.close()
    plain = opened(own_database, tmp_path / "columns")
    assert plain is not None
    assert plain.edition().number == 1
    plain.close()


@pytest.mark.plans_anew
def test_a_station_is_planned_alike_by_both(own_database: Path, tmp_path: Path) -> None:
    survey = demo_survey("small_town")

    def planned(bench: Workbench) -> SitePlan:
        try:
            return bench.plan_site(survey)
        finally:
            bench.close()

    settings_ = Settings(database=str(own_database), profiles=tmp_path / "profiles")
    first, later = open_workbench(settings_), open_workbench(settings_)
    first.parts().search("", None, 1)  # opens the whole store
    assert planned(first) == planned(later)


def test_columns_of_a_kind_that_nobody_needed_so_far_are_read_and_kept_by_the_store_of_that_very_edition(
    own_database: Path, tmp_path: Path
) -> None:
    columns, asked = tmp_path / "columns", []
    shelf = open_shelf(f"sqlite:///{own_database}", assets.catalogue_folder(), columns=columns)
    shelf.parts(EditionRef(DEMONSTRATION)).columns(PartKind.NOZZLE)

    def store(ref: EditionRef) -> CatalogueStore:
        asked.append(ref)
        return shelf.parts(ref)

    plain = open_plainly(own_database, None, assets.catalogue_folder(), columns, store)
    assert plain is not None
    plain.columns(PartKind.NOZZLE)
    assert not asked
    first = plain.columns(PartKind.CURB_HOSE)
    of_store = shelf.parts(EditionRef(DEMONSTRATION)).columns(PartKind.CURB_HOSE)
    assert first.number_at(0) == of_store.number_at(0)
    assert asked == [EditionRef(DEMONSTRATION, 1)]  # the book may plan with another one by now
    plain.close()
    shelf.close()
    again = opened(own_database, columns)
    assert again is not None
    assert len(again.columns(PartKind.CURB_HOSE)) == len(of_store)
    again.close()


@pytest.mark.parametrize("positions", [1, None])
def test_a_second_plan_loads_no_sqlalchemy(
    positions: int | None, own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    survey, station = tmp_path / "survey.json", demo_survey("small_town")
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))  # where no columns are kept yet
    told = station.model_copy(update={"positions": station.positions[:positions]}).model_dump(mode="json")
    survey.write_text(json.dumps(told), encoding="utf-8")
    code = (
        "import sys; from spoutline.cli.main import run;"
        f"code = run(['plan', {str(survey)!r}, '--database', {str(own_database)!r}], None);"
        "print(code, 'sqlalchemy' in sys.modules, file=sys.stderr)"
    )
    said = [subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True) for _ in range(2)]
    assert said[0].stdout == said[1].stdout
    assert said[1].stderr.split()[-2:] == ["0", "False"]
