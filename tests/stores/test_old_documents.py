"""Books written before hidden signs and tiny numbers were refused: each document opens, is told of, loses nothing."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import text

from program_runs import Spoutline
from reliability.fuzz_seeds import Seeds, make_seeds, one_position
from spoutline.book.book import Book, open_book
from spoutline.book.stored_documents import UnreadableDocument
from spoutline.book.survey_text import survey_from_json
from spoutline.bootstrap import Workbench
from spoutline.model.plain_values import REPLACEMENT
from spoutline.model.record import WearEntry
from stores.revisions import survey_at

# signs as Unicode Standard Annex 9 lists them
OVERRIDE, MARK = "\u202e", "\u200f"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    book = open_book(f"sqlite:///{tmp_path / 'old.sqlite3'}")
    yield book
    book.close()


@pytest.fixture(scope="module")
def seeds(workbench: Workbench) -> Seeds:
    return make_seeds(workbench)


def written(book: Book, sql: str, document: str, **values: object) -> None:
    """Write a document as an older version did: past every check of this one."""
    with book._engine.begin() as connection:
        connection.execute(text(sql), {"document": document, **values})


def document_of(book: Book, table: str) -> str:
    with book._engine.begin() as connection:
        return str(connection.execute(text(f"SELECT document FROM {table}")).scalar_one())


def old_survey(**site: object) -> dict[str, Any]:
    document: dict[str, Any] = json.loads(one_position().model_dump_json())
    document["site"] |= site
    return document


def put_survey(book: Book, document: dict[str, Any]) -> int:
    stored = book.create(one_position())
    written(book, "UPDATE surveys SET document = :document", json.dumps(document))
    written(book, "UPDATE survey_revisions SET document = :document", json.dumps(document))
    return stored.id


def test_hidden_signs_of_an_old_survey_are_made_visible_and_told(book: Book) -> None:
    document = old_survey(name=f"Elm{OVERRIDE}Street", customer=f"{MARK}Fenn")
    survey_id = put_survey(book, document)
    survey = book.stored(survey_id).survey
    assert (survey.site.name, survey.site.customer) == (f"Elm{REPLACEMENT}Street", f"{REPLACEMENT}Fenn")
    told = {note.field: str(note) for note in book.reading_notes.take()}
    assert set(told) == {"site.name", "site.customer"}
    assert "hidden sign" in told["site.name"]
    assert json.loads(document_of(book, "surveys")) == document  # nothing was written


def test_a_healed_survey_is_saved_as_its_next_revision_and_the_old_one_stays(book: Book) -> None:
    survey_id = put_survey(book, old_survey(name=f"Elm{OVERRIDE}Street"))
    stored = book.stored(survey_id)
    saved = book.save(stored, stored.survey)
    assert saved.revision == 2
    assert book.stored(survey_id) == saved
    book.reading_notes.take()
    assert survey_at(book, survey_id, 1) == stored.survey
    with book._engine.begin() as connection:
        kept = connection.execute(text("SELECT document FROM survey_revisions WHERE revision = 1")).scalar_one()
    assert OVERRIDE in json.loads(kept)["site"]["name"]


def test_numbers_that_measure_nothing_are_read_as_nought_or_left_out(book: Book) -> None:
    document = old_survey()
    position = document["positions"][0]
    position["supply"]["wanted_flow_l_min"] = 1e-308  # must be above nought: as if nobody had answered
    position["filler"]["plan_legs_m"] = [1.5, 1e-12]
    position["hook"]["height_m"] = 1e-15  # may be nought
    survey = book.stored(put_survey(book, document)).survey.positions[0]
    assert survey.supply.wanted_flow_l_min is None
    assert survey.filler.plan_legs_m == (1.5,)
    assert survey.hook.height_m == 0
    told = {note.field: note for note in book.reading_notes.take()}
    assert told["positions[0].supply.wanted_flow_l_min"].value == "1e-308"
    assert "left out" in told["positions[0].filler.plan_legs_m[1]"].told


def test_a_number_left_out_before_another_fault_of_its_list_moves_nothing_wrong(book: Book) -> None:
    document = old_survey()
    document["positions"][0]["filler"]["plan_legs_m"] = [1e-12, 1e-12, 2.5]
    position = book.stored(put_survey(book, document)).survey.positions[0]
    assert position.filler.plan_legs_m == (2.5,)
    document["positions"][0]["filler"]["plan_legs_m"] = [1e-12, {"a": 1e-12}, "x"]
    with pytest.raises(UnreadableDocument):
        book.stored(put_survey_over(book, document))


def test_what_stands_in_place_of_a_label_keeps_no_other_from_being_healed(book: Book) -> None:
    document = old_survey()
    first = document["positions"][0]
    document["positions"] = [{**first, "label": {}}, {**first, "label": f"A{OVERRIDE}1"}]
    with pytest.raises(UnreadableDocument):
        book.stored(put_survey(book, document))


def put_survey_over(book: Book, document: dict[str, Any]) -> int:
    written(book, "UPDATE surveys SET document = :document", json.dumps(document))
    (entry,) = book.entries()
    return entry.id


def test_labels_that_differ_only_in_what_nobody_sees_stay_two_positions(book: Book) -> None:
    document = old_survey()
    first = document["positions"][0]
    labels = ("A1", f"A{OVERRIDE}1", f"A{MARK}1")
    document["positions"] = [{**first, "label": label} for label in labels]
    survey = book.stored(put_survey(book, document)).survey
    assert [one.label for one in survey.positions] == ["A1", f"A{REPLACEMENT}1", f"A{REPLACEMENT}1 (2)"]


def test_a_half_of_a_sign_is_made_visible(book: Book) -> None:
    survey_id = put_survey(book, old_survey(customer="Fenn \ud83d"))
    assert book.stored(survey_id).survey.site.customer == f"Fenn {REPLACEMENT}"


def test_hidden_signs_of_a_remark_are_made_visible(book: Book) -> None:
    document = old_survey(name=f"Elm{OVERRIDE}Street")
    document["positions"][0]["notes"] = f"as the owner wrote: {MARK}x"
    assert book.stored(put_survey(book, document)).survey.positions[0].notes == f"as the owner wrote: {REPLACEMENT}x"


def test_a_survey_that_nothing_heals_is_told_and_stays(book: Book) -> None:
    document = old_survey() | {"positions": []}
    survey_id = put_survey(book, document)
    with pytest.raises(UnreadableDocument, match="stays in the book as it is"):
        book.stored(survey_id)
    assert json.loads(document_of(book, "surveys")) == document


def test_records_agreements_and_quotations_of_an_old_book_are_healed(book: Book, seeds: Seeds) -> None:
    book.position_records.add_wear(
        WearEntry(site="S", position="1", done_on=date(2026, 11, 20), removed="LS-B101", reason="wear")  # type: ignore[arg-type]
    )
    wear = json.loads(document_of(book, "position_records")) | {"note": f"worn{OVERRIDE}"}
    written(book, "UPDATE position_records SET document = :document", json.dumps(wear))
    assert book.position_records.wear("S")[0].note == f"worn{REPLACEMENT}"

    agreed = json.loads(seeds.agreed)
    agreed["origin"] |= {"by": f"Odile{MARK}", "reason": f"{OVERRIDE}asked"}
    sql = (
        "INSERT INTO agreements (line, serial, site, agreed_at, document) "
        "VALUES (1, 1, 'S', '2026-11-25 00:00:00', :document)"
    )
    written(book, sql, json.dumps(agreed))
    ((entry,),) = book.agreements.lines("S").values()
    assert (entry.origin.by, entry.origin.reason) == (f"Odile{REPLACEMENT}", f"{REPLACEMENT}asked")

    quotation = json.loads(seeds.quotation)
    quotation["terms"]["customer"]["name"] = f"Hollow{OVERRIDE} Ford"
    quotation["pins"]["survey"]["site"]["customer"] = f"{MARK}Fenn"
    read = make_quotation(book, json.dumps(quotation))
    assert read.terms.customer.name == f"Hollow{REPLACEMENT} Ford"
    assert read.pins.survey.site.customer == f"{REPLACEMENT}Fenn"
    told = {note.field for note in book.reading_notes.take()}
    assert told == {"note", "origin.by", "origin.reason", "terms.customer.name", "pins.survey.site.customer"}


def make_quotation(book: Book, document: str) -> Any:
    head = (
        "INSERT INTO quotations (id, number, customer, site, search_text, status, revision, version, valid_to, "
        "created_at, changed_at) VALUES (1, 'Q', 'C', 'S', 'q', 'draft', 1, 1, '2026-12-25', "
        "'2026-11-25 00:00:00', '2026-11-25 00:00:00')"
    )
    with book._engine.begin() as connection:
        connection.execute(text(head))
    sql = "INSERT INTO quotation_revisions (quotation_id, revision, document) VALUES (1, 1, :document)"
    written(book, sql, document)
    return book.quotations().stored(1).quotation


def test_a_command_tells_what_it_read_otherwise(spoutline: Spoutline, tmp_path: Path, database_to_copy: Path) -> None:
    path = tmp_path / "old.sqlite3"
    path.write_bytes(database_to_copy.read_bytes())
    book = open_book(f"sqlite:///{path}")
    book.position_records.add_wear(
        WearEntry(site="S", position="1", done_on=date(2026, 11, 20), removed="LS-B101", reason="wear")  # type: ignore[arg-type]
    )
    wear = json.loads(document_of(book, "position_records")) | {"note": f"worn{OVERRIDE}"}
    written(book, "UPDATE position_records SET document = :document", json.dumps(wear))
    book.close()
    done = spoutline("record", "list", "S", "--database", path)
    assert done.code == 0
    assert "hidden sign" in done.err


def test_a_sound_survey_is_read_without_a_note(book: Book) -> None:
    stored = book.create(one_position())
    assert book.stored(stored.id) == stored
    assert book.reading_notes.take() == ()
    assert survey_from_json(document_of(book, "surveys"), "s") == stored.survey
