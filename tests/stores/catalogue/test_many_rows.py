"""Catalogues of real size on their way into a draft: rows written together, cells that were read before."""

from __future__ import annotations

import sqlite3
from typing import Any

import pytest
from sqlalchemy import Engine, event, text

from spoutline.catalogue import descriptions, draft, many_rows
from spoutline.catalogue.descriptions import describe, figure_cells
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.part import PartKind
from stores.catalogue.entries import NAME, SWIVEL, priced_only, swivel

DRAFT = EditionRef(NAME, is_draft=True)


def test_entries_are_written_by_few_statements_since_each_lets_the_full_text_table_write(
    shelf: CatalogueShelf, engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(many_rows, "_VALUES_AT_ONCE", 13 * 40)  # of 13 columns: 40 rows a statement
    row_by_row: list[bool] = []

    def heard(
        _connection: object, _cursor: object, statement: str, _values: object, _context: object, many: Any
    ) -> None:
        if statement.startswith("INSERT INTO catalogue_entry"):
            row_by_row.append(bool(many))

    event.listen(engine, "before_cursor_execute", heard)
    with shelf.draft(NAME) as desk:
        desk.put([*(swivel(f"FW {place}") for place in range(90)), priced_only("K 1", "green hose")])
    event.remove(engine, "before_cursor_execute", heard)
    assert row_by_row == [False] * 3  # 91 rows
    found = shelf.find(DRAFT, "FW", limit=500)[0]
    assert sorted(one.number for one in found) == sorted(f"FW {place}" for place in range(90))
    assert [one.number for one in shelf.find(DRAFT, "green", limit=9)[0]] == ["K 1"]
    with engine.connect() as connection:  # FTS5's own check that its index says what the table says
        connection.execute(text("INSERT INTO catalogue_find(catalogue_find, rank) VALUES ('integrity-check', 1)"))


def test_a_statement_holds_no_more_values_than_sqlite_takes_anywhere(
    shelf: CatalogueShelf, engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By default 32,766 (sqlite.org/limits.html, 9); a distribution may have raised it, and others have not."""

    def restrained(connection: sqlite3.Connection, *_: object) -> None:
        connection.setlimit(sqlite3.SQLITE_LIMIT_VARIABLE_NUMBER, 32_766)

    monkeypatch.setattr(draft, "_CHUNK", 3_000)  # all at once
    engine.dispose()  # connections of before
    event.listen(engine, "connect", restrained)
    with shelf.draft(NAME) as desk:
        desk.put([priced_only(f"K {place}", "hose") for place in range(2_600)])  # of 13 values each
    event.remove(engine, "connect", restrained)
    assert desk.counts.new == 2_600


def test_a_cell_reads_the_same_whatever_was_read_before(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(descriptions, "_REMEMBERED", 3)
    masses = [f"0.{place}" for place in range(1, 10)]
    for mass in (*masses, *reversed(masses), *masses):
        figures, wrong = figure_cells(PartKind.SWIVEL, {**SWIVEL, "mass_kg": mass})
        assert wrong == ()
        assert {one.column: one.value for one in figures}["mass_kg"] == float(mass)
        part = describe(swivel(mass_kg=mass)).part
        assert part is not None
        assert part.mass_kg == float(mass)


def test_a_wrong_cell_among_known_ones_is_told_alone_and_every_time() -> None:
    for _ in range(2):
        figures, wrong = figure_cells(PartKind.SWIVEL, {**SWIVEL, "mass_kg": "heavy", "colour": "red"})
        assert [one[:2] for one in wrong] == [("colour", "'red'"), ("mass_kg", "'heavy'")]
        assert {one.column for one in figures} == SWIVEL.keys() - {"mass_kg"}


def test_words_in_a_list_read_as_those_of_a_text() -> None:
    of_text, _wrong = figure_cells(PartKind.SWIVEL, SWIVEL)
    of_list, wrong = figure_cells(PartKind.SWIVEL, {**SWIVEL, "materials": SWIVEL["materials"].split()})
    assert (of_list, wrong) == (of_text, ())
