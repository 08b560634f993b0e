"""What the fuzzer gives damaged files to: every reader of the program, each with sound input.

A reader may take its input or refuse it with ``InputFault``; anything else is a defect.
"""

from __future__ import annotations

import random
import traceback
from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from functools import partial
from pathlib import Path

from reliability import fuzz_mutations as changed
from reliability import fuzz_seeds as seeds
from spoutline.model.faults import InputFault


class Verdict(StrEnum):
    """How a case ended."""

    TAKEN = "taken"
    REFUSED = "refused"
    DEFECT = "defect"


@dataclass(frozen=True)
class Outcome:
    """How a case ended; of a refusal what a person is told, of a defect what went wrong where."""

    verdict: Verdict
    where: str = ""


@dataclass(frozen=True)
class Target:
    """Something that takes a file: sound contents, how they are damaged, and its share of about 10,000 cases."""

    name: str
    file: str
    sound: tuple[bytes, ...]
    mutate: changed.Mutate
    take: Callable[[Path], Outcome]
    share: int

    def content(self, chance: random.Random) -> bytes:
        """Return one damaged content."""
        sound = chance.choice(self.sound)
        try:
            return self.mutate(sound, chance)
        except RecursionError:  # a tree that mutations made too deep to be written down
            return changed.of_bytes(sound, chance)


def reading(
    read: Callable[[Path], object], *, refusals: tuple[type[Exception], ...] = (InputFault,)
) -> Callable[[Path], Outcome]:
    """Return how a reader is tried."""

    def take(path: Path) -> Outcome:
        try:
            read(path)
        except refusals as refused:
            return Outcome(Verdict.REFUSED, str(refused))
        except Exception as fault:
            return Outcome(Verdict.DEFECT, where_of(fault))
        return Outcome(Verdict.TAKEN)

    return take


def knowing(is_known: Callable[[Path], bool]) -> Callable[[Path], Outcome]:
    """Return how a test of files is tried: a file that it does not know is refused."""

    def take(path: Path) -> Outcome:
        try:
            return Outcome(Verdict.TAKEN if is_known(path) else Verdict.REFUSED)
        except Exception as fault:
            return Outcome(Verdict.DEFECT, where_of(fault))

    return take


def where_of(fault: BaseException) -> str:
    """Return a fault and the places in the program that it passed last."""
    steps = [f"{Path(one.filename).name}:{one.lineno} {one.name}" for one in traceback.extract_tb(fault.__traceback__)]
    return f"{type(fault).__name__}: {str(fault)[:100]!r} ({' < '.join(reversed(steps[-4:]))})"


def readers(made: seeds.Seeds, folder: Path) -> tuple[Target, ...]:
    """Return every reader of files from outside."""
    from spoutline.book.agreed_file import read_agreed_file
    from spoutline.book.pack_job_text import read_pack_job
    from spoutline.book.record_files import form_content, photo_of, saved_page_text
    from spoutline.book.stock_text import read_stock
    from spoutline.book.survey_text import read_survey, survey_to_json
    from spoutline.book.terms_files import read_usual_file
    from spoutline.book.terms_text import read_terms
    from spoutline.catalogue.price_lists import read_price_lists
    from spoutline.catalogue.source import read_source
    from spoutline.documents.own_files import is_own
    from spoutline.documents.pack.form_reading import records_from_form
    from spoutline.documents.pack.tablet_reading import form_from_page
    from spoutline.model.position_tag import tag_from_text
    from spoutline.ruletables.own_profiles import own_profile
    from spoutline.units.accepted import UnitSystem

    def survey(path: Path) -> None:
        survey_to_json(read_survey(path))

    def table(path: Path) -> None:
        from spoutline.planning.table_intake.intake_fields import TableSubject
        from spoutline.planning.table_intake.into_draft import open_supplier_table
        from spoutline.planning.table_intake.into_survey import IntoSurvey, read_positions

        said = {"subject": TableSubject.POSITIONS, "units": UnitSystem.SI}
        read_positions(IntoSurvey(), open_supplier_table(path, (), said, {}))

    def pasted(path: Path) -> None:
        from spoutline.planning.survey_import.clipboard import pasted_rows
        from spoutline.planning.table_intake.column_map import TableMap
        from spoutline.planning.table_intake.intake_fields import TableSubject
        from spoutline.planning.table_intake.into_survey import IntoSurvey, read_positions
        from spoutline.planning.table_intake.raw_table import pasted_table
        from spoutline.planning.table_intake.table_look import opened_rows

        rows = pasted_rows(path.read_bytes().decode("utf-8", "replace"))
        plain = TableMap(subject=TableSubject.POSITIONS, units=UnitSystem.SI)
        read_positions(IntoSurvey(), opened_rows(pasted_table("clipboard", rows), (), plain))

    def pictures_on_paper(path: Path) -> None:
        from spoutline.documents.content.blocks import Picture
        from spoutline.documents.pdf.photo import photo

        photo(Picture(photo_of(path)[1], "p"), 300.0)

    prices, source = folder / "prices", folder / "source"
    prices.mkdir(exist_ok=True)
    (prices / "own.csv").write_text(seeds.PRICES, encoding="utf-8")
    seeds.catalogue_source(source)
    swivels = (source / "swivels.csv").read_bytes()
    nozzles = (source / "nozzles.csv").read_bytes()

    def within(place: Path, name: str, read: Callable[[Path], object], usual: bytes) -> Callable[[Path], object]:
        def go(path: Path) -> None:
            (place / name).write_bytes(path.read_bytes())
            try:
                read(place)
            finally:
                (place / name).write_bytes(usual)

        return go

    (prices / "lists.toml").write_text(seeds.LISTS, encoding="utf-8")
    profiles = folder / "read_profiles"
    profiles.mkdir(exist_ok=True)
    table_csv, prices_csv, lists = seeds.TABLE.encode(), seeds.PRICES.encode(), seeds.LISTS.encode()
    tag = b"spoutline:site=Elm%20Street;position=1A;revision=0123456789abcdef"
    usual = b'[seller]\nname = "Hedgerow Supply"\n[heading]\nvalid_days = 30\nexclusions = ["Electrical work"]\n'
    pictures = (seeds.picture("PNG"), seeds.picture("JPEG"))
    own = [
        Target(
            f"own {form}",
            f"own.{form}",
            (sound,),
            changed.of_bytes,
            knowing(partial(is_own, form=form)),
            20 if form == "csv" else 150,
        )
        for form, sound in made.own_files
    ]
    profile = within(profiles, "own_rules.toml", lambda place: own_profile(place, "own_rules"), made.profile)
    return (
        Target("survey", "survey.json", seeds.survey_documents(), changed.of_json, reading(survey), 2200),
        Target("terms", "terms.toml", (made.terms,), changed.of_toml, reading(read_terms), 900),
        Target("usual terms", "usual_terms.toml", (usual,), changed.of_toml, reading(read_usual_file), 500),
        Target("jurisdiction", "profile.toml", (made.profile,), changed.of_toml, reading(profile), 120),
        Target("job", "job.toml", (seeds.JOB.encode(),), changed.of_toml, reading(read_pack_job), 1200),
        Target("stock", "stock.csv", (seeds.STOCK.encode(),), changed.of_csv, reading(read_stock), 1500),
        Target("table", "table.csv", (table_csv,), changed.of_csv, reading(table), 300),
        Target("pasted cells", "pasted.txt", (table_csv.replace(b";", b"\t"),), changed.of_csv, reading(pasted), 150),
        Target(
            "workbook",
            "table.xlsx",
            (seeds.workbook(), seeds.workbook_of_a_spreadsheet()),
            changed.of_workbook,
            reading(table),
            250,
        ),
        Target(
            "form",
            "form.pdf",
            (made.form,),
            changed.of_form,
            reading(lambda path: records_from_form(form_content(path), str(path))),
            250,
        ),
        Target(
            "saved page",
            "filled.json",
            (seeds.saved_page().encode(),),
            changed.of_json,
            reading(lambda path: form_from_page(saved_page_text(path), str(path), "Signature")),
            400,
        ),
        Target("photo", "photo.png", pictures, changed.of_bytes, reading(pictures_on_paper), 600),
        Target("agreed sets", "agreed.json", (made.agreed,), changed.of_json, reading(read_agreed_file), 1000),
        Target(
            "scanned code",
            "code.txt",
            (tag,),
            changed.of_bytes,
            reading(lambda path: tag_from_text(path.read_bytes().decode("utf-8", "replace"))),
            300,
        ),
        Target(
            "price list",
            "own.csv",
            (prices_csv,),
            changed.of_csv,
            reading(within(prices, "own.csv", read_price_lists, prices_csv)),
            300,
        ),
        Target(
            "price lists",
            "lists.toml",
            (lists,),
            changed.of_toml,
            reading(within(prices, "lists.toml", read_price_lists, lists)),
            250,
        ),
        Target(
            "parts",
            "swivels.csv",
            (swivels,),
            changed.of_csv,
            reading(within(source, "swivels.csv", read_source, swivels)),
            60,
        ),
        Target(
            "nozzles",
            "nozzles.csv",
            (nozzles,),
            changed.of_csv,
            reading(within(source, "nozzles.csv", read_source, nozzles)),
            60,
        ),
        *own,
        *_supplier_tables(),
    )


def _supplier_tables() -> tuple[Target, ...]:
    """Return the readers of suppliers' tables and of the maps that are remembered for them."""
    from spoutline.planning.table_intake.column_map import TableMap, map_to_toml, read_map, suggested
    from spoutline.planning.table_intake.headings import find_headings
    from spoutline.planning.table_intake.intake import Intake
    from spoutline.planning.table_intake.raw_table import open_table
    from spoutline.planning.table_intake.repairs import ReplaceWord
    from spoutline.planning.table_intake.text_patterns import proposals, proposed_kind

    step = ReplaceWord(field="materials", word="aluminum", by="aluminium")
    table_map = TableMap(maker="Quillwort Works", currency="USD", repair=(step,))

    def take(path: Path) -> None:
        table = open_table(path)
        headings = find_headings(table)
        intake = Intake(table, headings, suggested(headings, table_map), table_map)
        for line in intake.lines():
            text = str(line.values.get("name", ""))
            kind = line.kind or proposed_kind(text)
            if kind is not None:
                proposals(text, kind)
        for report in intake.report.reports:
            str(report.problem())

    return (
        Target("supplier table", "supplier.csv", seeds.SUPPLIER_TABLES, changed.of_csv, reading(take), 300),
        Target(
            "supplier workbook", "supplier.xlsx", (seeds.supplier_workbook(),), changed.of_workbook, reading(take), 150
        ),
        Target("table map", "map.toml", (map_to_toml(table_map).encode(),), changed.of_toml, reading(read_map), 200),
    )
