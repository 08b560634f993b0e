"""Compiling: from an empty database, again only when the text changed, next to the book, several at once."""

import threading
from dataclasses import replace
from pathlib import Path

import pytest
from sqlalchemy import MetaData, inspect, select, text

from spoutline import assets
from spoutline.catalogue.build import ensure_catalogue
from spoutline.catalogue.compile import compile_catalogue
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.source import fingerprint_of, read_source
from spoutline.catalogue.tables import CatalogueTable
from spoutline.database.engine import open_engine, writing
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.part_ref import PartRef
from two_makers import MAKER, NUMBER, OTHER, catalogue_of_two_makers

FREE = "QW-N102"  # no other part names it as its successor


def test_the_migrations_make_the_tables_that_the_code_declares(url):
    from alembic.autogenerate import compare_metadata
    from alembic.migration import MigrationContext

    engine = open_engine(url)
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    with engine.connect() as connection:
        opts = {"version_table": CATALOGUE_SCHEMA.version_table, "include_name": _is_declared}
        context = MigrationContext.configure(connection, opts=opts)
        assert compare_metadata(context, CatalogueTable.metadata) == []
    engine.dispose()


def _is_declared(name: str | None, sort: str, _parents: object) -> bool:
    """Leave the full-text table of SQLite and its own tables out: no other database has them."""
    return sort != "table" or not str(name).startswith("catalogue_find")


def test_the_newest_revision_is_the_head_of_the_scripts():
    from alembic.config import Config
    from alembic.script import ScriptDirectory

    config = Config()
    config.set_main_option("script_location", str(CATALOGUE_SCHEMA.migrations))
    assert ScriptDirectory.from_config(config).get_current_head() == CATALOGUE_SCHEMA.newest


def test_the_migrations_can_be_taken_back(url):
    from alembic import command
    from alembic.config import Config

    engine = open_engine(url)
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    config = Config()
    config.set_main_option("script_location", str(CATALOGUE_SCHEMA.migrations))
    with engine.begin() as connection:
        config.attributes["connection"] = connection
        command.downgrade(config, "base")
    assert inspect(engine).get_table_names() == [CATALOGUE_SCHEMA.version_table]
    engine.dispose()


def test_parts_stay_whole_while_numbers_become_unique_within_their_maker(compiled_url, source):
    from alembic import command
    from alembic.config import Config

    engine = open_engine(compiled_url)
    config = Config()
    config.set_main_option("script_location", str(CATALOGUE_SCHEMA.migrations))
    with writing(engine, CATALOGUE_SCHEMA.lock) as connection:
        config.attributes["connection"] = connection
        command.downgrade(config, "catalogue_0005")
    before = _tables(engine)
    assert all(before[name] for name in ("catalogue_part", "catalogue_port", "catalogue_price", "catalogue_nozzle"))
    with writing(engine, CATALOGUE_SCHEMA.lock) as connection:
        config.attributes["connection"] = connection
        command.downgrade(config, "catalogue_0004")
        unique = inspect(connection).get_unique_constraints("catalogue_part")
        assert [one["column_names"] for one in unique] == [["number"]]
    assert _tables(engine)["catalogue_port"] == before["catalogue_port"]
    with writing(engine, CATALOGUE_SCHEMA.lock) as connection:
        config.attributes["connection"] = connection
        command.upgrade(config, "catalogue_0005")
    assert any(row["superseded_by_maker"] for row in before["catalogue_part"])
    assert _tables(engine) == before
    engine.dispose()


def test_an_older_program_finds_the_newest_invented_parts_after_the_editions_are_taken_back(compiled_url, source):
    from alembic import command
    from alembic.config import Config

    nozzles = source / "nozzles.csv"
    nozzles.write_text(nozzles.read_text().replace(f"\n{FREE},", "\nQW-N999,", 1))
    ensure_catalogue(compiled_url, source).close()
    engine = open_engine(compiled_url)
    config = Config()
    config.set_main_option("script_location", str(CATALOGUE_SCHEMA.migrations))
    with writing(engine, CATALOGUE_SCHEMA.lock) as connection:
        config.attributes["connection"] = connection
        command.downgrade(config, "catalogue_0005")
    kept = _tables(engine)
    numbers = [row["number"] for row in kept["catalogue_part"]]
    assert sorted(numbers) == [part.number for part in read_source(source).parts]
    assert "QW-N999" in numbers
    assert FREE not in numbers
    assert [row["fingerprint"] for row in kept["catalogue_edition"]] == [fingerprint_of(source)]
    assert {row["part_id"] for row in kept["catalogue_port"]} <= {row["id"] for row in kept["catalogue_part"]}
    opened = ensure_catalogue(compiled_url, source)  # and comes back as it was
    assert opened.part(PartRef("QW-N999")) is not None
    opened.close()
    engine.dispose()


def _tables(engine):
    """Return the rows of every table as its database has it, whatever the code of today declares."""
    metadata = MetaData()
    metadata.reflect(engine)
    names = [name for name in metadata.tables if name != CATALOGUE_SCHEMA.version_table]
    with engine.connect() as connection:
        return {
            name: [dict(row) for row in connection.execute(select(table).order_by(*table.primary_key)).mappings()]
            for name, table in metadata.tables.items()
            if name in names
        }


def test_one_number_of_two_makers_is_compiled_and_told_apart(url, tmp_path):
    opened = ensure_catalogue(url, catalogue_of_two_makers(tmp_path / "catalog"))
    both = opened.parts([PartRef(NUMBER)])
    assert [part.ref for part in both] == [PartRef(NUMBER, OTHER), PartRef(NUMBER, MAKER)]
    assert opened.part(PartRef(NUMBER)) is None
    for part in both:
        assert opened.part(part.ref) is part
        assert opened.read_ref(f"{part.maker.upper()}  {NUMBER}") == part.ref
    assert opened.read_ref(NUMBER) == PartRef(NUMBER)
    assert opened.read_refs(f"{OTHER} {NUMBER}, LS-S101 LS-S102") == (
        PartRef(NUMBER, OTHER), PartRef("LS-S101"), PartRef("LS-S102"),
    )  # fmt: skip
    opened.close()


def test_a_failing_migration_leaves_the_database_as_it_was(url, tmp_path):
    scripts = tmp_path / "scripts"
    (scripts / "versions").mkdir(parents=True)
    (scripts / "env.py").write_text((CATALOGUE_SCHEMA.migrations / "env.py").read_text())
    (scripts / "versions" / "one.py").write_text(
        "from alembic import op\nimport sqlalchemy as sa\nrevision = 'one'\ndown_revision = None\n"
        "def upgrade():\n    op.create_table('half', sa.Column('id', sa.Integer()))\n"
        "    raise RuntimeError('cut off')\n"
    )
    engine = open_engine(url)
    with pytest.raises(StoreFault, match="cut off"):
        replace(CATALOGUE_SCHEMA, migrations=scripts).bring_up_to_date(engine)
    assert inspect(engine).get_table_names() == []
    engine.dispose()


def test_a_database_of_a_newer_program_is_left_alone(compiled_url, source):
    engine = open_engine(compiled_url)
    with engine.begin() as connection:
        connection.execute(text("UPDATE catalogue_version SET version_num = 'catalogue_9999'"))
    with pytest.raises(StoreFault, match="written by a newer version of Spoutline"):
        ensure_catalogue(compiled_url, source)
    engine.dispose()


def test_an_unchanged_source_is_not_compiled_again(compiled_url, source):
    def ids() -> list[int]:
        engine = open_engine(compiled_url)
        with engine.connect() as connection:
            found = connection.execute(text("SELECT id FROM catalogue_part ORDER BY id")).scalars().all()
        engine.dispose()
        return list(found)

    first = ids()
    ensure_catalogue(compiled_url, source).close()
    assert ids() == first
    nozzles = source / "nozzles.csv"
    nozzles.write_text(nozzles.read_text() + "# one more comment\n")
    ensure_catalogue(compiled_url, source).close()
    assert ids() == first  # no part changed
    nozzles.write_text(nozzles.read_text().replace(f"\n{FREE},", "\nQW-N999,", 1))
    ensure_catalogue(compiled_url, source).close()
    assert ids() == [*first, max(first) + 1]  # the others are shared, and no id is given twice


def test_compiling_twice_gives_the_same_catalogue(url, source):
    engine = open_engine(url)
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    first = compile_catalogue(source, engine)
    second = compile_catalogue(source, engine)
    assert first == second
    assert first.parts_count == len(read_source(source).parts)
    assert first.fingerprint == fingerprint_of(source)
    engine.dispose()


def test_an_open_edition_stays_as_it_is_and_a_new_compilation_is_the_next(compiled_url, source):
    opened = ensure_catalogue(compiled_url, source)
    assert opened.part(PartRef("QW-N101")).name != "Renamed nozzle"
    nozzles = source / "nozzles.csv"
    name = opened.part(PartRef("QW-N101")).name
    nozzles.write_text(nozzles.read_text().replace(f'"{name}"', "Renamed nozzle", 1))
    renewed = ensure_catalogue(compiled_url, source)
    assert renewed.part(PartRef("QW-N101")).name == "Renamed nozzle"
    assert opened.part(PartRef("QW-N101")).name == name
    assert renewed.edition().number == opened.edition().number + 1
    opened.close()
    renewed.close()


def test_the_catalogue_shares_a_database_with_other_tables(url, source):
    engine = open_engine(url)
    with engine.begin() as connection:
        connection.execute(text("CREATE TABLE surveys (id INTEGER PRIMARY KEY)"))
        connection.execute(text("INSERT INTO surveys VALUES (7)"))
    ensure_catalogue(url, source).close()
    with engine.connect() as connection:
        assert connection.execute(text("SELECT id FROM surveys")).scalars().all() == [7]
    assert all(name == "surveys" or name.startswith("catalogue_") for name in inspect(engine).get_table_names())
    engine.dispose()


def test_several_first_starts_at_once_all_succeed(url, source):
    opened, failed = [], []

    def start() -> None:
        try:
            opened.append(ensure_catalogue(url, source))
        except Exception as fault:  # the thread must report, not die
            failed.append(fault)

    threads = [threading.Thread(target=start) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert failed == []
    assert len({len(store.search("", None, 10_000)) for store in opened}) == 1
    for store in opened:
        store.close()


def test_a_file_that_is_no_database_is_a_store_fault(tmp_path: Path):
    file = tmp_path / "notes.txt"
    file.write_text("these are notes, not a database " * 100)
    with pytest.raises(StoreFault, match=r"notes\.txt"):
        ensure_catalogue(f"sqlite:///{file}", assets.catalogue_folder())


def test_a_url_that_no_driver_understands_is_an_input_fault():
    with pytest.raises(InputFault, match="database"):
        open_engine("clay-tablet://somewhere")


def test_a_catalogue_in_memory_serves_several_threads():
    opened = ensure_catalogue("sqlite://", assets.catalogue_folder())
    found = []
    thread = threading.Thread(target=lambda: found.append(opened.part(PartRef("QW-N101"))))
    thread.start()
    thread.join()
    assert found[0].number == "QW-N101"
    opened.close()


def test_a_book_of_an_edition_before_opens_it_by_number_and_by_what_papers_called_it(url):
    from dataclasses import replace

    from spoutline.catalogue.compile import publish_source
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.catalogue.source import read_source
    from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef

    source = read_source(assets.catalogue_folder())
    parts = tuple(part for part in source.parts if "dapter" in part.name)[:40]
    renamed = tuple(replace(part, name=part.name.replace("dapter", "daptor")) for part in parts)
    engine = open_engine(url)
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    publish_source(engine, replace(source, parts=renamed, references=(), edition="Invented catalogue 2026-11"))
    publish_source(engine, replace(source, parts=parts, references=()))
    shelf = CatalogueShelf(engine)
    for ref in (EditionRef(DEMONSTRATION, 1), EditionRef("Invented catalogue 2026-11")):
        opened = shelf.opened(ref)
        assert (opened.edition.number, opened.edition.title) == (1, "Invented catalogue 2026-11")
        assert {part.name for part in shelf.parts(ref).search("", None, 99)} == {part.name for part in renamed}
    newest = shelf.opened(EditionRef(DEMONSTRATION)).edition
    assert (newest.number, newest.title) == (2, source.edition)
    engine.dispose()
