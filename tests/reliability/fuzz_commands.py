"""The commands and the stored documents of a book, given damaged input in one process.

A command ends with exit code 0, 1 or 2; a document of the book is read, or refused with ``InputFault`` or
``StoreFault``. Anything else is a defect.
"""

from __future__ import annotations

import io
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from unittest import mock

from sqlalchemy import text

from reliability import fuzz_mutations as changed
from reliability import fuzz_seeds as seeds
from reliability.fuzz_targets import Outcome, Target, Verdict, reading, where_of
from spoutline.book.book import open_book
from spoutline.model.faults import InputFault, StoreFault
from stores.revisions import survey_at


class Commands:
    """Runs commands in this process over a database of their own."""

    def __init__(self, database: Path, profiles: Path) -> None:
        self._shared = ["--database", str(database), "--profiles", str(profiles)]

    def taking(self, arguments: Callable[[Path], list[object]], *, stdin: bool = False) -> Callable[[Path], Outcome]:
        """Return how a command is tried; ``arguments`` gets the damaged file, which is standard input too if asked."""

        def take(path: Path) -> Outcome:
            return self.run([str(one) for one in arguments(path)], path.read_bytes() if stdin else b"")

        return take

    def run(self, arguments: list[str], given: bytes = b"") -> Outcome:
        """Run a command and return how it ended."""
        from spoutline.cli import main

        faults: list[str] = []

        def note(fault: Exception) -> int:
            faults.append(where_of(fault))
            return 3

        def no_window(_workbench: object, _survey: object, _trouble: str) -> int:
            raise AssertionError("a command opened the window")

        with _streams(given) as told, mock.patch.object(main, "_defect", note):
            try:
                code = main.run([*self._shared, *arguments], no_window)
            except BaseException as fault:  # whatever leaves the command is a traceback for the person
                return Outcome(Verdict.DEFECT, f"traceback, {where_of(fault)}")
        if code not in (0, 1, 2):
            return Outcome(Verdict.DEFECT, f"exit {code}, {'; '.join(faults)}")
        if "Traceback" in told():
            return Outcome(Verdict.DEFECT, f"a traceback among the messages of {arguments[0]}")
        return Outcome(Verdict.REFUSED if code == 2 else Verdict.TAKEN, told())


@contextmanager
def _streams(given: bytes) -> Iterator[Callable[[], str]]:
    """Lend the process streams of its own; yield what returns the messages."""
    out, err = (io.TextIOWrapper(io.BytesIO(), encoding="utf-8", write_through=True) for _ in range(2))
    kept = sys.stdin, sys.stdout, sys.stderr
    sys.stdin, sys.stdout, sys.stderr = io.TextIOWrapper(io.BytesIO(given)), out, err

    def told() -> str:
        buffer = err.buffer
        return buffer.getvalue().decode("utf-8", "replace") if isinstance(buffer, io.BytesIO) else ""

    try:
        yield told
    finally:
        sys.stdin, sys.stdout, sys.stderr = kept


def stored_documents(made: seeds.Seeds) -> tuple[Target, ...]:
    """Return the documents of a book, changed behind the program's back as an older program or a hand may have."""
    book = open_book("sqlite://")
    engine = book._engine
    stored = book.create(made.survey)

    def put(sql: str, path: Path) -> None:
        with engine.begin() as connection:
            connection.execute(text(sql), {"document": path.read_bytes().decode("utf-8", "replace")})

    def survey(path: Path) -> None:
        put("UPDATE surveys SET document = :document", path)
        book.stored(stored.id)

    def revision(path: Path) -> None:
        put("UPDATE survey_revisions SET document = :document", path)
        survey_at(book, stored.id, 1)

    with engine.begin() as connection:
        for place, (kind, (_, document)) in enumerate(
            zip(("commissioning", "wear", "inspection"), seeds.records_of_installers(made.record), strict=True), 1
        ):
            connection.execute(
                text(
                    "INSERT INTO position_records (id, kind, site, position, document, recorded_at) "
                    "VALUES (:id, :kind, 'S', '1', :document, '2026-11-25 00:00:00')"
                ),
                {"id": place, "kind": kind, "document": document.decode()},
            )
        connection.execute(
            text(
                "INSERT INTO agreements (line, serial, site, agreed_at, document) "
                "VALUES (1, 1, 'S', '2026-11-25 00:00:00', :document)"
            ),
            {"document": made.agreed.decode()},
        )
        connection.execute(
            text(
                "INSERT INTO quotations (id, number, customer, site, search_text, status, revision, version, valid_to, "
                "created_at, changed_at) VALUES (1, 'Q', 'C', 'S', 'q', 'draft', 1, 1, '2026-12-25', "
                "'2026-11-25 00:00:00', '2026-11-25 00:00:00')"
            )
        )
        connection.execute(
            text("INSERT INTO quotation_revisions (quotation_id, revision, document) VALUES (1, 1, :document)"),
            {"document": made.quotation.decode()},
        )

    def record(read: Callable[[], object], place: int) -> Callable[[Path], object]:
        def go(path: Path) -> None:
            put(f"UPDATE position_records SET document = :document WHERE id = {place}", path)
            read()

        return go

    def agreed(path: Path) -> None:
        put("UPDATE agreements SET document = :document", path)
        book.agreements.lines("S")

    def quotation(path: Path) -> None:
        put("UPDATE quotation_revisions SET document = :document", path)
        book.quotations().stored(1)

    records, told = book.position_records, (InputFault, StoreFault)
    documents = seeds.records_of_installers(made.record)
    reads = (lambda: records.commissioning("S"), lambda: records.wear("S"), lambda: records.inspections("S"))

    def target(name: str, sound: tuple[bytes, ...], read: Callable[[Path], object], share: int) -> Target:
        return Target(
            name, f"{name.replace(' ', '_')}.json", sound, changed.of_json, reading(read, refusals=told), share
        )

    return (
        target("stored survey", seeds.survey_documents(), survey, 350),
        target("stored revision", seeds.survey_documents(), revision, 150),
        target("stored agreement", (made.agreed,), agreed, 150),
        target("stored quotation", (made.quotation,), quotation, 100),
        *(
            target(f"stored {name}", (document,), record(read, place), 100)
            for place, (name, (_, document), read) in enumerate(
                zip(("commissioning", "wear", "inspection"), documents, reads, strict=True), 1
            )
        ),
    )


def commands(made: seeds.Seeds, database: Path, folder: Path) -> tuple[Target, ...]:
    """Return the commands that read files, each with what else it needs; ``database`` is written to."""
    place = folder / "commands"
    place.mkdir(exist_ok=True)
    runs = Commands(database, place / "profiles")
    survey, terms, form = place / "survey.json", place / "terms.toml", place / "form.pdf"
    survey.write_bytes(seeds.survey_documents()[0])
    terms.write_bytes(made.terms)
    form.write_bytes(made.form)
    parts = place / "parts.csv"
    parts.write_bytes(seeds.SUPPLIER_TABLES[1])
    for name in ("Office", "Exchanged", "Described"):
        runs.run(["catalogue", "new", name])
    exported, types = str(place / "described.zip"), place / "types.csv"
    types.write_bytes(seeds.TYPES[0])
    for said in (
        ["catalogue", "export", "Demonstration", "--out", exported, "--force"],
        ["catalogue", "import", exported, "--into", "Described"],
        ["catalogue", "import", str(parts), "--into", "Office", "--maker", "Quillwort Works"],
        ["dispenser-type", "import", str(types)],
    ):
        runs.run(said)
    prices = place / "prices"
    prices.mkdir(exist_ok=True)
    (prices / "lists.toml").write_text(seeds.LISTS, encoding="utf-8")
    surveys, part, label = seeds.survey_documents(), made.part_number, made.survey.positions[0].label

    def priced(path: Path) -> list[object]:
        (prices / "own.csv").write_bytes(path.read_bytes())
        return ["quote", survey, "--terms", terms, "--csv", place / "o.csv", "--price-lists", prices]

    def of(
        name: str,
        file: str,
        sound: tuple[bytes, ...],
        mutate: changed.Mutate,
        arguments: Callable[[Path], list[object]],
        share: int,
        *,
        stdin: bool = False,
    ) -> Target:
        return Target(f"command {name}", file, sound, mutate, runs.taking(arguments, stdin=stdin), share)

    json, toml, table = changed.of_json, changed.of_toml, changed.of_csv
    return (
        of("plan", "s.json", surveys, json, lambda path: ["plan", path], 4),
        of("plan -", "s.json", surveys, json, lambda _: ["plan", "-", "--json"], 4, stdin=True),
        of(
            "bill",
            "s.json",
            surveys,
            json,
            lambda path: ["bill", path, "--pdf", place / "o.pdf", "--csv", place / "b.csv"],
            3,
        ),
        of("pack", "s.json", surveys, json, lambda path: ["pack", path, "--form", place / "f.pdf"], 2),
        of(
            "pack --job",
            "j.toml",
            (seeds.JOB.encode(),),
            toml,
            lambda path: ["pack", survey, "--cautions", place / "c.pdf", "--job", path],
            3,
        ),
        of("site", "s.json", surveys, json, lambda path: ["site", path], 2),
        of("convert", "s.json", surveys, json, lambda path: ["convert", path], 2),
        of("agree", "s.json", surveys, json, lambda path: ["agree", path, "--from", "plan", "--by", "Odile"], 3),
        of("agreed", "s.json", surveys, json, lambda path: ["agreed", path], 4),
        of(
            "bill --sets",
            "a.json",
            (made.agreed,),
            json,
            lambda path: ["bill", survey, "--sets", f"file:{path}", "--csv", place / "a.csv"],
            6,
        ),
        of(
            "quote",
            "t.toml",
            (made.terms,),
            toml,
            lambda path: ["quote", survey, "--terms", path, "--xlsx", place / "q.xlsx"],
            4,
        ),
        of(
            "quote --pdf",
            "t.toml",
            (made.terms,),
            toml,
            lambda path: ["quote", survey, "--terms", path, "--pdf", place / "q.pdf"],
            2,
        ),
        of("quote --price-lists", "p.csv", (seeds.PRICES.encode(),), table, priced, 4),
        of(
            "record read",
            "f.pdf",
            (made.form,),
            changed.of_form,
            lambda path: ["record", "read", path, "--survey", survey, "--dry-run"],
            6,
        ),
        of(
            "record read --photo",
            "p.png",
            (seeds.picture("PNG"), seeds.picture("JPEG")),
            changed.of_bytes,
            lambda path: ["record", "read", form, "--survey", survey, "--photo", path, "--pdf", place / "r.pdf"],
            3,
        ),
        of(
            "swap",
            "k.csv",
            (seeds.STOCK.encode(),),
            table,
            lambda path: ["swap", survey, label, part, "--stock", path],
            4,
        ),
        of(
            "import", "t.csv", (seeds.TABLE.encode(),), table, lambda path: ["import", path, "--site", "Elm Street"], 16
        ),
        of(
            "import workbook",
            "t.xlsx",
            (seeds.workbook(), seeds.workbook_of_a_spreadsheet()),
            changed.of_workbook,
            lambda path: ["import", path, "--site", "Elm Street"],
            10,
        ),
        of(
            "catalogue import",
            "t.csv",
            seeds.SUPPLIER_TABLES,
            table,
            lambda path: ["catalogue", "import", path, "--into", "Office", "--maker", "Quillwort Works", "--dry-run"],
            12,
        ),
        of(
            "catalogue import --map",
            "m.toml",
            (b'maker = "Quillwort Works"\n[[repair]]\ndo = "skip_row"\nrow = 3\n',),
            toml,
            lambda path: ["catalogue", "import", parts, "--into", "Office", "--map", path, "--dry-run"],
            6,
        ),
        of(
            "catalogue import exchange",
            "parts.zip",
            (seeds.exchange_file(),),
            changed.of_package,
            lambda path: ["catalogue", "import", path, "--into", "Exchanged", "--dry-run"],
            12,
        ),
        *_tables(of, place),
        of("profile import", "r.toml", (made.profile,), toml, lambda path: ["profile", "import", path], 6),
        *_questions(made, runs, place),
    )


def _tables(of: Callable[..., Target], place: Path) -> Iterator[Target]:
    """Yield the tables that a keeper and a surveyor take in, and what is said of them."""
    table, words = changed.of_csv, changed.of_bytes
    positions, cut = place / "positions.csv", ["catalogue", "cut", "Described", "TH-H101", "--number", "C 7", "--unit"]
    positions.write_bytes(seeds.POSITIONS[0])
    lengths = ["--from", "7", "--to", "9", "--step", "6 in"]
    yield of(
        "import into",
        "t.csv",
        seeds.POSITIONS,
        table,
        lambda path: ["import", path, "--into", place / "survey.json", "--dry-run", "--json"],
        12,
    )
    yield of(
        "import --map",
        "m.toml",
        seeds.MAP,
        changed.of_toml,
        lambda path: ["import", positions, "--site", "Elm Street", "--map", path],
        8,
    )
    yield of(
        "import --column",
        "w.txt",
        (b"Note=notes", b"E=outlet.height_m in ft"),
        words,
        lambda path: ["import", positions, "--site", "Elm Street", f"--column={_typed(path)}"],
        6,
    )
    yield of(
        "import --replace",
        "w.txt",
        (b"liquid.family:E10=diesel",),
        words,
        lambda path: ["import", positions, "--site", "Elm Street", f"--replace={_typed(path)}", "--dry-run"],
        4,
    )
    yield of(
        "cross-reference import",
        "t.csv",
        seeds.REFERENCES,
        table,
        lambda path: ["catalogue", "cross-reference", "import", path, "--into", "Office", "--dry-run"],
        12,
    )
    yield of(
        "cross-reference find",
        "w.txt",
        (b"BM 4411",),
        words,
        lambda path: ["catalogue", "cross-reference", "find", "--", _typed(path)],
        4,
    )
    yield of(
        "cross-reference add",
        "w.txt",
        (b"BM 4411",),
        words,
        lambda path: ["catalogue", "cross-reference", "add", "--", "Office", "Old", _typed(path), "New", "N 1"],
        4,
    )
    for dry in (True, False):
        yield of(
            f"dispenser-type import{' --dry-run' if dry else ''}",
            "t.csv",
            seeds.TYPES,
            table,
            lambda path, dry=dry: ["dispenser-type", "import", path, *(["--dry-run"] if dry else [])],
            8,
        )
    yield of(
        "dispenser-type change",
        "w.txt",
        (b"outlet.height_m=2.1 m", b"outlet.size=3/4"),
        words,
        lambda path: ["dispenser-type", "change", "Rushwater 7", f"--set={_typed(path)}"],
        5,
    )
    for name, sound in (("price-list import", (seeds.PRICES.encode(),)), ("price-list table", seeds.PRICE_TABLES)):
        words_of_list = ["--id", "own", "--maker", "Quillwort Works", "--currency", "USD", "--valid-from", "2026-01-01"]
        yield of(
            name,
            "t.csv",
            sound,
            table,
            lambda path, said=words_of_list: ["catalogue", "price-list", "import", path, "--into", "Office", *said],
            10,
        )
    yield of(
        "price", "w.txt", (b"Q-1",), words, lambda path: ["catalogue", "price", "Office@draft", "--", _typed(path)], 4
    )
    yield of(
        "price --on",
        "w.txt",
        (b"2026-08-01",),
        words,
        lambda path: ["catalogue", "price", "Office@draft", "Q-1", f"--on={_typed(path)}"],
        3,
    )
    for option, sound in (
        ("--from", b"7 ft 6 in"),
        ("--step", b"6 in"),
        ("--price", b"4.50 USD"),
        ("--number", b"C 7"),
    ):
        yield of(
            f"catalogue cut {option}",
            "w.txt",
            (sound,),
            words,
            lambda path, option=option: [
                *(*cut, "ft", *lengths, "--price", "4 USD", "--dry-run"),
                f"{option}={_typed(path)}",
            ],
            4,
        )
    one = ["--liquid", "e10", "--duty", "car", "--vapor", "none", "--outlet", "npt_3_4", "--climate", "mild"]
    for option, sound in (("--most", b"3"), ("--jurisdiction", b"us_general"), ("--currency", b"USD")):
        yield of(
            f"coverage {option}",
            "w.txt",
            (sound,),
            words,
            lambda path, option=option: ["catalogue", "coverage", "Described@draft", *one, f"{option}={_typed(path)}"],
            1,
        )


def _typed(path: Path) -> str:
    """Return a damaged file as what a person typed into a shell: any bytes but NUL, which no argument can hold."""
    return path.read_bytes().decode("utf-8", "surrogateescape").replace("\0", "")[:2000]


def _questions(made: seeds.Seeds, runs: Commands, place: Path) -> Iterator[Target]:
    """Yield the commands that answer a question over surveys, quotations, the catalogue or a book."""
    survey, terms = place / "survey.json", place / "terms.toml"
    part, label = made.part_number, made.survey.positions[0].label
    answer = ["quotation", "answer", "1", "accepted", "--option", "Low-permeation hose", "--by", "Odile"]
    folder, profiles = place / "folder", place / "own_profiles"
    for one in (folder, profiles):
        one.mkdir(exist_ok=True)
    (folder / "a.json").write_bytes(survey.read_bytes())

    def put(path: Path, into: Path) -> Path:
        into.write_bytes(path.read_bytes())
        return into.parent

    def target(
        name: str,
        sound: tuple[bytes, ...],
        mutate: changed.Mutate,
        share: int,
        arguments: Callable[[Path], list[object]],
    ) -> Target:
        return Target(f"command {name}", f"{name.replace(' ', '_')}.in", sound, mutate, runs.taking(arguments), share)

    surveys, words = seeds.survey_documents()[:2], changed.of_bytes  # of the position that is asked about
    yield target("whynot", surveys, changed.of_json, 3, lambda path: ["whynot", path, label, part])
    yield target("whynot part", (part.encode(),), words, 2, lambda path: ["whynot", survey, label, "--", _typed(path)])
    yield target("substitutes", surveys, changed.of_json, 1, lambda path: ["substitutes", path, label, "nozzle"])
    yield target(
        "substitutes place", (b"nozzle",), words, 2, lambda path: ["substitutes", survey, label, "--", _typed(path)]
    )
    yield target(
        "programme",
        surveys,
        changed.of_json,
        2,
        lambda path: ["programme", put(path, folder / "b.json"), "--processes", "1", "--csv", place / "p.csv"],
    )
    yield target(
        "catalog",
        (made.profile,),
        changed.of_toml,
        3,
        lambda path: ["catalog", "--jurisdiction", "own_rules", "--profiles", put(path, profiles / "own_rules.toml")],
    )
    yield target("book check", (_small_book(place),), words, 6, lambda path: ["book", "check", path])
    yield target(
        "quotation keep",
        (made.terms,),
        changed.of_toml,
        3,
        lambda path: ["quotation", "keep", survey, "--terms", path, "--by", "Odile"],
    )
    yield target(
        "quotation revise",
        surveys,
        changed.of_json,
        2,
        lambda path: ["quotation", "revise", "1", path, "--terms", terms, "--by", "Odile"],
    )
    yield target("quotation list", (b"Elm",), words, 3, lambda path: ["quotation", "list", "--", _typed(path)])
    yield target("quotation show", (b"1",), words, 3, lambda path: ["quotation", "show", "--", _typed(path)])
    yield target(
        "quotation issue", (b"Odile Fenn",), words, 2, lambda path: ["quotation", "issue", "1", f"--by={_typed(path)}"]
    )
    yield target(
        "quotation answer",
        (b"by telephone",),
        words,
        2,
        lambda path: [*answer, f"--note={_typed(path)}"],
    )
    yield from _later_questions(target, place)


def _later_questions(target: Callable[..., Target], place: Path) -> Iterator[Target]:
    """Yield what is asked about quotations after they were issued; the first revision of number 1 is there."""
    words, paper = changed.of_bytes, place / "again.csv"
    yield target(
        "quotation print",
        (b"1",),
        words,
        2,
        lambda path: ["quotation", "print", "1", f"--revision={_typed(path)}", "--csv", paper],
    )
    yield target("quotation changes", (b"1",), words, 2, lambda path: ["quotation", "changes", "1", "1", _typed(path)])
    for name in ("touched", "expire"):
        yield target(
            f"quotation {name}",
            (b"2026-11-25", b"2027-02-28"),
            words,
            2,
            lambda path, name=name: ["quotation", name, f"--today={_typed(path)}"],
        )


def _small_book(place: Path) -> bytes:
    """Return an SQLite book of one survey."""
    path = place / "small.sqlite3"
    path.unlink(missing_ok=True)
    book = open_book(f"sqlite:///{path}")
    book.create(seeds.one_position())
    book.close()
    return path.read_bytes()
