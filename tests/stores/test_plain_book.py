"""A book read plainly answers as the whole book does, and leaves to it what it cannot read."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path
from typing import NoReturn

import pytest

from spoutline.book.book import Book, open_book
from spoutline.book.book_file import inspect_file
from spoutline.book.plain_book import PlainBook, read_plainly
from spoutline.book.records import SettingName
from spoutline.book.stored_documents import UnreadableDocument
from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.agreed_sets import AgreedSets, AgreementKind, AgreementOrigin
from spoutline.model.faults import InputFault, StoreFault
from spoutline.planning.sets.plan_site import fingerprint_of


def no_book() -> NoReturn:
    raise AssertionError("the whole book is not to be opened for this")


@pytest.fixture
def book(own_database: Path):
    opened = open_book(f"sqlite:///{own_database}")
    yield opened
    opened.close()


def plain(path: Path, whole: object = no_book) -> PlainBook:
    found = read_plainly(inspect_file(path), whole)  # type: ignore[arg-type]
    assert found is not None
    return found


def damage(path: Path, statement: str, *values: object) -> None:
    with closing(sqlite3.connect(path)) as connection, connection:
        connection.execute(statement, values)


def test_entries_surveys_and_settings_are_those_of_the_whole_book(book: Book, own_database: Path) -> None:
    assert plain(own_database).entries() == book.entries() == ()
    stored = [book.create(demo_survey(name)) for name in ("small_town", "marina", "truck_stop")]
    book.save(stored[0], stored[0].survey)
    book.remove(stored[1].id)
    book.remember(SettingName.LAST_SURVEY, str(stored[2].id))
    reader = plain(own_database)
    assert reader.entries() == book.entries() != ()
    for entry in book.entries():
        assert reader.stored(entry.id) == book.stored(entry.id)
    for name in SettingName:
        assert reader.setting(name) == book.setting(name)
    assert reader.setting(SettingName.LAST_SURVEY) == str(stored[2].id)


def test_a_survey_that_was_taken_off_the_list_is_refused_as_by_the_whole_book(book: Book, own_database: Path) -> None:
    stored = book.create(demo_survey("marina"))
    book.remove(stored.id)
    for missing in (stored.id, 4711):
        with pytest.raises(InputFault) as whole:
            book.stored(missing)
        with pytest.raises(InputFault, match=str(missing)) as found:
            plain(own_database, lambda: book).stored(missing)
        assert str(found.value) == str(whole.value)


def test_a_survey_to_be_healed_or_not_to_be_read_is_left_to_the_whole_book(book: Book, own_database: Path) -> None:
    hidden = book.create(demo_survey("small_town"))
    broken = book.create(demo_survey("marina"))
    damage(
        own_database,
        "UPDATE surveys SET document = replace(document, ?, ?), name = ? WHERE id = ?",
        hidden.survey.site.name,
        f"{hidden.survey.site.name}\u200b",
        f"{hidden.survey.site.name}\u200b",
        hidden.id,
    )
    damage(own_database, "UPDATE surveys SET document = '{}' WHERE id = ?", broken.id)
    reader = plain(own_database, lambda: book)
    assert reader.entries() == book.entries()
    assert reader.stored(hidden.id) == book.stored(hidden.id)
    assert book.reading_notes.take()
    with pytest.raises(UnreadableDocument):
        reader.stored(broken.id)


def test_agreements_of_the_site_or_the_survey_are_seen(book: Book, own_database: Path) -> None:
    survey, reader = demo_survey("small_town"), plain(own_database)
    assert not reader.names_agreement(survey.site.name, 1)
    agreed = AgreedSets(
        serial=1,
        site=survey.site.name,
        survey_id=1,
        survey_fingerprint=fingerprint_of(survey),
        currency=survey.site.currency,
        catalogue_edition="any",
        rules_edition="any",
        agreed_at=datetime(2031, 5, 1, tzinfo=UTC),
        origin=AgreementOrigin(kind=AgreementKind.PERSON, by="Rita Vale"),
        positions=(),
        parts=(),
    )
    book.agreements.add(None, agreed)
    for site, survey_id in ((survey.site.name, None), (survey.site.name, 1), ("other", 1), ("other", 2), ("", None)):
        named = bool(book.agreements.lines(site, survey_id))
        assert reader.names_agreement(site, survey_id) is named, (site, survey_id)


def test_a_book_of_another_form_and_a_missing_one_are_left_to_the_whole_book(
    own_database: Path, tmp_path: Path
) -> None:
    assert read_plainly(inspect_file(own_database), no_book) is not None
    assert read_plainly(inspect_file(tmp_path / "none.sqlite3"), no_book) is None
    damage(own_database, "UPDATE book_version SET version_num = 'book_0001'")
    assert read_plainly(inspect_file(own_database), no_book) is None


def test_a_book_that_vanished_or_is_locked_is_left_to_the_whole_book(book: Book, own_database: Path) -> None:
    asked: list[str] = []

    def whole() -> Book:
        asked.append("whole")
        return book

    reader = plain(own_database, whole)
    own_database.rename(own_database.with_suffix(".away"))
    assert reader.names_agreement("any", None)  # the whole book tells what is wrong
    with pytest.raises(StoreFault):
        reader.entries()
    assert asked == ["whole"]


def test_an_edition_opened_plainly_is_used_until_another_is_planned_with(own_database: Path, tmp_path: Path) -> None:
    bench = open_workbench(Settings(database=str(own_database), profiles=tmp_path))
    bench.parts().search("", None, 1)
    survey = demo_survey("small_town")
    bench.plan_site(survey)  # keeps the columns
    bench.close()
    stores = bench._stores
    first = stores.parts_to_plan_with(survey)
    assert not stores._shelf.is_made
    stores.shelf()
    assert stores.parts_to_plan_with(survey) is first
    assert first.edition() == stores.catalogue(survey).edition()
    bench.catalogues().begin("Own parts", without_demonstration=False)
    other = stores.parts_to_plan_with(survey)
    assert other.edition() == stores.catalogue(survey).edition()
    bench.close()


def test_until_the_first_drawing_no_store_is_opened(own_database: Path, tmp_path: Path) -> None:
    bench = open_workbench(Settings(database=str(own_database), profiles=tmp_path))
    stored = bench.book().create(demo_survey("small_town"))
    bench.plan_position(stored.survey, stored.survey.positions[0].label)  # keeps the columns
    bench.close()
    code = f"""
import sys
from pathlib import Path
from spoutline.bootstrap import Settings, open_workbench
from spoutline.gui.window.first_survey import is_first_start, survey_to_show
from spoutline.gui.window.start import _make_ready
from spoutline.book.records import SettingName
from spoutline.units.accepted import UnitSystem
bench = open_workbench(Settings(database={str(own_database)!r}, profiles=Path({str(tmp_path)!r})))
assert not is_first_start(bench)
stored = survey_to_show(bench, None)
bench.open_parts()
_make_ready(bench, UnitSystem.SI, stored.survey.site.currency)
label = stored.survey.positions[0].label
assert next(bench.plan_stages(stored.survey, label)).plan.chosen is not None
assert bench.agreeing().in_hand(stored.survey, stored.id).agreed is None
print([name for name in ("sqlalchemy", "alembic") if name in sys.modules])
"""
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=False)
    assert done.stdout.strip() == "[]", done.stderr
