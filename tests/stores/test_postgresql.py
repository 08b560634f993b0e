"""Book and catalogue in a PostgreSQL server: the same migrations, the same promises.

Left out only where PostgreSQL's server programs are not installed; see ``tests/conftest.py``.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from postgresql_server import as_postgres, server_programs
from spoutline.book.records import SettingName, StaleSurvey
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import StoreFault
from stores.catalogue.entries import priced_only, swivel

pytestmark = pytest.mark.postgres


def as_server_user(*command: str) -> None:
    """Run a server program; as the user postgres where this is root, which the server refuses to be."""
    subprocess.run([*as_postgres(), *command], check=True, capture_output=True)


@pytest.fixture(scope="module")
def server() -> Iterator[Path]:
    programs = server_programs()
    assert programs is not None
    # A socket's path may be 107 bytes long at most (unix(7)), so it lies in a short folder.
    folder = Path(tempfile.mkdtemp(prefix="pg-"))
    if os.geteuid() == 0:
        shutil.chown(folder, "postgres")
    data = str(folder / "data")
    as_server_user(
        str(programs / "initdb"),
        "-D",
        data,
        "-A",
        "trust",
        "-U",
        "postgres",
        "--no-sync",
        "-E",
        "UTF8",
        "--locale=C.UTF-8",
    )
    options = f"-c listen_addresses='' -c unix_socket_directories={folder} -c fsync=off"
    pg_ctl = str(programs / "pg_ctl")
    as_server_user(pg_ctl, "-D", data, "-w", "-l", str(folder / "log"), "-o", options, "start")
    yield folder
    as_server_user(pg_ctl, "-D", data, "-m", "fast", "-w", "stop")
    shutil.rmtree(folder)


@pytest.fixture
def bench(server: Path) -> Iterator[Workbench]:
    opened = open_workbench(Settings(database=f"postgresql://postgres@/postgres?host={server}"))
    yield opened
    opened.close()


def test_surveys_are_stored_saved_and_guarded_as_in_sqlite(bench: Workbench) -> None:
    survey = demo_survey("marina")
    first = bench.book().create(survey)
    second = bench.book().save(first, survey)
    assert bench.book().stored(first.id) == second
    with pytest.raises(StaleSurvey):
        bench.book().save(first, survey)
    assert [entry.revision for entry in bench.book().entries()] == [2]
    bench.book().remove(first.id)
    assert bench.book().entries() == ()
    bench.book().remember(SettingName.UNIT_SYSTEM, "US")
    bench.book().remember(SettingName.UNIT_SYSTEM, "SI")
    assert bench.book().setting(SettingName.UNIT_SYSTEM) == "SI"


def test_the_catalogue_is_the_same_as_in_sqlite(bench: Workbench, workbench: Workbench) -> None:
    parts = bench.parts().search("", limit=100_000)
    assert parts == workbench.parts().search("", limit=100_000)
    assert len(parts) >= 350


def test_catalogues_and_editions_are_kept_as_in_sqlite(bench: Workbench, tmp_path: Path) -> None:
    desk = bench.catalogues()
    exported = desk.export(EditionRef("Demonstration"))
    (tmp_path / "all.zip").write_bytes(exported)
    desk.create("Own list")
    assert desk.import_exchange(tmp_path / "all.zip", "own list").new == len(bench.parts().search("", limit=100_000))
    assert desk.publish("Own list", notes="first", publisher="Ada Fenn", on=date(2026, 11, 28)).number == 1
    with desk.shelf().draft("Own list") as draft:
        draft.put([priced_only("FW 900"), swivel("АБ 7+2/x")])
        draft.take_out([part.ref for part in bench.parts().search("QW-N102")])
    assert (draft.counts.new, draft.counts.gone) == (2, 1)
    assert desk.publish("Own list", notes="second", publisher="Ada Fenn", on=date(2026, 11, 28)).number == 2
    assert desk.export(EditionRef("Own list", 1)) == exported
    changes = desk.changes(EditionRef("Own list", 1), EditionRef("Own list", 2))
    assert {one.ref.number: (one.before is None, one.after is None) for one in changes} == {
        "FW 900": (True, False),
        "QW-N102": (False, True),
        "АБ 7+2/x": (True, False),
    }
    survey = demo_survey("small_town").model_copy(update={"catalogue": "Own list@2"})
    assert bench.provenance(survey).edition == 2
    assert [part.number for part in bench.parts().parts_named("АБ 7+2/x + QW-N103, LS-S101 LS-S102", survey)] == [
        "АБ 7+2/x",
        "QW-N103",
        "LS-S101",
        "LS-S102",
    ]


def test_a_database_that_is_not_there_is_named_without_the_password(server: Path) -> None:
    absent = open_workbench(Settings(database=f"postgresql://postgres:secret@/absent?host={server}"))
    with pytest.raises(StoreFault, match=r'database "absent" does not exist') as refused:
        absent.book().entries()
    assert "secret" not in str(refused.value)
    absent.close()


def test_a_suppliers_table_is_taken_into_a_draft_as_in_sqlite(bench: Workbench, tmp_path: Path) -> None:
    from spoutline.planning.table_intake.into_draft import open_supplier_table

    path = tmp_path / "p.csv"
    text = "Part no,Description,Price USD\nQX-1,Hose,5\nQX-2,Swivel,6\n"
    service = bench.catalogues()
    service.create("Office list")

    def taken_in(content: str) -> tuple[bool, int, int, int]:
        path.write_text(content, encoding="utf-8")
        done = service.import_table("Office list", open_supplier_table(path, (), {"maker": "Quillwort Works"}, {}))
        return done.report.is_sound, done.changes.new, done.changes.changed, done.changes.unchanged

    assert taken_in(text) == (True, 2, 0, 0)
    assert taken_in(text.replace("6", "7.50") + "QX-3,Cap,2\n") == (True, 1, 1, 1)
    assert not taken_in(text.replace("5", "cheap") + "QX-4,Cap,2\n")[0]
    kept = {
        entry.number: entry.prices[0].minor
        for entry in service.shelf().entries(EditionRef("Office list", is_draft=True))
    }
    assert kept == {"QX-1": 500, "QX-2": 750, "QX-3": 200}


def test_entries_are_found_as_somebody_types_as_in_sqlite(bench: Workbench, tmp_path: Path) -> None:
    from spoutline.model.cross_reference import CrossReference

    entries = [
        priced_only("FW-1/20.5+K", "3/4\" x 9' Nippel galvanis\u00e9"),
        priced_only("K 2", "\u041d\u0430\u043a\u043e\u043d\u0435\u0447\u043d\u0438\u043a \u8edf\u7ba1"),
        swivel("FW 12").model_copy(update={"item_number": "ST-77"}),
        swivel("FW 1"),
    ]
    old = CrossReference(number="OLD 5", maker="Oldforge", part_number="K 2", part_maker="Fernmoor Works")
    local = open_workbench(Settings(database=f"sqlite:///{tmp_path / 'book.sqlite3'}"))
    for opened in (bench, local):
        opened.catalogues().create("Searched list")
        with opened.catalogues().shelf().draft("Searched list") as desk:
            desk.put(entries)
            desk.references.put([old])
    ref = EditionRef("Searched list", is_draft=True)
    asked = [
        "fw",
        "FW1",
        "fw 1",
        "fw-12",
        "20.5",
        "st77",
        "old5",
        "old",
        "\u043d\u0430\u043a",
        "galvanise",
        "3/4",
        "swivel one",
    ]
    asked += ["", "a & b | !c", "'", "\\\\", "a:*", "fw:* | k", "(", "nip & galv", "%", "\0", "fw\0", "\ud800k"]
    for typed in asked:
        answers = [opened.catalogues().find(ref, typed, limit=9).lines for opened in (bench, local)]
        assert [line.entry.ref for line in answers[0]] == [line.entry.ref for line in answers[1]], typed
    assert bench.catalogues().find(ref, "old5", limit=9).lines[0].entry.number == "K 2"
    assert [line.entry.number for line in bench.catalogues().find(ref, "FW1", limit=9).lines][:2] == ["FW 1", "FW 12"]
    local.close()
