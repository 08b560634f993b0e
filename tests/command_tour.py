"""Every command of the command line run once on a book of its own: what it says, in the language asked for.

Names that a person types (of sites, firms, parts, catalogs) are made of words that no language has, so that every
other word of an answer is the program's. The tour knows no language: the same steps run in each.
"""

from __future__ import annotations

import argparse
import json
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

from program_runs import Done

Run = Callable[..., Done]
Step = tuple[tuple[str, ...], Done]

SITE, LIST, MAKER, BUYER, TYPE = "Fernau", "Zorlist", "Kvarn", "Oltun", "Snarl 200"
# every word that the tour types as the name of something, small
NAMES = frozenset(
    [
        "fernau",
        "zorlist",
        "kvarn",
        "oltun",
        "snarl",
        "vendel",
        "vorlist",
        "brum",
        "vik",
        "vok",
        "oln",
        "velbro",
        "alfa",
        "bravo",
        "zz",
        "vb",
        "kv",
        "tx",
        "zc",
        "zm",
    ]
)
DAY = "2026-11-25"
POSITIONS = [
    {"label": "1", "dispenser": "1", "liquid": {"family": "gasoline", "blend_percent": 10}, "retrieval": "retractor"},
    {"label": "2", "dispenser": "2", "liquid": {"family": "diesel", "blend_percent": 20}, "duty": "truck"},
    {"label": "3", "dispenser": "3", "liquid": {"family": "gasoline", "blend_percent": 85}, "vapour_wanted": "balance"},
]
TERMS = f"""
[seller]
name = "Velbro"
[customer]
name = "{BUYER}"
[heading]
number = "VB-1"
dated = {DAY}
valid_days = 30
[[options]]
title = "Alfa"
breakaway = "single_use"
[[options]]
title = "Bravo"
breakaway = "reconnectable"
"""


@dataclass
class Tour:
    """The steps taken so far: words of the command line and what came of each."""

    run: Run
    database: Path
    folder: Path
    steps: list[Step] = field(default_factory=list)

    def go(self, *words: object, codes: tuple[int, ...] = (0,)) -> Done:
        """Take a step; its exit code must be one of ``codes``."""
        texts = tuple(map(str, words))
        done = self.run(*texts)
        assert done.code in codes, (texts, done)
        self.steps.append((texts, done))
        return done

    def file(self, name: str, text: str = "") -> Path:
        """Return a file of the folder, with a text in it where one is given."""
        path = self.folder / name
        if text:
            path.write_text(text, encoding="utf-8")
        return path

    def nozzle(self, survey: Path) -> str:
        """Return the number of the nozzle of the first position."""
        document = json.loads(self.run("plan", str(survey), "--json").out)
        return str(document["positions"][0]["set"][-1]["part_number"])

    def keep(self, survey: Path) -> None:
        """Put a survey into the book, as the window does that opens it."""
        from spoutline.bootstrap import Settings, open_workbench
        from spoutline.model.survey import Survey

        bench = open_workbench(Settings(database=str(self.database)))
        try:
            bench.book().create(Survey.model_validate_json(survey.read_text(encoding="utf-8")))
        finally:
            bench.close()


def commands() -> Iterator[tuple[str, ...]]:
    """Yield the words of every command and of every action of one, as the parser itself declares them."""
    from spoutline.cli.main import _parser

    yield from _leaves(_parser(), ())


def _leaves(parser: argparse.ArgumentParser, words: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    parser.declared()  # type: ignore[attr-defined]
    groups = [action for action in parser._actions if isinstance(action, argparse._SubParsersAction)]
    if not groups:
        yield words
    for group in groups:
        for name, below in {id(one): (name, one) for name, one in reversed(group.choices.items())}.values():
            yield from _leaves(below, (*words, name))


def tour(run: Run, database: Path, folder: Path) -> list[Step]:
    """Run every command once and return each with what it said."""
    made = Tour(run, database, folder)
    survey = made.file("station.json", json.dumps({"site": {"name": SITE}, "positions": POSITIONS}))
    terms = made.file("terms.toml", TERMS)
    for part in (_plans, _papers, _customers, _quotations, _agreements, _records):
        part(made, survey, terms)
    _conversions(made)
    _types(made)
    _catalogue(made, survey)
    _rules(made, survey)
    _book(made, survey)
    return made.steps


def _plans(made: Tour, survey: Path, _terms: Path) -> None:
    made.go("plan", survey, codes=(0, 1))
    made.go("why", survey, "1")
    made.go("measure", survey, "1")
    made.go("site", survey, codes=(0, 1))
    made.go("substitutes", survey, "1", "nozzle", "--misfits")
    made.go("whynot", survey, "2", made.nozzle(survey), codes=(0, 1))
    made.go("whatif", survey, "--blend", "E15", codes=(0, 1))
    made.go("copy-answers", survey, "1", "--answers", "notes", "--all")
    made.go("demo")
    made.go("schema")
    made.go("help")
    made.go("weigh", survey, "1", codes=(0, 1))
    made.go("weigh", survey, codes=(0, 1))


def _papers(made: Tour, survey: Path, terms: Path) -> None:
    made.go("bill", survey, "--csv", made.file("b.csv"), codes=(0, 1))
    made.go("drawing", survey, "1")
    made.go("pack", survey, "--form", made.file("form.pdf"), codes=(0, 1))
    made.go("quote", survey, "--terms", terms, "--csv", made.file("q.csv"), codes=(0, 1))
    stock = made.file("stock.csv", "part_number,quantity\nQW-N106,2\nQW-N103,4\nQW-N143,1\n")
    nozzle = made.nozzle(survey)
    made.go("swap", survey, "1", nozzle, "--stock", stock, codes=(0, 1))
    empty = made.file("empty.csv", "part_number,quantity\nQW-S101,1\n")
    made.go("swap", survey, "1", nozzle, "--stock", empty, codes=(1,))
    made.go("stock", "count", "Vik", nozzle, "--quantity", "3", "--by", "Brum")
    made.go("stock", "receive", "Vik", nozzle)
    made.go("stock", "take", "Vik", nozzle, "--job", SITE)
    made.go("stock", "return", "Vik", nozzle, "--job", SITE)
    made.go("stock", "undo", "1")
    made.go("stock", "entries")
    made.go("stock", "level", "Vik", nozzle, "--least", "9")
    made.go("stock", "receive", "Vik", "QW-N106")
    made.go("stock", "count", "Vik", nozzle)
    made.go("stock", "close", "Vik", codes=(1,))
    made.go("stock", "close", "Vik", "--confirm")
    made.go("stock", "close", "Vik", "--confirm")
    made.go("stock", "list")
    made.go("stock", "reorder", codes=(1,))
    made.go("stock", "job", survey, "--place", "Vik", codes=(0, 1))
    made.go("stock", "job", survey, "--take", "--orders", made.folder / "short", codes=(0, 1))
    made.go("stock", "job", survey, codes=(0, 1))


def _customers(made: Tour, survey: Path, _terms: Path) -> None:
    made.go("customer", "list")
    fields = ("--address", "Vik 1", "--delivery-address", "Vik 2", "--contact", "Brum", "--telephone", "555-0100")
    more = ("--email", "brum@example.org", "--tax-number", "TX-1", "--payment", "45", "--discount", "zz=20")
    made.go("customer", "add", BUYER, *fields, *more)
    made.go("customer", "set", BUYER, "--contact", "Brum")
    made.go("customer", "list")
    made.go("customer", "show", BUYER)
    made.go("customer", "site", survey)
    kept = made.file("kept.json")
    made.go("customer", "site", survey, "--set", BUYER, "--out", kept)
    made.go("customer", "site", kept)
    made.go("customer", "remove", BUYER)
    made.go("customer", "site", kept)


def _quotations(made: Tour, survey: Path, terms: Path) -> None:
    first = made.file("first.json", json.dumps({"site": {"name": SITE}, "positions": POSITIONS[:1]}))
    made.go("quotation", "keep", first, "--terms", terms, "--by", "Brum", codes=(0, 1))
    made.go("quotation", "list")
    made.go("quotation", "follow-up", 1, "2026-12-10")
    made.go("quotation", "show", 1)
    made.go("quotation", "list", "--due", "--on", "2026-12-31")
    made.go("quotation", "issue", 1, "--by", "Brum", "--low-margin", "Vik")
    made.go("quotation", "print", 1, "--csv", made.file("o.csv"))
    made.go("quotation", "margin", 1)
    made.go("quotation", "touched", "--today", "2027-03-01")
    made.go("quotation", "revise", 1, survey, "--terms", terms, "--by", "Brum")
    made.go("quotation", "changes", 1, 1, 2)
    made.go("quotation", "preview", 1, first, codes=(0, 1))
    made.go("quotation", "alternate", 1, "QW-N103", "--preview", codes=(0, 1, 2))
    made.go("supplier", "list")
    made.go("supplier", "set", MAKER, "--column", "Vik=part_number", "--maker", "Oln")
    made.go("supplier", "list")
    made.go("supplier", "show", MAKER)
    made.go("supplier", "orders", 1, "--option", "Alfa")
    made.go("supplier", "order", 1, MAKER, "--option", "Alfa", "--csv", made.file("order.csv"), codes=(0, 2))
    made.go("supplier", "files", 1, "--option", "Alfa", "--folder", made.folder / "orders")
    made.go("supplier", "remove", MAKER)
    made.go("quotation", "issue", 1, "--by", "Brum", "--low-margin", "Vik", "--incomplete", "Vik")
    made.go("quotation", "answer", 1, "accepted", "--by", "Brum", "--option", "Alfa", "--note", "Vik")
    made.go("quotation", "follow-up", 1, "--none", codes=(0, 2))
    made.go("quotation", "show", 1)
    made.go("quotation", "keep", first, "--terms", made.file("t2.toml", TERMS.replace("VB-1", "VB-2")))
    made.go("quotation", "issue", 2, "--by", "Brum", "--low-margin", "Vik")
    made.go("quotation", "expire", "--today", "2027-03-01")


def _agreements(made: Tour, survey: Path, _terms: Path) -> None:
    made.go("agreed", survey)
    unknown = made.file("unknown.json", json.dumps({"site": {"name": "Vendel"}, "positions": POSITIONS[:1]}))
    made.go("agreed", unknown, codes=(1,))
    made.go("agree", survey, "--from", "plan", "--by", "Brum", "--reason", "Vik")
    made.go("agreed", survey)
    made.go("agree", survey, "--from", "quotation:1:1", "--by", "Brum", codes=(0, 2))
    made.go("agreed", survey, "--compare", "1", "plan")
    made.go("agree", survey, "--undo", "--by", "Brum")
    made.go("agreed", survey, "--history")
    made.go("agreed", survey, codes=(0, 1))


def _records(made: Tour, survey: Path, _terms: Path) -> None:
    one = made.file("one.json", json.dumps({"site": {"name": SITE}, "positions": POSITIONS[:1]}))
    form, filled = made.file("one.pdf"), made.file("filled.pdf")
    made.go("pack", one, "--form", form)
    code = _filled(form, filled)
    nozzle = made.nozzle(one)
    made.go("record", "find", code, codes=(2,))
    made.go("record", "wear", SITE, "1", nozzle, "--reason", "damaged", "--on", DAY, codes=(0, 1))
    made.keep(one)
    made.go("record", "find", code, codes=(0, 2))
    made.go("record", "read", filled, "--survey", one, codes=(0, 1))
    made.go("record", "wear", SITE, "1", nozzle, "--fitted", nozzle, "--reason", "wear", "--on", DAY, codes=(0, 1))
    made.go("record", "inspected", SITE, "1", "continuity", "--on", DAY)
    made.go("record", "list", SITE, codes=(0, 1))
    made.go("record", "certificate", one, "--bond", made.file("bond.pdf"), codes=(0, 1, 2))
    made.go("record", "due", one, "--in-service", DAY, codes=(0, 1))
    made.go("due", "--on", "2027-11-29", codes=(0, 1))
    made.keep(survey)
    made.go("due", "--on", "2026-11-26", "--until", "2026-11-26", codes=(0, 1))


def _filled(form: Path, filled: Path) -> str:
    """Fill a commissioning form in as a reader of PDF does; return the code that it carries."""
    from pypdf import PdfReader, PdfWriter

    fields = PdfReader(form).get_fields() or {}
    writer = PdfWriter(clone_from=form)
    for page in writer.pages:
        writer.update_page_form_field_values(page, {"p1_done_by": "Brum", "p1_done_on": DAY}, auto_regenerate=False)
    writer.write(filled)
    return str(fields["p1_tag"]["/V"])


def _conversions(made: Tour) -> None:
    folder = made.folder / "sites"
    folder.mkdir()
    station = made.file("sites/conversion.json")
    made.go("demo", "conversion_balance", "--out", station)
    document = json.loads(station.read_text(encoding="utf-8"))
    document["site"]["name"] = SITE
    station.write_text(json.dumps(document), encoding="utf-8")
    made.go("convert", station, codes=(0, 1))
    made.go("programme", folder, "--processes", "1", "--budget", "5000", "--from", "2027", codes=(0, 1))


def _types(made: Tour) -> None:
    survey, typed = made.file("station.json"), made.file("typed.json")
    made.go("dispenser-type", "list")
    made.go("dispenser-type", "fields")
    answers = ("outlet.thread=G", "outlet.size=1", "outlet.height_m=2.1 m", "retrieval=reel", "overhead=yes")
    made.go("dispenser-type", "add", TYPE, *(word for answer in answers for word in ("--set", answer)))
    made.go("dispenser-type", "list")
    made.go("dispenser-type", "choose", survey, TYPE, "--take-all", "--out", typed)
    made.go("dispenser-type", "changed", typed)
    made.go("dispenser-type", "change", TYPE, "--set", "outlet.height_m=2.5 m")
    made.go("dispenser-type", "show", TYPE)
    made.go("dispenser-type", "changed", typed, codes=(1,))
    made.go("plan", typed, codes=(0, 1))
    made.go("dispenser-type", "renew", typed, "--out", made.file("renewed.json"))
    table = made.file("types.csv")
    made.go("dispenser-type", "export", "--csv", table)
    made.go("dispenser-type", "import", table, "--columns")
    made.go("dispenser-type", "import", table)
    bad = made.file("bad.csv", "name,retrieval\nVik,rel\n")
    made.go("dispenser-type", "import", bad, codes=(2,))
    made.go("dispenser-type", "remove", TYPE)
    made.go("dispenser-type", "changed", typed, codes=(1,))
    positions = made.file("positions.csv", "label,liquid.family,liquid.blend_percent\n1,gasoline,10\n2,diesel,20\n")
    made.go("import", positions, "--site", SITE, "--columns")
    made.go("import", positions, "--site", SITE, "--dry-run")
    faulty = made.file("faulty.csv", "label,liquid.family,liquid.blend_percent\n1,gasolin,10\n")
    made.go("import", faulty, "--site", SITE, "--dry-run", codes=(1,))


def _catalogue(made: Tour, survey: Path) -> None:
    def go(*words: object, codes: tuple[int, ...] = (0,)) -> Done:
        return made.go("catalogue", *words, codes=codes)

    go(codes=(0, 1))
    go("list")
    go("schema")
    go("new", LIST)
    for number in ("KV-1", "KV-2"):
        go("entry", "add", LIST, MAKER, number, "kind=swivel", "price=12.50 USD", "family=Vik", "lead_days=5")
    go("entry", "add", LIST, MAKER, "KV-3")
    go("entry", "set", LIST, "mass_kg=0.66 lb", "--part", "KV-1")
    go("entry", "find", LIST)
    go("entry", "find", LIST, "--limit", "1")
    go("entry", "show", LIST, "KV-1")
    picture = made.file("vik.png")
    _picture(picture)
    go("entry", "attach", LIST, "KV-1", picture)
    go("entry", "show", LIST, "KV-1")
    go("entry", "file", LIST, "KV-1", "vik", "--out", made.file("vik2.png"))
    go("entry", "detach", LIST, "KV-1", "vik")
    go("family", "list", LIST)
    go("family", "set", LIST, "Vik", "mass_kg=0.5 kg", "--kind", "swivel")
    go("family", "list", LIST)
    go("entry", "show", LIST, "KV-2")
    go("family", "rename", LIST, "Vik", "Vok")
    go("cross-reference", "list", f"{LIST}@draft")
    go("cross-reference", "add", LIST, "Oln", "B-1", MAKER, "KV-1")
    go("cross-reference", "list", f"{LIST}@draft")
    go("cross-reference", "export", f"{LIST}@draft", "--csv", made.file("numbers.csv"))
    go("cross-reference", "import", made.file("numbers.csv"), "--into", LIST, "--columns")
    numbers = "number,maker,part_number,part_maker,relation\nB-1,Oln,KV-2,Kvarn,same\nB-2,Oln,KV-9,Kvarn,same\n"
    go("cross-reference", "import", made.file("more.csv", numbers), "--into", LIST)
    go("cross-reference", "import", made.file("bad2.csv", "number,maker\nB-1,\n"), "--into", LIST, codes=(2,))
    go("cross-reference", "find", "B-1", "--catalogue", f"{LIST}@draft", codes=(0, 1, 2))
    go("cross-reference", "find", "B-2", "--catalogue", f"{LIST}@draft", codes=(0, 1, 2))
    go("cross-reference", "remove", LIST, "B-2")
    prices = made.file("prices.csv", "number,group,from_quantity,unit_price\nKV-1,zz,1,12.50\nKV-1,zz,10,11\n")
    words = ("--into", LIST, "--maker", MAKER, "--currency", "USD")
    go("price-list", "list", f"{LIST}@draft")
    go("price-list", "import", prices, *words, "--id", "p1", "--valid-from", "2026-01-01", "--supplier", "Oln")
    go("price-list", "import", prices, *words, "--id", "p2", "--valid-from", "2026-01-01", "--valid-to", "2026-02-01")
    go("price-list", "import", prices, *words, "--id", "p3", "--valid-from", "2099-01-01", "--dry-run")
    go("price-list", "list", f"{LIST}@draft")
    go("price-list", "export", f"{LIST}@draft", "--pdf", made.file("prices.pdf"))
    go("price", f"{LIST}@draft", "KV-1", "--on", "2026-08-01", "--quantity", "12")
    go("price", f"{LIST}@draft", "KV-2", "--on", "2026-08-01", codes=(0, 1))
    go("check", LIST, codes=(0, 1))
    go("health", LIST, codes=(0, 1))
    go("list")
    go("publish", LIST, "--note", "Vik", "--by", "Brum")
    _keeping(made, survey, go)


def _keeping(made: Tour, survey: Path, go: Run) -> None:
    go("list")
    table = made.file("table.csv", "Part No.;Description;Price USD\nKV-1;Vik;99.00\nKV-7;Vik;40.00\nTotal;;139.00\n")
    supplied = ("--into", LIST, "--maker", MAKER, "--kind", "swivel")
    go("import", table, *supplied, "--columns")
    go("import", table, *supplied, "--dry-run", "--take-out-missing")
    go("import", table, *supplied)
    go("import", made.file("bad3.csv", "Part No.;Price USD\nKV-8;much\n"), *supplied, codes=(2,))
    go("list")
    go("diff", LIST, f"{LIST}@draft")
    go("discard", LIST)
    go("price-list", "remove", LIST, "p2")
    go("family", "remove", LIST, "Vok")
    go("diff", LIST, f"{LIST}@draft")
    go("entry", "remove", LIST, "--part", "KV-3")
    exported = made.file("list.zip")
    go("export", f"{LIST}@1", "--out", exported)
    go("import", exported, "--into", LIST)
    go("use", LIST)
    go("use", "Demonstration")
    go("coverage", "Demonstration", "--liquid", "e10", "--duty", "car", "--vapor", "none", codes=(0, 1, 2))
    whole, own = made.file("whole.zip"), "Vorlist"
    go("export", "Demonstration", "--out", whole)
    go("new", own)
    go("import", whole, "--into", own)
    links = json.loads(made.run("plan", str(survey), "--json").out)["positions"][0]["set"]
    parts = [f"{one['maker']} {one['part_number']}" for one in links]
    hose = next(part for part, one in zip(parts, links, strict=True) if one["slot"] == "curb_hose")
    article = ("--number", "ZC-7", "--unit", "ft", "--from", "7 ft", "--to", "8 ft", "--step", "6 in")
    go("cut", own, hose, *article, "--price", "2 USD", "--dry-run")
    go("made-up", own, *parts[:2], "--number", "ZM-9", "--price", "60 USD")
    go("diff", "Demonstration", f"{own}@draft", "--surveys", survey)
    go("demonstration", "off", codes=(0, 2))
    go("demonstration", "on")


def _picture(path: Path) -> None:
    from PIL import Image

    Image.new("RGB", (8, 8), "white").save(path)


def _rules(made: Tour, survey: Path) -> None:
    row = ("--source", "Vik", "--clause", "4.2", "--edition", "2026", "--status")
    made.go("profile", "list")
    made.go("profile", "show", "us_general")
    made.go("profile", "copy", "us_general", "vik_county", "--title", "Vik")
    made.go("profile", "list")
    made.go("profile", "compare", "vik_county")
    made.go("profile", "set", "vik_county", "hose.length_max", "--value", "3", "--unit", "ft", *row, "memory")
    made.go("profile", "compare", "vik_county")
    made.go("profile", "compare", "us_general")
    made.go("profile", "check", "vik_county", codes=(1,))
    made.go("profile", "editions", "vik_county")
    made.go("profile", "publish", "vik_county", "--note", "Vik", "--by", "Brum")
    made.go("profile", "editions", "vik_county")
    made.go("profile", "effect", "vik_county", "--against", "us_general", "--survey", survey)
    file = made.file("vik.toml")
    made.go("profile", "export", "vik_county", "--out", file)
    made.go("profile", "import", file)
    made.go("profile", "remove", "vik_county")


def _book(made: Tour, survey: Path) -> None:
    made.go("book", "backup", "--list")
    made.go("book", "backup")
    made.go("book", "backup", "--daily")
    made.go("book", "backup", "--list")
    made.go("book", "check")
    made.go("book", "rescue")
    made.go("book", "rescue", "1", "--out", made.file("rescued.txt"))
    made.go("book", "roles", "--sql")
    made.go("book", "restore")
    broken = made.file("broken.sqlite3")
    broken.write_bytes(made.database.read_bytes()[:5000])
    made.go("book", "check", broken, codes=(1,))
